// What two windows made of one workbook, put together: cell by cell where they did not change the same one. Where they did, or where rows, columns
// or sheets were moved in either, nothing is put together, and what there is to ask comes out. Pure.
import type { ICellData, IWorkbookData, IWorksheetData } from '@univerjs/core';
import { a1FromRange } from '../engine/a1';
import { layoutOf } from './layout';
import { mergedKept } from './mergeKept';
import { canonical, entered, linesOf, ownCell, rowKept, sameContent, sheetFrame, type Cell } from './plainBook';

/** One cell, or one width, height or setting, that both have changed, each in its own way. */
export interface Clash {
  /** Tells it from every other, and from itself after another change there. */
  readonly key: string;
  /** For the user. */
  readonly words: string;
}

export interface CellFromThere {
  readonly sheetId: string;
  /** Both counted from 0. */
  readonly row: number;
  readonly column: number;
  readonly content: ICellData;
}

export type Side = 'here' | 'there';
export type Answered = ReadonlyMap<string, Side>;

export type Merged =
  | {
      readonly kind: 'merged';
      readonly data: IWorkbookData;
      /** What changes here by that. */
      readonly fromThere: readonly CellFromThere[];
      /** Whether more than cells changes here. */
      readonly beyondCells: boolean;
    }
  | { readonly kind: 'clash'; readonly clashes: readonly Clash[] }
  | { readonly kind: 'moved' };

export interface Three {
  /** What both began with. */
  readonly base: IWorkbookData;
  readonly here: IWorkbookData;
  readonly there: IWorkbookData;
}

/** Where the cells stand, in words that are the same as long as none was moved. */
const layoutIn = (data: IWorkbookData): string =>
  canonical([
    layoutOf(data),
    data.sheetOrder,
    data.sheetOrder.map((id) => {
      const { name, rowCount, columnCount, mergeData } = data.sheets[id] ?? {};
      return [name, rowCount, columnCount, mergeData ?? []];
    }),
  ]);

const keysOf = (...parts: readonly (object | undefined)[]): string[] => [...new Set(parts.flatMap((part) => Object.keys(part ?? {})))];

function shownWords(cell: ICellData): string {
  if (cell.f) return `the formula ${cell.f}`;
  if (cell.si) return 'a formula';
  const text = cell.p?.body?.dataStream.trim() ?? String(cell.v ?? '');
  return text === '' ? 'nothing' : `"${text}"`;
}

/** Collects what both changed, and answers which side holds where that is known. */
export class Clashes {
  readonly found: Clash[] = [];
  constructor(private readonly answered: Answered) {}

  settle(key: string, words: string): Side | undefined {
    const side = this.answered.get(key);
    if (side === undefined) this.found.push({ key, words });
    return side;
  }
}

interface Changed {
  readonly column: number;
  readonly here: boolean;
  readonly there: boolean;
  readonly contents: Readonly<Record<'base' | 'here' | 'there', ICellData>>;
}

function changedIn(three: Three, sheetId: string, row: number): Changed[] {
  const cells = (data: IWorkbookData): Readonly<Record<number, Cell>> => linesOf(data.sheets[sheetId])[row] ?? {};
  const [base, here, there] = [cells(three.base), cells(three.here), cells(three.there)];
  return keysOf(base, here, there).flatMap((key) => {
    const column = Number(key);
    const contents = {
      base: entered(three.base, base[column]),
      here: entered(three.here, here[column]),
      there: entered(three.there, there[column]),
    };
    const texts = { base: canonical(contents.base), here: canonical(contents.here), there: canonical(contents.there) };
    // Both the same is no difference between them.
    if (texts.here === texts.there) return [];
    return [{ column, here: texts.here !== texts.base, there: texts.there !== texts.base, contents }];
  });
}

/** Where a cell of a row was changed by both, the whole row goes one way: half a flight of each would be nobody's. */
function rowSide(changed: readonly Changed[], sheetId: string, name: string, row: number, clashes: Clashes): Side | undefined | 'each' {
  const both = changed.filter(({ here, there }) => here && there);
  if (both.length === 0) return 'each';
  const told = both.map(({ column, contents }) => {
    const cell = a1FromRange({ startRow: row, endRow: row, startColumn: column, endColumn: column });
    return `${cell} on "${name}": here ${shownWords(contents.here)}, there ${shownWords(contents.there)}`;
  });
  const others = changed.length - both.length;
  const more = others === 0 ? '' : ` (and ${others} more ${others === 1 ? 'cell' : 'cells'} of that row)`;
  const key = canonical([sheetId, row, changed.map(({ column, contents }) => [column, contents.here, contents.there])]);
  return clashes.settle(key, `${told.join('; ')}${more}`);
}

interface Writing {
  readonly three: Three;
  readonly clashes: Clashes;
  readonly fromThere: CellFromThere[];
}

/** Puts this window's changes of a row into the sheet of the other one. */
function mergeRow({ three, clashes, fromThere }: Writing, sheetId: string, row: number, into: Partial<IWorksheetData>): void {
  const changed = changedIn(three, sheetId, row);
  const side = rowSide(changed, sheetId, into.name ?? '', row, clashes);
  if (side === undefined) return;
  for (const { column, here } of changed) {
    if (side === 'each' ? here : side === 'here') {
      const lines = (into.cellData ??= {}) as Record<number, Record<number, ICellData>>;
      (lines[row] ??= {})[column] = ownCell(three.here, linesOf(three.here.sheets[sheetId])[row]?.[column]);
    } else fromThere.push({ sheetId, row, column, content: ownCell(three.there, linesOf(three.there.sheets[sheetId])[row]?.[column]) });
  }
}

