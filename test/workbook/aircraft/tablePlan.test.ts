// Where a table goes in the demonstration's Manual tables: rows of no other aircraft, words before numbers, and what its check then says.
import { beforeAll, describe, expect, it } from 'vitest';
import { aircraftNames, listNow, manualTables } from '../../../addon/workbook/aircraft/aircraftLists';
import { tablePlan } from '../../../addon/workbook/aircraft/tablePlan';
import { tableKinds, type TableKind } from '../../../addon/workbook/pasted/tableKinds';
import type { TableRow } from '../../../addon/workbook/pasted/tableRows';
import { tableCurves } from '../../../addon/pictures/tableCurves';
import { seenBefore, turnedRound, type CellsChanged } from '../../../addon/workbook/cellChanges';
import { wholeAircraft } from '../../../addon/workbook/aircraft/wholeAircraft';
import { openHeadless, type HeadlessWorkbook } from '../../../addon/local/engine/headless';
import type { SheetSnapshot } from '../../../addon/workbook/snapshot';
import { address } from '../../../sheets-templates/addresses';
import { sheetTemplates } from '../../../sheets-templates';
import { demoSnapshot } from '../../browser/answeredDouble';

const [takeoff, landing, climb] = tableKinds as readonly [TableKind, TableKind, TableKind];
let sheet: SheetSnapshot;
beforeAll(async () => {
  sheet = manualTables(await demoSnapshot(), sheetTemplates);
});

/** Invented: rises with height and heat. */
const points = (key: string, count: number, slip?: number): TableRow[] => [
  { weight: 'none', pressureAltitude: 'ft', temperature: '\u00b0C', [key]: key === 'rateOfClimb' ? 'ft/min' : 'm' },
  ...Array.from({ length: count }, (_, index): TableRow => {
    const [high, warm] = [Math.floor(index / 4), index % 4];
    return { pressureAltitude: high * 1000, temperature: warm * 10, [key]: index === slip ? 9000 : 400 + high * 60 + warm * 25 };
  }),
];

describe('a table of one aircraft', () => {
  it.each<readonly [string, TableKind, string]>([
    ['take-off', takeoff, 'over50Feet'],
    ['landing', landing, 'groundRoll'],
    ['climb', climb, 'rateOfClimb'],
  ])('%s: in the place of its own rows, and no other aircraft is touched', (_, kind, key) => {
    const plan = tablePlan(sheet, { kind, aircraft: 'Brindle Two', rows: points(key, 16), keep: false });
    expect([plan.verdict, plan.rows]).toEqual(['OK', 17]);
    const names = plan.changes.flatMap(({ before }) => before.map(([name]) => name));
    expect(new Set(names)).toEqual(new Set(names.filter((name) => name === 'Brindle Two' || name === '')));
    expect(plan.changes.flatMap(({ before }) => before).filter(([name]) => name === 'Brindle Two').length).toBeGreaterThan(8);
    expect(plan.shown).toHaveLength(18);
  });

  it('below what is kept, so that its words hold for nothing above them', () => {
    const both = tablePlan(sheet, { kind: takeoff, aircraft: 'Quillon Four', rows: points('over50Feet', 8), keep: true });
    const last = sheet.values.reduce((most, [name], row) => (name === 'Quillon Four' && row >= 20 ? row + 1 : most), 0);
    expect(Math.min(...both.changes.map(({ row }) => row))).toBeGreaterThan(last);
    // Its own rows have weights, and these have none: one figure cannot be read by two sets of inputs.
    expect(both.verdict).toBe('NO');
  });

  it('with a point that stands out: named, and a mark of its own in the picture', () => {
    const { verdict, reasons, typed } = tablePlan(sheet, { kind: takeoff, aircraft: 'Fresh One', rows: points('over50Feet', 24, 10), keep: false });
    expect(verdict).toBe('CHECK');
    expect(reasons).toContain('"over 50 ft" is 9,000 at pressure altitude 2,000, temperature 20 (sheet row');
    const [picture, ...others] = typed === undefined ? [] : tableCurves(typed);
    expect(others).toEqual([]);
    expect(picture).toMatchObject({ title: 'over 50 ft', xTitle: 'pressure altitude, ft', yTitle: 'over 50 ft, m' });
    expect(picture?.series.map(({ title, drawn }) => `${title} ${drawn}`)).toEqual([
      '0 \u00b0C line',
      '10 \u00b0C line',
      '20 \u00b0C line',
      '30 \u00b0C line',
      'stands out points',
    ]);
    expect(picture?.series[4]?.runs).toMatchObject([[{ x: 2000, y: 9000 }]]);
    expect(picture?.series[0]?.runs).toEqual([
      Array.from({ length: 6 }, (_, high) => expect.objectContaining({ x: high * 1000, y: 400 + high * 60 })),
    ]);
  });
});

