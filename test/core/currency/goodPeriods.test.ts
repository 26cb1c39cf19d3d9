// Stretches of good periods against a plain count of every period, and against the single windows of core/recency.ts.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lastDayOfItsMonth } from '../../../core/basics/calendarMonths';
import { civilDateFromDayNumber, dayNumber } from '../../../core/basics/civilDate';
import { unbroken } from '../../../core/currency/monthsExperience';
import { goodStretches, inBoth, merged, type Stretch } from '../../../core/currency/goodPeriods';
import { recencyInDays, recencyInMonths } from '../../../core/currency/recency';

const periods = fc.array(fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 4 })), { maxLength: 25 });
const totalled = (rows: readonly (readonly [number, number])[]): Map<number, number> => {
  const totals = new Map<number, number>();
  for (const [period, count] of rows) totals.set(period, (totals.get(period) ?? 0) + count);
  return totals;
};
const good = (stretches: readonly Stretch[], period: number): boolean => stretches.some(({ first, last }) => period >= first && period <= last);

describe('goodStretches', () => {
  it('agrees with a count of each period', () => {
    fc.assert(
      fc.property(periods, fc.integer({ min: 0, max: 20 }), fc.integer({ min: 1, max: 6 }), (rows, reach, needed) => {
        const totals = totalled(rows);
        const stretches = goodStretches(totals, (period) => period + reach, needed);
        for (let period = -2; period < 90; period += 1) {
          const sum = rows.filter(([at]) => at >= period - reach && at <= period).reduce((all, [, count]) => all + count, 0);
          expect(good(stretches, period), `period ${period}`).toBe(sum >= needed);
        }
        stretches.forEach((stretch, index) => expect(stretch.first).toBeGreaterThan((stretches[index - 1]?.last ?? -Infinity) + 1));
      }),
      { numRuns: 500 },
    );
  });

  it('ends where a single window of days or months ends', () => {
    const days = fc.array(fc.record({ day: fc.integer({ min: 20_000, max: 20_400 }), count: fc.integer({ min: 0, max: 4 }) }), { maxLength: 20 });
    fc.assert(
      fc.property(days, fc.integer({ min: 20_000, max: 20_500 }), fc.integer({ min: 1, max: 7 }), (rows, asOf, needed) => {
        const entries = rows.map(({ day, count }) => ({ date: civilDateFromDayNumber(day), count }));
        const past = rows.filter(({ day }) => day <= asOf);
        const today = civilDateFromDayNumber(asOf);
        const byDay = goodStretches(totalled(past.map(({ day, count }) => [day, count])), (period) => period + 89, needed);
        expect(byDay[byDay.length - 1]?.last).toBe(recencyInDays(entries, today, 90, needed).goodThroughDay);
        const month = (day: number): number => civilDateFromDayNumber(day).year * 12 + civilDateFromDayNumber(day).month - 1;
        const byMonth = goodStretches(totalled(past.map(({ day, count }) => [month(day), count])), (period) => period + 6, needed);
        const last = byMonth[byMonth.length - 1]?.last;
        const through =
          last === undefined ? undefined : lastDayOfItsMonth(dayNumber({ year: Math.floor(last / 12), month: (last % 12) + 1, day: 1 }));
        expect(through).toBe(recencyInMonths(entries, today, 6, needed).goodThroughDay);
      }),
      { numRuns: 500 },
    );
  });

  it('does not lose hours in tenths to the last bit', () => {
    const totals = new Map(Array.from({ length: 120 }, (_, index) => [index, 0.1]));
    expect(goodStretches(totals, (period) => period + 200, 12)).toEqual([{ first: 119, last: 200 }]);
  });
});

it('inBoth and merged agree with sets', () => {
  const stretch = fc
    .tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 10 }))
    .map(([first, length]) => ({ first, last: first + length }));
  fc.assert(
    fc.property(fc.array(stretch, { maxLength: 6 }), fc.array(stretch, { maxLength: 6 }), (one, other) => {
      const both = inBoth(merged(one), merged(other));
      for (let period = 0; period <= 55; period += 1) expect(good(both, period)).toBe(good(one, period) && good(other, period));
    }),
  );
});

// 14 CFR 61.57(d)(1): who has failed to meet the experience for more than six calendar months restores it only by a check. By hand.
describe('unbroken', () => {
  it('takes tasks up to six months after the last good month', () => {
    expect(
      unbroken(
        [
          { first: 0, last: 6 },
          { first: 12, last: 18 },
        ],
        [],
        6,
        6,
      ),
    ).toEqual([
      { first: 0, last: 6 },
      { first: 12, last: 18 },
    ]);
    expect(
      unbroken(
        [
          { first: 0, last: 6 },
          { first: 13, last: 19 },
        ],
        [],
        6,
        6,
      ),
    ).toEqual([{ first: 0, last: 6 }]);
  });
  it('counts later tasks from the month of a check', () => {
    expect(
      unbroken(
        [
          { first: 0, last: 6 },
          { first: 13, last: 25 },
        ],
        [20],
        6,
        6,
      ),
    ).toEqual([
      { first: 0, last: 6 },
      { first: 20, last: 25 },
      { first: 20, last: 26 },
    ]);
    expect(
      unbroken(
        [
          { first: 0, last: 6 },
          { first: 40, last: 46 },
        ],
        [13],
        6,
        6,
      ),
    ).toEqual([
      { first: 0, last: 6 },
      { first: 13, last: 19 },
    ]);
  });
});
