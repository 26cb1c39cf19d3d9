// A workbook that was edited must stand as one that was opened so: entries blanked one after the other on every sheet, and put
// back. What an earlier calculation left behind would show here, above all a verdict that stays OK.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type CellResult, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { sheetTemplates } from '../../sheets-templates';
import { address } from '../../sheets-templates/build';
import type { TemplateValue } from '../../sheets-templates/template';
import { changedTemplates, everything } from './changedTemplates';

/** Entries tried on each sheet, spread evenly over it, gone together before the sheet is opened anew: each alone would take minutes. */
const triedOnEachSheet = 6;

interface Edit {
  readonly place: string;
  readonly sheet: string;
  readonly cell: string;
  readonly value: TemplateValue;
}
const entriesOf = ({ name: sheet, cells }: (typeof sheetTemplates)[number]): Edit[] =>
  cells
    .filter(({ style, value }) => style.startsWith('input') && value !== undefined)
    .map(({ row, column, value }) => ({ place: `${sheet} ${address(row, column)}`, sheet, cell: address(row, column), value: value ?? '' }));

/** Nothing can be told of another entry while the day or the aircraft is gone, so these are blanked alone. */
const named = sheetTemplates.flatMap(({ name, names }) => names.map(({ range }) => `${name} ${range}`));
const alone = sheetTemplates.flatMap(entriesOf).filter(({ place }) => named.includes(place));

const groups: readonly (readonly Edit[])[] = [
  ...alone.map((edit) => [edit]),
  ...sheetTemplates.flatMap((template) => {
    const entries = entriesOf(template).filter(({ place }) => !named.includes(place));
    const step = Math.max(1, Math.floor(entries.length / triedOnEachSheet));
    return entries.length === 0 ? [] : [entries.filter((_, index) => index % step === 0).slice(0, triedOnEachSheet)];
  }),
];

describe('one workbook, edited again and again', () => {
  let workbook: HeadlessWorkbook;
  let demo: Record<string, CellResult[][]>;
  beforeAll(async () => {
    workbook = await openHeadless(sheetTemplates);
    demo = everything(sheetTemplates, workbook);
  });
  afterAll(() => workbook.dispose());

  it('has entries to try', () => {
    expect(groups.flat().length).toBeGreaterThan(40);
    expect(alone.length).toBe(2);
  });

  it.each(groups.map((edits) => ({ edits, places: edits.map(({ place }) => place).join(', ') })))(
    '$places blanked and put back',
    { timeout: 180_000 },
    async ({ edits }) => {
      for (const { sheet, cell } of edits) await workbook.set(sheet, { [cell]: '' });
      const sheet = edits[0]?.sheet ?? '';
      const changed = changedTemplates(sheetTemplates, sheet, Object.fromEntries(edits.map(({ cell }) => [cell, ''])));
      const fresh = await openHeadless(changed);
      expect(everything(changed, workbook)).toEqual(everything(changed, fresh));
      fresh.dispose();
      for (const { cell, value } of edits) await workbook.set(sheet, { [cell]: value });
      expect(everything(sheetTemplates, workbook)).toEqual(demo);
    },
  );
});
