// LEDGER_FOR_FLIGHT at its own door: the cards of the aircraft flown through a trip, in zones on both sides of Greenwich, and LEDGER_STATUS as its judge.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { civilDateFromDayNumber, dayNumber, isoDate } from '../../../core/basics/civilDate';
import type { DateHost } from '../../../functions/registry/dateHost';
import { evaluate } from '../../../functions/registry/evaluate';
import { utcDateHost } from '../../../functions/registry/utcDateHost';
import { call, declarationOf, plain, sentenceOf } from '../../support/call';

type Row = readonly unknown[];
/** Rows of aircraft, database, series, loaded, verified, changes at. */
const columns = (rows: readonly Row[], count: number): unknown[][][] =>
  Array.from({ length: count }, (_, column) => rows.map((row) => [row[column] ?? '']));

interface Asked {
  readonly first?: string;
  readonly last?: string;
  readonly asOf?: string;
  readonly licences?: unknown;
  readonly flown?: string;
  readonly loadedOn?: readonly string[];
}
function given(
  rows: readonly Row[],
  { first = '2024-11-11', last = first, asOf = first, licences = '', flown = 'North', loadedOn }: Asked,
): unknown[] {
  const all = columns(rows, 6);
  const end = loadedOn === undefined ? [] : [loadedOn.map((day) => [day])];
  return [...all.slice(0, 5), licences, all[5], flown, first, last, asOf, ...end];
}
const judged = (rows: readonly Row[], asked: Asked = {}): unknown[][] =>
  (call('LEDGER_FOR_FLIGHT', ...given(rows, asked)) as unknown[][]).map((row) => row.map(plain));
const whole = (rows: readonly Row[], asked: Asked = {}): Row => judged(rows, asked)[0]?.slice(1) ?? [];

// 31 October, 28 November and 26 December 2024 are AIRAC dates 2411, 2412, 2413 (Airservices Australia, cycle identifiers 2024).
const good: Row = ['North', 'navigation', '28-day', '2024-10-31', '2024-10-31'];
const but = (changes: Readonly<Record<number, unknown>>): Row => Array.from({ length: 6 }, (_, index) => changes[index] ?? good[index] ?? '');

describe('the days of the trip', () => {
  it('are covered to the last, and no further', () => {
    expect(whole([good], { last: '2024-11-27' })).toEqual([
      'OK',
      '2024-11-27',
      '1 item good through the last day of the trip; the first to lapse: navigation, 27 November 2024',
    ]);
    expect(whole([good], { last: '2024-11-28' })).toEqual(['NO', '2024-11-27', 'navigation: out of date from 28 November 2024 00:00']);
    expect(whole([good], { first: '2024-10-31', asOf: '2024-10-31' })[0]).toBe('OK');
    expect(whole([good], { first: '2024-10-30', last: '2024-11-01', asOf: '2024-10-30' })[0]).toBe('UNKNOWN');
    expect(whole([good], { first: '2024-11-02', asOf: '2024-10-31' })[0]).toBe('OK');
  });

  it('are CHECK where only a part of the first or the last is covered', () => {
    const later = but({ 5: '0901Z' });
    expect(whole([later], { last: '2024-11-28' })[2]).toBe('navigation: out of date from 09:01 on the last day of the trip');
    expect(whole([later], { first: '2024-10-31', last: '2024-11-02', asOf: '2024-10-31' })[2]).toBe(
      'navigation: in force only from 09:01 on the first day of the trip',
    );
    expect(whole([later], { last: '2024-11-28' })[0]).toBe('CHECK');
    expect(whole([later], { last: '2024-11-29' })[0]).toBe('NO');
  });

  it('are those of the spreadsheet’s zone', () => {
    const shifted = (hours: number): DateHost => ({
      ...utcDateHost,
      toCivil: (date) => utcDateHost.toCivil(new Date(date.getTime() + hours * 3_600_000)),
      fromCivil: (date) => new Date(utcDateHost.fromCivil(date).getTime() - hours * 3_600_000),
    });
    const word = (hours: number, last: string): unknown =>
      (evaluate(declarationOf('LEDGER_FOR_FLIGHT'), given([good], { last }), shifted(hours)) as unknown[][])[0]?.[1];
    expect([word(-5, '2024-11-26'), word(-5, '2024-11-27'), word(-5, '2024-11-28')]).toEqual(['OK', 'CHECK', 'NO']);
    expect([word(10, '2024-11-27'), word(10, '2024-11-28'), word(10, '2024-11-29')]).toEqual(['OK', 'CHECK', 'NO']);
  });

  it('in the wrong order are refused, and before as_of are UNKNOWN', () => {
    expect(sentenceOf('LEDGER_FOR_FLIGHT', ...given([good], { last: '2024-11-10' }))).toMatch(/^LEDGER_FOR_FLIGHT: last_day must be .*; got/);
    expect(whole([good], { asOf: '2024-11-12' })[0]).toBe('UNKNOWN');
  });
});

