// LANDING_BRIEF with an alternate: its rows at the right are those of a call of its own, and what is wrong with it leaves the destination alone.
import { describe, expect, it } from 'vitest';
import { inventedCorrections, inventedTable } from '../../../functions/runway/inventedExample';
import { call } from '../../support/call';

const destination = [inventedTable, 'over 50 ft', 1000, 270, 700, 0, 1013.25, 15, 270, 9, 1.67, inventedCorrections, '', '', '', 'm', 'kg'];
const place = [950, 120, 900, 500, 1008, 20, 150, 12, 20, '', ''];
const grass = [['dry grass', 15, 1, 1]];
const laid = (alternate: unknown, corrections: unknown = grass): unknown[][] =>
  call('LANDING_BRIEF', ...destination, alternate, corrections) as unknown[][];
const part = (rows: readonly unknown[][], from: number): unknown[][] => rows.map((row) => row.slice(from, from + 3)).filter(([item]) => item !== '');

describe('LANDING_BRIEF with an alternate', () => {
  const alone = call('LANDING_BRIEF', ...destination) as unknown[][];

  it('lays it out at the right as a call of its own would', () => {
    const [weight, runway, available, elevation, setting, temperature, from, wind, gust] = place;
    const air = [elevation, setting, temperature, from, wind];
    const own = call('LANDING_BRIEF', inventedTable, 'over 50 ft', weight, runway, available, ...air, 1.67, grass, gust, '', '', 'm', 'kg');
    const rows = laid([place]);
    expect(part(rows, 0)).toEqual(alone);
    expect(part(rows, 3)).toEqual(own);
    expect(laid(place.map((cell) => [cell]))).toEqual(rows);
  });

  it('is none where the row is blank', () => expect(laid([place.map(() => '')])).toEqual(alone));

  it.each([
    ['a blank setting', [[...place.slice(0, 4), '', ...place.slice(5)]], grass, 'not computed: missing or not to be read: altimeter setting'],
    ['a gust below the wind', [[...place.slice(0, 8), 5, '', '']], grass, 'gust_kt must be'],
    ['a correction that cannot be read', [place], [['headwind', 10, 9, '']], '"headwind" of the aircraft\'s corrections cannot be read'],
  ])('tells %s, and leaves the destination alone', (_, alternate, corrections, reason) => {
    const rows = laid(alternate, corrections);
    expect(part(rows, 0)).toEqual(alone);
    expect(part(rows, 3)).toEqual([['verdict', 'UNKNOWN', expect.stringContaining(reason) as string]]);
  });

  it('has corrections of its own from the same call', () => {
    const rows = call('RUNWAY_CORRECTIONS', 'landing', 'paved, dry', 0, '', 'grass, dry', '?') as unknown[][];
    expect(rows.map((row) => row.slice(6, 11))).toEqual([
      ['grass dry', 15, 1, 1, 'OK'],
      ['slope', 0, 1, 0, 'UNKNOWN'],
    ]);
  });
});
