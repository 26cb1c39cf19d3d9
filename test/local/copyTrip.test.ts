// A trip copied whole in a saved workbook, and a tab copied alone as the menus of other spreadsheets do it.
import type { IWorkbookData } from '@univerjs/core';
import { beforeAll, describe, expect, it } from 'vitest';
import { openSaved, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { resourceIn } from '../../addon/local/engine/workbookData';
import { resourceNames } from '../../addon/local/engine/workbookResources';
import { sheetsOfTrip, withTripCopied, type TripCopied } from '../../addon/local/saved/copyTrip';
import { referencesOf } from '../../addon/workbook/formulaText';
import { checkWorkbook } from '../../addon/workbook/check/checkWorkbook';
import { sheetTemplates } from '../../sheets-templates';
import { demoDay, demoTrip } from '../../sheets-templates/demo/day';
import { tripCells } from '../../sheets-templates/places';
import { tripRows } from '../../sheets-templates/trip/rows';
import { savedAfter } from './savedSheets';

const first = ['Trip sheet', 'Trip working', 'Route', 'Descent and hold card', 'Weight and balance'];
const [fuelFlow, firstDay] = [`B${tripRows.fuelFlow}`, `B${tripRows.firstDay}`];
const second = first.map((name) => `${name} 2`);
const idOf = (data: IWorkbookData, name: string): string => data.sheetOrder.find((id) => data.sheets[id]?.name === name) ?? '';
const verdictOn = (workbook: HeadlessWorkbook, sheet: string): unknown => workbook.value(sheet, 'B3');

/** Every text of the sheet: a reason stands at the top, or at its own item where there are several. */
const told = (workbook: HeadlessWorkbook, sheet: string): string =>
  Array.from({ length: 60 }, (_, row) => ['C', 'D', 'E', 'G', 'H', 'I'].map((letter) => String(workbook.value(sheet, `${letter}${row + 1}`))))
    .flat()
    .join(' | ');

/** As a spreadsheet's own menu copies a tab: the same formulas, another name; the mark goes along or not. */
function tabCopied(data: IWorkbookData, name: string): IWorkbookData {
  const original = data.sheets[idOf(data, name)];
  const copy = { ...structuredClone(original), id: 'copied-tab', name: `Copy of ${name}` };
  return { ...data, sheets: { ...data.sheets, [copy.id]: copy }, sheetOrder: [...data.sheetOrder, copy.id] };
}

describe('a trip copied whole', () => {
  let data: IWorkbookData;
  let copied: TripCopied;
  beforeAll(async () => {
    data = await savedAfter(sheetTemplates, async (workbook) => {
      await workbook.set('Weight and balance', { C9: 350 });
      await workbook.set('Start', { A7: 'Quillon Four' });
    });
    copied = withTripCopied(data, idOf(data, 'Weight and balance'));
  });

  it('has its own five sheets, after the first ones, which stay as they are', () => {
    expect([...copied.copies].sort()).toEqual([...second].sort());
    expect(copied.copies[0]).toBe('Weight and balance 2');
    const order = copied.data.sheetOrder.map((id) => copied.data.sheets[id]?.name);
    expect(order).toEqual([
      ...data.sheetOrder.slice(0, 6).map((id) => data.sheets[id]?.name),
      ...second,
      ...data.sheetOrder.slice(6).map((id) => data.sheets[id]?.name),
    ]);
    for (const id of data.sheetOrder) expect(copied.data.sheets[id]).toEqual(data.sheets[id]);
  });

  it('names none of the sheets of the first trip in any formula', () => {
    const named = second.flatMap((name) =>
      Object.values(copied.data.sheets[idOf(copied.data, name)]?.cellData ?? {}).flatMap((row) =>
        Object.values(row as Record<string, { f?: string }>).flatMap(({ f }) => (typeof f === 'string' ? [...referencesOf(f).sheets] : [])),
      ),
    );
    expect(named.length).toBeGreaterThan(50);
    expect(named.filter((name) => first.includes(name))).toEqual([]);
  });

  it('is judged by its own loading, and the first by its own', async () => {
    const workbook = await openSaved(copied.data);
    expect([verdictOn(workbook, 'Trip sheet'), verdictOn(workbook, 'Trip sheet 2')]).toEqual(['OK', 'OK']);
    expect(workbook.value('Weight and balance 2', 'C9')).toBe(350);
    await workbook.set('Weight and balance 2', { C11: 400 });
    expect([verdictOn(workbook, 'Trip sheet'), verdictOn(workbook, 'Trip sheet 2')]).toEqual(['OK', 'NO']);
    await workbook.set('Weight and balance 2', { C11: 45 });
    await workbook.set('Trip sheet 2', { [fuelFlow]: 11.5 });
    expect([verdictOn(workbook, 'Trip sheet'), verdictOn(workbook, 'Trip sheet 2')]).toEqual(['OK', 'OK']);
    expect(workbook.value('Weight and balance 2', 'C36')).toBe(workbook.value('Trip sheet 2', tripCells.tripFuel));
    expect(workbook.value('Weight and balance 2', 'C36')).not.toBe(workbook.value('Weight and balance', 'C36'));
    expect(workbook.value('Weight and balance', 'C36')).toBe(workbook.value('Trip sheet', tripCells.tripFuel));
    expect([workbook.named('trip_verdict'), workbook.named('trip_verdict_2')]).toEqual([[['OK']], [['OK']]]);
    const report = checkWorkbook(workbook.snapshot(), sheetTemplates, demoDay);
    expect(report.findings.filter(({ kind }) => kind !== 'unknown')).toEqual([]);
    workbook.dispose();
  });

  it('brings its choices, tints, notes and drawings, each of its own', () => {
    for (const name of second) {
      const id = idOf(copied.data, name);
      for (const resource of [resourceNames.validations, resourceNames.tints, resourceNames.notes])
        expect(resourceIn(copied.data, resource)[id], `${resource} of ${name}`).toBeDefined();
    }
    const drawn = JSON.stringify(resourceIn(copied.data, resourceNames.drawings)[idOf(copied.data, 'Weight and balance 2')]);
    const names = Object.values(resourceIn<{ name: string; formulaOrRefString: string }>(copied.data, resourceNames.names));
    const behind = [...drawn.matchAll(/"(chart_[a-z0-9_]+)"/g)].map(([, name]) => names.find((one) => one.name === name)?.formulaOrRefString ?? '');
    expect(behind.length).toBeGreaterThan(5);
    expect(behind.filter((reference) => !reference.startsWith("'Weight and balance 2'!"))).toEqual([]);
    const uids = Object.values(resourceIn<readonly { uid: string }[]>(copied.data, resourceNames.validations)).flatMap((rules) =>
      rules.map(({ uid }) => uid),
    );
    expect(new Set(uids).size).toBe(uids.length);
  });

  it('can be copied again', async () => {
    const again = withTripCopied(copied.data, idOf(copied.data, 'Trip sheet 2'));
    expect(again.copies[0]).toBe('Trip sheet 3');
    const workbook = await openSaved(again.data);
    await workbook.set('Weight and balance 3', { C11: 400 });
    expect(['', ' 2', ' 3'].map((end) => verdictOn(workbook, `Trip sheet${end}`))).toEqual(['OK', 'OK', 'NO']);
    workbook.dispose();
  });

  it('is only a trip: other sheets are copied by the grid', () => {
    for (const name of ['Start', 'Data ledger', 'Currency log', 'Manual tables']) expect(sheetsOfTrip(data, idOf(data, name))).toEqual([]);
  });
});

describe('a tab copied alone', () => {
  it('says that another trip has the loading, once the two differ', async () => {
    const data = tabCopied(await savedAfter(sheetTemplates), 'Trip sheet');
    const workbook = await openSaved(data);
    expect(verdictOn(workbook, 'Copy of Trip sheet')).toBe('OK');
    const heard: unknown[] = [];
    for (const [place, typed, back] of [
      [firstDay, { date: '2026-11-24' }, { date: demoTrip.firstDay }],
      [fuelFlow, 11, 10.5],
    ] as const) {
      await workbook.set('Copy of Trip sheet', { [place]: typed });
      heard.push(verdictOn(workbook, 'Copy of Trip sheet'), told(workbook, 'Copy of Trip sheet'), verdictOn(workbook, 'Trip sheet'));
      await workbook.set('Copy of Trip sheet', { [place]: back });
    }
    const reads = 'Trip working works for Marrowfield to Tansy Ridge, 2026-11-25, by another Trip sheet than this: copy them together';
    expect([heard[0], heard[3]]).not.toContain('OK');
    expect([heard[2], heard[5]]).toEqual(['OK', 'OK']);
    expect([heard[1], heard[4]]).toEqual([expect.stringContaining(reads), expect.stringContaining(reads)]);
    workbook.dispose();
  });

  it.each([true, false])('is found by the check, whether the mark of its sheet goes along (%s)', async (marked) => {
    const workbook = await openSaved(tabCopied(await savedAfter(sheetTemplates), 'Weight and balance'));
    const snapshot = workbook.snapshot();
    workbook.dispose();
    const mark = snapshot.sheets.find(({ name }) => name === 'Weight and balance')?.mark;
    const sheets = snapshot.sheets.map((sheet) => (marked && mark !== undefined && sheet.name.startsWith('Copy') ? { ...sheet, mark } : sheet));
    const report = checkWorkbook({ ...snapshot, sheets }, sheetTemplates, demoDay);
    expect(report.findings.filter(({ kind }) => kind === 'copied').map(({ sheet, sentence }) => [sheet, sentence])).toEqual([
      [
        'Copy of Weight and balance',
        expect.stringContaining(
          '"Copy of Weight and balance" looks like a copied tab: it goes on reading "Trip sheet", which belongs to the first trip',
        ),
      ],
    ]);
  });
});
