// LOADING_BRIEF, LOADING_ENTRIES and CLIMB_BRIEF as a sheet calls them: whole rows, whole sentences, both invented aircraft.
import { describe, expect, it } from 'vitest';
import { brindle } from '../../sheets-templates/aircraft/brindle';
import type { InventedAircraft } from '../../sheets-templates/aircraft/inventedAircraft';
import { quillon } from '../../sheets-templates/aircraft/quillon';
import { answer, call, sentenceOf } from '../support/call';

const outline = [[38, 900], [38, 1400], [40, 1700], [50, 1700], [50, 900]];
const standard = {
  stations: [['empty'], ['front'], ['rear'], ['bags']] as unknown,
  weights: [[1000], [200], [100], [40]] as unknown,
  arms: [[40], [42], [70], [95]] as unknown,
  tanks: [['wing', 30, 1, '']] as unknown,
  tankArms: [['wing', 0, 48], ['wing', 40, 48]] as unknown,
  each: 6 as unknown,
  taxi: 2 as unknown,
  trip: 18 as unknown,
  envelope: outline as unknown,
  limits: undefined as unknown,
  lateral: undefined as unknown,
  steps: undefined as unknown,
};
const given = (some: Partial<typeof standard>): unknown[] => Object.values({ ...standard, ...some });
const brief = (some: Partial<typeof standard> = {}): unknown[][] => call('LOADING_BRIEF', ...given(some)) as unknown[][];
const rowOf = (rows: readonly unknown[][], point: string): unknown[] => rows.find(([name]) => name === point) ?? [];
const reasonOf = (rows: readonly unknown[][], point: string): unknown => rowOf(rows, point)[7];

