// The flight afterwards, and what is used up by the minute: times across midnight, landings by day and night, cost to the cent, oxygen.
import { describe, expect, it } from 'vitest';
import { answer, call, sentenceOf } from '../../support/call';

const london = [51.5074, -0.1278, 51.5074, -0.1278] as const;
const record = (date: string, times: readonly unknown[], ...rules: readonly unknown[]) =>
  answer('FLIGHT_RECORD', date, ...times, ...london, ...rules);

describe('FLIGHT_RECORD', () => {
  it('counts across midnight, the next time of its name each', () => {
    expect(record('2025-06-21', ['2350Z', '0005Z', '0105Z', '0112Z'])).toMatchObject({ block_hours: 82 / 60, flight_hours: 1 });
    expect(record('2025-06-21', ['0900Z', '0908Z', '1308Z', '1315Z'])).toMatchObject({ block_hours: 4.25, flight_hours: 4 });
  });

  it('counts a landing by the night of whose rules it is', () => {
    // Sunset 2022, end of civil twilight 2109 (US Naval Observatory): a landing at 2115 is by night for EASA, and by day for 61.57(b) until 2122.
    const times = ['2000Z', '2010Z', '2115Z', '2120Z'];
    expect(record('2025-06-21', times)).toMatchObject({ take_off: 'day', landing: 'day', day_landings: 1, night_landings: 0 });
    expect(record('2025-06-21', times, 'EASA')).toMatchObject({ take_off: 'day', landing: 'night', day_landings: 0, night_landings: 1 });
    // A landing at 0320 of the next day: twilight began 0255, sunrise is 0343.
    expect(record('2025-06-20', ['2300Z', '2310Z', '0320Z', '0325Z'])).toMatchObject({ take_off: 'night', landing: 'day' });
    expect(record('2025-06-20', ['2200Z', '2210Z', '0230Z', '0235Z'])).toMatchObject({ take_off: 'night', landing: 'night', night_landings: 1 });
  });

  it('refuses times in the wrong order', () => {
    expect(sentenceOf('FLIGHT_RECORD', '2025-06-21', '0900Z', '0850Z', '1000Z', '1005Z', ...london)).toBe(
      'FLIGHT_RECORD: take_off_z must be within 4 hours after off_block_z (0900Z); got 0850Z.',
    );
    expect(sentenceOf('FLIGHT_RECORD', '2025-06-21', '0900Z', '0910Z', '0905Z', '0915Z', ...london)).toBe(
      'FLIGHT_RECORD: landing_z must be within 20 hours after take_off_z (0910Z); got 0905Z.',
    );
  });

  it('takes a whole column, and spoils only the row that is wrong', () => {
    const column = (...cells: unknown[]): unknown[][] => cells.map((one) => [one]);
    const got = call(
      'FLIGHT_RECORD',
      '2025-06-21',
      column('0900Z', 'nine'),
      column('0910Z', '0910Z'),
      column('1010Z', '1010Z'),
      column('1015Z', '1015Z'),
      ...london,
    ) as unknown[][];
    expect(got[0]?.[1]).toBe(1);
    expect(got[1]?.[0]).toContain('FLIGHT_RECORD: off_block_z must be a time of day in UTC');
    expect(got[1]?.[4]).toBe('');
  });
});

describe('FLIGHT_COST', () => {
  const cost = (...given: readonly unknown[]): unknown[][] => call('FLIGHT_COST', ...given) as unknown[][];

  it('shares to the last cent as COST_SPLIT does', () => {
    const parts = [[2], [1], [1]];
    const rows = cost(1.3, 187.5, 'dry', 11.7, 6.43, 18.05, parts);
    const total = Number(rows[3]?.[1]);
    expect(total).toBeCloseTo(243.75 + 75.23 + 18.05, 9);
    expect(rows.slice(4).map(([, share]) => share)).toEqual((call('COST_SPLIT', total, parts) as unknown[][]).flat());
  });

  it('leaves the fuel out of a wet rate, and shares nothing where nobody is named', () => {
    expect(cost(2, 100, 'wet', 15, 6, 10)).toEqual([
      ['aircraft', 200],
      ['fuel', 0],
      ['fees', 10],
      ['total', 210],
    ]);
    expect(cost(2, 100, 'wet', 15, 6, 10, [[''], ['']])).toHaveLength(4);
  });

  it('refuses a sharing with no part above nothing', () =>
    expect(sentenceOf('FLIGHT_COST', 2, 100, 'wet', 15, 6, 10, [[0], [0]])).toContain('FLIGHT_COST: '));
});

describe('OXYGEN_WANTED', () => {
  const wanted = (feet: number, minutes: number, rules: string): unknown[] =>
    (call('OXYGEN_WANTED', feet, minutes, rules, 1, 1) as unknown[][])[0]?.slice(0, 2) ?? [];

  it.each([
    ['FAA', 12500, 300, 0, 0],
    ['FAA', 12600, 30, 0, 0],
    ['FAA', 14000, 31, 1, 0],
    ['FAA', 14100, 31, 31, 0],
    ['FAA', 15000, 20, 20, 0],
    ['FAA', 15100, 20, 20, 20],
    ['EASA', 10000, 300, 0, 0],
    ['EASA', 13000, 40, 10, 0],
    ['EASA', 13100, 40, 40, 40],
  ])('%s at %i ft for %i minutes', (rules, feet, minutes, crew, passengers) => expect(wanted(feet, minutes, rules)).toEqual([crew, passengers]));
});

describe('DEICING_FLUID', () => {
  it('tells what is missing', () => expect(answer('DEICING_FLUID', 3, 6, 45)).toEqual({ minutes: 30, left: -1.5, verdict: 'NO' }));
});
