// Sheet functions of the wind: its parts along and across a direction, and the wind triangle.
import { CoreError } from '../core/errors';
import { windComponents, windTriangle } from '../core/wind';
import { mapping, result } from './registry/declaration';
import { optional } from './registry/modifiers';
import { direction, number } from './registry/readNumber';

const subject = 'Wind';
const strongestKnots = 300;

const windFrom = direction('Where the wind blows from, in the same reference (true or magnetic) as the other direction.');
const windSpeed = number({ unit: 'knots', minimum: 0, maximum: strongestKnots, help: 'Steady wind.' });
const gust = number({ unit: 'knots', minimum: 0, maximum: strongestKnots, help: 'Gust, the whole speed and not the part above the wind.' });

export function mustReachWind(gustKnots: number, windKnots: number): void {
  if (gustKnots < windKnots) {
    throw new CoreError('outside-range', { quantity: 'gustKnots', unit: 'knots, no less than the wind', low: windKnots, high: strongestKnots, received: gustKnots });
  }
}

export const WIND_COMPONENTS = mapping({
  name: 'WIND_COMPONENTS',
  subject,
  summary: 'Headwind and crosswind of a wind, and of its gusts, against a runway or any other direction.',
  parameters: {
    direction_deg: direction('Runway direction, course or heading.'),
    wind_from_deg: windFrom,
    wind_kt: windSpeed,
    gust_kt: optional(gust, undefined, 'the gust results stay blank'),
  },
  results: {
    headwind: result('knots', 'Headwind; negative is a tailwind.'),
    crosswind: result('knots', 'Crosswind; positive from the right, negative from the left.'),
    gust_headwind: result('knots', 'Headwind in the gust; blank without a gust.'),
    gust_crosswind: result('knots', 'Crosswind in the gust; blank without a gust.'),
  },
  sources: ['phak'],
  notes: 'Both directions in the same reference: a reported surface wind is true in a METAR and magnetic from a tower. Exact trigonometry. A variable wind has no direction and is refused.',
  examples: [
    { arguments: [180, 220, 30, 40], gives: [[22.98, 19.28, 30.64, 25.71]], tolerance: 0.005, source: 'FAA private pilot question bank: headwind 23 kt, crosswind 19 kt; to two decimals, and the gust, by hand with the cosine and sine of 40 degrees' },
    { arguments: [170, 140, 25], gives: [[21.65, -12.5, '', '']], tolerance: 0.005, source: 'FAA-H-8083-25B, chapter 11, sample problem 10: headwind 22 kt, crosswind 13 kt (from the left); to two decimals by hand' },
  ],
  compute: ({ direction_deg, wind_from_deg, wind_kt, gust_kt }) => {
    const steady = windComponents(direction_deg, wind_from_deg, wind_kt);
    const blank = { headwind: steady.headwindKnots, crosswind: steady.crosswindKnots, gust_headwind: '', gust_crosswind: '' };
    if (gust_kt === undefined) return blank;
    mustReachWind(gust_kt, wind_kt);
    const gusting = windComponents(direction_deg, wind_from_deg, gust_kt);
    return { ...blank, gust_headwind: gusting.headwindKnots, gust_crosswind: gusting.crosswindKnots };
  },
});

export const WIND_TRIANGLE = mapping({
  name: 'WIND_TRIANGLE',
  subject,
  summary: 'Heading and groundspeed that hold a course in a wind.',
  parameters: {
    course_deg: direction('Course to fly over the ground.'),
    true_airspeed_kt: number({ unit: 'knots', minimum: 0, aboveMinimum: true, maximum: 1000, help: 'True airspeed.' }),
    wind_from_deg: windFrom,
    wind_kt: windSpeed,
  },
  results: {
    heading: result('degrees', 'Heading to fly, in the reference of the course, 0 up to 360.'),
    groundspeed: result('knots', 'Groundspeed along the course.'),
    correction_angle: result('degrees', 'From course to heading, right positive.'),
  },
  sources: ['phak'],
  notes: 'Course and wind in the same reference: winds aloft are forecast in degrees true. Exact for a steady wind; a wind that leaves no headway along the course is refused.',
  examples: [
    { arguments: [90, 120, 45, 40], gives: [[76.37, 88.33, -13.63]], tolerance: 0.005, source: 'FAA-H-8083-25B, chapter 16: course 090, 120 kt true, wind 045 at 40 kt gives 88 kt; to two decimals by hand' },
    { arguments: [360, 100, 180, 20], gives: [[0, 120, 0]], source: 'By hand: a wind from straight behind adds to the airspeed' },
  ],
  compute: ({ course_deg, true_airspeed_kt, wind_from_deg, wind_kt }) => {
    const { headingDegrees, groundspeedKnots, correctionDegrees } = windTriangle(course_deg, true_airspeed_kt, wind_from_deg, wind_kt);
    return { heading: headingDegrees, groundspeed: groundspeedKnots, correction_angle: correctionDegrees };
  },
});
