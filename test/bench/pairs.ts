// One job measured both ways, side by side: first that both give the same values, then the times, in turn.
import { openSaved, type CellResult, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { benchWorkbook, sheetName, type BenchSheet } from './benchSheet';
import { timed, type Timing } from './engineTimer';
import type { Edit, Job } from './job';
import { median } from './numbers';

export interface Sides<Measured> {
  readonly ours: Measured;
  readonly byHand: Measured;
}
type Side = keyof Sides<unknown>;
const sides: readonly Side[] = ['ours', 'byHand'];

/** Both ways round off differently, and the engine keeps 12 to 15 digits. */
export const tolerance = 1e-9;

const agree = (one: CellResult, other: CellResult): boolean =>
  typeof one === 'number' && typeof other === 'number' ? Math.abs(one - other) <= tolerance * Math.max(1, Math.abs(one)) : one === other;

type Opened = Sides<HeadlessWorkbook>;

/** The results, the same both ways and none of them an error; else the times would compare two different jobs. */
function sameResults({ name, results }: Job, opened: Opened): string {
  const [ours, byHand] = sides.map((side) => opened[side].values(sheetName, results));
  ours?.forEach((row, index) =>
    row.forEach((value, across) => {
      const other = byHand?.[index]?.[across] ?? '';
      const isError = typeof value === 'string' && /^#|: .* must /.test(value);
      if (isError || !agree(value, other))
        throw new Error(
          `${name}: result ${across + 1} of row ${index + 1} is ${JSON.stringify(value)} by our call and ${JSON.stringify(other)} by hand`,
        );
    }),
  );
  return JSON.stringify(ours);
}

const openSide = (sheet: BenchSheet, rows: number): Promise<HeadlessWorkbook> => openSaved(benchWorkbook(sheet, rows));

/** Each side goes first every other time, so that neither always sweeps up after the other. */
const inTurn = (round: number): readonly Side[] => (round % 2 === 0 ? sides : [...sides].reverse());

const medianOf = (times: readonly Timing[]): Timing => ({
  felt: median(times.map(({ felt }) => felt)),
  withoutWait: median(times.map(({ withoutWait }) => withoutWait)),
});
const medians = (times: Sides<readonly Timing[]>): Sides<Timing> => ({ ours: medianOf(times.ours), byHand: medianOf(times.byHand) });

/** From the edit to the end of the calculation. The first round only warms up. */
async function editTimes(job: Job, opened: Opened, edits: readonly [Edit, Edit], rounds: number): Promise<Sides<Timing>> {
  const times: Sides<Timing[]> = { ours: [], byHand: [] };
  let before = sameResults(job, opened);
  for (let round = -1; round < rounds; round += 1) {
    const edit = edits[round % 2 === 0 ? 0 : 1];
    for (const side of inTurn(round)) {
      const time = await timed(() => opened[side].set(sheetName, edit[side]));
      if (round >= 0) times[side].push(time);
    }
    const after = sameResults(job, opened);
    if (after === before) throw new Error(`${job.name}: an edit changed nothing`);
    before = after;
  }
  return medians(times);
}

/** From a saved workbook to the end of its first calculation, the start of an engine among it. */
async function loadTimes(job: Job, rows: number, rounds: number): Promise<Sides<Timing>> {
  const times: Sides<Timing[]> = { ours: [], byHand: [] };
  for (let round = 0; round < rounds; round += 1) {
    for (const side of inTurn(round)) {
      let workbook: HeadlessWorkbook | undefined;
      const data = benchWorkbook(job[side], rows);
      times[side].push(await timed(async () => (workbook = await openSaved(data))));
      workbook?.dispose();
    }
  }
  return medians(times);
}

async function withBoth<Answer>(job: Job, rows: number, work: (opened: Opened) => Promise<Answer>): Promise<Answer> {
  const opened = { ours: await openSide(job.ours, rows), byHand: await openSide(job.byHand, rows) };
  try {
    return await work(opened);
  } finally {
    for (const side of sides) opened[side].dispose();
  }
}

export interface PairTimes {
  readonly name: string;
  readonly edit: Sides<Timing>;
  readonly load: Sides<Timing>;
}

/** An input that every row reads is edited, and the workbook loaded. Throws where the values differ. */
export async function sharedInputTimes(job: Job, rows: number, rounds: { readonly edits: number; readonly loads: number }): Promise<PairTimes> {
  const edit = await withBoth(job, rows, (opened) => editTimes(job, opened, job.shared, rounds.edits));
  return { name: job.name, edit, load: await loadTimes(job, rows, rounds.loads) };
}

/** An input of one row is edited. Throws where the values differ. */
export const oneRowTimes = (job: Job, rows: number, rounds: number): Promise<Sides<Timing>> =>
  withBoth(job, rows, (opened) => editTimes(job, opened, job.oneRow, rounds));
