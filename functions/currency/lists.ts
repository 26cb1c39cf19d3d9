// Sheet functions of the currency log: the pilot's list and the aircraft's list, each in one call.
import { exampleFleet, exampleLog } from './exampleRecords';
import { aircraftStanding } from '../../core/currency/aircraftList';
import { useOf } from '../../core/currency/aircraftUse';
import { civilDateFromDayNumber, dayNumber } from '../../core/basics/civilDate';
import type { ListItem } from '../../core/currency/experience';
import { experienceOf } from '../../core/currency/groups';
import { pilotList } from '../../core/currency/pilotList';
import { authorities } from '../../core/currency/rules';
import { laying, result, type ResultCell } from '../registry/declaration';
import { headingsAbove } from '../registry/headings';
import {
  aircraftRemarks,
  aircraftSources,
  citationText,
  itemText,
  pilotSources,
  remarkTexts,
  logHelp,
  rulesOrFaa,
  useTexts,
  ruleWords,
  ownRulesHelp,
  todoTexts,
  withCategory,
} from './listWords';
import { optional } from '../registry/modifiers';
import { itemRows } from './readAircraftItems';
import { ownRules } from './readRuleTable';
import { paperRows } from './readPapers';
import { date } from '../registry/readDate';
import { ownColumnHelp } from '../registry/readHeadings';
import { fleetRows } from './readFleet';
import { flightLog, flightLogIfReadable } from './readFlightLog';
import { pilotChosen, pilotRecords, placesOfLog } from './pilotRecords';
import { plainWords } from '../registry/readText';

const subject = 'Recency and validity';

function listRow(item: ListItem, asOfDay: number): ResultCell[] {
  const { counted, needed, verdict, goodThroughDay, citation } = item;
  const why = [...remarkTexts(item), ...todoTexts(item), ...(citation === undefined ? [] : [citationText(citation)])].join('; ');
  const through = goodThroughDay === undefined ? ['', ''] : [civilDateFromDayNumber(goodThroughDay), goodThroughDay - asOfDay];
  return [itemText(item), counted ?? '', needed ?? '', verdict, ...through, why];
}

export const PILOT_STATUS = laying({
  name: 'PILOT_STATUS',
  subject,
  summary: "The pilot's list: recent experience, reviews and medical by the rules of one authority or several, each with the day on which it lapses.",
  parameters: {
    log: flightLog(
      'The flights under one header row, columns in any order: date, aircraft, day landings, day full stop, night landings, night full stop, approaches, holds, tracking, hours, hours in command, hours with instructor; pilot, from, to, "take-off, UTC", "landing, UTC"; the usual others (route, instructor, remarks and so on) are passed over. Without a column of take-offs there are taken to be as many as landings. ' +
        ownColumnHelp,
    ),
    aircraft: fleetRows(
      'The aircraft flown under one header row, columns in any order: aircraft, category, class, type rating (only where one is required), tailwheel (yes), device (FFS, FTD or ATD for a training device). Landings in one class do not count for another, and an aeroplane without its class counts for none. ' +
        ownColumnHelp,
    ),
    papers: paperRows(
      'Papers, one a row: flight review, instrument proficiency check, award program phase, medical examination, medical class, birth date, class rating valid to and so on, with a date (or the class). A paper of your own: its last good day, or the day it was done and how many months it lasts. "EASA medical examination" goes before "medical examination" for that authority.',
    ),
    as_of: date('The day in question. Flights after it are not counted.'),
    rules: rulesOrFaa('Rules of which authority.'),
    headings: headingsAbove,
    own_rules: optional(ownRules(ownRulesHelp), undefined, 'none'),
    pilot: pilotChosen,
    places: placesOfLog,
  },
  results: {
    item: result('', 'What is asked, and for which category, class or type.'),
    counted: result('', 'What counts on that day. Of calendar months it leaves out the month of as_of; of several tasks it is how many are met.'),
    needed: result('', 'What is needed.'),
    verdict: result('', 'OK, CHECK when it lapses soon or holds in one reading only, NO, UNKNOWN.'),
    good_through: result('date', 'The last good day without anything further; in the past where it has lapsed.'),
    days_left: result('days', 'Days from as_of to good_through; 0 on the last good day.'),
    rule: result('', 'Why, the shortest way to make it good, the paragraph, and the reading taken.'),
  },
  sources: pilotSources,
  notes: `${ruleWords} The log must reach back as far as the rules do; who flew, and under which conditions, it cannot show. Instrument tasks done after a lapse of more than six calendar months restore nothing until a proficiency check. Days before CHECK are common practice, no source.`,
  examples: [
    {
      arguments: [exampleLog, exampleFleet, [['flight review', '2023-04-10', '']], '2025-03-31', 'FAA'],
      gives: [
        [
          'passengers, single-engine land',
          3,
          3,
          'CHECK',
          '2025-03-31',
          0,
          'to do: 1 more landing by 31 March 2025; 14 CFR 61.57(a)(1); day of the flight among the 90 (stricter reading); as sole manipulator; training devices not counted',
        ],
        [
          'passengers, multi-engine land',
          5,
          3,
          'OK',
          '2025-05-01',
          31,
          '14 CFR 61.57(a)(1); day of the flight among the 90 (stricter reading); as sole manipulator; training devices not counted',
        ],
        [
          'passengers at night, single-engine land',
          0,
          3,
          'NO',
          '',
          '',
          'to do: 3 more landings to a full stop at night; 14 CFR 61.57(b)(1); day of the flight among the 90 (stricter reading); to a full stop, 1 h after sunset to 1 h before sunrise',
        ],
        [
          'passengers at night, multi-engine land',
          0,
          3,
          'NO',
          '',
          '',
          'to do: 3 more landings to a full stop at night; 14 CFR 61.57(b)(1); day of the flight among the 90 (stricter reading); to a full stop, 1 h after sunset to 1 h before sunrise',
        ],
        [
          'instrument flight',
          '',
          '',
          'UNKNOWN',
          '',
          '',
          "the log has no column for this; 14 CFR 61.57(c); CHECK where only this month's flights make it enough; actual or simulated conditions",
        ],
        ['flight review', '', '', 'CHECK', '2025-04-30', 30, 'to do: flight review by 30 April 2025; 14 CFR 61.56(c), (d), (e)'],
        [
          'medical',
          '',
          '',
          'UNKNOWN',
          '',
          '',
          'not written down in the papers: medical examination, birth date, medical class; 14 CFR 61.23(d); age on the day of the examination',
        ],
      ],
      source: '14 CFR 61.57(a) and 61.56(c); 90 days counted by hand with the day of the flight among them',
      formula: '=PILOT_STATUS(A10:F13, H1:J3, L2:N2, "2025-03-31", "FAA")',
    },
  ],
  compute: ({ log, aircraft, papers, as_of, rules, own_rules, pilot, places }) => {
    const asOfDay = dayNumber(as_of);
    const own = own_rules === undefined ? [] : [own_rules];
    const { log: flown, wrong, leftOut } = pilotRecords(log, pilot, places);
    const experience = experienceOf(flown, aircraft.flatMap(withCategory), asOfDay);
    const listed = pilotList([...rules, ...own], [...authorities, ...own], experience, papers, plainWords);
    return [...wrong, ...listed, ...leftOut].map((item) => listRow(item, asOfDay));
  },
});

