// The cards of a fleet on a day, or over the days of a trip, as the spreadsheet's own clock shows the moments at which
// data changes: those moments are fixed in UTC, so in some zones they fall on another day than the effective date.
import { instantOf, type Instant } from '../basics/civilDate';
import { cardAgreement } from './cards';
import type { Named } from '../basics/named';
import { canBegin, changeAfter, givenOutFrom, hasCalendar, type DataSeries } from './series';
import { verdicts, worstVerdict, type Verdict } from '../basics/verdict';

/** A date and time as a clock on the wall shows them: whole day number, and minutes after midnight. */
export interface WallClock {
  readonly day: number;
  readonly minutes: number;
}

export type ClockAt = (instant: Instant) => WallClock;

/** One card as written down; what is missing or cannot be read is undefined. */
export interface LedgerCard {
  readonly aircraft: Named | undefined;
  readonly database: Named | undefined;
  readonly series: DataSeries | undefined;
  /** Effective date of the data on the card. */
  readonly loadedDay: number | undefined;
  /** When on its effective date data of this kind changes, in minutes after 0000 UTC. */
  readonly changesAtMinutes: number | undefined;
  readonly verified: Verification;
  /** The day on which somebody loaded the card; missing where nobody wrote it down, not asked where the list has no such column. */
  readonly loadedOnDay: number | 'missing' | 'not asked';
  /** What the history of its loads has to say besides. */
  readonly told?: readonly Finding[];
}

/** Whether somebody looked at the card after loading: on a day, on a day nobody wrote down, or not (as far as anybody knows). */
export type Verification = { readonly day: number } | 'without a day' | 'no';

export interface Licence {
  readonly aircraft: Named;
  readonly database: Named;
  /** Last day of the licence. */
  readonly endDay: number | undefined;
}

/** One thing to say of a card, with the verdict it alone would give. */
export type Finding =
  | {
      readonly kind:
        | 'no-series'
        | 'no-date'
        | 'no-time'
        | 'off-series'
        | 'not-comparable'
        | 'disagrees'
        | 'not-verified'
        | 'verified-without-day'
        | 'load-day-missing'
        | 'lapses-soon'
        | 'list-ends'
        | 'no-load'
        | 'named-twice';
      readonly verdict: Verdict;
    }
  | { readonly kind: 'load-unplaced'; readonly verdict: Verdict; readonly row: number }
  | { readonly kind: 'ahead' | 'begins-today' | 'out-of-date' | 'ends-today'; readonly verdict: Verdict; readonly at: WallClock }
  | { readonly kind: 'licence-end-unknown'; readonly verdict: Verdict }
  | {
      readonly kind:
        | 'licence-ended'
        | 'licence-ends'
        | 'load-ahead'
        | 'load-too-early'
        | 'load-refused'
        | 'load-failed'
        | 'verified-ahead'
        | 'verified-before-load';
      readonly verdict: Verdict;
      readonly day: number;
    };

export interface CardStanding {
  readonly verdict: Verdict;
  /** Worst first. */
  readonly findings: readonly Finding[];
  /** The moment at which the loaded data is out of date. */
  readonly lapses: Instant | undefined;
  /** Days of the spreadsheet's calendar from the day asked to the day of that moment. */
  readonly daysLeft: number | undefined;
}

interface Span {
  readonly from: Instant;
  /** Undefined where it has no end, or none that is known. */
  readonly to: Instant | undefined;
}

/** The moments between which the data on the card is in force. */
function spanOf({ series, loadedDay, changesAtMinutes }: LedgerCard): Span | undefined {
  if (series === undefined || loadedDay === undefined || changesAtMinutes === undefined || !canBegin(loadedDay, series)) return undefined;
  const next = changeAfter(loadedDay, series);
  return { from: instantOf(loadedDay, changesAtMinutes), to: next === undefined ? undefined : instantOf(next, changesAtMinutes) };
}

const startsAfter = (moment: WallClock, day: number): boolean => moment.day > day;
const withinDay = (moment: WallClock, day: number): boolean => moment.day === day && moment.minutes > 0;

