// Sheet functions of the wind: its parts along and across a direction.
import { CoreError } from '../core/errors';
import { windComponents } from '../core/wind';
import { mapping, result } from './registry/declaration';
import { optional } from './registry/modifiers';
import { direction, number } from './registry/readNumber';

const subject = 'Wind';
const strongestKnots = 300;

const windFrom = direction('Where the wind blows from, in the same reference (true or magnetic) as the other direction.');
const windSpeed = number({ unit: 'knots', minimum: 0, maximum: strongestKnots, help: 'Steady wind.' });
const gust = number({ unit: 'knots', minimum: 0, maximum: strongestKnots, help: 'Gust, the whole speed and not the part above the wind.' });

function mustReachWind(gustKnots: number, windKnots: number): void {
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
