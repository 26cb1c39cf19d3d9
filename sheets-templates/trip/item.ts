// What the items of the verdict share.
import { isDay } from '../build';
import { tripRows as rows } from './rows';

/** In the place of a verdict where the pilot has switched an item off, or has nothing of the kind. */
export const notJudged = 'not judged';

export type Item = readonly [item: string, verdict: string | ((reasonCell: string) => string), reason: string | ((verdictCell: string) => string)];

export const [firstDay, endDay] = [`B${rows.firstDay}`, `B${rows.lastDay}`];
export const allDays = `AND(${[firstDay, endDay, 'as_of'].map(isDay).join(',')})`;
