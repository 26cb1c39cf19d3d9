// Rise, set and civil twilight against the tables of the US Naval Observatory (sunTables.usno), within a minute, polar days told; and
// against the library astronomy-engine, an ephemeris of its own, at places and days that no table at hand holds.
import { readFileSync } from 'node:fs';
import { Body, Observer, SearchAltitude, SearchRiseSet, type AstroTime } from 'astronomy-engine';
import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../core/basics/civilDate';
import { sunTimes, type SunTimes } from '../../../core/route/sunTimes';
import { answer } from '../../support/call';

const minutesPerDay = 1440;
const lines = readFileSync(new URL('sunTables.usno', import.meta.url), 'utf8').split('\n');
const declared = Number(/^# rows: (\d+)$/.exec(lines[0] ?? '')?.[1]);

interface Printed {
  readonly place: { readonly latitudeDegrees: number; readonly longitudeDegrees: number };
  readonly date: string;
  readonly day: number;
  readonly zoneHours: number;
  readonly times: readonly string[];
}

let zoneHours = 0;
const rows = lines.flatMap((line): Printed[] => {
  zoneHours = Number(/^# zone (-?\d+)$/.exec(line)?.[1] ?? zoneHours);
  if (line === '' || line.startsWith('#')) return [];
  const [latitude, longitude, date = '', ...times] = line.split(' ');
  const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
  const place = { latitudeDegrees: Number(latitude), longitudeDegrees: Number(longitude) };
  return [{ place, date, day: dayNumber({ year, month, day }), zoneHours, times }];
});

const pick = [(sun: SunTimes) => sun.sun.rising, (sun: SunTimes) => sun.sun.setting, (sun: SunTimes) => sun.twilight.rising, (sun: SunTimes) => sun.twilight.setting];

/** Every event of a kind that falls on the printed day, in minutes of its own clock: ours are told about local noon. */
function eventsOf({ place, day, zoneHours: zone }: Printed, kind: number): number[] {
  return [-1, 0, 1].flatMap((days) => {
    const at = pick[kind]?.(sunTimes(place, day + days));
    const minutes = at === undefined ? undefined : at + days * minutesPerDay + zone * 60;
    return minutes === undefined || minutes < -0.5 || minutes >= minutesPerDay + 0.5 ? [] : [minutes];
  });
}

/** Within 2 degrees of a pole the Sun crosses the horizon so slowly that a second of arc is seconds of time; on the day after the last sunset it only grazes it. */
const slack = ({ place, date }: Printed): number => {
  if (Math.abs(place.latitudeDegrees) >= 88) return 3;
  return place.latitudeDegrees === 70 && date === '2025-05-16' ? 1.5 : 1;
};

describe('tables of the US Naval Observatory', () => {
  it('are here as a whole', () => expect(rows.length).toBe(declared));

  it.each(rows)('$place.latitudeDegrees $place.longitudeDegrees $date', (row) => {
    row.times.forEach((printed, kind) => {
      const events = eventsOf(row, kind);
      if (/^[*-]{4}$/.test(printed)) {
        expect(events, `kind ${kind}`).toEqual([]);
        const { sun } = sunTimes(row.place, row.day);
        expect(sun.aboveAtNoon).toBe(printed === '****');
        return;
      }
      if (printed === '-') return;
      const minutes = Number(printed.slice(0, 2)) * 60 + Number(printed.slice(2));
      const nearest = Math.min(...events.map((one) => Math.abs(one - minutes)));
      expect(nearest, `kind ${kind}: printed ${printed}, got ${events.join(', ')}`).toBeLessThanOrEqual(slack(row));
    });
  });
});

describe('an ephemeris of another make', () => {
  const minutesOf = (time: AstroTime | null, day: number): number | undefined => (time === null ? undefined : (time.date.getTime() - day * 86_400_000) / 60_000);
  const places = [-63, -48, -33, -18, -3, 12, 27, 42, 57, 64].flatMap((latitude, index) => [-170, -95, -20, 55, 130, 179].map((longitude) => ({ latitude, longitude: longitude + index })));

  it.each(places.filter((_, index) => index % 3 === 0))('agrees at $latitude, $longitude on 24 days', ({ latitude, longitude: far }) => {
    const longitude = far > 180 ? far - 360 : far;
    const observer = new Observer(latitude, longitude, 0);
    for (let days = 0; days < 1461; days += 61) {
      const day = dayNumber({ year: 2026, month: 1, day: 1 }) + days;
      const got = sunTimes({ latitudeDegrees: latitude, longitudeDegrees: longitude }, day);
      const [midnight, noon] = [got.noon - 720, got.noon].map((minutes) => new Date(day * 86_400_000 + minutes * 60_000)) as [Date, Date];
      const expected = [
        SearchRiseSet(Body.Sun, observer, 1, midnight, 0.5),
        SearchRiseSet(Body.Sun, observer, -1, noon, 0.5),
        SearchAltitude(Body.Sun, observer, 1, midnight, 0.5, -6),
        SearchAltitude(Body.Sun, observer, -1, noon, 0.5, -6),
      ].map((time) => minutesOf(time, day));
      pick.forEach((kind, index) => {
        const [mine, theirs] = [kind(got), expected[index]];
        expect(mine === undefined, `day ${days}, kind ${index}`).toBe(theirs === undefined);
        if (mine !== undefined && theirs !== undefined) expect(Math.abs(mine - theirs), `day ${days}, kind ${index}`).toBeLessThan(0.5);
      });
    }
  });
});

describe('SUN_TIMES', () => {
  it('tells the days of a pole', () => {
    expect(answer('SUN_TIMES', 70, 0, '2025-06-21', 0)).toMatchObject({ sunrise_z: 'none', sunset_z: 'none', dawn_z: 'none', sun: 'sun up all day', civil: 'day', hour_rule: 'day' });
    expect(answer('SUN_TIMES', 80, 0, '2025-12-21', 1200)).toMatchObject({ sunrise_z: 'none', dusk_z: 'none', sun: 'night all day', civil: 'night', hour_rule: 'night' });
    expect(answer('SUN_TIMES', 70, 0, '2025-12-21', 1200)).toMatchObject({ sun: 'sun down all day, twilight', civil: 'day', hour_rule: 'night' });
    expect(answer('SUN_TIMES', 70, 0, '2025-05-17', 1200)).toMatchObject({ sun: 'sun up all day' });
  });

  it('names the day of UTC', () => {
    expect(answer('SUN_TIMES', 29, -81, '2019-06-15')).toMatchObject({ sunrise_z: '1025Z', sunset_z: '0024Z next day' });
    expect(answer('SUN_TIMES', -33.8688, 151.2093, '2025-09-23')['sunrise_z']).toMatch(/^194\dZ day before$/);
  });

  it('parts day from night a minute on either side, by both definitions', () => {
    // London, 21 June 2025: sunset 2022, civil twilight ends 2109 (US Naval Observatory).
    const at = (time: number) => answer('SUN_TIMES', 51.5074, -0.1278, '2025-06-21', time);
    expect([at(2108), at(2111)].map((row) => row['civil'])).toEqual(['day', 'night']);
    expect([at(2120), at(2123)].map((row) => row['hour_rule'])).toEqual(['day', 'night']);
    // Sunrise 0343, twilight begins 0255.
    expect([at(254), at(257)].map((row) => row['civil'])).toEqual(['night', 'day']);
    expect([at(241), at(245)].map((row) => row['hour_rule'])).toEqual(['night', 'day']);
  });
});
