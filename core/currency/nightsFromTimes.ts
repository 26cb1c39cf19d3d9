// A log whose flights have times and places: its landings and take-offs told apart into day and night by the Sun, by each definition of night.
import { civilDateFromDayNumber, isoDate } from '../basics/civilDate';
import { CoreError } from '../basics/errors';
import type { Named } from '../basics/named';
import type { Position } from '../navigation/geodesy';
import { placeOf, type ListedPlace } from '../route/places';
import type { Flight, FlightLog, LogColumn } from './flightLog';
import type { ListItem } from './experience';
import { nightOfFlight, stopsByNight, timesByNight, type NightOfFlight, type NightRule } from './nightOfFlight';

export interface NightsFromTimes {
  readonly log: FlightLog;
  /** Places of flights with times, of which no position is known: those flights stay as they were written. */
  readonly unplaced: readonly string[];
  /** Flights of which the log says what the Sun cannot have done; the fewer by night count. */
  readonly against: readonly Flight[];
}

/** By the night of the rules, by that of one hour after sunset; and whether the log says otherwise. */
interface Told {
  readonly civil: number;
  readonly late: number;
  readonly against: boolean;
}

/**
 * `written` is what the log says, by one of the two definitions or by both at once; undefined where it does not tell day from night.
 * What lies outside of both is a slip in the times or in the numbers: the fewer count.
 */
function told(night: NightOfFlight, of: 'landing' | 'takeOff', times: number, written: number | undefined): Told | undefined {
  const by = (rule: NightRule): number | undefined => timesByNight(night, of, rule, times) ?? written;
  const [civil, late] = [by('civilNight'), by('hourAfterSunset')];
  if (civil === undefined || late === undefined) return undefined;
  if (written === undefined) return { civil, late, against: false };
  const against = written < Math.min(civil, late) || written > Math.max(civil, late);
  return against ? { civil: Math.min(civil, written), late: Math.min(late, written), against } : { civil, late, against };
}

/** Of landings by night those to a full stop: where nobody can tell, the fewest that it must have been. */
const stops = (byNight: number, landings: number, fullStops: number): number =>
  stopsByNight(byNight, landings, fullStops) ?? Math.max(0, byNight + fullStops - landings);

type Done = Flight['done'];

/** The log's own words for what the Sun does not tell: its night is taken for both, and take-offs for as many as landings. */
function asWritten(done: Done, columns: ReadonlySet<LogColumn>): Done {
  const ownTakeoffs = columns.has('dayTakeoffs') || columns.has('nightTakeoffs');
  const [dayTakeoffs, nightTakeoffs] = ownTakeoffs ? [done.dayTakeoffs, done.nightTakeoffs] : [done.dayLandings, done.nightLandings];
  return {
    ...done,
    ...{ dayTakeoffs, nightTakeoffs },
    lateLandings: columns.has('lateLandings') ? done.lateLandings : done.nightLandings,
    lateFullStops: columns.has('lateFullStops') ? done.lateFullStops : done.nightFullStops,
    lateTakeoffs: columns.has('lateTakeoffs') ? done.lateTakeoffs : nightTakeoffs,
  };
}

function bySun(written: Done, night: NightOfFlight, columns: ReadonlySet<LogColumn>): { readonly done: Done; readonly against: boolean } | undefined {
  const landings = written.dayLandings + written.nightLandings;
  const fullStops = written.dayFullStops + written.nightFullStops;
  const takeoffs = written.dayTakeoffs + written.nightTakeoffs;
  const landed = told(night, 'landing', landings, columns.has('nightLandings') ? written.nightLandings : undefined);
  if (landed === undefined) return undefined;
  // Take-offs that stand for the landings say nothing of their own against the Sun.
  const tookOff = told(night, 'takeOff', takeoffs, columns.has('nightTakeoffs') ? written.nightTakeoffs : undefined) ?? landed;
  const same = landed.civil === written.nightLandings;
  const nightFullStops = same ? written.nightFullStops : stops(landed.civil, landings, fullStops);
  const late = (column: LogColumn, count: number): number => (columns.has(column) ? Math.min(written[column], count) : count);
  const lateFullStops = landed.late === written.nightLandings ? written.nightFullStops : stops(landed.late, landings, fullStops);
  return {
    done: {
      ...written,
      ...{ dayLandings: landings - landed.civil, nightLandings: landed.civil },
      ...{ dayFullStops: fullStops - nightFullStops, nightFullStops },
      ...{ dayTakeoffs: takeoffs - tookOff.civil, nightTakeoffs: tookOff.civil },
      lateLandings: late('lateLandings', landed.late),
      lateFullStops: late('lateFullStops', lateFullStops),
      lateTakeoffs: late('lateTakeoffs', tookOff.late),
    },
    against: landed.against || tookOff.against,
  };
}

