// Shares of a cost: they add up to the last unit whatever the parts, and nobody is more than one unit from his exact part.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { costStatement, decimalsOf, minorUnits, splitUnits, type KnownCost, type Participation, type UnknownCost } from '../../../core/ledger/shares';

const part = fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 50 }), fc.double({ min: 0.1, max: 500, noNaN: true }));
const parts = fc.array(part, { minLength: 1, maxLength: 30 }).filter((all) => all.some((one) => one > 0));
const sum = (all: readonly number[]): number => all.reduce((total, one) => total + one, 0);

describe('the largest remainder', () => {
  it('adds up, within one unit of the exact part, nothing to a part of none', () => {
    fc.assert(
      fc.property(fc.integer({ min: -10_000_000, max: 10_000_000 }), parts, (units, given) => {
        const shares = splitUnits(units, given);
        expect(sum(shares)).toBe(units);
        shares.forEach((share, index) => {
          const exact = (units * (given[index] ?? 0)) / sum(given);
          expect(Math.abs(share - exact)).toBeLessThan(1 + 1e-6);
          expect(Number.isInteger(share)).toBe(true);
          if (given[index] === 0) expect(share).toBe(0);
        });
      }),
      { numRuns: 2000 },
    );
  });

  it('never gives more to a smaller part, unless only the last bits are smaller', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_000_000 }), parts, (units, given) => {
        const shares = splitUnits(units, given);
        for (const [i, one] of given.entries())
          for (const [j, other] of given.entries()) if (one > other * (1 + 1e-9)) expect(shares[i]).toBeGreaterThanOrEqual(shares[j] ?? 0);
      }),
    );
  });

  // By hand: 100 x 6.6 / 9 is 73 1/3 and 100 x 1.2 / 9 is 13 1/3, so the one cent left is the first one's; 690,144 x 1.2 / 2 is
  // 414,086.4, x 0.7 / 2 241,550.4, x 0.1 / 2 34,507.2. In binary fractions the later of the equals comes out larger.
  it('serves the earlier of equal fractions first, whatever the last bits say', () => {
    expect(splitUnits(100, [6.6, 1.2, 1.2])).toEqual([74, 13, 13]);
    expect(splitUnits(690_144, [1.2, 0.7, 0.1])).toEqual([414_087, 241_550, 34_507]);
    expect(splitUnits(-100, [6.6, 1.2, 1.2])).toEqual([-74, -13, -13]);
  });

  // By hand: 24 units over 10,021 are quotas of 12.25, 10.54, 0.388, 0.386, 0.386 and 0.05: whole units 12 and 10, and the
  // two left go to 0.54 and to 0.388.
  it('gives the units left over to the largest fractions', () => {
    expect(splitUnits(24, [5117, 4400, 162, 161, 161, 20])).toEqual([12, 11, 1, 0, 0, 0]);
  });

  it('refuses where nobody takes part', () => expect(() => splitUnits(100, [0, 0])).toThrow('nothing-to-share-by'));
});

it('counts minor units by currency, and refuses an amount finer than a coin', () => {
  expect(minorUnits(1234.56, decimalsOf('EUR'))).toBe(123456);
  expect(minorUnits(0.29, 2)).toBe(29);
  expect(minorUnits(999_999_999.99, 2)).toBe(99_999_999_999);
  expect(minorUnits(10.005, 2)).toBeUndefined();
  expect(minorUnits(10.5, decimalsOf('JPY'))).toBeUndefined();
  expect(minorUnits(1.234, decimalsOf('KWD'))).toBe(1234);
});

describe('the statement', () => {
  const named = (name: string) => ({ name, key: name.toLowerCase() });
  const aircraft = fc.constantFrom('north', 'south', 'west', 'all').map(named);
  const known = fc.record<KnownCost>({
    aircraft,
    units: fc.integer({ min: -1000, max: 500_000 }),
    currency: fc.constantFrom('EUR', 'CHF', 'JPY'),
    rule: fc.constantFrom('equal', 'hours', 'share'),
  });
  const cost = fc.oneof(known, fc.record<UnknownCost>({ aircraft, unknown: fc.constantFrom('aircraft', 'amount', 'too fine', 'currency', 'rule') }));
  const row = fc.record<Participation>({ member: fc.constantFrom('Ada', 'Bo', 'Cy', 'Di').map(named), aircraft, hours: part, share: part });

  it('shares out exactly what the aircraft cost, currency by currency', () => {
    fc.assert(
      fc.property(fc.array(cost, { maxLength: 12 }), fc.array(row, { maxLength: 10 }), (costs, rows) => {
        const { members, aircraft: fleet, unshared, totals, unknown } = costStatement(costs, rows);
        const units = (owed: readonly { readonly currency: string; readonly units: number }[], currency: string): number =>
          sum(owed.filter((one) => one.currency === currency).map((one) => one.units));
        for (const currency of ['EUR', 'CHF', 'JPY']) {
          const spent = sum(costs.map((one) => ('units' in one && one.currency === currency ? one.units : 0)));
          expect(units(members, currency) + units(unshared, currency)).toBe(spent);
          expect(units(fleet, currency)).toBe(spent);
          expect(units(totals, currency)).toBe(spent);
        }
        for (const member of members) expect(sum(member.of.map((one) => one.units))).toBe(member.units);
        expect(unknown.length).toBe(costs.filter((one) => 'unknown' in one).length);
      }),
      { numRuns: 1000 },
    );
  });
});
