// The cards of a fleet on a day, or over the days of a trip, as the spreadsheet's own clock shows the moments at which
// data changes: those moments are fixed in UTC, so in some zones they fall on another day than the effective date.
import { instantOf, type Instant } from './civilDate';
import { cardAgreement } from './cycleCards';
import { effectiveAfter, isEffectiveDate, type CycleSeries } from './cycles';
import { byName, type Named } from './named';
import { verdicts, worstVerdict, type Verdict } from './verdict';

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
  readonly series: CycleSeries | undefined;
  /** Effective date of the data on the card. */
  readonly loadedDay: number | undefined;
  /** When on its effective date data of this kind changes, in minutes after 0000 UTC. */
  readonly changesAtMinutes: number | undefined;
  readonly verified: boolean | undefined;
}

export interface Licence {
  readonly aircraft: Named;
  readonly database: Named;
  /** Last day of the licence. */
  readonly endDay: number | undefined;
}

/** One thing to say of a card, with the verdict it alone would give. */
export type Finding =
  | { readonly kind: 'no-series' | 'no-date' | 'no-time' | 'off-series' | 'not-comparable' | 'disagrees' | 'not-verified' | 'lapses-soon' | 'licence-end-unknown'; readonly verdict: Verdict }
  | { readonly kind: 'ahead' | 'begins-today' | 'out-of-date' | 'ends-today'; readonly verdict: Verdict; readonly at: WallClock }
  | { readonly kind: 'licence-ended' | 'licence-ends'; readonly verdict: Verdict; readonly day: number };

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
  readonly to: Instant;
}

/** The moments between which the data on the card is in force. */
function spanOf({ series, loadedDay, changesAtMinutes }: LedgerCard): Span | undefined {
  if (series === undefined || loadedDay === undefined || changesAtMinutes === undefined || !isEffectiveDate(loadedDay, series)) return undefined;
  return { from: instantOf(loadedDay, changesAtMinutes), to: instantOf(effectiveAfter(loadedDay, series), changesAtMinutes) };
}

const startsAfter = (moment: WallClock, day: number): boolean => moment.day > day;
const withinDay = (moment: WallClock, day: number): boolean => moment.day === day && moment.minutes > 0;

/** What the card itself says on a day. A part of a day in force is CHECK, since the hour of the flight decides. Common practice, no source. */
function ownFindings(card: LedgerCard, from: WallClock | undefined, to: WallClock | undefined, asOfDay: number, warnDays: number): Finding[] {
  if (card.series === undefined) return [{ kind: 'no-series', verdict: 'UNKNOWN' }];
  if (card.loadedDay === undefined) return [{ kind: 'no-date', verdict: 'UNKNOWN' }];
  if (card.changesAtMinutes === undefined) return [{ kind: 'no-time', verdict: 'UNKNOWN' }];
  if (from === undefined || to === undefined) return [{ kind: 'off-series', verdict: 'UNKNOWN' }];
  if (startsAfter(from, asOfDay)) return [{ kind: 'ahead', verdict: 'UNKNOWN', at: from }];
  if (withinDay(to, asOfDay)) return [{ kind: 'ends-today', verdict: 'CHECK', at: to }];
  if (to.day <= asOfDay) return [{ kind: 'out-of-date', verdict: 'NO', at: to }];
  if (withinDay(from, asOfDay)) return [{ kind: 'begins-today', verdict: 'CHECK', at: from }];
  return to.day - asOfDay <= warnDays ? [{ kind: 'lapses-soon', verdict: 'CHECK' }] : [];
}

const fleet = 'all';
/** A licence is spoken of ahead of its end, as other papers are. Common practice, no source. */
const licenceWarnDays = 30;

function licenceFindings({ aircraft, database }: LedgerCard, licences: readonly Licence[], asOfDay: number): Finding[] {
  const own = licences.filter((licence) => licence.database.key === database?.key && (licence.aircraft.key === aircraft?.key || licence.aircraft.key === fleet));
  if (own.length === 0) return [];
  if (own.some(({ endDay }) => endDay === undefined)) return [{ kind: 'licence-end-unknown', verdict: 'CHECK' }];
  const day = Math.max(...own.map(({ endDay }) => endDay ?? 0));
  if (day < asOfDay) return [{ kind: 'licence-ended', verdict: 'CHECK', day }];
  return day - asOfDay <= licenceWarnDays ? [{ kind: 'licence-ends', verdict: 'CHECK', day }] : [];
}

