// The question turned round: how large may one input of a distance table be, for the distance still to fit the runway?
import { CoreError } from '../basics/errors';
import { runwayMargin } from './margin';

export interface TableLimit {
  readonly value: number;
  /** The table ends here, so that more might fit that it does not show. */
  readonly atTableEnd: boolean;
}

export interface LimitQuestion {
  /** What is asked for, in the words of the table. */
  readonly header: string;
  /** Every value of it at which the distance can bend, rising. */
  readonly values: readonly number[];
  /** The distance at a value, the other inputs as given. Throws where there is none. */
  readonly distanceAt: (value: number) => number;
  /** Between two neighbouring values the distance is a straight line; else it only rises somehow. */
  readonly straight: boolean;
  readonly available: number;
  readonly factor: number;
}

/** The distance at each value; or why there is none. */
function distancesAlong({ values, distanceAt }: LimitQuestion): (number | CoreError)[] {
  return values.map((value) => {
    try {
      return distanceAt(value);
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
  const { header, values, available, factor } = question;
  let least = 0;
  for (let line = distances.length - 1, started = false; line >= 0; line -= 1) {
    const distance = distances[line];
    if (known(distance)) {
      if (fits(question, distance)) return line;
      started = true;
      least = distance;
    } else if (distance !== undefined && (started || line === 0)) throw distance;
  }
  throw new CoreError('table-none-fits', { header, lowest: values[0] ?? 0, least: least * factor, available });
}

/** A table in which less of the input needs more distance than there is has no single limit: a typing error, most likely. */
function mustRise(question: LimitQuestion, distances: readonly (number | CoreError)[], fitting: number): void {
  const { header, values } = question;
  const highDistance = distances[fitting];
  distances.slice(0, fitting).forEach((lowDistance, line) => {
    if (!known(lowDistance) || !known(highDistance) || fits(question, lowDistance)) return;
    throw new CoreError('table-not-rising', { header, low: values[line] ?? 0, high: values[fitting] ?? 0, lowDistance, highDistance });
  });
}

/** Halvings after which the two ends are one number. */
const halvings = 60;

/** Where the distance is no straight line: the highest value known to fit, by halving. */
function byHalving(question: LimitQuestion, low: number, high: number): number {
  let [fitting, beyond] = [low, high];
  for (let step = 0; step < halvings; step += 1) {
    const middle = (fitting + beyond) / 2;
    if (fits(question, question.distanceAt(middle))) fitting = middle;
    else beyond = middle;
  }
  return fitting;
}

/**
 * The largest value of one input whose factored distance fits. With the other inputs held, the distance is a chain of
 * straight lines between the rows of this one, so the answer inside a cell is exact: no search, no step to the nearest row.
 */
export function largestFitting(question: LimitQuestion): TableLimit {
  const { values, available, factor } = question;
  const distances = distancesAlong(question);
  const line = highestFitting(distances, question);
  mustRise(question, distances, line);
  const [low, high] = [distances[line], distances[line + 1]];
  const [start, end] = [values[line] ?? 0, values[line + 1] ?? 0];
  if (!known(low) || !known(high)) return { value: start, atTableEnd: true };
  if (!question.straight) return { value: byHalving(question, start, end), atTableEnd: false };
  const part = Math.max(0, (available / factor - low) / (high - low));
  return { value: start + part * (end - start), atTableEnd: false };
}
