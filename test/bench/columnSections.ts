// Our spilled call beside the same columns built by hand from built-in formulas, in the local engine without a screen.
import { jobsOfManyRows, nineJobs, recencyJob, type MakeJob } from './jobs';
import { geometricMean } from './numbers';
import { oneRowTimes, sharedInputTimes, tolerance, type PairTimes, type Sides } from './pairs';
import type { Timing } from './engineTimer';
import { met, milliseconds, times, type Section } from './table';

const fewRows = 1000;
const manyRows = 10_000;
const targetOfNine = 5;
const targetOfLog = 20;

type Measure = keyof Timing;

const faster = ({ ours, byHand }: Sides<Timing>, measure: Measure): number => byHand[measure] / ours[measure];
const three = (pair: Sides<Timing>, measure: Measure): string[] => [
  milliseconds(pair.ours[measure]),
  milliseconds(pair.byHand[measure]),
  times(faster(pair, measure)),
];

const rowOf = ({ name, edit, load }: PairTimes, target = ''): string[] => [
  name,
  ...three(edit, 'felt'),
  ...three(edit, 'withoutWait'),
  ...three(load, 'felt'),
  target,
  target === '' ? '' : met(faster(edit, 'felt') >= Number(target)),
];

function meanRow(pairs: readonly PairTimes[]): string[] {
  const mean = (ratio: (pair: PairTimes) => number): number => geometricMean(pairs.map(ratio));
  const felt = mean(({ edit }) => faster(edit, 'felt'));
  const ratios = [felt, mean(({ edit }) => faster(edit, 'withoutWait')), mean(({ load }) => faster(load, 'felt'))];
  return ['geometric mean of the nine', ...ratios.flatMap((ratio) => ['', '', times(ratio)]), String(targetOfNine), met(felt >= targetOfNine)];
}

export async function spilledColumns(): Promise<Section> {
  const rounds = { edits: 5, loads: 3 };
  const measured = async (make: MakeJob): Promise<PairTimes> => sharedInputTimes(make(fewRows), fewRows, rounds);
  const nine: PairTimes[] = [];
  for (const make of nineJobs) nine.push(await measured(make));
  const log = await measured(recencyJob);
  return {
    title: `One spilled call beside columns built by hand from built-in formulas, ${fewRows.toLocaleString('en')} rows, milliseconds`,
    heads: ['job', 'edit: ours', 'by hand', 'ratio', 'less wait: ours', 'by hand', 'ratio', 'load: ours', 'by hand', 'ratio', 'target', ''],
    rows: [...nine.map((pair) => rowOf(pair)), meanRow(nine), rowOf(log, String(targetOfLog))],
    notes: [
      `Both give the same values, within ${tolerance} of their size, before and after each edit. Medians of ${rounds.edits} edits and ${rounds.loads} loads in turn.`,
      'edit: from typing one input that every row reads to the end of the calculation, as felt; the target is for this. less wait: the same without the',
      'time for which the grid waits after an edit before it calculates. load: from the saved workbook to the end of its first calculation, the start of an engine in it.',
      'recency log: count, verdict and last good day of one day over a log of 1,000 flights; no function of ours gives them for each of many days.',
    ],
  };
}

export async function oneEditedRow(): Promise<Section> {
  const rounds = 3;
  const rows: string[][] = [];
  for (const make of jobsOfManyRows) {
    const job = make(manyRows);
    const pair = await oneRowTimes(job, manyRows, rounds);
    const slower = (measure: Measure): number => 1 / faster(pair, measure);
    rows.push([
      job.name,
      ...(['felt', 'withoutWait'] as const).flatMap((measure) => [
        milliseconds(pair.ours[measure]),
        milliseconds(pair.byHand[measure]),
        times(slower(measure)),
      ]),
      '1 or less',
      met(slower('felt') <= 1),
    ]);
  }
  return {
    title: `One edited row of ${manyRows.toLocaleString('en')}, milliseconds`,
    heads: ['job', 'ours', 'by hand', 'ours / by hand', 'less wait: ours', 'by hand', 'ours / by hand', 'target', ''],
    rows,
    notes: [
      `From typing an input of one row to the end of the calculation. The same values both ways, as above. Medians of ${rounds} edits in turn.`,
    ],
  };
}
