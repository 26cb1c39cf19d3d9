// What there is to do at the aircraft: the cards to load or to look at now, and those that change at the next visit of each aircraft.
import { instantOf, type Instant } from '../basics/civilDate';
import type { Named } from '../basics/named';
import { changeAfter, changeOnOrBefore, hasCalendar, identifierOf, isAsIssued, type DataSeries } from './series';
import type { Finding, LedgerCard } from './ledgerCard';
import { licencesForCycle, type Licence } from './licences';
import { cardStandings, type CardStanding, type ClockAt } from './states';

export interface DueCard extends LedgerCard {
  readonly unit: Named | undefined;
  /** Who loads it; blank where nobody is written down. */
  readonly person: Named | undefined;
}

export type DueWhen = 'overdue' | 'now' | 'next';
export type DueDoing = 'load' | 'look at the card' | 'look for a newer issue';

export interface Due {
  readonly when: DueWhen;
  readonly card: DueCard;
  readonly doing: DueDoing;
  /** The data to load; undefined where nobody can tell, or nothing is to be loaded. */
  readonly effectiveDay: number | undefined;
  readonly identifier: string;
  /** The moment at which that data comes into force. */
  readonly from: Instant | undefined;
  /** What is to be known of the card besides. */
  readonly findings: readonly Finding[];
}

type Kind = Finding['kind'];
const loads: ReadonlySet<Kind> = new Set(['out-of-date', 'ends-today', 'no-load', 'no-date', 'load-failed']);
/** Where data is to be loaded, they are asked for the day of that data. */
const ofCover = ['licence-none', 'licence-unclear', 'licence-not-begun', 'licence-not-for-cycle', 'licence-end-unknown'] as const;
const asksCycle: ReadonlySet<Kind> = new Set(ofCover);
const ofLicences: ReadonlySet<Kind> = new Set<Kind>(['licence-ended', 'licence-ends', ...ofCover]);
/**
 * Nothing to do at this card about these: the next visit comes by itself, a licence is renewed elsewhere, and of two cards that differ the one
 * that is behind, or of which nothing is known, is in the list for that.
 */
const elsewhere: ReadonlySet<Kind> = new Set<Kind>([
  ...(['lapses-soon', 'ahead', 'begins-today', 'disagrees', 'not-comparable'] as const),
  ...ofLicences,
]);

/** What the licences of a card say of the cycle that is to be loaded. */
type CoverOf = (card: DueCard, cycleDay: number) => readonly Finding[];

interface Changes {
  /** In force on the day, at its end at the latest. */
  readonly current: number | undefined;
  readonly next: number | undefined;
}

/** The change that serves on a day of the spreadsheet's calendar, and the one after it. */
function changesOn(series: DataSeries, minutes: number, asOfDay: number, clockAt: ClockAt): Changes {
  const isLater = (day: number): boolean => clockAt(instantOf(day, minutes)).day > asOfDay;
  // A zone shifts the moment by a day at most.
  let current = changeOnOrBefore(asOfDay + 1, series);
  while (current !== undefined && isLater(current)) current = changeOnOrBefore(current - 1, series);
  return { current, next: changeAfter(current ?? asOfDay - 1, series) };
}

function dueOf(card: DueCard, when: DueWhen, doing: DueDoing, day: number | undefined, findings: readonly Finding[]): Due {
  const { series, changesAtMinutes } = card;
  return {
    when,
    card,
    doing,
    effectiveDay: day,
    identifier: day === undefined || series === undefined ? '' : identifierOf(day, series),
    from: day === undefined || changesAtMinutes === undefined ? undefined : instantOf(day, changesAtMinutes),
    findings,
  };
}

/** What is to be done with one card on the day itself. */
function nowOf(card: DueCard, { findings }: CardStanding, current: number | undefined, cover: CoverOf): Due[] {
  const here = findings.filter(({ kind }) => !elsewhere.has(kind));
  if (here.length === 0) return [];
  const isOverdue = here.some(({ kind }) => kind === 'out-of-date');
  const isLoad = here.some(({ kind }) => loads.has(kind)) || (card.loadedDay !== undefined && current !== undefined && card.loadedDay < current);
  // Data that is in force already is loaded again only where its load failed and it is the older one that is left.
  const inForce = card.loadedDay !== undefined && current !== undefined && card.loadedDay >= current;
  const doing = isLoad && !inForce ? 'load' : 'look at the card';
  const day = doing === 'load' ? current : undefined;
  const own = findings.filter(({ kind }) => day === undefined || !asksCycle.has(kind));
  return [dueOf(card, isOverdue ? 'overdue' : 'now', doing, day, day === undefined ? own : [...own, ...cover(card, day)])];
}

interface Coming {
  readonly card: DueCard;
  readonly day: number;
  readonly from: number;
}

/** Of each aircraft the first moment at which one of its cards changes, with every card that changes then. */
function nextVisits(coming: readonly Coming[], cover: CoverOf): Due[] {
  const first = new Map<string, number>();
  for (const { card, from } of coming) {
    const key = card.aircraft?.key ?? '';
    first.set(key, Math.min(first.get(key) ?? Infinity, from));
  }
  return coming
    .filter(({ card, from }) => from === first.get(card.aircraft?.key ?? ''))
    .map(({ card, day }) => dueOf(card, 'next', 'load', day, cover(card, day)));
}

const order: readonly DueWhen[] = ['overdue', 'now', 'next'];

function byPlace(one: Due, other: Due): number {
  const text = (name: Named | undefined): string => name?.key ?? '';
  const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
  const moment = ({ when, from }: Due): number => (when === 'next' ? (from?.utcMilliseconds ?? Infinity) : 0);
  const [later, earlier] = [moment(one), moment(other)];
  return (
    order.indexOf(one.when) - order.indexOf(other.when) ||
    (later === earlier ? 0 : later - earlier) ||
    compare(text(one.card.aircraft), text(other.card.aircraft)) ||
    compare(text(one.card.person), text(other.card.person)) ||
    compare(text(one.card.unit), text(other.card.unit)) ||
    compare(text(one.card.database), text(other.card.database))
  );
}

/** Overdue first, then what else is for today, then the next visit of each aircraft; by aircraft and person. */
export function cardsDue(cards: readonly DueCard[], licences: readonly Licence[], asOfDay: number, clockAt: ClockAt): Due[] {
  const standings = cardStandings(cards, licences, asOfDay, 0, clockAt);
  const cover = licencesForCycle(licences);
  const coming: Coming[] = [];
  const due = cards.flatMap((card, index): Due[] => {
    const { series, changesAtMinutes, loadedDay } = card;
    const isKnown = series !== undefined && changesAtMinutes !== undefined && hasCalendar(series);
    const { current, next }: Changes = isKnown ? changesOn(series, changesAtMinutes, asOfDay, clockAt) : { current: undefined, next: undefined };
    if (isKnown && next !== undefined && (loadedDay === undefined || loadedDay < next))
      coming.push({ card, day: next, from: instantOf(next, changesAtMinutes).utcMilliseconds });
    const standing = standings[index];
    const looks = series !== undefined && isAsIssued(series) ? [dueOf(card, 'next', 'look for a newer issue', undefined, [])] : [];
    return [...(standing === undefined ? [] : nowOf(card, standing, current, cover)), ...looks];
  });
  return [...due, ...nextVisits(coming, cover)].sort(byPlace);
}
