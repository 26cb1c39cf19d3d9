// A set of sheets brought up to date in a saved workbook: entries, names and places go to the new sheets, the older ones stay
// and go on reading one another, and so does everything of the user's that named them.
import type { IWorkbookData } from '@univerjs/core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openSaved, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { resourceIn, withResource } from '../../addon/local/engine/workbookData';
import { nameRecords } from '../../addon/local/engine/workbookSnapshot';
import { withSheetsInserted } from '../../addon/local/saved/insertSheets';
import { withSheetsUpdated } from '../../addon/local/saved/updateSheets';
import type { CarriedSheet } from '../../addon/workbook/carriedInputs';
import { referencesOf } from '../../addon/workbook/formulaText';
import type { CellValue, WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { at, entriesOf, everyKey, laterVersion, ownSheet, savedAfter, sheetIn, templateOf, withoutSheet } from './savedSheets';

const later = sheetTemplates.map(laterVersion);
const before = (name: string): string => `${name} (before)`;
const names = sheetTemplates.map(({ name }) => name);
const asOf = templateOf('start').names.find(({ name }) => name === 'as_of')?.range ?? '';
const mine = ownSheet('Mine', { A1: "='Trip sheet'!B3", A2: '=trip_verdict', A3: '=Start!A6+1', A4: 'plain', A5: "='No, such'!A1" });

async function snapshotOf(data: IWorkbookData): Promise<WorkbookSnapshot> {
  const workbook = await openSaved(data);
  const snapshot = workbook.snapshot();
  workbook.dispose();
  return snapshot;
}

describe('the only set of a workbook', () => {
  let old: WorkbookSnapshot;
  let data: IWorkbookData;
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    const changed = await savedAfter([...sheetTemplates, mine], (one) => one.set('Start', { [asOf]: { date: '2026-11-24' } }));
    const ownName = { id: 'own', name: 'my_verdict', formulaOrRefString: "'Trip sheet'!$B$3", localSheetId: 'AllDefaultWorkbook' };
    const saved = withResource(changed, 'SHEET_DEFINED_NAME_PLUGIN', { ...resourceIn(changed, 'SHEET_DEFINED_NAME_PLUGIN'), own: ownName });
    old = await snapshotOf(saved);
    const updated = withSheetsUpdated(saved, later, 'rampwright', entriesOf(old));
    expect([updated.updated, updated.kept]).toEqual([names, names.map(before)]);
    data = updated.data;
    workbook = await openSaved(data);
  }, 60_000);
  afterAll(() => workbook.dispose());

  it('answers as before, in the new sheets and in the older ones', () => {
    const snapshot = workbook.snapshot();
    for (const { name, columns } of sheetTemplates) {
      const wide = (sheet: string, from: WorkbookSnapshot): CellValue[][] =>
        sheetIn(from, sheet).values.map((line) => Array.from({ length: columns }, (_, column) => line[column] ?? ''));
      expect(wide(before(name), snapshot), name).toEqual(wide(name, old));
      expect(wide(name, snapshot), name).toEqual(wide(name, old));
    }
    expect(workbook.named('as_of')[0]?.[0]).toBe(workbook.named('as_of_before')[0]?.[0]);
  });

  it('has the new sheets in the places and under the names of the older ones, which stand beside them', () => {
    expect(workbook.snapshot().sheets.map(({ name }) => name)).toEqual([...names.flatMap((name) => [name, before(name)]), 'Mine']);
    const records = nameRecords(data);
    const refersTo = (name: string): string | undefined => records.find((one) => one.name === name)?.formulaOrRefString;
    expect([refersTo('as_of'), refersTo('as_of_before'), refersTo('added_start')?.split('!')[0], refersTo('my_verdict')]).toEqual([
      "'Start'!$A$6",
      "'Start (before)'!$A$6",
      "'Start'",
      "'Trip sheet (before)'!$B$3",
    ]);
    expect(new Set(records.map(({ name }) => name.toLowerCase())).size).toBe(records.length);
  });

  it('marks the new sheets only, with the set and the version', () => {
    const marks = workbook.snapshot().sheets.flatMap(({ name, mark }) => (mark === undefined ? [] : [[name, mark.set, mark.version]]));
    expect(marks).toEqual(later.map(({ name, version }) => [name, 'rampwright', version]));
  });

  it("lets the user's formulas read what they read, and the names go to the new sheets", () => {
    const texts = sheetIn(workbook.snapshot(), 'Mine').formulas.map(({ text }) => text);
    expect(texts).toEqual(["='Trip sheet (before)'!B3", '=trip_verdict', "='Start (before)'!A6+1", "='No, such'!A1"]);
    expect(at(sheetIn(workbook.snapshot(), 'Mine'), 2, 1)).toBe(workbook.named('trip_verdict')[0]?.[0]);
  });

  it('has no formula in one set that reads the other', () => {
    for (const { name, formulas } of workbook.snapshot().sheets.filter((one) => one.name !== 'Mine')) {
      const isOld = name.endsWith('(before)');
      for (const { text } of formulas) {
        const reads = referencesOf(text);
        expect(
          [...reads.sheets].every((one) => one.endsWith('(before)') === isOld),
          text,
        ).toBe(true);
        expect([...reads.words].some((one) => /_(verdict|reasons|use|of)_before$/.test(one)) && !isOld, text).toBe(false);
      }
    }
  });

  it('keeps the two apart when an entry changes', async () => {
    const olds = (): unknown =>
      workbook
        .snapshot()
        .sheets.filter(({ name }) => name.endsWith('(before)'))
        .map(({ values }) => values);
    const still = olds();
    await workbook.set('Start', { [asOf]: { date: '2027-12-31' } });
    expect(olds()).toEqual(still);
    expect(workbook.named('trip_verdict')).not.toEqual([['OK']]);
  });
});

