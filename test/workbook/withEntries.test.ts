// A template with the entries of a user: only entry cells change, and nothing that was carried is lost.
import { describe, expect, it } from 'vitest';
import { withEntries } from '../../addon/workbook/withEntries';
import { sheetTemplates } from '../../sheets-templates';
import type { SheetTemplate, TemplateCell } from '../../sheets-templates/template';
import { tinyTemplate } from '../support/tinyTemplate';

const cells: readonly TemplateCell[] = [
  { row: 1, column: 1, value: 'crates', style: 'label' },
  { row: 1, column: 2, value: 12, style: 'input', format: 'whole', note: 'How many.' },
  { row: 2, column: 2, formula: '=B1*2', style: 'input' },
  { row: 3, column: 2, value: 'north', style: 'inputText' },
  { row: 4, column: 2, formula: '=B1+1', style: 'computed' },
];
const template: SheetTemplate = { ...tinyTemplate, cells };

describe('withEntries', () => {
  it('puts each entry into its cell, formulas as formulas, and keeps looks and notes', () => {
    const filled = withEntries(template, [
      { row: 1, column: 2, content: 7 },
      { row: 2, column: 2, content: false },
      { row: 3, column: 2, content: '=A1' },
    ]);
    expect({ ...filled, cells }).toEqual(template);
    expect(filled.cells).toEqual([
      cells[0],
      { row: 1, column: 2, value: 7, style: 'input', format: 'whole', note: 'How many.' },
      { row: 2, column: 2, value: false, style: 'input' },
      { row: 3, column: 2, formula: '=A1', style: 'inputText' },
      cells[4],
    ]);
  });

  it('leaves no entry of the template behind: what was not carried is blank, and so is an empty text', () => {
    expect(withEntries(template, [{ row: 3, column: 2, content: '' }]).cells.slice(1, 4)).toEqual([
      { row: 1, column: 2, style: 'input', format: 'whole', note: 'How many.' },
      { row: 2, column: 2, style: 'input' },
      { row: 3, column: 2, style: 'inputText' },
    ]);
  });

  it('drops nothing unseen', () => {
    expect(() => withEntries(template, [{ row: 4, column: 2, content: 1 }])).toThrow(`has no entry cell B4, where an entry was to go.`);
    expect(() => withEntries(template, [{ row: 5, column: 2, content: 1 }])).toThrow('has no entry cell B5');
    expect(() => withEntries(template, [{ row: 9, column: 9, content: 1 }])).toThrow('has no entry cell I9');
    expect(() =>
      withEntries(template, [
        { row: 1, column: 2, content: 1 },
        { row: 1, column: 2, content: 2 },
      ]),
    ).toThrow('Two entries were to go into one cell');
  });

  it('goes on below the tinted rows of a list, with the look of its last row, and nowhere else', () => {
    const list: SheetTemplate = {
      ...tinyTemplate,
      rows: 9,
      cells: [
        { row: 1, column: 1, value: 'day', style: 'columnHead' },
        { row: 2, column: 1, value: 3, style: 'input', format: 'date', note: 'When.' },
        { row: 3, column: 1, style: 'input', format: 'date' },
      ],
    };
    expect(withEntries(list, [{ row: 9, column: 1, content: 7 }]).cells.slice(3)).toEqual([
      { row: 9, column: 1, style: 'input', format: 'date', value: 7 },
    ]);
    expect(() => withEntries(list, [{ row: 10, column: 1, content: 7 }])).toThrow('has no entry cell A10');
    expect(() => withEntries({ ...list, cells: list.cells.slice(0, 2) }, [{ row: 9, column: 1, content: 7 }])).toThrow('has no entry cell A9');
  });

  it('empties every entry cell of the real sheets, and no other', () => {
    for (const one of sheetTemplates) {
      const blank = withEntries(one, []);
      one.cells.forEach((cell, index) => {
        const entry = cell.style === 'input' || cell.style === 'inputText';
        expect(blank.cells[index]).toEqual(entry ? { ...cell, value: undefined, formula: undefined } : cell);
      });
    }
  });
});
