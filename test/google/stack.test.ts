// Sheets laid on one of them: every piece whole and apart from the others, alike rows laid out once.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sheetGrid } from '../../addon/google/sheetGrid';
import { onCarrier, stackLayer, stackOf, type Laid } from '../../addon/google/stack';
import type { SheetTemplate, TemplateCell } from '../../sheets-templates/template';
import { yard } from './smallTemplates';

const names = { sheets: new Map<string, string>(), ranges: new Map<string, string>() };

function laid(cells: readonly TemplateCell[], more: Partial<SheetTemplate> = {}): Laid {
  const template: SheetTemplate = { ...yard, cells, merges: [], validations: [], names: [], ...more };
  return { template, grid: sheetGrid(template, [], names, () => undefined) };
}

/** Every cell with a note of its own, so that no row is like another. */
const block = (mark: string, rows: number, columns: number): Laid =>
  laid(
    Array.from({ length: rows * columns }, (_, index) => ({
      row: Math.floor(index / columns) + 1,
      column: (index % columns) + 1,
      style: 'label',
      note: `${mark} ${index}`,
    })),
  );

/** A head and so many rows of entries that are alike. */
const log = (rows: number, columns: number, more: Partial<SheetTemplate> = {}): Laid =>
  laid(
    Array.from({ length: (rows + 1) * columns }, (_, index) => ({
      row: Math.floor(index / columns) + 1,
      column: (index % columns) + 1,
      style: index < columns ? 'columnHead' : 'inputText',
    })),
    more,
  );

describe('stackOf', () => {
  it('lays out each piece whole, with air between, the tallest at the top left corner', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 6 })), { minLength: 1, maxLength: 7 }), (sizes) => {
        const all = sizes.map(([rows, columns], index) => block(String(index), rows, columns));
        const stack = stackOf(all, 8);
        const notes = stackLayer(stack, '', (grid) => grid.notes);
        expect([notes.length, new Set(notes.map((line) => line.length))]).toEqual([stack.rows, new Set([stack.columns])]);
        expect(notes.flat().filter((note) => note !== '')).toHaveLength(sizes.reduce((sum, [rows, columns]) => sum + rows * columns, 0));
        stack.pieces.forEach(({ row, column, grid }, index) => {
          expect(notes.slice(row - 1, row - 1 + grid.rows).map((line) => line.slice(column - 1, column - 1 + grid.columns))).toEqual(
            all[index]?.grid.notes,
          );
          const around = [notes[row - 2], notes[row - 1 + grid.rows]].flatMap(
            (line) => line?.slice(Math.max(0, column - 2), column + grid.columns) ?? [],
          );
          const beside = notes.slice(row - 1, row - 1 + grid.rows).flatMap((line) => [line[column - 2] ?? '', line[column - 1 + grid.columns] ?? '']);
          expect(new Set([...around, ...beside, ''])).toEqual(new Set(['']));
        });
        expect(stack.pieces[stack.carrier]).toMatchObject({ row: 1, column: 1, height: Math.max(...sizes.map(([rows]) => rows)) });
      }),
    );
  });

  it('lays out rows that are alike once, but all rows of the carrier', () => {
    const stack = stackOf([block('tall', 50, 2), log(1000, 3)], 26);
    expect([stack.carrier, stack.rows, stack.pieces[1]?.height]).toEqual([0, 53, 2]);
    expect(stackOf([log(1000, 3)], 26)).toMatchObject({ carrier: 0, rows: 1001, columns: 3, pieces: [{ height: 1001 }] });
  });

  it.each([
    ['a format', laid([...log(1000, 3).template.cells, { row: 900, column: 1, style: 'inputText', format: 'date' }])],
    ['a look', laid([...log(1000, 3).template.cells, { row: 900, column: 1, style: 'input' }])],
    ['a merged range', log(1000, 3, { merges: ['A900:B900'] })],
  ])('never passes over %s', (_, piece) => {
    const height = stackOf([block('tall', 950, 2), piece], 26).pieces[1]?.height;
    expect(height).toBe(1001);
  });

  it('does not cut where few cells are spared', () => expect(stackOf([block('tall', 90, 2), log(60, 9)], 26).pieces[1]?.height).toBe(61));
});

describe('onCarrier', () => {
  const [, piece] = stackOf([block('tall', 50, 2), log(1000, 3)], 26).pieces;
  it('moves a range with its piece, as far as that is laid out', () => {
    if (piece === undefined) throw new Error('no piece');
    expect(onCarrier(piece, 'B2:C900')).toEqual([{ row: 53, column: 2, lastRow: 53, lastColumn: 3 }]);
    expect(onCarrier(piece, 'B3:C900')).toEqual([]);
  });
});
