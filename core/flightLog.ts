// A pilot's flights, and the aircraft they were made in: what the rules of recent experience count.
import type { Named } from './named';

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
  | 'trainingHours';

/** A flight on which nothing was done yet. Every flight has the same shape, which keeps a long log fast. */
export const nothingDone = (): Record<LogColumn, number> => ({
  dayLandings: 0, dayFullStops: 0, nightLandings: 0, nightFullStops: 0, dayTakeoffs: 0, nightTakeoffs: 0,
  approaches: 0, holds: 0, tracking: 0, hours: 0, commandHours: 0, trainingHours: 0,
});

/** Headings by which each column of a log is found, in lower case with single spaces; the first is the one our sheet uses. */
export const logHeadings: Readonly<Record<LogColumn | 'date' | 'aircraft', readonly string[]>> = {
  date: ['date', 'flight date', 'day'],
  aircraft: ['aircraft', 'registration', 'aircraft registration', 'reg', 'tail number', 'ident'],
  dayLandings: ['day landings', 'landings by day', 'landings day', 'landings (day)'],
  dayFullStops: ['day full stop', 'day full stops', 'full stop by day', 'full stop day', 'day landings to a full stop'],
  nightLandings: ['night landings', 'landings by night', 'landings at night', 'landings night', 'landings (night)'],
  nightFullStops: ['night full stop', 'night full stops', 'full stop by night', 'full stop at night', 'full stop night', 'night landings to a full stop'],
  dayTakeoffs: ['day take offs', 'day takeoffs', 'take offs by day', 'takeoffs day'],
  nightTakeoffs: ['night take offs', 'night takeoffs', 'take offs by night', 'take offs at night', 'takeoffs night'],
  approaches: ['approaches', 'instrument approaches', 'approach'],
  holds: ['holds', 'holding', 'hold'],
  tracking: ['tracking', 'intercepting and tracking', 'courses'],
  hours: ['hours', 'flight time', 'total time', 'total', 'duration'],
  commandHours: ['hours in command', 'in command', 'command', 'pilot in command', 'pic', 'hours pic'],
  trainingHours: ['hours with instructor', 'with instructor', 'instruction', 'dual', 'dual received'],
};

/** Headings that mean the day where a log has no column for the night; beside one they could be the sum of both. */
export const undividedHeadings: readonly { readonly day: LogColumn; readonly night: LogColumn; readonly words: readonly string[] }[] = [
  { day: 'dayLandings', night: 'nightLandings', words: ['landings'] },
  { day: 'dayFullStops', night: 'nightFullStops', words: ['full stop', 'full stops', 'full stop landings', 'landings to a full stop'] },
  { day: 'dayTakeoffs', night: 'nightTakeoffs', words: ['take offs', 'takeoffs'] },
];

export interface Flight {
  readonly day: number;
  readonly aircraft: Named;
  /** 0 where the log has no such column. */
  readonly done: Readonly<Record<LogColumn, number>>;
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
}

/** What a rule counts in a flight. */
export interface Tally {
  readonly of: 'landings' | 'takeoffs' | 'approaches' | 'holds' | 'tracking' | 'hours' | 'commandHours' | 'trainingHours';
  readonly night?: true;
  readonly fullStop?: true;
}

/** The columns of which a tally is the sum. */
export function columnsOf({ of, night, fullStop }: Tally): readonly LogColumn[] {
  if (of === 'landings') {
    if (fullStop === true) return night === true ? ['nightFullStops'] : ['dayFullStops', 'nightFullStops'];
    return night === true ? ['nightLandings'] : ['dayLandings', 'nightLandings'];
  }
  if (of === 'takeoffs') return night === true ? ['nightTakeoffs'] : ['dayTakeoffs', 'nightTakeoffs'];
  return [of];
}
