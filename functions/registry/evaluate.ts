// One call of a sheet function: count and shape the arguments, apply the blank rule, map or fold, word the errors.
import { ArgumentError } from './argumentError';
import { readValue, writeCell } from './cells';
import { isBlank, isRange, type CellValue } from './cellValues';
import type { DateHost } from './dateHost';
import type { FunctionDeclaration, ResultCell } from './declaration';
import { headingsAbove, headingsOfRows } from './headings';
import { mapRows } from './mapRanges';
import { commonSize, mustBeCell, mustBeOneColumn, readShape, type Argument } from './rangeShape';
import { NamedArgumentError, SheetError, sentence, wordError, wrongCount } from './wordError';

export type SheetResult = CellValue | CellValue[][];

const blankArgument = ({ cell, range }: Argument): boolean => (range === undefined ? isBlank(cell) : range.every((row) => row.every(isBlank)));

const isRequired = ({ parameter }: Argument): boolean => parameter.optional === undefined;

function readArguments(declaration: FunctionDeclaration, raw: readonly unknown[]): Argument[] {
  const parameters = Object.entries(declaration.parameters);
  const min = parameters.filter(([, parameter]) => parameter.optional === undefined).length;
  if (raw.length > parameters.length) throw new SheetError(sentence(declaration.name, wrongCount(min, parameters.length, raw.length)));
  return parameters.map(([name, parameter], index) => readShape(name, parameter, raw[index]));
}

/** The rows of the column arguments that hold anything, as arrays of equal length. */
function readColumns(declaration: FunctionDeclaration, given: readonly Argument[], dates: DateHost) {
  const columns = given.filter(({ parameter }) => parameter.shape === 'column').map(asColumn);
  const height = commonSize(declaration.name, columns)?.rows ?? 1;
  columns.forEach(mustBeOneColumn);
  const ranged = columns.filter(({ range }) => range !== undefined);
  const filled = (row: number): boolean => ranged.length === 0 || ranged.some(({ range }) => !isBlank(range?.[row]?.[0]));
  const rows = Array.from({ length: height }, (_, row) => row).filter(filled);
  const values = columns.map(({ name, parameter, cell, range }) => {
    const read = (row: number): unknown => {
      try {
        return readValue(name, parameter, range === undefined ? cell : range[row]?.[0], dates);
      } catch (thrown) {
        throw new SheetError(wordError(declaration.name, thrown, { row: row + 1 }));
      }
    };
    return [name, rows.map(read)] as const;
  });
  return { values, places: { rows: rows.map((row) => row + 1), height } };
}

/** A range of one row is a column lying down. */
function asColumn(argument: Argument): Argument {
  const only = argument.range?.length === 1 ? argument.range[0] : undefined;
  return only === undefined ? argument : { ...argument, range: only.map((cell) => [cell]) };
}

/** Values of a function that answers once for all its arguments. */
function computeOnce(declaration: FunctionDeclaration, given: readonly Argument[], dates: DateHost): unknown {
  const single = given.filter(({ parameter }) => parameter.shape === 'cell');
  single.forEach(mustBeCell);
  const { values: columns, places } = readColumns(declaration, given, dates);
  const others = given
    .filter(({ parameter }) => parameter.shape !== 'column')
    .map(({ name, parameter, cell, range }) => [name, readValue(name, parameter, parameter.shape === 'table' ? range : cell, dates)] as const);
  return declaration.compute(Object.fromEntries([...others, ...columns]), places);
}

function answerOnce(declaration: FunctionDeclaration, given: readonly Argument[], dates: DateHost): SheetResult {
  const answer = computeOnce(declaration, given, dates);
  if (declaration.form === 'block')
    return rectangle((answer as ResultCell[][]).map((row) => row.map((cell) => writeCell(declaration.name, cell, dates))));
  const names = Object.keys(declaration.results);
  const row = names.map((name) => writeCell(declaration.name, (answer as Record<string, ResultCell>)[name] ?? '', dates));
  return names.length === 1 ? row[0] : [row];
}

/** Hosts want every row of an array the same length. */
function rectangle(rows: CellValue[][]): CellValue[][] {
  const width = rows.reduce((widest, row) => Math.max(widest, row.length), 1);
  return rows.length === 0 ? [['']] : rows.map((row) => (row.length === width ? row : [...row, ...Array<CellValue>(width - row.length).fill('')]));
}

/** Words above the answer, where they are asked for: one for each column. */
function headingsIn(declaration: FunctionDeclaration, given: readonly Argument[], dates: DateHost): readonly string[] | undefined {
  const asked = given.find(({ parameter }) => parameter === headingsAbove || parameter === headingsOfRows);
  if (asked === undefined || blankArgument(asked)) return undefined;
  mustBeCell(asked);
  const words = readValue(asked.name, asked.parameter, asked.cell, dates) as readonly string[];
  const columns = Object.keys(declaration.results).length;
  if (words.length === columns) return words;
  throw new NamedArgumentError(asked.name, new ArgumentError(`${columns} words with semicolons between, one for each column`, String(words.length)));
}

/** Of the columns of rows the first cell is a head. */
function withoutHeads(argument: Argument, all: readonly Argument[]): Argument {
  const { range, parameter } = argument;
  if (range === undefined || parameter.shape === 'table' || !all.some((one) => one.parameter === headingsOfRows)) return argument;
  return { ...argument, range: range.length > 1 ? range.slice(1) : range.map((row) => row.map(() => '')) };
}

function answer(declaration: FunctionDeclaration, given: readonly Argument[], dates: DateHost): SheetResult {
  const mapped = declaration.form === 'map' && given.some(({ parameter, range }) => parameter.shape === 'cell' && range !== undefined);
  if (mapped) return mapRows(declaration, given, dates);
  if (given.filter(isRequired).every(blankArgument)) return blankAnswer(declaration);
  return answerOnce(declaration, given, dates);
}

/** Calls a function as a spreadsheet does. Throws SheetError with the sentence where the whole call is bad. */
export function evaluate(declaration: FunctionDeclaration, raw: readonly unknown[], dates: DateHost): SheetResult {
  try {
    const given = readArguments(declaration, raw);
    const words = headingsIn(declaration, given, dates);
    if (words === undefined) return answer(declaration, given, dates);
    const below = answer(
      declaration,
      given.map((argument) => withoutHeads(argument, given)),
      dates,
    );
    return rectangle([[...words], ...(isRange(below) ? (below as CellValue[][]) : [[below]])]);
  } catch (thrown) {
    if (thrown instanceof SheetError) throw thrown;
    throw new SheetError(wordError(declaration.name, thrown));
  }
}

function blankAnswer(declaration: FunctionDeclaration): SheetResult {
  const width = Object.keys(declaration.results).length;
  return width === 1 && declaration.form !== 'block' ? '' : [Array<CellValue>(width).fill('')];
}
