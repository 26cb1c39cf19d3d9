// LOADING_BRIEF, LOADING_ENTRIES and CLIMB_BRIEF as a sheet calls them: whole rows, whole sentences, both invented aircraft.
import { describe, expect, it } from 'vitest';
import { brindle } from '../../../sheets-templates/demo/aircraft/brindle';
import type { InventedAircraft } from '../../../sheets-templates/demo/aircraft/inventedAircraft';
import { quillon } from '../../../sheets-templates/demo/aircraft/quillon';
import { answer, call, sentenceOf } from '../../support/call';

const outline = [
  [38, 900],
  [38, 1400],
  [40, 1700],
  [50, 1700],
  [50, 900],
];
const standard = {
  stations: [['empty'], ['front'], ['rear'], ['bags']] as unknown,
  weights: [[1000], [200], [100], [40]] as unknown,
  arms: [[40], [42], [70], [95]] as unknown,
  tanks: [['wing', 30, 1, '']] as unknown,
  tankArms: [
    ['wing', 0, 48],
    ['wing', 40, 48],
  ] as unknown,
  each: 6 as unknown,
  taxi: 2 as unknown,
  trip: 18 as unknown,
  envelope: outline as unknown,
  limits: undefined as unknown,
  lateral: undefined as unknown,
  steps: undefined as unknown,
  headings: undefined as unknown,
  weightUnit: undefined as unknown,
  armUnit: undefined as unknown,
};
const given = (some: Partial<typeof standard>): unknown[] => Object.values({ ...standard, ...some });
const brief = (some: Partial<typeof standard> = {}): unknown[][] => call('LOADING_BRIEF', ...given(some)) as unknown[][];
const rowOf = (rows: readonly unknown[][], point: string): unknown[] => rows.find(([name]) => name === point) ?? [];
const reasonOf = (rows: readonly unknown[][], point: string): unknown => rowOf(rows, point)[7];

