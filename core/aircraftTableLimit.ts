// The question turned round: how large may one input of a distance table be, for the distance still to fit the runway?
import { bracketOf, readBrackets, type AnswerColumn } from './aircraftTable';
import { CoreError } from './errors';
import { runwayMargin } from './runway';
import { onLine, type TableGrid } from './tableGrid';

export interface TableLimit {
  readonly value: number;
  /** The table ends here, so that more might fit that it does not show. */
  readonly atTableEnd: boolean;
}

export interface LimitQuestion {
  readonly grid: TableGrid;
  readonly column: AnswerColumn;
  /** Which input is asked for, from 0; its own entry in `inputs` is not read. */
  readonly input: number;
  readonly inputs: readonly number[];
  readonly available: number;
  readonly factor: number;
}

/** The distance on each line of the asked input, the others being as given; or why there is none. */
function distancesAlong({ grid, column, input, inputs }: LimitQuestion): (number | CoreError)[] {
  const brackets = inputs.map((value, index) => (index === input ? onLine(0) : bracketOf(grid, index, value)));
  return (grid.axes[input] ?? []).map((_, line) => {
    brackets[input] = onLine(line);
    try {
      return readBrackets(grid, column, brackets);
    } catch (thrown) {
      if (thrown instanceof CoreError) return thrown;
      throw thrown;
    }
  });
}

const known = (distance: number | CoreError | undefined): distance is number => typeof distance === 'number';

const fits = ({ available, factor }: LimitQuestion, distance: number): boolean => runwayMargin(available, distance, factor).verdict === 'OK';

/** The highest line that fits. A line without a distance is passed over only above the highest known one, where the table ends. */
function highestFitting(distances: readonly (number | CoreError)[], question: LimitQuestion): number {
  const { grid, input, available, factor } = question;
  let least = 0;
  for (let line = distances.length - 1, started = false; line >= 0; line -= 1) {
    const distance = distances[line];
    if (known(distance)) {
      if (fits(question, distance)) return line;
      started = true;
      least = distance;
    } else if (distance !== undefined && (started || line === 0)) throw distance;
  }
  throw new CoreError('table-none-fits', { header: grid.table.headers[input] ?? '', lowest: grid.axes[input]?.[0] ?? 0, least: least * factor, available });
}

/** A table in which less of the input needs more distance than there is has no single limit: a slip of typing, most likely. */
function mustRise(question: LimitQuestion, distances: readonly (number | CoreError)[], fitting: number): void {
  const { grid, input } = question;
  const highDistance = distances[fitting];
  distances.slice(0, fitting).forEach((lowDistance, line) => {
    if (!known(lowDistance) || !known(highDistance) || fits(question, lowDistance)) return;
    const axis = grid.axes[input] ?? [];
    throw new CoreError('table-not-rising', { header: grid.table.headers[input] ?? '', low: axis[line] ?? 0, high: axis[fitting] ?? 0, lowDistance, highDistance });
  });
}

/**
 * The largest value of one input whose factored distance fits. With the other inputs held, the distance is a chain of
 * straight lines between the rows of this one, so the answer inside a cell is exact: no search, no step to the nearest row.
 */
export function largestFitting(question: LimitQuestion): TableLimit {
  const { grid, input, available, factor } = question;
  const axis = grid.axes[input] ?? [];
  const distances = distancesAlong(question);
  const line = highestFitting(distances, question);
  mustRise(question, distances, line);
  const low = distances[line];
  const high = distances[line + 1];
  if (!known(low) || !known(high)) return { value: axis[line] ?? 0, atTableEnd: true };
  const part = Math.max(0, (available / factor - low) / (high - low));
  const start = axis[line] ?? 0;
  return { value: start + part * ((axis[line + 1] ?? 0) - start), atTableEnd: false };
}
