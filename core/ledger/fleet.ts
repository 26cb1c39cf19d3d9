// The fleet on some days as a matrix: which aircraft has data in force of which series.
import { byName, type Named } from '../basics/named';
import { worstVerdict, type Verdict } from '../basics/verdict';
import { inOrder } from './series';
import type { LedgerCard } from './ledgerCard';
import { cardThroughDays, type ClockAt } from './states';

export interface FleetRow {
  readonly aircraft: Named;
  readonly verdict: Verdict;
  /** In the order of `series`; undefined where the aircraft has no such card. */
  readonly bySeries: readonly (Verdict | undefined)[];
}

/** The fleet as a matrix, aircraft by series, each the worst of its cards. A card without a readable series counts for its aircraft alone. */
export function fleetThroughDays(
  cards: readonly (LedgerCard & { readonly aircraft: Named })[],
  firstDay: number,
  lastDay: number,
  clockAt: ClockAt,
): { readonly series: readonly string[]; readonly rows: readonly FleetRow[] } {
  const known = cards.flatMap(({ series }) => (series === undefined ? [] : [series]));
  const series = inOrder(known).map(({ name }) => name);
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
