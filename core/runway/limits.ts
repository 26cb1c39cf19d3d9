// What else this runway would carry today: the greatest weight, and the highest temperature, at which it still fits.
import { densityAltitudeFeet, standardTemperatureCelsius } from '../air/atmosphere';
import type { InputColumn, InputRole } from '../manual/columns';
import { leavesUnknown, type ReadyFigure } from '../manual/openTable';
import { bendsAlong } from '../manual/readFigure';
import { converted, convertedDifference } from '../manual/tableUnits';
import { largestFitting, type TableLimit } from './tableLimit';
import { CoreError } from '../basics/errors';
import { conditionsOf, distanceAt, runwayBrief, type RunwayBrief, type RunwayCase } from './brief';
import { rolesOf, type Conditions } from './conditions';
import { effectOf } from './distanceCorrections';
import { aboveStandardCelsius } from './conditions';

export interface RunwayLimits {
  readonly brief: RunwayBrief;
  /** Or why there is none. */
  readonly weight: TableLimit | CoreError;
  readonly temperatureCelsius: TableLimit | CoreError;
}

/** No value of the table fits, or the table cannot say: all are answers here. */
const answered: readonly string[] = [...leavesUnknown, 'table-none-fits', 'table-not-rising', 'counted-twice', 'correction-needs-roll'];

function limitOr(solve: () => TableLimit): TableLimit | CoreError {
  try {
    return solve();
  } catch (thrown) {
    if (thrown instanceof CoreError && answered.includes(thrown.code)) return thrown;
    throw thrown;
  }
}

/** The coldest and warmest air that is looked at. */
const coldestCelsius = -90;
const warmestCelsius = 60;
const halvings = 60;

/** The temperature that makes this density altitude, by halving: it rises with the temperature throughout. */
function temperatureAtDensityAltitude(pressureAltitudeFeet: number, wantedFeet: number): number[] {
  const at = (celsius: number): number => densityAltitudeFeet(pressureAltitudeFeet, celsius);
  let [low, high] = [coldestCelsius, warmestCelsius];
  if (wantedFeet < at(low) || wantedFeet > at(high)) return [];
  for (let step = 0; step < halvings; step += 1) {
    const middle = (low + high) / 2;
    if (at(middle) < wantedFeet) low = middle;
    else high = middle;
  }
  return [low];
}

const heatRoles: readonly InputRole[] = ['temperature', 'isa deviation', 'density altitude'];

/** The table's lines of temperature, in degrees Celsius of today's altitude. */
function temperatures(figure: ReadyFigure, { role, unit }: InputColumn, altitudeFeet: number): number[] {
  const lines = bendsAlong(figure, role);
  if (role === 'temperature') return lines.map((line) => converted(line, unit, '°C'));
  if (role === 'isa deviation') return lines.map((line) => standardTemperatureCelsius(altitudeFeet) + convertedDifference(line, unit ?? '°C', '°C'));
  const feet = lines.map((line) => converted(line, unit, 'ft'));
  // The ends of what is looked at, where the table reaches further.
  const ends = [coldestCelsius, warmestCelsius].filter((celsius) => {
    const density = densityAltitudeFeet(altitudeFeet, celsius);
    return density > Math.min(...feet) && density < Math.max(...feet);
  });
  return [...ends, ...feet.flatMap((line) => temperatureAtDensityAltitude(altitudeFeet, line))].sort((one, other) => one - other);
}

/** Wind, corrections and factor as in the brief; one input at a time is let go, the others stay. */
export function runwayLimits(runwayCase: RunwayCase): RunwayLimits {
  const brief = runwayBrief(runwayCase);
  const conditions = conditionsOf(runwayCase, brief.headwindKnots);
  const along = (
    roles: readonly InputRole[],
    linesOf: (figure: ReadyFigure, input: InputColumn) => readonly number[],
    vary: (value: number) => Partial<Conditions>,
  ) =>
    limitOr(() => {
      if (brief.distances instanceof CoreError && ['counted-twice', 'correction-needs-roll'].includes(brief.distances.code)) throw brief.distances;
      const figure = runwayCase.table.figure(runwayCase.wanted, 'by-heading');
      const input = figure.inputs.find(({ role }) => roles.includes(role) && rolesOf(figure).has(role));
      if (input === undefined) throw new CoreError('table-no-input', { input: roles[0] ?? '' });
      const corrected = (value: number): number => {
        const varied = { ...conditions, ...vary(value) };
        const effects = runwayCase.corrections.map((correction) => effectOf(correction, varied.headwindKnots, aboveStandardCelsius(varied)));
        return distanceAt(runwayCase, figure, varied, effects).corrected;
      };
      const straight = figure.steps.length === 0 && input.role !== 'density altitude';
      const { available, factor } = runwayCase;
      return largestFitting({ header: input.header, values: linesOf(figure, input), distanceAt: corrected, straight, available, factor });
    });
  return {
    brief,
    weight: along(
      ['weight'],
      (figure, input) => bendsAlong(figure, 'weight').map((line) => converted(line, input.unit, runwayCase.weightUnit)),
      (weight) => ({ weight }),
    ),
    temperatureCelsius: along(
      heatRoles,
      (figure, input) => temperatures(figure, input, brief.pressureAltitudeFeet),
      (temperatureCelsius) => ({ temperatureCelsius }),
    ),
  };
}