describe('LOADING_BRIEF', () => {
  it('lays its rows in order, lateral only where there are limits, the burn last', () => {
    const plain = ['zero fuel', 'take-off', 'landing', 'on the way', 'reserve'];
    expect(brief().map(([name]) => name)).toEqual([...plain, 'to change']);
    expect(brief({ limits: [['', '', '', -2, 2]], steps: 2 }).map(([name]) => name)).toEqual([...plain, 'lateral', 'to change', 'burn', 'burn', 'burn']);
    expect(brief({ steps: 2 }).slice(-3).map((row) => row[7])).toEqual(['28 of fuel on board', '14 of fuel on board', '0 of fuel on board']);
    expect(brief({ steps: 2 }).every((row) => row.length === 8)).toBe(true);
  });

  it('agrees with BALANCE_TOTAL and BALANCE_CHECK, the fuel being one item more', () => {
    const total = answer('BALANCE_TOTAL', [[1000], [200], [100], [40], [28 * 6]], [[40], [42], [70], [95], [48]]);
    const place = answer('BALANCE_CHECK', total.weight, total.arm, outline);
    expect(rowOf(brief(), 'take-off').slice(1, 7)).toEqual([place.verdict, total.weight, total.arm, place.forward_margin, place.aft_margin, place.weight_margin]);
  });

  it('says what is above a limit, and what to take out, rounded up', () => {
    const rows = brief({ limits: [['', 1500.4444, '', '', '']] });
    expect(rowOf(rows, 'take-off').slice(1, 3)).toEqual(['NO', 1508]);
    expect(rowOf(rows, 'take-off')[6]).toBeCloseTo(-7.5556, 9);
    expect(reasonOf(rows, 'take-off')).toBe('7.556 above the most allowed, 1,500');
    expect(reasonOf(rows, 'to change')).toBe('take 7.556 out: too heavy at take-off');
    expect(rowOf(rows, 'landing')[1]).toBe('OK');
    expect(rowOf(brief({ limits: [['', 1508, '', '', '']] }), 'take-off')[1]).toBe('OK');
  });

  it('names the move, and its own answer typed back settles it', () => {
    const narrow = [[38, 900], [38, 1700], [44, 1700], [44, 900]];
    const rows = brief({ envelope: narrow });
    // 67,264 - 44 x 1,508 = 912, over 95 - 42: 17.2075...
    expect(reasonOf(rows, 'to change')).toBe('move 17.21 from bags to front');
    const mended = brief({ envelope: narrow, weights: [[1000], [217.21], [100], [22.79]] });
    expect(mended.map((row) => row[1])).toEqual(['OK', 'OK', 'OK', 'OK', 'OK', '']);
    expect(reasonOf(mended, 'to change')).toBe('nothing to change');
  });

  it('is NO on the way alone where only the middle of the burn is outside', () => {
    const rows = brief({
      stations: [['empty'], ['pilot']], weights: [[900], [100]], arms: [[40], [40]], tanks: [['nose', 10, 1, ''], ['tail', 10, 2, '']],
      tankArms: [['nose', 0, 10], ['nose', 10, 10], ['tail', 0, 70], ['tail', 10, 70]], each: 10, taxi: 0, trip: 20, envelope: [[36, 900], [36, 1300], [42, 1300], [42, 900]], steps: 2,
    });
    expect(rows.map((row) => [row[0], row[1]])).toEqual([
      ['zero fuel', 'OK'], ['take-off', 'OK'], ['landing', 'OK'], ['on the way', 'NO'], ['reserve', 'OK'], ['to change', ''], ['burn', 'OK'], ['burn', 'NO'], ['burn', 'OK'],
    ]);
    expect(reasonOf(rows, 'on the way')).toBe('worst of the burn, 0.7273 behind the aft limit');
  });

  it('is UNKNOWN for lateral balance where an arm is blank, never OK', () => {
    const limits = [['', '', '', -2, 2]];
    const [onLine, wing] = [[[0], [0], [0], [0]], [['wing', 30, 1, 0]]];
    const some = [
      { given: { lateral: [[0], [0], [''], [0]], tanks: wing }, reason: 'station "rear" has no lateral arm' },
      { given: { lateral: onLine }, reason: 'tank "wing" has no lateral arm' },
      { given: { lateral: onLine, tanks: [['left', 15, 1, ''], ['right', 15, 1, '']], tankArms: [['left', 0, 48], ['left', 40, 48], ['right', 0, 48], ['right', 40, 48]] }, reason: 'tank "left", tank "right" have no lateral arm' },
      { given: { lateral: [[0], [''], [0], ['']] }, reason: 'station "front", station "bags", tank "wing" have no lateral arm' },
      { given: {}, reason: 'station "empty", station "front", station "rear" and 2 more have no lateral arm' },
    ];
    for (const { given: gaps, reason } of some) {
      expect(rowOf(brief({ limits, ...gaps }), 'lateral')).toEqual(['lateral', 'UNKNOWN', '', '', '', '', '', reason]);
      expect(reasonOf(brief({ limits, ...gaps }), 'to change')).toBe('nothing fore and aft; lateral balance is not known');
      // Without limits a lateral arm changes nothing.
      expect(brief(gaps).map((row) => row.slice(0, 7))).toEqual(brief({ ...gaps, lateral: onLine }).map((row) => row.slice(0, 7)));
      expect(brief(gaps).map(([name]) => name)).not.toContain('lateral');
    }
    expect(rowOf(brief({ limits, lateral: onLine, tanks: wing }), 'lateral')[1]).toBe('OK');
    const known = brief({ limits, lateral: [[0], [20], [0], [0]], tanks: wing });
    // 200 x 20 over 1,508 and 1,340: beyond 2 both.
    expect(rowOf(known, 'lateral')[1]).toBe('NO');
    expect(reasonOf(known, 'lateral')).toBe('from 2.653 to 2.985, limits -2 to 2');
    expect(reasonOf(known, 'to change')).toBe('bring load to the left');
  });

  it('passes over blank rows and refuses half a row', () => {
    const spaced = brief({ stations: [['empty'], [''], ['front'], ['rear'], ['bags']], weights: [[1000], [''], [200], [100], [40]], arms: [[40], [''], [42], [70], [95]], tanks: [['', '', '', ''], ['wing', 30, 1, '']] });
    expect(spaced).toEqual(brief());
    expect(sentenceOf('LOADING_BRIEF', ...given({ weights: [[1000], [200], [''], [40]] }))).toBe('LOADING_BRIEF: weights must be 0 to 10,000,000; got a blank (row 3).');
    expect(sentenceOf('LOADING_BRIEF', ...given({ arms: [[40], [42], [70], ['']] }))).toBe('LOADING_BRIEF: arms must be -1,000,000 to 1,000,000; got a blank (row 4).');
  });

  const rowsOfTanks = 'tanks must be rows of tank, quantity on board, place in the order of burning, lateral arm';
  const rowsOfArms = 'tank_arms must be rows of tank, quantity in it, arm, each quantity of a tank once, from empty to what is on board';
  const rowOfLimits = 'limits must be five cells in a row: most zero-fuel, take-off and landing weight, each above 0, lateral limit left and, further right, right';
  it.each([
    { some: { trip: 28.5 }, says: 'tanks must hold the taxi and trip fuel, 30.5; got 30 on board' },
    { some: { tanks: [['wing', '', 1, '']] }, says: `${rowsOfTanks} (quantity on board 0 to 1,000,000); got a blank (row 1, column 2 of tanks)` },
    { some: { tanks: [['wing', 30, 0, '']] }, says: `${rowsOfTanks} (place in the order of burning 1 to 99); got 0 (row 1, column 3 of tanks)` },
    { some: { tanks: [['', 30, 1, '']] }, says: `${rowsOfTanks} (tank in words); got a blank (row 1, column 1 of tanks)` },
    { some: { tanks: [['wing', 30, 1]] }, says: `${rowsOfTanks}; got a range of 1 row x 3 columns` },
    { some: { tanks: [['wing', 15, 1, ''], ['Wing', 15, 1, '']] }, says: `${rowsOfTanks}, each tank once; got "Wing" again` },
    { some: { tanks: [['', '', '', '']] }, says: 'tanks must have at least one filled row; got none' },
    { some: { tankArms: [['tail', 0, 48], ['tail', 40, 48]] }, says: `${rowsOfArms}; got no row for "wing"` },
    { some: { tankArms: [['wing', 0, 48], ['wing', 20, 48]] }, says: `${rowsOfArms}; got rows for 0 to 20 and 30 on board for "wing"` },
    { some: { tankArms: [['wing', 10, 48], ['wing', 40, 48]] }, says: `${rowsOfArms}; got rows for 10 to 40 and 30 on board for "wing"` },
    { some: { tankArms: [['wing', 0, 48], ['wing', 40, 48], ['WING', 40, 49]] }, says: `${rowsOfArms}; got 40 more than once for "wing"` },
    { some: { tankArms: [['wing', 0, 'aft'], ['wing', 40, 48]] }, says: 'tank_arms must be rows of tank, quantity in it, arm (arm -1,000,000 to 1,000,000); got "aft" (row 1, column 3 of tank_arms)' },
    { some: { limits: [[1400, 1600, 1500]] }, says: `${rowOfLimits}; got a range of 1 row x 3 columns` },
    { some: { limits: [[1400, 'none', '', '', '']] }, says: `${rowOfLimits}; got "none" (row 1, column 2 of limits)` },
    { some: { limits: [[1400, 0, '', '', '']] }, says: `${rowOfLimits}; got 0 (row 1, column 2 of limits)` },
    { some: { limits: [['', '', '', -2, '']] }, says: `${rowOfLimits}, both lateral limits or none; got one of them` },
    { some: { limits: [['', '', '', 2, -2]] }, says: `${rowOfLimits}; got 2 and -2 (row 1, column 4 of limits)` },
    { some: { envelope: [[38, 900], [50, 1700], [50, 900], [38, 1700]] }, says: 'envelope must be at least 3 points in order round the limits; got 4 points whose outline crosses itself, so they are out of order' },
  ])('says $says', ({ some, says }) => expect(sentenceOf('LOADING_BRIEF', ...given(some))).toBe(`LOADING_BRIEF: ${says}.`));
});

