// The sheet function that looks for wrong entries in a loading.
import type { Envelope } from '../../core/loading/balance';
import { dayNumber } from '../../core/basics/civilDate';
import { CoreError } from '../../core/basics/errors';
import { doubtOfCorners, type CornerDoubt } from '../../core/loading/corners';
import { doubtOfTotal, doubtsOfEntries, type EntryDoubt, type TotalDoubt } from '../../core/loading/entries';
import type { WeightUnit } from '../../core/loading/seats';
import { laying, result, type ResultCell } from '../registry/declaration';
import { headingsAbove } from '../registry/headings';
import { column, optional, unreadableMeansUndefined } from '../registry/modifiers';
import { date } from '../registry/readDate';
import { limitInWords, number } from '../registry/readNumber';
import { choice, shownName } from '../registry/readText';
import {
  envelopeHelp,
  envelopeOf,
  envelopeParameters,
  corners,
  momentDivisor,
  momentsIn,
  type EnvelopeWays,
  type TypedEnvelope,
} from './readEnvelope';
import { armOrBlank, armsOf, stationMoments } from './readStations';
import { weighingRows } from './readWeighings';
import { emptyStation, weighedInWords } from './weighedWords';

const shown = (value: number): string => limitInWords(Number(value.toPrecision(4)));

const otherUnit = { lb: 'kg', kg: 'lb' } as const;
/** Such as "77 kg are 170 lb", where the unit is told. */
const inOther = (weight: number, unit: WeightUnit | undefined, converted: number): string =>
  unit === undefined
    ? 'is the weight in another unit?'
    : `typed in ${otherUnit[unit]}? ${shown(weight)} ${otherUnit[unit]} are ${shown(converted)} ${unit}`;

/** `rows`: the place in its range of each row that is not blank. */
function doubtInWords(doubt: EntryDoubt, rows: readonly number[]): string {
  switch (doubt.kind) {
    case 'repeated':
      return `the same station stands in row ${rows[doubt.firstRow] ?? doubt.firstRow + 1} already`;
    case 'swapped':
      return 'weight and arm look swapped, or the arm is a moment';
    case 'moment':
      return `the arm looks like a moment: divided by the weight it is ${shown(doubt.arm)}`;
    case 'below-zero':
      return 'a load cannot weigh less than 0';
    case 'nobody':
      return 'nobody in the front seats: who flies?';
    case 'light-pilot':
      return `too light for a person in the front seats: ${inOther(doubt.weight, doubt.unit, doubt.converted)}`;
    case 'all-light':
      return `everybody aboard is light, ${shown(doubt.others)} ${doubt.unit} behind: are the people typed in ${otherUnit[doubt.unit]}?`;
    case 'heavy-seat':
      return `too heavy for who sits there: ${inOther(doubt.weight, doubt.unit, doubt.converted)}`;
    case 'ahead-of-pilot':
      return `the arm lies ahead of the front seats, ${shown(doubt.arm)}`;
    case 'far':
      return `the arm is further from the datum than ${shown(doubt.reach)}`;
  }
}

function totalInWords(doubt: TotalDoubt): string {
  if (doubt.kind === 'far-total')
    return `the weights add up to ${shown(doubt.total)}, far outside the envelope: are they in the unit of its corners?`;
  const { kind, total, converted } = doubt;
  const [typed, meant] = kind === 'kilograms-for-pounds' ? ['kilograms', 'pounds'] : ['pounds', 'kilograms'];
  return `the weights add up to ${shown(total)}, outside the envelope; as ${typed} they would be ${shown(converted)} ${meant}`;
}

const cornerInWords = ({ of, value, others, from }: CornerDoubt): string =>
  from === 'maximum'
    ? `a corner of the envelope at ${of} ${shown(value)} is above the maximum take-off weight, ${shown(others.high)}`
    : `a corner of the envelope at ${of} ${shown(value)} lies far from the ${from === 'stations' ? 'stations' : 'others'}, ${shown(others.low)} to ${shown(others.high)}`;

/** Points that are no outline are the user's to mend, so they are a row of the answer and no error. */
function outlineInWords(typed: TypedEnvelope, ways: EnvelopeWays): { readonly reason: string } | Envelope {
  try {
    return envelopeOf(typed, ways);
  } catch (thrown) {
    if (!(thrown instanceof CoreError)) throw thrown;
    return { reason: 'the corners of the envelope are not one outline: fewer than three, on one line, or out of order so that it crosses itself' };
  }
}

