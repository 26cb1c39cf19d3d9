// Who wants oxygen for how long, by the altitudes flown and the time at each; and how long a store of anything lasts.

export interface OxygenRule {
  /** Above this, up to `alwaysFeet`, the crew wants it for the time beyond `freeMinutes`. */
  readonly sometimesFeet: number;
  readonly freeMinutes: number;
  readonly alwaysFeet: number;
  readonly passengersFeet: number;
}

/** @source cfr-91-211, paragraph (a)(1) to (3); part-nco-oxygen, (b)(1) and (2), where the pilot cannot determine the effect on those on board. */
export const oxygenRules = {
  FAA: { sometimesFeet: 12500, freeMinutes: 30, alwaysFeet: 14000, passengersFeet: 15000 },
  EASA: { sometimesFeet: 10000, freeMinutes: 30, alwaysFeet: 13000, passengersFeet: 13000 },
} as const satisfies Readonly<Record<string, OxygenRule>>;

export type OxygenRules = keyof typeof oxygenRules;

export interface TimeAtAltitude {
  readonly altitudeFeet: number;
  readonly minutes: number;
}

export interface OxygenWanted {
  readonly crewMinutes: number;
  readonly passengerMinutes: number;
}

/** The 30 minutes are counted once for the whole flight: the careful reading where the time is in several pieces. */
export function oxygenWanted({ sometimesFeet, freeMinutes, alwaysFeet, passengersFeet }: OxygenRule, flown: readonly TimeAtAltitude[]): OxygenWanted {
  const above = (lowFeet: number, highFeet = Infinity): number =>
    flown.reduce((sum, { altitudeFeet, minutes }) => (altitudeFeet > lowFeet && altitudeFeet <= highFeet ? sum + minutes : sum), 0);
  return { crewMinutes: Math.max(0, above(sometimesFeet, alwaysFeet) - freeMinutes) + above(alwaysFeet), passengerMinutes: above(passengersFeet) };
}
