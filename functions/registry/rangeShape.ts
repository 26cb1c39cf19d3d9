// The shapes of arguments: what is a cell, what is a range, and whether ranges agree in size.
import { ArgumentError } from './argumentError';
import { inWords, isCellValue, isRange, notACellValue, sizeInWords, type CellValue, type RangeValue } from './cellValues';
import type { Parameter } from './declaration';
import { NamedArgumentError, SheetError, sentence, wrongSize } from './wordError';

export interface Argument {
  readonly name: string;
  readonly parameter: Parameter<unknown>;
  /** A cell, or a rectangular range of more than one cell (a table argument is always a range). */
  readonly cell: CellValue;
  readonly range: RangeValue | undefined;
}

function rectangular(name: string, parameter: Parameter<unknown>, raw: readonly unknown[]): RangeValue {
  const width = isRange(raw[0]) ? raw[0].length : 0;
  const uneven = raw.findIndex((row) => !isRange(row) || row.length !== width);
  if (uneven >= 0) {
    const got = isRange(raw[uneven]) ? `rows of ${width} and ${raw[uneven].length} cells` : inWords(raw[uneven]);
    throw new NamedArgumentError(name, new ArgumentError(`${parameter.mustBe}, in a rectangular range`, got, uneven + 1));
  }
  return withCellsOnly(raw as RangeValue);
}

/** What is no value of a cell spoils only its own cell, and is known for an error by every reader. Ranges without one stay as they are. */
const withCellsOnly = (range: RangeValue): RangeValue =>
  range.every((row) => row.every(isCellValue)) ? range : range.map((row) => row.map((cell) => (isCellValue(cell) ? cell : notACellValue)));

/** One cell given as a range of one by one is a cell: hosts differ in which of the two they send. */
export function readShape(name: string, parameter: Parameter<unknown>, raw: unknown): Argument {
  if (!isRange(raw)) {
    const cell = isCellValue(raw) ? raw : notACellValue;
    return { name, parameter, cell, range: parameter.shape === 'table' ? [[cell]] : undefined };
  }
  const range = rectangular(name, parameter, raw);
  const cells = range.length * (range[0]?.length ?? 0);
  const single = cells <= 1 && parameter.shape !== 'table';
  return { name, parameter, cell: range[0]?.[0], range: single ? undefined : range };
}

export interface Size {
  readonly rows: number;
  readonly columns: number;
}

const sizeOf = (range: RangeValue): Size => ({ rows: range.length, columns: range[0]?.length ?? 0 });

/** The one size of all given ranges, or undefined where all are cells. */
export function commonSize(functionName: string, given: readonly Argument[]): Size | undefined {
  const ranged = given.filter(({ range }) => range !== undefined);
  const [first] = ranged;
  if (first?.range === undefined) return undefined;
  const size = sizeOf(first.range);
  for (const { name, range } of ranged) {
    const other = sizeOf(range ?? []);
    if (other.rows !== size.rows || other.columns !== size.columns) {
      throw new SheetError(sentence(functionName, wrongSize(first.name, size.rows, size.columns, name, other.rows, other.columns)));
    }
  }
  return size;
}

export function mustBeCell(argument: Argument): void {
  if (argument.range === undefined) return;
  const { rows, columns } = sizeOf(argument.range);
  throw new NamedArgumentError(
    argument.name,
    new ArgumentError(`${argument.parameter.mustBe}, in a single cell`, `a range of ${sizeInWords(rows, columns)}`),
  );
}

export function mustBeOneColumn(argument: Argument): void {
  const size = argument.range === undefined ? undefined : sizeOf(argument.range);
  if (size === undefined || size.columns === 1) return;
  throw new NamedArgumentError(
    argument.name,
    new ArgumentError(`${argument.parameter.mustBe}, in one column`, `a range of ${sizeInWords(size.rows, size.columns)}`),
  );
}
