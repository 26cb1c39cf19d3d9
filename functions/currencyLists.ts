// Sheet functions of the currency log: the pilot's list and the aircraft's list, each in one call.
import { aircraftStanding, type AircraftRemark } from '../core/aircraftList';
import { civilDateFromDayNumber, dayNumber } from '../core/civilDate';
import { experienceOf, type ListItem, type Remark } from '../core/experience';
import type { FlownAircraft } from '../core/flightLog';
import { pilotList } from '../core/pilotList';
import { authorities } from '../core/rules';
import { faa } from '../core/rules/faa';
import type { Citation } from '../core/rules/rule';
import { laying, result, type ResultCell } from './registry/declaration';
import { optional } from './registry/modifiers';
import { itemRows } from './registry/readAircraftItems';
import { chosenAuthorities, paperRows } from './registry/readCurrency';
import { date } from './registry/readDate';
import { fleetRows, type FleetRow } from './registry/readFleet';
import { flightLog } from './registry/readFlightLog';
import { plainWords } from './registry/readText';

const subject = 'Recency and validity';
const ruleWords = 'Rules are read as of the paragraphs named beside each answer, and may have changed: look them up. Where the words can be read two ways the stricter reading is taken, and the row says so.';
const rules = (help: string) => optional(chosenAuthorities(help), [faa], 'FAA');

const citationText = ({ paragraph, reading }: Citation): string => (reading === undefined ? paragraph : `${paragraph}; ${reading}`);

const remarks: Readonly<Record<Remark, string>> = {
  'no-column': 'the log has no column of what this rule counts',
  'log-empty': 'the log is empty',
  'no-aircraft': 'no aircraft of a category is listed',
  'check-first': 'lapsed more than 6 months: an instrument proficiency check is needed first',
  'by-paper': 'by the paper that frees from it',
  'by-check': 'by the proficiency check',
  'not-recorded': 'not written down in the papers',
  'no-date': 'written down, but not as a date that can be read',
  'date-ahead': 'done on a day still to come',
  'no-class': 'cannot be read as one of 1, 2, 3, LAPL',
  'born-too-late': 'less than 14 years before the medical examination',
  'nothing-qualifies': 'the class written down gives no privilege here',
  'window-not-begun': 'the months that count have not begun',
  'own-row': 'row of your own',
  'own-last-day': 'row of your own, its date taken as the last good day',
  'not-listed': 'not in the list of the aircraft, or without a category there',
};

function listRow({ item, about, counted, needed, verdict, goodThroughDay, citation, remark, papers }: ListItem, asOfDay: number): ResultCell[] {
  const of = papers === undefined ? '' : `: ${papers.join(', ')}`;
  const why = [...(remark === undefined ? [] : [`${remarks[remark]}${of}`]), ...(citation === undefined ? [] : [citationText(citation)])].join('; ');
  const through = goodThroughDay === undefined ? ['', ''] : [civilDateFromDayNumber(goodThroughDay), goodThroughDay - asOfDay];
  return [about === undefined ? item : `${item}, ${about}`, counted ?? '', needed ?? '', verdict, ...through, why];
}

const withCategory = (row: FleetRow): FlownAircraft[] => (row.category === undefined ? [] : [{ ...row, category: row.category }]);