/** What the card itself says on a day. A part of a day in force is CHECK, since the hour of the flight decides. Common practice, no source. */
function ownFindings(card: LedgerCard, from: WallClock | undefined, to: WallClock | undefined, asOfDay: number, warnDays: number): Finding[] {
  if (card.series === undefined) return [{ kind: 'no-series', verdict: 'UNKNOWN' }];
  // Its history says why nothing is known.
  if (card.loadedDay === undefined) return (card.told ?? []).length > 0 ? [] : [{ kind: 'no-date', verdict: 'UNKNOWN' }];
  if (card.changesAtMinutes === undefined) return [{ kind: 'no-time', verdict: 'UNKNOWN' }];
  if (from === undefined) return [{ kind: 'off-series', verdict: 'UNKNOWN' }];
  if (startsAfter(from, asOfDay)) return [{ kind: 'ahead', verdict: 'UNKNOWN', at: from }];
  if (to === undefined) return hasCalendar(card.series) ? [{ kind: 'list-ends', verdict: 'UNKNOWN' }] : [];
  if (withinDay(to, asOfDay)) return [{ kind: 'ends-today', verdict: 'CHECK', at: to }];
  if (to.day <= asOfDay) return [{ kind: 'out-of-date', verdict: 'NO', at: to }];
  if (withinDay(from, asOfDay)) return [{ kind: 'begins-today', verdict: 'CHECK', at: from }];
  return to.day - asOfDay <= warnDays ? [{ kind: 'lapses-soon', verdict: 'CHECK' }] : [];
}

const fleet = 'all';
/** A licence is spoken of ahead of its end, as other papers are. Common practice, no source. */
const licenceWarnDays = 30;

type LicencesOf = (card: LedgerCard) => readonly Licence[];

/** Licences by what they are for, so that a long ledger does not look through all of them for each card. */
function licencesByCard(licences: readonly Licence[]): LicencesOf {
  const keyOf = (aircraft: string, database: string): string => JSON.stringify([aircraft, database]);
  const found = new Map<string, Licence[]>();
  for (const licence of licences) {
    const key = keyOf(licence.aircraft.key, licence.database.key);
    const same = found.get(key) ?? [];
    same.push(licence);
    found.set(key, same);
  }
  return ({ aircraft, database }) => {
    if (database === undefined) return [];
    const own = aircraft === undefined ? [] : (found.get(keyOf(aircraft.key, database.key)) ?? []);
    return [...own, ...(found.get(keyOf(fleet, database.key)) ?? [])];
  };
}

function licenceFindings(own: readonly Licence[], asOfDay: number): Finding[] {
  if (own.length === 0) return [];
  if (own.some(({ endDay }) => endDay === undefined)) return [{ kind: 'licence-end-unknown', verdict: 'CHECK' }];
  const day = Math.max(...own.map(({ endDay }) => endDay ?? 0));
  if (day < asOfDay) return [{ kind: 'licence-ended', verdict: 'CHECK', day }];
  return day - asOfDay <= licenceWarnDays ? [{ kind: 'licence-ends', verdict: 'CHECK', day }] : [];
}

/**
 * A load on a day still to come serves nobody yet. One more than a cycle before its data comes into force is the day of another load: no data
 * is given out before the cycle ahead of it has begun. Common practice, no source.
 */
function loadFindings({ series, loadedDay, loadedOnDay }: LedgerCard, asOfDay: number): Finding[] {
  if (typeof loadedOnDay !== 'number') return [];
  if (loadedOnDay > asOfDay) return [{ kind: 'load-ahead', verdict: 'UNKNOWN', day: loadedOnDay }];
  const tooEarly = series !== undefined && loadedDay !== undefined && loadedOnDay < (givenOutFrom(loadedDay, series) ?? -Infinity);
  return tooEarly ? [{ kind: 'load-too-early', verdict: 'CHECK', day: loadedOnDay }] : [];
}

