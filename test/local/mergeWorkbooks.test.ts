// Two windows on one workbook: what each entered is put together, or asked about, and never lost.
import fc from 'fast-check';
import type { ICellData, IWorkbookData } from '@univerjs/core';
import { describe, expect, it } from 'vitest';
import { workbookData } from '../../addon/local/engine/workbookData';
import { withLayout } from '../../addon/local/saved/layout';
import { mergeWorkbooks, type Merged } from '../../addon/local/saved/mergeWorkbooks';
import { tinyTemplate } from '../support/tinyTemplate';

const first = workbookData([tinyTemplate]);
const [sheetId = ''] = first.sheetOrder;
type Lines = Record<number, Record<number, ICellData>>;
const linesOf = (data: IWorkbookData): Lines => (data.sheets[sheetId]?.cellData ?? {}) as Lines;

/** As the grid keeps what is typed: the look stays. */
function typed(data: IWorkbookData, row: number, column: number, content: ICellData): IWorkbookData {
  const after = structuredClone(data);
  const line = (linesOf(after)[row] ??= {});
  const { s } = line[column] ?? {};
  line[column] = { ...content, ...(s !== undefined && { s }) };
  return after;
}
const text = (v: string): ICellData => ({ v, t: 1 });
const at = (data: IWorkbookData, row: number, column: number): unknown => linesOf(data)[row]?.[column]?.v;
const mergedOf = (merged: Merged): IWorkbookData => {
  if (merged.kind !== 'merged') throw new Error(`not merged: ${JSON.stringify(merged)}`);
  return merged.data;
};
const resource = (data: IWorkbookData, name: string, content: object): IWorkbookData => ({
  ...data,
  resources: [...(data.resources ?? []).filter((one) => one.name !== name), { name, data: JSON.stringify(content) }],
});

describe('two windows on one workbook', () => {
  it('keep what each entered where they did not touch the same cell', () => {
    const [here, there] = [typed(first, 29, 1, text('mine')), typed(first, 29, 2, text('theirs'))];
    const merged = mergeWorkbooks({ base: first, here, there });
    expect([at(mergedOf(merged), 29, 1), at(mergedOf(merged), 29, 2)]).toEqual(['mine', 'theirs']);
    expect(merged).toMatchObject({ beyondCells: false, fromThere: [{ row: 29, column: 2, content: { v: 'theirs' } }] });
  });

  it('ask where both changed one cell, with both contents, and take the whole row from the side that is named', () => {
    const here = typed(typed(first, 29, 1, text('mine')), 29, 3, text('mine too'));
    const there = typed(typed(first, 29, 1, text('theirs')), 29, 4, text('theirs too'));
    const merged = mergeWorkbooks({ base: first, here, there });
    if (merged.kind !== 'clash') throw new Error('no question');
    expect(merged.clashes.map(({ words }) => words)).toEqual(['B30 on "Tiny sheet": here "mine", there "theirs" (and 2 more cells of that row)']);
    const settled = (side: 'here' | 'there'): unknown[] => {
      const after = mergedOf(mergeWorkbooks({ base: first, here, there }, new Map(merged.clashes.map(({ key }) => [key, side]))));
      return [1, 3, 4].map((column) => at(after, 29, column) ?? '');
    };
    expect(settled('here')).toEqual(['mine', 'mine too', '']);
    expect(settled('there')).toEqual(['theirs', '', 'theirs too']);
  });

  it('ask anew where the other side has changed since the answer', () => {
    const here = typed(first, 29, 1, text('mine'));
    const question = mergeWorkbooks({ base: first, here, there: typed(first, 29, 1, text('theirs')) });
    const answers = new Map(question.kind === 'clash' ? question.clashes.map(({ key }) => [key, 'here'] as const) : []);
    expect(mergeWorkbooks({ base: first, here, there: typed(first, 29, 1, text('newer')) }, answers).kind).toBe('clash');
  });

  it('see no clash in the same entry, nor in answers of formulas and names of looks that each window gives anew', () => {
    const here = typed(typed(first, 29, 1, text('same')), 3, 1, { f: '=DENSITY_ALTITUDE(B2,B3)', v: 5 });
    const there = typed(typed(first, 29, 1, text('same')), 3, 1, { f: '=DENSITY_ALTITUDE(B2,B3)', v: 7 });
    const renamed = { ...there, styles: { ...there.styles, fresh: there.styles['input'] ?? {} } };
    expect(mergeWorkbooks({ base: first, here, there: renamed }).kind).toBe('merged');
  });

  it('carry a look with the cell, whatever it is called in the other window', () => {
    const styled = structuredClone(first);
    (linesOf(styled)[29] ??= {})[1] = { v: 'bold', t: 1, s: 'a-name-of-here' };
    const here = { ...styled, styles: { ...styled.styles, 'a-name-of-here': { bl: 1 as const } } };
    const there = { ...typed(first, 30, 1, text('theirs')), styles: { ...first.styles, 'a-name-of-here': { it: 1 as const } } };
    expect(linesOf(mergedOf(mergeWorkbooks({ base: first, here, there })))[29]?.[1]?.s).toEqual({ bl: 1 });
  });

  it.each<readonly [string, (data: IWorkbookData) => IWorkbookData]>([
    ['rows were put in', (data) => ({ ...data, sheets: { [sheetId]: { ...data.sheets[sheetId], rowCount: 61 } } })],
    ['a sheet was added', (data) => ({ ...data, sheetOrder: [...data.sheetOrder, 'x'], sheets: { ...data.sheets, x: { id: 'x', name: 'X' } } })],
    ['a sheet was renamed', (data) => ({ ...data, sheets: { [sheetId]: { ...data.sheets[sheetId], name: 'Other' } } })],
    ['as many rows were put in as taken out', (data) => withLayout(data, 'another')],
  ])('put nothing together where %s in either', (_, change) => {
    const [mine, theirs] = [typed(first, 29, 1, text('mine')), typed(first, 29, 2, text('theirs'))];
    expect(mergeWorkbooks({ base: first, here: change(mine), there: theirs }).kind).toBe('moved');
    expect(mergeWorkbooks({ base: first, here: mine, there: change(theirs) }).kind).toBe('moved');
  });

  it('put notes, widths and rules of colour together, and ask where both changed the same', () => {
    const notes = (row: number, words: string) => (data: IWorkbookData) =>
      resource(data, 'SHEET_NOTE_PLUGIN', { [sheetId]: { [row]: { 1: { note: words } } } });
    const base = notes(2, 'old')(first);
    const here = resource(base, 'SHEET_NOTE_PLUGIN', { [sheetId]: { 2: { 1: { note: 'old' } }, 5: { 1: { note: 'mine' } } } });
    const there = resource(base, 'SHEET_NOTE_PLUGIN', { [sheetId]: { 2: { 1: { note: 'theirs' } } } });
    const merged = mergeWorkbooks({ base, here, there });
    expect(merged).toMatchObject({ kind: 'merged', beyondCells: true });
    const kept = mergedOf(merged).resources?.find(({ name }) => name === 'SHEET_NOTE_PLUGIN')?.data ?? '{}';
    expect(JSON.parse(kept)).toEqual({ [sheetId]: { 2: { 1: { note: 'theirs' } }, 5: { 1: { note: 'mine' } } } });
    expect(mergeWorkbooks({ base, here: notes(2, 'mine')(base), there }).kind).toBe('clash');
    const wide = (w: number): IWorkbookData => ({ ...first, sheets: { [sheetId]: { ...first.sheets[sheetId], columnData: { 3: { w } } } } });
    expect(mergeWorkbooks({ base: first, here: wide(100), there: wide(200) })).toMatchObject({
      kind: 'clash',
      clashes: [{ words: 'the width of column D on "Tiny sheet"' }],
    });
  });
});

