// Dues of random clubs against exact fractions of BigInt, written anew: every member's exact part, the sum to the cent, the day of each cost.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../core/basics/civilDate';
import { duesOf, fallsOn, partsOfHour, sharesOf, timesFraction, type DuesCost, type DuesMember } from '../../../core/ledger/dues';

const named = (name: string) => ({ name, key: name });
const day = (year: number, month: number, dayOfMonth: number): number => dayNumber({ year, month, day: dayOfMonth });
const [first, last] = [day(2026, 1, 1), day(2026, 6, 30)];

const optionalDay = fc.option(fc.integer({ min: first - 60, max: last + 60 }), { nil: undefined });
const members = fc
  .array(
    fc.record({
      joinedDay: optionalDay,
      leftDay: optionalDay,
      share: fc.integer({ min: 0, max: 100_000 }),
      hours: fc.integer({ min: 0, max: 300 * partsOfHour }),
      forward: fc.integer({ min: -50_000, max: 50_000 }),
    }),
    { maxLength: 12 },
  )
  .map((drawn) => drawn.map((member, index): DuesMember => ({ named: named(`m${index}`), ...member })));
const costs: fc.Arbitrary<DuesCost[]> = fc.array(
  fc.record({
    name: fc.constantFrom('hangar', 'insurance', 'data', 'fuel'),
    units: fc.integer({ min: -200_000, max: 2_000_000 }),
    rule: fc.constantFrom('equal', 'share', 'hours', 'per hour'),
    fromDay: optionalDay,
    everyMonths: fc.option(fc.integer({ min: 1, max: 14 }), { nil: undefined }),
    toDay: optionalDay,
  }),
  { maxLength: 6 },
);

/** The same day so many months later by the calendar of JavaScript, held to the last day of a shorter month. */
function monthsLater(from: number, months: number): number {
  const at = new Date(from * 86_400_000);
  const [year, month, dayOfMonth] = [at.getUTCFullYear(), at.getUTCMonth() + months, at.getUTCDate()];
  const longest = new Date(Date.UTC(year, month + 1, 0)).getUTCDate();
  return Date.UTC(year, month, Math.min(dayOfMonth, longest)) / 86_400_000;
}

/** Every day of the period is asked whether the cost falls on it. */
function countedDays({ fromDay = first, everyMonths, toDay = Infinity }: DuesCost): number[] {
  const terms = everyMonths === undefined ? [fromDay] : Array.from({ length: 40 }, (_, term) => monthsLater(fromDay, term * everyMonths));
  return Array.from({ length: last - first + 1 }, (_, index) => first + index).filter((one) => one <= toDay && terms.includes(one));
}

const weight = (member: DuesMember, rule: DuesCost['rule'], on: number): bigint => {
  if (member.joinedDay !== undefined && on < member.joinedDay) return 0n;
  if (member.leftDay !== undefined && on > member.leftDay) return 0n;
  return rule === 'equal' ? 1n : BigInt(rule === 'share' ? member.share : member.hours);
};

