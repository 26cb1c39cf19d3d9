// Climb: the rate that a gradient takes at a groundspeed, and the gradient that a rate gives.
import { feetFromNauticalMiles, minutesPerHour } from '../basics/units';

/** Feet a minute = gradient x groundspeed / 60. @source terminal-procedures, climb table. Exact for level groundspeed. */
export function climbRateFeetPerMinute(gradientFeetPerNauticalMile: number, groundspeedKnots: number): number {
  return (gradientFeetPerNauticalMile * groundspeedKnots) / minutesPerHour;
}

/** The inverse of climbRateFeetPerMinute. */
export function climbGradientFeetPerNauticalMile(rateFeetPerMinute: number, groundspeedKnots: number): number {
  return (rateFeetPerMinute * minutesPerHour) / groundspeedKnots;
}

/** A gradient as height over distance, in percent. */
export function gradientPercent(gradientFeetPerNauticalMile: number): number {
  return (gradientFeetPerNauticalMile / feetFromNauticalMiles(1)) * 100;
}
