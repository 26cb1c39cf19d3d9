// The grid's workbook as plain data, the same as from any host. What the grid saves lacks the cells into which a formula
// spills; the engine keeps those, and they are laid over.
import type { ICellData, IWorkbookData, IWorksheetData, Nullable } from '@univerjs/core';
import type { CellPlace, CellValue, FormulaCell, NameSnapshot, SheetSnapshot, WorkbookSnapshot } from '../../workbook/snapshot';
import { readSheetReference } from './a1';
import { markOf } from './sheetMark';
import { tintsIn, type TintRule } from './tintRules';
import { resourceIn } from './workbookData';
import { resourceNames, type NameRecord } from './workbookResources';

type Cells = Readonly<Record<number, Readonly<Record<number, Nullable<ICellData>>> | undefined>>;

export interface EngineParts {
  /** By sheet identifier; row and column counted from 0. */
  readonly spilled: Readonly<Record<string, Nullable<Cells>>>;
  /** A formula as it reads so many columns and rows away. */
  readonly moveFormula: (formula: string, columns: number, rows: number) => string;
}

const boolean = 3;
const number = 2;

export function valueOf({ v, t, p }: ICellData): CellValue {
  // A cell whose letters differ in look holds its text as a document, which ends with a line break.
  if (v === undefined || v === null) return p?.body?.dataStream.replace(/\r\n$/, '').replace(/\r/g, '\n') ?? '';
  if (t === boolean) return Number(v) === 1 || v === true;
  return t === number && typeof v === 'string' && v.trim() !== '' && Number.isFinite(Number(v)) ? Number(v) : v;
}

/** As the grid shows a spill: its empty cells as 0. */
function spilledValue(raw: Nullable<ICellData>, spilled: ICellData): CellValue {
  if (raw && raw.t === number && typeof raw.v === 'number') return raw.v;
  return (spilled.v ?? undefined) === undefined && (spilled.t ?? undefined) === undefined ? 0 : valueOf(spilled);
}

function eachCell(cells: Cells, visit: (row: number, column: number, content: ICellData) => void): void {
  for (const [row, ofRow] of Object.entries(cells)) {
    for (const [column, content] of Object.entries(ofRow ?? {})) if (content) visit(Number(row), Number(column), content);
  }
}

/** Cells filled down from one formula keep its identifier only, save the first. */
function formulasIn(cells: Cells, moveFormula: EngineParts['moveFormula']): FormulaCell[] {
  const shared = new Map<string, FormulaCell>();
  const found: FormulaCell[] = [];
  eachCell(cells, (row, column, { f, si }) => {
    if (!f?.startsWith('=')) return;
    const cell = { row: row + 1, column: column + 1, text: f };
    found.push(cell);
    if (si) shared.set(si, cell);
  });
  eachCell(cells, (row, column, { f, si }) => {
    const first = f ? undefined : shared.get(si ?? '');
    if (first !== undefined)
      found.push({ row: row + 1, column: column + 1, text: moveFormula(first.text, column + 1 - first.column, row + 1 - first.row) });
  });
  return found.sort((one, other) => one.row - other.row || one.column - other.column);
}

function valuesIn(cells: Cells, spilled: Cells, formulas: readonly FormulaCell[]): CellValue[][] {
  const contents: (CellPlace & { readonly value: CellValue })[] = [];
  eachCell(cells, (row, column, content) => contents.push({ row: row + 1, column: column + 1, value: valueOf(content) }));
  eachCell(spilled, (row, column, content) =>
    contents.push({ row: row + 1, column: column + 1, value: spilledValue(cells[row]?.[column], content) }),
  );
  const filled: readonly CellPlace[] = [...formulas, ...contents.filter(({ value }) => value !== '')];
  const height = filled.reduce((most, { row }) => Math.max(most, row), 0);
  const width = filled.reduce((most, { column }) => Math.max(most, column), 0);
  const values = Array.from({ length: height }, () => Array<CellValue>(width).fill(''));
  for (const { row, column, value } of contents) {
    const line = values[row - 1];
    if (line !== undefined && column <= width) line[column - 1] = value;
  }
  return values;
}

export function sheetSnapshot(
  sheet: Partial<IWorksheetData>,
  rangeNames: ReadonlySet<string>,
  { spilled, moveFormula }: EngineParts,
  tints?: readonly TintRule[],
): SheetSnapshot {
  const cells = (sheet.cellData ?? {}) as Cells;
  const mark = markOf(sheet, rangeNames);
  const formulas = formulasIn(cells, moveFormula);
  return {
    name: sheet.name ?? '',
    ...(mark !== undefined && { mark }),
    values: valuesIn(cells, spilled[sheet.id ?? ''] || {}, formulas),
    formulas,
    ...(tints !== undefined && { tints: tintsIn(tints) }),
  };
}

export const nameRecords = (data: IWorkbookData): NameRecord[] => Object.values(resourceIn<NameRecord>(data, resourceNames.names));

export const rangeNamesIn = (data: IWorkbookData): ReadonlySet<string> => new Set(nameRecords(data).map(({ name }) => name));

/** Names of ranges that a user can see; those of formulas, and of ranges that are gone, are left out. */
export function namesIn(data: IWorkbookData): NameSnapshot[] {
  return nameRecords(data).flatMap(({ name, formulaOrRefString, hidden }) => {
    const reference = hidden === true ? undefined : readSheetReference(formulaOrRefString);
    if (reference === undefined || !/^\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?$/i.test(reference.range)) return [];
    return [{ name, sheet: reference.sheet, range: reference.range.replace(/\$/g, '') }];
  });
}

/** `sheetIds` are the sheets wanted, in their order. */
export function workbookSnapshot(
  data: IWorkbookData,
  sheetIds: readonly string[],
  parts: EngineParts,
  selected: WorkbookSnapshot['selected'],
): WorkbookSnapshot {
  const rangeNames = rangeNamesIn(data);
  // Without a screen the grid has no rules of colour.
  const tints = data.resources?.some(({ name }) => name === resourceNames.tints)
    ? resourceIn<readonly TintRule[] | undefined>(data, resourceNames.tints)
    : undefined;
  const sheets = sheetIds.flatMap((id) => {
    const sheet = data.sheets[id];
    return sheet === undefined ? [] : [sheetSnapshot(sheet, rangeNames, parts, tints && (tints[id] ?? []))];
  });
  return { sheets, names: namesIn(data), selected };
}
