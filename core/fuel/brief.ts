// The fuel of a flight: each part of what must be on board before it, what is, and what is left when it lands.
import type { FuelRule } from './rules';
import { worstVerdict, type Verdict } from '../basics/verdict';
import { minutesPerHour } from '../basics/units';
import { roundingShare } from '../basics/constants';

/**
 * Hours that the usable fuel of a light aircraft lasts in cruise, widely taken: a flow that gives less or more is looked at.
 * @source common-practice
 */
export const usualEnduranceHours = { least: 1.5, most: 14 } as const;

export interface FuelCase {
  readonly rule: FuelRule;
  /** From take-off to landing. */
  readonly tripMinutes: number;
  readonly flowPerHour: number;
  /** As a route works it out, its climb and descent in it; undefined: the time at the flow. */
  readonly tripFuel: number | undefined;
  readonly onBoard: number;
  readonly usable: number;
  /** From the destination to the alternate; undefined where none is planned. */
  readonly alternateMinutes: number | undefined;
  readonly taxi: number;
  /** Burned in the climb beyond what cruise would burn in that time. */
  readonly climb: number;
  /** Of the trip fuel. */
  readonly contingencyPercent: number;
  readonly holdingMinutes: number;
  /** The pilot's own reserve; undefined: that of the rule. */
  readonly reserveMinutes: number | undefined;
}

export type FuelDoubt = 'no-time' | 'over-usable' | 'short' | 'reserve-below-rule' | 'alternate-missing' | 'flow-unlikely';

export interface FuelBrief {
  readonly taxi: number;
  readonly climb: number;
  readonly trip: number;
  readonly contingency: number;
  readonly alternate: number;
  readonly holding: number;
  /** The greater of the rule's and the pilot's. */
  readonly reserveMinutes: number;
  readonly finalReserve: number;
  readonly required: number;
  /** On board less required; negative is what is missing. */
  readonly margin: number;
  readonly minutesAtLanding: number;
  readonly enduranceHours: number;
  /** What speaks against it, the worst first. */
  readonly doubts: readonly FuelDoubt[];
  readonly verdict: Verdict;
}

const verdictOf: Readonly<Record<FuelDoubt, Verdict>> = {
  'no-time': 'UNKNOWN',
  'over-usable': 'NO',
  short: 'NO',
  'reserve-below-rule': 'NO',
  'alternate-missing': 'UNKNOWN',
  'flow-unlikely': 'CHECK',
};

const exceeds = (one: number, other: number): boolean => one - other > roundingShare * Math.max(one, other);

function doubtsOf(
  { rule, tripMinutes, onBoard, usable, alternateMinutes, reserveMinutes }: FuelCase,
  required: number,
  enduranceHours: number,
): FuelDoubt[] {
  const found: readonly (readonly [FuelDoubt, boolean])[] = [
    ['over-usable', exceeds(onBoard, usable)],
    ['short', exceeds(required, onBoard)],
    ['reserve-below-rule', reserveMinutes !== undefined && reserveMinutes < rule.reserveMinutes],
    ['no-time', tripMinutes === 0],
    ['alternate-missing', rule.wantsAlternate && alternateMinutes === undefined],
    ['flow-unlikely', enduranceHours < usualEnduranceHours.least || enduranceHours > usualEnduranceHours.most],
  ];
  return found.filter(([, holds]) => holds).map(([doubt]) => doubt);
}

/**
 * Taxi + climb + trip + contingency + alternate + holding + final reserve, cruise parts at one flow; exact. Only trip, alternate and
 * reserve are asked for by the rules; the others are what the pilot adds. An own reserve below the rule's does not lower what is required.
 */
export function fuelBrief(fuelCase: FuelCase): FuelBrief {
  const { rule, flowPerHour, onBoard, usable, taxi, climb } = fuelCase;
  const burned = (minutes: number): number => (flowPerHour * minutes) / minutesPerHour;
  const trip = fuelCase.tripFuel ?? burned(fuelCase.tripMinutes);
  const reserveMinutes = Math.max(rule.reserveMinutes, fuelCase.reserveMinutes ?? 0);
  const contingency = trip * (fuelCase.contingencyPercent / 100);
  const parts = { taxi, climb, trip, contingency, alternate: burned(fuelCase.alternateMinutes ?? 0), holding: burned(fuelCase.holdingMinutes) };
  const finalReserve = burned(reserveMinutes);
  const required = Object.values(parts).reduce((sum, part) => sum + part, finalReserve);
  const difference = onBoard - required;
  const enduranceHours = usable / flowPerHour;
  const doubts = doubtsOf(fuelCase, required, enduranceHours);
  return {
    ...parts,
    reserveMinutes,
    finalReserve,
    required,
    margin: Math.abs(difference) <= roundingShare * required ? 0 : difference,
    minutesAtLanding: ((onBoard - taxi - climb - trip) / flowPerHour) * minutesPerHour,
    enduranceHours,
    doubts,
    verdict: doubts.length === 0 ? 'OK' : worstVerdict(doubts.map((doubt) => verdictOf[doubt])),
  };
}
