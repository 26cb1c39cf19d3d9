// Tables of 20,000 filled rows, which took the square of their rows and up to a minute once; and that the quick way there finds what
// looking at every row for every row finds.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { descentCrossings, type Crossing } from '../../core/descent/crossings';
import { costStatement, splitUnits, type KnownCost, type Participation, type ShareRule } from '../../core/ledger/shares';
import { call } from '../support/call';

const count = 20_000;
const column = (of: (row: number) => unknown): unknown[][] => Array.from({ length: count }, (_, row) => [of(row)]);
const name = (text: string) => ({ name: text, key: text.toLowerCase() });

describe('20,000 rows', () => {
  it('of costs, each of an aircraft and a member of its own', () => {
    const rows = call(
      'COST_STATEMENT',
      column((row) => `A${row}`),
      column(() => 100),
      column(() => 'EUR'),
      column(() => 'hours'),
      Array.from({ length: count }, (_, row) => [`M${row}`, `A${row}`, 1, 1]),
    ) as unknown[][];
    expect(rows[count - 1]).toEqual(['member', `M${count - 1}`, 'EUR', 100, `A${count - 1} 100.00`]);
    expect(rows[rows.length - 1]).toEqual(['total', 'all costs', 'EUR', 100 * count, '']);
  });

  it('of crossing restrictions', () => {
    const rows = call(
      'DESCENT_CROSSINGS',
      column((row) => `F${row}`),
      column((row) => 10 + row / 100),
      column(() => ''),
      column((row) => 11_000 - (row % 50)),
      column((row) => (row % 3 === 0 ? 'at' : 'at or below')),
      12_000,
    ) as unknown[][];
    expect(rows.length).toBe(count);
    expect(new Set(rows.map(([, , , , verdict]) => verdict))).toEqual(new Set(['NO', 'OK']));
  });

  it('of cards, each with a licence of its own', () => {
    const rows = call(
      'LEDGER_STATUS',
      column((row) => `A${row}`),
      column(() => 'navigation'),
      column(() => '28-day'),
      column(() => '2024-10-31'),
      column(() => 'yes'),
      '2024-11-11',
      Array.from({ length: count }, (_, row) => [`A${row}`, 'navigation', row === 7 ? '2024-11-01' : '2025-06-30']),
    ) as unknown[][];
    expect([rows[6]?.[3], rows[7]?.[3]].map((reason) => /licence ended 2024-11-01/.test(String(reason)))).toEqual([false, true]);
  });
});

describe('the quick way', () => {
  it('finds the path that looking at every restriction finds', () => {
    const crossings = fc.array(
      fc.record({
        distanceNauticalMiles: fc.integer({ min: 0, max: 60 }),
        altitudeFeet: fc.integer({ min: 1, max: 14 }).map((thousands) => thousands * 1000),
        kind: fc.constantFrom('at' as const, 'at or below' as const, 'at or above' as const),
      }),
      { minLength: 1, maxLength: 12 },
    );
    const perMile = 6076.11549 * Math.tan((3 * Math.PI) / 180);
    const ceiling = ({ altitudeFeet, distanceNauticalMiles, kind }: Crossing, at: number): number =>
      kind === 'at or above' ? Infinity : altitudeFeet + perMile * Math.max(0, distanceNauticalMiles - at);
    fc.assert(
      fc.property(crossings, (given) => {
        const { outcomes } = descentCrossings(given, 12_000, 3);
        outcomes.forEach(({ reachedFeet, heldDownBy }, index) => {
          const at = given[index]?.distanceNauticalMiles ?? 0;
          const ceilings = given.map((one) => ceiling(one, at));
          const lowest = Math.min(12_000, ...ceilings);
          expect(reachedFeet).toBeCloseTo(Math.max(lowest, 12_000 - perMile * at), 1);
          if (heldDownBy !== undefined) expect(ceilings[heldDownBy]).toBeCloseTo(lowest, 1);
        });
      }),
      { numRuns: 2000, seed: 5 },
    );
  });

  it('shares costs as sharing them one by one does', () => {
    const aircraft = fc.constantFrom('all', 'North', 'South').map(name);
    const cost = fc.record({
      aircraft,
      units: fc.integer({ min: -500, max: 500 }),
      currency: fc.constantFrom('EUR', 'USD'),
      rule: fc.constantFrom<ShareRule>('equal', 'hours', 'share'),
    });
    const hours = fc.integer({ min: 0, max: 3 });
    const participation = fc.record({ member: fc.constantFrom('Ada', 'Bo', 'Cy').map(name), aircraft, hours, share: hours });
    const owedBy = (costs: readonly KnownCost[], rows: readonly Participation[]): Map<string, number> => {
      const owed = new Map<string, number>();
      for (const { aircraft: own, units, currency, rule } of costs) {
        const concerned = rows.filter((row) => own.key === 'all' || row.aircraft.key === own.key || row.aircraft.key === 'all');
        const members = [...new Set(concerned.map(({ member }) => member.name))];
        const parts = members.map((member) =>
          rule === 'equal'
            ? 1
            : concerned.filter((row) => row.member.name === member).reduce((sum, row) => sum + row[rule === 'hours' ? 'hours' : 'share'], 0),
        );
        if (!parts.some((part) => part > 0)) continue;
        splitUnits(units, parts).forEach((share, index) => {
          for (const key of [`${members[index] ?? ''} ${currency}`, `${members[index] ?? ''} ${currency} ${own.name}`])
            owed.set(key, (owed.get(key) ?? 0) + share);
        });
      }
      return owed;
    };
    fc.assert(
      fc.property(fc.array(cost, { maxLength: 12 }), fc.array(participation, { maxLength: 8 }), (costs, rows) => {
        const found = costStatement(costs, rows).members.flatMap(({ named, currency, units, of }) => [
          [`${named.name} ${currency}`, units] as const,
          ...of.map((owed) => [`${named.name} ${currency} ${owed.named.name}`, owed.units] as const),
        ]);
        expect(Object.fromEntries(found)).toEqual(Object.fromEntries(owedBy(costs, rows)));
      }),
      { numRuns: 1000, seed: 6 },
    );
  });
});
