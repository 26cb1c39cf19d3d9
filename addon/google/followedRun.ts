// A long change is followed, and stopped, by further calls of the panel while the first one runs: all of them see the
// user's own cache of this script. The cache promises to keep nothing: a lost entry means a step that is not told, or a
// stop that has to be asked for again, which the panel does at every turn.
import type { Progress } from '../panel/host';
import type { InsertionPlan } from '../workbook/insertionPlan';
import type { RunAttended } from './panelApi';

/** Told before each step: what it is, and how many of how many sheets are done. Throws where the user has stopped the run. */
export type Follow = (doing: string, done: number, of: number) => void;

export class StoppedByUser extends Error {}

/** As long as the platform lets one run last. */
const keptSeconds = 360;

const progressKey = (run: string): string => `rampwright progress ${run}`;
const stopKey = (run: string): string => `rampwright stop ${run}`;

/** Of a run that nobody looks at, such as one from the menu. */
export const unfollowed: Follow = () => undefined;

/** `run` is the panel's own name for the run. Writes are kept back by the platform: each step is flushed, or all of them would be told before the first is done. */
export function followed(run: string): Follow {
  const cache = CacheService.getUserCache();
  return (doing, done, of) => {
    SpreadsheetApp.flush();
    if (cache.get(stopKey(run)) !== null) throw new StoppedByUser('the run was stopped');
    cache.put(progressKey(run), JSON.stringify({ doing, done, of }), keptSeconds);
  };
}

/** The steps of an insertion, each told as it begins. */
export interface ToldSteps {
  readonly making: () => void;
  /** The sheet with this index of the plan. */
  readonly writing: (index: number) => void;
  readonly rules: () => void;
}

export function toldTo(follow: Follow, { added }: Pick<InsertionPlan, 'added'>): ToldSteps {
  const of = added.length;
  return {
    making: () => follow(of === 1 ? 'Making a sheet.' : `Making ${of} sheets.`, 0, of),
    writing: (index) => follow(`Writing "${added[index]?.template.name ?? ''}", sheet ${index + 1} of ${of}.`, index, of),
    rules: () => follow('Writing the rules of entries.', of, of),
  };
}

/** From another call of the panel: how far the run is, as far as it is known, and with `stop` that it shall stop. */
export function attendRun({ run, stop }: { readonly run: string; readonly stop: boolean }): RunAttended {
  const cache = CacheService.getUserCache();
  if (stop) cache.put(stopKey(run), 'stop', keptSeconds);
  const told = cache.get(progressKey(run));
  return { progress: told === null ? null : (JSON.parse(told) as Progress) };
}
