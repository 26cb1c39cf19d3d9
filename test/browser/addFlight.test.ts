// "Add a flight" in the panel of the local workbook: read first, then the next flight on sheets of its own, listed below the first.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { sheetTemplates } from '../../sheets-templates';
import { tankRows } from '../../sheets-templates/balance/rows';
import { flightList } from '../../sheets-templates/day/places';
import { tripRows as rows } from '../../sheets-templates/trip/rows';
import {
  activeSheet,
  openWorkbook,
  shown,
  showSheet,
  takePicture,
  textOf,
  typeInto,
  untilCalculated,
  untilSaved,
  type OpenWorkbook,
} from './support';

let workbook: OpenWorkbook;
let page: Page;
beforeAll(async () => {
  workbook = await openWorkbook(sheetTemplates);
  ({ page } = workbook);
});
afterAll(() => workbook.stop());

it('begins the next flight with what the first leaves, and lists both with one verdict', { timeout: 240_000 }, async () => {
  await showSheet(page, 'Flights of the day');
  await takePicture(page, 'flights-of-the-day-one');
  await showSheet(page, 'Trip sheet');
  const panel = page.frameLocator('#panel');
  await page.getByRole('button', { name: 'Show panel' }).click();
  await panel.getByRole('tab', { name: 'Sheets' }).click();
  await panel.getByRole('button', { name: 'Add a flight' }).click();
  await panel.getByText(/^The sheets of "Trip sheet" are copied for a flight from Tansy Ridge/).waitFor();
  await panel.getByRole('button', { name: 'Copy them' }).scrollIntoViewIfNeeded();
  await takePicture(page, 'add-a-flight');
  await Promise.all([page.waitForEvent('load'), panel.getByRole('button', { name: 'Copy them' }).click()]);
  await untilCalculated(page);
  expect(await activeSheet(page)).toBe('Trip sheet 2');
  expect(await textOf(page, 'files-said')).toBe(
    'The next flight is on "Trip sheet 2", "Trip working 2", "Route 2", "Descent and hold card 2", "Weight and balance 2". It is UNKNOWN until you have typed what is missing.',
  );
  expect([await shown(page, `B${rows.field}`), await shown(page, 'B3')]).toEqual(['Tansy Ridge', 'UNKNOWN']);
  await takePicture(page, 'flight-added');
  await showSheet(page, 'Weight and balance 2');
  expect(Number(await shown(page, `C${tankRows.first}`))).toBeCloseTo(18.1, 1);
  await typeInto(page, `C${tankRows.first}`, '24');
  await showSheet(page, 'Flights of the day');
  await expect.poll(() => shown(page, 'B3')).toBe('UNKNOWN');
  await expect.poll(async () => Number(await shown(page, `G${flightList.first + 1}`))).toBeCloseTo(42.1, 1);
  expect(String(await shown(page, `M${flightList.first + 1}`))).toContain('cannot be read: to, take-off, landing, fuel at landing');
  await takePicture(page, 'flights-of-the-day');
  await untilSaved(page);
  expect(workbook.watched.errors).toEqual([]);
});

it('looks right on other sheets', { timeout: 240_000 }, async () => {
  for (const [sheet, name, cell] of [
    ['Trip sheet', 'stops-trip', 'A46'],
    ['Route', 'stops-route-top', 'A1'],
    ['Route', 'stops-route-middle', 'A58'],
    ['Route', 'stops-route-pictures', 'T50'],
    ['Manual tables', 'stops-tables', 'A1'],
    ['Descent and hold card', 'stops-card', 'A1'],
  ] as const) {
    await showSheet(page, sheet);
    await page.evaluate(
      `(() => { const s = window.rampwright.workbook.getActiveSheet(); s.scrollToCell(Number('${cell}'.replace(/\\D/g, '')) - 1, '${cell}'.charCodeAt(0) - 65); })()`,
    );
    await page.waitForTimeout(1500);
    await takePicture(page, name);
  }
});
