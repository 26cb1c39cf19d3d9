// A pilot's flights, and the aircraft they were made in: what the rules of recent experience count.
import type { Named } from '../basics/named';

export type LogColumn =
  | 'dayLandings'
  | 'dayFullStops'
  | 'nightLandings'
  | 'nightFullStops'
  | 'dayTakeoffs'
  | 'nightTakeoffs'
  | 'approaches'
  | 'holds'
  | 'tracking'
  | 'hours'
  | 'commandHours'
  | 'trainingHours'
  | 'nightHours'
  | 'instrumentHours'
  | 'lateLandings'
  | 'lateFullStops'
  | 'lateTakeoffs';

/** A flight on which nothing was done yet. Every flight has the same shape, which keeps a long log fast. */
export const nothingDone = (): Record<LogColumn, number> => ({
  dayLandings: 0,
  dayFullStops: 0,
  nightLandings: 0,
  nightFullStops: 0,
  dayTakeoffs: 0,
  nightTakeoffs: 0,
  approaches: 0,
  holds: 0,
  tracking: 0,
  hours: 0,
  commandHours: 0,
  trainingHours: 0,
  nightHours: 0,
  instrumentHours: 0,
  lateLandings: 0,
  lateFullStops: 0,
  lateTakeoffs: 0,
});

/** Headings by which each column of a log is found, in lower case with single spaces; the first is the one our sheet uses. */
export const logHeadings: Readonly<Record<LogColumn | 'date' | 'aircraft', readonly string[]>> = {
  date: ['date', 'flight date', 'day'],
  aircraft: ['aircraft', 'registration', 'aircraft registration', 'reg', 'tail number', 'ident'],
  dayLandings: ['day landings', 'landings by day', 'landings day', 'landings (day)'],
  dayFullStops: ['day full stop', 'day full stops', 'full stop by day', 'full stop day', 'day landings to a full stop'],
  nightLandings: ['night landings', 'landings by night', 'landings at night', 'landings night', 'landings (night)'],
  nightFullStops: [
    'night full stop',
    'night full stops',
    'full stop by night',
    'full stop at night',
    'full stop night',
    'night landings to a full stop',
  ],
  dayTakeoffs: ['day take offs', 'day takeoffs', 'take offs by day', 'takeoffs day'],
  nightTakeoffs: ['night take offs', 'night takeoffs', 'take offs by night', 'take offs at night', 'takeoffs night'],
  approaches: ['approaches', 'instrument approaches', 'approach'],
  holds: ['holds', 'holding', 'hold'],
  tracking: ['tracking', 'intercepting and tracking', 'courses'],
  hours: ['hours', 'flight time', 'total time', 'total', 'duration'],
  commandHours: ['hours in command', 'in command', 'command', 'pilot in command', 'pic', 'hours pic'],
  trainingHours: ['hours with instructor', 'with instructor', 'instruction', 'dual', 'dual received'],
  nightHours: ['night hours', 'hours at night', 'night time'],
  instrumentHours: ['instrument hours', 'instrument time'],
  lateLandings: ['late landings', 'landings from 1 h after sunset'],
  lateFullStops: ['late full stop', 'late full stops', 'full stops from 1 h after sunset'],
  lateTakeoffs: ['late take offs', 'late takeoffs', 'take offs from 1 h after sunset'],
};

/**
 * Headings of what people write down and no rule here counts. @source 14 CFR 61.51(b), entries of a logbook; Part-FCL, AMC1 FCL.050,
 * columns of a log; the spellings common practice, no source.
 */
export const passedOverHeadings: readonly string[] = [
  ...['name', 'name of pic', 'pic name', 'crew', 'safety pilot', 'instructor', 'passengers', 'pax', 'comment', 'comments'],
  ...['via', 'route', 'departure time', 'arrival time'],
  ...['off', 'on', 'out', 'in', 'off block', 'on block', 'take off time', 'landing time', 'time off', 'time on'],
  ...['type', 'aircraft type', 'make and model', 'make, model', 'make', 'model', 'variant', 'type of flight'],
  ...['night', 'ifr', 'ifr hours', 'ifr time', 'instrument'],
  ...['actual instrument', 'simulated instrument', 'actual', 'hood', 'cross country', 'cross country hours', 'xc', 'solo', 'solo hours'],
  ...['sic', 'second in command', 'co pilot', 'single engine', 'multi engine', 'multi pilot', 'sep', 'mep', 'se', 'me', 'simulator', 'fstd'],
];

