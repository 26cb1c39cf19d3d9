// Values between the engine and the registry, as Google Sheets would hand them over: a blank is "", a single cell is
// its value, a date cell is a Date, an error is its text, an argument left out is undefined.
import type { Nullable } from '@univerjs/core';
import type * as EngineNamespace from '@univerjs/engine-formula';
import type { CellValue } from '../../../functions/registry/cellValues';
import type { SheetResult } from '../../../functions/registry/evaluate';
import { isDatePattern } from '../../workbook/datePattern';
import { dateFromSerial, serialFromDate } from '../../workbook/serialDates';

export type EngineModule = typeof EngineNamespace;
type EngineValue = EngineNamespace.BaseValueObject;
type EngineArray = EngineNamespace.ArrayValueObject;

const datePattern = 'yyyy-mm-dd';
const errorOfBadNumber = '#NUM!' as EngineNamespace.ErrorType.NUM;

function cellOf(value: Nullable<EngineValue>): CellValue {
  if (!value || value.isNull()) return '';
  if (value.isError()) return (value as EngineNamespace.ErrorValueObject).getErrorType();
  if (value.isLambda()) return value;
  if (value.isNumber() && isDatePattern(value.getPattern())) return dateFromSerial(Number(value.getValue()));
  return value.getValue();
}

/** One argument of a call. */
export function argumentOf(value: EngineValue): unknown {
  if (value.isNull()) return undefined;
  if (!value.isArray()) return cellOf(value);
  const array = value as EngineArray;
  const rows = array.getRowCount();
  const columns = array.getColumnCount();
  if (rows === 1 && columns === 1) return cellOf(array.get(0, 0));
  return Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (_, column) => cellOf(array.get(row, column))));
}

/** Text stays text: the engine's own factory would turn the cycle "0101" into the number 101. */
function valueOf(engine: EngineModule, cell: CellValue): EngineValue {
  if (cell instanceof Date) return engine.NumberValueObject.create(serialFromDate(cell), datePattern);
  if (typeof cell === 'boolean') return engine.BooleanValueObject.create(cell);
  if (typeof cell !== 'number') return engine.StringValueObject.create(cell === undefined || cell === null ? '' : String(cell));
  return Number.isFinite(cell) ? engine.NumberValueObject.create(cell) : engine.ErrorValueObject.create(errorOfBadNumber);
}

/** What a call answers: one value, or rows that spill. */
export function resultOf(engine: EngineModule, answer: SheetResult): EngineValue {
  if (!Array.isArray(answer)) return valueOf(engine, answer);
  const rows = (answer as readonly (readonly CellValue[])[]).map((row) => row.map((cell) => valueOf(engine, cell)));
  return engine.ArrayValueObject.create({
    calculateValueList: rows,
    rowCount: rows.length,
    columnCount: rows[0]?.length ?? 0,
    unitId: '',
    sheetId: '',
    row: -1,
    column: -1,
  });
}
