// The sheet function that compares the runways of a field in one wind.
import { runwayWinds } from '../../core/runway/winds';
import { laying, result, type ResultCell } from '../registry/declaration';
import { column, optional } from '../registry/modifiers';
import { direction, number } from '../registry/readNumber';
import { mustReachWind } from '../air/wind';

const knots = (help: string): ReturnType<typeof number> => number({ unit: 'knots', minimum: 0, maximum: 300, help });
const width = 5;

export const RUNWAY_WINDS = laying({
  name: 'RUNWAY_WINDS',
  subject: 'Runway',
  summary: 'Headwind and crosswind of every runway of a field in one wind, against the crosswind limit, and which to choose.',
  parameters: {
    runway_deg: column(direction("The runways' directions, one a row, in the same reference as the wind; both ends of each.")),
    wind_from_deg: direction("Where the wind blows from, in the runways' reference; any direction for a calm."),
    wind_kt: knots('Steady wind.'),
    gust_kt: optional(knots('Gust, the whole speed and not the part above the wind.'), undefined, 'the steady wind is judged'),
    crosswind_limit_kt: optional(
      knots("Most crosswind for this aircraft and pilot: the manual's demonstrated crosswind, or less."),
      undefined,
      'no runway is judged: UNKNOWN',
    ),
  },
  results: {
    headwind: result('knots', 'In the steady wind; negative is a tailwind.'),
    crosswind: result('knots', 'In the steady wind; positive from the right.'),
    gust_crosswind: result('knots', 'In the gust; this one is judged. Without a gust, the crosswind again.'),
    verdict: result('', 'NO beyond the limit; CHECK with half a knot or more of tailwind; else OK. UNKNOWN without a limit.'),
    order: result('', '1 is the first choice: OK before CHECK, then the most headwind. Blank for NO.'),
  },
  sources: ['phak', 'common-practice'],
  notes:
    'Wind only: length, slope, surface and traffic are for the other functions and the pilot. The order is common practice, no source. One row for each row of runways, a blank one where that is blank; equal runways share a place.',
  examples: [
    {
      arguments: [[[100], [140], [240]], 180, 20, undefined, 13],
      gives: [
        [3.47, 19.7, 19.7, 'NO', ''],
        [15.32, 12.86, 12.86, 'OK', 1],
        [10, -17.32, -17.32, 'NO', ''],
      ],
      tolerance: 0.005,
      source: 'FAA test question (from memory): wind 180 at 20, limit 13 knots, of runways 10, 14 and 24 only 14; two decimals by hand',
      formula: '=RUNWAY_WINDS(A1:A3, 180, 20, , 13)',
    },
  ],
  compute: ({ runway_deg, wind_from_deg, wind_kt, gust_kt, crosswind_limit_kt }, { rows, height }) => {
    if (gust_kt !== undefined) mustReachWind(gust_kt, wind_kt);
    const block: ResultCell[][] = Array.from({ length: height }, () => Array<ResultCell>(width).fill(''));
    runwayWinds(runway_deg, wind_from_deg, wind_kt, gust_kt, crosswind_limit_kt).forEach((wind, index) => {
      const place = (rows[index] ?? 1) - 1;
      block[place] = [wind.headwindKnots, wind.crosswindKnots, wind.judgedCrosswindKnots, wind.verdict, wind.order ?? ''];
    });
    return block;
  },
});