describe('a table that is longer than its list', () => {
  const lists = ['takeoff', 'landing', 'climb', 'tankArms', 'corrections', 'cruise'];
  const long = () => points('over50Feet', 400);
  const withCell = (row: number, column: number, value: string): SheetSnapshot => ({
    ...sheet,
    values: Array.from({ length: Math.max(row, sheet.values.length) }, (_, down) =>
      (sheet.values[0] ?? []).map((__, across) => (down === row - 1 && across === column - 1 ? value : (sheet.values[down]?.[across] ?? ''))),
    ),
  });
  /** As a host writes it: the first step puts in the rows, and the last takes them out. */
  const write = (workbook: HeadlessWorkbook, changes: readonly CellsChanged[]): Promise<void> =>
    workbook.set(
      'Manual tables',
      Object.fromEntries(
        changes.flatMap(({ row, column, after }) =>
          after.flatMap((line, down) => line.map((content, across) => [address(row + down, column + across), content as string | number] as const)),
        ),
      ),
    );

  it('gets rows above the last one, and every list of the sheet is read to its new end; taken back, all is as it was', async () => {
    const workbook = await openHeadless(sheetTemplates);
    const now = (): SheetSnapshot => manualTables(workbook.snapshot(), sheetTemplates);
    const others = () => wholeAircraft(workbook.snapshot(), now(), 'Quillon Four').lists;
    const [before, othersBefore] = [now(), others()];
    const verdict = workbook.named('trip_verdict');
    const free = 300 - listRows(before, 'takeoff', 'Quillon Four');
    const plan = tablePlan(before, { kind: takeoff, aircraft: 'Brindle Two', rows: long(), keep: false });
    expect(plan.rowsIn).toEqual({ sheet: 'Manual tables', row: 321, count: 401 - free + 10, keys: expect.objectContaining({ row: 1 }) as unknown });
    const count = plan.rowsIn?.count ?? 0;
    await workbook.insertRows('Manual tables', 321, count);
    await write(workbook, plan.changes);
    const after = now();
    expect(lists.map((list) => listNow(after, list).last)).toEqual(lists.map(() => 321 + count));
    expect(wholeAircraft(workbook.snapshot(), after, 'Brindle Two').lists['takeoff']).toHaveLength(401);
    expect(others()).toEqual(othersBefore);
    expect(workbook.named('trip_verdict')).toEqual(verdict);
    // The last point is in the last row that is filled, and is read: its slip is told by the check of the sheet.
    const last = Math.max(...plan.changes.map((change) => change.row + change.after.length - 1));
    expect(listNow(after, 'takeoff').last - last).toBe(10);
    await workbook.set('Manual tables', { [`A${last}`]: 'Quilon Four' });
    expect(workbook.value('Manual tables', 'A12')).toContain(`row ${last} (Quilon Four)`);
    await workbook.set('Manual tables', { [`A${last}`]: 'Brindle Two' });
    await write(workbook, turnedRound(plan.changes));
    await workbook.removeRows('Manual tables', 321, count);
    expect(now().values).toEqual(before.values);
    // The grid leaves out the sheet's own name where it writes a formula anew.
    const texts = ({ formulas }: SheetSnapshot) => formulas.map((one) => ({ ...one, text: one.text.replace(/'Manual tables'!/g, '') }));
    expect(texts(now())).toEqual(texts(before));
    workbook.dispose();
  }, 180_000);

  it('below rows that are kept, also where they reach the last row: they move up with the new ones below them', () => {
    const kept = withCell(321, 1, 'Brindle Two');
    const own = listRows(kept, 'takeoff', 'Brindle Two');
    const plan = tablePlan(kept, { kind: takeoff, aircraft: 'Brindle Two', rows: points('over50Feet', 8), keep: true });
    expect([plan.rowsIn?.row, plan.rowsIn?.count, plan.rows]).toEqual([321, 19, own + 9]);
    expect(plan.shown.slice(1, 1 + own).map(([, weight]) => weight)).toEqual(
      kept.values.flatMap(([name, weight], row) => (name === 'Brindle Two' && row >= 21 ? [weight] : [])),
    );
    expect(plan.shown.slice(1 + own).map((line) => line.slice(2, 7))).toEqual(
      points('over50Feet', 8).map((row) => ['pressureAltitude', 'temperature', 'groundRoll', 'over50Feet', 'across4'].map((key) => row[key] ?? '')),
    );
  });

  it('tells what stands below the new rows by where it stands before they are in', () => {
    const full = withCell(321, 1, 'Brindle Two');
    const { changes, rowsIn } = tablePlan(full, { kind: takeoff, aircraft: 'Brindle Two', rows: long(), keep: false });
    const seen = changes.flatMap((change) => seenBefore(change, rowsIn));
    expect(changes.some(({ row, before }) => row + before.length - 1 > 321)).toBe(true);
    for (const { row, before } of seen) expect(before.map(([name]) => name)).toEqual(before.map((_, down) => full.values[row + down - 1]?.[0] ?? ''));
    expect(seen.some(({ row, before }) => row + before.length - 1 === 321)).toBe(true);
  });

  it('is refused where formulas are among what would change', () => {
    const calculated = {
      ...sheet,
      formulas: [...sheet.formulas, { row: 24 + listRows(sheet, 'takeoff', 'Quillon Four'), column: 6, text: '=F22*1.1' }],
    };
    expect(aircraftNames(sheet)).toContain('Brindle Two');
    expect(() => tablePlan(calculated, { kind: takeoff, aircraft: 'Brindle Two', rows: long(), keep: false })).toThrow(
      /^"Manual tables" has too few blank rows there: 401 needed, \d+ found\. Formulas are among what would change, so no rows are put in for it\. Put rows in above row 321, then ask again\.$/,
    );
  });
});

function listRows(of: SheetSnapshot, list: string, aircraft: string): number {
  const { first, last, column } = listNow(of, list);
  return of.values.slice(first - 1, last).filter((line) => line[column - 1] === aircraft).length;
}
