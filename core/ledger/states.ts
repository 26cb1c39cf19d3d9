// The cards of a fleet on a day, or over the days of a trip, as the spreadsheet's own clock shows the moments at which
// data changes: those moments are fixed in UTC, so in some zones they fall on another day than the effective date.
import { instantOf, type Instant } from '../basics/civilDate';
import { cardAgreement } from './cards';
import type { Finding, LedgerCard, WallClock } from './ledgerCard';
import { licenceFindings, type Licence } from './licences';
import { canBegin, changeAfter, givenOutFrom, hasCalendar } from './series';
import { verdicts, worstVerdict, type Verdict } from '../basics/verdict';

export type ClockAt = (instant: Instant) => WallClock;

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
  const licencesSay = licenceFindings(licences);
  return cards.map((card, index) => {
    const span = spanOf(card);
    const to = span?.to === undefined ? undefined : clockAt(span.to);
    const own = ownFindings(card, span === undefined ? undefined : clockAt(span.from), to, asOfDay, warnDays);
    const isUndated = own.some(({ kind }) => kind === 'no-date') || (card.loadedDay === undefined && (card.told ?? []).length > 0);
    const agreement = isUndated ? [] : agreementFindings(agreements[index]);
    const load = [...loadFindings(card, asOfDay), ...verificationFindings(card, asOfDay)];
    const found = [...own, ...agreement, ...load, ...(card.told ?? []), ...licencesSay(card, asOfDay)];
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
