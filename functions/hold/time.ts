// Sheet function of the time in a hold: laps, fuel at the clearance time, the latest time to leave.
import { minutesPerDay } from '../../core/basics/units';
import { holdTime } from '../../core/hold/time';
import { mapping, result } from '../registry/declaration';
import { timeOfDayZulu } from '../registry/readDate';
import { number } from '../registry/readNumber';
import { zuluText } from '../registry/zuluText';

const max = 1_000_000;
/** Nobody holds for longer: a flow so small was mistyped. */
const maxDays = 9;

/** A time already behind is not written as one: across midnight it would look like one still to come. */
function leaveByInWords(nowMinutes: number, minutesToLeave: number): string {
  if (minutesToLeave < 0) return 'passed';
  const days = Math.floor(minutesToLeave / minutesPerDay);
  if (days > maxDays) return `more than ${maxDays} days ahead`;
  return `${zuluText(nowMinutes + minutesToLeave)}${days === 0 ? '' : ` +${days * 24} h`}`;
}

export const HOLD_UNTIL = mapping({
  name: 'HOLD_UNTIL',
  subject: 'Holding',
  summary: 'Laps until the expected further clearance, the fuel left then, and the latest time to leave the hold.',
  parameters: {
    now_z: timeOfDayZulu('Time now, UTC.'),
    expect_further_clearance_z: timeOfDayZulu('Expected further clearance, UTC; a time earlier in the day than now is tomorrow.'),
    lap_minutes: number({ unit: 'minutes', minimum: 0.5, maximum: 60, help: 'Minutes of one lap, such as HOLD_BRIEF gives.' }),
    fuel: number({ unit: '', minimum: 0, maximum: max, help: 'Usable fuel now, in any unit.' }),
    fuel_flow_per_hour: number({ unit: '', minimum: 0, maximum: max, aboveMinimum: true, help: 'Fuel flow an hour in the hold, in the same unit.' }),
    fuel_needed_after: number({
      unit: '',
      minimum: 0,
      maximum: max,
      help: 'Fuel needed when the hold is left: to the destination, the alternate, and the reserve.',
    }),
  },
  results: {
    laps: result('laps', 'Laps until the clearance time, with the part of a lap left over.'),
    fuel_at_clearance: result('as the fuel', 'Fuel at the clearance time; negative where it would have run out.'),
    leave_by_z: result('UTC', 'Latest time to leave with the fuel needed after, as 1430Z, seconds dropped; "passed" where it is too late already.'),
    verdict: result('', 'OK where the fuel at the clearance time is at least the fuel needed after, else NO.'),
  },
  sources: ['phak'],
  notes:
    'Works across midnight. The clearance time must be within 12 hours after now; one that seems later than that has passed, and is refused. ' +
    'Steady flow is assumed, and nothing is kept back for a clearance that comes late. A time to leave more than a day ahead has + 24 h behind it; more than 9 days ahead no time is given.',
  examples: [
    {
      arguments: [1435, 1455, 4, 20, 9, 14],
      gives: [[5, 17, '1515Z', 'OK']],
      source: 'Worked by hand: 20 minutes are 5 laps and 3 of fuel; 6 to spare last 40 minutes',
    },
    {
      arguments: ['2350Z', '0010Z', 4, 20, 9, 18],
      gives: [[5, 17, '0003Z', 'NO']],
      source: 'Worked by hand, across midnight: 2 to spare last 13 minutes and 20 seconds',
    },
  ],
  compute: (given) => {
    const hold = holdTime({
      nowMinutes: given.now_z,
      clearanceMinutes: given.expect_further_clearance_z,
      lapMinutes: given.lap_minutes,
      fuel: given.fuel,
      flowPerHour: given.fuel_flow_per_hour,
      fuelNeededAfter: given.fuel_needed_after,
    });
    return {
      laps: hold.laps,
      fuel_at_clearance: hold.fuelAtClearance,
      leave_by_z: leaveByInWords(given.now_z, hold.minutesToLeave),
      verdict: hold.enough ? 'OK' : 'NO',
    };
  },
});