const agreementFindings = (agreement: Verdict | undefined): Finding[] => {
  if (agreement === 'NO') return [{ kind: 'disagrees', verdict: 'NO' }];
  return agreement === 'OK' ? [] : [{ kind: 'not-comparable', verdict: 'UNKNOWN' }];
};

/** Every card of the ledger on a day of the spreadsheet's calendar. */
export function cardStandings(cards: readonly LedgerCard[], licences: readonly Licence[], asOfDay: number, warnDays: number, clockAt: ClockAt): CardStanding[] {
  const agreements = cardAgreement(cards.map(({ aircraft, database, loadedDay }) => ({ aircraft: aircraft?.key, database: database?.key, loadedDay })));
  return cards.map((card, index) => {
    const span = spanOf(card);
    const to = span === undefined ? undefined : clockAt(span.to);
    const own = ownFindings(card, span === undefined ? undefined : clockAt(span.from), to, asOfDay, warnDays);
    const agreement = own.some(({ kind }) => kind === 'no-date') ? [] : agreementFindings(agreements[index]);
    const verified: Finding[] = card.loadedDay === undefined || card.verified === true ? [] : [{ kind: 'not-verified', verdict: 'CHECK' }];
    const found = [...own, ...agreement, ...verified, ...licenceFindings(card, licences, asOfDay)];
    const findings = verdicts.flatMap((word) => found.filter(({ verdict }) => verdict === word));
    return {
      verdict: findings.length === 0 ? 'OK' : worstVerdict(findings.map(({ verdict }) => verdict)),
      findings,
      lapses: span?.to,
      daysLeft: to === undefined ? undefined : to.day - asOfDay,
    };
  });
}

/** Whether one card is in force through all of some days: CHECK where only for a part of the first or of the last. */
export function cardThroughDays(card: LedgerCard, firstDay: number, lastDay: number, clockAt: ClockAt): Verdict {
  const span = spanOf(card);
  if (span === undefined) return 'UNKNOWN';
  const from = clockAt(span.from);
  const to = clockAt(span.to);
  if (startsAfter(from, firstDay) || to.day < lastDay || (to.day === lastDay && to.minutes === 0)) return 'NO';
  return withinDay(from, firstDay) || to.day === lastDay ? 'CHECK' : 'OK';
}

export interface FleetRow {
  readonly aircraft: Named;
  readonly verdict: Verdict;
  /** In the order of `series`; undefined where the aircraft has no such card. */
  readonly bySeries: readonly (Verdict | undefined)[];
}

/** The fleet as a matrix, aircraft by series, each the worst of its cards. A card without a readable series counts for its aircraft alone. */
export function fleetThroughDays(cards: readonly (LedgerCard & { readonly aircraft: Named })[], firstDay: number, lastDay: number, clockAt: ClockAt): { readonly series: readonly string[]; readonly rows: readonly FleetRow[] } {
  const known = cards.flatMap(({ series }) => (series === undefined ? [] : [series]));
  const series = [...new Map(known.map((entry) => [entry.name, entry])).values()].sort((one, other) => one.days - other.days).map(({ name }) => name);
  const rows = byName(cards, ({ aircraft }) => aircraft).map(({ named, things }) => {
    const judged = things.map((card) => ({ series: card.series?.name, verdict: cardThroughDays(card, firstDay, lastDay, clockAt) }));
    const of = (name: string): Verdict | undefined => {
      const own = judged.filter((card) => card.series === name).map(({ verdict }) => verdict);
      return own.length === 0 ? undefined : worstVerdict(own);
    };
    return { aircraft: named, verdict: worstVerdict(judged.map(({ verdict }) => verdict)), bySeries: series.map(of) };
  });
  return { series, rows };
}
