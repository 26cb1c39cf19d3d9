// The sheet function that says which corrections a distance needs on this runway, and where each comes from.
import type { Correction } from '../../core/runway/distanceCorrections';
import { runwayOperations, type RunwayOperation } from '../../core/runway/factor';
import {
  runwayCorrections,
  type CorrectionDoubt,
  type CorrectionKind,
  type CorrectionRow,
  type OwnCorrection,
  type Surface,
} from '../../core/runway/corrections';
import type { ArgumentError } from '../registry/argumentError';
import { inWords, isRange, type CellValue, type RangeValue } from '../registry/cellValues';
import { laying, result, type ResultCell } from '../registry/declaration';
import { blankMeansUndefined, optional, orUnread, Unread, unreadableMeansUndefined } from '../registry/modifiers';
import { limitInWords, number } from '../registry/readNumber';
import { choice, plainWords } from '../registry/readText';
import { correctionNamed, correctionRows, windOf } from './readCorrections';
import { surface, surfaceChoices, surfaceNamed } from './readSurface';
import { sideBySide } from './sideBySide';

const slopeName = /^(up ?|down ?)?(slope|hill)(,? (up|down|uphill|downhill))?$/;

function kindOf(name: string): CorrectionKind {
  const wind = windOf(name);
  if (wind !== undefined) return wind.from === 'ahead' ? 'headwind' : 'tailwind';
  const plain = plainWords(correctionNamed(name).name);
  if (slopeName.test(plain)) return 'slope';
  const named = surfaceNamed(correctionNamed(name).name);
  return named === undefined || named === 'paved_dry' ? 'other' : named;
}

const ownOf = (correction: Correction): OwnCorrection => ({ kind: kindOf(correction.name), correction });
/** The runway gives the amount of slope, and its surface is there or not. */
const amountFromRunway = (name: string): number | undefined => (kindOf(name) === 'other' ? undefined : 1);

const operationWords: Readonly<Record<RunwayOperation, string>> = { takeoff: 'take-off', landing: 'landing' };
const sizeOf = ({ percent, perAmount }: CorrectionRow): string => `${limitInWords(Number((percent / perAmount).toPrecision(3)))} %`;

const wordings: Readonly<Record<CorrectionDoubt, (row: CorrectionRow, operation: RunwayOperation) => string>> = {
  'unlikely-size': (row) =>
    `${row.name}: ${sizeOf(row)} for each one, usually ${limitInWords(row.usual?.[0] ?? 0)} to ${limitInWords(row.usual?.[1] ?? 0)} %: a typing error?`,
  'wrong-sign': (row) => `${row.name} lengthens a distance and cannot shorten it by ${limitInWords(-row.percent)} %`,
  'beyond-published': (row) => `slope of ${limitInWords(row.amount as number)} % is beyond the ${row.perAmount} % that a factor is published for`,
  'none-published': (row, operation) =>
    `no factor is published for ${operationWords[operation]} on ${plainWords(row.name)}: the dry distance is used`,
  'surface-missing': () => 'the surface of the runway is missing',
  'slope-missing': () => 'the slope of the runway is missing: type 0 where it is level',
};

function rowOf(row: CorrectionRow, operation: RunwayOperation): ResultCell[] {
  const { name, percent, perAmount, amount, verdict, doubt, from } = row;
  const said = from === 'manual' ? "the aircraft's manual" : from === 'safety-sense-7' ? 'UK CAA Safety Sense Leaflet 7' : 'EU 965/2012, CAT.POL.A';
  return [
    plainWords(name),
    percent,
    perAmount,
    typeof amount === 'number' ? amount : '',
    verdict,
    doubt === undefined ? said : wordings[doubt](row, operation),
  ];
}

/** Which correction, and what is wrong with it: behind "rows of ..." the reader says what this cell must be. */
export function unreadCorrections({ mustBe, got, row }: ArgumentError, raw: CellValue): string {
  const name = row === undefined ? undefined : isRange(raw) ? (raw as RangeValue)[row - 1]?.[0] : raw;
  const must = /\((.*)\)$/.exec(mustBe)?.[1] ?? mustBe;
  const which = typeof name === 'string' && name.trim() !== '' ? inWords(name) : row === undefined ? 'the corrections' : `row ${row}`;
  return `${which} of the aircraft's corrections cannot be read: ${must}; got ${got}`;
}

const unreadSurface = ({ got }: ArgumentError): string =>
  `no factor is published for a surface of ${got}: choose ${surfaceChoices.join('; ')}, or keep off it`;

/** No brief reads its blank percent for a number, so nothing is worked out without it. */
const unreadRow = (name: 'surface' | 'corrections', { reason }: Unread): ResultCell[] => [name, '', 1, '', 'UNKNOWN', reason];

