// The cards of the aircraft flown through the days of a trip.
import { knownTo, type FlightRow, type TripDays } from '../basics/flightRows';
import { verdicts, worstVerdict } from '../basics/verdict';
import type { Finding, LedgerCard } from './ledgerCard';
import type { Licence } from './licences';
import { cardStandings, type CardStanding, type ClockAt } from './states';

export interface FlightCard extends FlightRow {
  readonly card: LedgerCard;
  /** Worst first. */
  readonly findings: readonly Finding[];
}

/** The day of a trip on which each thing to say of a card is looked for; undefined where it is nothing against the trip. */
const lookedForOn: Readonly<Record<Finding['kind'], 'first' | 'last' | 'known' | undefined>> = {
  ...{ ahead: 'first', 'begins-today': 'first' },
  ...{ 'out-of-date': 'last', 'ends-today': 'last', 'licence-ended': 'last', 'licence-end-unknown': 'last' },
  ...{ 'licence-unclear': 'last', 'licence-not-begun': 'first', 'licence-none': 'known', 'licence-not-for-cycle': 'known' },
  ...{ 'lapses-soon': undefined, 'licence-ends': undefined },
  ...{ 'no-series': 'known', 'no-date': 'known', 'no-time': 'known', 'off-series': 'known' },
  ...{ disagrees: 'known', 'not-comparable': 'known', 'list-ends': 'known', 'load-ahead': 'known', 'load-too-early': 'known' },
  ...{
    'no-load': 'known',
    'named-twice': 'known',
    'load-unplaced': 'known',
    'load-refused': 'known',
    'load-failed': 'known',
    'not-verified': 'known',
    'verified-without-day': 'known',
    'load-day-missing': 'known',
    'verified-ahead': 'known',
    'verified-before-load': 'known',
  },
};

/** The cards of one aircraft through the days of a trip. Two that disagree are CHECK: each may be in force, and the crew must know which is which. */
export function cardsForFlight(cards: readonly LedgerCard[], licences: readonly Licence[], trip: TripDays, clockAt: ClockAt): FlightCard[] {
  const { firstDay, lastDay } = trip;
  const on = (day: number): CardStanding[] => cardStandings(cards, licences, day, 0, clockAt);
  const standings = { first: on(firstDay), last: on(lastDay), known: on(knownTo(trip)) };
  return cards.map((card, index) => {
    const found = (['known', 'first', 'last'] as const).flatMap((when) =>
      (standings[when][index]?.findings ?? []).filter(({ kind }) => lookedForOn[kind] === when),
    );
    const judged = found.map((finding): Finding => (finding.kind === 'disagrees' ? { ...finding, verdict: 'CHECK' } : finding));
    const findings = verdicts.flatMap((word) => judged.filter(({ verdict }) => verdict === word));
    const daysLeft = standings.last[index]?.daysLeft;
    return {
      card,
      findings,
      verdict: findings.length === 0 ? 'OK' : worstVerdict(findings.map(({ verdict }) => verdict)),
      // The day of the change counts as good to none of its hours.
      goodThroughDay: daysLeft === undefined ? undefined : lastDay + daysLeft - 1,
    };
  });
}
