// Recent experience against published cases, and against counting day by day without any cleverness.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer, day, plain, sentenceOf } from '../../support/call';

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
const inDays = (...given: unknown[]) => answer('RECENCY_DAYS', ...given);
const inMonths = (...given: unknown[]) => answer('RECENCY_MONTHS', ...given);
const dayMilliseconds = 86_400_000;
const firstDay = Date.parse('2024-01-15T00:00:00Z') / dayMilliseconds;
const dateOf = (days: number): Date => new Date((firstDay + days) * dayMilliseconds);

describe('RECENCY_DAYS', () => {
  it.each([
    ['2025-01-01', 'OK', 3],
    ['2025-03-31', 'OK', 3],
    ['2025-04-01', 'NO', 0],
  ])('three landings on 1 January 2025 seen on %s: %s', (asOf, verdict, count) => {
    // 14 CFR 61.57(a), the stricter reading, in which the day of the flight is one of the 90 (derived; both readings are seen).
    expect(inDays(column('2025-01-01'), column(3), asOf)).toEqual({ count, verdict, good_through: '2025-03-31' });
  });

  it('lapses with the landing that first leaves the window, whatever the order of the log', () => {
    const dates = column('2025-02-10', '2025-01-01', '2025-03-01', '2025-01-20');
    // Newest first: 1 March, 10 February, 20 January make three; 20 January and 89 days (11 + 28 + 31 + 19) are 19 April (by hand).
    expect(inDays(dates, column(1, 1, 1, 1), '2025-03-02')).toEqual({ count: 4, verdict: 'OK', good_through: '2025-04-19' });
  });

  it('does not count what is logged after the day', () => {
    expect(inDays(column('2025-01-01', '2025-06-01'), column(2, 5), '2025-02-01')).toEqual({ count: 2, verdict: 'NO', good_through: '' });
  });

  it('never calls good what was never enough within one window', () => {
    // Three landings, but the third 335 days after the first.
    expect(inDays(column('2024-01-01', '2024-01-02', '2024-12-01'), column(1, 1, 1), '2024-12-02')).toEqual({
      count: 1,
      verdict: 'NO',
      good_through: '',
    });
  });

  it('reads blank counts as none, passes over blank rows, and adds up hours', () => {
    expect(inDays(column('2025-01-01', '', '2025-01-05'), column('', '', 3), '2025-01-06')).toEqual({
      count: 3,
      verdict: 'OK',
      good_through: '2025-04-04',
    });
    const tenths = Array.from({ length: 120 }, (_, index) => [dateOf(index)]);
    expect(
      inDays(
        tenths,
        tenths.map(() => [0.1]),
        dateOf(119),
        365,
        12,
      )['verdict'],
    ).toBe('OK');
    expect(
      inDays(
        tenths,
        tenths.map(() => [0.1]),
        dateOf(119),
        365,
        12,
      )['count'],
    ).toBe(12);
  });

  it('is UNKNOWN of an empty log, NO of a log with nothing done', () => {
    expect(inDays(column('', ''), column('', ''), '2025-01-06')).toEqual({ count: 0, verdict: 'UNKNOWN', good_through: '' });
    expect(inDays(column('2025-01-01'), column(0), '2025-01-06')).toEqual({ count: 0, verdict: 'NO', good_through: '' });
  });

  it('names the row that cannot be read', () => {
    expect(sentenceOf('RECENCY_DAYS', column('2025-01-01', 'May'), column(1, 1), '2025-01-06')).toBe(
      'RECENCY_DAYS: dates must be a date from 1950 to 2100, such as 2026-01-22; got "May" (row 2).',
    );
    expect(sentenceOf('RECENCY_DAYS', column('2025-01-01', '', ''), column(1, 0, 2), '2025-01-06')).toBe(
      'RECENCY_DAYS: dates must be a date from 1950 to 2100, such as 2026-01-22; got a blank (row 3 of dates).',
    );
    expect(sentenceOf('RECENCY_DAYS', column('2025-01-01'), column(-1), '2025-01-06')).toBe(
      'RECENCY_DAYS: counts must be 0 to 1,000; got -1 (row 1).',
    );
  });
});

