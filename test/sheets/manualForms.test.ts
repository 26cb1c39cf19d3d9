// An owner's manual of 56 printed numbers, typed as it is printed: two-way blocks for one weight, a landing table without temperatures,
// moments and a moment envelope, tanks of one row. Counted in cells, and read by the trip.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { aircraftEntryReasons, aircraftEntryVerdicts } from '../../sheets-templates/manual/sheet';
import type { SheetKey, TemplateValue } from '../../sheets-templates/template';
import { openTrip, type OpenTrip, type TripSeen } from '../support/openTrip';
import { listCell, listRow, sheetName, start, type Typed } from '../support/tripCells';

const name = 'Third Kite';
const altitudes = [0, 2000, 4000, 6000];
const celsius = [0, 15, 30, 45];
/** Invented: plausible numbers that rise with altitude and temperature. */
const roll = altitudes.map((h) => celsius.map((t) => 780 + h / 10 + 4 * t + (h / 1000) * t));
const over = altitudes.map((h) => celsius.map((t) => 1400 + h / 6 + 8 * t + (h / 500) * t));
const climb = altitudes.map((h) => celsius.map((t) => 900 - h / 12 - 3 * t));

type Row = Readonly<Record<string, TemplateValue>>;
const across = (keys: readonly string[], cells: readonly TemplateValue[]): Row =>
  Object.fromEntries(cells.map((cell, index) => [keys[index] ?? '', cell]));
const takeoffKeys = ['temperature', 'groundRoll', 'over50Feet', 'across4', 'across5', 'across6', 'across7', 'across8'];
const climbKeys = ['temperature', 'rateOfClimb', 'across3', 'across4'];
const at = (figure: string): string[] => celsius.map((t, index) => (index === 0 ? `${figure} at ${t}` : `at ${t}`));

/** Each row with the aircraft's name in front, as the owner fills it down. */
const tables: Readonly<Record<string, readonly Row[]>> = {
  takeoff: [
    across(takeoffKeys, [...at('ground roll'), ...at('over 50 ft')]),
    ...altitudes.map((h, index) => ({ pressureAltitude: h, ...across(takeoffKeys, [...(roll[index] ?? []), ...(over[index] ?? [])]) })),
  ],
  landing: altitudes.map((h) => ({ pressureAltitude: h, groundRoll: 500 + h / 40, over50Feet: 1100 + h / 20 })),
  climb: [
    across(climbKeys, at('rate of climb')),
    ...altitudes.map((h, index) => ({ pressureAltitude: h, ...across(climbKeys, climb[index] ?? []) })),
  ],
};

function below(sheet: SheetKey, list: string, rows: readonly Row[]): Typed[] {
  const first = listRow(sheet, list, {});
  return rows.flatMap((row, index) =>
    Object.entries(row).map(([column, value]) => ({ sheet, cell: listCell(sheet, list, column, first + index), value })),
  );
}
const named = (rows: readonly Row[]): Row[] => rows.map((row) => ({ aircraft: name, ...row }));
const typedTables = Object.entries(tables).flatMap(([list, rows]) => below('tables', list, named(rows)));

const loading: Typed[] = [
  ...below('tables', 'aircraft', [
    {
      aircraft: name,
      weightIn: 'lb',
      armIn: 'in',
      distanceIn: 'ft',
      fuelIn: 'US gal',
      fuelWeight: 6,
      usableFuel: 48,
      crosswindShown: 15,
      mostTakeoffWeight: 2300,
      mostLandingWeight: 2300,
      cruiseTrueAirspeed: 110,
      cruiseFuelFlow: 8,
      taxiFuel: 1,
      momentsIn: 'moment/1000',
      envelopeIn: 'moment/1000',
    },
  ]),
  ...below('tables', 'tankArms', named([{ tank: 'both', quantity: 48, arm: 48 }])),
  ...below(
    'tables',
    'corrections',
    named([
      { for: 'take-off', correction: 'headwind', percent: -10, each: 9 },
      { for: 'take-off', correction: 'tailwind', percent: 10, each: 2 },
      { for: 'take-off', correction: 'dry grass, of ground roll', percent: 15, each: 1 },
      { for: 'landing', correction: 'headwind', percent: -10, each: 9 },
      { for: 'landing', correction: 'tailwind', percent: 10, each: 2 },
      { for: 'landing', correction: 'above standard', percent: 10, each: 33 },
    ]),
  ),
  ...below(
    'balance',
    'stations',
    named([
      { station: 'empty', weight: 1400, moment: 54.6 },
      { station: 'front seats', weight: 340, arm: 37 },
    ]),
  ),
  ...below('balance', 'tanks', named([{ tank: 'both', onBoard: 40, burnOrder: 1 }])),
  ...below(
    'balance',
    'corners',
    named(
      [
        [52.5, 1500],
        [68.25, 1950],
        [89.7, 2300],
        [108.1, 2300],
        [70.5, 1500],
      ].map(([arm = 0, weight = 0]) => ({ category: 'normal', arm, weight })),
    ),
  ),
];

