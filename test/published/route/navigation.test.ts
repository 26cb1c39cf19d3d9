// Published problems of navigation by ROUTE_LEGS and the points of turning back, each as it is printed, to half its last digit or with the
// reason beside it. R: answer and figures read in the source; A: the answer read, the figures of the question from memory; M: from memory.
import { describe, expect, it } from 'vitest';
import { answer, call } from '../../support/call';

interface Problem {
  readonly name: string;
  readonly source: string;
  readonly status: 'R' | 'A' | 'M';
  readonly course: number;
  readonly miles: number;
  readonly knots: number;
  readonly flow: number;
  readonly wind: readonly [from: number, knots: number];
  /** What is printed, with how far from it an answer may be: half its last digit, or what the comment says. */
  readonly printed: Readonly<Partial<Record<'true_heading' | 'groundspeed' | 'minutes' | 'fuel', readonly [value: number, within: number]>>>;
}

const problems: readonly Problem[] = [
  {
    name: 'from E to P in an hour',
    source: 'FAA-H-8083-25B chapter 16 (25A chapter 15), steps in drawing the wind triangle',
    status: 'R',
    course: 90,
    miles: 88,
    knots: 120,
    flow: 8,
    wind: [45, 40],
    printed: { true_heading: [76, 0.5], groundspeed: [88, 0.5], minutes: [60, 0.5] },
  },
  {
    // The chapter adds five minutes for the climb: 35 and 4.7 gallons. 30 is printed as half an hour.
    name: 'the flight log of the chapter',
    source: 'FAA-H-8083-25 chapter 16 (25A chapter 15), charting the course: 115 kt, 360 at 10, 8 gallons an hour read; the rest from memory',
    status: 'M',
    course: 31,
    miles: 53,
    knots: 115,
    flow: 8,
    wind: [360, 10],
    printed: { true_heading: [28, 0.5], groundspeed: [106, 0.5], minutes: [30, 0.5], fuel: [4, 0.05] },
  },
  {
    // The answer choices are five minutes apart, and the question is worked on a slide rule: 100.2 minutes, 175.4 lb.
    name: 'time and fuel in a headwind',
    source: 'FAA commercial pilot test: wind 175 at 20, 135 NM, course 075, 80 kt, 105 lb an hour',
    status: 'A',
    course: 75,
    miles: 135,
    knots: 80,
    flow: 105,
    wind: [175, 20],
    printed: { minutes: [100, 1], fuel: [175, 0.5] },
  },
];

const origin = [36, -97] as const;

/** One leg of that length whose course in the middle is the one asked for. */
function legsOf({ course, miles, knots, flow }: Problem): { legs: unknown[][]; points: unknown[][] } {
  const back = answer('COURSE_POINT', ...origin, (course + 180) % 360, miles / 2);
  const on = answer('COURSE_POINT', ...origin, course, miles / 2);
  return {
    legs: [
      ['from', 'to', 'altitude', 'true airspeed', 'fuel flow'],
      ['A', 'B', 5500, knots, flow],
    ],
    points: [
      ['point', 'latitude', 'longitude'],
      ['A', back['latitude'], back['longitude']],
      ['B', on['latitude'], on['longitude']],
    ],
  };
}

const columns = ['leg', 'part', 'from', 'to', 'altitude_ft', 'true_airspeed', 'wind_from', 'wind_kt', 'true_course', 'variation', 'magnetic_heading', 'distance_nm', 'groundspeed', 'minutes', 'fuel'];
const rowOf = (rows: readonly unknown[][], leg: unknown): Record<string, unknown> => Object.fromEntries(columns.map((column, index) => [column, rows.find(([first]) => first === leg)?.[index]]));

describe('problems of navigation', () => {
  it.each(problems)('$name ($status)', (problem) => {
    const { legs, points } = legsOf(problem);
    const winds = [['altitude', 'wind from', 'knots'], [5500, ...problem.wind]];
    const rows = call('ROUTE_LEGS', legs, points, winds, '2026-06-01', 1200, 500, 5) as unknown[][];
    const row = rowOf(rows, 1);
    const got: Record<string, number> = {
      true_heading: (Number(row['magnetic_heading']) + Number(row['variation']) + 360) % 360,
      groundspeed: Number(row['groundspeed']),
      minutes: Number(row['minutes']),
      fuel: Number(row['fuel']),
    };
    expect(Number(row['distance_nm'])).toBeCloseTo(problem.miles, 2);
    for (const [name, [value, within]] of Object.entries(problem.printed)) expect(Math.abs((got[name] ?? NaN) - value), `${name}: got ${got[name]}`).toBeLessThanOrEqual(within);
  });
});

