// The sheet function by which a trip hears the pilot's list: only what this flight needs, to its last day.
import { exampleFleet, exampleLog } from './exampleRecords';
import { dayNumber } from '../../core/basics/civilDate';
import { tripDays } from '../../core/basics/flightRows';
import { pilotForFlight, type PilotFlight, type PilotRow } from '../../core/currency/pilotForFlight';
import { authorities } from '../../core/currency/rules';
import type { Authority, DaysRule, MonthsRule } from '../../core/currency/rules/rule';
import { laying } from '../registry/declaration';
import { dayInWords, lapseInWords } from '../registry/dayWords';
import { flightResults, layFlightRows, pastRows, type WordedRow } from '../registry/flightRows';
import { optional } from '../registry/modifiers';
import { date } from '../registry/readDate';
import { ownColumnHelp } from '../registry/readHeadings';
import { namedText, plainWords, yesNo } from '../registry/readText';
import { citationText, itemText, pilotSources, remarkTexts, ruleWords, tallyWords, todoTexts, windowWords, withCategory } from './listWords';
import { ownRules, ownRulesName } from './readRuleTable';
import { limitInWords } from '../registry/readNumber';
import { pilotChosen, pilotRecords, placesOfLog } from './pilotRecords';
import { fleetRows } from './readFleet';
import { flightLog } from './readFlightLog';
import { chosenAuthorities, paperRows } from './readPapers';

/** "2 of 3 landings and take-offs in the 90 days to 2 December 2026". */
function countedInWindow({ within }: DaysRule, { listed: { counted, needed }, judgedDay, counts }: PilotRow): string {
  const tallies = counts.map((tally) => tallyWords(tally)).join(' and ');
  const window = 'sinceDay' in within ? `since ${dayInWords(within.sinceDay)}` : `in the ${windowWords(within)} to ${dayInWords(judgedDay)}`;
  return `${limitInWords(counted ?? 0)} of ${limitInWords(needed ?? 0)} ${tallies} ${window}`;
}

/** "4 of 6 approaches, 0 of 1 holding in the 6 calendar months before December 2026". */
function shortInMonths({ months }: MonthsRule, { short, judgedDay }: PilotRow): string {
  const tasks = short.map(({ item, counted, needed }) => `${counted ?? 0} of ${needed ?? 0} ${item}`).join(', ');
  return `${tasks} in the ${months} calendar months before ${dayInWords(judgedDay).replace(/^\d+ /, '')}`;
}

function countsOf(row: PilotRow): string[] {
  const { rule, listed, short } = row;
  if (rule?.kind === 'days' && listed.counted !== undefined && listed.remark !== 'by-paper') return [countedInWindow(rule, row)];
  return rule?.kind === 'months' && listed.item === rule.item && short.length > 0 ? [shortInMonths(rule, row)] : [];
}

function wordOf({ verdict, goodThroughDay }: PilotRow, flight: PilotFlight): string[] {
  if (verdict === 'CHECK') return ['holds in one reading only'];
  if (verdict !== 'NO') return [];
  return [goodThroughDay === undefined ? 'never enough in this log' : lapseInWords(goodThroughDay, flight)];
}

function wordedRow(row: PilotRow, flight: PilotFlight, several: boolean): WordedRow {
  const { listed, authority, verdict, goodThroughDay } = row;
  return {
    item: several && authority !== undefined && authority !== ownRulesName ? `${authority} ${itemText(listed)}` : itemText(listed),
    verdict,
    goodThroughDay,
    why: [...wordOf(row, flight), ...countsOf(row), ...remarkTexts(listed), ...todoTexts(listed)].join(', '),
    ...(listed.citation === undefined ? {} : { rule: citationText(listed.citation) }),
  };
}