describe('a manual as it is printed', () => {
  let opened: OpenTrip;
  let seen: TripSeen;
  beforeAll(async () => {
    opened = await openTrip();
    seen = await opened.seenWith([...start({ aircraftInUse: name }), ...loading, ...typedTables]);
  }, 240_000);
  afterAll(() => opened.dispose());
  const rows = (sheet: SheetKey, range: string): unknown[] => opened.workbook.values(sheetName(sheet), range.split('!').pop() ?? range).flat();

  it('takes 56 printed numbers in 94 cells, 83 without the name of the aircraft filled down', () => {
    const numbers = [...roll.flat(), ...over.flat(), ...climb.flat()].length + 2 * altitudes.length;
    const filledDown = Object.values(tables).reduce((sum, { length }) => sum + length - 1, 0);
    expect(numbers).toBe(56);
    expect(typedTables).toHaveLength(94);
    expect(typedTables.length - filledDown).toBeLessThanOrEqual(90);
    expect(typedTables.length - filledDown).toBe(83);
  });

  it('is complete, and says of each table what it is', () => {
    expect(rows('tables', aircraftEntryVerdicts)).toEqual(['OK', 'OK', 'OK', 'OK', 'OK']);
    expect(rows('tables', aircraftEntryReasons)).toEqual([
      'complete, and nothing looks wrong',
      'grid whole: 4 pressure altitude x 4 temperature; no weight',
      'grid whole: 4 pressure altitude; no weight; no temperature',
      'grid whole: 4 pressure altitude x 4 temperature; no weight',
      'none: one speed and one flow for every leg',
    ]);
  });

  it('is read by the trip, with what its tables leave out', () => {
    for (const item of ['Take-off runway', 'Landing runway', 'Climb', 'Loading']) expect([item, seen.items.get(item)?.word]).not.toContain('UNKNOWN');
    expect(seen.items.get('Take-off runway')?.reason).toContain('the table gives no weight');
    expect(seen.items.get('Landing runway')?.reason).toContain('the table gives no temperature');
  });

  it('is loaded by its moments, and judged along its own lines', () => {
    const [zero] = opened.workbook.values(sheetName('balance'), 'A44:H44');
    expect(zero?.slice(0, 3)).toEqual(['zero fuel', 'OK', 1740]);
    expect(zero?.[3]).toBeCloseTo((54600 + 340 * 37) / 1740, 9);
    // Between 1,500 and 1,950 the forward line runs from 52.5 to 68.25 thousand, which is 35 in throughout; 70.5 to 108.1 behind it.
    expect(zero?.[4]).toBeCloseTo((54600 + 340 * 37) / 1740 - 35, 9);
    expect(zero?.[5]).toBeCloseTo((70500 + ((108100 - 70500) * 240) / 800) / 1740 - (54600 + 340 * 37) / 1740, 9);
  });

  it('names the sheet rows of a slip', async () => {
    const first = listRow('tables', 'takeoff', {});
    const slip = listCell('tables', 'takeoff', 'pressureAltitude', first + 2);
    await opened.seenWith([
      ...start({ aircraftInUse: name }),
      ...loading,
      ...typedTables.map((one) => (one.cell === slip ? { ...one, value: 0 } : one)),
    ]);
    expect(rows('tables', aircraftEntryVerdicts)).toEqual(['OK', 'NO', 'OK', 'OK', 'OK']);
    expect(rows('tables', aircraftEntryReasons)[1]).toMatch(
      new RegExp(`^given twice: pressure altitude 0, temperature 0 \\(sheet rows ${first + 1} and ${first + 2}\\)`),
    );
  }, 240_000);
});
