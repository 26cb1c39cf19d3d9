// The sheet function of several crossing restrictions in one descent: when to start down, and which restriction decides it.
import { minutesPerHour } from '../../core/basics/units';
import { descentCrossings, type Crossing, type CrossingOutcome } from '../../core/descent/crossings';
import { laying, result, type ResultCell } from '../registry/declaration';
import { headingsOfRows } from '../registry/headings';
import { blankMeansUndefined, column, optional, unreadableMeansUndefined } from '../registry/modifiers';
import { limitInWords, number } from '../registry/readNumber';
import { choice, shownName } from '../registry/readText';
import { altitude } from './parameters';

const miles = (options: { readonly minimum: number; readonly help: string }) => number({ unit: 'nautical miles', maximum: 500, ...options });

export const crossingKind = choice({
  words: ['at', 'at or below', 'at or above'],
  also: { below: 'at or below', above: 'at or above' },
  help: 'Whether to cross at that altitude, at or below it, or at or above it.',
});

/** A restriction as given, with the row of the answer it belongs to. */
interface Row extends Crossing {
  readonly fix: string;
  readonly place: number;
}

const feetInWords = (feet: number): string => `${limitInWords(Math.max(1, Math.round(Math.abs(feet))))} ft`;

function reasonOf({ missFeet, startNauticalMiles = 0, heldDownBy }: CrossingOutcome, isBinding: boolean, fixes: readonly string[]): string {
  if (missFeet > 0) return `${feetInWords(missFeet)} too high: start ${(-startNauticalMiles).toFixed(1)} NM behind`;
  if (missFeet < 0) {
    const why = heldDownBy === undefined ? 'below it already' : `${fixes[heldDownBy] ?? ''} holds it down`;
    return `${feetInWords(missFeet)} too low: ${why}`;
  }
  return isBinding ? 'met; decides the start' : 'met';
}

function cellsOf(outcome: CrossingOutcome, isBinding: boolean, fixes: readonly string[], groundspeedKnots: number | undefined): ResultCell[] {
  const { startNauticalMiles, reachedFeet, missFeet, angleNeededDegrees } = outcome;
  const minutes = startNauticalMiles === undefined || groundspeedKnots === undefined ? '' : (startNauticalMiles / groundspeedKnots) * minutesPerHour;
  return [
    startNauticalMiles ?? '',
    minutes,
    reachedFeet,
    angleNeededDegrees ?? '',
    missFeet === 0 ? 'OK' : 'NO',
    reasonOf(outcome, isBinding, fixes),
  ];
}

const blankRow: readonly ResultCell[] = ['', '', '', '', '', ''];

interface Given {
  readonly rows: readonly Row[];
  readonly from_ft: number;
  readonly angle_deg: number;
  readonly groundspeed_kt: number | undefined;
}

/** One row of the answer for each row of the columns, blank ones too, so that they stand side by side. */
function layRows({ rows, from_ft, angle_deg, groundspeed_kt }: Given, height: number): ResultCell[][] {
  const isAhead = ({ distanceNauticalMiles }: Row): boolean => distanceNauticalMiles >= 0;
  const ahead = rows.filter(isAhead);
  const answer = Array.from({ length: height }, () => [...blankRow]);
  rows
    .filter((row) => !isAhead(row))
    .forEach(({ place, distanceNauticalMiles }) => {
      answer[place - 1] = ['', '', '', '', 'UNKNOWN', `the crossing point lies ${(-distanceNauticalMiles).toFixed(1)} NM behind`];
    });
  if (ahead.length === 0) return answer;
  const { outcomes, binding } = descentCrossings(ahead, from_ft, angle_deg);
  const fixes = ahead.map(({ fix }) => fix);
  outcomes.forEach((outcome, index) => (answer[(ahead[index]?.place ?? 1) - 1] = cellsOf(outcome, index === binding, fixes, groundspeed_kt)));
  return answer;
}