const columnOf = (rows: InventedAircraft['stations'], index: number): unknown[][] => rows.map((row) => [row[index] ?? '']);
const cornersOf = ({ corners }: InventedAircraft): unknown[][] => corners.filter(([category]) => category === 'normal').map(([, arm, weight]) => [arm, weight]);
const ofAircraft = (aircraft: InventedAircraft, each: number, taxi: number, trip: number, limits: readonly unknown[]): unknown[][] =>
  call(
    'LOADING_BRIEF', columnOf(aircraft.stations, 0), columnOf(aircraft.stations, 1), columnOf(aircraft.stations, 2),
    aircraft.tanks.map(([tank, quantity, order, side]) => [tank, quantity, order, side ?? '']), aircraft.tankArms, each, taxi, trip, cornersOf(aircraft), [limits], columnOf(aircraft.stations, 3),
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
    expect(rows.filter((row) => row[0] !== 'to change').every((row) => row[1] === 'OK')).toBe(true);
  });

  it('Brindle Two, in kilograms, millimetres and litres, with lateral limits', () => {
    // 445 x 310 + 148 x 420 + 9 x 1,150 = 210,460 of 602; 70 L are 50.4 kg at 690 + 30 x 70 / 98.
    const rows = ofAircraft(brindle, 0.72, 0, 30, ['', 720, 700, -60, 60]);
    expect(rowOf(rows, 'zero fuel')[3]).toBeCloseTo(210460 / 602, 9);
    expect(rowOf(rows, 'take-off')[2]).toBeCloseTo(652.4, 9);
    expect(rowOf(rows, 'take-off')[3]).toBeCloseTo((210460 + 50.4 * (690 + (30 * 70) / 98)) / 652.4, 9);
    // 445 x 2 - 78 x 230 + 70 x 230 = -950: the furthest left with no fuel.
    expect(reasonOf(rows, 'lateral')).toBe('from -1.578 to -1.456, limits -60 to 60');
    expect(rows.filter((row) => row[0] !== 'to change').every((row) => row[1] === 'OK')).toBe(true);
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
  (call('LOADING_ENTRIES', column(names ?? weights.map((_, index) => `station ${index + 1}`)), column(weights), column(arms), envelope) as unknown[][]).map((row) => row.slice(1));
const fine = ['OK', ''];
const swapped = ['CHECK', 'weight and arm look swapped, or the arm is a moment'];
const metres = [[2.1, 480], [2.1, 720], [2.5, 720], [2.5, 480]];

describe('LOADING_ENTRIES', () => {
  it.each([
    ['inches', { weights: [1000, 200, 100, 40], arms: [40, 42, 70, 95], envelope: outline }],
    ['metres', { weights: [445, 78, 70, 9], arms: [2.2, 2.3, 2.3, 3.4], envelope: metres }],
    ['millimetres', { weights: [445, 78, 70, 9], arms: [310, 420, 420, 1150], envelope: cornersOf(brindle) }],
    ['a datum among the limits', { weights: [445, 78, 70, 9], arms: [0.1, 0.2, 0.2, 1.4], envelope: [[-0.05, 480], [-0.05, 720], [0.3, 720], [0.3, 480]] }],
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
    expect(entries(some).slice(0, 4)).toEqual([fine, ['CHECK', `the arm looks like a moment: divided by the weight it is ${arm}`], fine, fine]));

  it('sees an arm too far for anything', () =>
    expect(entries({ weights: [1000, 0.5], arms: [40, 4200], envelope: outline })[1]).toEqual(['CHECK', 'the arm is further from the datum than 480']));

  it('sees kilograms for pounds, and pounds for kilograms', () => {
    // 1,340 lb are 607.8 kg.
    const kilograms = [453.592, 90.718, 45.359, 18.144];
    expect(entries({ weights: kilograms, arms: [40, 42, 70, 95], envelope: outline })[4]).toEqual(['CHECK', 'the weights add up to 607.8, outside the envelope; as kilograms they would be 1,340 pounds']);
    const pounds = [981, 172, 154, 20];
    expect(entries({ weights: pounds, arms: [310, 420, 420, 1150], envelope: cornersOf(brindle) })[4]).toEqual(['CHECK', 'the weights add up to 1,327, outside the envelope; as pounds they would be 601.9 kilograms']);
  });

  it('sees a station twice, by its row in the range, blank rows counted', () => {
    const rows = entries({ names: ['empty', '', 'Front ', 'front'], weights: [1000, '', 100, 100], arms: [40, '', 42, 42], envelope: outline });
    expect(rows).toEqual([fine, fine, ['CHECK', 'the same station stands in row 3 already'], fine]);
  });

  it('sees corners out of order, and then knows nothing of the stations', () => {
    const crossed = [[38, 900], [50, 1700], [50, 900], [38, 1700]];
    const reason = 'the corners of the envelope are not one outline: fewer than three, on one line, or out of order so that it crosses itself';
    expect(entries({ weights: [1000, 200], arms: [40, 42], envelope: crossed })).toEqual([['UNKNOWN', ''], ['UNKNOWN', ''], ['CHECK', reason]]);
  });
});

describe('CLIMB_BRIEF', () => {
  const table = [['weight', 'altitude', 'temperature', 'rate'], [900, 0, 0, 800], [900, 0, 30, 700], [900, 4000, 0, 600], [900, 4000, 30, 500]];
  const climb = (gradient: number, temperature: number, rows: unknown = table): unknown[][] => call('CLIMB_BRIEF', rows, 'rate', 900, 0, 1013.25, temperature, gradient, 90) as unknown[][];
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
    expect(verdictOf(beyond)[1]).toBe('temperature_c must be 0 to 30, the "temperature" rows of the table; got 31, 1 above the table, and nothing is extrapolated');
    expect(verdictOf(climb(200, 15, [...table.slice(0, 2), [900, 0, 30, ''], ...table.slice(3)]))).toEqual(['UNKNOWN', 'table must hold a number in column "rate"; got a blank (row 3 of table)']);
  });
});
