// Two mends of how the engine makes texts, for time alone; the answers are the same.
// 1. Every text is looked up by its content, and kept, for the sake of links and images in cells; what is found is used for those only.
//    A text without either is made as it is.
// 2. Joining two texts by "&" lays out two arrays for each side, of which the last is the answer. Here the answer is laid out at once.
// Both together were a quarter of the time of an edit, most of it for the clearing away.
import type { Nullable } from '@univerjs/core';
import type * as EngineNamespace from '@univerjs/engine-formula';
import type { EngineModule } from './engineValues';

type Value = EngineNamespace.BaseValueObject;
type ArrayValue = EngineNamespace.ArrayValueObject;
/** The class itself: the package hands it out in its list of functions only. */
type Concatenate = { readonly prototype: { calculate(...values: Value[]): Value } };

const rowsOf = (value: Value): number => (value.isArray() ? (value as ArrayValue).getRowCount() : 1);
const columnsOf = (value: Value): number => (value.isArray() ? (value as ArrayValue).getColumnCount() : 1);

/** A single value, row or column counts for all rows and columns of the answer; another one is #N/A beyond its end. */
function partAt(value: Value, row: number, column: number, beyond: Value): Nullable<Value> {
  if (!value.isArray()) return value;
  const [array, rows, columns] = [value as ArrayValue, rowsOf(value), columnsOf(value)];
  if (rows === 1 && columns === 1) return array.get(0, 0);
  if (rows === 1 && column < columns) return array.get(0, column);
  if (columns === 1 && row < rows) return array.get(row, 0);
  return row >= rows || column >= columns ? beyond : array.get(row, column);
}

function textOf(value: Value): string {
  if (value.isNull()) return '';
  const text = String(value.getValue());
  return value.isBoolean() ? text.toLocaleUpperCase() : text;
}

function joined(engine: EngineModule, parts: readonly Nullable<Value>[]): Value {
  let answer: Value | undefined;
  for (const part of parts) {
    // A cell that the array does not have makes nothing of what came before it, as in the engine.
    if (!part) answer = engine.NullValueObject.create();
    else if (answer?.isError()) continue;
    else if (part.isError()) answer = part;
    else answer = engine.StringValueObject.create((answer === undefined ? '' : textOf(answer)) + textOf(part));
  }
  return answer ?? engine.NullValueObject.create();
}

function join(engine: EngineModule, values: readonly Value[]): Value {
  const [rowCount, columnCount] = [Math.max(...values.map(rowsOf)), Math.max(...values.map(columnsOf))];
  const beyond = engine.ErrorValueObject.create('#N/A' as EngineNamespace.ErrorType.NA);
  const rows = Array.from({ length: rowCount }, (_, row) =>
    Array.from({ length: columnCount }, (_unused, column) =>
      joined(
        engine,
        values.map((value) => partAt(value, row, column, beyond)),
      ),
    ),
  );
  return engine.ArrayValueObject.create({ calculateValueList: rows, rowCount, columnCount, unitId: '', sheetId: '', row: -1, column: -1 });
}

export function patchTexts(engine: EngineModule): void {
  const texts = engine.StringValueObject;
  const { create } = texts;
  texts.create = function createText(value, options) {
    return options === undefined ? new texts(value) : create.call(texts, value, options);
  };
  const concatenate = engine.functionText.find(([, name]) => String(name) === 'CONCATENATE')?.[0] as unknown as Concatenate | undefined;
  if (concatenate === undefined) throw new Error('the engine has no CONCATENATE');
  concatenate.prototype.calculate = (...values) => join(engine, values);
}
