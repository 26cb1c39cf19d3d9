// What a rule of an authority is, as data: what is counted, over which window, how much, and the paragraph it stands in.
// An authority is one file of such rules beside this one; the lists are worked out from them alone.
import type { Tally, TrainingDevice } from '../flightLog';
import type { SourceId } from '../../basics/sources';
import type { Named } from '../../basics/named';
import type { Window } from '../window';
import type { MedicalRules, Privilege, ValidityRule } from '../validity';

export interface Citation {
  /** Document and paragraph, as people look it up; of an own rule, whose it is. */
  readonly paragraph: string;
  /** Left out where the rule was written in a table, which names its source itself. */
  readonly source?: SourceId;
  /** Which reading is taken where the words can be read two ways, and what the log cannot show. */
  readonly reading?: string;
}

export interface Task {
  /** Named in the list where each task has a row of its own. */
  readonly name?: string;
  readonly counts: Tally;
  readonly needed: number;
}

/** The flights for which something is needed; `no flight` where it only prepares or documents something else. */
export const flightNeeds = ['every flight', 'passengers', 'passengers at night', 'night', 'instrument flight', 'no flight'] as const;
export type FlightNeed = (typeof flightNeeds)[number];

/** First and last day on which a rule is law, as ISO days; left out where it was before, or still is. */
export interface InForce {
  readonly from?: string;
  readonly until?: string;
}

interface Common extends Citation {
  readonly item: string;
  readonly neededFor: FlightNeed;
  /** CHECK when no more than this many days are left. Common practice, no source. */
  readonly warnDays: number;
  /** For other days than these the rule is not asked. */
  readonly inForce?: InForce;
  /** Asked only of who has one of these papers written down, or of who has none of those. */
  readonly onlyWith?: readonly string[];
  readonly notWith?: readonly string[];
}

/** Flights that count: those of the same category, of the same class too, with what a type rating sets apart; of the aircraft itself; or all. */
interface Counting {
  readonly same: 'category' | 'class' | 'aircraft' | 'all';
  /** Only in what is so named: an aircraft, a class, a type rating or a category, by its key. */
  readonly flown?: Named;
  /** Whether flights in an aircraft with a type rating count for its class as well. */
  readonly typesCountForClass: boolean;
  /** Only flights in aircraft with a tailwheel, and only where one is flown. */
  readonly tailwheel?: true;
  /** Training devices that count as flights. */
  readonly devices: readonly TrainingDevice[];
}

/** So much within a window, to the day. */
export interface DaysRule extends Common, Counting {
  readonly kind: 'days';
  readonly within: Window;
  readonly tasks: readonly Task[];
  /** A paper whose last good day frees from the rule. */
  readonly unlessValid?: string;
  /** A check that does as well, for so many months from the day it was passed. */
  readonly afterCheck?: { readonly paper: string; readonly months: number };
}

/** So much of each task within the calendar months preceding the month of the flight; a check restores what has lapsed too long. */
export interface MonthsRule extends Common, Counting {
  readonly kind: 'months';
  readonly months: number;
  readonly tasks: readonly Task[];
  readonly check: Citation & { readonly paper: string; readonly item: string; readonly furtherMonths: number };
  /** Categories of which the paragraph does not speak; what is said of them instead of a count. */
  readonly notFor?: Citation & { readonly categories: readonly string[] };
}

/** A review, a course or a certificate with a date. */
export interface PaperRule extends Common {
  readonly kind: 'paper';
  /** Any of these; the one that lasts longest holds. */
  readonly papers: readonly string[];
  /** Other papers that do as well, and other names of the same; not asked for where nothing is written down. */
  readonly also?: readonly string[];
  /** Left out, the date written down is the last good day itself. */
  readonly lasts?: { readonly months: number; readonly to: ValidityRule };
  /** Not listed at all where nobody has written one down. */
  readonly onlyIfRecorded?: boolean;
  /** Given once, good for ever. */
  readonly neverLapses?: true;
  /** For a flight, asked only in aircraft of these classes. */
  readonly classes?: readonly string[];
}

/** How long a certificate of a class serves a private pilot, examined before an age: the first period that fits. */
export interface MedicalPeriod {
  /** As written down; blank for every class. */
  readonly medicalClass: string;
  readonly youngerThan?: number;
  readonly within: Window;
}

export interface MedicalRule extends Common {
  readonly kind: 'medical';
  readonly rules: MedicalRules | readonly MedicalPeriod[];
  readonly privileges: readonly { readonly privilege: Privilege; readonly name: string }[];
  /** The privilege, by its name, that is enough for a private flight. */
  readonly least: string;
  /** Papers that together do instead of a certificate: the first way of which all are good. */
  readonly instead?: readonly (Citation & {
    /** As the list names it. */
    readonly name: string;
    /** The privilege, by its name, for which no certificate is needed then. */
    readonly freesFrom: string;
    /** Without `lasts`, the date written down is the last good day. */
    readonly papers: readonly { readonly paper: string; readonly lasts?: { readonly months: number; readonly to: ValidityRule } }[];
    /** Good only within limits that nothing here can see: CHECK at best. */
    readonly limited?: true;
  })[];
}

/** A rating revalidated by experience within the months before its last day, or by a check. */
export interface RevalidationRule extends Common, Counting {
  readonly kind: 'revalidation';
  /** Paper that holds the last day of the rating. */
  readonly paper: string;
  readonly monthsBefore: number;
  /** A task with months of its own counts only the last of them. */
  readonly tasks: readonly (Task & { readonly monthsBefore?: number })[];
  readonly check: { readonly paper: string; readonly monthsBefore: number };
  /** Only for classes so named. */
  readonly classes: readonly string[];
  /** Classes, each by its names, whose experience counts together and revalidates the ratings of all. */
  readonly together?: Citation & { readonly classes: readonly (readonly string[])[] };
  /** A task that need not be done by who passed one of these within the same months. */
  readonly spared?: { readonly task: string; readonly papers: readonly string[] };
}

/** A row that nobody could read as a rule; its paragraph says why. */
export interface UnreadableRule extends Common {
  readonly kind: 'unreadable';
}

export type PilotRule = DaysRule | MonthsRule | PaperRule | MedicalRule | RevalidationRule | UnreadableRule;

/** An inspection, test or paper of an aircraft. */
export interface AircraftRule extends Common {
  readonly also?: readonly string[];
  /** Left out with `hours` left out too, the date written down is the last good day itself. */
  readonly lasts?: { readonly months: number; readonly to: ValidityRule } | { readonly days: number };
  readonly hours?: number;
  /** Another item that is one of these as well: its hours count where they are later. */
  readonly alsoDoneBy?: string;
  /** Every aircraft must have it in its list, or one of these in its place. */
  readonly everyAircraft?: Citation & { readonly orInstead: readonly string[] };
}

export interface Authority {
  readonly name: string;
  /** Rules of the pilot's own, a club's or an insurer's: nothing is asked of them but what they say. */
  readonly own?: true;
  readonly pilot: readonly PilotRule[];
  readonly aircraft: readonly AircraftRule[];
}
