// Sheet function of the load list: what to load now and at the next visit, by aircraft and person.
import { civilDateFromDayNumber } from '../../core/basics/civilDate';
import { cardsDue, type Due, type DueCard } from '../../core/ledger/due';
import { loadedOn, namesKey } from '../../core/ledger/loads';
import { isInUse } from '../../core/ledger/series';
import { laying, result, type ResultCell } from '../registry/declaration';
import { headingsOfRows } from '../registry/headings';
import { column, optional, unreadableMeansUndefined } from '../registry/modifiers';
import { sheetDay } from '../registry/readSheetDay';
import { namedText } from '../registry/readText';
import { findingText, isoText, zoneNotes } from './findingWords';
import { cardLoads, cardOf } from './loads';
import { cardAircraft, cardChangesAt, cardDatabase, cardSeries, cardUnit } from './readCards';
import { licenceRows, readable } from './readLicences';

const who = optional(
  column(
    unreadableMeansUndefined(
      namedText({ mustBe: 'the name of who loads the card', help: 'Who loads each card; blank where nobody is written down.' }),
    ),
  ),
  undefined,
  'nobody',
);

function dueRow({ when, card, doing, effectiveDay, identifier, from, findings }: Due): ResultCell[] {
  return [
    when,
    card.aircraft?.name ?? 'no aircraft',
    card.person?.name ?? '',
    card.unit?.name ?? '',
    card.database?.name ?? 'no database',
    doing,
    identifier,
    effectiveDay === undefined ? '' : civilDateFromDayNumber(effectiveDay),
    from ?? '',
    card.loadedDay === undefined ? '' : civilDateFromDayNumber(card.loadedDay),
    findings.map((finding) => findingText(finding, isoText)).join('; '),
  ];
}

export const LEDGER_DUE = laying({
  name: 'LEDGER_DUE',
  subject: 'Data ledger',
  summary: 'What to load now and at the next visit of each aircraft, overdue first, by aircraft and person, in one call.',
  parameters: {
    aircraft: cardAircraft,
    box: cardUnit,
    database: cardDatabase,
    series: cardSeries,
    loads: cardLoads,
    as_of: sheetDay('The day in question. A load on a later day is refused.'),
    who,
    licences: optional(
      licenceRows(
        'Rows of aircraft (or "all"), database, last day of the licence; further columns may follow. What is said of them is in the reason.',
      ),
      [],
      'no licences',
    ),
    changes_at_z: cardChangesAt,
    headings: headingsOfRows,
  },
  results: {
    when: result('', 'look (a load that names no card), overdue, now (something else to do today), next (the next visit of that aircraft).'),
    aircraft: result('', 'The aircraft.'),
    who: result('', 'Who loads it.'),
    box: result('', 'The box or card.'),
    database: result('', 'The database.'),
    do: result('', 'load, look at the card, or look for a newer issue.'),
    cycle: result('', 'AIRAC identifier of the data to load, as text; blank where it has none.'),
    effective: result('date', 'Effective date of the data to load.'),
    in_force_from: result('date and time', 'The moment at which it comes into force, in the time zone of the spreadsheet.'),
    on_card: result('date', 'Effective date of the data that is on the card now.'),
    reason: result('', 'What there is to say of the card today.'),
  },
  sources: ['icao-annex-15', 'faa-cut-off-dates', 'common-practice'],
  notes: `${zoneNotes} Now: out of date, no load written down, a load that failed, not verified, or nothing known. Next: of each aircraft the first change after the day, with every card that changes then and does not hold that data already; a card "as issued" is listed there, since nobody knows when the next issue comes. Cards not in use are left out. Common practice, no source.`,
  examples: [
    {
      arguments: [
        [['North'], ['North'], ['South']],
        [['left'], ['right'], ['panel']],
        [['navigation'], ['navigation'], ['charts']],
        [['28-day'], ['28-day'], ['56-day']],
        [
          ['North', 'left', 'navigation', '2024-10-31', '2024-10-30', '2024-10-30', 'Ada', ''],
          ['North', 'right', 'navigation', '2024-10-03', '2024-10-02', '2024-10-02', 'Ada', ''],
          ['South', 'panel', 'charts', '2024-10-31', '2024-10-30', '', 'Bo', ''],
        ],
        '2024-11-11',
        [['Ada'], ['Ada'], ['Bo']],
      ],
      gives: [
        [
          ...['overdue', 'North', 'Ada', 'right', 'navigation', 'load', '2411', '2024-10-31', '2024-10-31', '2024-10-03'],
          'out of date; differs from another card of this database',
        ],
        ['now', 'South', 'Bo', 'panel', 'charts', 'look at the card', '', '', '', '2024-10-31', 'not verified'],
        ['next', 'North', 'Ada', 'left', 'navigation', 'load', '2412', '2024-11-28', '2024-11-28', '2024-10-31', ''],
        ['next', 'North', 'Ada', 'right', 'navigation', 'load', '2412', '2024-11-28', '2024-11-28', '2024-10-03', ''],
        ['next', 'South', 'Bo', 'panel', 'charts', 'load', '2413', '2024-12-26', '2024-12-26', '2024-10-31', ''],
      ],
      source: 'Dates from Airservices Australia, cycle identifiers 2024, and FAA cut-off dates; the list by hand, in a spreadsheet set to UTC',
      formula: '=LEDGER_DUE(A2:A4, B2:B4, C2:C4, D2:D4, H2:O4, "2024-11-11", F2:F4)',
    },
  ],
  compute: (given) => {
    const { day, wallClock } = given.as_of;
    const named = given.aircraft.map((aircraft, index) => ({ aircraft, unit: given.box[index], database: given.database[index] }));
    const loaded = loadedOn(named, given.loads, day);
    const cards = named.flatMap(({ unit }, index): DueCard[] =>
      isInUse(given.series[index]) ? [{ ...cardOf(given, index, loaded[index]), unit, person: given.who[index] }] : [],
    );
    const rows = cardsDue(cards, readable(given.licences), day, wallClock).map(dueRow);
    const known = new Set(named.map(namesKey));
    const strangers = given.loads.filter((line) => !known.has(namesKey(line)));
    const looks = strangers.map((line): ResultCell[] => [
      ...['look', line.aircraft?.name ?? '', '', line.unit?.name ?? '', line.database?.name ?? '', 'look at the history', '', '', '', ''],
      `the load in row ${line.row} of the history names no card of the ledger`,
    ]);
    const list = [...looks, ...rows];
    return list.length === 0 ? [['', '', '', '', '', 'nothing to load']] : list;
  },
});
