// A table that is arranged once for each figure asked of it, however many rows ask; and its answer, or why it has none.
import { CoreError } from '../basics/errors';
import { keyOfInput, type TypedTable } from './columns';
import { arranged, figureOf, type Figure, type InputsAsked, type ReadyLookup } from './figure';
import { readFigure, type FigureReading, type InputValues } from './readFigure';
import type { AnswerColumn } from './table';

export type ReadyFigure = Figure<ReadyLookup>;

export interface AircraftTable {
  readonly typed: TypedTable;
  readonly figure: (wanted: string, asked: InputsAsked) => ReadyFigure;
}

export function openTable(typed: TypedTable): AircraftTable {
  const figures = new Map<string, ReadyFigure | CoreError>();
  const made = (wanted: string, asked: InputsAsked): ReadyFigure | CoreError => {
    try {
      return arranged(figureOf(typed, wanted, asked));
    } catch (thrown) {
      if (thrown instanceof CoreError) return thrown;
      throw thrown;
    }
  };
  return {
    typed,
    figure: (wanted, asked) => {
      const key = `${asked} ${wanted}`;
      const figure = figures.get(key) ?? made(wanted, asked);
      figures.set(key, figure);
      if (figure instanceof CoreError) throw figure;
      return figure;
    },
  };
}

/** The inputs in the order of the table's columns; those at the end on which nothing depends may be left out. */
export function inOrder(figure: ReadyFigure, given: readonly number[]): InputValues {
  const keys = figure.inputs.map(keyOfInput);
  const needed = [figure.base, ...figure.steps].flatMap(({ inputs }) =>
    inputs.flatMap((input) => (input.kind === 'input' ? [keys.indexOf(keyOfInput(input))] : [])),
  );
  if (given.length > keys.length || given.length <= Math.max(...needed))
    throw new CoreError('table-inputs-differ', { inputs: figure.inputs.map(({ header }) => header), count: given.length });
  return (input) => given[keys.indexOf(keyOfInput(input))] ?? 0;
}

/** What a table does not cover leaves a case unknown; any other fault of the table is its owner's to mend. */
export const leavesUnknown: readonly string[] = ['table-outside', 'table-missing-point', 'table-bad-cell', 'table-no-input'];

/** The answer, or why there is none for this case. */
export function readOrReason(figure: ReadyFigure, kind: AnswerColumn['kind'], values: InputValues): FigureReading | CoreError {
  try {
    return readFigure(figure, kind, values);
  } catch (thrown) {
    if (thrown instanceof CoreError && leavesUnknown.includes(thrown.code)) return thrown;
    throw thrown;
  }
}
