// Sheet functions of distances and true courses over the Earth.
import { CoreError } from '../../core/basics/errors';
import { geodesicLeg, geodesicPoint } from '../../core/navigation/geodesy';
import { mapping, result } from '../registry/declaration';
import { number, trueDirection } from '../registry/readNumber';
import { wordError } from '../registry/wordError';

const subject = 'Position and course';

const latitude = (which: string) =>
  number({
    unit: 'degrees',
    minimum: -90,
    maximum: 90,
    help: `Latitude${which}, decimal degrees, south negative (POSITION_READ reads other ways of writing).`,
  });
const longitude = (which: string) =>
  number({ unit: 'degrees', minimum: -180, maximum: 180, help: `Longitude${which}, decimal degrees, west negative.` });

export const COURSE_LEG = mapping({
  name: 'COURSE_LEG',
  subject,
  summary: 'Distance between two positions, and the true course at the start and at the end of the shortest line.',
  parameters: {
    latitude_1: latitude(' of the start'),
    longitude_1: longitude(' of the start'),
    latitude_2: latitude(' of the end'),
    longitude_2: longitude(' of the end'),
  },
  results: {
    distance_nm: result('nautical miles', 'Length of the shortest line on the WGS84 ellipsoid.'),
    initial_true_course: result('degrees true', 'Course at the start, 0 up to 360.'),
    final_true_course: result('degrees true', 'Course on arrival, in the direction of travel.'),
  },
  sources: ['karney-2013'],
  notes:
    'WGS84 geodesic, exact to far less than a foot. The same position twice is 0 miles, and instead of a course a sentence says why there is none. From a pole the course is measured from the meridian given as its longitude; between exactly opposite positions one of the many shortest lines is taken.',
  examples: [
    {
      arguments: [35.60777, -139.44815, -11.17491, -69.95921],
      gives: [[4824.6461, 111.098748429560326, 129.289270889708762]],
      tolerance: 0.0001,
      source: 'C. F. F. Karney, test suite for the geodesic routines',
    },
    {
      arguments: [0, 0, 0, 1],
      gives: [[60.1077, 90, 90]],
      tolerance: 0.0001,
      source: 'By hand: one degree of the WGS84 equator, 6,378,137 m x pi / 180 / 1852',
    },
  ],
  compute: ({ latitude_1, longitude_1, latitude_2, longitude_2 }) => {
    const from = { latitudeDegrees: latitude_1, longitudeDegrees: longitude_1 };
    const to = { latitudeDegrees: latitude_2, longitudeDegrees: longitude_2 };
    try {
      const { distanceNauticalMiles, initialCourse, finalCourse } = geodesicLeg(from, to);
      return { distance_nm: distanceNauticalMiles, initial_true_course: initialCourse, final_true_course: finalCourse };
    } catch (thrown) {
      // The distance stands though the course does not.
      if (!(thrown instanceof CoreError) || thrown.code !== 'no-direction') throw thrown;
      return { distance_nm: 0, initial_true_course: wordError('COURSE_LEG', thrown), final_true_course: '' };
    }
  },
});

export const COURSE_POINT = mapping({
  name: 'COURSE_POINT',
  subject,
  summary: 'Position reached from a position by flying a distance along the shortest line that leaves it on a true course.',
  parameters: {
    latitude: latitude(' of the start'),
    longitude: longitude(' of the start'),
    true_course: trueDirection('True course at the start; along the line the course changes.'),
    distance_nm: number({ unit: 'nautical miles', minimum: 0, maximum: 10800, help: 'Distance along the line.' }),
  },
  results: {
    latitude: result('degrees', 'Latitude reached, south negative.'),
    longitude: result('degrees', 'Longitude reached, west negative.'),
  },
  sources: ['karney-2013'],
  notes: 'WGS84 geodesic, exact to far less than a foot. At a pole the course is measured from the meridian given as its longitude.',
  examples: [
    {
      arguments: [35.60777, -139.44815, 111.098748429560326, 4824.6460909729106],
      gives: [[-11.17491, -69.95921]],
      tolerance: 0.00000001,
      source: 'C. F. F. Karney, test suite for the geodesic routines; metres over 1852',
    },
    {
      arguments: [0, 179.5, 90, 60.1077],
      gives: [[0, -179.5]],
      tolerance: 0.000001,
      source: 'By hand: one degree of the WGS84 equator is 6,378,137 m x pi / 180 / 1852 = 60.1077 NM, here across the date line',
    },
  ],
  compute: ({ latitude: latitudeDegrees, longitude: longitudeDegrees, true_course, distance_nm }) => {
    const point = geodesicPoint({ latitudeDegrees, longitudeDegrees }, true_course, distance_nm);
    return { latitude: point.latitudeDegrees, longitude: point.longitudeDegrees };
  },
});
