// The sheet function that looks for wrong entries in a loading.
import { envelopeFromPoints } from '../core/balance';
import { CoreError } from '../core/errors';
import { doubtOfTotal, doubtsOfEntries, type EntryDoubt, type TotalDoubt } from '../core/loadingEntries';
import { armOfItem } from './balance';
import { laying, result, type ResultCell } from './registry/declaration';
import { column } from './registry/modifiers';
import { limitInWords, number } from './registry/readNumber';
import { numberRows } from './registry/readTable';
import { text } from './registry/readText';

const shown = (value: number): string => limitInWords(Number(value.toPrecision(4)));

/** `rows`: the place in its range of each row that is not blank. */
function doubtInWords(doubt: EntryDoubt, rows: readonly number[]): string {
  if (doubt.kind === 'repeated') return `the same station stands in row ${rows[doubt.firstRow] ?? doubt.firstRow + 1} already`;
  if (doubt.kind === 'swapped') return 'weight and arm look swapped, or the arm is a moment';
  if (doubt.kind === 'moment') return `the arm looks like a moment: divided by the weight it is ${shown(doubt.arm)}`;
  return `the arm is further from the datum than ${shown(doubt.reach)}`;
}

function totalInWords({ kind, total, converted }: TotalDoubt): string {
  const [typed, meant] = kind === 'kilograms-for-pounds' ? ['kilograms', 'pounds'] : ['pounds', 'kilograms'];
  return `the weights add up to ${shown(total)}, outside the envelope; as ${typed} they would be ${shown(converted)} ${meant}`;
}

/** Points that are no outline are the user's to mend, so they are a row of the answer and no error. */
function outlineInWords(points: readonly (readonly number[])[]): { readonly reason: string } | ReturnType<typeof envelopeFromPoints> {
  try {
    return envelopeFromPoints(points.map(([arm = 0, weight = 0]) => ({ arm, weight })));
  } catch (thrown) {
    if (!(thrown instanceof CoreError)) throw thrown;
    return { reason: 'the corners of the envelope are not one outline: fewer than three, on one line, or out of order so that it crosses itself' };
  }
}

export const LOADING_ENTRIES = laying({
  name: 'LOADING_ENTRIES',
  subject: 'Weight and balance',
  summary: 'Looks for entries of a loading that are probably wrong: swapped, in the other unit, a moment for an arm, a station twice, corners out of order.',
  parameters: {
    stations: column(text({ mustBe: 'the name of a station', help: 'Names of the stations, one to a row.' })),
    weights: column(number({ unit: '', minimum: -10_000_000, maximum: 10_000_000, help: 'Weight at each station, without fuel.' })),
    arms: column(armOfItem),
    envelope: numberRows({ columns: ['arm', 'weight'], help: 'Two columns, arm and weight: the corners of the limits in order round them.' }),
  },
  results: {
    station: result('', 'Name of the station; "all" for the whole loading.'),
    verdict: result('', 'OK, or CHECK where the entry looks wrong.'),
    reason: result('', 'What looks wrong.'),
  },
  sources: ['common-practice', 'sp-811'],
  notes:
    'Common practice, no source: guesses from sizes, so nothing here is NO. An arm is doubted beyond five times the furthest arm of the envelope or 40 times its width, whichever is more; a weight of the size of an arm beside an arm beyond three times or 12 times, or where swapping the two brings the total inside, as swapped. ' +
    'The total is compared with the envelope as typed and converted between pounds and kilograms.',
  examples: [
    {
      arguments: [[['empty'], ['front'], ['bags']], [[1000], [42], [40]], [[40], [850], [3800]], [[38, 900], [38, 1400], [40, 1700], [50, 1700], [50, 900]]],
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
  compute: ({ stations, weights, arms, envelope }, { rows }) => {
    const entries = stations.map((name, index) => ({ name, weight: weights[index] ?? 0, arm: arms[index] ?? 0 }));
    const outline = outlineInWords(envelope);
    if ('reason' in outline) return [...entries.map(({ name }): ResultCell[] => [name, 'UNKNOWN', '']), ['all', 'CHECK', outline.reason]];
    const doubts = doubtsOfEntries(entries, outline);
    const judged = entries.map(({ name }, index): ResultCell[] => {
      const doubt = doubts[index];
      return doubt === undefined ? [name, 'OK', ''] : [name, 'CHECK', doubtInWords(doubt, rows)];
    });
    const total = doubtOfTotal(entries, outline);
    return [...judged, ['all', total === undefined ? 'OK' : 'CHECK', total === undefined ? '' : totalInWords(total)]];
  },
});
