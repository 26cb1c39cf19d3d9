// Which groups of a forecast can be in force in a stretch of time, and with what of each.
import type { Change } from './changes';
import type { Conditions } from './conditions';

/** What stands in a conditions object of each element: superseded element by element. */
const elements = {
  wind: ['wind', 'variableFromDegrees', 'variableToDegrees'],
  visibility: ['visibility', 'directional', 'runwayRanges'],
  weather: ['weather'],
  clouds: ['clouds'],
  windShear: ['windShear'],
} as const satisfies Readonly<Record<string, readonly (keyof Conditions)[]>>;
type Element = keyof typeof elements;

const lasts = ({ kind }: Change): boolean => kind === 'FROM' || kind === 'BECOMING';
const says = ({ kind, conditions }: Change, element: Element): boolean =>
  kind === 'FROM' || elements[element].some((part) => conditions[part] !== undefined);

/** By then it is as the change says: from its first minute for FM, at the end of its time for BECMG. */
const settled = ({ kind, from, to }: Change): number => (kind === 'FROM' ? from : to);

const all = Object.keys(elements) as Element[];

/** What is left of a change at the beginning of the stretch; `settledBefore` are the lasting changes that are complete by then. */
function standing(change: Change, settledBefore: readonly Change[], start: number, changes: readonly Change[]): Change | undefined {
  if (!lasts(change)) return change.to > start ? change : undefined;
  const place = changes.indexOf(change);
  const later = settledBefore.filter(
    (other) => settled(other) >= settled(change) && (other.from > change.from || (other.from === change.from && changes.indexOf(other) > place)),
  );
  if (later.length === 0) return change;
  const gone = all.filter((element) => later.some((other) => says(other, element)));
  if (gone.length === all.length) return undefined;
  const parts = new Set<string>(gone.flatMap((element) => elements[element]));
  const left = Object.fromEntries(Object.entries(change.conditions).filter(([part]) => !parts.has(part)));
  return { ...change, conditions: { ...left, unread: change.conditions.unread } };
}

/**
 * Changes of a forecast that can hold somewhere from `start` to `end`, without what others have replaced by then. While a BECMG is going
 * on, what was before it and what comes of it can both hold.
 * @source icao-annex-3, appendix 5, 1.3; wmo-306, FM 51, 51.8.
 */
export function inForce(changes: readonly Change[], start: number, end: number): Change[] {
  const settledBefore = changes.filter((change) => lasts(change) && settled(change) <= start);
  return changes.flatMap((change) => (change.from <= end ? (standing(change, settledBefore, start, changes) ?? []) : []));
}