export const PILOT_STATUS = laying({
  name: 'PILOT_STATUS',
  subject,
  summary: 'The pilot\'s list: recent experience, reviews and medical by the rules of one authority or several, each with the day on which it lapses.',
  parameters: {
    log: flightLog('The flights under one header row, columns in any order: date, aircraft, day landings, day full stop, night landings, night full stop, approaches, holds, tracking, hours, hours in command, hours with instructor; others are passed over. Without a column of take-offs there are taken to be as many as landings.'),
    aircraft: fleetRows('The aircraft flown under one header row, columns in any order: aircraft, category, class, type rating (only where one is required), tailwheel (yes), device (FFS, FTD or ATD for a training device). Landings in one class do not count for another.'),
    papers: paperRows('Papers, one a row: flight review, instrument proficiency check, medical examination, medical class, birth date, class rating valid to and so on, with a date (or the class). A paper of your own: its last good day, or the day it was done and how many months it lasts. "EASA medical examination" goes before "medical examination" for that authority.'),
    as_of: date('The day in question. Flights after it are not counted.'),
    rules: rules('Whose rules.'),
  },
  results: {
    item: result('', 'What is asked, and for which category, class or type.'),
    counted: result('', 'What counts on that day. Of calendar months it leaves out the month of as_of; of several tasks it is how many are met.'),
    needed: result('', 'What is needed.'),
    verdict: result('', 'OK, CHECK when it lapses soon or holds in one reading only, NO, UNKNOWN.'),
    good_through: result('date', 'The last good day without anything further; in the past where it has lapsed.'),
    days_left: result('days', 'Days from as_of to good_through; 0 on the last good day.'),
    rule: result('', 'Why, the paragraph, and the reading taken.'),
  },
  sources: ['cfr-61-57', 'cfr-61-56', 'cfr-61-23', 'ac-68-1', 'part-fcl', 'part-med'],
  notes: `${ruleWords} The log must reach back as far as the rules do; who flew, and under which conditions, it cannot show. Instrument tasks done after a lapse of more than six calendar months restore nothing until a proficiency check. Days before CHECK are common practice, no source.`,
  examples: [
    {
      arguments: [
        [['date', 'aircraft', 'day landings', 'day full stop', 'night landings', 'night full stop'], ['2025-01-01', 'North', 1, 1, '', ''], ['2025-01-20', 'North', 2, '', '', ''], ['2025-02-01', 'South', 5, 5, '', '']],
        [['aircraft', 'category', 'class'], ['North', 'airplane', 'single-engine land'], ['South', 'airplane', 'multi-engine land']],
        [['flight review', '2023-04-10', '']],
        '2025-03-31',
        'FAA',
      ],
      gives: [
        ['passengers, single-engine land', 3, 3, 'CHECK', '2025-03-31', 0, '14 CFR 61.57(a)(1); day of the flight among the 90 (stricter reading); as sole manipulator; training devices not counted'],
        ['passengers, multi-engine land', 5, 3, 'OK', '2025-05-01', 31, '14 CFR 61.57(a)(1); day of the flight among the 90 (stricter reading); as sole manipulator; training devices not counted'],
        ['passengers at night, single-engine land', 0, 3, 'NO', '', '', '14 CFR 61.57(b)(1); day of the flight among the 90 (stricter reading); to a full stop, 1 h after sunset to 1 h before sunrise'],
        ['passengers at night, multi-engine land', 0, 3, 'NO', '', '', '14 CFR 61.57(b)(1); day of the flight among the 90 (stricter reading); to a full stop, 1 h after sunset to 1 h before sunrise'],
        ['instrument flight', '', '', 'UNKNOWN', '', '', 'the log has no column of what this rule counts; 14 CFR 61.57(c); CHECK where only this month\'s flights make it enough; actual or simulated conditions'],
        ['flight review', '', '', 'CHECK', '2025-04-30', 30, '14 CFR 61.56(c), (d)'],
        ['medical', '', '', 'UNKNOWN', '', '', 'not written down in the papers: medical examination, birth date, medical class; 14 CFR 61.23(d); age on the day of the examination'],
      ],
      source: '14 CFR 61.57(a) and 61.56(c); 90 days counted by hand with the day of the flight among them',
      formula: '=PILOT_STATUS(A10:F13, H1:J3, L2:N2, "2025-03-31", "FAA")',
    },
  ],
  compute: ({ log, aircraft, papers, as_of, rules: chosen }) => {
    const asOfDay = dayNumber(as_of);
    const experience = experienceOf(log, aircraft.flatMap(withCategory), asOfDay);
    return pilotList(chosen, authorities, experience, papers, plainWords).map((item) => listRow(item, asOfDay));
  },
});

const aircraftRemarks: Readonly<Record<AircraftRemark, string>> = {
  'own-row': 'row of your own',
  'own-last-day': 'row of your own, its date taken as the last good day',
  'no-date': 'no date written down',
  'date-ahead': 'done on a day still to come',
  'no-hours': 'no hours written down at which it was done',
  'no-hours-now': 'no hours now of this aircraft',
  'hours-before-done': 'hours now are fewer than when it was done',
};

