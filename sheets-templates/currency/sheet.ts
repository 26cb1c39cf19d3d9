// The Currency log: a pilot's flights and papers and an aircraft's inspections, and the day on which each lapses.
import { area, capped, caution, cell, judgedOnTop, line, namedFor, otherDaySaid, typedOver } from '../build';
import { pilotCell, placesFor, rulesCell, summaryEnds, usualRoom, type CurrencyPlaces, type CurrencyRoom } from './places';
import { flightCells, itemCells, ownRuleCells, paperCells, pilotCells, whoseFlights } from './sections';
import { authorityNames, ruleChoices } from '../../functions/facts';
import { columnsFrom, type TemplateKeys } from '../keys';
import type { Block } from '../layout';
import { besideList, column, moveIntoList, type List } from '../lists';
import { sheetNames, typedOverCells } from '../places';
import type { DeclaredSheet, TemplateCell, Validation } from '../template';
import { whileDemo } from '../demo/inUse';

/** Formula text: the items of each verdict that asks for something. */
const inWords = (verdicts: string, what: string): string => ['NO', 'UNKNOWN', 'CHECK'].map((word) => namedFor(word, verdicts, what)).join('&');

/** How many are OK, and what asks for something; `warned` is formula text of what no row of the list can say. */
function allOf(verdicts: string, what: string, warned: string): string {
  const judged = ['OK', 'CHECK', 'NO', 'UNKNOWN'].map((word) => `COUNTIF(${verdicts},"${word}")`).join('+');
  const found = `IF(COUNTIF(${verdicts},"OK")=0,"",COUNTIF(${verdicts},"OK")&" OK. ")&${capped(`(${inWords(verdicts, what)})`, 400)}`;
  return `=${otherDaySaid}&IF(${typedOverCells.currency}="","","CHECK: see the line above the papers. ")&${warned}&IFERROR(IF(${judged}=0,"UNKNOWN: the list below is empty, or cannot be read.",${found}),"UNKNOWN: the list below cannot be read.")`;
}

const warning = (list: List, letter: string, what: string): string => `IF(${besideList(list, letter)},"UNKNOWN: ${moveIntoList(what)} ","")`;

function summaryCells(places: CurrencyPlaces): TemplateCell[] {
  const { papers, ownRules, pilot, items, flights } = places;
  // One row more than the list has room for: what spills into the row of air below it is judged too.
  const spilled = { ...pilot, last: pilot.last + 1 };
  const verdicts = column(spilled, 'D');
  const throughDays = column(spilled, 'E');
  const next = `MINIFS(${throughDays},${throughDays},">="&INT(as_of))`;
  const named = (letter: string): string => `IFERROR(${column(items, letter)},"?")`;
  return [
    cell(1, 1, 'Currency log', 'title'),
    cell(1, 4, whileDemo('Invented pilot, aircraft, papers and flights, for demonstration.'), 'subtitle'),
    cell(1, 12, judgedOnTop, 'subtitle'),
    cell(2, 1, caution, 'subtitle'),
    ...line(
      3,
      1,
      ['Pilot', 'title'],
      [allOf(verdicts, column(spilled, 'A'), `${warning(papers, 'A', 'A paper')}&${warning(ownRules, 'A', 'A rule')}`), 'reason'],
    ),
    ...line(4, 1, ['Aircraft', 'title'], [allOf(column(items, 'J'), `${named('B')}&" "&${named('A')}`, warning(items, 'A', 'An item')), 'reason']),
    ...line(
      5,
      1,
      ['rules (authority)', 'label'],
      ['FAA', 'inputText', { note: `${authorityNames.join(', ')}; or two of them, such as FAA and EASA.` }],
    ),
    cell(
      5,
      4,
      `=IFERROR(IF(${next}<INT(as_of),"","The pilot's next lapse: "&TEXT(${next},"yyyy-mm-dd")&", "&INDEX(${column(spilled, 'A')},MATCH(${next},${throughDays},0))),"")`,
      'computedText',
    ),
    ...line(
      6,
      1,
      ['pilot', 'label'],
      ['', 'inputText', { note: 'Whose lists these are, as in the column "pilot" of the flights. Blank where the log is of one pilot.' }],
    ),
    cell(6, 4, whoseFlights(places), 'computedText'),
    cell(7, 1, 'Further down, from row', 'label'),
    cell(
      7,
      2,
      `="your own rules "&ROW($A$${ownRules.head - 2})&", the pilot's list "&ROW($A$${pilot.head - 2})&", the aircraft's list "&ROW($A$${items.head - 2})&", flights "&ROW($A$${flights.head - 2})`,
      'unit',
    ),
  ];
}

const dates = (range: string, help: string): Validation => ({ kind: 'date', range, help });
const list = (range: string, choices: readonly string[], help: string): Validation => ({ kind: 'list', range, choices, help });
const numbers = (range: string, maximum: number, help: string): Validation => ({ kind: 'number', range, minimum: 0, maximum, help });

