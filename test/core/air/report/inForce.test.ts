// What a forecast can have in a stretch of time, against the same worked out minute by minute in the plainest way.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Change } from '../../../../core/air/report/changes';
import { inForce } from '../../../../core/air/report/inForce';
import { nearestMoment, placeTaf } from '../../../../core/air/report/moments';
import { readTaf } from '../../../../core/air/report/taf';
import { dayNumber } from '../../../../core/basics/civilDate';

const at = (iso: string): number => Date.parse(`${iso}:00Z`) / 60_000;

type Group = readonly [kind: Change['kind'], from: number, to: number, metres: number | undefined, ceiling: number | undefined];

/** In the order of their beginnings, as forecasts are written; a BECMG ends before the next lasting change begins. */
const forecasts = fc
  .tuple(
    fc.uniqueArray(fc.integer({ min: 2, max: 23 }), { minLength: 0, maxLength: 4 }),
    fc.array(fc.tuple(fc.boolean(), fc.integer({ min: 1, max: 20 }), fc.integer({ min: 1, max: 20 }), fc.nat(2)), { minLength: 4, maxLength: 4 }),
    fc.array(fc.tuple(fc.integer({ min: 0, max: 22 }), fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 20 }), fc.boolean()), {
      maxLength: 3,
    }),
  )
  .map(([starts, lasting, temporary]): Group[] => {
    const hours = [...starts].sort((one, other) => one - other);
    return [
      ['FROM', 0, 24 * 60, 5000, 3000],
      ...hours.map((hour, index): Group => {
        const [isFrom = true, metres = 1, hundreds = 1, says = 0] = lasting[index] ?? [];
        const until = Math.min(hours[index + 1] ?? 24, hour + 2);
        return isFrom
          ? ['FROM', hour * 60, 24 * 60, metres * 100, hundreds * 100]
          : ['BECOMING', hour * 60, until * 60, says === 1 ? undefined : metres * 100, says === 2 ? undefined : hundreds * 100];
      }),
      ...temporary.map(([hour, length, metres, likely]): Group => [
        likely ? 'PROBABLE' : 'TEMPORARY',
        hour * 60,
        Math.min(24, hour + length) * 60,
        metres * 100,
        undefined,
      ]),
    ];
  });

const asChange = ([kind, from, to, metres, feet]: Group): Change => ({
  kind,
  from,
  to,
  written: '',
  conditions: {
    unread: [],
    ...(metres === undefined ? {} : { visibility: { metres, orMore: false } }),
    ...(feet === undefined ? {} : { clouds: [{ amount: 'BKN' as const, feet, kind: '' }] }),
  },
});

/** Every value that can hold at a minute: what was before a BECMG and what comes of it both, until it ends. */
function valuesAt(groups: readonly Group[], minute: number, which: 3 | 4): number[] {
  let lasting: number[] = [];
  for (const group of groups) {
    const [kind, from, to] = group;
    const value = group[which];
    if (minute < from || value === undefined) continue;
    if (kind === 'FROM') lasting = [value];
    else if (kind === 'BECOMING') lasting = minute >= to ? [value] : [...lasting, value];
  }
  const passing = groups.filter(([kind, from, to]) => /TEMP|PROB/.test(kind) && from <= minute && minute < to).flatMap((group) => group[which] ?? []);
  return [...lasting, ...passing];
}

describe('what can be in force', () => {
  it('is what a walk through the minutes finds, for 5,000 forecasts', () => {
    fc.assert(
      fc.property(forecasts, fc.integer({ min: 0, max: 23 * 12 }), fc.integer({ min: 0, max: 24 }), (groups, startStep, length) => {
        const [start, end] = [startStep * 5, Math.min(24 * 60, startStep * 5 + length * 5)];
        const held = inForce(groups.map(asChange), start, end);
        const minutes = Array.from({ length: (end - start) / 5 + 1 }, (_, step) => start + step * 5);
        const walked = (which: 3 | 4): number => Math.min(...minutes.flatMap((minute) => valuesAt(groups, minute, which)));
        expect(Math.min(...held.flatMap(({ conditions }) => conditions.visibility?.metres ?? []))).toBe(walked(3));
        expect(Math.min(...held.flatMap(({ conditions }) => conditions.clouds?.[0]?.feet ?? []))).toBe(walked(4));
      }),
      { numRuns: 5000, seed: 107 },
    );
  });
});