describe('LOADING_BRIEF', () => {
  it('lays its rows in order, lateral only where there are limits, the burn last', () => {
    const plain = ['zero fuel', 'take-off', 'landing', 'during the flight', 'burning into the reserve'];
    expect(brief().map(([name]) => name)).toEqual([...plain, 'suggested change']);
    expect(brief({ limits: [['', '', '', -2, 2]], steps: 2 }).map(([name]) => name)).toEqual([
      ...plain,
      'lateral',
      'suggested change',
      'burn',
      'burn',
      'burn',
    ]);
    expect(
      brief({ steps: 2 })
        .slice(-3)
        .map((row) => row[7]),
    ).toEqual(['28 of fuel on board', '14 of fuel on board', '0 of fuel on board']);
    expect(brief({ steps: 2 }).every((row) => row.length === 8)).toBe(true);
  });

  it('agrees with BALANCE_TOTAL and BALANCE_CHECK, the fuel being one item more', () => {
    const total = answer('BALANCE_TOTAL', [[1000], [200], [100], [40], [28 * 6]], [[40], [42], [70], [95], [48]]);
    const place = answer('BALANCE_CHECK', total.weight, total.arm, outline);
    expect(rowOf(brief(), 'take-off').slice(1, 7)).toEqual([
      place.verdict,
      total.weight,
      total.arm,
      place.forward_margin,
      place.aft_margin,
      place.weight_margin,
    ]);
  });

  it('says what is above a limit, and what to take out, rounded up', () => {
    const rows = brief({ limits: [['', 1500.4444, '', '', '']] });
    expect(rowOf(rows, 'take-off').slice(1, 3)).toEqual(['NO', 1508]);
    expect(rowOf(rows, 'take-off')[6]).toBeCloseTo(-7.5556, 9);
    expect(reasonOf(rows, 'take-off')).toBe('7.556 over maximum take-off weight (1,500)');
    expect(reasonOf(rows, 'suggested change')).toBe('take 7.556 out: too heavy at take-off');
    expect(rowOf(rows, 'landing')[1]).toBe('OK');
    expect(rowOf(brief({ limits: [['', 1508, '', '', '']] }), 'take-off')[1]).toBe('OK');
  });

  it('gives the unit with every weight and arm where it is told', () => {
    const inPounds = { weightUnit: 'lb', armUnit: 'in' };
    const side = [['', 1500.4444, '', -2, 2]];
    const tanks = [['wing', 30, 1, 0]];
    const rows = brief({ ...inPounds, limits: side, lateral: [[0], [20], [0], [0]], tanks });
    expect(rows.map((row) => row[7])).toEqual([
      '360 lb under the limit; CG 6.18 in behind the forward limit, 5.82 in ahead of the aft limit',
      '7.556 lb over maximum take-off weight (1,500 lb)',
      '300 lb under the limit; CG 6.34 in behind the forward limit, 5.66 in ahead of the aft limit',
      'worst of the burn, 192 lb under the limit; CG 5.88 in behind the forward limit, 5.4 in ahead of the aft limit',
      'worst beyond landing, 300 lb under the limit; CG 6.34 in behind the forward limit, 5.66 in ahead of the aft limit',
      'from 2.653 to 2.985 in, limits -2 to 2 in',
      'take 7.556 lb out: too heavy at take-off; no one station alone settles it',
    ]);
    const narrow = [
      [38, 900],
      [38, 1700],
      [44, 1700],
      [44, 900],
    ];
    expect(reasonOf(brief({ ...inPounds, envelope: narrow }), 'suggested change')).toBe('move 17.21 lb from bags to front');
    expect(reasonOf(brief({ ...inPounds, envelope: narrow }), 'take-off')).toBe('CG 0.6048 in behind the aft limit');
  });

  it('says both where a point is too heavy and too far aft, and which load to leave behind', () => {
    const narrow = [
      [38, 900],
      [38, 1700],
      [44, 1700],
      [44, 900],
    ];
    // 67,264 less 20 x 95 is 65,364 of 1,488: 43.93; without 20 of the rear (70) it is 44.26.
    const rows = brief({ weightUnit: 'lb', armUnit: 'in', envelope: narrow, limits: [['', 1488, '', '', '']] });
    expect(reasonOf(rows, 'take-off')).toBe('20 lb over maximum take-off weight (1,488 lb); CG 0.6048 in behind the aft limit');
    expect(reasonOf(rows, 'suggested change')).toBe('take 20 lb out of bags: too heavy at take-off');
  });

  it('names the move, and its own answer typed back settles it', () => {
    const narrow = [
      [38, 900],
      [38, 1700],
      [44, 1700],
      [44, 900],
    ];
    const rows = brief({ envelope: narrow });
    // 67,264 - 44 x 1,508 = 912, over 95 - 42: 17.2075...
    expect(reasonOf(rows, 'suggested change')).toBe('move 17.21 from bags to front');
    const mended = brief({ envelope: narrow, weights: [[1000], [217.21], [100], [22.79]] });
    expect(mended.map((row) => row[1])).toEqual(['OK', 'OK', 'OK', 'OK', 'OK', '']);
    expect(reasonOf(mended, 'suggested change')).toBe('nothing to change');
  });

  it('is NO on the way alone where only the middle of the burn is outside', () => {
    const rows = brief({
      stations: [['empty'], ['pilot']],
      weights: [[900], [100]],
      arms: [[40], [40]],
      tanks: [
        ['nose', 10, 1, ''],
        ['tail', 10, 2, ''],
      ],
      tankArms: [
        ['nose', 0, 10],
        ['nose', 10, 10],
        ['tail', 0, 70],
        ['tail', 10, 70],
      ],
      each: 10,
      taxi: 0,
      trip: 20,
      envelope: [
        [36, 900],
        [36, 1300],
        [42, 1300],
        [42, 900],
      ],
      steps: 2,
    });
    expect(rows.map((row) => [row[0], row[1]])).toEqual([
      ['zero fuel', 'OK'],
      ['take-off', 'OK'],
      ['landing', 'OK'],
      ['during the flight', 'NO'],
      ['burning into the reserve', 'OK'],
      ['suggested change', ''],
      ['burn', 'OK'],
      ['burn', 'NO'],
      ['burn', 'OK'],
    ]);
    expect(reasonOf(rows, 'during the flight')).toBe('worst of the burn, CG 0.7273 behind the aft limit');
  });

  it('is UNKNOWN for lateral balance where an arm is blank, never OK', () => {
    const limits = [['', '', '', -2, 2]];
    const [onLine, wing] = [[[0], [0], [0], [0]], [['wing', 30, 1, 0]]];
    const some = [
      { given: { lateral: [[0], [0], [''], [0]], tanks: wing }, reason: 'station "rear" has no lateral arm' },
      { given: { lateral: onLine }, reason: 'tank "wing" has no lateral arm' },
      {
        given: {
          lateral: onLine,
          tanks: [
            ['left', 15, 1, ''],
            ['right', 15, 1, ''],
          ],
          tankArms: [
            ['left', 0, 48],
            ['left', 40, 48],
            ['right', 0, 48],
            ['right', 40, 48],
          ],
        },
        reason: 'tank "left", tank "right" have no lateral arm',
      },
      { given: { lateral: [[0], [''], [0], ['']] }, reason: 'station "front", station "bags", tank "wing" have no lateral arm' },
      { given: {}, reason: 'station "empty", station "front", station "rear" and 2 more have no lateral arm' },
    ];
    for (const { given: gaps, reason } of some) {
      expect(rowOf(brief({ limits, ...gaps }), 'lateral')).toEqual(['lateral', 'UNKNOWN', '', '', '', '', '', reason]);
      expect(reasonOf(brief({ limits, ...gaps }), 'suggested change')).toBe('nothing fore and aft; lateral balance is not known');
      // Without limits a lateral arm changes nothing.
      expect(brief(gaps).map((row) => row.slice(0, 7))).toEqual(brief({ ...gaps, lateral: onLine }).map((row) => row.slice(0, 7)));
      expect(brief(gaps).map(([name]) => name)).not.toContain('lateral');
    }
    expect(rowOf(brief({ limits, lateral: onLine, tanks: wing }), 'lateral')[1]).toBe('OK');
    const known = brief({ limits, lateral: [[0], [20], [0], [0]], tanks: wing });
    // 200 x 20 over 1,508 and 1,340: beyond 2 both.
    expect(rowOf(known, 'lateral')[1]).toBe('NO');
    expect(reasonOf(known, 'lateral')).toBe('from 2.653 to 2.985, limits -2 to 2');
    expect(reasonOf(known, 'suggested change')).toBe('move load to the left');
  });

  it('passes over blank rows and refuses half a row', () => {
    const spaced = brief({
      stations: [['empty'], [''], ['front'], ['rear'], ['bags']],
      weights: [[1000], [''], [200], [100], [40]],
      arms: [[40], [''], [42], [70], [95]],
      tanks: [
        ['', '', '', ''],
        ['wing', 30, 1, ''],
      ],
    });
    expect(spaced).toEqual(brief());
    expect(sentenceOf('LOADING_BRIEF', ...given({ weights: [[1000], [200], [''], [40]] }))).toBe(
      'LOADING_BRIEF: weights must be 0 to 10,000,000; got a blank (row 3).',
    );
    expect(sentenceOf('LOADING_BRIEF', ...given({ arms: [[40], [42], [70], ['']] }))).toBe(
      'LOADING_BRIEF: arms must be -1,000,000 to 1,000,000, or a moment given in its place; got a blank (row 4 of arms).',
    );
  });

  const rowsOfTanks = 'tanks must be rows of tank, quantity on board, place in the order of burning, lateral arm';
  const rowsOfArms = 'tank_arms must be rows of tank, quantity in it, arm, each quantity of a tank once, from empty to what is on board';
  const rowOfLimits =
    'limits must be five cells in a row: maximum zero-fuel, take-off and landing weight, each above 0, lateral limit left and, further right, right';
  it.each([
    { some: { trip: 28.5 }, says: 'tanks must hold the taxi and trip fuel, 30.5; got 30 on board' },
    { some: { tanks: [['wing', '', 1, '']] }, says: `${rowsOfTanks} (quantity on board 0 to 1,000,000); got a blank (row 1, column 2 of tanks)` },
    { some: { tanks: [['wing', 30, 0, '']] }, says: `${rowsOfTanks} (place in the order of burning 1 to 99); got 0 (row 1, column 3 of tanks)` },
    { some: { tanks: [['', 30, 1, '']] }, says: `${rowsOfTanks} (tank in words); got a blank (row 1, column 1 of tanks)` },
    { some: { tanks: [['wing', 30, 1]] }, says: `${rowsOfTanks}; got a range of 1 row x 3 columns` },
    {
      some: {
        tanks: [
          ['wing', 15, 1, ''],
          ['Wing', 15, 1, ''],
        ],
      },
      says: `${rowsOfTanks}, each tank once; got "Wing" again`,
    },
    { some: { tanks: [['', '', '', '']] }, says: 'tanks must have at least one filled row; got none' },
    {
      some: {
        tankArms: [
          ['tail', 0, 48],
          ['tail', 40, 48],
        ],
      },
      says: `${rowsOfArms}; got no row for "wing"`,
    },
    {
      some: {
        tankArms: [
          ['wing', 0, 48],
          ['wing', 20, 48],
        ],
      },
      says: `${rowsOfArms}; got rows for 0 to 20 and 30 on board for "wing"`,
    },
    {
      some: {
        tankArms: [
          ['wing', 10, 48],
          ['wing', 40, 48],
        ],
      },
      says: `${rowsOfArms}; got rows for 10 to 40 and 30 on board for "wing"`,
    },
    {
      some: {
        tankArms: [
          ['wing', 0, 48],
          ['wing', 40, 48],
          ['WING', 40, 49],
        ],
      },
      says: `${rowsOfArms}; got 40 more than once for "wing"`,
    },
    {
      some: {
        tankArms: [
          ['wing', 0, 'aft'],
          ['wing', 40, 48],
        ],
      },
      says: 'tank_arms must be rows of tank, quantity in it, arm (arm -1,000,000 to 1,000,000); got "aft" (row 1, column 3 of tank_arms)',
    },
    { some: { limits: [[1400, 1600, 1500]] }, says: `${rowOfLimits}; got a range of 1 row x 3 columns` },
    { some: { limits: [[1400, 'none', '', '', '']] }, says: `${rowOfLimits}; got "none" (row 1, column 2 of limits)` },
    { some: { limits: [[1400, 0, '', '', '']] }, says: `${rowOfLimits}; got 0 (row 1, column 2 of limits)` },
    { some: { limits: [['', '', '', -2, '']] }, says: `${rowOfLimits}, both lateral limits or none; got one of them` },
    { some: { limits: [['', '', '', 2, -2]] }, says: `${rowOfLimits}; got 2 and -2 (row 1, column 4 of limits)` },
    {
      some: {
        envelope: [
          [38, 900],
          [50, 1700],
          [50, 900],
          [38, 1700],
        ],
      },
      says: 'envelope must be at least 3 points in order round the limits; got 4 points whose outline crosses itself, so they are out of order',
    },
  ])('says $says', ({ some, says }) => expect(sentenceOf('LOADING_BRIEF', ...given(some))).toBe(`LOADING_BRIEF: ${says}.`));
});

