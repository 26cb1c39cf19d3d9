// Where a table goes in the demonstration's Manual tables: rows of no other aircraft, words before numbers, and what its check then says.
import { beforeAll, describe, expect, it } from 'vitest';
import { manualTables } from '../../../addon/workbook/aircraft/aircraftLists';
import { tablePlan } from '../../../addon/workbook/aircraft/tablePlan';
import { tableKinds, type TableKind } from '../../../addon/workbook/pasted/tableKinds';
import type { TableRow } from '../../../addon/workbook/pasted/tableRows';
import { tableCurves } from '../../../addon/pictures/tableCurves';
import type { SheetSnapshot } from '../../../addon/workbook/snapshot';
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

  it('says so where the list has too few blank rows', () => {
    expect(() => tablePlan(sheet, { kind: takeoff, aircraft: 'Quillon Four', rows: points('over50Feet', 400), keep: false })).toThrow(
      /^"Manual tables" has too few blank rows there: 401 needed, \d+ found\. Put rows in above row \d+, then ask again\.$/,
    );
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
