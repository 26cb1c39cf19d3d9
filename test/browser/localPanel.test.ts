// The side panel of the local workbook in Chromium: it reads the grid as it stands, goes to cells, and puts in, freezes and
// brings up to date sheets, after which the page loads anew and tells what became of it.
import { readFile, writeFile } from 'node:fs/promises';
import type { IWorkbookData } from '@univerjs/core';
import type { FrameLocator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { tripRows } from '../../sheets-templates/trip/rows';
import { address } from '../../sheets-templates/build';
import { templateOf } from '../support/uniqueBook';
import {
  activeSheet,
  calculations,
  clickCell,
  openPage,
  openWorkbook,
  shown,
  showSheet,
  takePicture,
  textOf,
  typeInto,
  until,
  untilCalculated,
  untilSaved,
  valueNamed,
  type OpenWorkbook,
} from './support';

const names = sheetTemplates.map(({ name }) => name);
const quoted = (some: readonly string[]): string => some.map((name) => `"${name}"`).join(', ');

describe('the panel of the local workbook', () => {
  let workbook: OpenWorkbook;
  let page: Page;
  let panel: FrameLocator;

  /** Asks the page as the panel does, from inside its frame. */
  const ask = <Answer>(
    question: string,
    given: object,
  ): Promise<{ readonly answer?: Answer; readonly refusal?: string; readonly milliseconds: number }> => {
    const frame = page.frames().find((one) => one.url().endsWith('panel.html'));
    if (frame === undefined) throw new Error('no panel');
    return frame.evaluate(`(async () => {
      const began = performance.now();
      const reply = await new Promise((resolve) => {
        const heard = ({ data }) => { if (data.id === 9999) { removeEventListener('message', heard); resolve(data.reply); } };
        addEventListener('message', heard);
        parent.postMessage({ id: 9999, question: ${JSON.stringify(question)}, given: ${JSON.stringify(given)} }, location.origin);
      });
      return { ...reply, milliseconds: performance.now() - began };
    })()`);
  };
  const read = async (): Promise<WorkbookSnapshot> => {
    const { answer } = await ask<WorkbookSnapshot>('readWorkbook', { sheets: 'all' });
    if (answer === undefined) throw new Error('not read');
    return answer;
  };
  const sheetOf = ({ sheets }: WorkbookSnapshot, name: string) => sheets.find((sheet) => sheet.name === name);
  const grid = (code: string): Promise<unknown> => page.evaluate(`(() => { const { workbook } = window.rampwright; ${code} })()`);
  const stored = async (): Promise<IWorkbookData> => JSON.parse(await readFile(workbook.filePath, 'utf8')) as IWorkbookData;

  /** Presses a button of the panel, after which the page loads anew; answers with what the strip then says. */
  async function pressAndReload(press: () => Promise<void>): Promise<string> {
    const loaded = page.waitForEvent('load');
    await press();
    await loaded;
    await untilCalculated(page);
    return textOf(page, 'files-said');
  }

  beforeAll(async () => {
    workbook = await openWorkbook(sheetTemplates);
    page = workbook.page;
    await page.getByRole('button', { name: 'Show panel' }).click();
    panel = page.frameLocator('#panel');
    await panel.getByRole('tab', { name: 'Sheets' }).waitFor();
  });
  afterAll(() => workbook.stop());

  it('reads the whole workbook, spills and all, in a moment (the times are told)', async () => {
    const times = [];
    for (let turn = 0; turn < 5; turn += 1) times.push(Math.round((await ask('readWorkbook', { sheets: 'all' })).milliseconds));
    console.log(`the whole workbook read by the panel: ${times.join(', ')} ms`);
    const snapshot = await read();
    expect(snapshot.sheets.map(({ name, mark }) => [name, mark?.key, mark?.set])).toEqual(
      sheetTemplates.map(({ name, key }) => [name, key, 'rampwright']),
    );
    const reasons = sheetOf(snapshot, 'Trip sheet')
      ?.values.slice(tripRows.judged.first - 1, tripRows.judged.last)
      .map((line) => line[7]);
    expect(reasons?.every((verdict) => verdict === 'OK' || verdict === 'CHECK')).toBe(true);
    expect(snapshot.names.map(({ name }) => name)).toEqual(expect.arrayContaining(['as_of', 'trip_verdict']));
    expect(snapshot.names.some(({ name }) => name.startsWith('chart_') || name.startsWith('picture_'))).toBe(false);
  });

  it('reads what was typed just now, with its consequences', async () => {
    const cell = templateOf('start').names.find(({ name }) => name === 'as_of')?.range ?? '';
    await showSheet(page, 'Start');
    await clickCell(page, cell);
    await page.keyboard.type('2027-11-25');
    // Not even entered yet.
    expect(sheetOf(await read(), 'Trip sheet')?.values[2]?.[1]).not.toBe('OK');
    await typeInto(page, cell, '2026-11-25');
    expect(sheetOf(await read(), 'Trip sheet')?.values[2]?.[1]).toBe('OK');
  });

  it('reads the sheet in sight with the one that has the day, and the selected cell', async () => {
    await showSheet(page, 'Data ledger');
    await clickCell(page, 'B14');
    const { answer } = await ask<WorkbookSnapshot>('readWorkbook', { sheets: 'shown' });
    expect(answer?.sheets.map(({ name }) => name)).toEqual(['Start', 'Data ledger']);
    expect(answer?.selected).toEqual({ sheet: 'Data ledger', row: 14, column: 2 });
  });

  it('goes to a cell far down, and gives the keyboard to the grid', async () => {
    expect((await ask('goTo', { sheet: 'Currency log', row: 900, column: 2 })).answer).toEqual({ cell: 'B900' });
    expect(await activeSheet(page)).toBe('Currency log');
    await page.waitForTimeout(500);
    await takePicture(page, 'local-go-to');
    await page.keyboard.type('2026-11-01');
    const before = await calculations(page);
    await page.keyboard.press('Enter');
    await expect.poll(() => calculations(page)).toBeGreaterThan(before);
    expect(await shown(page, 'B900')).toBe('2026-11-01');
    await page.keyboard.press('Control+z');
    await expect.poll(() => shown(page, 'B900')).toBeFalsy();
    expect((await ask('goTo', { sheet: 'No sheet', row: 1, column: 1 })).refusal).toBe('There is no sheet "No sheet" in this workbook any more.');
    expect((await ask('goTo', { sheet: 'Start', row: 90_000, column: 1 })).refusal).toBe(
      'The sheet "Start" no longer reaches as far as row 90000, column 1.',
    );
  });

  it('puts in every sheet beside those that are there; they are calculated, and still there after another loading', async () => {
    const began = performance.now();
    const said = await pressAndReload(() => panel.getByRole('button', { name: 'Insert every sheet' }).click());
    console.log(`every sheet put in, loaded anew and calculated: ${Math.round(performance.now() - began)} ms`);
    expect(said).toBe(`Inserted: ${quoted(names.map((name) => `${name} 2`))}.`);
    expect(await activeSheet(page)).toBe('Start 2');
    await panel.getByRole('tab', { name: 'Sheets' }).waitFor();
    await takePicture(page, 'local-inserted');
    expect([await valueNamed(page, 'trip_verdict'), await valueNamed(page, 'trip_verdict_2')]).toEqual(['OK', 'OK']);
    const snapshot = await read();
    for (const name of names) expect(sheetOf(snapshot, `${name} 2`)?.values, name).toEqual(sheetOf(snapshot, name)?.values);
    await openPage(page, workbook.address);
    expect(await textOf(page, 'files-said')).toBe('');
    expect((await read()).sheets.map(({ name }) => name)).toEqual([...names, ...names.map((name) => `${name} 2`)]);
  });

  it('draws the pictures and charts of the second set from its own cells', async () => {
    await showSheet(page, 'Weight and balance 2');
    const chart = templateOf('balance').charts[0];
    await grid(`workbook.getActiveSheet().scrollToCell(${(chart?.row ?? 1) - 1}, ${(chart?.column ?? 1) - 1})`);
    await page.locator('.chart svg').first().waitFor();
    await page.waitForTimeout(500);
    await takePicture(page, 'local-second-chart');
    const points = (): Promise<string> => page.locator('.chart svg').first().innerHTML();
    const before = await points();
    const { cells } = templateOf('balance');
    const row = cells.find(({ value }) => value === 'baggage')?.row ?? 0;
    const entry = address(row, cells.find((cell) => cell.row === row && cell.style === 'input' && cell.value !== undefined)?.column ?? 0);
    const calculated = await calculations(page);
    await grid(`workbook.getSheetByName('Weight and balance').getRange('${entry}').setValue(600)`);
    await expect.poll(() => calculations(page)).toBeGreaterThan(calculated);
    expect(await points()).toBe(before);
    await grid(`workbook.getSheetByName('Weight and balance 2').getRange('${entry}').setValue(600)`);
    await expect.poll(points).not.toBe(before);
  });

  it('begins the next leg once what it would empty was read, and one undo on each sheet takes it back', async () => {
    await showSheet(page, 'Trip sheet');
    await panel.getByRole('tab', { name: 'Sheets' }).click();
    const before = await read();
    await panel.getByRole('button', { name: 'Next leg' }).click();
    await panel.getByText(/^From Tansy Ridge, with its reports\..* The plan leaves 36\.2 US gal: look into the tanks/).waitFor();
    expect(sheetOf(await read(), 'Trip sheet')?.values).toEqual(sheetOf(before, 'Trip sheet')?.values);
    await takePicture(page, 'next-leg');
    await panel.getByRole('button', { name: 'Begin this leg' }).click();
    await panel.getByText(/^Next leg: \d+ cells written or emptied\./).waitFor();
    await expect.poll(async () => [await shown(page, `B${tripRows.field}`), await shown(page, 'B3')]).toEqual(['Tansy Ridge', 'UNKNOWN']);
    await clickCell(page, 'A5');
    for (let step = 0; step < 2; step += 1) {
      await page.keyboard.press('Control+z');
      await page.waitForTimeout(1500);
    }
    await expect.poll(async () => sheetOf(await read(), 'Trip sheet')?.values).toEqual(sheetOf(before, 'Trip sheet')?.values);
  });

  it('writes a visit as lines of the history once they were shown, and the ledger reads them', async () => {
    await showSheet(page, 'Load list');
    await panel.getByRole('tab', { name: 'Sheets' }).click();
    await panel.getByRole('button', { name: 'List the cards to load' }).click();
    const first = panel.getByLabel(/Brindle Two, panel, right, navigation, cycle \d{4} \(overdue, Dag\)$/);
    await panel.getByRole('button', { name: 'Brindle Two', exact: true }).click();
    const ticks = panel.getByLabel(/Brindle Two, .*\)$/);
    expect(await ticks.count()).toBeGreaterThan(1);
    expect(await panel.locator('.ticks input:checked').count()).toBe(await ticks.count());
    await takePicture(page, 'cards-of-an-aircraft');
    for (const tick of await ticks.all()) await tick.uncheck();
    await first.check();
    await panel.getByLabel('by', { exact: true }).fill('Dag');
    await panel.getByRole('button', { name: 'Show the lines' }).click();
    const shownAt = await panel.getByRole('heading', { name: /^From row \d+ of Data ledger$/ }).textContent();
    await panel.getByRole('button', { name: 'Write them into the history' }).scrollIntoViewIfNeeded();
    await takePicture(page, 'cards-loaded');
    const row = Number(/\d+/.exec(shownAt ?? '')?.[0]);
    await panel.getByRole('button', { name: 'Write them into the history' }).click();
    await expect.poll(() => panel.getByText(`1 line of the history, from row ${row} of "Data ledger" on.`).count()).toBe(1);
    const ledger = sheetOf(await read(), 'Data ledger')?.values;
    expect(ledger?.[row - 1]?.slice(0, 3)).toEqual(['Brindle Two', 'panel, right', 'navigation']);
    expect(ledger?.[15]?.[9]).not.toBe('NO');
    const displayed = await grid(`return workbook.getSheetByName('Data ledger').getRange('E${row}').getDisplayValue()`);
    expect(displayed).toMatch(/^\d{4}-\d\d-\d\d$/);
  });

  it('writes the row of a flight into the log once it was shown, with a day that reads as one', async () => {
    await showSheet(page, 'Trip sheet');
    await panel.getByRole('tab', { name: 'Sheets' }).click();
    for (const [label, text] of Object.entries({ 'off block, UTC': '1425', 'take-off': '1433', landing: '1529', 'on block': '1535' }))
      await panel.getByLabel(label, { exact: true }).fill(text);
    await panel.getByLabel('by night (blank: by the Sun)').fill('0');
    await panel.getByRole('button', { name: 'Show the row' }).click();
    const shownRow = await panel.getByRole('heading', { name: /^Row \d+ of Currency log$/ }).textContent();
    await panel.getByRole('button', { name: 'Write it into the log' }).scrollIntoViewIfNeeded();
    await takePicture(page, 'after-the-flight');
    const row = Number(/\d+/.exec(shownRow ?? '')?.[0]);
    await panel.getByRole('button', { name: 'Write it into the log' }).click();
    await expect.poll(() => panel.getByText(`The flight stands in row ${row} of "Currency log".`).count()).toBe(1);
    const written = sheetOf(await read(), 'Currency log')?.values[row - 1];
    expect(written?.slice(0, 4)).toEqual(['Quillon Four', expect.any(Number), 1, 1]);
    const displayed = await grid(`return workbook.getSheetByName('Currency log').getRange('B${row}').getDisplayValue()`);
    expect(displayed).toMatch(/^\d{4}-\d\d-\d\d$/);
  });

  it('copies a sheet as values beside it', async () => {
    await showSheet(page, 'Trip sheet');
    await panel.getByRole('tab', { name: 'Send' }).click();
    const said = await pressAndReload(() => panel.getByRole('button', { name: 'Copy this sheet as values' }).click());
    expect(said).toMatch(/^The copy is the sheet "Trip sheet \(values 2026-11-25\)": \d+ formulas are values there, and drawings are left out\.$/);
    expect(await activeSheet(page)).toBe('Trip sheet (values 2026-11-25)');
    await page.waitForTimeout(700);
    await takePicture(page, 'local-frozen');
    const snapshot = await read();
    expect(sheetOf(snapshot, 'Trip sheet (values 2026-11-25)')?.values).toEqual(sheetOf(snapshot, 'Trip sheet')?.values);
    expect(sheetOf(snapshot, 'Trip sheet (values 2026-11-25)')?.formulas).toEqual([]);
  });

  it('changes nothing, and says why, where the file was changed elsewhere', async () => {
    await untilSaved(page);
    const elsewhere = `${await readFile(workbook.filePath, 'utf8')} `;
    await writeFile(workbook.filePath, elsewhere);
    await panel.getByRole('tab', { name: 'Sheets' }).click();
    await panel.getByRole('button', { name: 'Insert every sheet' }).click();
    await panel.locator('.outcome.refused').waitFor();
    expect(await panel.locator('.outcome').innerText()).toMatch(
      /^Not done\. Nothing was changed, because the workbook could not be saved: The file was changed elsewhere/,
    );
    expect(await readFile(workbook.filePath, 'utf8')).toBe(elsewhere);
    expect((await read()).sheets.length).toBe(2 * names.length + 1);
    await typeInto(page, 'A1', 'still typed into');
    expect(await shown(page, 'A1')).toBe('still typed into');
  });

  it('tells of sheets of an older version, and brings them up to date', async () => {
    // What was typed last is saved half a second later: over the file that is written here, if it fell between.
    await until(page, "document.getElementById('saved').textContent !== 'Saving...'");
    const data = await stored();
    const older = Object.entries(data.sheets).map(([id, sheet]) => {
      const mark = sheet.custom?.['rampwright'] as { readonly set: string } | undefined;
      return [id, mark?.set === 'rampwright-2' ? { ...sheet, custom: { rampwright: { ...mark, version: 0 } } } : sheet];
    });
    await writeFile(workbook.filePath, JSON.stringify({ ...data, sheets: Object.fromEntries(older) as IWorkbookData['sheets'] }));
    // What is open was changed and cannot be saved any more.
    page.once('dialog', (dialog) => void dialog.accept());
    await openPage(page, workbook.address);
    const second = names.map((name) => `${name} 2`);
    expect(await textOf(page, 'files-said')).toBe(
      `${quoted(second)} are of an older version of Rampwright and work as before. To bring them up to date with your entries in them: "Show panel", then "Sheets", then "Look for older sheets".`,
    );
    await takePicture(page, 'local-older');
    const before = await read();
    await panel.getByRole('button', { name: 'Look for older sheets' }).click();
    const said = await pressAndReload(() => panel.getByRole('button', { name: /^Bring/ }).click());
    expect(said).toBe(
      `Brought up to date: ${quoted(second)}. The older sheets stay beside them as ${quoted(second.map((name) => `${name} (before)`))}; delete those when you need them no longer.`,
    );
    expect(await activeSheet(page)).toBe('Start 2');
    await takePicture(page, 'local-updated');
    const after = await read();
    for (const name of second) {
      expect(sheetOf(after, name)?.values, name).toEqual(sheetOf(before, name)?.values);
      expect(sheetOf(after, `${name} (before)`)?.values, name).toEqual(sheetOf(before, name)?.values);
    }
    for (const name of names) expect(sheetOf(after, name), name).toEqual(sheetOf(before, name));
  });

  it('asked no other machine for anything, and reported no error', () => {
    expect(workbook.watched.foreign).toEqual([]);
    // The refused save is the browser's own line about its answer.
    expect(workbook.watched.errors.filter((line) => !line.includes('412'))).toEqual([]);
  });
});
