// Sheet function of what a log comes to.
import { civilDateFromDayNumber, dayNumber } from '../../core/basics/civilDate';
import type { Named } from '../../core/basics/named';
import type { Flight, FlightLog, LogColumn } from '../../core/currency/flightLog';
import { logTotals, type LogTotal } from '../../core/currency/totals';
import { laying, result, type ResultCell } from '../registry/declaration';
import { headingsAbove } from '../registry/headings';
import { optional } from '../registry/modifiers';
import { date } from '../registry/readDate';
import { choice } from '../registry/readText';
import { flightsToSum, pilotChosen, placesOfLog } from './pilotRecords';
import { fleetRows, type FleetRow } from './readFleet';
import { flightLog } from './readFlightLog';

const groupings = ['all', 'year', 'category', 'class', 'type', 'aircraft', 'pilot'] as const;
type Grouping = (typeof groupings)[number];
const usual: Grouping = 'class';

const deviceGroup = 'training device';
const unknownGroup = 'not in the list of aircraft';
const nobodyGroup = 'no pilot named';

/** One pilot is one row, however the rows of the log spell the name. */
function firstSpelling(spelled: Map<string, string>, { name, key }: Named): string {
  const known = spelled.get(key) ?? name;
  spelled.set(key, known);
  return known;
}

/** The word of a flight's row; flights in a training device are no flight time, whatever is asked for. */
function groupIn(by: Grouping, fleet: ReadonlyMap<string, FleetRow>): ((flight: Flight) => string) | undefined {
  if (by === 'all') return undefined;
  const spelled = new Map<string, string>();
  return ({ aircraft, day, pilot }) => {
    if (by === 'pilot') return pilot === undefined ? nobodyGroup : firstSpelling(spelled, pilot);
    if (by === 'year') return String(civilDateFromDayNumber(day).year);
    if (by === 'aircraft') return aircraft.name;
    const row = fleet.get(aircraft.key);
    if (row === undefined) return unknownGroup;
    const named = by === 'type' ? row.type : by === 'class' ? row.class : row.category;
    return named?.name ?? `no ${by === 'type' ? 'type rating' : by} in the list`;
  };
}

const hourColumns: readonly LogColumn[] = ['hours', 'commandHours', 'trainingHours', 'nightHours', 'instrumentHours'];

function rowOf({ group, flights, done }: LogTotal, last: string): ResultCell[] {
  const both = (day: number | undefined, night: number | undefined): ResultCell =>
    day === undefined && night === undefined ? '' : (day ?? 0) + (night ?? 0);
  return [
    group ?? last,
    flights,
    ...hourColumns.map((column) => done[column] ?? ''),
    both(done.dayLandings, done.nightLandings),
    done.nightLandings ?? '',
    done.approaches ?? '',
  ];
}

export const LOG_TOTALS = laying({
  name: 'LOG_TOTALS',
  subject: 'Recency and validity',
  summary: 'What a log comes to, in all or by year, category, class, type, aircraft or pilot, for the forms of insurers and authorities.',
  parameters: {
    log: flightLog('The flights under one header row, as for PILOT_STATUS.'),
    aircraft: fleetRows('The aircraft flown under one header row, as for PILOT_STATUS: what each is, and which are training devices.'),
    to_date: date('The last day that counts.'),
    by: optional(
      choice<Grouping>({
        words: groupings,
        help: 'One row for each year, category, class, type (rating), aircraft or pilot, then the sum; all is the sum alone.',
      }),
      usual,
      usual,
    ),
    from_date: optional(date('The first day that counts.'), undefined, 'from the first flight'),
    headings: headingsAbove,
    pilot: pilotChosen,
    places: placesOfLog,
  },
  results: {
    group: result(
      '',
      'Year, category, class, type, aircraft or pilot; the sum; then training devices and flights that name no pilot, which are not in it.',
    ),
    flights: result('', 'Rows of the log.'),
    hours: result('hours', 'Flight time; blank where the log has no such column, as in all that follow.'),
    hours_in_command: result('hours', 'Of that, in command.'),
    hours_with_instructor: result('hours', 'Of that, with an instructor.'),
    night_hours: result('hours', 'Of that, at night.'),
    instrument_hours: result('hours', 'Of that, by instruments.'),
    landings: result('', 'By day and by night.'),
    night_landings: result('', 'Of these, by night.'),
    approaches: result('', 'Instrument approaches.'),
  },
  sources: ['cfr-61-51', 'common-practice'],
  notes:
    'Time in a training device is told in a row of its own and is in no sum: it is no flight time (14 CFR 61.51(b)(2)(v) lists it apart; from memory). What the log has no column for stays blank, and is not 0. Which hours a form asks for, the form says.',
  examples: [
    {
      arguments: [
        [
          ['date', 'aircraft', 'hours', 'hours in command', 'night hours', 'day landings', 'night landings'],
          ['2025-01-10', 'North', 1.1, 1.1, '', 1, ''],
          ['2025-06-02', 'South', 2.3, '', 0.6, 1, 1],
          ['2026-02-03', 'North', 0.2, 0.2, '', 2, ''],
          ['2026-02-04', 'Box', 1.5, '', '', '', ''],
          ['2026-12-31', 'North', 9, 9, '', 1, ''],
        ],
        [
          ['aircraft', 'category', 'class', 'device'],
          ['North', 'airplane', 'SEL', ''],
          ['South', 'airplane', 'MEL', ''],
          ['Box', 'airplane', 'SEL', 'ATD'],
        ],
        '2026-11-25',
        'class',
      ],
      gives: [
        ['MEL', 1, 2.3, 0, '', 0.6, '', 2, 1, ''],
        ['SEL', 2, 1.3, 1.3, '', 0, '', 3, 0, ''],
        ['all', 3, 3.6, 1.3, '', 0.6, '', 5, 1, ''],
        ['training device', 1, 1.5, 0, '', 0, '', 0, 0, ''],
      ],
      source: 'By hand: 1.1 + 0.2, 2.3, the device apart, and the flight after the last day left out',
      formula: '=LOG_TOTALS(A10:G15, H1:K4, "2026-11-25", "class")',
    },
  ],
  compute: ({ log: whole, aircraft, to_date, by, from_date, pilot, places }) => {
    const { log, unnamed } = flightsToSum(whole, pilot, places, by === 'pilot');
    const [first, last] = [from_date === undefined ? -Infinity : dayNumber(from_date), dayNumber(to_date)];
    const fleet = new Map(aircraft.map((row) => [row.aircraft.key, row]));
    const inDevice = (flight: Flight): boolean => fleet.get(flight.aircraft.key)?.device !== undefined;
    const within = (of: FlightLog, wanted?: (flight: Flight) => boolean): FlightLog => ({
      ...of,
      flights: of.flights.filter((flight) => flight.day >= first && flight.day <= last && (wanted?.(flight) ?? true)),
    });
    const apart = (of: FlightLog, group: string): ResultCell[][] =>
      of.flights.length === 0 ? [] : logTotals(of).map((total) => rowOf(total, group));
    const flown = within(log, (flight) => !inDevice(flight));
    return [
      ...logTotals(flown, groupIn(by, fleet)).map((total) => rowOf(total, 'all')),
      ...apart(within(log, inDevice), deviceGroup),
      ...apart(within(unnamed), nobodyGroup),
    ];
  },
});
