// The workbook as a newcomer meets it: every sheet drawn, the trip judged anew when an entry changes, a picture of each sheet.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sheetTemplates } from '../../sheets-templates';
import { address } from '../../sheets-templates/build';
import type { SheetTemplate } from '../../sheets-templates/template';
import { tripRows } from '../../sheets-templates/trip/rows';
import { templateOf } from '../support/uniqueBook';
import {
  activeSheet,
  clickCell,
  openWorkbook,
  shown,
  showSheet,
  takePicture,
  textOf,
  typeInto,
  untilCalculated,
  untilSaved,
  valueNamed,
  type OpenWorkbook,
} from './support';

/** The first entry of a number or a date to the right of a label. */
function entryBeside({ cells }: SheetTemplate, label: string): string {
  const labelled = cells.find(({ value }) => value === label);
  const entry = cells.find(
    ({ row, column, style, value, formula }) =>
      row === labelled?.row && column > labelled.column && style === 'input' && (value ?? formula) !== undefined,
  );
  if (entry === undefined) throw new Error(`no entry beside "${label}"`);
  return address(entry.row, entry.column);
}

describe('the workbook', () => {
  const [start, trip, balance] = [templateOf('start'), templateOf('trip'), templateOf('balance')];
  /** Typed in the place of a report; blank in the demo. */
  const temperature = `B${tripRows.temperature}`;
  let workbook: OpenWorkbook;
  let page: Page;

  beforeAll(async () => {
    workbook = await openWorkbook(sheetTemplates);
    page = workbook.page;
  });
  afterAll(() => workbook.stop());

  it('is drawn and calculated (the times are told, none fails)', async () => {
    const times = await page.evaluate<{ drawn: number; calculated: number }>(
      "({ drawn: performance.getEntriesByName('grid drawn')[0].startTime, calculated: performance.getEntriesByName('calculated')[0].startTime })",
    );
    console.log(`grid drawn after ${Math.round(times.drawn)} ms, calculated after ${Math.round(times.calculated)} ms`);
    expect(times.calculated).toBeGreaterThan(0);
    expect(await valueNamed(page, 'trip_verdict')).toMatch(/^(OK|CHECK|NO|UNKNOWN)$/);
  });

  it.each(sheetTemplates.map(({ name, key }) => ({ name, key })))('shows $name', async ({ name, key }) => {
    await showSheet(page, name);
    await page.waitForTimeout(700);
    await takePicture(page, key);
    expect(await activeSheet(page)).toBe(name);
  });

  it('goes from Start to another sheet by a click', async () => {
    await showSheet(page, start.name);
    const link = start.cells.find(({ goesTo }) => goesTo === 'trip');
    await clickCell(page, address(link?.row ?? 0, link?.column ?? 0));
    expect(await activeSheet(page)).toBe(trip.name);
  });

  it('judges the trip anew when the temperature changes, and when it comes back', async () => {
    const before = await valueNamed(page, 'trip_verdict');
    await showSheet(page, trip.name);
    // Below the part of the sheet in sight.
    const select = async (): Promise<void> => {
      await clickCell(page, 'A1');
      await page.evaluate(`window.rampwright.workbook.getActiveSheet().getRange('${temperature}').activate()`);
      await page.waitForTimeout(300);
    };
    await select();
    await page.keyboard.type('48');
    await page.keyboard.press('Enter');
    await expect.poll(() => valueNamed(page, 'trip_verdict'), { timeout: 10_000 }).toBe('UNKNOWN');
    await page.waitForTimeout(500);
    await takePicture(page, 'trip-too-hot');
    // Blank again, it is taken from the report.
    await select();
    await page.keyboard.press('Delete');
    await expect.poll(() => valueNamed(page, 'trip_verdict'), { timeout: 10_000 }).toBe(before);
    await page.evaluate('window.rampwright.workbook.getActiveSheet().scrollToCell(0, 0)');
  });

  it('takes a typed date for a date, and judges by it', async () => {
    const before = await valueNamed(page, 'trip_verdict');
    const cell = entryBeside(trip, 'first day');
    const typed = trip.cells.find(({ row, column }) => address(row, column) === cell)?.value;
    await showSheet(page, trip.name);
    await typeInto(page, cell, '2027-03-04');
    expect(await shown(page, cell)).toBe('2027-03-04');
    expect(await valueNamed(page, 'trip_verdict')).toBe('NO');
    await typeInto(page, cell, typeof typed === 'object' ? typed.date : '');
    expect(await valueNamed(page, 'trip_verdict')).toBe(before);
  });

  it('judges the trip anew when the payload changes', async () => {
    await showSheet(page, balance.name);
    await typeInto(page, entryBeside(balance, 'baggage'), '600');
    expect(await valueNamed(page, 'trip_verdict')).toBe('NO');
    await page.waitForTimeout(500);
    await takePicture(page, 'balance-too-heavy');
  });

  it('tells how long an edit takes until it is calculated (no time fails)', async () => {
    const times = await page.evaluate<number[]>(`(async () => {
      const { api, workbook } = window.rampwright;
      const cell = workbook.getSheetByName(${JSON.stringify(trip.name)}).getRange(${JSON.stringify(temperature)});
      const times = [];
      for (let turn = 0; turn < 8; turn += 1) {
        const began = performance.now();
        await new Promise((resolve) => { const heard = api.getFormula().calculationEnd(() => { heard.dispose(); resolve(); }); cell.setValue(10 + turn); });
        times.push(Math.round(performance.now() - began));
        await new Promise((resolve) => setTimeout(resolve, 700));
      }
      return times;
    })()`);
    console.log(`edit to calculated: ${times.join(', ')} ms`);
    expect(times.length).toBe(8);
  });

  it('shows the side panel, which puts an example into an empty cell', async () => {
    await showSheet(page, start.name);
    const used = new Set(start.cells.map(({ row }) => row));
    const free = Array.from({ length: start.rows }, (_, index) => index + 1).find((row) => !used.has(row)) ?? 1;
    await clickCell(page, address(free, 1));
    await page.getByRole('button', { name: 'Show panel' }).click();
    const panel = page.frameLocator('#panel');
    await panel.getByRole('tab', { name: 'Functions' }).click();
    await panel.getByText('ISA_TEMPERATURE').first().click();
    await panel.getByRole('button', { name: 'Put into the selected cell' }).first().click();
    await panel.getByText('The example is in').waitFor();
    await takePicture(page, 'panel');
    await panel.getByRole('button', { name: 'Put into the selected cell' }).first().click();
    await panel.getByText('is not empty, and nothing is overwritten').waitFor();
    await page.getByRole('button', { name: 'Hide panel' }).click();
  });

  it('saved all of it, asked no other machine, and reported no error', async () => {
    await untilSaved(page);
    expect(await textOf(page, 'saved')).toBe('Saved');
    expect(workbook.watched).toEqual({ foreign: [], errors: [] });
  });

  it('draws a copied sheet from its own cells, since its trip is copied whole', async () => {
    const loaded = page.waitForEvent('load');
    await page.evaluate(
      `(() => { const { workbook } = window.rampwright; workbook.duplicateSheet(workbook.getSheetByName(${JSON.stringify(balance.name)})); })()`,
    );
    await loaded;
    await untilCalculated(page);
    const chartOn = async (name: string): Promise<string> => {
      await showSheet(page, name);
      await page.evaluate(`window.rampwright.workbook.getActiveSheet().scrollToCell(${(balance.charts[0]?.row ?? 1) - 1}, 0)`);
      await page.locator('.chart svg').first().waitFor();
      await page.waitForTimeout(500);
      return page.locator('.chart').first().innerHTML();
    };
    const first = await chartOn(balance.name);
    expect(await chartOn(`${balance.name} 2`)).toBe(first);
    await takePicture(page, 'copied');
    await page.evaluate(
      `window.rampwright.workbook.getSheetByName(${JSON.stringify(`${balance.name} 2`)}).getRange('${entryBeside(balance, 'baggage')}').setValue(45)`,
    );
    await expect.poll(() => page.locator('.chart').first().innerHTML()).not.toBe(first);
    expect(await chartOn(balance.name)).toBe(first);
  });
});
