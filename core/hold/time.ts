// How long a hold lasts: laps to the clearance time, the fuel left then, and the latest time to leave.
import { CoreError } from '../basics/errors';
import { minutesPerDay, minutesPerHour } from '../basics/units';
import { roundingShare } from '../basics/constants';

/** No clearance is given for longer ahead: a time that seems so has passed. */
const maxWaitMinutes = 720;

export interface HoldTimeCase {
  /** Minutes after 0000 UTC, each of its own day. */
  readonly nowMinutes: number;
  readonly clearanceMinutes: number;
  readonly lapMinutes: number;
  readonly fuel: number;
  readonly flowPerHour: number;
  /** Needed when the hold is left, to get to the destination and keep the reserves. */
  readonly fuelNeededAfter: number;
}

export interface HoldTime {
  readonly waitMinutes: number;
  readonly laps: number;
  readonly fuelAtClearance: number;
  /** Minutes from now until only the fuel needed after is left; negative where it is less already. */
  readonly minutesToLeave: number;
  readonly enough: boolean;
}

/** Exact for a steady flow; the clearance time is the next one of that name after now. @source phak, chapter on navigation, fuel consumption. */
export function holdTime({ nowMinutes, clearanceMinutes, lapMinutes, fuel, flowPerHour, fuelNeededAfter }: HoldTimeCase): HoldTime {
  const waitMinutes = (clearanceMinutes - nowMinutes + minutesPerDay) % minutesPerDay;
  if (waitMinutes > maxWaitMinutes) {
    throw new CoreError('clearance-passed', { nowMinutes, clearanceMinutes, minutesAgo: minutesPerDay - waitMinutes });
  }
  const fuelAtClearance = fuel - (flowPerHour * waitMinutes) / minutesPerHour;
  return {
    waitMinutes,
    laps: waitMinutes / lapMinutes,
    fuelAtClearance,
    minutesToLeave: ((fuel - fuelNeededAfter) / flowPerHour) * minutesPerHour,
    enough: fuelAtClearance >= fuelNeededAfter - roundingShare * fuel,
  };
}
