// What each member of a club owes over a period: costs counted as often as they fall in it, shared among those who are members on that day, less
// what was paid. Whole minor units of the club's currency throughout, and whole parts: no division loses anything.
import { dayMonthsLater } from '../basics/calendarMonths';
import type { Named } from '../basics/named';

export interface DuesMember {
  readonly named: Named;
  /** Undefined: from the beginning, or to this day. Both days are days of membership. */
  readonly joinedDay: number | undefined;
  readonly leftDay: number | undefined;
  /** Whole parts, of whatever size, the same for every member. */
  readonly share: number;
  /** Flown in the period, in whole parts of an hour: see `partsOfHour`. */
  readonly hours: number;
  /** Owed before the period, in units of the club's currency; negative for a credit. */
  readonly forward: number;
}

/** Thousandths of an hour and whole minutes are both whole numbers of it. */
export const partsOfHour = 3000;

/** equal, share and hours share an amount out; per hour is what each hour flown costs, once for the period. */
export type DuesRule = 'equal' | 'share' | 'hours' | 'per hour';

export interface DuesCost {
  readonly name: string;
  /** In the club's currency; a cost of another one has been converted. */
  readonly units: number;
  readonly rule: DuesRule;
  /** The day on which it falls first; undefined for the first day of the period. */
  readonly fromDay: number | undefined;
  /** Undefined: it falls once. */
  readonly everyMonths: number | undefined;
  /** The last day on which it can fall. */
  readonly toDay: number | undefined;
}

export interface DuesPayment {
  readonly member: Named;
  readonly day: number;
  readonly units: number;
  readonly remark: string;
}

export interface DuesAccount {
  readonly named: Named;
  readonly forward: number;
  readonly charges: readonly { readonly name: string; readonly rule: DuesRule; readonly times: number; readonly units: number }[];
  readonly payments: readonly DuesPayment[];
  readonly charged: number;
  readonly paid: number;
  /** Owed at the end of the period; negative for a credit. */
  readonly balance: number;
}

export interface Dues {
  /** In the order of the members. */
  readonly accounts: readonly DuesAccount[];
  /** What falls on nobody, since nobody is a member on the day, or none has a part. */
  readonly unshared: readonly { readonly name: string; readonly times: number; readonly units: number }[];
  /** Payments of the period by nobody in the list of members. */
  readonly strangers: readonly DuesPayment[];
}

/** Whole quotient and rest of whole numbers that a double holds exactly. */
function divided(dividend: number, divisor: number): { readonly whole: number; readonly rest: number } {
  let whole = Math.floor(dividend / divisor);
  // The quotient of doubles may lie on the other side of a whole number.
  while (whole * divisor > dividend) whole -= 1;
  while (dividend - whole * divisor >= divisor) whole += 1;
  return { whole, rest: dividend - whole * divisor };
}

/** Undefined where the product is beyond what a double holds exactly. */
const exact = (product: number): number | undefined => (Math.abs(product) <= Number.MAX_SAFE_INTEGER ? product : undefined);

/** So many times a fraction of whole numbers, to the nearest whole one, half away from nothing; undefined where it is too large to be exact. */
export function timesFraction(units: number, numerator: number, denominator: number): number | undefined {
  const product = exact(2 * Math.abs(units) * numerator + denominator);
  if (product === undefined) return undefined;
  const { whole } = divided(product, 2 * denominator);
  return units < 0 && whole > 0 ? -whole : whole;
}

/**
 * Shares by the largest remainder, in whole numbers: everyone first gets the whole units below his exact part, the units left over go one each to
 * the largest remainders, the earlier of equals first. Undefined where nobody has a part. @source largest-remainder
 */
export function sharesOf(units: number, parts: readonly number[]): number[] | undefined {
  const all = parts.reduce((sum, part) => sum + part, 0);
  if (all <= 0 || exact(Math.abs(units) * all) === undefined) return undefined;
  const quotas = parts.map((part, index) => ({ index, ...divided(Math.abs(units) * part, all) }));
  const shares = quotas.map(({ whole }) => whole);
  const left = Math.abs(units) - shares.reduce((sum, share) => sum + share, 0);
  const largest = [...quotas].sort((one, other) => other.rest - one.rest || one.index - other.index).slice(0, left);
  for (const { index } of largest) shares[index] = (shares[index] ?? 0) + 1;
  return units < 0 ? shares.map((share) => (share === 0 ? 0 : -share)) : shares;
}

