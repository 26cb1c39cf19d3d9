// The points, the burn and the remedy of a loading: cases worked by hand.
import { describe, expect, it } from 'vitest';
import { envelopeFromPoints } from '../../../core/loading/balance';
import { judgeLoading, type LoadingCase, type LoadingResult } from '../../../core/loading/flight';
import { remedyFor } from '../../../core/loading/remedy';
import { burnsAtBends, fuelItems, quantitiesAfter } from '../../../core/loading/tanks';
import { box, level, noLimits, plain, station, tank } from '../../support/loadings';

describe('burning from several tanks, by hand', () => {
  const tanks = [tank('left', 10, 2, level(50)), tank('right', 4, 2, level(50)), tank('aft', 6, 1, level(90))];

  it.each([
    { burned: 0, left: [10, 4, 6] },
    { burned: 5, left: [10, 4, 1] },
    { burned: 6, left: [10, 4, 0] },
    { burned: 8, left: [9, 3, 0] },
    // Both gave 4, so the right one is empty; what follows comes from the left alone.
    { burned: 14, left: [6, 0, 0] },
    { burned: 15, left: [5, 0, 0] },
    { burned: 20, left: [0, 0, 0] },
    { burned: 25, left: [0, 0, 0] },
  ])('after $burned', ({ burned, left }) =>
    quantitiesAfter(tanks, burned).forEach((quantity, index) => expect(quantity).toBeCloseTo(left[index] ?? -1, 9)),
  );

  it('knows where each tank runs empty or passes a row of its arms', () => {
    const stepped = [
      tank('left', 10, 2, [
        { quantity: 0, arm: 50 },
        { quantity: 3, arm: 51 },
        { quantity: 12, arm: 52 },
      ]),
      ...tanks.slice(1),
    ];
    // Aft empty at 6, right empty at 14, left at 3 when it gave 7 and the right its 4: 6 + 11 = 17, left empty at 20.
    expect([...new Set(burnsAtBends(stepped))].sort((a, b) => a - b)).toEqual([6, 14, 17, 20]);
  });

  it('asks no arm of an empty tank', () =>
    expect(fuelItems([tank('gone', 0, 1, []), tank('wing', 5, 1, level(48), 3)], 0, 6)).toEqual([{ weight: 30, arm: 48, lateralArm: 3 }]));
});

