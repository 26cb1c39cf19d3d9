// The sheet function by which a trip hears the aircraft's list: the items of the aircraft flown, to the last day and by the hours of the flight.
import { dayNumber } from '../../core/basics/civilDate';
import { knownTo, tripDays } from '../../core/basics/flightRows';
import type { Named } from '../../core/basics/named';
import { isNeeded, itemForFlight, missingRules, type AircraftFlight, type AircraftRow } from '../../core/currency/aircraftForFlight';
import { useOf } from '../../core/currency/aircraftUse';
import type { FlightLog } from '../../core/currency/flightLog';
import { aircraftRule, type AircraftItem } from '../../core/currency/aircraftList';
import type { Authority } from '../../core/currency/rules/rule';
import { laying } from '../registry/declaration';
import { lapseInWords } from '../registry/dayWords';
import { flightResults, layFlightRows, pastRows, type WordedRow } from '../registry/flightRows';
import { optional } from '../registry/modifiers';
import { nearestWord } from '../registry/nearestWord';
import { date } from '../registry/readDate';
import { ownColumnHelp } from '../registry/readHeadings';
import { limitInWords, number } from '../registry/readNumber';
import { namedText, plainWords, yesNo } from '../registry/readText';
import { aircraftRemarks, aircraftSources, citationText, logHelp, rulesOrFaa, ruleWords, useTexts } from './listWords';
import { flightLogIfReadable } from './readFlightLog';
import { itemRows, type ItemRow } from './readAircraftItems';
import { fleetRows, type FleetRow } from './readFleet';

const hours = (value: number): string => `${limitInWords(Number(value.toFixed(2)))} h`;

function hoursInWords(hoursLeft: number, flightHours: number | undefined): string {
  if (hoursLeft < 0) return `overrun by ${hours(-hoursLeft)}`;
  return flightHours === undefined
    ? `${hours(hoursLeft)} left, the hours of the flight are not given`
    : `${hours(hoursLeft)} left, the flight takes ${hours(flightHours)}`;
}

function whyOf({ verdict, goodThroughDay, standing }: AircraftRow, flight: AircraftFlight): string[] {
  if (verdict === undefined) return ['not needed: for IFR only'];
  const { hoursLeft, remarks } = standing;
  return [
    ...(goodThroughDay === undefined || goodThroughDay >= flight.lastDay ? [] : [lapseInWords(goodThroughDay, flight)]),
    ...(hoursLeft === undefined ? [] : [hoursInWords(hoursLeft, flight.flightHours)]),
    ...(verdict === 'OK' ? [] : useTexts(standing)),
    ...remarks.map((remark) => aircraftRemarks[remark]),
  ];
}

const unknown = (item: string, why: string): WordedRow => ({ item, verdict: 'UNKNOWN', goodThroughDay: undefined, why });

interface Given {
  readonly flight: AircraftFlight;
  readonly flown: Named;
  readonly fleet: readonly FleetRow[];
  readonly chosen: readonly Authority[];
  readonly log: FlightLog | 'unreadable' | undefined;
  readonly siblings: readonly AircraftItem[];
}

function judgedRow(item: AircraftItem, { flight, flown, fleet, chosen, log, siblings }: Given): WordedRow {
  const listed = fleet.find(({ aircraft }) => aircraft.key === flown.key);
  const use = useOf(flown, listed?.hoursNow, listed?.hoursReadOn, log, knownTo(flight));
  const row = itemForFlight(item, use, flight, chosen, plainWords, siblings);
  const { rule } = row.standing;
  return {
    item: item.item.name,
    verdict: row.verdict,
    goodThroughDay: row.goodThroughDay,
    why: whyOf(row, flight).join(', '),
    ...(rule === undefined ? {} : { rule: citationText(rule) }),
  };
}

/** Of five letters one may be another. */
const mostMistyped = 0.2;

/** A name nearly that of the aircraft flown, of no aircraft in the list: perhaps a typing error that would hide the row. */
function perhapsFlown(aircraft: Named, { flown, fleet }: Given): boolean {
  return !fleet.some((row) => row.aircraft.key === aircraft.key) && nearestWord(aircraft.key, [flown.key], mostMistyped) !== undefined;
}

function rowsOf(row: ItemRow, given: Given): WordedRow[] {
  if (row === undefined) return [];
  const { aircraft, item } = row;
  if (aircraft !== undefined && aircraft.key !== given.flown.key) {
    if (!perhapsFlown(aircraft, given)) return [];
    const why = `listed for "${aircraft.name}", which is not in the list of the aircraft: ${given.flown.name}?`;
    return [{ item: item?.name ?? 'item without a name', verdict: 'CHECK', goodThroughDay: undefined, why }];
  }
  if (!('unreadable' in row)) return [judgedRow(row, given)];
  if (item !== undefined && !isNeeded(aircraftRule(item.key, given.chosen, plainWords, given.flight.lastDay), given.flight))
    return [{ item: item.name, verdict: undefined, goodThroughDay: undefined, why: 'not needed: for IFR only' }];
  return [unknown(item?.name ?? 'item without a name', row.unreadable)];
}

