// Twenty legs in one call of Code.js: with climb, descent, alternate, cruise table, own points, winds and ground. Invented.
import { performance } from 'node:perf_hooks';
import type { Script } from 'node:vm';

type Rows = readonly (readonly unknown[])[];
export type Door = (...given: readonly unknown[]) => unknown[][];

const legCount = 20;
export const target = 5;

const fields: Rows = [
  ['field', 'latitude', 'longitude', 'elevation, ft', 'station'],
  ['Amberly', 48, -100, 1200, 'XXAA'],
  ['Cold Lake', 49, -98, 800, ''],
  ['Birch', 48, -98, 900, ''],
];
const points: Rows = [
  ['point', 'position'],
  ...Array.from({ length: legCount - 1 }, (_, index) => [
    `P${index}`,
    `N48 ${String(10 + index).padStart(2, '0')} W099 ${String(50 - index).padStart(2, '0')}`,
  ]),
];
const legs: Rows = [
  ['from', 'to', 'altitude, ft', 'true airspeed, kt', 'fuel flow, an hour', 'power', 'highest ground', 'clearance'],
  ...Array.from({ length: legCount }, (_, index) => [
    index === 0 ? 'Amberly' : '',
    index === legCount - 1 ? 'Cold Lake' : `P${index}`,
    6000 + 1000 * (index % 3),
    '',
    '',
    65,
    2500 + 50 * index,
    1000,
  ]),
];
const winds: Rows = [
  ['altitude, ft', 'wind from, true', 'wind, kt', 'temperature, C'],
  ...Array.from({ length: 12 }, (_, index) => [index * 1500, 260 + 5 * index, 8 + 3 * index, 14 - 3 * index]),
];
const climb: Rows = [
  ['pressure altitude', 'minutes', 'fuel', 'distance'],
  ...Array.from({ length: 8 }, (_, index) => [index * 2000, index * 3.5, index * 0.8, index * 5]),
];
const descent: Rows = [
  [12000, 130, 700],
  [6000, 120, 500],
  [3000, 100, 500],
];
const cruise: Rows = [
  ['pressure altitude', 'temperature', 'power', 'true airspeed, kt', 'fuel flow'],
  ...[0, 4000, 8000, 12000].flatMap((feet) =>
    [-40, 0, 40].flatMap((celsius) => [55, 65, 75].map((power) => [feet, celsius, power, 50 + power + feet / 1000 + celsius / 10, power / 7])),
  ),
];

const routeGiven: readonly unknown[] = [
  legs,
  fields,
  winds,
  '2026-06-01',
  1200,
  60,
  6,
  points,
  cruise,
  climb,
  descent,
  'Birch',
  2300,
  80,
  14,
  '',
  1000,
];
const levelsGiven: readonly unknown[] = [legs, fields, winds, 1000, 'yes', '', points, cruise, 2300, 65];

/** What is called, and how many rows must be OK, so that no refusal is timed. */
export const calls = [
  { name: 'ROUTE_LEGS', given: routeGiven, verdictAt: 18, least: legCount + 2 },
  { name: 'ROUTE_LEVELS', given: levelsGiven, verdictAt: 4, least: legCount },
] as const;

/** In this context, since each use of a global in one made by node:vm takes a detour that the platform does not have. */
export function doorsIn(script: Script): (name: string) => Door {
  script.runInThisContext();
  return (name) => Reflect.get(globalThis, name) as Door;
}

/** Milliseconds of each run, after those that warm it. Throws where the answer is no route. */
export function timesOf(door: Door, { name, given, verdictAt, least }: (typeof calls)[number], runs: number): number[] {
  let answer: unknown[][] = [];
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    answer = door(...given);
    return performance.now() - start;
  });
  const judged = answer.filter((row) => row[verdictAt] === 'OK' || row[verdictAt] === 'CHECK').length;
  if (judged < least) throw new Error(`${name} judged ${judged} rows of ${answer.length}: ${JSON.stringify(answer[0])}`);
  return times.slice(Math.floor(runs / 10));
}
