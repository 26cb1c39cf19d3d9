// Sheets inserted into a saved workbook: the second set answers as the first does and reads only itself, nothing of the user's
// is touched, names that are taken get a number.
import type { IWorkbookData } from '@univerjs/core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openSaved, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { workbookData } from '../../addon/local/engine/workbookData';
import { nameRecords } from '../../addon/local/engine/workbookSnapshot';
import { withSheetsInserted } from '../../addon/local/saved/insertSheets';
import { referencesOf } from '../../addon/workbook/formulaText';
import { columnLetter } from '../../sheets-templates/build';
import { sheetTemplates } from '../../sheets-templates';
import { cell } from '../../sheets-templates/build';
import { at, everyKey, ownSheet, savedAfter, sheetIn, templateOf, withoutSheet } from './savedSheets';

const second = (name: string): string => `${name} 2`;
const trip = templateOf('trip').name;
const count = sheetTemplates.length;

describe('every sheet, into the workbook that has them', () => {
  let before: IWorkbookData;
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    before = await savedAfter(sheetTemplates);
    const { data, inserted, reads } = withSheetsInserted(before, sheetTemplates, everyKey);
    expect([inserted, reads]).toEqual([sheetTemplates.map(({ name }) => second(name)), []]);
    workbook = await openSaved(data);
  }, 60_000);
  afterAll(() => workbook.dispose());

  it('has the same answers in every cell of both sets', () => {
    const snapshot = workbook.snapshot();
    for (const { name } of sheetTemplates) expect(sheetIn(snapshot, second(name)).values, name).toEqual(sheetIn(snapshot, name).values);
    expect(workbook.named('trip_verdict_2')).toEqual([['OK']]);
  });

  it('marks the new sheets as a set of their own, with the names of their ranges', () => {
    const marks = workbook.snapshot().sheets.map(({ mark }) => mark);
    expect(marks.slice(0, count).every((mark) => mark?.set === 'rampwright')).toBe(true);
    expect(marks.slice(count).map((mark) => [mark?.set, mark?.key, mark?.version])).toEqual(
      sheetTemplates.map(({ key, version }) => ['rampwright-2', key, version]),
    );
    expect(marks[count]?.names).toEqual({ as_of: 'as_of_2', aircraft_in_use: 'aircraft_in_use_2' });
  });

  it('reads the new set only', () => {
    const firstNames = new Set(sheetTemplates.flatMap(({ names }) => names.map(({ name }) => name)));
    const sheets = workbook.snapshot().sheets.slice(count);
    for (const { name, formulas } of sheets) {
      for (const { text } of formulas) {
        const reads = referencesOf(text);
        expect(
          [...reads.sheets].filter((one) => !one.endsWith(' 2')),
          `${name} ${text}`,
        ).toEqual([]);
        expect(
          [...reads.words].filter((one) => firstNames.has(one)),
          `${name} ${text}`,
        ).toEqual([]);
      }
    }
    expect(sheets.flatMap(({ formulas }) => formulas).length).toBeGreaterThan(100);
  });

  it('keeps the entries of the sets apart', async () => {
    const entry = templateOf('start').names.find(({ name }) => name === 'as_of')?.range ?? '';
    const other = sheetIn(workbook.snapshot(), second(trip)).values;
    await workbook.set('Start', { [entry]: { date: '2027-11-25' } });
    const snapshot = workbook.snapshot();
    expect(sheetIn(snapshot, second(trip)).values).toEqual(other);
    expect(sheetIn(snapshot, trip).values).not.toEqual(other);
    await workbook.set('Start', { [entry]: { date: '2026-11-25' } });
    await workbook.set(second('Start'), { [entry]: { date: '2027-11-25' } });
    expect(sheetIn(workbook.snapshot(), trip).values).toEqual(other);
    expect(sheetIn(workbook.snapshot(), second(trip)).values).not.toEqual(other);
  });

  it('draws, limits, notes and links the new set by itself', () => {
    const data = workbook.saved();
    const kept = (name: string): Record<string, unknown> =>
      JSON.parse(data.resources?.find((one) => one.name === name)?.data ?? '{}') as Record<string, unknown>;
    const fresh = withSheetsInserted(before, sheetTemplates, everyKey).data;
    const drawings = JSON.stringify(
      (JSON.parse(fresh.resources?.find(({ name }) => name === 'SHEET_DRAWING_PLUGIN')?.data ?? '{}') as Record<string, unknown>)['sheet-balance-2'],
    );
    const hidden = nameRecords(data).filter(({ name }) => drawings.includes(`"${name}"`));
    expect(hidden.length).toBeGreaterThan(4);

    expect(hidden.every(({ formulaOrRefString, hidden: isHidden }) => isHidden && formulaOrRefString.startsWith("'Weight and balance 2'!"))).toBe(
      true,
    );
    expect(Object.keys(kept('SHEET_DEFINED_NAME_PLUGIN')).length).toBe(2 * nameRecords(before).length);
    const links = Object.values(fresh.sheets['sheet-start-2']?.cellData ?? {}).flatMap((row) =>
      Object.values(row as Record<string, { custom?: { goesTo?: string } }>).flatMap(({ custom }) => custom?.goesTo ?? []),
    );
    expect(links.length).toBeGreaterThan(5);
    expect(links.every((link) => link.endsWith('-2'))).toBe(true);
  });

  it('leaves what was there untouched', () => {
    const { data } = withSheetsInserted(before, sheetTemplates, everyKey);
    for (const [id, sheet] of Object.entries(before.sheets)) expect(data.sheets[id]).toEqual(sheet);
    for (const [id, style] of Object.entries(before.styles)) expect(data.styles[id]).toEqual(style);
    for (const { name, data: text } of before.resources ?? []) {
      const now = JSON.parse(data.resources?.find((one) => one.name === name)?.data || '{}') as object;
      expect(now).toMatchObject(JSON.parse(text || '{}') as object);
    }
    expect(data.sheetOrder.slice(0, count)).toEqual(before.sheetOrder);
  });
});

