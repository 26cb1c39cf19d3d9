// The briefed hold is flown by a simulator of its own (test/support/flyHold.ts): it must come back over the fix, on the inbound
// course, with the asked leg. And the words of the brief.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { call, sentenceOf } from '../../support/call';
import { flyHold } from '../../support/flyHold';

type Brief = Readonly<Record<string, number | string>>;

function brief(...given: readonly unknown[]): Brief {
  return Object.fromEntries((call('HOLD_BRIEF', ...given) as unknown[][]).map(([item, value]) => [String(item), value as number | string]));
}

interface Asked {
  readonly course: number;
  readonly turns: 'right' | 'left';
  readonly altitude: number;
  readonly indicated: number;
  readonly leg: { readonly words: string; readonly seconds?: number; readonly inboundMiles?: number; readonly outboundMiles?: number };
  readonly windFrom: number;
  readonly windShare: number;
  readonly temperature: number;
  readonly rules: string;
}

const legs: readonly [Asked['leg'], ...Asked['leg'][]] = [
  { words: '1 min', seconds: 60 },
  { words: '1.5 min', seconds: 90 },
  { words: '2 min', seconds: 120 },
  { words: '4 NM inbound', inboundMiles: 4 },
  { words: '10 NM inbound', inboundMiles: 10 },
  { words: '15 NM', outboundMiles: 15 },
  { words: '12-mile legs', outboundMiles: 12 },
  { words: '10 DME', outboundMiles: 10 },
];

const anyHold: fc.Arbitrary<Asked> = fc.record({
  course: fc.double({ min: 0, max: 360, noNaN: true }),
  turns: fc.constantFrom('right' as const, 'left' as const),
  altitude: fc.integer({ min: 0, max: 20000 }),
  indicated: fc.integer({ min: 70, max: 250 }),
  leg: fc.constantFrom(...legs),
  windFrom: fc.double({ min: 0, max: 360, noNaN: true }),
  windShare: fc.double({ min: 0, max: 1 / 3, noNaN: true }),
  temperature: fc.integer({ min: -30, max: 25 }),
  rules: fc.constantFrom('FAA', 'ICAO'),
});

/** The wind as a share of the true airspeed, which the brief itself tells. */
function briefInWind(asked: Asked): { readonly rows: Brief; readonly windKnots: number } {
  const given = (windKnots: number): unknown[] => [
    0,
    asked.course,
    asked.turns,
    asked.altitude,
    asked.indicated,
    asked.leg.words,
    asked.windFrom,
    windKnots,
    asked.temperature,
    asked.rules,
  ];
  const windKnots = Number(brief(...given(0))['true airspeed']) * asked.windShare;
  return { rows: brief(...given(windKnots)), windKnots };
}

const flownAs = (rows: Brief, asked: Asked, windKnots: number, step?: number) =>
  flyHold(
    {
      turns: asked.turns,
      inboundCourse: asked.course,
      inboundHeading: Number(rows['inbound heading']),
      outboundHeading: Number(rows['outbound heading']),
      outboundSeconds: Number(rows['outbound time']),
      trueAirspeedKnots: Number(rows['true airspeed']),
      bankDegrees: Number(rows['bank']),
      windFromDegrees: asked.windFrom,
      windKnots,
    },
    step,
  );

/** Evenly spread holds, without the liking of a property generator for zeros and ends. */
function spreadHolds(count: number): Asked[] {
  let state = 20260122;
  /** From 0 up to 1: mulberry32, public domain. */
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const one = <Choice>(choices: readonly [Choice, ...Choice[]]): Choice => choices[Math.floor(next() * choices.length)] ?? choices[0];
  return Array.from({ length: count }, () => ({
    course: 360 * next(),
    turns: one(['right', 'left']),
    altitude: 20000 * next(),
    indicated: 70 + 180 * next(),
    leg: one(legs),
    windFrom: 360 * next(),
    windShare: next() / 3,
    temperature: -30 + 55 * next(),
    rules: one(['FAA', 'ICAO']),
  }));
}

