// Before a computed cell is overwritten the person is asked, whether one number is typed or a block pasted; what is done can be undone.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sheetTemplates } from '../../sheets-templates';
import { tripRows } from '../../sheets-templates/trip/rows';
import { entryCell } from '../support/tripCells';
import { clickCell, openWorkbook, shown, showSheet, takePicture, textOf, valueNamed, type OpenWorkbook } from './support';

describe('a computed cell', () => {
  let workbook: OpenWorkbook;
  let page: Page;
  beforeAll(async () => {
    workbook = await openWorkbook(sheetTemplates);
    page = workbook.page;
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    await showSheet(page, 'Weight and balance');
  });
  afterAll(() => workbook.stop());

  /** Selects a cell below the part of the sheet in sight. */
  const select = async (cell: string): Promise<void> => {
    await clickCell(page, 'B2');
    await page.evaluate(`window.rampwright.workbook.getActiveSheet().getRange('${cell}').activate()`);
    await page.waitForTimeout(300);
  };
  const number = async (cell: string): Promise<number> => Number(String((await shown(page, cell)) ?? '').replace(',', ''));
  const press = async (button: string): Promise<void> => {
    await page.click(`#files button:text-is("${button}")`);
    await page.waitForTimeout(1500);
  };
  const paste = async (cell: string, text: string): Promise<void> => {
    await select(cell);
    await page.evaluate(`navigator.clipboard.writeText(${JSON.stringify(text)})`);
    await page.keyboard.press('Control+v');
    await page.waitForTimeout(1500);
  };
  const formulaOf = (cell: string): Promise<string> =>
    page.evaluate<string>(`window.rampwright.workbook.getActiveSheet().getRange('${cell}').getFormula()`);

  it('keeps its formula when a number is typed over it, and says so', async () => {
    expect(await valueNamed(page, 'trip_verdict')).toBe('OK');
    await select('C34');
    await page.keyboard.type('47');
    await page.keyboard.press('Enter');
    await page.waitForTimeout(1000);
    expect([await number('C34'), await formulaOf('C34')]).toEqual([48, expect.stringMatching(/^=IF\(/)]);
    expect(await textOf(page, 'files-said')).toBe(
      'C34 (fuel on board at start) on "Weight and balance" is worked out by a formula, which stays. What you entered there was not taken: typed over it, other cells would go on with the old numbers, and the verdict would be CHECK.',
    );
    await takePicture(page, 'typed-over');
  });

  it('is overwritten when that is wanted, then makes the trip CHECK, and comes back by undo', async () => {
    await press('Overwrite it');
    expect([await number('C34'), await valueNamed(page, 'trip_verdict')]).toEqual([47, 'CHECK']);
    await clickCell(page, 'B2');
    await page.keyboard.press('Control+z');
    await page.waitForTimeout(1500);
    expect([await number('C34'), await formulaOf('C34'), await valueNamed(page, 'trip_verdict')]).toEqual([
      48,
      expect.stringMatching(/^=IF\(/),
      'OK',
    ]);
  });

  it('keeps its formula in a pasted block, of which the rest goes in', async () => {
    const [distance, groundspeed] = [`B${tripRows.distance}`, `B${tripRows.groundspeed}`];
    await showSheet(page, 'Trip sheet');
    const [worked, typed] = [await number(distance), await number(groundspeed)];
    await paste(distance, '99\n119');
    expect([await number(distance), await number(groundspeed)]).toEqual([worked, 119]);
    expect(await formulaOf(distance)).not.toBe('');
    expect(await textOf(page, 'files-said')).toMatch(new RegExp(`^${distance} .*on "Trip sheet" is worked out`));
    await press('Overwrite it');
    expect(await number(distance)).toBe(99);
    await clickCell(page, 'A8');
    for (let step = 0; step < 2; step += 1) {
      await page.keyboard.press('Control+z');
      await page.waitForTimeout(1500);
    }
    expect([await number(distance), await number(groundspeed), await valueNamed(page, 'trip_verdict')]).toEqual([worked, typed, 'OK']);
    await showSheet(page, 'Weight and balance');
  });

  it('keeps its formula when it is cleared', async () => {
    await select('C38');
    await page.keyboard.press('Delete');
    await page.waitForTimeout(1000);
    expect(await formulaOf('C38')).not.toBe('');
    expect(await textOf(page, 'files-said')).toMatch(/^C38 \(zero-fuel weight\)/);
  });

  it('is not asked about where an entry only begins with a formula', async () => {
    await press('Keep the formula');
    await showSheet(page, 'Data ledger');
    const firstDay = entryCell('ledger', 'firstDay');
    expect(await formulaOf(firstDay)).toContain('Trip sheet');
    await select(firstDay);
    await page.keyboard.type('2026-12-01');
    await page.keyboard.press('Enter');
    await page.waitForTimeout(1500);
    expect([await formulaOf(firstDay), await textOf(page, 'files-said')]).toEqual(['', '']);
    expect(workbook.watched.errors).toEqual([]);
  });
});
