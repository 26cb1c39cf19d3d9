// The runway section on the tables of the invented aircraft, which rise along weight, altitude and temperature.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inventedAircraft } from '../../../sheets-templates/demo/aircraft';
import type { TableRow } from '../../../sheets-templates/demo/aircraft/inventedAircraft';
import { call } from '../../support/call';

const headers = ['weight', 'pressure altitude', 'temperature', 'ground roll', 'over 50 ft'];
const corrections = [
  ['headwind', -10, 9, ''],
  ['tailwind', 10, 2, ''],
  ['grass', 15, 1, 1],
];
/** Spread evenly; doubles of their own accord are mostly tiny. */
const share = fc.integer({ min: 0, max: 1_000_000 }).map((part) => part / 1_000_000);

interface Today {
  readonly weight: number;
  readonly elevation: number;
  readonly temperature: number;
  readonly wind: number;
  readonly available: number;
}

const subjects = inventedAircraft.flatMap((aircraft) =>
  (['takeoff', 'landing'] as const).map((operation) => ({ name: aircraft.name, operation, rows: aircraft[operation] })),
);

const spanOf = (rows: readonly TableRow[], input: number): { readonly low: number; readonly high: number } => {
  const values = rows.map((row) => row[input] ?? 0);
  return { low: Math.min(...values), high: Math.max(...values) };
};
const within = ({ low, high }: { readonly low: number; readonly high: number }, part: number): number => low + (high - low) * part;

const argumentsOf = (rows: readonly TableRow[], today: Today): unknown[] => [
  [headers, ...rows],
  'over 50 ft',
  today.weight,
  270,
  today.available,
  today.elevation,
  1013.25,
  today.temperature,
  270,
  today.wind,
  1.5,
  corrections,
];
const valueOf = (laid: unknown, item: string): unknown => (laid as unknown[][]).find(([name]) => name === item)?.[1];

describe.each(subjects)('$name, $operation', ({ operation, rows }) => {
  const [brief, limits] = operation === 'takeoff' ? (['TAKEOFF_BRIEF', 'TAKEOFF_LIMITS'] as const) : (['LANDING_BRIEF', 'LANDING_LIMITS'] as const);
  const [weights, altitudes, temperatures] = [spanOf(rows, 0), spanOf(rows, 1), spanOf(rows, 2)];
  const factored = (today: Today): number => Number(valueOf(call(brief, ...argumentsOf(rows, today)), 'factored distance'));
  /** A runway within a tenth of what is needed, so that the limits lie inside the table as often as beyond it. */
  const anyDay = fc.record({ weight: share, elevation: share, temperature: share, wind: share, available: share }).map((parts): Today => {
    const today = {
      weight: within(weights, parts.weight),
      elevation: within(altitudes, parts.elevation),
      temperature: within(temperatures, parts.temperature),
      wind: 20 * parts.wind,
      available: 0,
    };
    return { ...today, available: factored(today) * (0.9 + 0.2 * parts.available) };
  });
  const margin = (today: Today): number => Number(valueOf(call(brief, ...argumentsOf(rows, today)), 'margin'));

  it('loses margin as it gets hotter, heavier or higher', () => {
    fc.assert(
      fc.property(anyDay, share, (today, part) => {
        const here = margin(today);
        expect(Number.isFinite(here)).toBe(true);
        for (const [key, span] of [
          ['temperature', temperatures],
          ['weight', weights],
          ['elevation', altitudes],
        ] as const) {
          const more = today[key] + (span.high - today[key]) * part;
          if (more - today[key] > 1e-6 * (span.high - span.low)) expect(margin({ ...today, [key]: more }), key).toBeLessThan(here);
        }
      }),
      { seed: 21 },
    );
  });

  it('gives limits that, typed back, leave a margin of nothing, or lie where the table ends', () => {
    const met = { weight: 0, temperature: 0, end: 0 };
    fc.assert(
      fc.property(anyDay, (today) => {
        const laid = call(limits, ...argumentsOf(rows, today));
        for (const [key, item, span] of [
          ['weight', 'greatest weight', weights],
          ['temperature', 'highest temperature', temperatures],
        ] as const) {
          const limit = valueOf(laid, item);
          if (typeof limit !== 'number') {
            expect(limit).toBe('NO');
            expect(margin({ ...today, [key]: span.low })).toBeLessThan(0);
            continue;
          }
          const left = margin({ ...today, [key]: limit });
          if (limit === span.high) met.end++;
          else {
            met[key]++;
            expect(Math.abs(left), item).toBeLessThan(1e-6);
          }
          expect(left).toBeGreaterThan(-1e-6);
        }
        expect(margin({ ...today, available: Number(valueOf(laid, 'runway needed')) })).toBeCloseTo(0, 9);
      }),
      { seed: 23, numRuns: 200 },
    );
    for (const times of Object.values(met)) expect(times).toBeGreaterThan(10);
  });
});
