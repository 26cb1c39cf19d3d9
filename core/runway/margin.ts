// Whether a runway is long enough: the distance needed, a factor for safety, and what is left over.
import type { Verdict } from '../basics/verdict';
import { roundingShare } from '../basics/constants';

/** @source common-practice: half as much again as the manual's take-off distance. */
export const takeoffFactor = 1.5;
/** @source cfr-135-385, paragraph (b): a full stop within 60 percent of the runway. A rule for carriers; private flight is free to follow it. */
export const landingFactor = 1 / 0.6;

export interface RunwayMargin {
  readonly factored: number;
  /** What is left of the available distance; negative is what is missing. */
  readonly margin: number;
  /** Available over required, before the factor. */
  readonly ratio: number;
  readonly verdict: Verdict;
}

/** Any one unit of length. The runway is long enough when the factored distance fits in it, to the last of it. */
export function runwayMargin(available: number, required: number, factor: number): RunwayMargin {
  const factored = required * factor;
  const difference = available - factored;
  const margin = Math.abs(difference) <= roundingShare * factored ? 0 : difference;
  return { factored, margin, ratio: available / required, verdict: margin >= 0 ? 'OK' : 'NO' };
}