describe('other workbooks', () => {
  it("find the sheets whatever they are called, and leave a user's sheet of the template's name alone", async () => {
    const own = { ...ownSheet('Trip sheet', { A1: 'mine', B1: "='My trip'!B3" }), key: 'own' as never };
    const renamed = sheetTemplates.map((one) =>
      one.key === 'trip'
        ? { ...one, name: 'My trip' }
        : {
            ...one,
            cells: one.cells.map((cell) =>
              cell.formula === undefined ? cell : { ...cell, formula: cell.formula.replaceAll("'Trip sheet'!", "'My trip'!") },
            ),
          },
    );
    const saved = await savedAfter([...renamed, own]);
    const snapshot = await snapshotOf(saved);
    const entries = entriesOf(snapshot, { trip: 'My trip' });
    const trip = entries.find(({ key }) => key === 'trip');
    const place = templateOf('trip').cells.find(({ style, value }) => style === 'inputText' && typeof value === 'string');
    const formula = "='Trip sheet'!A1";
    const carried = entries.map((one) =>
      one === trip
        ? { ...one, cells: one.cells.map((cell) => (cell.row === place?.row && cell.column === place.column ? { ...cell, content: formula } : cell)) }
        : one,
    );
    const { data, updated, kept } = withSheetsUpdated(saved, later, 'rampwright', carried);
    expect([updated[1], kept[1]]).toEqual(['My trip', 'My trip (before)']);
    const now = await snapshotOf(data);
    expect(sheetIn(now, 'Trip sheet').formulas[0]?.text).toBe("='My trip (before)'!B3");
    // A formula of the user's among the entries names sheets as the workbook does.
    expect(at(sheetIn(now, 'My trip'), place?.row ?? 0, place?.column ?? 0)).toBe('mine');
    expect(at(sheetIn(now, 'My trip'), 3, 2)).toMatch(/^(OK|CHECK|NO|UNKNOWN)$/);
  });

  it('get a sheet that the set did not have blank, so that nothing invented counts', async () => {
    const saved = await savedAfter(sheetTemplates);
    const entries = entriesOf(await snapshotOf(saved)).filter(({ key }) => key !== 'balance');
    const { data, updated } = withSheetsUpdated(withoutSheet(saved, 'sheet-balance'), later, 'rampwright', entries);
    expect(updated).toContain('Weight and balance');
    expect(data.sheets[data.sheetOrder.at(-1) ?? '']?.name).toBe('Weight and balance');
    const now = await snapshotOf(data);
    const entry = templateOf('balance').cells.find(({ style, value }) => style === 'input' && value !== undefined);
    expect(at(sheetIn(now, 'Weight and balance'), entry?.row ?? 0, entry?.column ?? 0)).toBe('');
    expect(at(sheetIn(now, 'Trip sheet'), 3, 2)).toBe('UNKNOWN');
  });

  it('with two sets have only the one brought up to date', async () => {
    const saved = withSheetsInserted(await savedAfter(sheetTemplates), sheetTemplates, everyKey).data;
    const old = await snapshotOf(saved);
    const second = Object.fromEntries(sheetTemplates.map(({ key, name }) => [key, `${name} 2`]));
    const { data, updated } = withSheetsUpdated(saved, later, 'rampwright-2', entriesOf(old, second));
    expect(updated).toEqual(names.map((name) => `${name} 2`));
    const now = await snapshotOf(data);
    for (const name of names) expect(sheetIn(now, name)).toEqual(sheetIn(old, name));
    expect(nameRecords(data).find(({ name }) => name === 'as_of_2')?.formulaOrRefString).toBe("'Start 2'!$A$6");
  });

  it('of which one set reads an older sheet of another have that brought up to date first', async () => {
    const saved = withSheetsInserted(await savedAfter(sheetTemplates), sheetTemplates, ['currency']).data;
    const old = await snapshotOf(saved);
    const entries = entriesOf(old, { currency: 'Currency log 2' });
    expect(() => withSheetsUpdated(saved, later, 'rampwright-2', entries)).toThrow(
      'These sheets read "Start", which is of another version itself. Bring that one up to date first. Nothing was changed.',
    );
    const first = withSheetsUpdated(saved, later, 'rampwright', entriesOf(old)).data;
    const { data, updated } = withSheetsUpdated(first, later, 'rampwright-2', entries);
    expect(updated).toEqual(['Currency log 2']);
    const now = sheetIn(await snapshotOf(data), 'Currency log 2');
    expect(now.formulas.filter(({ text }) => text.includes('(before)'))).toEqual([]);
    const wide = (line: readonly CellValue[]): readonly CellValue[] => line.slice(0, templateOf('currency').columns);
    expect(now.values.map(wide)).toEqual(sheetIn(await snapshotOf(data), 'Currency log').values.map(wide));
  });

  it('keep the format of a time that was typed into a cell of no date format', async () => {
    const saved = await savedAfter(sheetTemplates);
    const entry = templateOf('card').cells.find(({ style, format }) => style === 'input' && (format === undefined || format === 'whole'));
    const [row, column] = [(entry?.row ?? 1) - 1, (entry?.column ?? 1) - 1];
    const typed = structuredClone(saved);
    const cell = typed.sheets['sheet-card']?.cellData?.[row]?.[column];
    Object.assign(cell ?? {}, { v: 0.6125, t: 2, f: null, s: { n: { pattern: 'hh:mm' } } });
    const entries = entriesOf(await snapshotOf(typed));
    const { data } = withSheetsUpdated(typed, later, 'rampwright', entries);
    const id = data.sheetOrder.find((one) => data.sheets[one]?.name === templateOf('card').name) ?? '';
    expect(data.sheets[id]?.cellData?.[row]?.[column]).toMatchObject({ v: 0.6125, s: { n: { pattern: 'hh:mm' } } });
  });
});

