// The fuel that a rule wants before a flight: the rules as data, each with its paragraph, and the sum they ask for.
import type { SourceId } from '../basics/sources';
import { minutesPerHour } from '../basics/units';

export interface FuelRule {
  readonly paragraph: string;
  readonly source: SourceId;
  readonly reserveMinutes: number;
  /** How the rule says the reserve is flown. */
  readonly flown: string;
  /** The rule asks for the flight on to an alternate, unless one of its own exceptions lets it go. */
  readonly wantsAlternate: boolean;
}

const cruisingSpeed = 'at normal cruising speed';
const cruisingAltitude = 'at normal cruising altitude';
const nco = (paragraph: string, reserveMinutes: number, wantsAlternate = false): FuelRule => ({
  paragraph: `NCO.OP.125(a)${paragraph}, no longer in force`,
  source: 'part-nco',
  reserveMinutes,
  flown: cruisingAltitude,
  wantsAlternate,
});

/**
 * Each is the least that is lawful; Part-NCO in its form before 30 October 2022 (United Kingdom: 30 October 2025), the local flight and the
 * letters from memory. Since then the pilot in command plans a final reserve, and no number stands in the rule itself.
 */
export const fuelRules = {
  faa_vfr_day: { paragraph: '14 CFR 91.151(a)(1)', source: 'cfr-91-151', reserveMinutes: 30, flown: cruisingSpeed, wantsAlternate: false },
  faa_vfr_night: { paragraph: '14 CFR 91.151(a)(2)', source: 'cfr-91-151', reserveMinutes: 45, flown: cruisingSpeed, wantsAlternate: false },
  faa_vfr_rotorcraft: { paragraph: '14 CFR 91.151(b)', source: 'cfr-91-151', reserveMinutes: 20, flown: cruisingSpeed, wantsAlternate: false },
  faa_ifr: { paragraph: '14 CFR 91.167(a)', source: 'cfr-91-167', reserveMinutes: 45, flown: cruisingSpeed, wantsAlternate: true },
  faa_ifr_helicopter: { paragraph: '14 CFR 91.167(a)', source: 'cfr-91-167', reserveMinutes: 30, flown: cruisingSpeed, wantsAlternate: true },
  nco_vfr_local: nco('(1)(i)', 10),
  nco_vfr_day: nco('(1)(ii)', 30),
  nco_vfr_night: nco('(1)(iii)', 45),
  nco_ifr: nco('(2)', 45, true),
} as const satisfies Readonly<Record<string, FuelRule>>;

export type FuelRuleName = keyof typeof fuelRules;
export const fuelRuleNames = Object.keys(fuelRules) as readonly FuelRuleName[];

export interface FlightFuel {
  readonly rule: FuelRule;
  readonly tripMinutes: number;
  readonly flowPerHour: number;
  readonly alternateMinutes: number;
  readonly taxiFuel: number;
  /** Of the trip fuel. */
  readonly contingencyPercent: number;
}

/** Taxi + trip + contingency + alternate + final reserve, all at one flow; exact. Taxi and contingency are no part of the rules. */
export function fuelRequired({ rule, tripMinutes, flowPerHour, alternateMinutes, taxiFuel, contingencyPercent }: FlightFuel): {
  readonly required: number;
  readonly finalReserve: number;
} {
  const burned = (minutes: number): number => (flowPerHour * minutes) / minutesPerHour;
  const finalReserve = burned(rule.reserveMinutes);
  const trip = burned(tripMinutes);
  return { required: taxiFuel + trip + trip * (contingencyPercent / 100) + burned(alternateMinutes) + finalReserve, finalReserve };
}
