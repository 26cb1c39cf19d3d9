// The sheet function that puts the start of a descent on the map.
import { minutesPerHour } from '../../core/basics/units';
import { descentPoint } from '../../core/descent/point';
import { mapping, result } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { number } from '../registry/readNumber';

const latitude = (where: string) =>
  number({ unit: 'degrees', minimum: -90, maximum: 90, help: `Latitude ${where}, decimal degrees, south negative.` });
const longitude = (where: string) =>
  number({ unit: 'degrees', minimum: -180, maximum: 180, help: `Longitude ${where}, decimal degrees, west negative.` });

export const DESCENT_START_POINT = mapping({
  name: 'DESCENT_START_POINT',
  subject: 'Descent',
  summary: 'How far ahead, in miles and minutes, and at which position a descent starts, on the straight way from the present position to a fix.',
  parameters: {
    latitude: latitude('of the present position'),
    longitude: longitude('of the present position'),
    fix_latitude: latitude('of the fix'),
    fix_longitude: longitude('of the fix'),
    start_nm: number({
      unit: 'nautical miles',
      minimum: -500,
      maximum: 1000,
      help: 'How far before the fix the descent starts, as DESCENT_START or DESCENT_PLAN gives it; negative is beyond the fix.',
    }),
    groundspeed_kt: optional(
      number({ unit: 'knots', minimum: 0, aboveMinimum: true, maximum: 1000, help: 'Groundspeed until there.' }),
      undefined,
      'the minutes stay blank',
    ),
  },
  results: {
    to_go_nm: result('nautical miles', 'From the present position to the start of the descent; negative: it lies behind, and the descent is late.'),
    minutes: result('minutes', 'Time to it; negative when it lies behind.'),
    latitude: result('degrees', 'Latitude of the start, south negative.'),
    longitude: result('degrees', 'Longitude of the start, west negative.'),
  },
  sources: ['karney-2013'],
  notes:
    'On the WGS84 geodesic through both positions; a start that lies behind is on the same line drawn backward. A way with bends must be taken leg by leg.',
  examples: [
    {
      arguments: [0, 10, 0, 12, 60, 120],
      gives: [[60.2154, 30.1077, 0, 11.00179]],
      tolerance: 0.0001,
      source: 'By hand along the WGS84 equator, where a degree is 60.1077 NM: 120.2154 NM to the fix, the start 60.2154 NM ahead',
    },
    {
      arguments: [0, 10, 0, 11, 75.1077],
      gives: [[-15, '', 0, 9.75045]],
      tolerance: 0.0001,
      source: 'By hand along the WGS84 equator: the start lies 15 NM behind',
    },
  ],
  compute: (given) => {
    const present = { latitudeDegrees: given.latitude, longitudeDegrees: given.longitude };
    const fix = { latitudeDegrees: given.fix_latitude, longitudeDegrees: given.fix_longitude };
    const { distanceNauticalMiles, latitudeDegrees, longitudeDegrees } = descentPoint(present, fix, given.start_nm);
    const minutes = given.groundspeed_kt === undefined ? '' : (distanceNauticalMiles / given.groundspeed_kt) * minutesPerHour;
    return { to_go_nm: distanceNauticalMiles, minutes, latitude: latitudeDegrees, longitude: longitudeDegrees };
  },
});