const columnOf = (rows: InventedAircraft['stations'], index: number): unknown[][] => rows.map((row) => [row[index] ?? '']);
const cornersOf = ({ corners }: InventedAircraft): unknown[][] =>
  corners.filter(([category]) => category === 'normal').map(([, arm, weight]) => [arm, weight]);
const ofAircraft = (aircraft: InventedAircraft, each: number, taxi: number, trip: number, limits: readonly unknown[]): unknown[][] =>
  call(
    'LOADING_BRIEF',
    columnOf(aircraft.stations, 0),
    columnOf(aircraft.stations, 1),
    columnOf(aircraft.stations, 2),
    aircraft.tanks.map(([tank, quantity, order, side]) => [tank, quantity, order, side ?? '']),
    aircraft.tankArms,
    each,
    taxi,
    trip,
    cornersOf(aircraft),
    [limits],
    columnOf(aircraft.stations, 3),
  ) as unknown[][];

describe('the invented aircraft, by hand', () => {
  it('Quillon Four, in pounds, inches and gallons', () => {
    // 1,702 x 84.2 + 345 x 86.5 + 160 x 118 + 45 x 142 = 198,420.9 of 2,252; 24 each at 95.2 is 288 at 95.2 more.
    const rows = ofAircraft(quillon, 6, 0, 20, [2500, 2650, 2650, '', '']);
    expect(rowOf(rows, 'zero fuel')[2]).toBe(2252);
    expect(rowOf(rows, 'zero fuel')[3]).toBeCloseTo(198420.9 / 2252, 9);
    expect(rowOf(rows, 'take-off')[2]).toBeCloseTo(2540, 9);
    expect(rowOf(rows, 'take-off')[3]).toBeCloseTo((198420.9 + 288 * 95.2) / 2540, 9);
    // Ten gone from each: 14 each at 94.7.
    expect(rowOf(rows, 'landing')[3]).toBeCloseTo((198420.9 + 168 * 94.7) / 2420, 9);
    expect(rowOf(rows, 'take-off')[6]).toBeCloseTo(110, 9);
    expect(rows.filter((row) => row[0] !== 'suggested change').every((row) => row[1] === 'OK')).toBe(true);
  });

  it('Brindle Two, in kilograms, millimetres and litres, with lateral limits', () => {
    // 445 x 310 + 148 x 420 + 9 x 1,150 = 210,460 of 602; 70 L are 50.4 kg at 690 + 30 x 70 / 98.
    const rows = ofAircraft(brindle, 0.72, 0, 30, ['', 720, 700, -60, 60]);
    expect(rowOf(rows, 'zero fuel')[3]).toBeCloseTo(210460 / 602, 9);
    expect(rowOf(rows, 'take-off')[2]).toBeCloseTo(652.4, 9);
    expect(rowOf(rows, 'take-off')[3]).toBeCloseTo((210460 + 50.4 * (690 + (30 * 70) / 98)) / 652.4, 9);
    // 445 x 2 - 78 x 230 + 70 x 230 = -950: the furthest left with no fuel.
    expect(reasonOf(rows, 'lateral')).toBe('from -1.578 to -1.456, limits -60 to 60');
    expect(rows.filter((row) => row[0] !== 'suggested change').every((row) => row[1] === 'OK')).toBe(true);
  });
});