/** A climb or a descent: FAA commercial pilot test, "an airplane departs (descends to) an airport under the following conditions". */
interface Slope {
  readonly name: string;
  readonly status: 'A';
  readonly down: boolean;
  readonly low: number;
  readonly high: number;
  readonly rate: number;
  readonly course: number;
  readonly knots: number;
  readonly wind: readonly [from: number, knots: number];
  readonly flow: number;
  readonly printed: { readonly minutes: number; readonly miles: number; readonly fuel: number };
}

/** Answers read in a list of answers of the test; the conditions from memory, and only they give these answers. Printed to 1 minute, 1 mile, 0.1 gallon. */
const slopes: readonly Slope[] = [
  { name: 'climb to 9,500', status: 'A', down: false, low: 1500, high: 9500, rate: 500, course: 145, knots: 160, wind: [80, 15], flow: 14, printed: { minutes: 16, miles: 41, fuel: 3.7 } },
  { name: 'climb in a wind from ahead', status: 'A', down: false, low: 1000, high: 9500, rate: 500, course: 215, knots: 135, wind: [290, 20], flow: 13, printed: { minutes: 17, miles: 36, fuel: 3.7 } },
  { name: 'descent from 6,500', status: 'A', down: true, low: 1500, high: 6500, rate: 500, course: 335, knots: 110, wind: [60, 20], flow: 8.5, printed: { minutes: 10, miles: 18, fuel: 1.4 } },
];

describe('climbs and descents', () => {
  it.each(slopes.filter(({ down }) => !down))('$name ($status)', ({ low, high, rate, course, knots, wind, flow, printed }) => {
    const problem = { name: '', source: '', status: 'A', course, miles: 120, knots, flow, wind, printed: {} } as const;
    const { legs, points } = legsOf(problem);
    legs[1] = ['A', 'B', high, knots, flow];
    points.forEach((row, index) => row.push(index === 0 ? 'elevation' : low));
    const winds = [['altitude', 'wind from', 'knots'], [0, ...wind], [12000, ...wind]];
    const minutes = (high - low) / rate;
    const climb = [['pressure altitude', 'minutes', 'fuel', 'distance'], [low, 0, 0, 0], [high, minutes, (flow * minutes) / 60, (knots * minutes) / 60]];
    const rows = call('ROUTE_LEGS', legs, points, winds, '2026-06-01', 1200, 500, 5, undefined, undefined, climb) as unknown[][];
    const row = rowOf(rows, 1);
    expect(row['part']).toBe('climb');
    expect(Math.abs(Number(row['minutes']) - printed.minutes)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(Number(row['distance_nm']) - printed.miles)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(Number(row['fuel']) - printed.fuel)).toBeLessThanOrEqual(0.05);
  });

  it.each(slopes.filter(({ down }) => down))('$name ($status)', ({ low, high, rate, course, knots, wind, flow, printed }) => {
    const { legs, points } = legsOf({ name: '', source: '', status: 'A', course, miles: 120, knots, flow, wind, printed: {} });
    legs[1] = ['A', 'B', high, knots, flow];
    points.forEach((row, index) => row.push(index === 0 ? 'elevation' : low - 1000));
    const winds = [['altitude', 'wind from', 'knots'], [0, ...wind], [12000, ...wind]];
    // The question gives one true airspeed for the whole descent: the Mach number of it half way down, which changes it by 1 knot at the ends.
    const mach = Number(call('MACH_NUMBER', knots, 15 - 0.0019812 * ((low + high) / 2)));
    const rows = call('ROUTE_LEGS', legs, points, winds, '2026-06-01', 1200, 500, 5, undefined, undefined, undefined, [[high, mach, rate]]) as unknown[][];
    const row = rows.find(([, part]) => part === 'descent') ?? [];
    const got = Object.fromEntries(columns.map((column, index) => [column, Number(row[index])]));
    expect(Math.abs((got['minutes'] ?? NaN) - printed.minutes)).toBeLessThanOrEqual(0.5);
    expect(Math.abs((got['distance_nm'] ?? NaN) - printed.miles)).toBeLessThanOrEqual(0.5);
    expect(Math.abs((got['fuel'] ?? NaN) - printed.fuel)).toBeLessThanOrEqual(0.05);
  });
});
