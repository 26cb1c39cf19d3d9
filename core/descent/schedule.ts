// The speeds and rates of a descent, by height: from the rows of a schedule to the stretches in which one row holds.
import { calibratedFromMachKnots, changeoverAltitudeFeet, trueAirspeedKnots, trueFromMachKnots } from '../air/airspeed';
import { standardTemperatureCelsius } from '../air/atmosphere';
import { CoreError } from '../basics/errors';

export type ScheduleSpeed = { readonly kind: 'indicated'; readonly knots: number } | { readonly kind: 'mach'; readonly mach: number };

/** Flown from this altitude down, until the next row. */
export interface ScheduleRow {
  readonly altitudeFeet: number;
  readonly speed: ScheduleSpeed;
  readonly rateFeetPerMinute: number;
}

/** Part of the descent with one speed and one rate. */
export interface Stretch {
  readonly fromFeet: number;
  readonly toFeet: number;
  readonly speed: ScheduleSpeed;
  readonly rateFeetPerMinute: number;
  /** Held to the speed limit below 10,000 ft. */
  readonly limited: boolean;
}

/** Below this altitude no more than this indicated airspeed. @source cfr-91-117, paragraph (a). */
export const speedLimit = { belowFeet: 10000, knots: 250 } as const;

function calibratedTrueKnots(knots: number, altitudeFeet: number, temperatureCelsius: number): number {
  const highestKnots = calibratedFromMachKnots(1, altitudeFeet);
  if (knots > highestKnots) throw new CoreError('schedule-too-fast', { knots, altitudeFeet, highestKnots });
  return trueAirspeedKnots(knots, altitudeFeet, temperatureCelsius);
}

/** True airspeed of a stretch at a pressure altitude, the air being this much warmer than standard. Indicated is taken as calibrated. */
export function stretchTrueAirspeedKnots({ speed, limited }: Stretch, altitudeFeet: number, isaDeviationCelsius: number): number {
  const temperatureCelsius = standardTemperatureCelsius(altitudeFeet) + isaDeviationCelsius;
  const own =
    speed.kind === 'mach' ? trueFromMachKnots(speed.mach, temperatureCelsius) : calibratedTrueKnots(speed.knots, altitudeFeet, temperatureCelsius);
  return limited ? Math.min(own, calibratedTrueKnots(speedLimit.knots, altitudeFeet, temperatureCelsius)) : own;
}

/** Rows of one altitude: one row, or a Mach number and an indicated airspeed of which the slower holds. */
interface Step {
  readonly altitudeFeet: number;
  readonly rows: readonly ScheduleRow[];
}

function stepsOf(schedule: readonly ScheduleRow[]): Step[] {
  const falling = [...new Set(schedule.map(({ altitudeFeet }) => altitudeFeet))].sort((one, other) => other - one);
  return falling.map((altitudeFeet) => {
    const rows = schedule.filter((row) => row.altitudeFeet === altitudeFeet);
    if (rows.length > 2 || new Set(rows.map(({ speed }) => speed.kind)).size < rows.length)
      throw new CoreError('level-repeated', { table: 'schedule', altitudeFeet });
    return { altitudeFeet, rows };
  });
}

/** The row that holds just below this altitude. */
function holding({ rows }: Step, belowFeet: number): ScheduleRow | undefined {
  const mach = rows.find(({ speed }) => speed.kind === 'mach');
  const indicated = rows.find(({ speed }) => speed.kind === 'indicated');
  if (mach?.speed.kind !== 'mach' || indicated?.speed.kind !== 'indicated') return mach ?? indicated;
  return belowFeet > changeoverAltitudeFeet(indicated.speed.knots, mach.speed.mach) ? mach : indicated;
}

function changeoverOf({ rows }: Step): number[] {
  const [one, other] = rows.map(({ speed }) => speed);
  if (one?.kind === 'mach' && other?.kind === 'indicated') return [changeoverAltitudeFeet(other.knots, one.mach)];
  return one?.kind === 'indicated' && other?.kind === 'mach' ? [changeoverAltitudeFeet(one.knots, other.mach)] : [];
}

const fasterThanLimit = (speed: ScheduleSpeed): boolean => speed.kind === 'mach' || speed.knots > speedLimit.knots;

/** The altitudes at which something may change, highest first, the ends among them. */
function cutsBetween(steps: readonly Step[], fromFeet: number, toFeet: number, limited: boolean): number[] {
  const changes = [...steps.map(({ altitudeFeet }) => altitudeFeet), ...steps.flatMap(changeoverOf), ...(limited ? [speedLimit.belowFeet] : [])];
  const inside = changes.filter((feet) => feet < fromFeet && feet > toFeet);
  return [...new Set([fromFeet, ...inside, toFeet])].sort((one, other) => other - one);
}

/** Stretches that follow one another in the same way are one. */
function joined(stretches: readonly Stretch[]): Stretch[] {
  return stretches.reduce<Stretch[]>((found, next) => {
    const last = found[found.length - 1];
    const same = last !== undefined && last.speed === next.speed && last.limited === next.limited;
    return same ? [...found.slice(0, -1), { ...last, toFeet: next.toFeet }] : [...found, next];
  }, []);
}

/** The stretches from one altitude down to another, highest first; the schedule must cover them all. */
export function stretchesOf(schedule: readonly ScheduleRow[], fromFeet: number, toFeet: number, limited: boolean): Stretch[] {
  const steps = stepsOf(schedule);
  const [highest] = steps;
  if (highest === undefined) throw new CoreError('nothing-given', { what: 'schedule' });
  if (highest.altitudeFeet < fromFeet) throw new CoreError('schedule-too-low', { highest: highest.altitudeFeet, needed: fromFeet });
  const cuts = cutsBetween(steps, fromFeet, toFeet, limited);
  return joined(
    cuts.slice(1).flatMap((bottomFeet, index) => {
      const topFeet = cuts[index] ?? fromFeet;
      const row = holding(steps.filter(({ altitudeFeet }) => altitudeFeet >= topFeet).pop() ?? highest, topFeet);
      if (row === undefined) return [];
      const isLimited = limited && topFeet <= speedLimit.belowFeet && fasterThanLimit(row.speed);
      return [{ fromFeet: topFeet, toFeet: bottomFeet, speed: row.speed, rateFeetPerMinute: row.rateFeetPerMinute, limited: isLimited }];
    }),
  );
}
