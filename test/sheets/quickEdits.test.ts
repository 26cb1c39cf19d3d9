// Edits that come while the sheets are still being calculated: whatever the moment, the end must be as if each had waited for
// the one before. A change that is lost on the way would leave a verdict that looks right.
import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { sheetTemplates } from '../../sheets-templates';
import type { TemplateValue } from '../../sheets-templates/template';
import { tripRows } from '../../sheets-templates/trip/rows';
import { everything } from './changedTemplates';

/** Two edits that are far apart, but meet in the verdict of the trip; in turn this way and back. */
const edits: readonly (readonly [sheet: string, cell: string, values: readonly [TemplateValue, TemplateValue]])[] = [
  ['Start', 'A7', ['Brindle Two', 'Quillon Four']],
  ['Start', 'A6', [{ date: '2026-12-30' }, { date: '2026-11-25' }]],
];

/** Close together where the first calculation begins, then over the whole of it. */
const delays = [...Array.from({ length: 14 }, (_, index) => index * 3), ...Array.from({ length: 8 }, (_, index) => 50 + index * 20)];

describe('two edits, the second while the first is on its way', () => {
  let quick: HeadlessWorkbook;
  let patient: HeadlessWorkbook;
  beforeAll(async () => {
    [quick, patient] = [await openHeadless(sheetTemplates), await openHeadless(sheetTemplates)];
  });
  afterAll(() => {
    quick.dispose();
    patient.dispose();
  });

  it.each(delays)('after %i milliseconds', async (delay) => {
    const way = delays.indexOf(delay) % 2 === 0 ? 0 : 1;
    for (const [sheet, cell, values] of edits) await patient.set(sheet, { [cell]: values[way] });
    for (const [sheet, cell, values] of edits) {
      // Not waited for: two edits that are calculated together have one end.
      void quick.set(sheet, { [cell]: values[way] });
      await pause(delay);
    }
    await expect.poll(() => everything(sheetTemplates, quick), { timeout: 30_000 }).toEqual(everything(sheetTemplates, patient));
  });
});

// Answers found before rows moved belong to other rows now: written there, they would stay in cells that hold no formula.
describe('a row put in, and taken out while the sheets are being calculated', () => {
  let workbook: HeadlessWorkbook;
  let before: unknown;
  beforeAll(async () => {
    workbook = await openHeadless(sheetTemplates);
    before = everything(sheetTemplates, workbook);
  });
  afterAll(() => workbook.dispose());

  it.each(Array.from({ length: 6 }, (_, index) => 10 + index * 24))('after %i milliseconds', async (delay) => {
    const putIn = workbook.insertRows('Trip sheet', tripRows.reserve, 1);
    await pause(delay);
    await workbook.removeRows('Trip sheet', tripRows.reserve, 1);
    await putIn;
    expect(everything(sheetTemplates, workbook)).toEqual(before);
  });
});