describe('random edits in two windows', () => {
  const edit = fc.record({
    row: fc.integer({ min: 28, max: 34 }),
    column: fc.integer({ min: 0, max: 4 }),
    content: fc.oneof(
      fc.constantFrom<ICellData>({ v: null }, { v: 1, t: 2 }, { f: '=1+1' }, { v: 0, t: 3 }),
      fc.string({ minLength: 1, maxLength: 2 }).map(text),
    ),
  });
  const edited = (edits: readonly { row: number; column: number; content: ICellData }[], data: IWorkbookData): IWorkbookData =>
    edits.reduce((grown, { row, column, content }) => typed(grown, row, column, content), data);
  const shown = (data: IWorkbookData): Record<string, unknown> => {
    const cells: Record<string, unknown> = {};
    for (const [row, line] of Object.entries(linesOf(data)))
      for (const [column, { f, v }] of Object.entries(line)) if (f || (v !== null && v !== undefined)) cells[`${row},${column}`] = f ?? v;
    return cells;
  };

  it('come out as both sets, or as a question that names every cell on which they differ', () => {
    const [outcomes, runs] = [{ merged: 0, clash: 0, moved: 0 }, 500];
    fc.assert(
      fc.property(fc.array(edit, { maxLength: 4 }), fc.array(edit, { maxLength: 6 }), fc.array(edit, { maxLength: 6 }), (before, mine, theirs) => {
        const base = edited(before, first);
        const [here, there] = [edited(mine, base), edited(theirs, base)];
        const merged = mergeWorkbooks({ base, here, there });
        outcomes[merged.kind] += 1;
        const [were, mineNow, theirsNow] = [shown(base), shown(here), shown(there)];
        const places = [...new Set([were, mineNow, theirsNow].flatMap((cells) => Object.keys(cells)))];
        const touched = (cells: Record<string, unknown>, place: string): boolean => cells[place] !== were[place];
        const differing = places.filter((place) => touched(mineNow, place) && touched(theirsNow, place) && mineNow[place] !== theirsNow[place]);
        if (merged.kind === 'merged') {
          expect(differing).toEqual([]);
          const both = Object.fromEntries(
            places
              .map((place): [string, unknown] => [place, touched(mineNow, place) ? mineNow[place] : theirsNow[place]])
              .filter(([, v]) => v !== undefined),
          );
          expect(shown(merged.data)).toEqual(both);
          // Written here too, this window shows what is kept.
          const after = edited(
            merged.fromThere.map(({ row, column, content }) => ({ row, column, content })),
            here,
          );
          expect(shown(after)).toEqual(both);
        } else if (merged.kind === 'clash') {
          const rows = new Set(differing.map((place) => place.split(',')[0]));
          expect(merged.clashes.length).toBe(rows.size);
          const words = merged.clashes.map((one) => one.words).join(' ');
          for (const place of differing) {
            const [row = '', column = ''] = place.split(',');
            expect(words).toContain(`${'ABCDEFGH'[Number(column)] ?? ''}${Number(row) + 1} on "Tiny sheet"`);
          }
        } else expect.unreachable('nothing was moved');
      }),
      { numRuns: runs },
    );
    expect(outcomes.merged).toBeGreaterThan(runs / 10);
    expect(outcomes.clash).toBeGreaterThan(runs / 10);
  });
});