/** What is neither cell nor row: the whole of it from one side. Tells whether it comes from there. */
function mergeWhole(parts: Readonly<Record<'base' | 'here' | 'there', unknown>>, words: string, clashes: Clashes): Side {
  const texts = { base: canonical(parts.base), here: canonical(parts.here), there: canonical(parts.there) };
  if (texts.here === texts.base || texts.here === texts.there) return 'there';
  if (texts.there === texts.base) return 'here';
  return clashes.settle(canonical([words, texts.here, texts.there]), words) ?? 'there';
}

type Records = Record<string, unknown>;

/** Rows, columns or the settings of a sheet, each by itself. Gives whether anything changes here. */
function mergeRecords(
  parts: Readonly<Record<'base' | 'here' | 'there', Records>>,
  into: Records,
  words: (key: string) => string,
  clashes: Clashes,
): boolean {
  let changes = false;
  for (const key of keysOf(parts.base, parts.here, parts.there)) {
    const [base, here, there] = [parts.base[key], parts.here[key], parts.there[key]];
    if (mergeWhole({ base, here, there }, words(key), clashes) === 'here') into[key] = here;
    else changes ||= !sameContent(here, there);
  }
  return changes;
}

function mergeSheet(writing: Writing, sheetId: string, into: Partial<IWorksheetData>): boolean {
  const { three, clashes } = writing;
  const sheets = { base: three.base.sheets[sheetId], here: three.here.sheets[sheetId], there: three.there.sheets[sheetId] };
  for (const row of keysOf(linesOf(sheets.base), linesOf(sheets.here), linesOf(sheets.there))) mergeRow(writing, sheetId, Number(row), into);
  const each = (part: (sheet: Partial<IWorksheetData> | undefined) => object) =>
    ({ base: part(sheets.base), here: part(sheets.here), there: part(sheets.there) }) as Record<'base' | 'here' | 'there', Records>;
  const rows = (sheet: Partial<IWorksheetData> | undefined): object =>
    Object.fromEntries(Object.entries(sheet?.rowData ?? {}).map(([row, kept]) => [row, rowKept(kept)]));
  const on = `on "${into.name ?? ''}"`;
  return [
    mergeRecords(each(rows), (into.rowData ??= {}) as Records, (row) => `the look or height of row ${Number(row) + 1} ${on}`, clashes),
    mergeRecords(
      each((sheet) => sheet?.columnData ?? {}),
      (into.columnData ??= {}) as Records,
      (column) =>
        `the width of column ${a1FromRange({ startRow: 0, endRow: 0, startColumn: Number(column), endColumn: Number(column) }).slice(0, -1)} ${on}`,
      clashes,
    ),
    mergeRecords(each(sheetFrame), into as Records, (key) => `a setting of the sheet (${key}) ${on}`, clashes),
  ].some((changes) => changes);
}

/** Of cells filled down from one formula only the first holds its text: it must have stayed where they look for it. */
function lostFormulas({ here, there }: Three, merged: IWorkbookData): boolean {
  const placeOf = (data: IWorkbookData, sheetId: string): Map<string, string> => {
    const places = new Map<string, string>();
    for (const [row, line] of Object.entries(linesOf(data.sheets[sheetId])))
      for (const [column, cell] of Object.entries(line ?? {})) if (cell?.si && cell.f) places.set(cell.si, `${row},${column},${cell.f}`);
    return places;
  };
  return merged.sheetOrder.some((sheetId) => {
    const [now, before] = [placeOf(merged, sheetId), [placeOf(here, sheetId), placeOf(there, sheetId)]];
    return Object.values(linesOf(merged.sheets[sheetId])).some((line) =>
      Object.values(line ?? {}).some(
        (cell) =>
          cell?.si &&
          !cell.f &&
          !before.some((places) => places.get(cell.si ?? '') !== undefined && places.get(cell.si ?? '') === now.get(cell.si ?? '')),
      ),
    );
  });
}

/** `answered`: which side holds where both changed the same, by the key of each clash. */
export function mergeWorkbooks(three: Three, answered: Answered = new Map()): Merged {
  const { base, here, there } = three;
  const layouts = [base, here, there].map(layoutIn);
  const isMoved = layouts.some((layout) => layout !== layouts[0]);
  if (isMoved) return { kind: 'moved' };
  const clashes = new Clashes(answered);
  const data = structuredClone(there);
  const writing: Writing = { three, clashes, fromThere: [] };
  const beyond = data.sheetOrder.map((sheetId) => mergeSheet(writing, sheetId, data.sheets[sheetId] ?? {}));
  const kept = mergedKept(three, clashes);
  if (kept === undefined || lostFormulas(three, data)) return { kind: 'moved' };
  if (clashes.found.length > 0) return { kind: 'clash', clashes: clashes.found };
  return {
    kind: 'merged',
    data: { ...data, ...kept.parts },
    fromThere: writing.fromThere,
    beyondCells: kept.changes || beyond.some((changes) => changes),
  };
}