/** Headings that mean the day where a log has no column for the night; beside one they could be the sum of both. */
export const undividedHeadings: readonly { readonly day: LogColumn; readonly night: LogColumn; readonly words: readonly string[] }[] = [
  { day: 'dayLandings', night: 'nightLandings', words: ['landings'] },
  { day: 'dayFullStops', night: 'nightFullStops', words: ['full stop', 'full stops', 'full stop landings', 'landings to a full stop'] },
  { day: 'dayTakeoffs', night: 'nightTakeoffs', words: ['take offs', 'takeoffs'] },
];

/** Columns of hours; in every other one a number of times, always whole. */
export const hourColumns: ReadonlySet<LogColumn | 'date' | 'aircraft'> = new Set([
  'hours',
  'commandHours',
  'trainingHours',
  'nightHours',
  'instrumentHours',
]);

/** What cannot be more than the landings it is part of. */
export const partsOfLandings: readonly (readonly [part: LogColumn, whole: LogColumn])[] = [
  ['dayFullStops', 'dayLandings'],
  ['nightFullStops', 'nightLandings'],
];

export interface Flight {
  readonly day: number;
  readonly aircraft: Named;
  /** 0 where the log has no such column. */
  readonly done: Readonly<Record<LogColumn, number>>;
  /** Who flew it; undefined where the log does not say. */
  readonly pilot?: Named;
  /** Only where the log has all of it. */
  readonly between?: Between;
}

/** A flight's ends: names of places, and minutes after 0000 UTC of its day, over 1440 on the next. */
export interface Between {
  readonly from: Named;
  readonly to: Named;
  readonly takeOffMinutes: number;
  readonly landingMinutes: number;
}

export interface FlightLog {
  readonly flights: readonly Flight[];
  /** Columns that the log has; of the others nothing is known. */
  readonly columns: ReadonlySet<LogColumn>;
}

/** Full flight simulator, flight training device, other training device. */
export type TrainingDevice = 'FFS' | 'FTD' | 'ATD';

export interface FlownAircraft {
  readonly aircraft: Named;
  readonly category: Named;
  readonly class: Named | undefined;
  /** Only where a type rating is required. */
  readonly type: Named | undefined;
  readonly tailwheel: boolean;
  /** Undefined for an aircraft. */
  readonly device: TrainingDevice | undefined;
  readonly hoursNow: number | undefined;
  /** The day on which those hours were read; undefined where they are of today. */
  readonly hoursReadOn?: number | undefined;
}

/** What a rule counts in a flight. */
export interface Tally {
  readonly of:
    | 'landings'
    | 'takeoffs'
    | 'approaches'
    | 'holds'
    | 'tracking'
    | 'hours'
    | 'commandHours'
    | 'trainingHours'
    | 'nightHours'
    | 'instrumentHours'
    | 'flights'
    | 'trainingFlights';
  readonly night?: true;
  readonly fullStop?: true;
  /**
   * From 1 hour after sunset to 1 hour before sunrise, where the log tells that apart from night; else the night of the log is taken for it.
   * @source cfr-61-57, paragraph (b)(1); 14 CFR 1.1 has night from the end of evening civil twilight.
   */
  readonly late?: true;
}

/** The columns that a tally needs, and of which it is the sum where it does not count flights. */
export function columnsOf({ of, night, fullStop, late }: Tally): readonly LogColumn[] {
  if (late === true && of === 'landings') return [fullStop === true ? 'lateFullStops' : 'lateLandings'];
  if (late === true && of === 'takeoffs') return ['lateTakeoffs'];
  if (of === 'landings') {
    if (fullStop === true) return night === true ? ['nightFullStops'] : ['dayFullStops', 'nightFullStops'];
    return night === true ? ['nightLandings'] : ['dayLandings', 'nightLandings'];
  }
  if (of === 'takeoffs') return night === true ? ['nightTakeoffs'] : ['dayTakeoffs', 'nightTakeoffs'];
  if (of === 'flights') return [];
  return of === 'trainingFlights' ? ['trainingHours'] : [of];
}

/** What a flight adds to a tally. */
export function amountIn(tally: Tally, columns: readonly LogColumn[], { done }: Flight): number {
  if (tally.of === 'flights') return 1;
  if (tally.of === 'trainingFlights') return done.trainingHours > 0 ? 1 : 0;
  let amount = 0;
  for (const column of columns) amount += done[column];
  return amount;
}