interface Entries {
  readonly names?: readonly string[];
  readonly weights: readonly unknown[];
  readonly arms: readonly unknown[];
  readonly envelope: unknown;
}
const column = (values: readonly unknown[]): unknown[][] => values.map((value) => [value]);
const entries = ({ names, weights, arms, envelope }: Entries): unknown[][] =>
  (
    call(
      'LOADING_ENTRIES',
      column(names ?? weights.map((_, index) => `station ${index + 1}`)),
      column(weights),
      column(arms),
      envelope,
    ) as unknown[][]
  ).map((row) => row.slice(1));
const fine = ['OK', ''];
const swapped = ['CHECK', 'weight and arm look swapped, or the arm is a moment'];
const metres = [
  [2.1, 480],
  [2.1, 720],
  [2.5, 720],
  [2.5, 480],
];

const club = { weights: [1702, 345, 160, 45], arms: [84.2, 86.5, 118, 142], names: ['empty aircraft, oil', 'front seats', 'rear seats', 'baggage'] };
const clubEnvelope = cornersOf(quillon).slice(0, 6);
const clubWith = (weights: readonly number[], envelope = clubEnvelope, names = club.names): unknown[][] =>
  entries({ ...club, weights, names, envelope }).filter(([verdict]) => verdict !== 'OK');