describe('a day of the month', () => {
  it.each([
    [28, 830, '2026-11-28T14:30', undefined, '2026-11-28T13:50'],
    [30, 1430, '2026-12-01T00:30', undefined, '2026-11-30T23:50'],
    [31, 1430, '2027-01-01T00:30', undefined, '2026-12-31T23:50'],
    [28, 1430, '2027-03-01T00:30', undefined, '2027-02-28T23:50'],
    [29, 1430, '2028-03-01T00:30', undefined, '2028-02-29T23:50'],
    [29, 1430, '2027-03-01T00:30', undefined, '2027-03-29T23:50'],
    [1, 10, '2026-11-30T23:30', undefined, '2026-12-01T00:10'],
    [28, 830, '2026-12-28T14:30', '2026-11-28', '2026-11-28T13:50'],
    [29, 60, '2026-11-29T02:00', '2026-11-28', '2026-11-29T01:00'],
    [30, 60, '2026-11-30T02:00', '2026-11-28', '2026-10-30T01:00'],
    [31, 60, '2026-07-14T02:00', '2026-03-02', '2026-01-31T01:00'],
  ])('%i at minute %i for a use at %s, judged on %s, is %s', (day, minutes, use, asOf, expected) => {
    const [year = 0, month = 0, date = 0] = (asOf ?? '').split('-').map(Number);
    const latest = asOf === undefined ? Infinity : (dayNumber({ year, month, day: date }) + 1) * 1440 + 720;
    expect(nearestMoment({ day, minutes }, at(use), latest)).toBe(at(expected));
  });
});

describe('a forecast on the calendar', () => {
  it.each([
    ['TAF ZZXA 252300Z 2600/2706 CAVOK', '2026-11-26T05:00', '2026-11-26T00:00', '2026-11-27T06:00'],
    ['TAF ZZXA 301100Z 3012/0112 CAVOK', '2026-11-30T20:00', '2026-11-30T12:00', '2026-12-01T12:00'],
    ['TAF ZZXA 311700Z 3118/0124 CAVOK', '2027-01-01T23:00', '2026-12-31T18:00', '2027-01-02T00:00'],
    ['TAF ZZXA 281700Z 2818/2824 CAVOK', '2027-02-28T23:00', '2027-02-28T18:00', '2027-03-01T00:00'],
    ['TAF ZZXA 310500Z 3106/0106 CAVOK FM010100 CAVOK', '2026-11-01T02:00', '2026-10-31T06:00', '2026-11-01T06:00'],
    ['TAF ZZXA 2506/2612 CAVOK', '2026-11-25T20:00', '2026-11-25T06:00', '2026-11-26T12:00'],
  ])('%s', (text, near, from, to) => {
    expect(placeTaf(readTaf(text), at(near))).toMatchObject({ from: at(from), to: at(to), outside: [] });
  });

  it.each([
    'TAF ZZXA 251100Z 2512/2511 CAVOK',
    'TAF ZZXA 251100Z 2506/2706 CAVOK',
    'TAF ZZXA 101100Z 2506/2606 CAVOK',
    'TAF ZZXA 251100Z 2512/2512 CAVOK',
  ])('of %s has no validity that can be', (text) => expect(placeTaf(readTaf(text), at('2026-11-25T12:00'))).toBeUndefined());

  it('names a change outside its validity', () => {
    expect(placeTaf(readTaf('TAF ZZXA 251100Z 2512/2612 CAVOK TEMPO 2610/2614 RA BECMG 2412/2414 0400'), at('2026-11-25T12:00'))?.outside).toEqual([
      'TEMPO 2610/2614',
      'BECMG 2412/2414',
    ]);
  });
});