/** Largest differences between what was asked or briefed and what was flown. */
function compare(holds: readonly Asked[]) {
  const worst = { seconds: 0, miles: 0, offCourse: 0, briefed: 0 };
  const seen = { racetrack: 0, none: 0, bankLimited: 0 };
  for (const asked of holds) {
    const { rows, windKnots } = briefInWind(asked);
    const lap = flownAs(rows, asked, windKnots);
    const { seconds, inboundMiles, outboundMiles } = asked.leg;
    if (seconds !== undefined) worst.seconds = Math.max(worst.seconds, Math.abs(lap.inboundSeconds - seconds));
    if (inboundMiles !== undefined) worst.miles = Math.max(worst.miles, Math.abs(lap.inboundMiles - inboundMiles));
    if (outboundMiles !== undefined) worst.miles = Math.max(worst.miles, Math.abs(lap.outboundEndMiles - outboundMiles));
    worst.offCourse = Math.max(worst.offCourse, Math.abs(lap.offCourseAtRollout), Math.abs(lap.offCourseAtFix));
    worst.briefed = Math.max(
      worst.briefed,
      Math.abs(lap.trackError),
      Math.abs(lap.lapSeconds - 60 * Number(rows['lap minutes'])),
      Math.abs(lap.outboundEndMiles - Number(rows['outbound end from fix'])),
      Math.abs(lap.widestMiles - Number(rows['width'])),
      Math.abs(lap.inboundSeconds - Number(rows['inbound time'])),
      Math.abs(lap.inboundMiles - Number(rows['inbound length'])),
    );
    if (rows['wind verdict'] === 'OK') seen.racetrack++;
    else seen.none++;
    if ([25, 30].includes(Number(rows['bank']))) seen.bankLimited++;
  }
  return { worst, seen };
}

describe('a briefed hold, flown', () => {
  it('comes back over the fix on the inbound course with the asked leg: 5,000 winds up to a third of the airspeed', () => {
    const { worst, seen } = compare(spreadHolds(5000));
    // Asked: 1 second or 0.02 NM. The solution is exact, so what is left is the simulator's own step.
    expect(worst.seconds).toBeLessThan(0.001);
    expect(worst.miles).toBeLessThan(0.0001);
    expect(worst.offCourse).toBeLessThan(0.0001);
    expect(worst.briefed).toBeLessThan(0.001);
    expect(seen.racetrack + seen.none).toBe(5000);
    expect(seen.racetrack).toBeGreaterThan(4800);
    expect(seen.bankLimited).toBeGreaterThan(1000);
  }, 60_000);

  it('does so at the ends of every range too: calms, courses of 0 and 360, winds straight along the course', () => {
    let flown = 0;
    fc.assert(
      fc.property(anyHold, (asked) => {
        // Without a racetrack the outbound heading may be the inbound one, and headings cannot tell a whole circle from none.
        fc.pre(briefInWind(asked).rows['wind verdict'] === 'OK');
        const { worst } = compare([asked]);
        expect(Math.max(worst.seconds, worst.miles, worst.offCourse, worst.briefed)).toBeLessThan(0.001);
        flown++;
      }),
      { numRuns: 1000, seed: 23 },
    );
    expect(flown).toBe(1000);
  }, 60_000);

  it('is abeam the fix when it says', () => {
    let compared = 0;
    fc.assert(
      fc.property(anyHold, (asked) => {
        const { rows, windKnots } = briefInWind(asked);
        fc.pre(rows['wind verdict'] === 'OK');
        const lap = flownAs(rows, asked, windKnots, 0.05);
        const said = rows['outbound time from abeam'];
        expect(said === '').toBe(lap.outboundFromAbeamSeconds === undefined);
        if (lap.outboundFromAbeamSeconds !== undefined) {
          expect(Math.abs(Number(said) - lap.outboundFromAbeamSeconds)).toBeLessThan(0.05);
          compared++;
        }
      }),
      { numRuns: 500, seed: 29 },
    );
    expect(compared).toBeGreaterThan(450);
  }, 60_000);

  it('is the same hold in the mirror: left turns and a wind from the other side', () => {
    fc.assert(
      fc.property(anyHold, (asked) => {
        const right = briefInWind({ ...asked, turns: 'right', course: 360, windFrom: asked.windFrom }).rows;
        const left = briefInWind({ ...asked, turns: 'left', course: 360, windFrom: 360 - asked.windFrom }).rows;
        for (const item of ['outbound time', 'lap minutes', 'width', 'outbound end from fix'])
          expect(Number(left[item])).toBeCloseTo(Number(right[item]), 6);
        for (const item of ['outbound heading', 'inbound heading', 'triple correction heading']) {
          const sum = (Number(left[item]) + Number(right[item])) % 360;
          expect(Math.min(sum, 360 - sum)).toBeLessThan(1e-6);
        }
      }),
      { numRuns: 300, seed: 31 },
    );
  });
});