export const AIRCRAFT_STATUS = laying({
  name: 'AIRCRAFT_STATUS',
  subject,
  summary: 'The aircraft\'s list: inspections, tests and papers, by calendar and by hours, each with what is left of it.',
  parameters: {
    items: itemRows('The items under one header row, columns in any order: aircraft, item, done on, done at hours, was due at hours (where it was done late), and for an item of your own every months, every days, every hours. With no interval at all, the date is the last good day. Items known by name: annual inspection, 100 hour inspection, altimeter and static system, transponder, VOR check, ELT inspection, ELT battery, oxygen bottle 3AA or 3HT.'),
    aircraft: fleetRows('The aircraft under one header row, as for PILOT_STATUS; the columns aircraft and hours now are read.'),
    as_of: date('The day in question.'),
    rules: rules('Whose rules give the intervals of items known by name.'),
  },
  results: {
    verdict: result('', 'OK, CHECK when little is left, NO, UNKNOWN. A blank row stays blank.'),
    good_through: result('date', 'The last good day by the calendar.'),
    days_left: result('days', 'Days from as_of to good_through; 0 on the last good day.'),
    hours_left: result('hours', 'Hours in service left; negative when overrun.'),
    rule: result('', 'Why, the paragraph, and the reading taken.'),
  },
  sources: ['cfr-91-409', 'cfr-91-411', 'cfr-91-413', 'cfr-91-171', 'cfr-91-207', 'cfr-49-180-209', 'part-ml', 'common-practice'],
  notes: `${ruleWords} An interval of your own beside a known item comes on top of it: the earlier end holds. A cell that cannot be read spoils only its own row. CHECK with 10 hours or fewer left is common practice, no source.`,
  examples: [
    {
      arguments: [
        [
          ['aircraft', 'item', 'done on', 'done at hours', 'was due at hours', 'every months', 'every days', 'every hours'],
          ['North', 'annual inspection', '2026-03-12', '', '', '', '', ''],
          ['North', '100 hour inspection', '', 3309.5, 3302.5, '', '', ''],
          ['', '', '', '', '', '', '', ''],
          ['North', 'propeller, own row', '2026-01-31', 3200, '', 1, '', 250],
        ],
        [['aircraft', 'hours now'], ['North', 3350]],
        '2026-11-25',
        'FAA',
      ],
      gives: [
        ['OK', '2027-03-31', 126, '', '14 CFR 91.409(a)(1)'],
        ['OK', '', '', 52.5, '47.5 of 100 h; 14 CFR 91.409(b); for hire or instruction; the 10 h to reach a place of inspection are not counted as left; an overrun shortens the next'],
        ['', '', '', '', ''],
        ['NO', '2026-02-28', -270, 100, '150 of 250 h; row of your own'],
      ],
      source: '14 CFR 91.409, and an FAA knowledge test question: due at 3302.5, done at 3309.5, next due at 3402.5; days by hand',
      formula: '=AIRCRAFT_STATUS(A1:H5, J1:K2, "2026-11-25", "FAA")',
    },
  ],
  compute: ({ items, aircraft, as_of, rules: chosen }) => {
    const asOfDay = dayNumber(as_of);
    const hoursNow = new Map(aircraft.map((row) => [row.aircraft.key, row.hoursNow]));
    return items.map((row): ResultCell[] => {
      if (row === undefined) return ['', '', '', '', ''];
      if ('unreadable' in row) return ['UNKNOWN', '', '', '', row.unreadable];
      const { verdict, goodThroughDay, hoursLeft, hoursAllowed, rule, remarks: said } = aircraftStanding(row, hoursNow.get(row.aircraft.key), asOfDay, chosen, plainWords);
      const counted = hoursLeft === undefined || hoursAllowed === undefined ? [] : [`${Number((hoursAllowed - hoursLeft).toFixed(6))} of ${hoursAllowed} h`];
      const why = [...counted, ...said.map((remark) => aircraftRemarks[remark]), ...(rule === undefined ? [] : [citationText(rule)])].join('; ');
      const through = goodThroughDay === undefined ? ['', ''] : [civilDateFromDayNumber(goodThroughDay), goodThroughDay - asOfDay];
      return [verdict, ...through, hoursLeft ?? '', why];
    });
  },
});
