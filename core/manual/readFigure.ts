// Reads a figure: the grid or the curves first, then one further curve of a chain after the other.
import { CoreError, type CoreErrorDetails } from '../basics/errors';
import { keyOfInput, type FromColumn, type InputColumn } from './columns';
import { readCurves, type Reading } from './curves';
import type { Figure, ReadyLookup } from './figure';
import type { Bracket } from './grid';
import { bracketOf, readBrackets, rowsAt, valueAtRow, type AnswerColumn } from './table';

export interface FigureReading {
  readonly value: number;
  /** The manual's notes at the rows that were read. */
  readonly notes: readonly string[];
  /** The weight whose figure was taken for a lighter aircraft, in the unit of its column. */
  readonly heavier: number | undefined;
}

/** What each input is, in the unit of its column. */
export type InputValues = (input: InputColumn) => number;

/** The least weight of the figures, where they hold below it too. */
const least = ({ grid }: ReadyLookup, index: number): number => grid.axes[index]?.[0] ?? 0;

/** What lies beyond is told by the input of the whole table. */
function told<Answer>(figure: Figure, inputs: readonly (InputColumn | FromColumn)[], read: () => Answer): Answer {
  try {
    return read();
  } catch (thrown) {
    if (!(thrown instanceof CoreError) || thrown.code !== 'table-outside') throw thrown;
    const detail = thrown.detail as CoreErrorDetails['table-outside'];
    const input = inputs[detail.inputNumber - 1];
    if (input === undefined || input.kind === 'from')
      throw new CoreError('table-outside', { ...detail, inputNumber: 0, role: 'from', unit: figure.unit });
    const number = figure.inputs.findIndex((one) => keyOfInput(one) === keyOfInput(input)) + 1;
    throw new CoreError('table-outside', { ...detail, inputNumber: number, role: input.role, unit: input.unit });
  }
}

function readLookup({ table, grid, tree, inputs }: ReadyLookup, kind: AnswerColumn['kind'], at: readonly number[]): Reading {
  const column: AnswerColumn = { index: inputs.length, kind };
  if (tree !== undefined) return readCurves(table, tree, at, (row) => valueAtRow(grid, column, row));
  const brackets = at.map((value, input): Bracket => bracketOf(grid, input, value));
  return { value: readBrackets(grid, column, brackets), rows: rowsAt(grid, brackets) };
}

export function readFigure(figure: Figure<ReadyLookup>, kind: AnswerColumn['kind'], values: InputValues): FigureReading {
  const { base, steps } = figure;
  let heavier: number | undefined;
  const at = base.inputs.map((input, index) => {
    const value = input.kind === 'from' ? 0 : values(input);
    if (input.kind === 'from' || !input.upTo || value >= least(base, index)) return value;
    heavier = least(base, index);
    return heavier;
  });
  const first = told(figure, base.inputs, () => readLookup(base, kind, at));
  const notes = first.rows.map((row) => base.notes[row] ?? '');
  let { value } = first;
  for (const step of steps) {
    const [, input] = step.inputs;
    const asked = [value, input?.kind === 'input' ? values(input) : 0];
    const next = told(figure, step.inputs, () => readLookup(step, kind, asked));
    notes.push(...next.rows.map((row) => step.notes[row] ?? ''));
    ({ value } = next);
  }
  return { value, notes: [...new Set(notes.filter((note) => note !== ''))], heavier };
}

/** Every value at which the figure's course along an input can bend, rising. */
export function bendsAlong({ base, steps }: Figure<ReadyLookup>, key: string): number[] {
  const axes = [base, ...steps].flatMap(({ inputs, grid }) =>
    inputs.flatMap((input, index) => (input.kind === 'input' && keyOfInput(input) === key ? (grid.axes[index] ?? []) : [])),
  );
  return [...new Set(axes)].sort((one, other) => one - other);
}
