// The planned descent against closed forms, against itself in half steps, and against a descent flown second by second.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeoverAltitudeFeet, trueAirspeedKnots } from '../../../core/air/airspeed';
import { descentPlan, type DescentCase } from '../../../core/descent/plan';
import { CoreError } from '../../../core/basics/errors';

const indicated = (knots: number) => ({ kind: 'indicated', knots }) as const;
const mach = (number: number) => ({ kind: 'mach', mach: number }) as const;
const calm = [
  { altitudeFeet: -1000, fromDegrees: 0, knots: 0 },
  { altitudeFeet: 45000, fromDegrees: 0, knots: 0 },
];

/** Invented: a descent from 24,000 ft with a jump of wind direction over north. */
const usual: DescentCase = {
  fromFeet: 24000,
  toFeet: 3000,
  schedule: [
    { altitudeFeet: 24000, speed: indicated(230), rateFeetPerMinute: 1800 },
    { altitudeFeet: 14000, speed: indicated(210), rateFeetPerMinute: 1500 },
    { altitudeFeet: 7000, speed: indicated(160), rateFeetPerMinute: 800 },
  ],
  winds: [
    { altitudeFeet: 2000, fromDegrees: 350, knots: 15 },
    { altitudeFeet: 9000, fromDegrees: 20, knots: 35 },
    { altitudeFeet: 18000, fromDegrees: 300, knots: 60 },
    { altitudeFeet: 27000, fromDegrees: 280, knots: 90 },
  ],
  courseTrueDegrees: 285,
  isaDeviationCelsius: 9,
  beforeFixNauticalMiles: 0,
  slowDownNauticalMiles: undefined,
};

const codeOf = (given: DescentCase): string => {
  try {
    descentPlan(given);
  } catch (thrown) {
    return thrown instanceof CoreError ? thrown.code : 'another error';
  }
  return 'no error';
};

describe('against closed forms in still air', () => {
  it('a steady Mach number in the isothermal layer: speed x time, at the ICAO speed of sound of 573.57 kt (Doc 7488: 295.07 m/s)', () => {
    const { whole } = descentPlan({
      ...usual,
      fromFeet: 43000,
      toFeet: 37000,
      schedule: [{ altitudeFeet: 43000, speed: mach(0.6), rateFeetPerMinute: 2000 }],
      winds: calm,
      isaDeviationCelsius: 0,
    });
    expect(whole?.minutes).toBe(3);
    expect(whole?.nauticalMiles).toBeCloseTo((0.6 * 573.57 * 3) / 60, 3);
  });

  it('a steady indicated speed: compressibility aside, the mean of 1/sqrt(density ratio) has the closed form of T^-2.1279', () => {
    // sigma = (T/T0)^4.25588 (ICAO Doc 7488), so V = V0 (T/T0)^-2.12794, and its mean over T is a power of T again.
    const [top, bottom] = [6000, 1000].map((feet) => (288.15 - 0.0065 * 0.3048 * feet) / 288.15) as [number, number];
    const mean = (60 * (bottom ** -1.12794 - top ** -1.12794)) / (-1.12794 * (bottom - top));
    const { whole } = descentPlan({
      ...usual,
      fromFeet: 6000,
      toFeet: 1000,
      schedule: [{ altitudeFeet: 6000, speed: indicated(60), rateFeetPerMinute: 500 }],
      winds: calm,
      isaDeviationCelsius: 0,
    });
    // At 60 kt compressibility takes off 0.01 kt.
    expect(whole?.trueAirspeedKnots).toBeCloseTo(mean, 1);
    expect(whole?.nauticalMiles).toBeCloseTo((mean * 10) / 60, 2);
  });

  it('a band at a time is its speed x its time, and the whole is their sum', () => {
    const { bands, whole } = descentPlan({ ...usual, winds: calm });
    for (const band of bands)
      expect(band.nauticalMiles).toBeCloseTo((band.trueAirspeedKnots * (band.fromFeet - band.toFeet)) / band.rateFeetPerMinute / 60, 9);
    expect(whole?.nauticalMiles).toBeCloseTo(
      bands.reduce((total, band) => total + band.nauticalMiles, 0),
      9,
    );
  });
});

