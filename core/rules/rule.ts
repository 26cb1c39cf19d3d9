// What a rule of an authority is, as data: what is counted, over which window, how much, and the paragraph it stands in.
// An authority is one file of such rules beside this one; the lists are worked out from them alone.
import type { Tally, TrainingDevice } from '../flightLog';
import type { SourceId } from '../sources';
import type { MedicalRules, Privilege, ValidityRule } from '../validity';

export interface Citation {
  /** Document and paragraph, as people look it up. */
  readonly paragraph: string;
  readonly source: SourceId;
  /** Which reading is taken where the words can be read two ways, and what the log cannot show. */
  readonly reading?: string;
}

export interface Task {
  /** Named in the list where each task has a row of its own. */
  readonly name?: string;
  readonly counts: Tally;
  readonly needed: number;
}

interface Common extends Citation {
  readonly item: string;
  /** CHECK when no more than this many days are left. Common practice, no source. */
  readonly warnDays: number;
}

/** Flights that count: those of the same category, or of the same class too, with what a type rating sets apart. */
interface Counting {
  readonly same: 'category' | 'class';
  /** Whether flights in an aircraft with a type rating count for its class as well. */
  readonly typesCountForClass: boolean;
  /** Only flights in aircraft with a tailwheel, and only where one is flown. */
  readonly tailwheel?: true;
  /** Training devices that count as flights. */
  readonly devices: readonly TrainingDevice[];
}

/** So much within the preceding days, the day of the flight counted as one of them. */
export interface DaysRule extends Common, Counting {
  readonly kind: 'days';
  readonly days: number;
  readonly tasks: readonly Task[];
  /** A paper whose last good day frees from the rule. */
  readonly unlessValid?: string;
}

/** So much of each task within the calendar months preceding the month of the flight; a check restores what has lapsed too long. */
export interface MonthsRule extends Common, Counting {
  readonly kind: 'months';
  readonly months: number;
  readonly tasks: readonly Task[];
  readonly check: Citation & { readonly paper: string; readonly item: string; readonly furtherMonths: number };
}

/** A review, a course or a certificate with a date. */
export interface PaperRule extends Common {
  readonly kind: 'paper';
  /** Any of these; the one that lasts longest holds. */
  readonly papers: readonly string[];
  /** Left out, the date written down is the last good day itself. */
  readonly lasts?: { readonly months: number; readonly to: ValidityRule };
  /** Not listed at all where nobody has written one down. */
  readonly onlyIfRecorded?: true;
}

export interface MedicalRule extends Common {
  readonly kind: 'medical';
  readonly rules: MedicalRules;
  readonly privileges: readonly { readonly privilege: Privilege; readonly name: string }[];
}

/** A rating revalidated by experience within the months before its last day, or by a check. */
export interface RevalidationRule extends Common, Counting {
  readonly kind: 'revalidation';
  /** Paper that holds the last day of the rating. */
  readonly paper: string;
  readonly monthsBefore: number;
  readonly tasks: readonly Task[];
  readonly check: { readonly paper: string; readonly monthsBefore: number };
  /** Only for classes so named. */
  readonly classes: readonly string[];
}

export type PilotRule = DaysRule | MonthsRule | PaperRule | MedicalRule | RevalidationRule;

/** An inspection, test or paper of an aircraft. */
export interface AircraftRule extends Common {
  readonly also?: readonly string[];
  /** Left out with `hours` left out too, the date written down is the last good day itself. */
  readonly lasts?: { readonly months: number; readonly to: ValidityRule } | { readonly days: number };
  readonly hours?: number;
}

export interface Authority {
  readonly name: string;
  readonly pilot: readonly PilotRule[];
  readonly aircraft: readonly AircraftRule[];
}
