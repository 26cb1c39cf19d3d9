// The licences of the data: which of them cover a card, and what there is to say of that on a day, and of the cycle on the card.
import type { Named } from '../basics/named';
import type { LedgerCard, LicenceFinding } from './ledgerCard';
import { hasCalendar } from './series';

/** What a licence covers within its aircraft; undefined where it covers every one. Names by their keys. */
export interface LicenceCover {
  readonly databases: readonly string[] | undefined;
  readonly boxes: readonly string[] | undefined;
  /** Names of series. */
  readonly series: readonly string[] | undefined;
  /** First day; undefined where it has been held ever since. */
  readonly startDay: number | undefined;
  /** Something of this cannot be read, so nothing tells what it covers. */
  readonly isUnclear: boolean;
}

export interface Licence {
  readonly aircraft: Named;
  readonly database: Named;
  /** Last day of the licence; Infinity where it has no end. */
  readonly endDay: number | undefined;
  /** Undefined where the list has no columns for it: then the licence is for its database alone, and no card is asked to have one. */
  readonly cover: LicenceCover | undefined;
}

const fleet = 'all';
/** A licence is spoken of ahead of its end, as other papers are. Common practice, no source. */
const licenceWarnDays = 30;

type Covers = 'yes' | 'no' | 'unclear';

/** A card that does not say its box or its series may be the one, or not. */
function among(names: readonly string[] | undefined, name: string | undefined): Covers {
  if (names === undefined) return 'yes';
  if (name === undefined) return 'unclear';
  return names.includes(name) ? 'yes' : 'no';
}

function covers({ database, cover }: Licence, card: LedgerCard): Covers {
  const key = card.database?.key;
  if (cover === undefined) return key === database.key ? 'yes' : 'no';
  if (key === undefined) return 'no';
  const asked = [among(cover.databases, key), among(cover.boxes, card.unit?.key), among(cover.series, card.series?.name)];
  if (asked.includes('no')) return 'no';
  return cover.isUnclear || asked.includes('unclear') ? 'unclear' : 'yes';
}

interface Own {
  readonly sure: readonly Licence[];
  /** Another one may cover it, and nothing tells. */
  readonly isUnclear: boolean;
}

/** Licences by their aircraft, so that a long ledger does not look through all of them for each card. */
function licencesOf(licences: readonly Licence[]): (card: LedgerCard) => Own {
  const byAircraft = new Map<string, Licence[]>();
  for (const licence of licences) {
    const { key } = licence.aircraft;
    byAircraft.set(key, [...(byAircraft.get(key) ?? []), licence]);
  }
  return (card) => {
    const own = card.aircraft === undefined ? [] : (byAircraft.get(card.aircraft.key) ?? []);
    const concerned = [...own, ...(byAircraft.get(fleet) ?? [])].map((licence) => ({ licence, covering: covers(licence, card) }));
    return {
      sure: concerned.flatMap(({ licence, covering }) => (covering === 'yes' ? licence : [])),
      isUnclear: concerned.some(({ covering }) => covering === 'unclear'),
    };
  };
}

const startOf = ({ cover }: Licence): number => cover?.startDay ?? -Infinity;
const endOf = ({ endDay }: Licence): number => endDay ?? -Infinity;
const holdsOn = (licences: readonly Licence[], day: number): boolean => licences.some((one) => startOf(one) <= day && day <= endOf(one));

/** The last day to which licences follow one another from a day on which one holds. */
function heldThrough(licences: readonly Licence[], day: number): number {
  let last = day;
  for (;;) {
    const further = Math.max(...licences.filter((one) => startOf(one) <= last + 1).map(endOf));
    if (further <= last) return last;
    last = further;
  }
}

function onDay({ sure, isUnclear }: Own, asOfDay: number): LicenceFinding[] {
  if (holdsOn(sure, asOfDay)) {
    const day = heldThrough(sure, asOfDay);
    return day - asOfDay <= licenceWarnDays ? [{ kind: 'licence-ends', verdict: 'CHECK', day }] : [];
  }
  if (isUnclear) return [{ kind: 'licence-unclear', verdict: 'CHECK' }];
  const ended = sure.map(endOf).filter((day) => day < asOfDay);
  if (ended.length > 0) return [{ kind: 'licence-ended', verdict: 'CHECK', day: Math.max(...ended) }];
  return [{ kind: 'licence-not-begun', verdict: 'CHECK', day: Math.min(...sure.map(startOf)) }];
}

/** What there is to say of the licences of a card on any day; of data without cycles only the day itself is asked. */
function lookedAt(licences: readonly Licence[]): (card: LedgerCard, day: number | undefined, cycleDay: number | undefined) => LicenceFinding[] {
  const ofCard = licencesOf(licences);
  const isWhole = licences.some(({ cover }) => cover !== undefined);
  return (card, day, cycleDay) => {
    const own = ofCard(card);
    const { sure, isUnclear } = own;
    // A card without a name says so itself.
    if (sure.length === 0 && !isUnclear)
      return isWhole && card.aircraft !== undefined && card.database !== undefined ? [{ kind: 'licence-none', verdict: 'CHECK' }] : [];
    if (sure.some(({ endDay }) => endDay === undefined)) return [{ kind: 'licence-end-unknown', verdict: 'CHECK' }];
    const isCycle = isWhole && cycleDay !== undefined && card.series !== undefined && hasCalendar(card.series);
    const misses = isCycle && !isUnclear && !holdsOn(sure, cycleDay);
    return [
      ...(day === undefined ? [] : onDay(own, day)),
      ...(misses ? [{ kind: 'licence-not-for-cycle' as const, verdict: 'CHECK' as const, day: cycleDay }] : []),
    ];
  };
}

/** Of the licences of each card on a day, and on the day of the cycle that is on it. Common practice, no source. */
export function licenceFindings(licences: readonly Licence[]): (card: LedgerCard, asOfDay: number) => LicenceFinding[] {
  const look = lookedAt(licences);
  return (card, asOfDay) => look(card, asOfDay, card.loadedDay);
}

/** Of the licences of each card on the day of a cycle that is to be loaded. */
export function licencesForCycle(licences: readonly Licence[]): (card: LedgerCard, cycleDay: number) => LicenceFinding[] {
  const look = lookedAt(licences);
  return (card, cycleDay) => look(card, undefined, cycleDay);
}
