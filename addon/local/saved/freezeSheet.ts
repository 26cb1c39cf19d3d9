// Puts a copy of a sheet after it in a saved workbook, every formula of the copy turned into the value it shows. Pure. The
// copy keeps its look and its notes; it has no choices, no limits and no drawings, and is no sheet of ours.
import type { ICellData, IWorkbookData, IWorksheetData } from '@univerjs/core';
import { freeName } from '../../workbook/insertionPlan';
import { isKeyFormula } from '../../workbook/keys';
import type { CellValue, SheetSnapshot } from '../../workbook/snapshot';
import { noLongerOurs } from '../engine/sheetMark';
import { cellContent, resourceIn, withResource } from '../engine/workbookData';
import { resourceNames } from '../engine/workbookResources';
import { sheetNamesIn } from './documentState';

export interface Frozen {
  readonly data: IWorkbookData;
  /** Name of the copy. */
  readonly sheet: string;
  /** How many formulas became values, without that of the keys, which nobody sees. */
  readonly formulas: number;
}

type Cells = Record<number, Record<number, ICellData>>;

/** A text stays a text, whatever it begins with. */
const shownContent = (value: CellValue): ICellData => (typeof value === 'string' ? (value === '' ? {} : { v: value, t: 1 }) : cellContent(value));

/** What a cell looks like, without what it holds. */
const bare = ({ s, custom }: ICellData): ICellData => ({ ...(s !== undefined && { s }), ...(custom !== undefined && { custom }) });

function frozenCells(cells: Cells, { values, formulas }: SheetSnapshot): Cells {
  const frozen = structuredClone(cells);
  const put = (row: number, column: number, value: CellValue): void => {
    frozen[row] = { ...frozen[row], [column]: { ...bare(frozen[row]?.[column] ?? {}), ...shownContent(value) } };
  };
  values.forEach((line, row) =>
    line.forEach((value, column) => {
      const { v, p } = cells[row]?.[column] ?? {};
      // Into a cell that holds nothing itself, a formula elsewhere spills.
      if (value !== '' && (v ?? '') === '' && !p) put(row, column, value);
    }),
  );
  for (const { row, column } of formulas) put(row - 1, column - 1, values[row - 1]?.[column - 1] ?? '');
  return frozen;
}

function freeId(data: IWorkbookData, sheetId: string): string {
  const stem = `${sheetId}-values`;
  let free = stem;
  for (let next = 2; data.sheets[free] !== undefined; next += 1) free = `${stem}-${next}`;
  return free;
}

/** What a plugin keeps for the sheet, for its copy too. */
function alsoFor(data: IWorkbookData, resource: string, sheetId: string, copyId: string): IWorkbookData {
  const kept = resourceIn<unknown>(data, resource);
  const ofSheet = kept[sheetId];
  return ofSheet === undefined ? data : withResource(data, resource, { ...kept, [copyId]: ofSheet });
}

/** `shown` is the sheet as the grid shows it; the copy has its name and the suffix. */
export function withSheetFrozen(data: IWorkbookData, sheetId: string, shown: SheetSnapshot, suffix = ' (values)'): Frozen {
  const original = data.sheets[sheetId];
  if (original === undefined) throw new Error(`The sheet "${shown.name}" is no longer in this workbook.`);
  const name = freeName(`${shown.name}${suffix}`, ' ', new Set(sheetNamesIn(data).map((one) => one.toLowerCase())));
  const id = freeId(data, sheetId);
  const copy: Partial<IWorksheetData> = {
    ...structuredClone(original),
    id,
    name,
    custom: noLongerOurs(original.custom),
    cellData: frozenCells((original.cellData ?? {}) as Cells, shown),
  };
  const sheetOrder = data.sheetOrder.flatMap((one) => (one === sheetId ? [one, id] : [one]));
  const withCopy = { ...data, sheets: { ...data.sheets, [id]: copy }, sheetOrder };
  const looking = [resourceNames.tints, resourceNames.notes].reduce((grown, resource) => alsoFor(grown, resource, sheetId, id), withCopy);
  return { data: looking, sheet: name, formulas: shown.formulas.filter((cell) => !isKeyFormula(cell)).length };
}
