// Files at the foot of the page: the calendar that is downloaded, read back by another program's parser (ical.js), the Excel
// file, read back by a reader of its own, and the flights that are taken in, whatever the order of their columns.
import { readFile } from 'node:fs/promises';
import ICAL from 'ical.js';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoClub } from '../../sheets-templates/demo/dues';
import { sheetTemplates } from '../../sheets-templates';
import { currencyLogSheet } from '../../sheets-templates/currency/sheet';
import { dataLedgerSheet } from '../../sheets-templates/ledger/sheet';
import { readXlsx, type ReadSheet } from '../support/readXlsx';
import { calculations, clickCell, openWorkbook, shown, showSheet, takePicture, textOf, untilSaved, type OpenWorkbook } from './support';

const rowOf = (label: string): number => currencyLogSheet.cells.find(({ value }) => value === label)?.row ?? 0;
const headRow = rowOf('day landings');
/** The first row below the demo's flights. */
const freeRow = Math.max(...currencyLogSheet.cells.filter(({ row, value }) => row > headRow && value !== undefined).map(({ row }) => row)) + 1;
const pilotRow = rowOf("4  The pilot's list") + 3;
const lastRow = currencyLogSheet.rows;
const firstCard = dataLedgerSheet.cells.find(({ value }) => value === 'panel, box 1')?.row ?? 0;
/** Under "at, UTC", of the four cards of the first aircraft. */
const minutes = `E${firstCard}:E${firstCard + 3}`;

interface Event {
  readonly title: string;
  readonly details: string;
  readonly when: string;
}

function eventsIn(text: string): Event[] {
  return new ICAL.Component(ICAL.parse(text) as unknown[]).getAllSubcomponents('vevent').map((one) => {
    const { summary, description, startDate } = new ICAL.Event(one);
    return { title: summary, details: description, when: startDate.isDate ? startDate.toString() : startDate.toJSDate().toISOString() };
  });
}

