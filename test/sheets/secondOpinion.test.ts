// The built-in formulas of the sheets, worked out by a second engine too: on the demo data, and with entries gone.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { sheetTemplates } from '../../sheets-templates';
import { address } from '../../sheets-templates/build';
import type { TemplateValue } from '../../sheets-templates/template';
import { formulaCells } from './callGraph';
import { isOurs } from './formulaText';
import { answerOf, compareEngines, faults } from './secondOpinion';

const blankedSheets = sheetTemplates.filter(({ cells }) => cells.some(({ style }) => style === 'input'));

describe('what the second engine cannot judge', () => {
  it.each(faults.filter(({ formula }) => formula !== undefined))('$what, still', ({ formula = '', right }) =>
    expect(answerOf(formula, [1, 'x', 3])).not.toEqual(right),
  );

  it('is met in the sheets, each of it, and leaves more than half of the built-in formulas to it', () => {
    const texts = formulaCells(sheetTemplates).filter(({ text }) => !text.calls.some(isOurs));
    const of = (formulas: typeof texts): number => formulas.filter(({ formula }) => faults.some((fault) => fault.of.test(formula))).length;
    for (const fault of faults) expect(texts.filter(({ formula }) => fault.of.test(formula)).length, fault.what).toBeGreaterThan(0);
    expect(of(texts)).toBeLessThan(texts.length / 2);
  });
});

describe('a second engine', () => {
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    workbook = await openHeadless(sheetTemplates);
  });
  afterAll(() => workbook.dispose());

  it('answers every built-in formula alike on the demo data', () => {
    const { compared, apart } = compareEngines(sheetTemplates, workbook);
    expect(compared).toBeGreaterThan(100);
    expect(apart).toEqual([]);
  });

  it.each(blankedSheets.map((template) => ({ name: template.name, template })))(
    'still answers alike with every number entry of $name gone',
    async ({ name, template }) => {
      const inputs = template.cells.filter(({ style, value }) => style === 'input' && value !== undefined);
      const typed = (valueOf: (value: TemplateValue) => TemplateValue): Record<string, TemplateValue> =>
        Object.fromEntries(inputs.map(({ row, column, value }) => [address(row, column), valueOf(value ?? '')]));
      const gone = typed(() => '');
      await workbook.set(name, gone);
      const changed = Object.fromEntries(Object.entries(gone).map(([cell, value]) => [`${name}!${cell}`, value]));
      const { apart } = compareEngines(sheetTemplates, workbook, changed);
      await workbook.set(
        name,
        typed((value) => value),
      );
      expect(apart).toEqual([]);
    },
  );
});