const cornerAt = (at: number, ...corner: readonly number[]): typeof clubEnvelope =>
  clubEnvelope.map((one, index) => (index === at ? corner : one)) as typeof clubEnvelope;

describe('LOADING_ENTRIES of a loading that nobody would fly', () => {
  it.each([
    ['nobody in the front seats', [1702, 0, 160, 45], 'nobody in the front seats: who flies?'],
    ['nobody aboard', [1702, 0, 0, 0], 'nobody in the front seats: who flies?'],
    ['a front seat of 35', [1702, 35, 160, 45], 'too light for a person in the front seats: is the weight in another unit?'],
    ['a seat below 0', [1702, 345, -160, 45], 'a load cannot weigh less than 0'],
    [
      'an empty weight with a digit less',
      [170.2, 345, 160, 45],
      'the weights add up to 720.2, far outside the envelope: are they in the unit of its corners?',
    ],
  ])('%s', (_, weights, reason) => expect(clubWith(weights)).toEqual([['CHECK', reason]]));

  it('lets one of two front seats be empty, and equipment taken out weigh less than nothing', () => {
    expect(clubWith([1702, 180, 0, 45], clubEnvelope, ['empty aircraft', 'left seat', 'right seat', 'baggage'])).toEqual([]);
    expect(clubWith([1702, 345, 160, -12], clubEnvelope, ['empty aircraft', 'front seats', 'rear seats', 'doors off'])).toEqual([]);
  });

  it('takes a rear left seat for no front seat', () => {
    expect(clubWith([1702, 180, 0, 0], clubEnvelope, ['empty aircraft', 'pilot', 'rear left seat', 'baggage'])).toEqual([]);
  });

  it.each([
    ['a corner of 920 for 92', cornerAt(3, 92 * 10, 2650), 'a corner of the envelope at arm 920 lies far from the others, 82 to 92'],
    ['a corner of 8.2 for 82', cornerAt(1, 8.2, 2150), 'a corner of the envelope at arm 8.2 lies far from the others, 82 to 92'],
    ['a corner of 26,500 for 2,650', cornerAt(3, 92, 26_500), 'a corner of the envelope at weight 26,500 lies far from the others, 1,650 to 2,650'],
  ])('%s', (_, envelope, reason) => expect(clubWith(club.weights, envelope)).toEqual([['CHECK', reason]]));

  it('sees two corners that went astray together', () => {
    const aft = clubEnvelope.map(([arm = 0, weight = 0]) => [arm === 92 ? 920 : arm, weight]) as typeof clubEnvelope;
    expect(clubWith(club.weights, aft)).toEqual([['CHECK', 'a corner of the envelope at arm 920 lies far from the stations, 84.2 to 142']]);
    const heavy = clubEnvelope.map(([arm = 0, weight = 0]) => [arm, weight === 2650 ? 26_500 : weight]) as typeof clubEnvelope;
    expect(clubWith(club.weights, heavy)).toEqual([['CHECK', 'a corner of the envelope at weight 26,500 lies far from the others, 1,650 to 2,150']]);
  });
});

