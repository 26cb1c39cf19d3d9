// What weather and a runway's surface mean to a light aircraft, whatever the visibility.
import type { Verdict } from '../../basics/verdict';
import type { RunwayState } from './conditions';

/**
 * Thunderstorm, hail, funnel cloud: aim, 7-1, thunderstorm flying: no landing or take-off in the face of one, and 20 miles away from it.
 * Freezing rain or drizzle, and ice pellets, which are rain that froze on its way down: aim, 7-1, icing. Volcanic ash: aim, 7-6, avoid.
 * Squalls, sand and dust storms: common practice, no source.
 */
const never: ReadonlySet<string> = new Set(['TS', 'GR', 'FC', 'VA', 'SQ', 'PL', 'SS', 'DS']);
/** Common practice, no source: what hides a runway, lies on a wing, or is worse in minutes, is to be looked at. */
const toLookAt: ReadonlySet<string> = new Set(['FG', 'SN', 'SG', 'GS', 'UP', 'PO', 'BL']);
/** In the vicinity, within some 8 to 16 km of the field, these are still too near. */
const neverNear: ReadonlySet<string> = new Set(['FC', 'VA']);

export interface WeatherGroup {
  readonly intensity: '' | '-' | '+';
  readonly isNear: boolean;
  /** Codes of two letters, as they stand. */
  readonly codes: readonly string[];
}

export function weatherGroup(written: string): WeatherGroup {
  const [, intensity = '', near, rest = ''] = /^([-+]?)(VC)?(.*)$/.exec(written) ?? [];
  return { intensity: intensity as WeatherGroup['intensity'], isNear: near !== undefined, codes: rest.match(/../g) ?? [] };
}

const freezes = ({ codes: [first, second] }: WeatherGroup): boolean => first === 'FZ' && second !== 'FG';

export function significance(written: string): Verdict {
  const group = weatherGroup(written);
  const { codes, intensity, isNear } = group;
  if (isNear) return codes.some((code) => neverNear.has(code)) ? 'NO' : codes[0] === 'SH' ? 'OK' : 'CHECK';
  if (freezes(group) || codes.some((code) => never.has(code))) return 'NO';
  return intensity === '+' || codes.some((code) => toLookAt.has(code)) ? 'CHECK' : 'OK';
}

/** Of the past hour: what is seldom gone for good. Common practice, no source. */
export function recentSignificance(written: string): Verdict {
  const group = weatherGroup(written);
  return freezes(group) || group.codes.some((code) => never.has(code)) ? 'CHECK' : 'OK';
}

/** A coefficient of 0.25 or less is poor, 0.40 or more good. @source icao-annex-14, attachment A, section 6 (from memory). */
const poorestCoefficient = 25;
const goodCoefficient = 40;
/** @source wmo-306, code table 0366. */
const brakingPoor = 91;
const brakingGood = 95;
const unreliable = 99;

/** Braking poor or unreliable, or closed: NO. Dry or damp with nothing against the brakes: OK. @source wmo-306, code table 0919: 0 dry, 1 damp. */
export function surfaceSignificance({ isClosed, deposit, friction }: RunwayState): Verdict {
  const isPoor = friction !== undefined && (friction <= poorestCoefficient || friction === brakingPoor || friction === unreliable);
  if (isClosed || isPoor) return 'NO';
  const isGood = friction === undefined || friction === brakingGood || (friction >= goodCoefficient && friction < brakingPoor);
  return isGood && deposit !== undefined && deposit <= 1 ? 'OK' : 'CHECK';
}
