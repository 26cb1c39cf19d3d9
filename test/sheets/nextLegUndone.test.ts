// The next leg empties the fields of a trip, and an undo brings them back: every answer must be as it was before.
import { expect, it } from 'vitest';
import { openHeadless } from '../../addon/local/engine/headless';
import { nextLeg } from '../../addon/workbook/newTrip';
import { sheetTemplates } from '../../sheets-templates';
import { address } from '../../sheets-templates/build';
import type { TemplateValue } from '../../sheets-templates/template';
import { tripRows } from '../../sheets-templates/trip/rows';
import { everything } from './changedTemplates';

it('has every answer of before when the next leg is undone, and blocks no list meanwhile', { timeout: 120_000 }, async () => {
  const workbook = await openHeadless(sheetTemplates);
  const before = everything(sheetTemplates, workbook);
  const { entries, sheet } = nextLeg(workbook.snapshot(), sheetTemplates);
  const written: Record<string, Record<string, TemplateValue>> = {};
  for (const { sheet: name, row, column, content } of entries) (written[name] ??= {})[address(row, column)] = content;
  await workbook.setSheets(written);
  const during = everything(sheetTemplates, workbook);
  expect(during[sheet]?.[tripRows.field - 1]?.slice(1, 4)).toEqual(['Tansy Ridge', '', '']);
  expect(JSON.stringify(during)).not.toContain('#SPILL!');
  while (JSON.stringify(workbook.values(sheet, `C${tripRows.field}`)) === '[[""]]') await workbook.undo();
  expect(everything(sheetTemplates, workbook)).toEqual(before);
  workbook.dispose();
});
