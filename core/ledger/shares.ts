// Who owes what: a cost split among members so that the parts add up to the last cent, and the statement of many costs.
// Amounts are counted in whole minor units (cents), so nothing is lost; currencies are never added together.
import { CoreError } from '../basics/errors';
import { byName, type Named } from '../basics/named';

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

/** What may not be known of a cost: whose it is; its amount, missing or finer than the smallest coin; its currency; how it is shared. */
export type Unknown = 'aircraft' | 'amount' | 'too fine' | 'currency' | 'rule';

export interface KnownCost {
  readonly aircraft: Named;
  /** Whole minor units. */
  readonly units: number;
  readonly currency: string;
  readonly rule: ShareRule;
}

export interface UnknownCost {
  readonly aircraft: Named;
  readonly unknown: Unknown;
}

export type Cost = KnownCost | UnknownCost;

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
  /** Aircraft of the costs of which something is not known, with what. */
  readonly unknown: readonly { readonly named: Named; readonly what: Unknown }[];
}

/** Each member once, with what counts for him under a rule. */
interface Parts {
  readonly members: readonly Named[];
  readonly parts: readonly number[];
}

function partsOf(concerned: readonly Participation[], rule: ShareRule): Parts {
  const partOf = (row: Participation): number => (rule === 'hours' ? row.hours : row.share);
  const grouped = byName(concerned, (row) => row.member);
  return {
    members: grouped.map(({ named }) => named),
    parts: grouped.map(({ things }) => (rule === 'equal' ? 1 : things.reduce((sum, row) => sum + partOf(row), 0))),
  };
}

/** Looks each aircraft and rule up once, however many costs ask. */
function partsReader(participations: readonly Participation[]): (aircraft: Named, rule: ShareRule) => Parts {
  const rows = new Map<string, number[]>();
  participations.forEach(({ aircraft }, index) => {
    const places = rows.get(aircraft.key) ?? [];
    places.push(index);
    rows.set(aircraft.key, places);
  });
  const concernedWith = (aircraft: Named): readonly Participation[] => {
    if (aircraft.key === wholeFleet) return participations;
    const indices = [...(rows.get(aircraft.key) ?? []), ...(rows.get(wholeFleet) ?? [])].sort((one, other) => one - other);
    return indices.flatMap((index) => participations[index] ?? []);
  };
  const known = new Map<string, Parts>();
  return (aircraft, rule) => {
    const key = `${rule} ${aircraft.key}`;
    const parts = known.get(key) ?? partsOf(concernedWith(aircraft), rule);
    known.set(key, parts);
    return parts;
  };
}

/** The same cost of the same aircraft comes back month for month: it is split once. */
function splitReader(): (units: number, parts: readonly number[]) => readonly number[] {
  const known = new Map<readonly number[], Map<number, readonly number[]>>();
  return (units, parts) => {
    const ofParts = known.get(parts) ?? new Map<number, readonly number[]>();
    known.set(parts, ofParts);
    const shares = ofParts.get(units) ?? splitUnits(units, parts);
    ofParts.set(units, shares);
    return shares;
  };
}

/** What is owed under each name and currency, summed as it comes. */
class Sums {
  private readonly byKey = new Map<string, Map<string, { readonly named: Named; readonly currency: string; units: number }>>();

  add(named: Named, currency: string, units: number): void {
    const ofName = this.byKey.get(named.key) ?? new Map<string, { named: Named; currency: string; units: number }>();
    this.byKey.set(named.key, ofName);
    const sum = ofName.get(currency) ?? { named: [...ofName.values()][0]?.named ?? named, currency, units: 0 };
    sum.units += units;
    ofName.set(currency, sum);
  }

  /** In the order in which names, and the currencies of each, first came. */
  get owed(): Owed[] {
    return [...this.byKey.values()].flatMap((ofName) => [...ofName.values()]);
  }
}

interface Split {
  readonly cost: KnownCost;
  readonly parts: Parts;
}

/** What each member owes, with its aircraft. */
function membersOwing(shared: readonly Split[], participations: readonly Participation[]): Statement['members'] {
  const sums = new Sums();
  /** By currency, then by member. */
  const ofWhich = new Map<string, Map<string, Sums>>();
  const split = splitReader();
  for (const { cost, parts } of shared) {
    const shares = split(cost.units, parts.parts);
    const ofMembers = ofWhich.get(cost.currency) ?? new Map<string, Sums>();
    ofWhich.set(cost.currency, ofMembers);
    parts.members.forEach((member, index) => {
      const units = shares[index] ?? 0;
      const own = ofMembers.get(member.key) ?? new Sums();
      ofMembers.set(member.key, own);
      own.add(cost.aircraft, cost.currency, units);
      sums.add(member, cost.currency, units);
    });
  }
  const places = new Map(participations.map(({ member }, index) => [member.key, index] as const).reverse());
  const inOrder = (one: Owed, other: Owed): number => (places.get(one.named.key) ?? 0) - (places.get(other.named.key) ?? 0);
  return sums.owed.sort(inOrder).map((owed) => ({ ...owed, of: ofWhich.get(owed.currency)?.get(owed.named.key)?.owed ?? [] }));
}

export function costStatement(costs: readonly Cost[], participations: readonly Participation[]): Statement {
  const known = costs.filter((cost) => 'units' in cost);
  const parts = partsReader(participations);
  const split = known.map((cost): Split => ({ cost, parts: parts(cost.aircraft, cost.rule) }));
  const isShared = (one: Split): boolean => one.parts.parts.some((part) => part > 0);
  const aircraft = new Sums();
  const totals = new Map<string, number>();
  for (const cost of known) {
    aircraft.add(cost.aircraft, cost.currency, cost.units);
    totals.set(cost.currency, (totals.get(cost.currency) ?? 0) + cost.units);
  }
  return {
    members: membersOwing(split.filter(isShared), participations),
    aircraft: aircraft.owed,
    unshared: split.filter((one) => !isShared(one)).map(({ cost: { aircraft: named, currency, units, rule } }) => ({ named, currency, units, rule })),
    totals: [...totals].map(([currency, units]) => ({ currency, units })),
    unknown: costs.flatMap((cost) => ('unknown' in cost ? [{ named: cost.aircraft, what: cost.unknown }] : [])),
  };
}