function validationsOf({ papers, ownRules, items, flights }: CurrencyPlaces, tinted: number): Validation[] {
  const lastTinted = flights.first + tinted - 1;
  return [
    list(rulesCell, [...authorityNames, 'FAA and EASA'], 'The authority whose rules the two lists follow.'),
    list(area(papers.first, 6, papers.last, 6), ['yes', 'no'], 'A tailwheel needs landings to a full stop in a tailwheel.'),
    list(area(papers.first, 8, papers.last, 8), ['FFS', 'FTD', 'ATD'], 'A training device; blank for an aircraft.'),
    numbers(area(papers.first, 13, papers.last, 13), 1000000, 'Hours in service now.'),
    list(area(ownRules.first, 2, ownRules.last, 2), ruleChoices.what, 'What is counted.'),
    numbers(area(ownRules.first, 3, ownRules.last, 3), 1000, 'How many; blank for a paper.'),
    list(area(ownRules.first, 5, ownRules.last, 5), ruleChoices.of, 'Of what "within" is a number; with since it is a date.'),
    list(area(ownRules.first, 7, ownRules.last, 7), ruleChoices.neededFor, 'The flights for which it is asked; blank for every flight.'),
    list(area(ownRules.first, 8, ownRules.last, 8), ['yes', 'no'], 'Only what was done at night.'),
    list(area(ownRules.first, 10, ownRules.last, 11), ['yes', 'no'], 'Only landings to a full stop; only in a tailwheel aircraft.'),
    numbers(area(items.first, 3, items.last, 4), 1000000, 'Hours in service.'),
    dates(area(items.first, 5, items.last, 5), 'The day it was done; for a battery or a certificate its last good day.'),
    numbers(area(items.first, 6, items.last, 7), 36600, 'An interval of your own.'),
    dates(area(papers.first, 14, papers.last, 14), 'The day on which the hours were read; blank for those of today.'),
    dates(area(flights.first, 2, lastTinted, 2), 'The day of the flight, such as 2026-11-21.'),
    numbers(area(flights.first, 3, lastTinted, 8), 1000, 'How many.'),
    numbers(area(flights.first, 10, lastTinted, 14), 1000, 'How many; hours as a number, such as 1.4.'),
  ];
}

/** A list that is read with its heads. */
const withHeads = (list: List): List & { readonly read: Block } => ({ ...list, read: { first: list.head, last: list.last } });

function keysOf({ papers, ownRules, items, flights }: CurrencyPlaces): TemplateKeys {
  return {
    entries: { rules: rulesCell, pilot: pilotCell },
    lists: {
      papers: { ...papers, columns: columnsFrom(1, 'paper', 'date', 'months') },
      fleet: {
        ...withHeads(papers),
        columns: {
          ...columnsFrom(5, 'aircraft', 'tailwheel', 'category', 'device'),
          ...columnsFrom(10, 'typeRating', 'class'),
          hours: 13,
          readOn: 14,
        },
      },
      ownRules: {
        ...withHeads(ownRules),
        columns: {
          ...columnsFrom(1, 'rule', 'what', 'atLeast', 'within', 'of', 'in', 'neededFor', 'night'),
          ...columnsFrom(10, 'fullStop', 'tailwheel'),
          setBy: 13,
        },
      },
      items: {
        ...withHeads(items),
        columns: columnsFrom(1, 'item', 'aircraft', 'doneAtHours', 'wasDueAtHours', 'doneOn', 'everyMonths', 'everyDays', 'everyHours'),
      },
      flights: {
        ...withHeads(flights),
        columns: {
          ...columnsFrom(1, 'aircraft', 'date', 'dayLandings', 'dayFullStops', 'nightLandings', 'nightFullStops', 'approaches', 'holds'),
          ...columnsFrom(10, 'tracking', 'hours'),
          ...columnsFrom(13, 'inCommand', 'withInstructor', 'remark', 'pilot', 'from', 'to', 'takeOff', 'landing'),
        },
      },
    },
  };
}

/** The sheet with room for so many rows; longer ones serve the tests of scale. */
export function currencyLogWith(room: CurrencyRoom): DeclaredSheet {
  const places = placesFor(room);
  const { ownRules, pilot, items, flights } = places;
  return {
    key: 'currency',
    name: sheetNames.currency,
    version: 5,
    rows: flights.last,
    columns: 20,
    columnWidths: [168, 74, 54, 74, 88, 64, 64, 58, 10, 74, 74, 38, 54, 76, 100, 100, 100, 100, 74, 74],
    rowHeights: { 1: 32, 3: 66, 4: 66, [ownRules.head]: 34, [pilot.head]: 34, [items.head]: 34, [flights.head]: 46 },
    frozenRows: 0,
    cells: [
      ...summaryCells(places),
      cell(summaryEnds + 1, 1, `=${typedOver([...pilotCells(places), ...itemCells(places)])}`, 'computedText'),
      ...paperCells(places),
      ...ownRuleCells(places),
      ...pilotCells(places),
      ...itemCells(places),
      ...flightCells(places, room.tinted),
    ],
    merges: ['B3:N3', 'B4:N4'],
    validations: validationsOf(places, room.tinted),
    verdictRanges: [area(pilot.first, 4, pilot.last + 1, 4), area(items.first, 10, items.last, 10)],
    names: [],
    keys: keysOf(places),
    charts: [],
    print: { landscape: true },
  };
}

export const currencyLogSheet = currencyLogWith(usualRoom);
