// Sheet functions of the wind: its parts along and across a direction, and the wind triangle.
import { CoreError } from '../../core/basics/errors';
import { windComponents, windTriangle } from '../../core/air/wind';
import { everyDirection, windWorst, type Sector } from '../../core/air/windWorst';
import { ArgumentError } from '../registry/argumentError';
import { isBlank } from '../registry/cellValues';
import { mapping, result, type Parameter } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { direction, number } from '../registry/readNumber';
import { NamedArgumentError } from '../registry/wordError';

const subject = 'Wind';
const strongestKnots = 300;

const windFrom = direction('Where the wind blows from, in the same reference (true or magnetic) as the other direction.');
const windSpeed = number({ unit: 'knots', minimum: 0, maximum: strongestKnots, help: 'Steady wind.' });
const gust = number({ unit: 'knots', minimum: 0, maximum: strongestKnots, help: 'Gust, the whole speed and not the part above the wind.' });

export function mustReachWind(gustKnots: number, windKnots: number): void {
  if (gustKnots < windKnots) {
    throw new CoreError('outside-range', {
      quantity: 'gustKnots',
      unit: 'knots, no less than the wind',
      low: windKnots,
      high: strongestKnots,
      received: gustKnots,
    });
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
  notes:
    'Both directions in the same reference: a reported surface wind is true in a METAR and magnetic from a tower. Exact trigonometry. A variable wind has no direction and is refused.',
  examples: [
    {
      arguments: [180, 220, 30, 40],
      gives: [[22.98, 19.28, 30.64, 25.71]],
      tolerance: 0.005,
      source:
        'FAA private pilot question bank: headwind 23 kt, crosswind 19 kt; to two decimals, and the gust, by hand with the cosine and sine of 40 degrees',
    },
    {
      arguments: [170, 140, 25],
      gives: [[21.65, -12.5, '', '']],
      tolerance: 0.005,
      source: 'FAA-H-8083-25B, chapter 11, sample problem 10: headwind 22 kt, crosswind 13 kt (from the left); to two decimals by hand',
    },
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

const windFromMustBe = `${windFrom.mustBe}, or VRB`;

/** VRB, or a blank beside a range of directions. */
export function directionOrVariable(help: string): Parameter<number | 'VRB' | undefined> & { readonly shape: 'cell' } {
  const base = direction(help);
  const read: Parameter<number | 'VRB' | undefined>['read'] = (raw, dates) => {
    if (isBlank(raw)) return undefined;
    if (typeof raw === 'string' && raw.trim().toUpperCase() === 'VRB') return 'VRB';
    try {
      return base.read(raw, dates);
    } catch (thrown) {
      throw thrown instanceof ArgumentError ? new ArgumentError(windFromMustBe, thrown.got) : thrown;
    }
  };
  return { ...base, mustBe: windFromMustBe, optional: undefined, read };
}

function sectorOf(from: number | undefined, to: number | undefined): Sector | undefined {
  if (from === undefined && to === undefined) return undefined;
  const blank = from === undefined ? 'variable_from_deg' : 'variable_to_deg';
  if (from === undefined || to === undefined) throw new NamedArgumentError(blank, new ArgumentError('given with its other end', 'a blank'));
  return { fromDegrees: from, toDegrees: to };
}

/** The mean direction and the range that are given; neither is a mistake, since no wind blows from nowhere. */
export function directionsOf(
  windFrom: number | 'VRB' | undefined,
  variableFrom: number | undefined,
  variableTo: number | undefined,
): { readonly from: number | undefined; readonly sector: Sector | undefined } {
  if (windFrom === 'VRB') return { from: undefined, sector: everyDirection };
  const sector = sectorOf(variableFrom, variableTo);
  if (windFrom === undefined && sector === undefined) throw new NamedArgumentError('wind_from_deg', new ArgumentError(windFromMustBe, 'a blank'));
  return { from: windFrom, sector };
}

export const WIND_WORST = mapping({
  name: 'WIND_WORST',
  subject,
  summary: 'Least headwind and greatest crosswind of a wind whose direction varies, and of its gusts, against a runway.',
  parameters: {
    direction_deg: direction('Runway direction.'),
    wind_from_deg: directionOrVariable(
      'Where the wind blows from, in the same reference as the runway; VRB for any direction; blank where only the range is known.',
    ),
    wind_kt: windSpeed,
    gust_kt: optional(gust, undefined, 'the gust results stay blank'),
    variable_from_deg: optional(direction('Beginning of the range of directions, clockwise: 140 of 140V300.'), undefined, 'the direction is steady'),
    variable_to_deg: optional(direction('End of the range: 300 of 140V300. From 0 to 360 is every direction.'), undefined, 'the direction is steady'),
  },
  results: {
    headwind: result('knots', 'Least headwind; negative is a tailwind.'),
    crosswind: result('knots', 'Greatest crosswind; positive from the right, negative from the left.'),
    gust_headwind: result('knots', 'Least headwind in the gust; blank without a gust.'),
    gust_crosswind: result('knots', 'Greatest crosswind in the gust; blank without a gust.'),
  },
  sources: ['phak'],
  notes:
    'All directions in the same reference. The least headwind and the greatest crosswind need not come of one direction. Exact: the ends of the range, straight across and straight behind are tried. Equal crosswinds from both sides are given as from the right. With a steady direction the answer is that of WIND_COMPONENTS.',
  examples: [
    {
      arguments: [200, 220, 10, 20, 140, 300],
      gives: [[-1.74, 10, -3.47, 20]],
      tolerance: 0.005,
      source: 'By hand: 290 lies in the range, straight across from the right; the least headwind is at 300, the cosine of 100 degrees',
    },
    { arguments: [200, 'VRB', 6], gives: [[-6, 6, '', '']], source: 'By hand: a wind from any side is a tailwind and a crosswind in full' },
  ],
  compute: ({ direction_deg, wind_from_deg, wind_kt, gust_kt, variable_from_deg, variable_to_deg }) => {
    const { from, sector } = directionsOf(wind_from_deg, variable_from_deg, variable_to_deg);
    const steady = windWorst(direction_deg, from, sector, wind_kt);
    const blank = { headwind: steady.headwindKnots, crosswind: steady.crosswindKnots, gust_headwind: '', gust_crosswind: '' };
    if (gust_kt === undefined) return blank;
    mustReachWind(gust_kt, wind_kt);
    const gusting = windWorst(direction_deg, from, sector, gust_kt);
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
  notes:
    'Course and wind in the same reference: winds aloft are forecast in degrees true. Exact for a steady wind; a wind that leaves no headway along the course is refused.',
  examples: [
    {
      arguments: [90, 120, 45, 40],
      gives: [[76.37, 88.33, -13.63]],
      tolerance: 0.005,
      source: 'FAA-H-8083-25B, chapter 16: course 090, 120 kt true, wind 045 at 40 kt gives 88 kt; to two decimals by hand',
    },
    { arguments: [360, 100, 180, 20], gives: [[0, 120, 0]], source: 'By hand: a wind from straight behind adds to the airspeed' },
  ],
  compute: ({ course_deg, true_airspeed_kt, wind_from_deg, wind_kt }) => {
    const { headingDegrees, groundspeedKnots, correctionDegrees } = windTriangle(course_deg, true_airspeed_kt, wind_from_deg, wind_kt);
    return { heading: headingDegrees, groundspeed: groundspeedKnots, correction_angle: correctionDegrees };
  },
});
