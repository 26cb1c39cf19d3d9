// A workbook that was edited must stand as one that was opened so: entries blanked one at a time on every sheet, and put
// back. What an earlier calculation left behind would show here, above all a verdict that stays OK.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type CellResult, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { sheetTemplates } from '../../sheets-templates';
import { address } from '../../sheets-templates/build';
import { changedTemplates, everything } from './changedTemplates';

/** Entries tried on each sheet, spread evenly over it: every one would take minutes. */
const triedOnEachSheet = 6;

const edits = sheetTemplates.flatMap(({ name: sheet, cells }) => {
  const entries = cells.filter(({ style, value }) => style.startsWith('input') && value !== undefined);
  const step = Math.max(1, Math.floor(entries.length / triedOnEachSheet));
  return entries.filter((_, index) => index % step === 0).map(({ row, column, value }) => ({ place: `${sheet} ${address(row, column)}`, sheet, cell: address(row, column), value: value ?? '' }));
});

describe('one workbook, edited again and again', () => {
  let workbook: HeadlessWorkbook;
  let demo: Record<string, CellResult[][]>;
  beforeAll(async () => {
    workbook = await openHeadless(sheetTemplates);
    demo = everything(sheetTemplates, workbook);
  });
  afterAll(() => workbook.dispose());

  it('has entries to try', () => expect(edits.length).toBeGreaterThan(10));

  it.each(edits)('$place blanked and put back', async ({ sheet, cell, value }) => {
    await workbook.set(sheet, { [cell]: '' });
    const changed = changedTemplates(sheetTemplates, sheet, { [cell]: '' });
    const fresh = await openHeadless(changed);
    expect(everything(changed, workbook)).toEqual(everything(changed, fresh));
    fresh.dispose();
    await workbook.set(sheet, { [cell]: value });
    expect(everything(sheetTemplates, workbook)).toEqual(demo);
  });
});
