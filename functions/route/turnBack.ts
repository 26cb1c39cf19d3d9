// Sheet functions of the points of turning back, from the groundspeeds of both ways.
import { equalTimePoint, safeReturnPoint } from '../../core/route/turnBack';
import { mapping, result } from '../registry/declaration';
import { durationMinutes } from '../registry/readDate';
import { number } from '../registry/readNumber';

const subject = 'Route';
const groundspeed = (help: string) => number({ unit: 'knots', minimum: 0, aboveMinimum: true, maximum: 1000, help });

export const EQUAL_TIME_POINT = mapping({
  name: 'EQUAL_TIME_POINT',
  subject,
  summary: 'The point from which it takes as long on to the destination as back to the departure.',
  parameters: {
    distance_nm: number({ unit: 'nautical miles', minimum: 0, maximum: 12000, help: 'From the departure to the destination.' }),
    groundspeed_on_kt: groundspeed('Groundspeed on to the destination; WIND_TRIANGLE gives it.'),
    groundspeed_back_kt: groundspeed('Groundspeed on the way back.'),
  },
  results: {
    distance_nm: result('nautical miles', 'From the departure.'),
    minutes: result('minutes', 'From the departure, at the groundspeed on.'),
  },
  sources: ['common-practice'],
  notes: 'Distance x back / (on + back), exact for steady winds; with no wind half of the way. ROUTE_LEGS finds it along several legs.',
  examples: [
    {
      arguments: [560, 220, 180],
      gives: [[252, 68.7273]],
      tolerance: 0.001,
      source: 'A course of navigation prints 252 NM, and 252 / 220 h is 68.7 minutes',
    },
  ],
  compute: ({ distance_nm, groundspeed_on_kt, groundspeed_back_kt }) => {
    const { nauticalMiles, minutes } = equalTimePoint(distance_nm, groundspeed_on_kt, groundspeed_back_kt);
    return { distance_nm: nauticalMiles, minutes };
  },
});

export const SAFE_RETURN_POINT = mapping({
  name: 'SAFE_RETURN_POINT',
  subject,
  summary: 'The last point from which the fuel lasts for the way back to the departure.',
  parameters: {
    endurance_minutes: durationMinutes({ maximum: 2880, help: 'How long the fuel lasts without the reserve, as FUEL_ENDURANCE gives it.' }),
    groundspeed_out_kt: groundspeed('Groundspeed on the way out.'),
    groundspeed_home_kt: groundspeed('Groundspeed on the way back.'),
  },
  results: {
    distance_nm: result('nautical miles', 'From the departure.'),
    minutes: result('minutes', 'From the departure.'),
  },
  sources: ['common-practice'],
  notes: 'Endurance x home / (out + home), exact for steady winds and one flow. ROUTE_LEGS finds it along several legs.',
  examples: [
    {
      arguments: [300, 220, 180],
      gives: [[495, 135]],
      source: 'A course of navigation prints 2 hours 15 minutes for 5 hours; 2.25 h x 220 kt is 495 NM',
    },
  ],
  compute: ({ endurance_minutes, groundspeed_out_kt, groundspeed_home_kt }) => {
    const { nauticalMiles, minutes } = safeReturnPoint(endurance_minutes, groundspeed_out_kt, groundspeed_home_kt);
    return { distance_nm: nauticalMiles, minutes };
  },
});