describe('refusals', () => {
  let saved: IWorkbookData;
  let entries: CarriedSheet[];
  beforeAll(async () => {
    saved = await savedAfter(sheetTemplates);
    entries = entriesOf(await snapshotOf(saved));
  }, 60_000);

  it('say why, in a sentence', () => {
    expect(() => withSheetsUpdated(saved, later, 'another', entries)).toThrow(
      'The older sheets are no longer in this workbook. Nothing was changed.',
    );
    expect(() => withSheetsUpdated(saved, sheetTemplates, 'rampwright', entries)).toThrow(
      "These sheets are of today's version already. Nothing was changed.",
    );
    expect(() => withSheetsUpdated(saved, later, 'rampwright', entries.slice(1))).toThrow(
      'What was typed into "Start" was not read. Ask again. Nothing was changed.',
    );
    const twin = saved.sheets['sheet-trip'];
    const custom = { rampwright: { ...(twin?.custom?.['rampwright'] as object), sheet: 'twin' } };
    const two = {
      ...saved,
      sheets: { ...saved.sheets, twin: { ...twin, id: 'twin', name: 'Trip sheet 2', custom } },
      sheetOrder: [...saved.sheetOrder, 'twin'],
    };
    expect(() => withSheetsUpdated(two, later, 'rampwright', entries)).toThrow(
      '"Trip sheet" and "Trip sheet 2" are two sheets of one kind in one set. Delete one of them first. Nothing was changed.',
    );
  });

  it('leave the workbook as it was given', () => {
    const text = JSON.stringify(saved);
    withSheetsUpdated(saved, later, 'rampwright', entries);
    expect(JSON.stringify(saved)).toBe(text);
  });
});
