// A template as rectangles: which texts need the text format, formulas that must not have it, and sizes.
import { describe, expect, it } from 'vitest';
import { sheetGrid, wouldBeRead } from '../../addon/google/sheetGrid';
import { yard } from './smallTemplates';

const names = { sheets: new Map<string, string>(), ranges: new Map<string, string>() };
const nowhere = (): undefined => undefined;

describe('wouldBeRead', () => {
  it.each(['09', '2026-03-04', '1:30', '-', '=A1', '+3', '.5', '$2', '(4)', 'true', 'FALSE', 'March 3', "'quoted", '28-day', '12 %'])('%s', (text) => expect(wouldBeRead(text)).toBe(true));
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
});