describe('one sheet', () => {
  const user = ownSheet('Trip sheet', { A1: 'mine', B1: '=1+1' });

  it('comes with the sheets it reads, under another name where the user has a sheet of that name', async () => {
    const { data, inserted, reads } = withSheetsInserted(workbookData([user]), sheetTemplates, ['trip']);
    expect([inserted.includes('Trip sheet 2'), inserted.includes('Start'), reads]).toEqual([true, true, []]);
    const workbook = await openSaved(data);
    expect(at(sheetIn(workbook.snapshot(), 'Trip sheet'), 1, 1)).toBe('mine');
    expect(workbook.named('trip_verdict')).toEqual([['OK']]);
    expect(workbook.snapshot().sheets[0]?.mark).toBeUndefined();
    workbook.dispose();
  });

  it('reads sheets that are there and still serve, and joins their set where that has none of its kind', async () => {
    const without = sheetTemplates.filter(({ key }) => key !== 'currency' && key !== 'trip');
    const saved = await savedAfter(without);
    const { data, inserted, reads } = withSheetsInserted(saved, sheetTemplates, ['currency']);
    expect(inserted).toEqual(['Currency log']);
    expect(reads).toContain('Start');
    const workbook = await openSaved(data);
    expect(sheetIn(workbook.snapshot(), 'Currency log').mark?.set).toBe('rampwright');
    workbook.dispose();
  });

  it('makes a set of its own where the set it reads has one already', async () => {
    const { data, inserted, reads } = withSheetsInserted(await savedAfter(sheetTemplates), sheetTemplates, ['currency']);
    expect([inserted, reads]).toEqual([['Currency log 2'], ['Start', 'Fields', 'Manual tables']]);
    const workbook = await openSaved(data);
    const snapshot = workbook.snapshot();
    expect(sheetIn(snapshot, 'Currency log 2').mark?.set).toBe('rampwright-2');
    expect(sheetIn(snapshot, 'Currency log 2').values).toEqual(sheetIn(snapshot, 'Currency log').values);
    workbook.dispose();
  });

  it('reads a sheet whose labels were reworded or taken out, none whose keys are gone, nor one of an older version', async () => {
    const label = templateOf('start').cells.find(({ style }) => style === 'label');
    const keys = `${columnLetter(templateOf('start').columns)}1`;
    const insertedAfter = async (text: string, cell = `A${label?.row}`): Promise<readonly string[]> =>
      withSheetsInserted(await savedAfter(sheetTemplates, (workbook) => workbook.set('Start', { [cell]: text })), sheetTemplates, ['currency'])
        .inserted;
    expect(await insertedAfter('something else')).toEqual(['Currency log 2']);
    expect(await insertedAfter('')).toEqual(['Currency log 2']);
    expect(await insertedAfter('', keys)).toEqual(['Start 2', 'Currency log 2', 'Fields 2', 'Manual tables 2']);
    const later = sheetTemplates.map((template) => (template.key === 'start' ? { ...template, version: template.version + 1 } : template));
    expect(withSheetsInserted(await savedAfter(sheetTemplates), later, ['currency']).inserted).toEqual([
      'Start 2',
      'Currency log 2',
      'Fields 2',
      'Manual tables 2',
    ]);
  });

  it('is refused by a kind that there is not', () =>
    expect(() => withSheetsInserted(workbookData([user]), sheetTemplates, ['nothing'])).toThrow('There is no sheet "nothing".'));
});