const cabin = (unit: string, weights: readonly number[], names = club.names, arms = club.arms, most: unknown = ''): unknown[][] =>
  (call('LOADING_ENTRIES', column(names), column(weights), column(arms), clubEnvelope, '', unit, most) as unknown[][])
    .map((row) => row.slice(1))
    .filter(([verdict]) => verdict !== 'OK');
const single = ['empty aircraft, oil', 'left seat', 'right seat', 'baggage'];

describe('LOADING_ENTRIES with the unit of the weights', () => {
  const light = 'too light for a person in the front seats: typed in kg?';
  it.each([
    ['the pilot alone in kg', [1702, 77, 0, 0], club.names, `${light} 77 kg are 169.8 lb`],
    ['two in kg on seats of their own', [1702, 82, 70, 10], single, `${light} 82 kg are 180.8 lb`],
    ['front and rear seats in kg', [1702, 156.5, 72.6, 20.4], club.names, 'everybody aboard is light, 72.6 lb behind: are the people typed in kg?'],
    [
      'two big people in kg, and two behind',
      [1702, 168, 101, 20],
      club.names,
      'everybody aboard is light, 101 lb behind: are the people typed in kg?',
    ],
  ])('%s', (_, weights, names, reason) => expect(cabin('lb', weights, names)).toEqual([['CHECK', reason]]));

  it.each([
    ['a light pilot', [1702, 112, 0, 0], club.names],
    ['a light pilot with a small child', [1702, 130, 40, 0], club.names],
    ['a pilot with a child', [1702, 180, 70, 0], club.names],
    ['two people with two children', [1702, 290, 90, 0], club.names],
    ['a light person beside the pilot', [1702, 170, 60, 0], single],
    ['heavy people', [1702, 460, 360, 0], club.names],
  ])('lets %s be', (_, weights, names) => expect(cabin('lb', weights, names)).toEqual([]));

  it('tells pounds among kilograms', () => {
    const reason = 'too heavy for who sits there: typed in lb? 172 lb are 78.02 kg';
    expect(cabin('kg', [1702, 172, 70, 9], single)).toEqual([['CHECK', reason]]);
    expect(cabin('kg', [1702, 110, 95, 9], single)).toEqual([]);
  });

  it('knows no unit by any other word', () => {
    expect(cabin('stone', [1702, 77, 0, 0])).toEqual([]);
    expect(cabin('pounds', [1702, 77, 0, 0])).toHaveLength(1);
  });
});

describe('LOADING_ENTRIES of stations out of their order', () => {
  const reason = 'weight and arm look swapped, or the arm is a moment';
  it.each([
    ['the baggage', [1702, 345, 160, 142], [84.2, 86.5, 118, 45]],
    ['heavy baggage, ahead of the rear seats', [1702, 345, 160, 142], [84.2, 86.5, 118, 100]],
    ['the rear seats', [1702, 345, 118, 45], [84.2, 86.5, 160, 142]],
  ])('sees %s swapped', (_, weights, arms) => expect(cabin('lb', weights, club.names, arms)).toEqual([['CHECK', reason]]));

  it('tells what lies ahead of who flies', () => {
    const ahead = [['CHECK', 'the arm lies ahead of the front seats, 86.5']];
    expect(cabin('lb', [1702, 345, 160, 45], club.names, [84.2, 86.5, 118, 14.2])).toEqual(ahead);
    expect(cabin('lb', [1702, 345, 160, 45], club.names, [84.2, 86.5, 11.8, 142])).toEqual(ahead);
  });

  it('lets baggage in the nose be, and what has no place in the cabin', () => {
    expect(cabin('lb', [1702, 345, 160, 45], ['empty aircraft', 'front seats', 'rear seats', 'nose baggage'], [84.2, 86.5, 118, 30])).toEqual([]);
    expect(cabin('lb', [1702, 345, 160, 45], ['empty aircraft', 'front seats', 'ballast', 'baggage'], [84.2, 86.5, 20, 142])).toEqual([]);
  });
});