const levels = fc.array(fc.record({ fromDegrees: fc.integer({ min: 0, max: 360 }), knots: fc.integer({ min: 0, max: 90 }) }), {
  minLength: 3,
  maxLength: 8,
});
const cases = fc
  .record({
    levels,
    course: fc.integer({ min: 0, max: 360 }),
    from: fc.integer({ min: 6000, max: 40000 }),
    deviation: fc.integer({ min: -30, max: 30 }),
  })
  .map(({ levels: given, course, from, deviation }): DescentCase => ({
    ...usual,
    fromFeet: from,
    toFeet: 1500,
    schedule: [
      { altitudeFeet: 41000, speed: mach(0.5), rateFeetPerMinute: 2200 },
      { altitudeFeet: 41000, speed: indicated(220), rateFeetPerMinute: 1500 },
      { altitudeFeet: 8000, speed: indicated(140), rateFeetPerMinute: 700 },
    ],
    winds: given.map((level, index) => ({ ...level, altitudeFeet: (index * 41000) / (given.length - 1) })),
    courseTrueDegrees: course,
    isaDeviationCelsius: deviation,
  }));

/** Flown second by second, the wind of each second found by hand from the levels: no code shared but the airspeed conversion. */
function flown({ fromFeet, toFeet, winds, courseTrueDegrees, isaDeviationCelsius }: DescentCase, knots: number, rate: number): number {
  let miles = 0;
  const seconds = ((fromFeet - toFeet) / rate) * 60;
  for (let second = 0; second < seconds; second += 1) {
    const feet = fromFeet - (rate * (second + 0.5)) / 60;
    const index = winds.findIndex((level, place) => place > 0 && level.altitudeFeet >= feet);
    const [low, high] = [winds[index - 1], winds[index]];
    if (low === undefined || high === undefined) throw new Error('no level');
    const part = (feet - low.altitudeFeet) / (high.altitudeFeet - low.altitudeFeet);
    const along = (level: { fromDegrees: number; knots: number }, turn: number): number =>
      level.knots * Math.cos(((level.fromDegrees - courseTrueDegrees + turn) * Math.PI) / 180);
    const headwind = along(low, 0) * (1 - part) + along(high, 0) * part;
    const crosswind = along(low, -90) * (1 - part) + along(high, -90) * part;
    const airspeed = trueAirspeedKnots(knots, feet, 15 - 0.0019812 * feet + isaDeviationCelsius);
    miles += (Math.sqrt(airspeed ** 2 - crosswind ** 2) - headwind) / 3600;
  }
  return miles;
}

describe('integration', () => {
  it('halving the steps changes the distance by less than 0.05 NM', () => {
    fc.assert(
      fc.property(cases, (given) => {
        const [usualSteps, half] = [descentPlan(given), descentPlan(given, 250)];
        expect(Math.abs(usualSteps.startNauticalMiles - half.startNauticalMiles)).toBeLessThan(0.05 / 1000);
      }),
      { numRuns: 200, seed: 4 },
    );
  });

  it('agrees with a descent flown second by second', () => {
    const given = { ...usual, toFeet: 4000, schedule: [{ altitudeFeet: 25000, speed: indicated(180), rateFeetPerMinute: 1000 }] };
    expect(descentPlan(given).startNauticalMiles).toBeCloseTo(flown(given, 180, 1000), 3);
  });
});

describe('the schedule', () => {
  it('lays one band for each row, from its altitude down', () => {
    expect(descentPlan(usual).bands.map(({ fromFeet, toFeet, rateFeetPerMinute }) => [fromFeet, toFeet, rateFeetPerMinute])).toEqual([
      [24000, 14000, 1800],
      [14000, 7000, 1500],
      [7000, 3000, 800],
    ]);
  });

  it('does not mind the order of rows, nor rows below the end', () => {
    const shuffled = {
      ...usual,
      schedule: [...usual.schedule, { altitudeFeet: 1000, speed: indicated(90), rateFeetPerMinute: 300 }].reverse(),
      winds: [...usual.winds].reverse(),
    };
    expect(descentPlan(shuffled)).toEqual(descentPlan(usual));
  });

  it('changes from the Mach number to the indicated speed where both are the same', () => {
    // Mach 0.78 and 280 kt meet near 32,200 ft, 0.78 and 300 kt near 29,300 ft (from memory of airline crossover tables: 29,310 ft).
    expect(changeoverAltitudeFeet(300, 0.78)).toBeGreaterThan(29300);
    expect(changeoverAltitudeFeet(300, 0.78)).toBeLessThan(29330);
    const schedule = [
      { altitudeFeet: 40000, speed: indicated(280), rateFeetPerMinute: 1900 },
      { altitudeFeet: 40000, speed: mach(0.78), rateFeetPerMinute: 2400 },
    ];
    const { bands } = descentPlan({ ...usual, fromFeet: 38000, toFeet: 12000, schedule, winds: calm });
    const change = changeoverAltitudeFeet(280, 0.78);
    expect(bands.map(({ fromFeet, toFeet, rateFeetPerMinute }) => [fromFeet, toFeet, rateFeetPerMinute])).toEqual([
      [38000, change, 2400],
      [change, 12000, 1900],
    ]);
  });

  it('shifts the start by the crossing point before or beyond the fix', () => {
    const plain = descentPlan(usual).startNauticalMiles;
    expect(descentPlan({ ...usual, beforeFixNauticalMiles: 8 }).startNauticalMiles).toBeCloseTo(plain + 8, 9);
    expect(descentPlan({ ...usual, beforeFixNauticalMiles: -8 }).startNauticalMiles).toBeCloseTo(plain - 8, 9);
  });
});