describe('a workbook in which sheets were deleted or saved earlier', () => {
  it('takes no identifier and no name that a deleted sheet left behind', () => {
    const data = workbookData(sheetTemplates);
    const left = withoutSheet(data, 'sheet-balance');
    const grown = withSheetsInserted(left, sheetTemplates, everyKey).data;
    expect(grown.sheetOrder).toContain('sheet-balance-2');
    const names = nameRecords(grown).map(({ name }) => name.toLowerCase());
    expect(new Set(names).size).toBe(names.length);
  });

  it('knows the sheets of a workbook from before they carried marks, and no copy of one', async () => {
    const saved = await savedAfter(sheetTemplates);
    const sheets = Object.entries(saved.sheets).map(
      ([id, sheet]) => [id, Object.fromEntries(Object.entries(sheet).filter(([name]) => name !== 'custom'))] as const,
    );
    const trips = saved.sheets['sheet-trip'];
    const copy = { ...trips, id: 'a copy', name: 'Trip sheet (Copy)' };
    const old = { ...saved, sheets: { ...Object.fromEntries(sheets), copy: { ...copy, id: 'copy' } }, sheetOrder: [...saved.sheetOrder, 'copy'] };
    const workbook = await openSaved(old);
    const marks = workbook.snapshot().sheets.map(({ mark }) => mark);
    expect(marks.slice(0, count)).toEqual(
      sheetTemplates.map(({ key, names }) => ({
        key,
        version: 1,
        set: 'rampwright',
        names: Object.fromEntries(names.map(({ name }) => [name, name])),
      })),
    );
    expect(marks[count]).toBeUndefined();
    workbook.dispose();
  });
});

describe('styles', () => {
  it('of an older version that look otherwise stay, and the new ones get a number', () => {
    const template = { ...templateOf('start'), cells: [cell(1, 1, 'hello', 'title')], names: [], validations: [], verdictRanges: [] };
    const old = workbookData([ownSheet('Mine', { A1: 'x' })]);
    const changed = { ...old, styles: { ...old.styles, title: { fs: 30 } } };
    const { data } = withSheetsInserted(changed, [template], ['start']);
    expect(data.styles['title']).toEqual({ fs: 30 });
    expect(data.sheets['sheet-start']?.cellData?.[0]?.[0]?.s).toBe('title 2');
    const again = withSheetsInserted(data, [template], ['start']).data;
    expect(again.sheets['sheet-start-2']?.cellData?.[0]?.[0]?.s).toBe('title 2');
  });
});