export const AIRCRAFT_STATUS = laying({
  name: 'AIRCRAFT_STATUS',
  subject,
  summary: "The aircraft's list: inspections, tests and papers, by calendar and by hours, each with what is left of it.",
  parameters: {
    items: itemRows(
      'The items under one header row, columns in any order: aircraft, item, done on, done at hours, was due at hours (where it was done late), and for an item of your own every months, every days, every hours, every landings (or cycles; "300 landings" under every hours is the same). With no interval at all, the date is the last good day. Items known by name: annual inspection, 100 hour inspection, altimeter and static system, transponder, VOR check, ELT inspection, ELT battery, oxygen bottle 3AA or 3HT. ' +
        ownColumnHelp,
    ),
    aircraft: fleetRows('The aircraft under one header row, as for PILOT_STATUS; the columns aircraft, hours now and hours read on are read.'),
    as_of: date('The day in question.'),
    rules: rulesOrFaa('The authority whose rules give the intervals of items known by name.'),
    headings: headingsAbove,
    log: optional(flightLogIfReadable(logHelp), undefined, 'hours and landings only as written down'),
  },
  results: {
    verdict: result('', 'OK, CHECK when little is left, NO, UNKNOWN. A blank row stays blank.'),
    good_through: result('date', 'The last good day by the calendar.'),
    days_left: result('days', 'Days from as_of to good_through; 0 on the last good day.'),
    hours_left: result('hours', 'Hours in service left; negative when overrun.'),
    rule: result('', 'Why, the paragraph, and the reading taken.'),
  },
  sources: aircraftSources,
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
        [
          ['aircraft', 'hours now'],
          ['North', 3350],
        ],
        '2026-11-25',
        'FAA',
      ],
      gives: [
        ['OK', '2027-03-31', 126, '', '14 CFR 91.409(a)(1)'],
        [
          'OK',
          '',
          '',
          52.5,
          '47.5 of 100 h; 14 CFR 91.409(b); for hire or instruction; the 10 h to reach a place of inspection are not counted as left; an overrun shortens the next',
        ],
        ['', '', '', '', ''],
        ['NO', '2026-02-28', -270, 100, '150 of 250 h; your own item'],
      ],
      source: '14 CFR 91.409, and an FAA knowledge test question: due at 3302.5, done at 3309.5, next due at 3402.5; days by hand',
      formula: '=AIRCRAFT_STATUS(A1:H5, J1:K2, "2026-11-25", "FAA")',
    },
  ],
  compute: ({ items, aircraft, as_of, rules: chosen, log }) => {
    const asOfDay = dayNumber(as_of);
    const uses = new Map(aircraft.map((row) => [row.aircraft.key, useOf(row.aircraft, row.hoursNow, row.hoursReadOn, log, asOfDay)]));
    const siblings = items.flatMap((row) => (row === undefined || 'unreadable' in row ? [] : [row]));
    return items.map((row): ResultCell[] => {
      if (row === undefined) return ['', '', '', '', ''];
      if ('unreadable' in row) return ['UNKNOWN', '', '', '', row.unreadable];
      const use = uses.get(row.aircraft.key) ?? useOf(row.aircraft, undefined, undefined, log, asOfDay);
      const standing = aircraftStanding(row, use, asOfDay, chosen, plainWords, siblings);
      const { verdict, goodThroughDay, hoursLeft, hoursAllowed, rule, remarks: said } = standing;
      const counted =
        hoursLeft === undefined || hoursAllowed === undefined ? [] : [`${Number((hoursAllowed - hoursLeft).toFixed(6))} of ${hoursAllowed} h`];
      const why = [
        ...counted,
        ...useTexts(standing),
        ...said.map((remark) => aircraftRemarks[remark]),
        ...(rule === undefined ? [] : [citationText(rule)]),
      ].join('; ');
      const through = goodThroughDay === undefined ? ['', ''] : [civilDateFromDayNumber(goodThroughDay), goodThroughDay - asOfDay];
      return [verdict, ...through, hoursLeft ?? '', why];
    });
  },
});
