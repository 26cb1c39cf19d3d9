// The trip as a form in the panel of the local workbook: what is typed there stands in the grid, the engine answers, and an undo takes it back.
import type { FrameLocator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sheetTemplates } from '../../sheets-templates';
import { tripRows } from '../../sheets-templates/trip/rows';
import { openWorkbook, shown, showSheet, takePicture, typeInto, valueNamed, type OpenWorkbook } from './support';

describe('the form in the panel of the local workbook', () => {
  let workbook: OpenWorkbook;
  let page: Page;
  let panel: FrameLocator;

  const answered = (): Promise<void> => expect.poll(() => panel.locator('.verdict').getAttribute('aria-busy')).toBe('false');
  const word = (): Promise<string> => panel.locator('.verdict .word').first().innerText();
  const entry = (label: string) => panel.getByLabel(label, { exact: true });
  const type = async (label: string, text: string): Promise<void> => {
    await entry(label).fill(text);
    await entry(label).press('Enter');
  };
  const reserve = 'reserve required, minutes';

  beforeAll(async () => {
    workbook = await openWorkbook(sheetTemplates);
    page = workbook.page;
    await showSheet(page, 'Trip sheet');
    await page.getByRole('button', { name: 'Show panel' }).click();
    panel = page.frameLocator('#panel');
    await panel.getByRole('button', { name: 'Fill in the trip as a form' }).click();
  });
  afterAll(() => workbook.stop());

  it('shows in every answer and entry what the grid shows', async () => {
    await answered();
    const places = [
      [3, 'B3'],
      [tripRows.reserve, `B${tripRows.reserve}`],
    ] as const;
    expect(await word()).toBe(await shown(page, places[0][1]));
    expect(await entry(reserve).inputValue()).toBe(await shown(page, places[1][1]));
    for (const row of [
      tripRows.takeoffWeight,
      tripRows.fuelOnBoard,
      tripRows.fuelRequired,
      tripRows.startDown,
      tripRows.holdInbound,
      tripRows.holdLimit,
    ]) {
      const line = panel.locator('.line').filter({ has: panel.locator('.label', { hasText: String(await shown(page, `G${row}`)) }) });
      if (!(await line.first().isVisible()))
        await panel.locator('summary', { hasText: row < tripRows.startDown ? 'Loading and fuel' : 'Descent and hold' }).click();
      expect(await line.first().locator('.answer').first().innerText()).toBe(String(await shown(page, `H${row}`)));
    }
  });

  it('writes into the grid, and the engine answers within the form', async () => {
    const began = performance.now();
    await type(reserve, '400');
    await expect.poll(word).toBe('NO');
    console.log(`an entry of the panel's form answered in ${Math.round(performance.now() - began)} ms`);
    expect([await shown(page, `B${tripRows.reserve}`), await valueNamed(page, 'trip_verdict')]).toEqual(['400', 'NO']);
    await takePicture(page, 'local-form');
    await panel.getByRole('button', { name: 'Undo the last entry' }).click();
    await expect.poll(word).toBe('OK');
    expect(await entry(reserve).inputValue()).toBe('45');
  });

  it('refuses what the grid would refuse, and leaves the grid as it was', async () => {
    await type(reserve, '9999');
    await expect.poll(() => panel.locator('.outcome.refused').textContent()).toBe('Not done. "9999" is not taken here. Minutes.');
    expect(await shown(page, `B${tripRows.reserve}`)).toBe('45');
  });

  it('reads again when somebody comes back from the grid', async () => {
    await typeInto(page, `B${tripRows.pilot}`, 'Ada Gridder');
    await entry('pilot').click();
    await expect.poll(() => entry('pilot').inputValue()).toBe('Ada Gridder');
    await answered();
  });

  it('finds its entries after rows were put in above them', async () => {
    await page.evaluate(`window.rampwright.workbook.getActiveSheet().insertRowsBefore(${tripRows.reserve - 1}, 2)`);
    await panel.getByRole('button', { name: 'Read again' }).click();
    await answered();
    await type(reserve, '46');
    await expect.poll(() => shown(page, `B${tripRows.reserve + 2}`)).toBe('46');
    await answered();
    expect(workbook.watched).toEqual({ foreign: [], errors: [] });
  });
});
