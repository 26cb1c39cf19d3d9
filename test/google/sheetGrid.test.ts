// A template as rectangles: which texts need the text format, formulas that must not have it, and sizes.
import { describe, expect, it } from 'vitest';
import { sheetGrid, wouldBeRead } from '../../addon/google/sheetGrid';
import type { TemplateCell, Validation } from '../../sheets-templates/template';
import { yard } from './smallTemplates';

const names = { sheets: new Map<string, string>(), ranges: new Map<string, string>() };
const nowhere = (): undefined => undefined;

describe('wouldBeRead', () => {
  it.each(['09', '2026-03-04', '1:30', '-', '=A1', '+3', '.5', '$2', '(4)', 'true', 'FALSE', 'March 3', "'quoted", '28-day', '12 %'])('%s', (text) =>
    expect(wouldBeRead(text)).toBe(true),
  );
  it.each(['Yard', 'north-east', 'avgas', 'A. Invented', 'truely', 'weight 09'])('not %s', (text) => expect(wouldBeRead(text)).toBe(false));
});

describe('sheetGrid', () => {
  it('reaches over every cell and every range it names', () => {
    const grid = sheetGrid({ ...yard, verdictRanges: ['B9:D12'] }, [], names, nowhere);
    expect([grid.rows, grid.columns]).toEqual([12, 4]);
    for (const layer of [grid.values, grid.numberFormats, grid.looks, grid.notes, grid.computed]) {
      expect(layer).toHaveLength(12);
      expect(new Set(layer.map((line) => line.length))).toEqual(new Set([4]));
    }
  });

  it('gives no formula the format of text, in which it would be shown and not computed', () => {
    const grid = sheetGrid({ ...yard, cells: [{ row: 1, column: 1, formula: '=A2', style: 'computedText', format: 'text' }] }, [], names, nowhere);
    expect(grid.numberFormats[0]?.[0]).toBe('General');
  });

  it('leaves a link to a sheet that is not there as plain text', () => {
    expect(sheetGrid(yard, [], names, nowhere).values[4]?.[0]).toBe('to the hold');
  });

  describe('text entries', () => {
    const formatOf = (cell: Partial<TemplateCell>, validations: readonly Validation[] = []): string | undefined =>
      sheetGrid({ ...yard, merges: [], validations, cells: [{ row: 2, column: 2, style: 'inputText', ...cell }] }, [], names, nowhere)
        .numberFormats[1]?.[1];
    const yes: Validation = { kind: 'list', range: 'A1:C3', choices: ['yes', 'no'], help: 'Yes or no.' };

    it('keep 09 as it is typed, blank or filled, also where a list offers texts', () => {
      for (const value of [undefined, 'north-east']) expect(formatOf(value === undefined ? {} : { value })).toBe('@');
      expect(formatOf({}, [yes])).toBe('@');
      expect(formatOf({}, [{ kind: 'listFrom', range: 'B2', source: "'Yard'!$B$4:$B$4", help: 'A gate.' }])).toBe('@');
    });

    it.each<[string, Partial<TemplateCell>, readonly Validation[]]>([
      ['a number may come', {}, [{ kind: 'number', range: 'B2:B9', minimum: 0, maximum: 9, help: 'A number.' }]],
      ['a date may come', {}, [yes, { kind: 'date', range: 'B1:B2', help: 'A day.' }]],
      ['a list offers numbers', {}, [{ ...yes, choices: ['1', '2', 'none'] }]],
      ['a number stands', { value: 4 }, []],
      ['a formula stands', { formula: '=A1' }, []],
      ['the entry is no text', { style: 'input' }, []],
    ])('have no format of text where %s', (_, cell, validations) => expect(formatOf(cell, validations)).toBe('General'));

    it('keep a format of their own', () => expect(formatOf({ format: 'date' })).toBe('yyyy-mm-dd'));
  });
});