describe('LOADING_ENTRIES of corners out of their neighbourhood', () => {
  const others = (of: string, value: string, span: string): string => `a corner of the envelope at ${of} ${value} lies far from the others, ${span}`;
  it.each([
    ['3,650 for 2,650', cornerAt(3, 92, 3650), others('weight', '3,650', '1,650 to 2,650')],
    ['1,150 for 1,650', cornerAt(4, 92, 1150), others('weight', '1,150', '1,650 to 2,650')],
    ['102 for 92', cornerAt(3, 102, 2650), others('arm', '102', '82 to 92')],
    ['97 for 92', cornerAt(4, 97, 1650), others('arm', '97', '82 to 92')],
    ['72 for 82 at the foot', cornerAt(0, 72, 1650), others('arm', '72', '82 to 92')],
    ['75.5 for 85.5', cornerAt(2, 75.5, 2650), others('arm', '75.5', '82 to 92')],
  ])('a corner of %s', (_, envelope, reason) => expect(clubWith(club.weights, envelope)).toEqual([['CHECK', reason]]));

  it('tells one above the maximum take-off weight, and lets the ramp weight be', () => {
    const reason = 'a corner of the envelope at weight 2,650 is above the maximum take-off weight, 2,550';
    expect(cabin('lb', club.weights, club.names, club.arms, 2550)).toEqual([['CHECK', reason]]);
    expect(cabin('lb', club.weights, club.names, club.arms, 2640)).toEqual([]);
  });

  it('lets an envelope be whose forward limit leans from its foot', () => {
    const leaning = [
      [80, 1650],
      [85.5, 2650],
      [92, 2650],
      [92, 1650],
    ];
    expect(clubWith(club.weights, leaning as typeof clubEnvelope)).toEqual([]);
  });
});

