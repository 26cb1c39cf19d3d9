// The weighing record: the last weighing, and the changes of equipment since, lead to today's empty weight and arm.
import { CoreError } from '../basics/errors';
import { totalLoading, type Loading } from './balance';

export interface WeighingRow {
  readonly day: number;
  /** A weighing says what the whole empty aircraft weighs; a change says what was put in, or taken out (a negative weight). */
  readonly kind: 'weighing' | 'change';
  readonly weight: number;
  readonly arm: number;
}

export interface EmptyWeight extends Loading {
  readonly weighedOn: number;
  readonly changes: number;
}

/**
 * Rows of one day count in their order, so that a change above a weighing of that day is in it, and one below comes on top.
 * @source weight-balance-handbook, equipment list and changes of empty weight: the new moment is the old one with those of the changes.
 */
export function emptyWeightOn(rows: readonly WeighingRow[], today: number): EmptyWeight {
  const ordered = rows.map((row, index) => ({ row, index })).sort((one, other) => one.row.day - other.row.day || one.index - other.index);
  const known = ordered.map(({ row }) => row).filter(({ day }) => day <= today);
  const last = known.map(({ kind }) => kind).lastIndexOf('weighing');
  const weighing = known[last];
  if (weighing === undefined) throw new CoreError('never-weighed', { rows: rows.length, later: rows.length - known.length });
  if (weighing.weight <= 0) throw new CoreError('no-weight', { total: weighing.weight });
  const changes = known.slice(last + 1);
  return { ...totalLoading([weighing, ...changes]), weighedOn: weighing.day, changes: changes.length };
}
