// All 100 lines of NOAA's table of test values of the World Magnetic Model 2025, read as the package geomagnetism carries it
// (test/values.csv), at the two decimals printed there. Lines of the model's report are in magnetism.txt.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { answer, sentenceOf } from '../../support/call';

const table = readFileSync(new URL('../../../node_modules/geomagnetism/test/values.csv', import.meta.url), 'utf8');
const rows = table
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => line.split(','))
  .filter(([year = '']) => Number(year) >= 2025 && Number(year) < 2030)
  .map((cells) => ({ year: Number(cells[0]), kilometres: Number(cells[1]), latitude: Number(cells[2]), longitude: Number(cells[3]), declination: Number(cells[10]) }));

/** The day in which a decimal year falls. */
const dayOf = (year: number): string => new Date(Date.UTC(Math.floor(year), 0, 1) + Math.round((year % 1) * 365) * 86_400_000).toISOString().slice(0, 10);
const west = (longitude: number): number => (longitude > 180 ? longitude - 360 : longitude);
const variation = (latitude: number, longitude: number, date: string, feet: number): number => Number(answer('MAGNETIC_VARIATION', latitude, longitude, date, feet)['variation']);

describe('World Magnetic Model 2025', () => {
  it('has all its published lines here', () => expect(rows.length).toBe(100));

  it.each(rows)('$year, $kilometres km, $latitude, $longitude: $declination', ({ year, kilometres, latitude, longitude, declination }) => {
    // Half a year is 182.5 days and a date is a whole day: near the pole the variation moves 0.001 degree in half a day.
    const slack = Math.abs(latitude) > 85 ? 0.003 : 0.001;
    const got = variation(latitude, west(longitude), dayOf(year), (kilometres * 1000) / 0.3048);
    expect(Math.abs(got - declination)).toBeLessThanOrEqual(0.005 + slack);
  });

  it('says so beyond its years', () => {
    expect(sentenceOf('MAGNETIC_VARIATION', 50, 10, '2024-12-31')).toBe('MAGNETIC_VARIATION: date must be 2025-01-01 to 2029-12-31, the years of the magnetic model; got 2024-12-31.');
    expect(sentenceOf('MAGNETIC_VARIATION', 50, 10, '2030-01-01')).toContain('got 2030-01-01.');
    expect(Number.isFinite(variation(50, 10, '2029-12-31', 0))).toBe(true);
  });
});