export const PILOT_FOR_FLIGHT = laying({
  name: 'PILOT_FOR_FLIGHT',
  subject: 'Recency and validity',
  summary: "The pilot's list for one flight: the recency, reviews and medical that this flight needs, judged to the last day of the trip.",
  parameters: {
    log: flightLog(`The flights under one header row, as for PILOT_STATUS. ${ownColumnHelp}`),
    aircraft: fleetRows(`The aircraft flown under one header row, as for PILOT_STATUS. ${ownColumnHelp}`),
    papers: paperRows('Certificates and reviews, one a row, as for PILOT_STATUS.'),
    flown: namedText({
      mustBe: 'the name of the aircraft of this flight',
      help: 'The aircraft of this flight, named as in the list of the aircraft.',
    }),
    last_day: date('The last day of the trip: everything must be good through it.'),
    as_of: date('The day of the list. Flights after it do not count, and nothing after it has been done.'),
    rules: chosenAuthorities('Rules of which authority.'),
    passengers: yesNo('Whether passengers are carried.'),
    night: yesNo('Whether any of it is at night.'),
    instrument: yesNo('Whether any of it is instrument flight.'),
    first_day: optional(date('The first day of the trip.'), undefined, 'as_of'),
    own_rules: optional(ownRules('Rules of your own, as for PILOT_STATUS.'), undefined, 'none'),
    pilot: pilotChosen,
    places: placesOfLog,
  },
  results: flightResults,
  sources: pilotSources,
  notes: `${ruleWords} Recent landings are asked for with passengers, those at night with passengers at night, those in a tailwheel aircraft in one, instrument recency or rating on instrument flight; review, class rating, medical for private flight and papers of your own always. Only the category, class or type of the aircraft flown counts. OK: good through the last day, however soon after it lapses. CHECK: holds in one reading only, on the first day or the last. An aircraft that is not in the list, or an authority without a rule for something, is UNKNOWN; so is a trip whose last day is before as_of.`,
  examples: [
    {
      arguments: [
        exampleLog,
        exampleFleet,
        [
          ['flight review', '2023-04-10', ''],
          ['medical examination', '2024-06-15', ''],
          ['medical class', 3, ''],
          ['birth date', '1980-02-01', ''],
        ],
        'North',
        '2025-04-01',
        '2025-03-31',
        'FAA',
        'yes',
        'no',
        'no',
      ],
      gives: [
        [
          'all',
          'NO',
          '2025-03-31',
          'passengers, single-engine land: lapses during the trip, valid through 31 March 2025, 2 of 3 landings in the 90 days to 1 April 2025, to do: 1 more landing by 31 March 2025',
        ],
        [
          'passengers, single-engine land',
          'NO',
          '2025-03-31',
          'lapses during the trip, valid through 31 March 2025, 2 of 3 landings in the 90 days to 1 April 2025, to do: 1 more landing by 31 March 2025; 14 CFR 61.57(a)(1); day of the flight among the 90 (stricter reading); as sole manipulator; training devices not counted',
        ],
        ['flight review', 'OK', '2025-04-30', '14 CFR 61.56(c), (d), (e)'],
        ['medical, private', 'OK', '2026-06-30', '14 CFR 61.23(d); age on the day of the examination'],
      ],
      source: '14 CFR 61.57(a), 61.56(c) and 61.23(d); 90 days counted by hand with the day of the flight among them',
      formula: '=PILOT_FOR_FLIGHT(A10:F13, H1:J3, L2:N5, "North", "2025-04-01", "2025-03-31", "FAA", "yes", "no", "no")',
    },
  ],
  compute: ({ log, aircraft, papers, flown, last_day, as_of, rules, passengers, night, instrument, first_day, own_rules, pilot, places }) => {
    const [lastDay, asOfDay] = [dayNumber(last_day), dayNumber(as_of)];
    const firstDay = first_day === undefined ? Math.min(asOfDay, lastDay) : dayNumber(first_day);
    const flight: PilotFlight = { ...tripDays(firstDay, lastDay, asOfDay), flown, passengers, night, instrument };
    const own = own_rules === undefined ? [] : [own_rules];
    const chosen: readonly Authority[] = [...rules, ...own];
    const { log: flights, wrong } = pilotRecords(log, pilot, places);
    const records = { log: flights, fleet: aircraft.flatMap(withCategory), papers, wrong };
    const rows = pilotForFlight(chosen, [...authorities, ...own], records, flight, plainWords);
    return layFlightRows([...pastRows(flight), ...rows.map((row) => wordedRow(row, flight, rules.length > 1))]);
  },
});