describe('points of a loading, by hand', () => {
  it('gives zero fuel, take-off and landing', () => {
    const { zeroFuel, takeoff, landing, onTheWay, reserve } = judgeLoading(plain);
    expect(zeroFuel).toMatchObject({ weight: 1340, fuel: 0, verdict: 'OK' });
    expect(zeroFuel.arm).toBeCloseTo(59200 / 1340, 9);
    expect(takeoff).toMatchObject({ weight: 1508, fuel: 28, verdict: 'OK' });
    expect(takeoff.arm).toBeCloseTo(67264 / 1508, 9);
    expect(landing).toMatchObject({ weight: 1400, fuel: 10, verdict: 'OK' });
    expect(landing.arm).toBeCloseTo(62080 / 1400, 9);
    expect([onTheWay.verdict, reserve.verdict]).toEqual(['OK', 'OK']);
  });

  it('takes the lower of the envelope and the most allowed, and the line itself for inside', () => {
    const at = (limits: LoadingCase['limits']): LoadingResult => judgeLoading({ ...plain, limits });
    expect(at({ zeroFuel: 1340, takeoff: 1508, landing: 1400 })).toMatchObject({
      zeroFuel: { verdict: 'OK', weightMargin: 0 },
      takeoff: { verdict: 'OK', weightMargin: 0 },
      landing: { verdict: 'OK', weightMargin: 0 },
    });
    const over = at({ zeroFuel: 1339, takeoff: 1507, landing: 1399 });
    for (const point of [over.zeroFuel, over.takeoff, over.landing]) expect(point).toMatchObject({ verdict: 'NO', inside: true, weightMargin: -1 });
    expect(at({ zeroFuel: undefined, takeoff: 1800, landing: undefined }).takeoff.weightMargin).toBe(192);
    expect(at({ zeroFuel: undefined, takeoff: 1600, landing: undefined }).takeoff.weightMargin).toBe(92);
  });

  it('burns to the last drop, and refuses a drop more, whatever rounding makes of it', () => {
    const tenths = { ...plain, tanks: [tank('wing', 0.3, 1, level(48))], taxiFuel: 0.1 };
    expect(judgeLoading({ ...tenths, tripFuel: 0.2 }).landing.fuel).toBe(0);
    expect(judgeLoading({ ...plain, taxiFuel: 30, tripFuel: 0 }).takeoff.weight).toBe(1340);
    expect(() => judgeLoading({ ...tenths, tripFuel: 0.2001 })).toThrow('fuel-too-little');
    expect(() => judgeLoading({ ...plain, taxiFuel: 30, tripFuel: 0.1 })).toThrow('fuel-too-little');
  });

  // First the fuel ahead burns, then the fuel behind: the centre of gravity goes aft to the change of tanks and comes back.
  const bent: LoadingCase = {
    ...plain,
    stations: [station('empty', 1000, 40)],
    tanks: [tank('nose', 10, 1, level(10)), tank('tail', 10, 2, level(70))],
    weightPerUnit: 10,
    taxiFuel: 0,
    tripFuel: 20,
    envelope: box(36, 42.7, 900, 1300),
  };

  it('is NO where both ends are inside and the change of tanks is outside', () => {
    // Full: 48,000 / 1,200 = 40. Nose empty: 47,000 / 1,100 = 42.727. Empty: 40.
    const { zeroFuel, takeoff, landing, onTheWay } = judgeLoading(bent);
    expect([zeroFuel.verdict, takeoff.verdict, landing.verdict, onTheWay.verdict]).toEqual(['OK', 'OK', 'OK', 'NO']);
    expect(onTheWay.fuel).toBe(10);
    expect(onTheWay.aftMargin).toBeCloseTo(42.7 - 47000 / 1100, 9);
  });

  it('finds a bend that is outside by a hair and lies between two even parts', () => {
    const odd = { ...bent, tanks: [tank('nose', 7.7713, 1, level(10)), tank('tail', 9.3, 2, level(70))], tripFuel: 17 };
    const peak = (40000 + 9.3 * 700) / (1000 + 93);
    const inside = (limit: number): string => judgeLoading({ ...odd, envelope: box(36, limit, 900, 1300) }).onTheWay.verdict;
    expect(inside(peak + 1e-6)).toBe('OK');
    expect(inside(peak - 1e-6)).toBe('NO');
  });

  it('is NO where the arm of the fuel changes with its quantity and takes the middle of the burn outside', () => {
    // 20 of fuel at 40, 10 at 64, none at 40: ends 40 and 40; the middle 46,400 / 1,100 = 42.18.
    const arms = [
      { quantity: 0, arm: 40 },
      { quantity: 10, arm: 64 },
      { quantity: 20, arm: 40 },
    ];
    const swept = { ...bent, tanks: [tank('main', 20, 1, arms)], envelope: box(36, 42, 900, 1300) };
    const { takeoff, landing, onTheWay } = judgeLoading(swept);
    expect([takeoff.verdict, landing.verdict, onTheWay.verdict]).toEqual(['OK', 'OK', 'NO']);
    expect(onTheWay.arm).toBeGreaterThanOrEqual(46400 / 1100);
  });

  it('sees a notch of the envelope that the burn crosses between two even parts', () => {
    // A spike of the aft limit at a weight of 1,100.0371, which no even part meets.
    const corners = [
      [36, 900],
      [36, 1300],
      [41, 1300],
      [41, 1100.05],
      [39.99, 1100.0371],
      [41, 1100.02],
      [41, 900],
    ];
    const spiked = {
      ...bent,
      tanks: [tank('main', 20, 1, level(40))],
      envelope: envelopeFromPoints(corners.map(([arm = 0, weight = 0]) => ({ arm, weight }))),
    };
    expect(judgeLoading(spiked)).toMatchObject({ takeoff: { verdict: 'OK' }, landing: { verdict: 'OK' }, onTheWay: { verdict: 'NO' } });
  });

  it('is CHECK, not NO, where only the fuel below landing takes it outside', () => {
    const { landing, onTheWay, reserve, zeroFuel } = judgeLoading({ ...bent, tripFuel: 5 });
    expect([landing.verdict, onTheWay.verdict, reserve.verdict, zeroFuel.verdict]).toEqual(['OK', 'OK', 'CHECK', 'OK']);
  });
});