/** The columns that the log has then. Without a column of the night it has one only where the Sun tells every flight that landed. */
function columnsOf({ columns }: FlightLog): ReadonlySet<LogColumn> {
  const stopped = columns.has('dayFullStops') || columns.has('nightFullStops');
  return new Set<LogColumn>([
    ...columns,
    ...(['nightLandings', 'dayTakeoffs', 'nightTakeoffs', 'lateLandings', 'lateTakeoffs'] as const),
    ...(stopped ? (['nightFullStops', 'lateFullStops'] as const) : []),
  ]);
}

/** Where a place lies, looked up once each; undefined where the list does not tell. */
function finder(places: readonly ListedPlace[]): (named: Named) => Position | undefined {
  const known = new Map<string, Position | undefined>();
  return (named) => {
    if (!known.has(named.key)) known.set(named.key, positionIn(named, places));
    return known.get(named.key);
  };
}

function positionIn(named: Named, places: readonly ListedPlace[]): Position | undefined {
  try {
    return placeOf(named, places).position;
  } catch (thrown) {
    if (thrown instanceof CoreError) return undefined;
    throw thrown;
  }
}

/** A log without times and places stays as it is. */
export function nightsFromTimes(log: FlightLog, places: readonly ListedPlace[]): NightsFromTimes {
  const positionOf = finder(places);
  const { columns } = log;
  const as = { log, unplaced: [], against: [] };
  if (!log.flights.some(({ between }) => between !== undefined) || !(columns.has('dayLandings') || columns.has('nightLandings'))) return as;
  const [unplaced, against] = [new Set<string>(), [] as Flight[]];
  let untold = false;
  const flights = log.flights.map((flight): Flight => {
    const { between, day } = flight;
    const written = asWritten(flight.done, columns);
    const ends = between === undefined ? [] : [between.from, between.to];
    const [from, to] = ends.map(positionOf);
    if (from === undefined || to === undefined || between === undefined) {
      for (const named of ends) if (positionOf(named) === undefined) unplaced.add(named.name);
      untold ||= written.dayLandings > 0;
      return { ...flight, done: written };
    }
    const found = bySun(written, nightOfFlight({ ...between, from, to, day }), columns);
    if (found?.against === true) against.push(flight);
    untold ||= found === undefined;
    return { ...flight, done: found?.done ?? written };
  });
  const judged = untold && !columns.has('nightLandings') ? log : { flights, columns: columnsOf(log) };
  return { log: judged, unplaced: [...unplaced], against };
}

/** What of the times could not be used, or goes against the log: for the list of the pilot. */
export function nightRemarks({ unplaced, against }: NightsFromTimes): ListItem[] {
  const item = 'night from the times';
  const of = (about: string, remark: ListItem['remark'] & string): ListItem => ({ item, about, verdict: 'CHECK', remark });
  return [
    ...(unplaced.length === 0 ? [] : [of(unplaced.join(', '), 'place-not-listed')]),
    ...(against.length === 0
      ? []
      : [of(against.map(({ day, aircraft }) => `${isoDate(civilDateFromDayNumber(day))} ${aircraft.name}`).join(', '), 'against-the-sun')]),
  ];
}
