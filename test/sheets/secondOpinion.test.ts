// The built-in formulas of the sheets, worked out by a second engine too: on the demo data, and with entries gone.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { sheetTemplates } from '../../sheets-templates';
import { address } from '../../sheets-templates/build';
import type { TemplateValue } from '../../sheets-templates/template';
import { compareEngines } from './secondOpinion';

const blankedSheets = sheetTemplates.filter(({ cells }) => cells.some(({ style }) => style === 'input'));

describe('a second engine', () => {
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    workbook = await openHeadless(sheetTemplates);
  });
  afterAll(() => workbook.dispose());

  it('answers every built-in formula alike on the demo data', () => {
    const { compared, apart } = compareEngines(sheetTemplates, workbook);
    expect(compared).toBeGreaterThan(20);
    expect(apart).toEqual([]);
  });
});

describe.each(blankedSheets.map((template) => ({ name: template.name, template })))('with every number entry of $name gone', ({ name, template }) => {
  it('both engines still answer alike', async () => {
    const workbook = await openHeadless(sheetTemplates);
    const inputs = template.cells.filter(({ style, value }) => style === 'input' && value !== undefined);
    const gone: Record<string, TemplateValue> = Object.fromEntries(inputs.map(({ row, column }) => [address(row, column), '']));
    await workbook.set(name, gone);
    const changed = Object.fromEntries(Object.entries(gone).map(([cell, value]) => [`${name}!${cell}`, value]));
    expect(compareEngines(sheetTemplates, workbook, changed).apart).toEqual([]);
    workbook.dispose();
  });
});
