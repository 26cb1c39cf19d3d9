// What the weighing record says of the empty aircraft of a loading.
import { isoDate, civilDateFromDayNumber } from '../../core/basics/civilDate';
import { CoreError } from '../../core/basics/errors';
import type { Envelope, Loading } from '../../core/loading/balance';
import { emptyWeightOn, type EmptyWeight } from '../../core/loading/emptyWeight';
import { isAsWeighed } from '../../core/loading/weighed';
import { limitInWords } from '../registry/readNumber';
import { NamedArgumentError } from '../registry/wordError';
import { armsOf } from './readStations';
import { lackOf, type WeighingRecord } from './readWeighings';

export type Weighed = { readonly verdict: 'OK' | 'CHECK'; readonly reason: string };

const check = (reason: string): Weighed => ({ verdict: 'CHECK', reason });
const rounded = (value: number): string => limitInWords(Number(value.toPrecision(6)));

export const isEmptyStation = (name: string): boolean => /\bempty\b/i.test(name);

/** The station of the empty aircraft: the one named so, else the heaviest. */
export function emptyStation(stations: readonly { readonly name: string; readonly weight: number }[]): number {
  const named = stations.flatMap(({ name }, index) => (isEmptyStation(name) ? [index] : []));
  const [only] = named;
  if (named.length === 1 && only !== undefined) return only;
  const weights = stations.map(({ weight }) => weight);
  return weights.indexOf(Math.max(...weights));
}

/** Throws where the record leads to no weight. */
function recorded(record: WeighingRecord, divisor: number, today: number): EmptyWeight {
  const [weights, arms, moments] = (['weight', 'arm', 'moment'] as const).map((part) => record.map((line) => line[part])) as [
    number[],
    (number | undefined)[],
    (number | undefined)[],
  ];
  const known = armsOf(
    weights,
    arms,
    moments,
    divisor,
    record.map((_, index) => index + 1),
  );
  return emptyWeightOn(
    record.map(({ day = 0, kind = 'change', weight = 0 }, index) => ({ day, kind, weight, arm: known[index] ?? 0 })),
    today,
  );
}

/** `typed`: the empty aircraft of the loading. `today`: lines of later days do not count yet. */
export function weighedInWords(
  record: WeighingRecord,
  divisor: number,
  today: number,
  typed: Pick<Loading, 'weight' | 'arm'>,
  envelope: Envelope,
): Weighed {
  const bad = record.findIndex((line) => lackOf(line) !== undefined);
  const line = record[bad];
  if (line !== undefined) return check(`weighing record, line ${bad + 1} of this aircraft: ${lackOf(line) ?? ''}`);
  try {
    const found = recorded(record, divisor, today);
    const day = isoDate(civilDateFromDayNumber(found.weighedOn));
    if (isAsWeighed(typed, found, envelope)) return { verdict: 'OK', reason: `as weighed on ${day}, changes since: ${found.changes}` };
    return check(`record leads to ${rounded(found.weight)} at ${rounded(found.arm)}, weighed on ${day}`);
  } catch (thrown) {
    if (thrown instanceof CoreError && thrown.code === 'never-weighed') return check('the weighing record has no weighing up to that day');
    if (thrown instanceof CoreError && thrown.code === 'no-weight') return check('the weighing record leads to no weight above 0');
    if (thrown instanceof NamedArgumentError) return check('weighing record: an arm and a moment beside each other do not agree');
    throw thrown;
  }
}