describe('the simulator', () => {
  it('sees a hold that is wrong: the rule of thumb, flown for a minute, misses the course; so do two degrees', () => {
    const asked: Asked = {
      course: 86,
      turns: 'left',
      altitude: 5000,
      indicated: 100,
      leg: { words: '1 min', seconds: 60 },
      windFrom: 150,
      windShare: 0.25,
      temperature: 5,
      rules: 'FAA',
    };
    const { rows, windKnots } = briefInWind(asked);
    const byThumb = flownAs({ ...rows, 'outbound heading': Number(rows['triple correction heading']), 'outbound time': 60 }, asked, windKnots);
    expect(Math.abs(byThumb.offCourseAtRollout)).toBeGreaterThan(0.05);
    const twoDegreesOff = flownAs({ ...rows, 'outbound heading': Number(rows['outbound heading']) + 2 }, asked, windKnots);
    expect(Math.abs(twoDegreesOff.offCourseAtRollout)).toBeGreaterThan(0.02);
  });
});

describe('headings of the entry', () => {
  it('flies the teardrop 30 degrees off the outbound course: inbound 095, left turns, 305', () => {
    // CNATRA P-1253 and AIM 5-3-8 (HO-13, R): left: outbound course + 30.
    const rows = brief(290, 95, 'left', 3000, 100, '1 min', 0, 0);
    expect([rows['entry'], rows['first heading'], rows['first turn'], rows['second turn']]).toEqual(['teardrop', 305, 'right', 'left']);
    expect(rows['second heading']).toBe(95);
  });

  it('flies the parallel entry down the course, then turns toward the holding side to cut it at 45 degrees', () => {
    // Inbound 360, right turns, hold to the east: outbound 180, left turn onto 315 comes back from the east.
    const rows = brief(230, 360, 'right', 3000, 100, '1 min', 0, 0);
    expect([rows['entry'], rows['first heading'], rows['first turn'], rows['second heading'], rows['second turn']]).toEqual([
      'parallel',
      180,
      'left',
      315,
      'left',
    ]);
    const left = brief(130, 360, 'left', 3000, 100, '1 min', 0, 0);
    expect([left['entry'], left['first heading'], left['first turn'], left['second heading'], left['second turn']]).toEqual([
      'parallel',
      180,
      'right',
      45,
      'right',
    ]);
  });

  it('turns a direct entry onto the outbound heading, in the direction of the hold', () => {
    const rows = brief(20, 360, 'right', 3000, 100, '1 min', 270, 20);
    expect([rows['entry'], rows['first turn']]).toEqual(['direct', 'right']);
    expect(rows['first heading']).toBe(rows['outbound heading']);
    expect(rows['second heading']).toBe(rows['inbound heading']);
  });

  it('corrects the track of a parallel or teardrop entry for the wind', () => {
    // Doc 8168: tracks made good. Sine of the correction is crosswind over true airspeed: 20 / 120 at the sea level of the standard atmosphere.
    const correction = (Math.asin(20 / 120) * 180) / Math.PI;
    expect(Number(brief(230, 360, 'right', 0, 120, '1 min', 270, 20)['first heading'])).toBeCloseTo(180 + correction, 9);
    expect(Number(brief(150, 360, 'right', 0, 120, '1 min', 240, 20)['first heading'])).toBeCloseTo(150 + correction, 9);
  });

  it('names the other entry beside a sector line', () =>
    expect(brief(180, 360, 'right', 3000, 100, '1 min', 0, 0)['entry']).toBe('teardrop (or parallel)'));
});

