// The sentences of LOADING_BRIEF: why a point is OK or not, and what to change.
import type { LateralLimits, LateralSpan, LoadingPoint } from '../../core/loading/flight';
import type { Remedy } from '../../core/loading/remedy';
import { inWords } from '../registry/cellValues';
import type { ResultCell } from '../registry/declaration';
import { limitInWords } from '../registry/readNumber';
import { firstFew } from '../registry/sharedWords';

/** Four digits, more for large whole numbers. */
export const shown = (value: number): string => limitInWords(Math.abs(value) >= 1000 ? Math.round(value) : Number(value.toPrecision(4)));

/** Three digits, all of a large whole number: the same rounding as the cell beside it, so that the two never differ by one. */
const margin = (value: number): string => (value >= 1000 ? shown(value) : limitInWords(Number(value.toPrecision(3))));

export interface Units {
  readonly weight: string;
  readonly arm: string;
}
const inUnit = (value: string, unit: string): string => (unit === '' ? value : `${value} ${unit}`);

/** What of the arm is outside, and by how much; undefined where nothing of it is. */
function armReason({ inside, forwardMargin = 0, aftMargin = 0 }: LoadingPoint, { arm }: Units): string | undefined {
  if (inside) return undefined;
  if (forwardMargin < 0) return `CG ${inUnit(shown(-forwardMargin), arm)} ahead of the forward limit`;
  return aftMargin < 0 ? `CG ${inUnit(shown(-aftMargin), arm)} behind the aft limit` : undefined;
}

function marginsInWords({ forwardMargin, aftMargin, weightMargin = 0 }: LoadingPoint, { weight, arm }: Units): string {
  const arms = [
    ...(forwardMargin === undefined ? [] : [`${inUnit(margin(forwardMargin), arm)} behind the forward limit`]),
    ...(aftMargin === undefined ? [] : [`${inUnit(margin(aftMargin), arm)} ahead of the aft limit`]),
  ];
  return `${inUnit(margin(weightMargin), weight)} under the limit${arms.length === 0 ? '' : `; CG ${arms.join(', ')}`}`;
}

/** Why a point is OK or not, in plain numbers; `limited` is what its limit of weight is called. */
export function pointReason(point: LoadingPoint, units: Units, limited = ''): string {
  const { inside, limit, weight, weightMargin = 0 } = point;
  const arm = armReason(point, units);
  if (limit !== undefined && weight > limit && weightMargin < 0) {
    const over = `${inUnit(shown(weight - limit), units.weight)} over maximum ${limited} weight (${inUnit(shown(limit), units.weight)})`;
    return arm === undefined ? over : `${over}; ${arm}`;
  }
  if (inside) return marginsInWords(point, units);
  return arm ?? (weightMargin < 0 ? `${inUnit(shown(-weightMargin), units.weight)} above the envelope` : 'outside the envelope');
}

const mostNamed = 3;

/** Which lateral arms are missing: the first few by name, and how many more. */
function unplacedInWords(stations: readonly string[], tanks: readonly string[]): string {
  const items = [...stations.map((name) => `station ${inWords(name)}`), ...tanks.map((name) => `tank ${inWords(name)}`)];
  return `${firstFew(items, mostNamed)} ${items.length === 1 ? 'has' : 'have'} no lateral arm`;
}

export function lateralRow(span: LateralSpan, { left, right }: LateralLimits, { arm }: Units): ResultCell[] {
  const reason =
    span.verdict === 'UNKNOWN'
      ? unplacedInWords(span.stations, span.tanks)
      : `from ${shown(span.left)} to ${inUnit(shown(span.right), arm)}, limits ${shown(left)} to ${inUnit(shown(right), arm)}`;
  return ['lateral', span.verdict, '', '', '', '', '', reason];
}

/** Four digits, rounded up, so that what is said to be enough is enough. */
function enough(weight: number): string {
  const step = 10 ** Math.min(0, Math.floor(Math.log10(weight)) - 3);
  return limitInWords(Number((Math.ceil(weight / step - 1e-6) * step).toPrecision(12)));
}

export function remedyInWords(remedy: Remedy, { weight: unit }: Units): string {
  const much = (weight: number): string => inUnit(enough(weight), unit);
  switch (remedy.kind) {
    case 'none-needed':
      return 'nothing to change';
    case 'take-out':
      return `take ${much(remedy.weight)} out${remedy.from === undefined ? '' : ` of ${remedy.from}`}: too heavy at ${remedy.point}${remedy.settles ? '' : '; no one station alone settles it'}`;
    case 'put-in':
      return `put ${much(remedy.weight)} in: below the minimum weight of the envelope at zero fuel`;
    case 'none-found':
      return `no single move is enough; move load ${remedy.direction}`;
    case 'lateral':
      return `move load to the ${remedy.direction}`;
    case 'lateral-unknown':
      return 'nothing fore and aft; lateral balance is not known';
    case 'move':
      return `move ${much(remedy.weight)} from ${remedy.from} to ${remedy.to}${remedy.settles ? '' : '; that is not all, look at the other points'}`;
  }
}