describe('files at the foot of the page', () => {
  let workbook: OpenWorkbook;
  let page: Page;

  const said = (): Promise<string> => textOf(page, 'files-said');
  const sheet = (code: string): Promise<unknown> => page.evaluate(`(() => { const { workbook } = window.rampwright; ${code} })()`);

  /** Chooses a file by the keyboard, and waits for what becomes of it. */
  async function choose(lines: readonly string[], buffer: Buffer = Buffer.from(lines.join('\r\n'))): Promise<string> {
    const close = page.getByRole('button', { name: 'Close', exact: true });
    if (await close.isVisible()) await close.click();
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Import flights (CSV)' }).focus();
    await page.keyboard.press('Enter');
    await (await chooser).setFiles({ name: 'flights.csv', mimeType: 'text/csv', buffer });
    await expect.poll(said).not.toBe('');
    return said();
  }

  /** Item, counted, needed, verdict, good through of the pilot's list, as the grid shows them. */
  async function pilotRowOf(item: string): Promise<unknown[]> {
    for (let row = pilotRow; row < pilotRow + 30; row += 1) {
      if ((await shown(page, `A${row}`)) === item) return Promise.all(['B', 'D', 'E'].map((column) => shown(page, `${column}${row}`)));
    }
    throw new Error(`the pilot's list has no "${item}"`);
  }

  async function calendar(): Promise<Event[]> {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Calendar file' }).focus();
    await page.keyboard.press('Enter');
    const file = await download;
    expect(file.suggestedFilename()).toBe('rampwright.ics');
    return eventsIn(await readFile(await file.path(), 'utf8'));
  }

  async function excelFile(): Promise<ReadSheet[]> {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Excel file (.xlsx)' }).focus();
    await page.keyboard.press('Enter');
    const file = await download;
    expect(file.suggestedFilename()).toBe('rampwright.xlsx');
    return readXlsx(await readFile(await file.path()));
  }

  beforeAll(async () => {
    workbook = await openWorkbook(sheetTemplates);
    page = workbook.page;
    await showSheet(page, currencyLogSheet.name);
  });
  afterAll(() => workbook.stop());

  it('downloads a calendar with the visits, renewals and lapses of the demo', async () => {
    // Beside the cards of one aircraft the minute of the change is typed, as its box has it.
    await sheet(`workbook.getSheetByName('Data ledger').getRange('${minutes}').setValues([['0901Z'], ['0901Z'], ['0901Z'], ['0901Z']]);`);
    await page.waitForTimeout(1500);
    const events = await calendar();
    const starting = (title: string): Event[] => events.filter((event) => event.title.startsWith(title));
    // AIRAC dates 26 November and 24 December 2026, at the minutes typed beside the demo's cards; a moment of several series is titled by the first.
    const visits = starting('Load data: ');
    const changesAt = (when: string): string => visits.find((visit) => visit.when === when)?.details ?? '';
    expect(changesAt('2026-11-26T09:01:00.000Z')).toContain('navigation (Quillon Four)');
    expect(changesAt('2026-11-26T00:00:00.000Z')).toContain('navigation (Brindle Two, Merle Tug)');
    expect(changesAt('2026-12-24T00:00:00.000Z')).toContain('navigation (Brindle Two, Merle Tug)');
    expect(visits.length).toBe(new Set(visits.map(({ when }) => when)).size);
    expect(starting('Licence ends: charts (Quillon Four)')[0]).toMatchObject({ when: '2026-12-15', details: '149 EUR' });
    expect(starting('Last good day: flight review')[0]?.when).toBe('2028-06-30');
    expect(starting('Last good day: Quillon Four annual inspection')[0]?.when).toBe('2027-03-31');
    expect(await said()).toMatch(
      new RegExp(
        `^Calendar file rampwright\\.ics: ${events.length} dates, as of 2026-11-25\\. Not in it: .*Sable Twin annual inspection: no last good day`,
      ),
    );
    await takePicture(page, 'files');
  });

  it('downloads the workbook as an Excel file of what stands in the grid, spilled answers and half-typed entries included', async () => {
    await clickCell(page, 'O7');
    await page.keyboard.type('typed and not entered');
    const [about, ...sheets] = await excelFile();
    expect(about?.name).toBe('About this file');
    expect(sheets.map(({ name, formulas }) => [name, formulas])).toEqual(sheetTemplates.map(({ name }) => [name, 0]));
    const log = sheets.find(({ name }) => name === currencyLogSheet.name);
    expect(log?.cells.get('O7')?.value).toBe('typed and not entered');
    for (let row = pilotRow; row < pilotRow + 10; row += 1) {
      expect(log?.cells.get(`A${row}`)?.value).toBe(await shown(page, `A${row}`));
      expect(['OK', 'CHECK', 'NO', 'UNKNOWN']).toContain(log?.cells.get(`D${row}`)?.value);
      expect(log?.cells.get(`D${row}`)?.fill).toBeDefined();
      const lapses = log?.cells.get(`E${row}`);
      const inGrid = await shown(page, `E${row}`);
      if (inGrid) expect(new Date((Number(lapses?.value) - 25_569) * 86_400_000).toISOString().slice(0, 10)).toBe(inGrid);
      expect(lapses?.numberFormat).toBe('yyyy-mm-dd');
    }
    // What the grid keeps beside the cells goes along as it saves it.
    expect(sheets.map(({ charts }) => charts.length)).toEqual(sheetTemplates.map(({ charts }) => charts.length));
    expect(sheets.map(({ notes }) => Object.keys(notes).length)).toEqual(
      sheetTemplates.map(({ cells }) => cells.filter(({ note }) => note !== undefined).length),
    );
    expect(await said()).toBe(
      `Excel file rampwright.xlsx: ${sheetTemplates.length} sheets, values only, no live formulas. Values as of 2026-11-25: the day "as_of" on which everything is judged.`,
    );
    await takePicture(page, 'files-excel');
    await sheet(`workbook.getActiveSheet().getRange('O7').setValue('');`);
  });

  it('downloads the sheet in sight alone, named with its day', async () => {
    await showSheet(page, 'Statement');
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'This sheet (.xlsx)' }).click();
    const file = await download;
    expect(file.suggestedFilename()).toBe('Statement Ada 2026-11-25.xlsx');
    const [about, ...sheets] = readXlsx(await readFile(await file.path()));
    expect([about?.name, sheets.map(({ name }) => name)]).toEqual(['About this file', ['Statement']]);
    expect(await said()).toContain('Excel file Statement Ada 2026-11-25.xlsx: the sheet in sight alone, values only');
    await page.emulateMedia({ media: 'print' });
    await page.evaluate("window.dispatchEvent(new Event('beforeprint'))");
    expect(await page.title()).toBe('Statement Ada 2026-11-25');
    const paper = (await page.textContent('#paper')) ?? '';
    expect(paper).toContain('Ada');
    for (const other of demoClub.map(([name]) => String(name)).filter((name) => name !== 'Ada'))
      expect(paper).not.toMatch(new RegExp(`\\b${other}\\b`));
    await takePicture(page, 'files-statement-paper');
    await page.evaluate("window.dispatchEvent(new Event('afterprint'))");
    await page.emulateMedia({ media: null });
    expect(await page.title()).toBe('Rampwright');
    await showSheet(page, currencyLogSheet.name);
  });

  it('adds nothing from a file that is no log, and says why', async () => {
    expect(await choose(['nothing of the kind', '1,2,3'])).toContain(
      'Nothing was added: no line of headings with a date and an aircraft was found: the day must stand under "date"',
    );
    expect(await choose(['aircraft,date,day landings', 'Quillon Four,2026-02-30,1'])).toBe(
      'Nothing was added: line 2: "2026-02-30" is no date. Days are read as 2026-11-26, 26.11.2026, 26/11/2026 or 26 Nov 2026.',
    );
    expect(await shown(page, `A${freeRow}`)).toBeFalsy();
    const many = Array.from({ length: 1100 }, (_, index) => `Quillon Four,2026-11-20,${index}`);
    expect(await choose(['aircraft,date,approaches', ...many])).toContain('Nothing was added: ');
  });

  it('adds the flights of shuffled columns below the last one, and the list of the pilot changes', async () => {
    const before = await pilotRowOf('passengers at night, SEL');
    const calculatedBefore = await calculations(page);
    const sentence = await choose([
      'Route,PIC,Night full stop,Registration,Night landings,Date,Day takeoffs',
      'A-B,1.5,2,Quillon Four,2,2026-11-22,1',
      'B-A,0:30,2,=Quillon Four,2,2026-11-23,',
      'B-A,1,several,Quillon Four,1,2026-11-24,',
      'B-A,1,1,Quillon Four,1,2026-11-24,',
    ]);
    expect(sentence).toBe(
      `3 flights added to the sheet "Currency log", rows ${freeRow} to ${freeRow + 2}. Not taken: line 4: "several" under "Night full stop" is no whole number from 0 to 1,000. Columns not understood: Route, Day takeoffs. Headings that would do besides: day landings, day full stop, approaches, holds, tracking, hours, hours with instructor.`,
    );
    await expect.poll(() => calculations(page)).toBeGreaterThan(calculatedBefore);
    expect(await Promise.all(['A', 'B', 'E', 'F', 'M'].map((column) => shown(page, `${column}${freeRow}`)))).toEqual(
      ['Quillon Four', '2026-11-22', 2, 2, 1.5].map((value) =>
        typeof value === 'number' ? expect.toSatisfy((cell: unknown) => Number(cell) === value) : value,
      ) as unknown[],
    );
    expect(await shown(page, `A${freeRow + 1}`)).toBe('=Quillon Four');
    const after = await pilotRowOf('passengers at night, SEL');
    expect(Number(after[0])).toBe(Number(before[0]) + 3);
    expect(after[2]).not.toBe(before[2]);
    await takePicture(page, 'files-flights');
  });

  it('does not add the same flights again, and one undo takes all of them away', async () => {
    expect(await choose(['aircraft,date,night landings,night full stop,PIC', 'Quillon Four,2026-11-22,2,2,1.5'])).toBe(
      'Nothing was added. 1 flight of the file stands in the log already.',
    );
    await clickCell(page, 'A6');
    await page.keyboard.press('Control+z');
    await expect.poll(async () => [await shown(page, `A${freeRow}`), await shown(page, `A${freeRow + 2}`)].every((value) => !value)).toBe(true);
    expect(await shown(page, `A${freeRow - 1}`)).toBe('Quillon Four');
  });

  it('asks whose flights they are, and whether one that differs in part is another', async () => {
    const flights = ['date,aircraft,pilot,hours', '2026-10-21,DEMO-9,Ada,1:12', '2026-10-21,DEMO-9,Bo,1:12'];
    expect(await choose(flights)).toContain('flights of 2 pilots under "pilot": "Ada", "Bo"');
    await page.getByRole('button', { name: 'Of Ada' }).click();
    await expect.poll(said).toBe(`1 flight added to the sheet "Currency log", row ${freeRow}. Left out: 1 flight of others.`);
    expect(await choose(['aircraft;date;hours', 'demo 9;21.10.2026;1,2'])).toContain('1 flight of the file stands in the log already.');
    expect(await choose(['date,aircraft,hours', '2026-10-21,DEMO-9,2:30'])).toBe(
      `Nothing was added yet. 1 flight of the file may stand in the log already, on the same day in the same aircraft: line 2 (2026-10-21, DEMO-9) and row ${freeRow}, other hours.`,
    );
    await page.getByRole('button', { name: 'The same flights: leave them out' }).click();
    await expect.poll(said).toBe('Nothing was added. 1 flight left out as you said.');
    await takePicture(page, 'files-asked');
    await clickCell(page, 'A6');
    await page.keyboard.press('Control+z');
    await expect.poll(() => shown(page, `A${freeRow}`)).toBeFalsy();
  });

  it('asks once what the columns of another language are, and remembers it', async () => {
    const heads = 'Tag;Flugzeug;Wer;Zeit;Ldg;Bemerkung';
    const flights = [heads, '22.10.2026;DEMO-9;Ada;1:12;2;"wind, gusts"', '23.10.2026;DEMO-9;Bo;0,8;1;'];
    expect(await choose(flights)).toContain('Nothing was added: no line of headings with a date and an aircraft was found');
    await page.getByRole('button', { name: 'Say what the columns are' }).click();
    const form = page.getByRole('dialog', { name: 'Columns of the file' });
    const name = (heading: string, meaning: string): Promise<string[]> => form.getByLabel(heading, { exact: true }).selectOption({ label: meaning });
    await name('Tag', 'date');
    await form.getByRole('button', { name: 'Read the file so' }).click();
    expect(await form.getByRole('status').textContent()).toBe('Say which column is the aircraft: a flight cannot be read without.');
    await name('Flugzeug', 'aircraft');
    await name('Wer', 'pilot (whose flight it is)');
    await name('Zeit', 'hours');
    await name('Ldg', 'hours');
    await form.getByRole('button', { name: 'Read the file so' }).click();
    expect(await form.getByRole('status').textContent()).toContain('Two columns are given as "hours".');
    await name('Ldg', 'day landings');
    await takePicture(page, 'files-columns');
    await page.setViewportSize({ width: 390, height: 800 });
    await takePicture(page, 'files-columns-390');
    await page.setViewportSize({ width: 1280, height: 800 });
    await form.getByRole('button', { name: 'Read the file so' }).click();
    await expect.poll(said).toContain('flights of 2 pilots under "Wer": "Ada", "Bo"');
    await page.getByRole('button', { name: 'Of Ada' }).click();
    await expect.poll(said).toContain(`1 flight added to the sheet "Currency log", row ${freeRow}.`);
    expect(await Promise.all(['A', 'B'].map((column) => shown(page, `${column}${freeRow}`)))).toEqual(['DEMO-9', '2026-10-22']);
    expect(await choose([heads, '22.10.2026;DEMO-9;Ada;1:12;2;'])).toContain('Nothing was added. 1 flight of the file stands in the log already.');
    await clickCell(page, 'A6');
    await page.keyboard.press('Control+z');
    await expect.poll(() => shown(page, `A${freeRow}`)).toBeFalsy();
  });

  it('asks about a heading that nobody knows before it adds anything', async () => {
    const flights = ['date,aircraft,hours,bumps', '2026-10-05,DEMO-9,1,3'];
    expect(await choose(flights)).toBe('Nothing was added yet. A column is not understood: bumps. What it holds would not be counted.');
    await page.getByRole('button', { name: 'Leave it out' }).click();
    await expect.poll(said).toContain(`1 flight added to the sheet "Currency log", row ${freeRow}.`);
    await clickCell(page, 'A6');
    await page.keyboard.press('Control+z');
    await expect.poll(() => shown(page, `A${freeRow}`)).toBeFalsy();
    expect(await choose(flights)).toContain('1 flight added');
    await clickCell(page, 'A6');
    await page.keyboard.press('Control+z');
    await expect.poll(() => shown(page, `A${freeRow}`)).toBeFalsy();
  });

  it('asks which comes first, day or month, where the file does not show it', async () => {
    expect(await choose(['date,aircraft,hours', '03/04/2026,Quillon Four,1'])).toContain('can be read two ways');
    await page.getByRole('button', { name: 'Month first' }).click();
    await expect.poll(said).toBe(`1 flight added to the sheet "Currency log", row ${freeRow}.`);
    expect(await shown(page, `B${freeRow}`)).toBe('2026-03-04');
  });

  it('shows a date as a date below the tint, keeps a filled row, and reads a file of an older encoding', async () => {
    await sheet(`workbook.getActiveSheet().getRange('O${lastRow - 2}').setValue('my remark');`);
    expect(await choose([], Buffer.from('date;aircraft;hours\r\n21.11.2026;M\xF6we;1,4\r\n', 'latin1'))).toBe(
      `1 flight added to the sheet "Currency log", row ${lastRow - 1}.`,
    );
    expect(await Promise.all(['A', 'B'].map((column) => shown(page, `${column}${lastRow - 1}`)))).toEqual(['Möwe', '2026-11-21']);
    expect(await shown(page, `A${lastRow - 2}`)).toBeFalsy();
    const more = await choose(['date,aircraft,hours', '2026-11-20,Quillon Four,1', '2026-11-19,Quillon Four,1']);
    expect(more).toBe(
      `Nothing was added: the log is read down to row ${lastRow} and has room for 1 flight more, and the file has 2 new. Insert rows before that row first.`,
    );
  });

  it('saved what it added', async () => {
    await untilSaved(page);
    expect((await readFile(workbook.filePath, 'utf8')).includes('Möwe')).toBe(true);
  });

  it('finds a renamed sheet, and says in a sentence which one is gone', async () => {
    await sheet(`workbook.getSheetByName('Data ledger').setName('Our cards');`);
    expect((await calendar()).some(({ title }) => title.startsWith('Load data'))).toBe(true);
    await sheet(`workbook.deleteSheet(workbook.getSheetByName('Our cards'));`);
    expect((await calendar()).some(({ title }) => title.startsWith('Load data'))).toBe(false);
    expect(await said()).toContain('The sheet "Data ledger" is no longer in this workbook.');
    await sheet(`workbook.deleteSheet(workbook.getSheetByName('Currency log'));`);
    expect(await choose(['date,aircraft,hours', '2026-11-20,Quillon Four,1'])).toBe(
      'Nothing was added: The sheet "Currency log" is no longer in this workbook.',
    );
    await page.getByRole('button', { name: 'Calendar file' }).click();
    await expect
      .poll(said)
      .toBe(
        'No calendar file: no dates were found. The sheet "Data ledger" is no longer in this workbook. The sheet "Currency log" is no longer in this workbook.',
      );
  });

  it('asked no other machine for anything, and reported no error', () => {
    expect(workbook.watched).toEqual({ foreign: [], errors: [] });
  });
});