interface Runway {
  readonly surface: Surface | Unread | undefined;
  readonly slopePercent: number | undefined;
}

function rowsFor(operation: RunwayOperation, { surface: onSurface, slopePercent }: Runway, own: readonly Correction[] | Unread): ResultCell[][] {
  const unread = [
    ...(onSurface instanceof Unread ? [unreadRow('surface', onSurface)] : []),
    ...(own instanceof Unread ? [unreadRow('corrections', own)] : []),
  ];
  if (onSurface instanceof Unread || own instanceof Unread) return unread;
  return runwayCorrections(operation, { surface: onSurface, slopePercent }, own.map(ownOf)).map((row) => rowOf(row, operation));
}

const runwaySlope = number({
  unit: 'percent',
  minimum: -10,
  maximum: 10,
  help: 'Slope in the direction of take-off or landing, up positive; 0 where it is level.',
});

export const RUNWAY_CORRECTIONS = laying({
  name: 'RUNWAY_CORRECTIONS',
  subject: 'Runway',
  summary:
    "What lengthens or shortens a distance on a runway: the manual's own corrections, else the published factors, as TAKEOFF_BRIEF reads them.",
  parameters: {
    operation: choice<RunwayOperation>({ words: runwayOperations, also: { 'take-off': 'takeoff' }, help: 'Which distance.' }),
    surface: orUnread(blankMeansUndefined(surface), unreadSurface),
    slope_percent: blankMeansUndefined(runwaySlope),
    corrections: optional(
      orUnread(
        correctionRows(
          "The manual's corrections for this operation: name, percent, per amount, amount. A headwind or tailwind, a slope and a surface may leave the amount blank.",
          amountFromRunway,
        ),
        unreadCorrections,
      ),
      [],
      'the manual has none, and no headwind is credited',
    ),
    other_surface: optional(
      orUnread(surface, unreadSurface),
      undefined,
      'with the slope left out too, there is no other runway; else its surface is missing',
    ),
    other_slope_percent: optional(
      unreadableMeansUndefined(runwaySlope),
      undefined,
      'the slope of the other runway is missing, where its surface is given',
    ),
  },
  results: {
    name: result('', 'What it is.'),
    percent: result('percent', 'More distance; negative is less.'),
    for_each: result('', 'For so much of the amount.'),
    amount: result('', 'How much of it there is; blank where the wind of the day gives it.'),
    verdict: result('', 'OK; CHECK where the size is unusual; NO where the sign is wrong; UNKNOWN where it cannot be said.'),
    reason: result('', 'Where it comes from, or what is wrong with it. A surface or a correction that cannot be read is the one row told.'),
  },
  sources: ['safety-sense-7', 'eu-965-2012', 'phak', 'common-practice'],
  notes:
    'The first four columns are what TAKEOFF_BRIEF and LANDING_BRIEF take as corrections. A surface or a slope without a row in the manual takes the published factor (see RUNWAY_FACTOR); a slope that helps is not credited. ' +
    'For another runway, such as the alternate, the same six columns stand again at the right. ' +
    'A size is unusual outside these, in percent: headwind -2.5 to -0.4 a knot, tailwind 1.5 to 10 a knot, slope 2 to 25 for each percent, dry grass 5 to 50, wet grass 10 to 80, soft ground 10 to 150 (common practice, no source).',
  examples: [
    {
      arguments: [
        'takeoff',
        'grass, dry',
        1,
        [
          ['headwind', -10, 9, ''],
          ['tailwind', 10, 2, ''],
        ],
      ],
      gives: [
        ['headwind', -10, 9, '', 'OK', "the aircraft's manual"],
        ['tailwind', 10, 2, '', 'OK', "the aircraft's manual"],
        ['grass dry', 20, 1, 1, 'OK', 'UK CAA Safety Sense Leaflet 7'],
        ['slope', 10, 2, 1, 'OK', 'UK CAA Safety Sense Leaflet 7'],
      ],
      source: 'UK CAA Safety Sense Leaflet 7, table of factors: dry grass 1.20, 2 % uphill 1.10',
      formula: '=RUNWAY_CORRECTIONS("takeoff", "grass, dry", 1, A1:D2)',
    },
  ],
  compute: ({ operation, surface: onSurface, slope_percent, corrections, other_surface, other_slope_percent }) => {
    const rows = rowsFor(operation, { surface: onSurface, slopePercent: slope_percent }, corrections);
    if (other_surface === undefined && other_slope_percent === undefined) return rows;
    return sideBySide(rows, rowsFor(operation, { surface: other_surface, slopePercent: other_slope_percent }, corrections));
  },
});