export const DESCENT_CROSSINGS = laying({
  name: 'DESCENT_CROSSINGS',
  subject: 'Descent',
  summary: 'Several crossing restrictions in one descent: how far ahead it starts, which of them decides that, and whether each is met.',
  parameters: {
    fix: column(unreadableMeansUndefined(shownName({ mustBe: 'the name of the fix', help: 'Name of the fix, one a row.' }))),
    distance_nm: column(miles({ minimum: 0, help: 'Distance to go to the fix, along the track.' })),
    before_fix_nm: column(
      blankMeansUndefined(
        miles({ minimum: -500, help: 'Where to cross: 8 is eight miles before the fix, -8 eight miles beyond it; blank is over the fix.' }),
      ),
    ),
    altitude_ft: column(altitude('Altitude to cross at.')),
    kind: column(crossingKind),
    from_ft: altitude('Altitude now.'),
    angle_deg: optional(
      number({ unit: 'degrees', minimum: 0.5, maximum: 15, help: 'Angle of the path below the horizon.' }),
      3,
      'the angle is 3 degrees',
    ),
    groundspeed_kt: optional(
      number({ unit: 'knots', minimum: 0, aboveMinimum: true, maximum: 1000, help: 'Groundspeed until the start of the descent, for its time.' }),
      undefined,
      'the times stay blank',
    ),
    headings: headingsOfRows,
  },
  results: {
    start_in_nm: result(
      'nautical miles',
      'From here to the latest start down for this restriction alone; negative is behind. The smallest of the column is the start of the descent.',
    ),
    start_in_minutes: result('minutes', 'The same as time; blank without a groundspeed.'),
    reached_ft: result('feet', 'Altitude over the crossing point on the path that is flown.'),
    angle_deg: result('degrees', 'The angle that, straight from here, just meets it.'),
    verdict: result('', 'OK when met, NO when not; UNKNOWN where the crossing point lies behind.'),
    reason: result('', 'How far off, which restriction holds the path down, or which one decides the start.'),
  },
  sources: ['terminal-procedures', 'common-practice'],
  notes:
    'The path starts down as late as every "at" and "at or below" allows at this angle, and flies level where a restriction has been reached early (common practice, no source). So an "at or above" that it misses cannot be met at this angle at all: it needs a steeper one. ' +
    'Straight lines over the ground at one angle: miles to slow down or to level off are not in it. Rows without any entry stay blank, so that the answers stand beside their rows.',
  examples: [
    {
      arguments: [
        [['SORREL'], ['TANSY'], ['']],
        [[30], [42], ['']],
        [[''], [8], ['']],
        [[9000], [7000], ['']],
        [['at or above'], ['at'], ['']],
        12000,
        3,
        150,
      ],
      gives: [
        ['', '', 8273.8, '', 'NO', '726 ft too low: TANSY holds it down'],
        [18.3, 7.32, 7000, 1.386, 'OK', 'met; decides the start'],
        ['', '', '', '', '', ''],
      ],
      tolerance: 0.06,
      source:
        'By hand: 3.0 degrees is 318.4 ft/NM; from 12,000 to 7,000 ft takes 15.7 NM, and the crossing point is 34 NM ahead; 4 NM before it the path is at 8,274 ft',
      formula: '=DESCENT_CROSSINGS(A2:A4, B2:B4, C2:C4, D2:D4, E2:E4, 12000, 3, 150)',
    },
  ],
  compute: ({ fix, distance_nm, before_fix_nm, altitude_ft, kind, from_ft, angle_deg, groundspeed_kt }, { rows: places, height }) => {
    const rows = altitude_ft.map((altitudeFeet, index): Row => ({
      fix: fix[index] ?? `row ${places[index] ?? index + 1}`,
      place: places[index] ?? index + 1,
      distanceNauticalMiles: (distance_nm[index] ?? 0) - (before_fix_nm[index] ?? 0),
      altitudeFeet,
      kind: kind[index] ?? 'at',
    }));
    return layRows({ rows, from_ft, angle_deg, groundspeed_kt }, height);
  },
});
