// Who owes what: a cost split among members so that the parts add up to the last cent, and the statement of many costs.
// Amounts are counted in whole minor units (cents), so nothing is lost; currencies are never added together.
import { CoreError } from './errors';
import { byName, type Named } from './named';

/**
 * Splits a whole number of units in proportion to the parts, by the largest remainder: everyone first gets the whole
 * units below his exact part, and the units left over go one each to the largest fractions, the earlier of equals first.
 * @source largest-remainder. The shares always add up to `units`, and each is less than one unit from its exact part.
 */
export function splitUnits(units: number, parts: readonly number[]): number[] {
  const whole = parts.reduce((sum, part) => sum + part, 0);
  if (!(whole > 0)) throw new CoreError('nothing-to-share-by', { parts: parts.length });
  const exact = parts.map((part) => (Math.abs(units) * part) / whole);
  const shares = exact.map(Math.floor);
  const left = Math.abs(units) - shares.reduce((sum, share) => sum + share, 0);
  // Fractions that are equal by hand may differ in their last bits: these are no difference, or a later one would be served first.
  const slack = 8 * Number.EPSILON * Math.max(1, Math.abs(units));
  const byFraction = exact
    .map((quota, index) => ({ index, fraction: quota - Math.floor(quota) }))
    .sort((one, other) => (Math.abs(other.fraction - one.fraction) > slack ? other.fraction - one.fraction : one.index - other.index));
  for (const { index } of byFraction.slice(0, left)) shares[index] = (shares[index] ?? 0) + 1;
  return units < 0 ? shares.map((share) => (share === 0 ? 0 : -share)) : shares;
}

/** Whole minor units of an amount; undefined where it is finer than the currency's smallest coin, and cannot be split to the last of them. */
export function minorUnits(amount: number, decimals: number): number | undefined {
  const scaled = amount * 10 ** decimals;
  const units = Math.round(scaled);
  return Math.abs(scaled - units) > 1e-6 * Math.max(1, Math.abs(scaled) * 1e-9) ? undefined : units;
}

export const amountOfUnits = (units: number, decimals: number): number => units / 10 ** decimals;

/** Decimals of a currency, 2 unless listed. @source iso-4217, minor units, from memory. */
const otherDecimals: Readonly<Record<string, number>> = Object.fromEntries([
  ...'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF'.split(' ').map((code) => [code, 0] as const),
  ...'BHD IQD JOD KWD LYD OMR TND'.split(' ').map((code) => [code, 3] as const),
]);
export const decimalsOf = (currency: string): number => otherDecimals[currency] ?? 2;

export type ShareRule = 'equal' | 'hours' | 'share';

export interface Cost {
  readonly aircraft: Named;
  /** Whole minor units; undefined where nobody has written the cost down. */
  readonly units: number | undefined;
  readonly currency: string;
  readonly rule: ShareRule;
}

/** One member's part in one aircraft. */
export interface Participation {
  readonly member: Named;
  readonly aircraft: Named;
  readonly hours: number;
  readonly share: number;
}

/** As an aircraft: of the whole fleet. Such a member takes part in every aircraft; such a cost falls on every member. */
export const wholeFleet = 'all';

export interface Owed {
  readonly named: Named;
  readonly currency: string;
  readonly units: number;
}

export interface Statement {
  /** In the order of the participations. */
  readonly members: readonly (Owed & { readonly of: readonly Owed[] })[];
  readonly aircraft: readonly Owed[];
  /** Costs that fall on nobody, since no member has hours or a share in the aircraft. */
  readonly unshared: readonly (Owed & { readonly rule: ShareRule })[];
  readonly totals: readonly { readonly currency: string; readonly units: number }[];
  /** Aircraft of the costs without an amount. */
  readonly unknown: readonly Named[];
}

/** Each member once, with what counts for him under the rule. */
function partsIn(participations: readonly Participation[], aircraft: Named, rule: ShareRule): { readonly member: Named; readonly part: number }[] {
  const concerned = participations.filter((row) => aircraft.key === wholeFleet || row.aircraft.key === aircraft.key || row.aircraft.key === wholeFleet);
  const partOf = (row: Participation): number => (rule === 'hours' ? row.hours : row.share);
  return byName(concerned, (row) => row.member).map(({ named, things }) => ({
    member: named,
    part: rule === 'equal' ? 1 : things.reduce((sum, row) => sum + partOf(row), 0),
  }));
}

function added(owed: readonly Owed[]): Owed[] {
  return byName(owed, ({ named }) => named).flatMap(({ named, things }) =>
    [...new Set(things.map(({ currency }) => currency))].map((currency) => ({
      named,
      currency,
      units: things.filter((entry) => entry.currency === currency).reduce((sum, { units }) => sum + units, 0),
    })),
  );
}

export function costStatement(costs: readonly Cost[], participations: readonly Participation[]): Statement {
  const known = costs.flatMap(({ units, ...cost }) => (units === undefined ? [] : [{ ...cost, units }]));
  const split = known.map((cost) => ({ cost, parts: partsIn(participations, cost.aircraft, cost.rule) }));
  const shared = split.filter(({ parts }) => parts.some(({ part }) => part > 0));
  const unshared = split.filter(({ parts }) => !parts.some(({ part }) => part > 0));
  const shares = shared.flatMap(({ cost, parts }) => {
    const units = splitUnits(cost.units, parts.map(({ part }) => part));
    return parts.map(({ member }, index) => ({ member, aircraft: cost.aircraft, currency: cost.currency, units: units[index] ?? 0 }));
  });
  const ofMember = (member: Named, currency: string): Owed[] =>
    added(shares.filter((share) => share.member.key === member.key && share.currency === currency).map(({ aircraft, units }) => ({ named: aircraft, currency, units })));
  const places = new Map(participations.map(({ member }, index) => [member.key, index] as const).reverse());
  const inOrder = (one: Owed, other: Owed): number => (places.get(one.named.key) ?? 0) - (places.get(other.named.key) ?? 0);
  const currencies = [...new Set(known.map(({ currency }) => currency))];
  return {
    members: added(shares.map(({ member, currency, units }) => ({ named: member, currency, units }))).sort(inOrder).map((owed) => ({ ...owed, of: ofMember(owed.named, owed.currency) })),
    aircraft: added(known.map(({ aircraft, currency, units }) => ({ named: aircraft, currency, units }))),
    unshared: unshared.map(({ cost: { aircraft, currency, units, rule } }) => ({ named: aircraft, currency, units, rule })),
    totals: currencies.map((currency) => ({ currency, units: known.filter((cost) => cost.currency === currency).reduce((sum, { units }) => sum + units, 0) })),
    unknown: costs.filter(({ units }) => units === undefined).map(({ aircraft }) => aircraft),
  };
}
