// The panel's view of an aircraft beside the local workbook: a table pasted goes into the grid as one step, which the grid's own undo takes back,
// and so does the panel's.
import type { FrameLocator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { sheetTemplates } from '../../sheets-templates';
import { clickCell, openWorkbook, shown, showSheet, takePicture, valueNamed, type OpenWorkbook } from './support';

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