describe('a leg in miles', () => {
  /** What a DME readout shows at the end of the outbound leg; the station lies so far beyond the fix on the inbound course. */
  const dmeAtOutboundEnd = (rows: Brief, stationBeyondFix: number): number => {
    // In still air the end lies abeam the course by two turn radii.
    const across = 2 * Number(rows['turn radius']);
    const along = -Math.sqrt(Number(rows['outbound end from fix']) ** 2 - across ** 2);
    return Math.hypot(stationBeyondFix - along, across);
  };

  it('ends outbound where the published examples have it', () => {
    // AIM 5-3-8, FIG 5-3-5: inbound toward the station, fix at 10 NM, leg 5 NM: the outbound leg ends at 15 DME.
    // FIG 5-3-6: inbound away from it, fix at 28 NM, leg 8 NM: it ends at 20 DME. Half the last printed digit.
    expect(Math.abs(dmeAtOutboundEnd(brief(20, 360, 'right', 5000, 110, '5 NM', 0, 0), 10) - 15)).toBeLessThan(0.5);
    expect(Math.abs(dmeAtOutboundEnd(brief(20, 360, 'right', 5000, 110, '8 NM', 0, 0), -28) - 20)).toBeLessThan(0.5);
  });

  it('is another hold than one whose inbound leg has that length, and a shorter lap', () => {
    const outbound = brief(20, 360, 'right', 0, 120, '6 NM', 0, 0);
    const inbound = brief(20, 360, 'right', 0, 120, '6 NM inbound', 0, 0);
    // Still air, by Pythagoras: the end is 2 radii (1.2732 NM) abeam, so the leg along the course is shorter than 6 NM or the end farther.
    expect(Number(outbound['inbound length'])).toBeCloseTo(Math.sqrt(36 - 1.2732 ** 2), 3);
    expect(Number(inbound['outbound end from fix'])).toBeCloseTo(Math.hypot(6, 1.2732), 3);
    expect(Number(outbound['lap minutes'])).toBeCloseTo(2 + 2 * (Math.sqrt(36 - 1.2732 ** 2) / 2), 3);
    expect(Number(inbound['lap minutes'])).toBeCloseTo(8, 9);
  });

  it('is refused where the turn alone leads farther from the fix', () => {
    expect(sentenceOf('HOLD_BRIEF', 20, 360, 'right', 0, 120, '1 NM', 0, 0)).toBe(
      'HOLD_BRIEF: leg must end at least 1.3 NM from the fix at this speed and wind, since the turn outbound alone leads so far; got 1 NM ("1 NM inbound" asks for an inbound leg of that length).',
    );
    expect(brief(20, 360, 'right', 0, 120, '1.3 NM', 0, 0)['wind verdict']).toBe('OK');
    expect(brief(20, 360, 'right', 0, 120, '1 NM inbound', 0, 0)['inbound length']).toBe(1);
  });
});

describe('turns, limits and legs', () => {
  it('triples the inbound correction to the other side: 8 left inbound, 24 right outbound', () => {
    // AIM 5-3-8 j (HO-14, R*). Wind from the left with crosswind 120 sin 8 = 16.7 kt.
    const rows = brief(20, 360, 'right', 0, 120, '1 min', 270, 120 * Math.sin((8 * Math.PI) / 180));
    expect(Number(rows['inbound heading'])).toBeCloseTo(352, 9);
    expect(Number(rows['triple correction heading'])).toBeCloseTo(204, 9);
  });

  it('banks for 3 degrees a second, or to the limit of its rules', () => {
    // HO-18: 18.24 degrees at 120 kt true. HO-07: 30 degrees (FAA) or 25 (ICAO), whichever is less.
    expect(Math.abs(Number(brief(20, 360, 'right', 0, 120, '1 min', 0, 0)['bank']) - 18.24)).toBeLessThan(0.005);
    expect(brief(20, 360, 'right', 15000, 230, '1 min', 0, 0)['bank']).toBe(30);
    expect(brief(20, 360, 'right', 15000, 230, '1 min', 0, 0, '', 'ICAO')['bank']).toBe(25);
  });

  it('has the radius of the published example: 157.23 kt true, 3 degrees a second, 0.83 NM', () => {
    // Doc 8168 volume II, table I-4-3-App C-1 (HO-16, R*): 140 kt, 6,000 ft, ISA + 15. Its true airspeed leaves compressibility out: 0.4 kt more.
    const rows = brief(20, 360, 'right', 6000, 140, '1 min', 0, 0, 18.1, 'ICAO');
    expect(Math.abs(Number(rows['true airspeed']) - 157.23)).toBeLessThan(0.6);
    expect(Math.abs(Number(rows['turn radius']) - 0.83)).toBeLessThan(0.005);
  });

  it('takes a standard leg as one minute to 14,000 ft and one and a half above', () => {
    // AIM 5-3-8 (HO-06, R).
    expect(brief(20, 360, 'right', 14000, 150, 'standard', 0, 0)['inbound time']).toBe(60);
    expect(brief(20, 360, 'right', 14001, 150, 'standard', 0, 0)['inbound time']).toBe(90);
  });

  it.each([
    ['1 min', 60],
    ['1 minute', 60],
    ['1.5 min', 90],
    ['1,5 min', 90],
    ['90 s', 90],
    ['90 sec', 90],
    ['90 seconds', 90],
    ['2-minute', 120],
  ])('reads %s', (leg, seconds) => expect(brief(20, 360, 'right', 3000, 100, leg, 0, 0)['inbound time']).toBeCloseTo(seconds, 9));

  it.each([
    ['1-minute legs', 60],
    ['1 min inbound', 60],
  ])('reads %s', (leg, seconds) => expect(brief(20, 360, 'right', 3000, 100, leg, 0, 0)['inbound time']).toBeCloseTo(seconds, 9));

  it.each([
    ['4 NM', 4],
    ['4nm', 4],
    ['4 miles', 4],
    ['6-mile', 6],
    ['6-mile legs', 6],
    ['6 mile leg', 6],
    ['6 DME', 6],
    ['6 NM outbound', 6],
    ['6-mile outbound leg', 6],
    ['2.5 NM', 2.5],
    ['4 nautical miles', 4],
  ])('reads %s as where the outbound leg ends', (leg, miles) =>
    expect(brief(20, 360, 'right', 3000, 100, leg, 40, 15)['outbound end from fix']).toBeCloseTo(miles, 9),
  );

  it.each([
    ['4 NM inbound', 4],
    ['6-mile legs inbound', 6],
    ['6 mile inbound leg', 6],
  ])('reads %s as the length of the inbound leg', (leg, miles) =>
    expect(brief(20, 360, 'right', 3000, 100, leg, 40, 15)['inbound length']).toBeCloseTo(miles, 9),
  );

  it.each([1, 4, '1', 'one minute', '4 km', '1:00', '0 min', '20 min', '100 NM', '0.1 NM', '-4 NM', '1 min outbound', '6 legs', true])(
    'refuses a leg of %s',
    (leg) =>
      expect(sentenceOf('HOLD_BRIEF', 20, 360, 'right', 3000, 100, leg, 0, 0)).toMatch(
        /^HOLD_BRIEF: leg must be a leg with its unit, such as "1 min", "90 s", "4 NM" or "4 NM inbound" \(0\.25 to 10 minutes, 0\.5 to 60 NM\), or "standard"; got .+\.$/,
      ),
  );

  it('holds the speed against the limit', () => {
    const row = (...given: readonly unknown[]): unknown => (call('HOLD_BRIEF', ...given) as unknown[][]).find(([item]) => item === 'speed verdict');
    expect(row(20, 360, 'right', 6000, 220, '1 min', 0, 0)).toEqual(['speed verdict', 'NO', '20 kt above the limit']);
    expect(row(20, 360, 'right', 6001, 220, '1 min', 0, 0)).toEqual(['speed verdict', 'OK', 'at or below the limit; a charted speed may be lower']);
    // Mach 0.83 at 35,000 ft in the standard atmosphere is about 287 kt calibrated.
    expect(row(20, 360, 'right', 35000, 280, '1 min', 0, 0, '', 'ICAO')).toEqual([
      'speed verdict',
      'OK',
      'at or below Mach 0.83; a charted speed may be lower',
    ]);
    expect(row(20, 360, 'right', 35000, 300, '1 min', 0, 0, '', 'ICAO')).toEqual(['speed verdict', 'NO', 'above Mach 0.83']);
  });
});

