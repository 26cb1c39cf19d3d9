// What else this runway would carry today: the greatest weight, and the highest temperature, at which it still fits.
import { columnOf, leavesUnknown } from './aircraftTable';
import { largestFitting, type TableLimit } from './aircraftTableLimit';
import { CoreError } from './errors';
import { runwayBrief, type RunwayBrief, type RunwayCase } from './runwayBrief';

export interface RunwayLimits {
  readonly brief: RunwayBrief;
  /** Or why there is none. */
  readonly weight: TableLimit | CoreError;
  readonly temperatureCelsius: TableLimit | CoreError;
}

/** No value of the table fits, or the table cannot say: both are answers here. */
const answered: readonly string[] = [...leavesUnknown, 'table-none-fits', 'table-not-rising'];

function limitOr(solve: () => TableLimit): TableLimit | CoreError {
  try {
    return solve();
  } catch (thrown) {
    if (thrown instanceof CoreError && answered.includes(thrown.code)) return thrown;
    throw thrown;
  }
}

/** Wind, corrections and factor as in the brief; one input at a time is let go, the others stay. */
export function runwayLimits(runwayCase: RunwayCase): RunwayLimits {
  const brief = runwayBrief(runwayCase);
  const factor = brief.corrections.reduce((product, { percent }) => product * (1 + percent / 100), runwayCase.factor);
  const inputs = [runwayCase.weight, brief.pressureAltitudeFeet, runwayCase.temperatureCelsius];
  const along = (input: number): TableLimit | CoreError =>
    limitOr(() => {
      const grid = runwayCase.table.withInputs(3);
      return largestFitting({ grid, column: columnOf(grid, runwayCase.wanted, 'distance'), input, inputs, available: runwayCase.available, factor });
    });
  return { brief, weight: along(0), temperatureCelsius: along(2) };
}
