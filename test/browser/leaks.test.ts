// What an edit costs the page must be given back: neither listeners nor memory may grow with the number of edits.
import type { CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sheetTemplates } from '../../sheets-templates';
import { openWorkbook, showSheet, type OpenWorkbook } from './support';

const edits = Number(process.env['LEAK_EDITS'] ?? 120);

interface Held {
  readonly listeners: number;
  readonly megabytes: number;
}

async function held(devtools: CDPSession): Promise<Held> {
  for (let time = 0; time < 3; time += 1) await devtools.send('HeapProfiler.collectGarbage');
  const { metrics } = await devtools.send('Performance.getMetrics');
  const named = (name: string): number => metrics.find((one) => one.name === name)?.value ?? NaN;
  return { listeners: named('JSEventListeners'), megabytes: named('JSHeapUsedSize') / 1024 ** 2 };
}

/** Types so many days into as_of, each when the one before is calculated; the milliseconds that each took. */
const edit = (page: Page, count: number): Promise<number> =>
  page.evaluate<number>(`(async () => {
    const [sheet, began] = [window.rampwright.workbook.getSheetByName('Start'), performance.now()];
    const calculated = () => performance.getEntriesByName('calculated').length;
    for (let edit = 0; edit < ${count}; edit += 1) {
      const before = calculated();
      sheet.getRange('A6').setValue(46351 + (edit % 20));
      while (calculated() === before) await new Promise((resolve) => setTimeout(resolve, 5));
    }
    return (performance.now() - began) / ${count};
  })()`);

describe('the page', () => {
  let workbook: OpenWorkbook;
  let devtools: CDPSession;
  beforeAll(async () => {
    workbook = await openWorkbook(sheetTemplates);
    devtools = await workbook.page.context().newCDPSession(workbook.page);
    await devtools.send('Performance.enable');
    await devtools.send('HeapProfiler.enable');
    await showSheet(workbook.page, 'Start');
  });
  afterAll(() => workbook.stop());

  it(`gives back what ${edits} edits took`, { timeout: 60_000 + edits * 3000 }, async () => {
    await edit(workbook.page, 40);
    const before = await held(devtools);
    const took = await edit(workbook.page, edits);
    const after = await held(devtools);
    if (edits > 200) console.log(before, after, `${Math.round(took)} ms each`);
    expect(after.listeners - before.listeners).toBeLessThan(edits / 4);
    expect(after.megabytes / before.megabytes).toBeLessThan(1.2);
  });
});