describe('lateral balance, by hand', () => {
  const sideways = (lateralArm: number | undefined, limits: LoadingCase['lateralLimits'], tanks = plain.tanks): LoadingResult['lateral'] =>
    judgeLoading({
      ...plain,
      stations: [station('empty', 900, 40, 0), station('seat', 100, 42, lateralArm)],
      tanks,
      taxiFuel: 0,
      envelope: box(38, 50, 900, 1700),
      lateralLimits: limits,
    }).lateral;

  it('is sum of weight x lateral arm over the weight', () => {
    // 1,000 of 100 x 10, with no fuel; 1,000 / 1,180 with it.
    expect(sideways(10, { left: -1, right: 1 })).toEqual({ verdict: 'OK', left: expect.closeTo(1000 / 1180, 9), right: 1 });
    expect(sideways(10, { left: -1, right: 0.999 })?.verdict).toBe('NO');
    expect(sideways(-10, { left: -0.999, right: 1 })?.verdict).toBe('NO');
  });

  it('is UNKNOWN where a station or a tank has no lateral arm, and left out where there are no limits', () => {
    const [wide, sideless] = [
      { left: -100, right: 100 },
      [tank('left', 10, 1, level(40)), tank('right', 10, 1, level(40), 50), tank('spare', 0, 2, level(40))],
    ];
    expect(sideways(undefined, wide)).toEqual({ verdict: 'UNKNOWN', stations: ['seat'], tanks: [] });
    expect(sideways(10, wide, sideless)).toEqual({ verdict: 'UNKNOWN', stations: [], tanks: ['left', 'spare'] });
    expect(sideways(undefined, wide, sideless)).toEqual({ verdict: 'UNKNOWN', stations: ['seat'], tanks: ['left', 'spare'] });
    expect(sideways(10, undefined)).toBeUndefined();
    expect(sideways(undefined, undefined, sideless)).toBeUndefined();
  });

  it('sees the moment at which one side is burned and the other full', () => {
    const tanks = [tank('left', 10, 1, level(40), -50), tank('right', 10, 2, level(40), 50)];
    // Left empty, right full: 60 x 50 + 0 over 1,060.
    expect(sideways(0, { left: -1, right: 2 }, tanks)).toMatchObject({ verdict: 'NO', right: expect.closeTo(3000 / 1060, 9) });
  });
});

