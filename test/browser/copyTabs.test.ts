// "Duplicate" in the menu of a tab copies a trip whole.
import { afterAll, beforeAll, expect, it } from 'vitest';
import { sheetTemplates } from '../../sheets-templates';
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
beforeAll(async () => {
  workbook = await openWorkbook(sheetTemplates);
});
afterAll(() => workbook.stop());

it('brings the loading and the card along, and each trip is judged by its own', async () => {
  const { page } = workbook;
  await showSheet(page, 'Trip sheet');
  await page.click('[data-u-comp="slide-tab-item"]:has-text("Trip sheet")', { button: 'right' });
  await page.waitForTimeout(500);
  await takePicture(page, 'tab-menu');
  await Promise.all([page.waitForEvent('load'), page.click('text=/^(Duplicate|Copy)$/')]);
  await untilCalculated(page);
  expect(await activeSheet(page)).toBe('Trip sheet 2');
  expect(await textOf(page, 'files-said')).toBe(
    'Copied together, so that they read one another and not the first trip: "Trip sheet 2", "Trip working 2", "Route 2", "Descent and hold card 2", "Weight and balance 2".',
  );
  await takePicture(page, 'trip-copied');
  await showSheet(page, 'Weight and balance 2');
  await typeInto(page, 'C11', '400');
  await showSheet(page, 'Trip sheet 2');
  expect(await shown(page, 'B3')).toBe('NO');
  await showSheet(page, 'Trip sheet');
  expect(await shown(page, 'B3')).toBe('OK');
  await untilSaved(page);
  expect(workbook.watched.errors).toEqual([]);
});