describe('250 knots below 10,000 ft', () => {
  const fast: DescentCase = { ...usual, schedule: [{ altitudeFeet: 24000, speed: indicated(290), rateFeetPerMinute: 2000 }], winds: calm };

  it('is not held unless asked for', () => expect(descentPlan(fast).bands.length).toBe(1));

  it('as a slower part only', () => {
    const [above, below] = descentPlan({ ...fast, slowDownNauticalMiles: 0 }).bands;
    expect(above).toMatchObject({ fromFeet: 24000, toFeet: 10000 });
    expect(below).toMatchObject({ fromFeet: 10000, toFeet: 3000 });
    expect(below?.trueAirspeedKnots).toBeLessThan(trueAirspeedKnots(250, 10000, 5));
    expect(below?.trueAirspeedKnots).toBeGreaterThan(trueAirspeedKnots(250, 3000, 17));
  });

  it('with a level part to slow down in, at the mean of both speeds', () => {
    const { bands, whole } = descentPlan({ ...fast, slowDownNauticalMiles: 6 });
    const temperature = 15 - 19.812 + 9;
    const mean = (trueAirspeedKnots(290, 10000, temperature) + trueAirspeedKnots(250, 10000, temperature)) / 2;
    expect(bands[1]).toMatchObject({ fromFeet: 10000, toFeet: 10000, rateFeetPerMinute: 0, nauticalMiles: 6 });
    expect(bands[1]?.minutes).toBeCloseTo((6 / mean) * 60, 6);
    expect(whole?.nauticalMiles).toBeCloseTo(
      bands.reduce((total, band) => total + band.nauticalMiles, 0),
      9,
    );
  });

  it('takes no level part where the schedule is slow enough', () => {
    expect(descentPlan({ ...usual, slowDownNauticalMiles: 6 })).toEqual(descentPlan(usual));
  });
});

describe('what cannot be answered', () => {
  it.each([
    ['a wind table that ends below the start', { winds: usual.winds.slice(0, 3) }, 'levels-too-few'],
    ['a wind table that begins above the end', { winds: usual.winds.slice(1) }, 'levels-too-few'],
    ['no wind at all', { winds: [] }, 'nothing-given'],
    ['one wind level twice', { winds: [...usual.winds, ...usual.winds.slice(0, 1)] }, 'level-repeated'],
    ['a schedule that begins below the start', { schedule: usual.schedule.slice(1) }, 'schedule-too-low'],
    ['no schedule', { schedule: [] }, 'nothing-given'],
    ['two indicated speeds at one altitude', { schedule: [...usual.schedule, ...usual.schedule.slice(0, 1)] }, 'level-repeated'],
    [
      'an indicated speed beyond sound',
      { fromFeet: 41000, winds: calm, schedule: [{ altitudeFeet: 41000, speed: indicated(400), rateFeetPerMinute: 1000 }] },
      'schedule-too-fast',
    ],
    [
      'a wind faster than the aircraft',
      {
        winds: [
          { altitudeFeet: 0, fromDegrees: 285, knots: 200 },
          { altitudeFeet: 30000, fromDegrees: 285, knots: 200 },
        ],
      },
      'winds-too-strong',
    ],
    ['a climb', { toFeet: 25000 }, 'outside-range'],
  ] as const)('%s', (_, change, code) => expect(codeOf({ ...usual, ...change })).toBe(code));
});