describe('what to change, by hand', () => {
  const remedy = (some: Partial<LoadingCase>): ReturnType<typeof remedyFor> => {
    const loading = { ...plain, ...some };
    return remedyFor(loading, judgeLoading(loading));
  };

  it('is nothing where all is inside', () => expect(remedy({})).toEqual({ kind: 'none-needed' }));
  it('is to take out what is above a limit or above the envelope', () => {
    expect(remedy({ limits: { ...noLimits, zeroFuel: 1300, takeoff: 1500 } })).toEqual({
      kind: 'take-out',
      weight: 40,
      point: 'zero fuel',
      from: undefined,
      settles: true,
    });
    const eight = { kind: 'take-out', weight: 8, point: 'take-off' };
    expect(remedy({ envelope: box(38, 50, 900, 1500) })).toEqual({ ...eight, from: undefined, settles: true });
    expect(remedy({ envelope: box(38, 39, 900, 1500) })).toEqual({ ...eight, from: undefined, settles: false });
  });
  it('names the load to leave behind where only that one brings the centre of gravity in too', () =>
    // 67,264 less 20 x 95 is 65,364 of 1,488: 43.93, within 44; less 20 x 70 it is 44.26.
    expect(remedy({ envelope: box(38, 44, 900, 1488) })).toEqual({ kind: 'take-out', weight: 20, point: 'take-off', from: 'bags', settles: true }));
  it('is to put in what zero fuel is too light by', () =>
    expect(remedy({ envelope: box(38, 50, 1350, 1700) })).toEqual({ kind: 'put-in', weight: 10 }));

  it('is to move the rear load forward, as much as the worst point takes', () => {
    // Zero fuel at 59,200 / 1,340 and take-off at 67,264 / 1,508 are both behind 44: 264 / 53 and 912 / 53 from the bags (95) to the front (42).
    const found = remedy({ envelope: box(38, 44, 900, 1700) });
    expect(found).toMatchObject({ kind: 'move', from: 'bags', to: 'front', settles: true });
    expect(found.kind === 'move' && found.weight).toBeCloseTo(912 / 53, 6);
  });

  it('takes the next station where the furthest has too little', () => {
    const stations = [station('empty', 1000, 40), station('front', 200, 42), station('rear', 100, 70), station('bags', 5, 95)];
    // Take-off: 40,000 + 8,400 + 7,000 + 475 + 8,064 = 63,939 of 1,473. At 43.2 it is 63,633.6: 305.4 / 28 from the rear; the bags' 5 x 53 is too little.
    expect(remedy({ stations, envelope: box(38, 43.2, 900, 1700) })).toMatchObject({ kind: 'move', from: 'rear', to: 'front', settles: true });
  });

  it('does not call a slanting forward limit a weight to take out', () => {
    const slant = envelopeFromPoints(
      [
        [38, 900],
        [38, 1300],
        [46, 1700],
        [50, 1700],
        [50, 900],
      ].map(([arm = 0, weight = 0]) => ({ arm, weight })),
    );
    const loading = { ...plain, stations: [station('empty', 1000, 40), station('front', 300, 42), station('rear', 40, 70)], envelope: slant };
    const found = remedyFor(loading, judgeLoading(loading));
    expect(found).toMatchObject({ kind: 'move', from: 'front', to: 'rear', settles: true });
  });

  it('moves one of two stations of one name only', () => {
    const stations = [station('empty', 1000, 40), station('bags', 60, 95), station('seat', 200, 42), station('bags', 60, 90), station('seat', 0, 70)];
    expect(remedy({ stations, envelope: box(38, 44, 900, 1700) })).toMatchObject({ kind: 'move', from: 'bags', to: 'seat', settles: true });
  });

  it('says when no move does, and which way the load must go', () => {
    expect(remedy({ envelope: box(38, 40, 900, 1700) })).toEqual({ kind: 'none-found', direction: 'forward' });
    expect(remedy({ envelope: box(55, 60, 900, 1700) })).toEqual({ kind: 'none-found', direction: 'aft' });
  });

  it('looks sideways where all is well fore and aft', () => {
    const stations = plain.stations.map((each) => ({ ...each, lateralArm: each.name === 'front' ? 20 : 0 }));
    expect(remedy({ stations, lateralLimits: { left: -1, right: 1 } })).toEqual({ kind: 'lateral', direction: 'left' });
    expect(remedy({ stations, lateralLimits: { left: -5, right: 5 } })).toEqual({ kind: 'none-needed' });
    expect(remedy({ lateralLimits: { left: -5, right: 5 } })).toEqual({ kind: 'lateral-unknown' });
    expect(remedy({ stations, tanks: [tank('wing', 30, 1, level(48))], lateralLimits: { left: -5, right: 5 } })).toEqual({ kind: 'lateral-unknown' });
  });
});
