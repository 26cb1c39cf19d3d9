// What an argument of a call stands for: cells of the workbook, a value written into the call, or a formula, which is not worked out here.
import { firstYear, isCivilDate, lastYear } from '../../../core/basics/civilDate';
import type { Area } from '../../workbook/areas';
import { areaOf, tokensOf } from '../../workbook/formulaReading';
import { sameName, sheetNamed } from '../../workbook/readPlace';
import { serialFromIso } from '../../workbook/serialDates';
import type { CellValue, SheetSnapshot, WorkbookSnapshot } from '../../workbook/snapshot';
import { NotDrawn } from '../missing';

export type Given =
  | { readonly kind: 'cells'; readonly cells: readonly (readonly CellValue[])[] }
  | { readonly kind: 'value'; readonly value: CellValue }
  | { readonly kind: 'left out' }
  | { readonly kind: 'formula' };

/** The cells of an area, blank where the sheet holds none; a column without an end stops at the last filled row. */
export function cellsIn({ values }: SheetSnapshot, { row, column, lastRow, lastColumn }: Area): CellValue[][] {
  const width = values[0]?.length ?? 0;
  const [rows, columns] = [Math.max(1, Math.min(lastRow, values.length) - row + 1), Math.max(1, Math.min(lastColumn, width) - column + 1)];
  return Array.from({ length: rows }, (_, down) =>
    Array.from({ length: columns }, (__, across) => values[row - 1 + down]?.[column - 1 + across] ?? ''),
  );
}

export function sheetRead(workbook: WorkbookSnapshot, name: string): SheetSnapshot {
  const found = sheetNamed(workbook, name);
  if (found === undefined) throw new NotDrawn(`The sheet "${name}", which the selected row reads, is not there.`);
  return found;
}

function literal(text: string): CellValue | undefined {
  if (/^-?(\d+\.?\d*|\.\d+)$/.test(text)) return Number(text);
  const quoted = /^"((?:[^"]|"")*)"$/.exec(text);
  return quoted === null ? undefined : (quoted[1] ?? '').replace(/""/g, '"');
}

function named(workbook: WorkbookSnapshot, word: string): Given {
  if (/^(true|false)$/i.test(word)) return { kind: 'value', value: sameName(word, 'true') };
  const found = workbook.names.find(({ name }) => sameName(name, word));
  const area = found === undefined ? undefined : areaOf(found.range);
  if (found === undefined || area === undefined) throw new NotDrawn(`The name ${word}, which the selected row reads, is not in this workbook.`);
  return { kind: 'cells', cells: cellsIn(sheetRead(workbook, found.sheet), area) };
}

/** `home` is the sheet of the formula. */
export function givenBy(workbook: WorkbookSnapshot, home: SheetSnapshot, text: string): Given {
  if (text === '') return { kind: 'left out' };
  const value = literal(text);
  if (value !== undefined) return { kind: 'value', value };
  const [token, ...others] = tokensOf(text);
  if (token === undefined || others.length > 0) return { kind: 'formula' };
  if (token.kind === 'word') return named(workbook, token.text);
  if (token.kind !== 'reference') return { kind: 'formula' };
  const { sheet, area } = token.reference;
  if (area === undefined) throw new NotDrawn('The selected row reads cells that are no longer there (#REF!).');
  return { kind: 'cells', cells: cellsIn(sheet === undefined ? home : sheetRead(workbook, sheet), area) };
}

export const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

/** As the sheet functions read dates. */
const [firstDay, lastDay] = [serialFromIso(`${firstYear}-01-01`), serialFromIso(`${lastYear}-12-31`)];

/** A date cell or ISO text as a whole serial number, as the sheet functions read them. */
export function dayOf(value: CellValue | undefined): number | undefined {
  if (isNumber(value)) return Number.isInteger(value) && value >= firstDay && value <= lastDay ? value : undefined;
  const parts = typeof value === 'string' ? /^(\d{4})-(\d{2})-(\d{2})$/.exec(value.trim()) : null;
  if (parts === null) return undefined;
  const [iso, year, month, day] = parts;
  return isCivilDate({ year: Number(year), month: Number(month), day: Number(day) }) ? dayOf(serialFromIso(iso)) : undefined;
}