describe('the cards', () => {
  it('are those of the aircraft flown', () => {
    const other = but({ 0: 'South', 3: '2024-01-25' });
    expect(judged([good, other], { flown: 'north' }).map(([item]) => item)).toEqual(['all', 'navigation']);
    expect(whole([good, other], { flown: 'South' })[0]).toBe('NO');
    expect(judged([good], { flown: 'Kestrel' })).toEqual([
      ['all', 'UNKNOWN', '', 'cards: no card is listed for Kestrel'],
      ['cards', 'UNKNOWN', '', 'no card is listed for Kestrel'],
    ]);
    expect(whole([good, but({ 0: '#N/A' })])[0]).toBe('UNKNOWN');
  });

  it.each([
    [{ 2: 'monthly' }, 'UNKNOWN', 'series missing or not one that can be read'],
    [{ 3: '2024-10-30' }, 'UNKNOWN', 'no date of this series: look at the card'],
    [{ 3: 'October' }, 'UNKNOWN', 'effective date missing or not a date'],
    [{ 5: 'noon' }, 'UNKNOWN', 'time of the change cannot be read'],
    [{ 4: 'no' }, 'CHECK', 'not verified'],
    [{ 4: 'yes' }, 'CHECK', 'verified, but the day is not written down'],
    [{ 4: '2024-11-12' }, 'CHECK', 'verified on 12 November 2024, a day still to come'],
    [{ 4: '2024-09-01' }, 'CHECK', 'verified on 1 September 2024, before this load'],
  ])('with %j are %s', (changes, verdict, why) => {
    expect(whole([but(changes)])[0]).toBe(verdict);
    expect(whole([but(changes)])[2]).toBe(`navigation: ${why}`);
  });

  it('that differ are CHECK, each', () => {
    const rows = judged([good, but({ 2: '56-day' }), but({ 3: '2024-10-03', 4: '2024-10-03', 2: '56 from 2024-10-03' })]);
    expect(rows.slice(1).map(([, verdict, , why]) => [verdict, why])).toEqual(Array(3).fill(['CHECK', 'differs from another card of this database']));
  });

  it('are verified from the day of their load on', () => {
    expect(whole([good], { loadedOn: ['2024-10-31'] })[0]).toBe('OK');
    expect(whole([good], { loadedOn: ['2024-11-01'] })[2]).toBe('navigation: verified on 31 October 2024, before this load');
    expect(whole([good], { loadedOn: ['2024-11-12'], last: '2024-11-13' })[0]).toBe('UNKNOWN');
  });

  it('need a licence to the last day where there is one', () => {
    const licence = (end: string) => [['all', 'navigation', end]];
    expect(whole([good], { licences: licence('2024-11-20'), last: '2024-11-20' })[0]).toBe('OK');
    expect(whole([good], { licences: licence('2024-11-20'), last: '2024-11-21' })).toEqual([
      'CHECK',
      '2024-11-27',
      'navigation: licence ended 20 November 2024',
    ]);
    expect(whole([good], { licences: licence('') })[0]).toBe('CHECK');
    expect(whole([good], { licences: [['North', '', '2024-11-20']] })).toEqual([
      'CHECK',
      '2024-11-27',
      'licences: licence in row 1 of the list: database missing, or not in words',
    ]);
  });
});

describe('random ledgers, judged by LEDGER_STATUS day by day', () => {
  const iso = (day: number): string => isoDate(civilDateFromDayNumber(day));
  const effective = dayNumber({ year: 2024, month: 10, day: 31 });
  const card = fc
    .record({
      whose: fc.constantFrom('North', 'South'),
      data: fc.constantFrom('navigation', 'obstacles', 'charts'),
      cycle: fc.integer({ min: -2, max: 1 }),
      days: fc.constantFrom(28, 56),
      off: fc.constantFrom(0, 0, 0, 1),
      at: fc.constantFrom('', '0901Z'),
      seen: fc.boolean(),
    })
    .map(({ whose, data, cycle, days, off, at, seen }): Row => [
      whose,
      data,
      days,
      iso(effective + cycle * days + off),
      seen ? iso(effective + cycle * days) : 'no',
      at,
    ]);

  it('is OK only where every day is, and NO where a card is out of date on one', () => {
    fc.assert(
      fc.property(
        fc.array(card, { minLength: 1, maxLength: 6 }),
        fc.integer({ min: -10, max: 60 }),
        fc.integer({ min: 0, max: 9 }),
        (rows, start, length) => {
          const first = effective + start;
          const asked = { first: iso(first), last: iso(first + length), asOf: iso(first) };
          const got = judged(rows, asked);
          const mine = rows.map((row) => row[0] === 'North');
          const all = columns(rows, 6);
          const byDay = Array.from({ length: length + 1 }, (_, day) =>
            (call('LEDGER_STATUS', ...all.slice(0, 5), iso(first + day), '', 0, all[5]) as unknown[][]).filter((_row, index) => mine[index]),
          ).flat();
          if (byDay.some(([, , , why]) => String(why).startsWith('out of date') && !String(why).includes('from'))) expect(got[0]?.[1]).toBe('NO');
          if (byDay.some(([word]) => word !== 'OK')) expect(got[0]?.[1]).not.toBe('OK');
          else expect(got[0]?.[1]).toBe(mine.includes(true) ? 'OK' : 'UNKNOWN');
        },
      ),
      { numRuns: 300 },
    );
  });
});