/** The days of the period on which a cost falls. */
export function fallsOn({ rule, fromDay, everyMonths, toDay }: DuesCost, firstDay: number, lastDay: number): number[] {
  if (rule === 'per hour') return [firstDay];
  const begin = fromDay ?? firstDay;
  const end = Math.min(lastDay, toDay ?? lastDay);
  const days: number[] = [];
  for (let term = 0; ; term += 1) {
    const day = everyMonths === undefined ? begin : dayMonthsLater(begin, term * everyMonths);
    if (day > end || (everyMonths === undefined && term > 0)) return days;
    if (day >= firstDay) days.push(day);
  }
}

const isMemberOn = ({ joinedDay, leftDay }: DuesMember, day: number): boolean => (joinedDay ?? day) <= day && day <= (leftDay ?? day);

function partOf(member: DuesMember, rule: DuesRule, day: number): number {
  if (!isMemberOn(member, day)) return 0;
  return rule === 'equal' ? 1 : rule === 'share' ? member.share : member.hours;
}

/** What one cost is for each member and how often it fell on him, and what of it falls on nobody. */
interface Charged {
  readonly each: readonly { readonly units: number; readonly times: number }[];
  readonly unshared: number;
  readonly timesUnshared: number;
}

function chargedFor(cost: DuesCost, members: readonly DuesMember[], firstDay: number, lastDay: number): Charged {
  if (cost.rule === 'per hour') {
    const each = members.map(({ hours }) => ({ units: timesFraction(cost.units, hours, partsOfHour) ?? 0, times: 1 }));
    return { each, unshared: 0, timesUnshared: 0 };
  }
  const days = fallsOn(cost, firstDay, lastDay);
  const each = members.map(() => ({ units: 0, times: 0 }));
  let timesUnshared = 0;
  for (const day of days) {
    const parts = members.map((member) => partOf(member, cost.rule, day));
    const shares = sharesOf(cost.units, parts);
    if (shares === undefined) timesUnshared += 1;
    else
      each.forEach((own, index) => {
        own.units += shares[index] ?? 0;
        own.times += (parts[index] ?? 0) > 0 ? 1 : 0;
      });
  }
  return { each, unshared: timesUnshared * cost.units, timesUnshared };
}

/** Costs, payments and balances from the first to the last day, both included. A name that comes twice among the members is one for the caller to refuse. */
export function duesOf(
  members: readonly DuesMember[],
  costs: readonly DuesCost[],
  payments: readonly DuesPayment[],
  firstDay: number,
  lastDay: number,
): Dues {
  const charged = costs.map((cost) => ({ cost, ...chargedFor(cost, members, firstDay, lastDay) }));
  const inPeriod = payments.filter(({ day }) => day >= firstDay && day <= lastDay);
  const accounts = members.map(({ named, forward }, index): DuesAccount => {
    const charges = charged.flatMap(({ cost: { name, rule }, each }) => {
      const { units, times } = each[index] ?? { units: 0, times: 0 };
      return units === 0 ? [] : [{ name, rule, times, units }];
    });
    const own = inPeriod.filter(({ member }) => member.key === named.key);
    const sum = (all: readonly { readonly units: number }[]): number => all.reduce((total, { units }) => total + units, 0);
    const [total, paid] = [sum(charges), sum(own)];
    return { named, forward, charges, payments: own, charged: total, paid, balance: forward + total - paid };
  });
  const known = new Set(members.map(({ named }) => named.key));
  return {
    accounts,
    unshared: charged.flatMap(({ cost: { name }, unshared, timesUnshared }) =>
      timesUnshared === 0 ? [] : [{ name, times: timesUnshared, units: unshared }],
    ),
    strangers: inPeriod.filter(({ member }) => !known.has(member.key)),
  };
}
