// The equal-time point and the point of safe return: for two groundspeeds, and along the legs of a route.

const minutesPerHour = 60;

export interface PointAhead {
  readonly nauticalMiles: number;
  readonly minutes: number;
}

/** From where it takes as long on as back: D x H / (O + H). @source common-practice; worked in courses of navigation, with the winds of each way. */
export function equalTimePoint(nauticalMiles: number, knotsOn: number, knotsBack: number): PointAhead {
  const distance = (nauticalMiles * knotsBack) / (knotsOn + knotsBack);
  return { nauticalMiles: distance, minutes: (distance / knotsOn) * minutesPerHour };
}

/** From where the endurance just lasts back: E x H / (O + H), the reserve being no part of E. @source common-practice */
export function safeReturnPoint(enduranceMinutes: number, knotsOut: number, knotsHome: number): PointAhead {
  const minutes = (enduranceMinutes * knotsHome) / (knotsOut + knotsHome);
  return { nauticalMiles: (minutes / minutesPerHour) * knotsOut, minutes };
}

/** A part of the route as it is planned, and the same ground flown back at the cruise of its leg. */
export interface ThereAndBack {
  readonly nauticalMiles: number;
  readonly minutes: number;
  readonly fuel: number;
  readonly minutesBack: number;
  readonly fuelBack: number;
}

export interface PointOnRoute extends PointAhead {
  readonly fuelUsed: number;
}

/** Where a quantity that rises in a straight line over each part comes to a value; undefined where it never does. */
function pointWhere(parts: readonly ThereAndBack[], wanted: number, rises: (part: ThereAndBack) => number): PointOnRoute | undefined {
  let [sofar, nauticalMiles, minutes, fuelUsed] = [0, 0, 0, 0];
  for (const part of parts) {
    const rise = rises(part);
    const share = rise > 0 ? (wanted - sofar) / rise : 0;
    if (share <= 1)
      return {
        nauticalMiles: nauticalMiles + part.nauticalMiles * share,
        minutes: minutes + part.minutes * share,
        fuelUsed: fuelUsed + part.fuel * share,
      };
    sofar += rise;
    nauticalMiles += part.nauticalMiles;
    minutes += part.minutes;
    fuelUsed += part.fuel;
  }
  return undefined;
}

/** Time back equals time on: both together have risen to the time of the whole way on. */
export const equalTimeOnRoute = (parts: readonly ThereAndBack[]): PointOnRoute | undefined =>
  pointWhere(
    parts,
    parts.reduce((sum, part) => sum + part.minutes, 0),
    (part) => part.minutes + part.minutesBack,
  );

/** Fuel out and fuel back have risen to what may be used; undefined where that is so nowhere before the destination. */
export const safeReturnOnRoute = (parts: readonly ThereAndBack[], usable: number): PointOnRoute | undefined =>
  pointWhere(parts, Math.max(0, usable), (part) => part.fuel + part.fuelBack);
