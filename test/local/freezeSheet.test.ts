// A copy of a sheet with values in the place of formulas, in a saved workbook.
import type { IWorkbookData } from '@univerjs/core';
import { beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, openSaved } from '../../addon/local/engine/headless';
import { resourceIn } from '../../addon/local/engine/workbookData';
import { withSheetFrozen, type Frozen } from '../../addon/local/saved/freezeSheet';
import { withEntries } from '../../addon/local/saved/withEntries';
import { newTrip } from '../../addon/workbook/newTrip';
import type { SheetSnapshot, WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { tinyTemplate } from '../support/tinyTemplate';
import { savedAfter, sheetIn, templateOf } from './savedSheets';

const snapshotOf = async (data: IWorkbookData): Promise<WorkbookSnapshot> => {
  const workbook = await openSaved(data);
  const snapshot = workbook.snapshot();
  workbook.dispose();
  return snapshot;
};

/** `before`: what the workbook shows, where that is known already. */
async function frozenOf(
  data: IWorkbookData,
  name: string,
  before?: WorkbookSnapshot,
): Promise<{ readonly frozen: Frozen; readonly before: WorkbookSnapshot; readonly after: WorkbookSnapshot }> {
  const shown = before ?? (await snapshotOf(data));
  const id = data.sheetOrder.find((one) => data.sheets[one]?.name === name) ?? '';
  const frozen = withSheetFrozen(data, id, sheetIn(shown, name));
  return { frozen, before: shown, after: await snapshotOf(frozen.data) };
}

let demo: IWorkbookData;
let demoShown: WorkbookSnapshot;
beforeAll(async () => {
  demo = await savedAfter(sheetTemplates);
  demoShown = await snapshotOf(demo);
}, 60_000);

/** A sheet ends with its last cell that holds anything: rows below it whose formulas showed nothing go with the formulas. */
function toLastFilled(values: SheetSnapshot['values']): SheetSnapshot['values'] {
  const isFilled = values.map((line) => line.some((value) => value !== ''));
  return values.slice(0, isFilled.lastIndexOf(true) + 1);
}

describe.each(sheetTemplates.filter(({ key }) => key !== 'start').map(({ name }) => name))('a copy of %s', (name) => {
  let result: Awaited<ReturnType<typeof frozenOf>>;
  beforeAll(async () => {
    result = await frozenOf(demo, name, demoShown);
  }, 60_000);

  it('shows in every cell what the sheet shows, spilled cells too, by values alone', () => {
    const { frozen, before, after } = result;
    const copy = sheetIn(after, `${name} (values)`);
    expect(toLastFilled(copy.values)).toEqual(toLastFilled(sheetIn(before, name).values));
    expect(copy.formulas).toEqual([]);
    // All but the one that holds the keys.
    expect(frozen.formulas).toBe(sheetIn(before, name).formulas.length - 1);
    expect(frozen.formulas).toBeGreaterThan(0);
    expect(copy.mark).toBeUndefined();
  });

  it('stands after the sheet, which stays as it was, like everything else', () => {
    const { before, after } = result;
    const order = before.sheets.map((sheet) => sheet.name);
    expect(after.sheets.map((sheet) => sheet.name)).toEqual(order.flatMap((one) => (one === name ? [one, `${one} (values)`] : [one])));
    expect(after.sheets.filter((sheet) => !sheet.name.endsWith('(values)'))).toEqual(before.sheets);
  });

  it('keeps its look, its tints and its notes; no limits, no drawings', () => {
    const { data: now } = result.frozen;
    const id = now.sheetOrder.find((one) => now.sheets[one]?.name === `${name} (values)`) ?? '';
    const original = Object.values(demo.sheets).find((sheet) => sheet.name === name);
    const copy = now.sheets[id];
    expect([copy?.columnData, copy?.rowData, copy?.mergeData, copy?.freeze]).toEqual([
      original?.columnData,
      original?.rowData,
      original?.mergeData,
      original?.freeze,
    ]);
    const looks = (cells: typeof copy): unknown[] =>
      Object.values(cells?.cellData ?? {})
        .flatMap((row) => Object.values(row as Record<string, { s?: unknown }>).map(({ s }) => s))
        .filter((s) => s !== undefined);
    expect(looks(copy)).toEqual(looks(original));
    for (const resource of ['SHEET_CONDITIONAL_FORMATTING_PLUGIN', 'SHEET_NOTE_PLUGIN'])
      expect(resourceIn(now, resource)[id]).toEqual(resourceIn(now, resource)[original?.id ?? '']);
    for (const resource of ['SHEET_DATA_VALIDATION_PLUGIN', 'SHEET_DRAWING_PLUGIN']) expect(resourceIn(now, resource)[id]).toBeUndefined();
  });
});

describe('a copy of any sheet', () => {
  it('has errors as text, booleans and texts as they are, and a number where the name is taken', async () => {
    const data = await savedAfter([tinyTemplate], (workbook) => workbook.set(tinyTemplate.name, { E2: '=B2>1', E3: '=A13&""', E4: '="=DEMO-1"' }));
    const once = (await frozenOf(data, tinyTemplate.name)).frozen;
    const { after, frozen } = await frozenOf(once.data, tinyTemplate.name);
    expect(frozen.sheet).toBe('Tiny sheet (values) 2');
    const values = sheetIn(after, frozen.sheet).values;
    expect([values[14]?.[1], values[1]?.[4], values[2]?.[4], values[3]?.[4], values[6]?.[1]]).toEqual(['#ERROR!', true, 'warm', '=DEMO-1', '0101']);
    expect(sheetIn(after, frozen.sheet).formulas).toEqual([]);
  });

  it('is refused where the sheet is gone', async () => {
    const data = await savedAfter([tinyTemplate]);
    expect(() => withSheetFrozen(data, 'nothing', { name: 'Gone', values: [], formulas: [] })).toThrow(
      'The sheet "Gone" is no longer in this workbook.',
    );
  });
});

describe('a snapshot', () => {
  it('has values without formats, spills, formulas that were filled down, and the names that can be seen', async () => {
    const workbook = await openHeadless([tinyTemplate]);
    const saved = workbook.saved();
    workbook.dispose();
    const sheet = saved.sheets['sheet-trip'];
    const cells = sheet?.cellData as Record<number, Record<number, object>>;
    cells[30] = { 4: { f: '=A11+$B$2', si: 'down' }, 5: { v: 'TRUE', t: 1 } };
    cells[31] = { 4: { si: 'down' }, 5: { v: null, p: { id: 'd', documentStyle: {}, body: { dataStream: 'two\rlines\r\n' } } } };
    const opened = await openSaved(saved);
    const snapshot = opened.snapshot();
    const tiny = sheetIn(snapshot, tinyTemplate.name);
    expect(tiny.formulas.slice(-2)).toEqual([
      { row: 31, column: 5, text: '=A11+$B$2' },
      { row: 32, column: 5, text: '=A12+$B$2' },
    ]);
    expect(tiny.values.slice(30).map((line) => line.slice(4, 6))).toEqual([
      [15000, 'TRUE'],
      [5000, 'two\nlines'],
    ]);
    expect(tiny.values.slice(9, 13).map((line) => line[1])).toEqual([15, expect.closeTo(-4.812, 3), '', expect.stringContaining('(row 4).')]);
    expect([tiny.values[5]?.[1], tiny.values[7]?.[1], tiny.values[14]?.[1]]).toEqual([46044, true, '#ERROR!']);
    expect(new Set(tiny.values.map((line) => line.length)).size).toBe(1);
    expect(tiny.values.length).toBe(32);
    expect(snapshot.names).toEqual([
      { name: 'level', sheet: 'Tiny sheet', range: 'B2' },
      { name: 'temperatures', sheet: 'Tiny sheet', range: 'B10:B13' },
    ]);
    opened.dispose();
  });

  it('keeps the mark through saving', () => {
    expect(demo.sheets['sheet-start']?.custom?.['rampwright']).toMatchObject({
      key: 'start',
      version: templateOf('start').version,
      set: 'rampwright',
      sheet: 'sheet-start',
    });
  });
});

describe('an old trip put aside before its entries are emptied', () => {
  it('stands beside the trip with its date and all that it showed, and the trip itself is empty', async () => {
    const before = demoShown;
    const { day, entries, sheet } = newTrip(before, sheetTemplates);
    expect(day).toBe('2026-11-25');
    const id = demo.sheetOrder.find((one) => demo.sheets[one]?.name === sheet) ?? '';
    const frozen = withSheetFrozen(demo, id, sheetIn(before, sheet), ` ${day ?? ''}`);
    expect(frozen.sheet).toBe('Trip sheet 2026-11-25');
    const { sheets } = await snapshotOf(withEntries(frozen.data, entries));
    const [now, kept] = [sheet, frozen.sheet].map((name) => sheets.find((one) => one.name === name));
    expect(toLastFilled(kept?.values ?? [])).toEqual(toLastFilled(sheetIn(before, sheet).values));
    expect(kept?.formulas).toEqual([]);
    expect([kept?.values[2]?.[1], now?.values[2]?.[1]]).toEqual(['OK', 'UNKNOWN']);
    for (const { row, column } of entries) expect(now?.values[row - 1]?.[column - 1] ?? '', `${row} ${column}`).toBe('');
  }, 120_000);

  it('refuses a sheet that is gone', () => {
    expect(() => withEntries({ sheets: {} } as IWorkbookData, [{ sheet: 'Gone', row: 1, column: 1, content: '' }])).toThrow(
      'There is no sheet "Gone" in this workbook any more. Nothing was changed.',
    );
  });
});