describe('RECENCY_MONTHS', () => {
  it.each([
    ['2013-02-01', 'OK', '2013-07-31'],
    ['2013-07-31', 'OK', '2013-07-31'],
    ['2013-08-01', 'NO', '2013-07-31'],
  ])('all tasks in January 2013 seen on %s: %s', (asOf, verdict, goodThrough) => {
    // 14 CFR 61.57(c),(d): done on 1 or 31 January 2013, current through 31 July (derived from the rule).
    for (const done of ['2013-01-01', '2013-01-31']) {
      const got = inMonths(column(done), column(6), asOf);
      expect({ verdict: got['verdict'], good_through: got['good_through'] }).toEqual({ verdict, good_through: goodThrough });
    }
  });

  it('counts March to August for a flight in September, and that month only with CHECK', () => {
    const log = [column('2024-03-01', '2024-08-31', '2024-09-15'), column(1, 4, 1)];
    expect(inMonths(...log, '2024-09-24')).toEqual({ count: 5, verdict: 'CHECK', good_through: '2024-09-30' });
    expect(inMonths(column('2024-02-29', '2024-08-31'), column(1, 5), '2024-09-24')).toEqual({ count: 5, verdict: 'NO', good_through: '2024-08-31' });
    expect(inMonths(column('2024-03-01', '2024-08-31'), column(1, 5), '2024-09-24')).toEqual({ count: 6, verdict: 'OK', good_through: '2024-09-30' });
    expect(inMonths(column('2024-09-02'), column(6), '2024-09-24')).toEqual({ count: 0, verdict: 'CHECK', good_through: '2025-03-31' });
    expect(inMonths(column('2024-09-02'), column(6), '2024-10-01')).toEqual({ count: 6, verdict: 'OK', good_through: '2025-03-31' });
  });
});

describe('against counting every day by itself', () => {
  const logs = fc.array(fc.record({ flown: fc.integer({ min: 0, max: 400 }), count: fc.integer({ min: 0, max: 3 }) }), {
    minLength: 1,
    maxLength: 12,
  });
  const asOfs = fc.integer({ min: 0, max: 500 });
  const sum = (log: readonly { flown: number; count: number }[], fits: (flown: number) => boolean): number =>
    log.filter(({ flown }) => fits(flown)).reduce((total, { count }) => total + count, 0);
  const columnsOf = (log: readonly { flown: number; count: number }[]) =>
    [log.map(({ flown }) => [dateOf(flown)]), log.map(({ count }) => [count])] as const;
  /** The last day on which `good` holds, from far ahead back to before the log. */
  const lastGood = (good: (day: number) => boolean): string => {
    for (let day = 1000; day >= -1; day -= 1) if (good(day)) return plain(dateOf(day)) as string;
    return '';
  };

  it('RECENCY_DAYS agrees', () => {
    fc.assert(
      fc.property(logs, asOfs, fc.integer({ min: 1, max: 120 }), fc.integer({ min: 1, max: 6 }), (log, asOf, days, needed) => {
        const known = log.filter(({ flown }) => flown <= asOf);
        const countOn = (day: number): number => sum(known, (flown) => flown <= day && flown > day - days);
        expect(inDays(...columnsOf(log), dateOf(asOf), days, needed)).toEqual({
          count: countOn(asOf),
          verdict: countOn(asOf) >= needed ? 'OK' : 'NO',
          good_through: lastGood((day) => countOn(day) >= needed),
        });
      }),
      { numRuns: 300 },
    );
  });

  it('RECENCY_MONTHS agrees', () => {
    const monthOf = (days: number): number => dateOf(days).getUTCFullYear() * 12 + dateOf(days).getUTCMonth();
    fc.assert(
      fc.property(logs, asOfs, fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 6 }), (log, asOf, months, needed) => {
        const known = log.filter(({ flown }) => flown <= asOf);
        const strict = sum(known, (flown) => monthOf(flown) < monthOf(asOf) && monthOf(flown) >= monthOf(asOf) - months);
        const toDate = (day: number): number => sum(known, (flown) => flown <= day && monthOf(flown) >= monthOf(day) - months);
        expect(inMonths(...columnsOf(log), dateOf(asOf), months, needed)).toEqual({
          count: strict,
          verdict: strict >= needed ? 'OK' : toDate(asOf) >= needed ? 'CHECK' : 'NO',
          good_through: lastGood((day) => toDate(day) >= needed),
        });
      }),
      { numRuns: 300 },
    );
  });
});

it('a long log in any order gives what a short one gives', () => {
  const dates = Array.from({ length: 20_000 }, (_, index) => [dateOf(-((index * 7919) % 20_000))]);
  const counts = dates.map(() => [1]);
  expect(inDays(dates, counts, day('2024-01-15'))).toEqual({ count: 90, verdict: 'OK', good_through: '2024-04-11' });
});