/** What must be in the list of every aircraft and is not; with nothing listed at all, that alone. */
function missingRows(items: readonly ItemRow[], { flown, chosen }: Given): WordedRow[] {
  const own = items.filter((row) => row?.aircraft?.key === flown.key);
  if (own.length === 0) return [unknown('list', `nothing is listed for ${flown.name}`)];
  const listed = own.flatMap((row) => (row?.item === undefined ? [] : [row.item.key]));
  return chosen.flatMap((authority) => {
    if (authority.aircraft.length === 0) return [unknown(`${authority.name} rules`, 'no rule for an aircraft is known here')];
    return missingRules(listed, authority, plainWords).map(({ item, everyAircraft }) => ({
      ...unknown(item, `not in the list of ${flown.name}, and every aircraft must have it`),
      rule: citationText(everyAircraft),
    }));
  });
}

export const AIRCRAFT_FOR_FLIGHT = laying({
  name: 'AIRCRAFT_FOR_FLIGHT',
  subject: 'Recency and validity',
  summary:
    "The aircraft's list for one flight: its inspections, tests and papers, judged to the last day of the trip and by the hours of the flight.",
  parameters: {
    items: itemRows(`The items under one header row, as for AIRCRAFT_STATUS. ${ownColumnHelp}`),
    aircraft: fleetRows('The aircraft under one header row, as for PILOT_STATUS; the columns aircraft and hours now are read.'),
    flown: namedText({ mustBe: 'the name of the aircraft of this flight', help: 'The aircraft of this flight; only its items are judged.' }),
    last_day: date('The last day of the trip: everything must be good through it.'),
    as_of: date('The day of the list. Nothing after it has been done.'),
    rules: rulesOrFaa('The authority whose rules give the intervals of items known by name, and what every aircraft must have.'),
    flight_hours: optional(
      number({ unit: 'hours', minimum: 0, maximum: 1000, help: 'Hours in service of the whole trip. 0 is taken for hours that are missing.' }),
      undefined,
      'not known: CHECK with 10 hours or fewer left',
    ),
    instrument: optional(yesNo('Whether any of it is instrument flight.'), true, 'yes: what is needed for IFR only is judged too'),
    log: optional(flightLogIfReadable(logHelp), undefined, 'hours and landings only as written down'),
  },
  results: flightResults,
  sources: aircraftSources,
  notes: `${ruleWords} OK: good through the last day, however soon after it lapses, with hours left for the flight. NO: lapses before that, or fewer hours left than the flight takes. UNKNOWN: a date or hours missing, nothing listed for this aircraft, or what every aircraft must have (FAA: annual inspection, or a condition inspection, progressive inspection or inspection program in its place; EASA: airworthiness review certificate, or permit to fly) not in its list; a row without an aircraft, since nobody knows whose it is; a trip whose last day is before as_of. CHECK: a row for an aircraft that is not in the list and is named nearly as this one. What is needed for IFR only has no word where instrument is no.`,
  examples: [
    {
      arguments: [
        [
          ['aircraft', 'item', 'done on', 'done at hours', 'was due at hours', 'every months', 'every days', 'every hours'],
          ['North', 'annual inspection', '2026-03-12', '', '', '', '', ''],
          ['North', '100 hour inspection', '', 3309.5, 3302.5, '', '', ''],
          ['South', 'annual inspection', '2020-01-31', '', '', '', '', ''],
          ['North', 'VOR check', '2026-10-02', '', '', '', '', ''],
        ],
        [
          ['aircraft', 'hours now'],
          ['North', 3400],
        ],
        'North',
        '2027-03-31',
        '2026-11-25',
        'FAA',
        3,
        'no',
      ],
      gives: [
        ['all', 'NO', '', '100 hour inspection: 2.5 h left, the flight takes 3 h'],
        ['annual inspection', 'OK', '2027-03-31', '14 CFR 91.409(a)(1)'],
        [
          '100 hour inspection',
          'NO',
          '',
          '2.5 h left, the flight takes 3 h; 14 CFR 91.409(b); for hire or instruction; the 10 h to reach a place of inspection are not counted as left; an overrun shortens the next',
        ],
        ['VOR check', '', '2026-10-31', 'not needed: for IFR only; 14 CFR 91.171(a)(2); for IFR; day of the flight among the 30 (stricter reading)'],
      ],
      source: '14 CFR 91.409, and an FAA knowledge test question: due at 3302.5, done at 3309.5, next due at 3402.5; days by hand',
      formula: '=AIRCRAFT_FOR_FLIGHT(A1:H5, J1:K2, "North", "2027-03-31", "2026-11-25", "FAA", 3, "no")',
    },
  ],
  compute: ({ items, aircraft, flown, last_day, as_of, rules, flight_hours, instrument, log }) => {
    const [lastDay, asOfDay] = [dayNumber(last_day), dayNumber(as_of)];
    const flightHours = flight_hours === 0 ? undefined : flight_hours;
    const flight: AircraftFlight = { ...tripDays(Math.min(asOfDay, lastDay), lastDay, asOfDay), flightHours, instrument };
    const siblings = items.flatMap((row) => (row === undefined || 'unreadable' in row ? [] : [row]));
    const given: Given = { flight, flown, fleet: aircraft, chosen: rules, log, siblings };
    return layFlightRows([...pastRows(flight), ...missingRows(items, given), ...items.flatMap((row) => rowsOf(row, given))]);
  },
});
