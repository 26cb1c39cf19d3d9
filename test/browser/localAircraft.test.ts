// The panel's view of an aircraft beside the local workbook: a table pasted goes into the grid as one step, which the grid's own undo takes back,
// and so does the panel's.
import type { FrameLocator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { sheetTemplates } from '../../sheets-templates';
import { clickCell, inPage, openWorkbook, shown, showSheet, takePicture, valueNamed, type OpenWorkbook } from './support';

let workbook: OpenWorkbook;
let page: Page;
let panel: FrameLocator;

beforeAll(async () => {
  workbook = await openWorkbook(sheetTemplates);
  page = workbook.page;
  await page.getByRole('button', { name: 'Show panel' }).click();
  panel = page.frameLocator('#panel');
  await panel.getByRole('tab', { name: 'Aircraft' }).click();
});
afterAll(() => workbook.stop());

/** Quillon Four is invented, and so is this. */
const text =
  'Weight 2300 lb\naltitude, ft\t0 \u00b0C\t10 \u00b0C\t20 \u00b0C\t30 \u00b0C\nS.L.\t1300\t1400\t1500\t1600\n2000\t1500\t1610\t1730\t1850\n4000\t1750\t1880\t2020\t2170\n8000\t2400\t2600\t2800\t3050';
const said = (kind: 'done' | 'refused') => panel.locator(`.outcome.${kind}`);
const at = (label: RegExp, choice: string) => panel.getByLabel(label).first().selectOption(choice);

async function fill(): Promise<void> {
  await panel.getByLabel(/^The table, pasted/).fill(text);
  await at(/^The figures/, 'over 50 ft');
  await at(/^The unit of the figures/, 'ft');
  await at(/has \d+ rows there/, 'replace them');
}
const writeButton = () => panel.getByRole('button', { name: 'Write into Manual tables' });
const written = () => said('done').getByText('Written: Take-off distance of Quillon Four').waitFor();

it('writes what was shown, judged by the trip at once, and both undos take it back', { timeout: 240_000 }, async () => {
  await showSheet(page, 'Manual tables');
  const before = await shown(page, 'F31');
  await panel.getByRole('button', { name: 'Begin' }).click();
  await said('done').waitFor();
  await fill();
  await writeButton().click();
  await written();
  expect([await shown(page, 'B22'), await shown(page, 'B23'), await shown(page, 'F23'), await shown(page, 'F38')]).toEqual([
    'lb, up to',
    '2,300',
    '1,300',
    '3,050',
  ]);
  expect(await shown(page, 'A41')).toBeFalsy();
  await page.setViewportSize({ width: 1280, height: 800 });
  await takePicture(page, 'local-aircraft');
  expect(await valueNamed(page, 'trip_verdict')).not.toBe('');
  await clickCell(page, 'A3');
  await page.keyboard.press('Control+z');
  await expect.poll(() => shown(page, 'F31')).toBe(before);
  await panel.getByRole('button', { name: /^Undo: / }).click();
  await said('refused').getByText('were changed since you looked').waitFor();
  // What was seen is no longer what stands there: the first press only shows that.
  await fill();
  await writeButton().click();
  await said('refused').getByText('Read again what would be written').waitFor();
  await writeButton().click();
  await written();
  await panel.getByRole('button', { name: /^Undo: / }).click();
  await said('done').getByText('Every cell holds what it held before.').waitFor();
  expect(await shown(page, 'F31')).toBe(before);
});

it('puts in the rows that the list lacks in the same step, and either undo takes them out again', { timeout: 240_000 }, async () => {
  await showSheet(page, 'Manual tables');
  const rows = () => inPage<number>(page, "return workbook.getSheetByName('Manual tables').getMaxRows();");
  const strays = () => inPage<string>(page, "return workbook.getSheetByName('Manual tables').getRange('A12').getFormula();");
  const before = [await rows(), await shown(page, 'F31'), await strays()];
  const now = async () => [await rows(), await shown(page, 'F31'), await strays()];
  const long = Array.from({ length: 330 }, (_, index) => `${index * 20}\t${1000 + index * 3}`).join('\n');
  const press = async (): Promise<void> => {
    await panel.getByLabel(/^The table, pasted/).fill(`pressure altitude, ft\tover 50 ft, ft\n${long}`);
    await at(/^The weight/, 'none');
    await at(/has \d+ rows there/, 'replace them');
    await writeButton().click();
  };
  const announced = () => panel.getByText(/^The list is too short: \d+ rows are put in above row 321 of "Manual tables" first/).waitFor();
  await press();
  await written();
  const put = (await rows()) - Number(before[0]);
  expect(put).toBeGreaterThan(10);
  expect(await strays()).toBe(
    String(before[2])
      .replace(/'Manual tables'!/g, '')
      .replace(/321/g, String(321 + put)),
  );
  await showSheet(page, 'Start');
  await showSheet(page, 'Manual tables');
  await clickCell(page, 'A3');
  await page.keyboard.press('Control+z');
  await expect.poll(rows).toBe(before[0]);
  expect((await now()).map((one) => String(one).replace(/'Manual tables'!/g, ''))).toEqual(
    before.map((one) => String(one).replace(/'Manual tables'!/g, '')),
  );
  // The panel still knew the list with the rows in it.
  await press();
  await said('refused').getByText('Read again what would be written').waitFor();
  await announced();
  await writeButton().click();
  await written();
  expect((await rows()) - Number(before[0])).toBe(put);
  await showSheet(page, 'Start');
  await panel.getByRole('button', { name: /^Undo: / }).click();
  await said('done').getByText('The rows that were put in are out again.').waitFor();
  await showSheet(page, 'Manual tables');
  expect((await now()).map((one) => String(one).replace(/'Manual tables'!/g, ''))).toEqual(
    before.map((one) => String(one).replace(/'Manual tables'!/g, '')),
  );
});
