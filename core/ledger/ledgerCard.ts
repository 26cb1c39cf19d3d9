// A card of the ledger as it is written down, and what there is to say of it.
import type { Named } from '../basics/named';
import type { Verdict } from '../basics/verdict';
import type { DataSeries } from './series';

/** A date and time as a clock on the wall shows them: whole day number, and minutes after midnight. */
export interface WallClock {
  readonly day: number;
  readonly minutes: number;
}

/** One card as written down; what is missing or cannot be read is undefined. */
export interface LedgerCard {
  readonly aircraft: Named | undefined;
  /** The box or card; undefined where it is not written down, or not asked for. */
  readonly unit?: Named | undefined;
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

/** What there is to say of the licences of a card. */
export type LicenceFinding =
  | { readonly kind: 'licence-end-unknown' | 'licence-none' | 'licence-unclear'; readonly verdict: Verdict }
  | {
      readonly kind: 'licence-ended' | 'licence-ends' | 'licence-not-begun' | 'licence-not-for-cycle';
      readonly verdict: Verdict;
      readonly day: number;
    };

/** One thing to say of a card, with the verdict it alone would give. */
export type Finding =
  | LicenceFinding
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
  | {
      readonly kind: 'load-ahead' | 'load-too-early' | 'load-refused' | 'load-failed' | 'verified-ahead' | 'verified-before-load';
      readonly verdict: Verdict;
      readonly day: number;
    };