describe('dues', () => {
  it('charge every member less than a cent an occurrence from his exact part, and together what the costs come to', () => {
    fc.assert(
      fc.property(members, costs, (club, all) => {
        const dues = duesOf(club, all, [], first, last);
        const perName = new Map<string, bigint>();
        // Exact parts as numerators over one common denominator of all sums of weights.
        const sumOf = (cost: DuesCost, on: number): bigint => club.reduce((sum, member) => sum + weight(member, cost.rule, on), 0n);
        club.forEach((member, index) => {
          let numerator = 0n;
          let denominator = 1n;
          let occurrences = 0n;
          const add = (top: bigint, bottom: bigint): void => {
            numerator = numerator * bottom + top * denominator;
            denominator *= bottom;
            occurrences += 1n;
          };
          for (const cost of all) {
            if (cost.rule === 'per hour') add(BigInt(cost.units) * BigInt(member.hours), BigInt(partsOfHour));
            else
              for (const on of countedDays(cost)) {
                const sum = sumOf(cost, on);
                if (sum > 0n) add(BigInt(cost.units) * weight(member, cost.rule, on), sum);
              }
          }
          const charged = BigInt(dues.accounts[index]?.charged ?? 0);
          const off = charged * denominator - numerator;
          expect((off < 0n ? -off : off) <= occurrences * denominator).toBe(true);
          expect(dues.accounts[index]?.balance).toBe(member.forward + Number(charged));
        });
        let due = 0n;
        for (const cost of all) {
          if (cost.rule === 'per hour') continue;
          const times = BigInt(countedDays(cost).length);
          due += BigInt(cost.units) * times;
          perName.set(cost.name, (perName.get(cost.name) ?? 0n) + BigInt(cost.units) * times);
        }
        const shared = dues.accounts.flatMap(({ charges }) => charges.filter(({ rule }) => rule !== 'per hour'));
        const total = [...shared, ...dues.unshared].reduce((sum, { units }) => sum + BigInt(units), 0n);
        expect(total).toBe(due);
      }),
      { numRuns: 1500, seed: 21 },
    );
  });

  it('shares out by the largest remainder, nothing to a part of none', () => {
    fc.assert(
      fc.property(fc.integer({ min: -9_000_000, max: 9_000_000 }), fc.array(fc.nat(900_000), { minLength: 1, maxLength: 40 }), (units, parts) => {
        const shares = sharesOf(units, parts);
        const whole = parts.reduce((sum, part) => sum + BigInt(part), 0n);
        if (whole === 0n) {
          expect(shares).toBeUndefined();
          return;
        }
        const size = BigInt(Math.abs(units));
        const floors = parts.map((part) => (size * BigInt(part)) / whole);
        const rests = parts.map((part, index) => ({ index, rest: (size * BigInt(part)) % whole }));
        const left = Number(size - floors.reduce((sum, one) => sum + one, 0n));
        const lucky = new Set(
          rests
            .sort((one, other) => (one.rest === other.rest ? one.index - other.index : one.rest > other.rest ? -1 : 1))
            .slice(0, left)
            .map(({ index }) => index),
        );
        expect(shares?.map((share) => Math.abs(share))).toEqual(floors.map((one, index) => Number(one) + (lucky.has(index) ? 1 : 0)));
      }),
      { numRuns: 2000, seed: 22 },
    );
  });

  it('round a fraction to the nearest cent, half away from nothing, or say that it is too large', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e8, max: 1e8 }), fc.nat(4_000_000), fc.integer({ min: 1, max: 1_000_000 }), (units, top, bottom) => {
        const product = 2n * BigInt(Math.abs(units)) * BigInt(top) + BigInt(bottom);
        const expected = Number(product / (2n * BigInt(bottom))) * (units < 0 ? -1 : 1);
        expect(timesFraction(units, top, bottom) ?? NaN).toBe(product > BigInt(Number.MAX_SAFE_INTEGER) ? NaN : expected === 0 ? 0 : expected);
      }),
      { numRuns: 2000, seed: 23 },
    );
    expect(timesFraction(1e12, 1e6, 1e6)).toBeUndefined();
  });

  it('count a monthly cost as often as it falls: the last day of a month stays one', () => {
    const monthly: DuesCost = { name: 'hangar', units: 12_000, rule: 'equal', fromDay: day(2025, 10, 31), everyMonths: 1, toDay: undefined };
    expect(fallsOn(monthly, first, last)).toEqual([
      day(2026, 1, 31),
      day(2026, 2, 28),
      day(2026, 3, 31),
      day(2026, 4, 30),
      day(2026, 5, 31),
      day(2026, 6, 30),
    ]);
  });

  it('take only payments of the period and of members', () => {
    const pay = (who: string, on: number, units: number) => ({ member: named(who), day: on, units, remark: '' });
    const member: DuesMember = { named: named('Ada'), joinedDay: undefined, leftDay: undefined, share: 1, hours: 0, forward: 100 };
    const dues = duesOf([member], [], [pay('Ada', first, 70), pay('Ada', last, 20), pay('Ada', last + 1, 5), pay('Bo', first, 9)], first, last);
    expect(dues.accounts[0]).toMatchObject({ paid: 90, balance: 10 });
    expect(dues.strangers.map(({ units }) => units)).toEqual([9]);
  });
});