describe('LOADING_ENTRIES', () => {
  it.each([
    ['inches', { weights: [1000, 200, 100, 40], arms: [40, 42, 70, 95], envelope: outline }],
    ['metres', { weights: [445, 78, 70, 9], arms: [2.2, 2.3, 2.3, 3.4], envelope: metres }],
    ['millimetres', { weights: [445, 78, 70, 9], arms: [310, 420, 420, 1150], envelope: cornersOf(brindle) }],
    [
      'a datum among the limits',
      {
        weights: [445, 78, 70, 9],
        arms: [0.1, 0.2, 0.2, 1.4],
        envelope: [
          [-0.05, 480],
          [-0.05, 720],
          [0.3, 720],
          [0.3, 480],
        ],
      },
    ],
    ['empty seats and a tail far aft', { weights: [1000, 0, 0, 12], arms: [40, 42, 70, 230], envelope: outline }],
  ])('doubts nothing of a sound loading in %s', (_, some) => expect(entries(some)).toEqual([fine, fine, fine, fine, fine]));

  it.each([
    ['inches', { weights: [1000, 42, 100, 40], arms: [40, 200, 70, 95], envelope: outline }],
    ['metres', { weights: [445, 2.3, 70, 9], arms: [2.2, 78, 2.3, 3.4], envelope: metres }],
    ['millimetres', { weights: [445, 420, 70, 9], arms: [310, 78, 420, 1150], envelope: cornersOf(brindle) }],
  ])('sees weight and arm swapped in %s', (_, some) => expect(entries(some).slice(0, 4)).toEqual([fine, swapped, fine, fine]));

  it.each([
    ['inches', { weights: [1000, 200, 100, 40], arms: [40, 8400, 70, 95], envelope: outline }, '42'],
    ['metres', { weights: [445, 78, 70, 9], arms: [2.2, 179.4, 2.3, 3.4], envelope: metres }, '2.3'],
    ['millimetres', { weights: [445, 78, 70, 9], arms: [310, 32760, 420, 1150], envelope: cornersOf(brindle) }, '420'],
  ])('sees a moment for an arm in %s', (_, some, arm) =>
    expect(entries(some).slice(0, 4)).toEqual([fine, ['CHECK', `the arm looks like a moment: divided by the weight it is ${arm}`], fine, fine]),
  );

  it('sees an arm too far for anything', () =>
    expect(entries({ weights: [1000, 0.5], arms: [40, 4200], envelope: outline })[1]).toEqual([
      'CHECK',
      'the arm is further from the datum than 480',
    ]));

  it('sees kilograms for pounds, and pounds for kilograms', () => {
    // 1,340 lb are 607.8 kg.
    const kilograms = [453.592, 90.718, 45.359, 18.144];
    expect(entries({ weights: kilograms, arms: [40, 42, 70, 95], envelope: outline })[4]).toEqual([
      'CHECK',
      'the weights add up to 607.8, outside the envelope; as kilograms they would be 1,340 pounds',
    ]);
    const pounds = [981, 172, 154, 20];
    expect(entries({ weights: pounds, arms: [310, 420, 420, 1150], envelope: cornersOf(brindle) })[4]).toEqual([
      'CHECK',
      'the weights add up to 1,327, outside the envelope; as pounds they would be 601.9 kilograms',
    ]);
  });

  it('sees a station twice, by its row in the range, blank rows counted', () => {
    const rows = entries({ names: ['empty', '', 'Front ', 'front'], weights: [1000, '', 100, 100], arms: [40, '', 42, 42], envelope: outline });
    expect(rows).toEqual([fine, fine, ['CHECK', 'the same station stands in row 3 already'], fine]);
  });

  it('sees corners out of order, and then knows nothing of the stations', () => {
    const crossed = [
      [38, 900],
      [50, 1700],
      [50, 900],
      [38, 1700],
    ];
    const reason = 'the corners of the envelope are not one outline: fewer than three, on one line, or out of order so that it crosses itself';
    expect(entries({ weights: [1000, 200], arms: [40, 42], envelope: crossed })).toEqual([
      ['UNKNOWN', ''],
      ['UNKNOWN', ''],
      ['CHECK', reason],
    ]);
  });
});

describe('CLIMB_BRIEF', () => {
  const table = [
    ['weight', 'altitude', 'temperature', 'rate'],
    [900, 0, 0, 800],
    [900, 0, 30, 700],
    [900, 4000, 0, 600],
    [900, 4000, 30, 500],
  ];
  const climb = (gradient: number, temperature: number, rows: unknown = table): unknown[][] =>
    call('CLIMB_BRIEF', rows, 'rate', 900, 0, 1013.25, temperature, gradient, 90) as unknown[][];
  const verdictOf = (rows: unknown[][]): unknown[] => (rows.at(-1) ?? []).slice(1);

  it('is OK to the last foot and NO below it', () => {
    // 750 ft/min at 15 degrees; 500 ft/NM at 90 kt takes 750.
    expect(verdictOf(climb(200, 15))).toEqual(['OK', '450 ft/min more than needed']);
    expect(verdictOf(climb(500, 15))).toEqual(['OK', '0 ft/min more than needed']);
    expect(verdictOf(climb(500.2, 15))).toEqual(['NO', '1 ft/min short of what is needed']);
    expect(verdictOf(climb(499.8, 15))).toEqual(['OK', '0 ft/min more than needed']);
    expect(verdictOf(climb(600, 15))).toEqual(['NO', '150 ft/min short of what is needed']);
  });

  it('is UNKNOWN beyond the table and in a hole of it', () => {
    const beyond = climb(200, 31);
    expect(beyond.map((row) => row[1])).toEqual([0, 300, 'UNKNOWN', 'UNKNOWN', 'UNKNOWN', 'UNKNOWN']);
    expect(verdictOf(beyond)[1]).toBe('your climb table is for temperature 0 to 30 deg C; 31 deg C is 1 deg C above it, and nothing is extrapolated');
    expect(verdictOf(climb(200, 15, [...table.slice(0, 2), [900, 0, 30, ''], ...table.slice(3)]))).toEqual([
      'UNKNOWN',
      'your climb table must hold a number in column "rate"; got a blank at weight 900, altitude 0, temperature 30 (row 3 of table)',
    ]);
  });
});