/** Somebody looked at what is loaded now only where he did on the day of its load or later: else a row typed over would keep the word of the last load. */
function verificationFindings({ series, loadedDay, loadedOnDay, verified, told = [] }: LedgerCard, asOfDay: number): Finding[] {
  // A load that failed says by itself that nobody has looked at the card since.
  if (loadedDay === undefined || told.some(({ kind }) => kind === 'load-failed')) return [];
  if (verified === 'no') return [{ kind: 'not-verified', verdict: 'CHECK' }];
  if (verified === 'without a day') return [{ kind: 'verified-without-day', verdict: 'CHECK' }];
  const { day } = verified;
  if (day > asOfDay) return [{ kind: 'verified-ahead', verdict: 'CHECK', day }];
  if (loadedOnDay === 'missing') return [{ kind: 'load-day-missing', verdict: 'CHECK' }];
  const givenOut = series === undefined ? undefined : givenOutFrom(loadedDay, series);
  const earliest = loadedOnDay === 'not asked' ? (givenOut ?? -Infinity) : loadedOnDay;
  return day < earliest ? [{ kind: 'verified-before-load', verdict: 'CHECK', day }] : [];
}

const agreementFindings = (agreement: Verdict | undefined): Finding[] => {
  if (agreement === 'NO') return [{ kind: 'disagrees', verdict: 'NO' }];
  return agreement === 'OK' ? [] : [{ kind: 'not-comparable', verdict: 'UNKNOWN' }];
};

/** Every card of the ledger on a day of the spreadsheet's calendar. */
export function cardStandings(
  cards: readonly LedgerCard[],
  licences: readonly Licence[],
  asOfDay: number,
  warnDays: number,
  clockAt: ClockAt,
): CardStanding[] {
  const agreements = cardAgreement(
    cards.map(({ aircraft, database, loadedDay }) => ({ aircraft: aircraft?.key, database: database?.key, loadedDay })),
  );
  const licencesOf = licencesByCard(licences);
  return cards.map((card, index) => {
    const span = spanOf(card);
    const to = span?.to === undefined ? undefined : clockAt(span.to);
    const own = ownFindings(card, span === undefined ? undefined : clockAt(span.from), to, asOfDay, warnDays);
    const isUndated = own.some(({ kind }) => kind === 'no-date') || (card.loadedDay === undefined && (card.told ?? []).length > 0);
    const agreement = isUndated ? [] : agreementFindings(agreements[index]);
    const load = [...loadFindings(card, asOfDay), ...verificationFindings(card, asOfDay)];
    const found = [...own, ...agreement, ...load, ...(card.told ?? []), ...licenceFindings(licencesOf(card), asOfDay)];
    const findings = verdicts.flatMap((word) => found.filter(({ verdict }) => verdict === word));
    return {
      verdict: findings.length === 0 ? 'OK' : worstVerdict(findings.map(({ verdict }) => verdict)),
      findings,
      lapses: span?.to,
      daysLeft: to === undefined ? undefined : to.day - asOfDay,
    };
  });
}

/** Of data that has no end, or none that is known. */
function throughOpen({ series }: LedgerCard, from: WallClock, firstDay: number): Verdict {
  if (startsAfter(from, firstDay)) return 'NO';
  if (series === undefined || hasCalendar(series)) return 'UNKNOWN';
  return withinDay(from, firstDay) ? 'CHECK' : 'OK';
}

/** Whether one card is in force through all of some days: CHECK where only for a part of the first or of the last. */
export function cardThroughDays(card: LedgerCard, firstDay: number, lastDay: number, clockAt: ClockAt): Verdict {
  const span = spanOf(card);
  if (span === undefined) return 'UNKNOWN';
  const from = clockAt(span.from);
  if (span.to === undefined) return throughOpen(card, from, firstDay);
  const to = clockAt(span.to);
  if (startsAfter(from, firstDay) || to.day < lastDay || (to.day === lastDay && to.minutes === 0)) return 'NO';
  return withinDay(from, firstDay) || to.day === lastDay ? 'CHECK' : 'OK';
}