export const LOADING_ENTRIES = laying({
  name: 'LOADING_ENTRIES',
  subject: 'Weight and balance',
  summary:
    'Looks for entries of a loading that are probably wrong: swapped, in the other unit, a moment for an arm, a station twice, nobody in the front seats, a corner out of order or far off.',
  parameters: {
    stations: column(shownName({ mustBe: 'the name of a station', help: 'Names of the stations, one to a row.' })),
    weights: column(number({ unit: '', minimum: -10_000_000, maximum: 10_000_000, help: 'Weight at each station, without fuel.' })),
    arms: armOrBlank,
    envelope: corners(envelopeHelp),
    headings: headingsAbove,
    weight_unit: optional(
      unreadableMeansUndefined(
        choice<WeightUnit>({
          words: ['lb', 'kg'],
          also: { lbs: 'lb', pounds: 'lb', kilograms: 'kg' },
          help: 'Unit of the weights, lb or kg: with it people too light or too heavy for that unit are told.',
        }),
      ),
      undefined,
      'people are compared with the envelope alone',
    ),
    maximum_weight: optional(
      number({ unit: '', minimum: 0, maximum: 10_000_000, aboveMinimum: true, help: 'Maximum take-off weight: no corner lies far above it.' }),
      undefined,
      'the corners are compared with one another alone',
    ),
    moments: stationMoments,
    moments_in: momentsIn,
    ...envelopeParameters,
    weighings: optional(
      weighingRows(
        'The weighing record, in any order of days: day, weighing or change, weight, arm, moment (instead of the arm). The empty aircraft is the station with that word in its name, else the heaviest.',
      ),
      [],
      'the empty aircraft is not held against a record',
    ),
    as_of: optional(date('The day asked about. Later lines of the record do not count yet.'), undefined, 'every line of the record counts'),
  },
  results: {
    station: result('', 'Name of the station; "all" for the whole loading.'),
    verdict: result('', 'OK, or CHECK where the entry looks wrong.'),
    reason: result('', 'What looks wrong.'),
  },
  sources: ['common-practice', 'sp-811'],
  notes:
    'Common practice, no source: guesses from sizes, so nothing here is NO. An arm is doubted beyond five times the furthest arm of the envelope or 40 times its width, whichever is more; a weight of the size of an arm beside an arm beyond three times or 12 times, or where swapping the two brings the total inside, as swapped. ' +
    'The total is compared with the envelope as typed and converted between pounds and kilograms; below 0.6 of its least weight or above 1.5 of its greatest it is doubted in any case. ' +
    'Front seats are known by name (front, pilot, crew, left seat, right seat): all of them at 0, or none of 2.5 % of the least weight and of 50 kg, are doubted; so is a load below 0, a seat above 150 kg a person, and, in pounds, front seats below 170 lb together with all others at 50 to 110 lb. ' +
    'Arms rise from the front seats to those behind and to the baggage: a row out of that order is doubted where its weight as the arm would mend it, or where it lies ahead of the front seats. ' +
    'Beside a weighing record the weight of the empty aircraft is doubted at more than a thousandth from it, its arm at more than 0.5 % of the width of the envelope. ' +
    'A corner is doubted at more than three times the width of the others from them and a quarter of itself, an arm beyond the stations by more than these lie apart and a quarter of them, a greatest weight above four times the least or 3 % above the maximum take-off weight, and one alone at its end: a weight by a quarter of the width of the others, an aft arm by 0.35, a forward arm by 0.3, or 1.5 at the least weight of an outline that is nowhere hollow.',
  examples: [
    {
      arguments: [
        [['empty'], ['front'], ['bags']],
        [[1000], [42], [40]],
        [[40], [850], [3800]],
        [
          [38, 900],
          [38, 1400],
          [40, 1700],
          [50, 1700],
          [50, 900],
        ],
      ],
      formula: '=LOADING_ENTRIES(B2:B4, C2:C4, D2:D4, G2:H6)',
      gives: [
        ['empty', 'OK', ''],
        ['front', 'CHECK', 'weight and arm look swapped, or the arm is a moment'],
        ['bags', 'CHECK', 'weight and arm look swapped, or the arm is a moment'],
        ['all', 'OK', ''],
      ],
      source: 'Invented loading, worked by hand: both weights lie between 38 and 50, as arms do; both arms are beyond 3 x 50 and 12 x 12',
    },
  ],
  compute: ({ stations, weights, arms, envelope, weight_unit, maximum_weight, moments, moments_in, weighings, as_of, ...ways }, { rows }) => {
    const divisor = momentDivisor(moments_in);
    const known = armsOf(weights, arms, moments, divisor, rows);
    const entries = stations.map((name, index) => ({ name, weight: weights[index] ?? 0, arm: known[index] ?? 0 }));
    const outline = outlineInWords(envelope, ways);
    if ('reason' in outline) return [...entries.map(({ name }): ResultCell[] => [name, 'UNKNOWN', '']), ['all', 'CHECK', outline.reason]];
    const doubts = doubtsOfEntries(entries, outline, weight_unit);
    const empty = weighings.length === 0 ? -1 : emptyStation(entries);
    const today = as_of === undefined ? Infinity : dayNumber(as_of);
    const judged = entries.map((entry, index): ResultCell[] => {
      const doubt = doubts[index];
      if (doubt !== undefined) return [entry.name, 'CHECK', doubtInWords(doubt, rows)];
      if (index !== empty) return [entry.name, 'OK', ''];
      const { verdict, reason } = weighedInWords(weighings, divisor, today, entry, outline);
      return [entry.name, verdict, reason];
    });
    const [total, corner] = [doubtOfTotal(entries, outline), doubtOfCorners(known, outline, maximum_weight)];
    const all = [...(total === undefined ? [] : [totalInWords(total)]), ...(corner === undefined ? [] : [cornerInWords(corner)])];
    return [...judged, ['all', all.length === 0 ? 'OK' : 'CHECK', all.join('; ')]];
  },
});