describe('a wind too strong', () => {
  const windRow = (...given: readonly unknown[]): unknown => (call('HOLD_BRIEF', ...given) as unknown[][]).find(([item]) => item === 'wind verdict');

  it('is said where no racetrack is left', () => {
    // A third of the airspeed against the inbound course drifts the two turns over the whole leg: at 120 kt, 40 kt x 2 min = 80 kt x 1 min.
    expect(windRow(20, 360, 'right', 0, 120, '1 min', 360, 39)).toEqual(['wind verdict', 'OK', 'the outbound leg leads outbound']);
    expect(windRow(20, 360, 'right', 0, 120, '1 min', 360, 41)).toEqual([
      'wind verdict',
      'NO',
      'wind too strong for a racetrack: with this leg the aircraft would not fly outbound at all; ask for a longer leg',
    ]);
    expect(windRow(20, 360, 'right', 0, 120, '2 min', 360, 41)).toEqual(['wind verdict', 'OK', 'the outbound leg leads outbound']);
  });

  it('gives finite numbers at the wind where nothing is left to fly outbound', () => {
    const rows = brief(20, 360, 'right', 0, 120, '1 min', 360, 40);
    expect(Number(rows['outbound time'])).toBeLessThan(1e-6);
    expect(Number.isFinite(rows['outbound heading'])).toBe(true);
  });

  it('is refused where it is as fast as the aircraft', () => {
    expect(sentenceOf('HOLD_BRIEF', 20, 360, 'right', 0, 60, '1 min', 360, 61)).toBe(
      'HOLD_BRIEF: wind_kt must be less than the true airspeed of 60 knots, or one leg of the hold is never flown; got 61.',
    );
  });

  it('names the airspeed by its own name where it is beyond the speed of sound', () => {
    expect(sentenceOf('HOLD_BRIEF', 20, 360, 'right', 50000, 390, '1 min', 360, 60)).toMatch(
      /^HOLD_BRIEF: indicated_kt must be 0 to \d+(\.\d+)? knots, below the speed of sound at this pressure altitude; got 390\.$/,
    );
  });
});
