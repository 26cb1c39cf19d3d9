// The worst that a wind of no fixed direction can do to a runway.
import { wrapDegrees } from '../basics/units';
import { windComponents, type WindComponents } from './wind';

/** The directions from one to the other, clockwise; every direction where they are 0 and 360. */
export interface Sector {
  readonly fromDegrees: number;
  readonly toDegrees: number;
}

export const everyDirection: Sector = { fromDegrees: 0, toDegrees: 360 };

const widthOf = ({ fromDegrees, toDegrees }: Sector): number => (toDegrees - fromDegrees === 360 ? 360 : wrapDegrees(toDegrees - fromDegrees));

/** Least headwind and greatest crosswind stand at an end of the sector, straight across, or straight behind. */
function directionsIn(sector: Sector, directionDegrees: number): number[] {
  const extremes = [90, -90, 180].map((turn) => wrapDegrees(directionDegrees + turn));
  return [sector.fromDegrees, sector.toDegrees, ...extremes.filter((extreme) => wrapDegrees(extreme - sector.fromDegrees) <= widthOf(sector))];
}

/**
 * Least headwind, and greatest crosswind with its sign, of a wind that can come from anywhere in a sector, the mean direction included.
 * Both need not come of one direction. @source phak, crosswind component chart; the rest is geometry.
 */
export function windWorst(
  directionDegrees: number,
  windFromDegrees: number | undefined,
  sector: Sector | undefined,
  windKnots: number,
): WindComponents {
  const mean = windFromDegrees === undefined ? [] : [windFromDegrees];
  const spread = sector ?? (windFromDegrees === undefined ? everyDirection : undefined);
  const directions = [...mean, ...(spread === undefined ? [] : directionsIn(spread, directionDegrees))];
  const parts = directions.map((from) => windComponents(directionDegrees, from, windKnots));
  return {
    headwindKnots: Math.min(...parts.map(({ headwindKnots }) => headwindKnots)),
    crosswindKnots: parts.map(({ crosswindKnots }) => crosswindKnots).reduce((worst, knots) => (Math.abs(knots) > Math.abs(worst) ? knots : worst)),
  };
}
