// The Currency log: a pilot's flights and papers and an aircraft's inspections, and the day on which each lapses.
import { area, capped, caution, cell, line, namedFor } from './build';
import { flightCells, itemCells, paperCells, pilotCells, placesFor, rulesCell, type CurrencyPlaces, type CurrencyRoom } from './currencySections';
import { besideList, column, moveIntoList, type List } from './lists';
import { sheetNames } from './places';
import type { SheetTemplate, TemplateCell, Validation } from './template';

const usualRoom: CurrencyRoom = { papers: 14, pilot: 30, items: 24, flights: 1000, tinted: 60 };

/** Formula text: the items of each verdict that asks for something. */
const inWords = (verdicts: string, what: string): string => ['NO', 'UNKNOWN', 'CHECK'].map((word) => namedFor(word, verdicts, what)).join('&');

/** How many are OK, and what asks for something; `warned` is formula text of what no row of the list can say. */
function allOf(verdicts: string, what: string, warned: string): string {
  const judged = ['OK', 'CHECK', 'NO', 'UNKNOWN'].map((word) => `COUNTIF(${verdicts},"${word}")`).join('+');
  const found = `IF(COUNTIF(${verdicts},"OK")=0,"",COUNTIF(${verdicts},"OK")&" OK. ")&${capped(`(${inWords(verdicts, what)})`, 400)}`;
  return `=${warned}&IFERROR(IF(${judged}=0,"UNKNOWN: the list below is empty, or cannot be read.",${found}),"UNKNOWN: the list below cannot be read.")`;
}

const warning = (list: List, letter: string, what: string): string => `IF(${besideList(list, letter)},"UNKNOWN: ${moveIntoList(what)} ","")`;

function summaryCells(places: CurrencyPlaces): TemplateCell[] {
  const { papers, pilot, items, flights } = places;
  // One row more than the list has room for: what spills into the row of air below it is judged too.
  const spilled = { ...pilot, last: pilot.last + 1 };
  const verdicts = column(spilled, 'D');
  const throughDays = column(spilled, 'E');
  const next = `MINIFS(${throughDays},${throughDays},">="&INT(as_of))`;
  const named = (letter: string): string => `IFERROR(${column(items, letter)},"?")`;
  return [
    cell(1, 1, 'Currency log', 'title'),
    cell(1, 4, 'Invented pilot, aircraft, papers and flights, for demonstration.', 'subtitle'),
    cell(2, 1, caution, 'subtitle'),
    ...line(3, 1, ['Pilot', 'title'], [allOf(verdicts, column(spilled, 'A'), warning(papers, 'A', 'A paper')), 'reason']),
    ...line(4, 1, ['Aircraft', 'title'], [allOf(column(items, 'J'), `${named('B')}&" "&${named('A')}`, warning(items, 'A', 'An item')), 'reason']),
    ...line(5, 1, ['Whose rules', 'label'], ['FAA', 'inputText', { note: 'FAA, EASA, or both: FAA, EASA.' }]),
    cell(5, 4, `=IFERROR(IF(${next}<INT(as_of),"","The pilot's next lapse: "&TEXT(${next},"yyyy-mm-dd")&", "&INDEX(${column(spilled, 'A')},MATCH(${next},${throughDays},0))),"")`, 'computedText'),
    cell(6, 1, 'Further down, from row', 'label'),
    cell(6, 2, `="the pilot's list "&ROW($A$${pilot.head - 2})&", the aircraft's list "&ROW($A$${items.head - 2})&", flights "&ROW($A$${flights.head - 2})`, 'unit'),
  ];
}

const dates = (range: string, help: string): Validation => ({ kind: 'date', range, help });
const list = (range: string, choices: readonly string[], help: string): Validation => ({ kind: 'list', range, choices, help });
const numbers = (range: string, maximum: number, help: string): Validation => ({ kind: 'number', range, minimum: 0, maximum, help });

function validationsOf({ papers, items, flights }: CurrencyPlaces, tinted: number): Validation[] {
  const lastTinted = flights.first + tinted - 1;
  return [
    list(rulesCell, ['FAA', 'EASA', 'FAA, EASA'], 'Whose rules the two lists follow.'),
    list(area(papers.first, 6, papers.last, 6), ['yes', 'no'], 'A tailwheel needs landings to a full stop in a tailwheel.'),
    list(area(papers.first, 8, papers.last, 8), ['FFS', 'FTD', 'ATD'], 'A training device; blank for an aircraft.'),
    numbers(area(papers.first, 13, papers.last, 13), 1000000, 'Hours in service now.'),
    numbers(area(items.first, 3, items.last, 4), 1000000, 'Hours in service.'),
    dates(area(items.first, 5, items.last, 5), 'The day it was done; for a battery or a certificate its last good day.'),
    numbers(area(items.first, 6, items.last, 8), 36600, 'An interval of your own.'),
    dates(area(flights.first, 2, lastTinted, 2), 'The day of the flight, such as 2026-11-21.'),
    numbers(area(flights.first, 3, lastTinted, 8), 1000, 'How many.'),
    numbers(area(flights.first, 10, lastTinted, 14), 1000, 'How many; hours as a number, such as 1.4.'),
  ];
}

/** The sheet with room for so many rows; longer ones serve the tests of scale. */
export function currencyLogWith(room: CurrencyRoom): SheetTemplate {
  const places = placesFor(room);
  const { pilot, items, flights } = places;
  return {
    key: 'currency',
    name: sheetNames.currency,
    version: 2,
    rows: flights.last,
    columns: 18,
    columnWidths: [168, 74, 54, 74, 74, 64, 64, 44, 10, 74, 74, 38, 54, 58, 100, 100, 100, 100],
    rowHeights: { 1: 32, 3: 66, 4: 66, [pilot.head]: 34, [items.head]: 34, [flights.head]: 46 },
    frozenRows: 0,
    cells: [
      ...summaryCells(places),
      ...paperCells(places),
      ...pilotCells(places),
      ...itemCells(places),
      ...flightCells(places, room.tinted),
    ],
    merges: ['B3:N3', 'B4:N4'],
    validations: validationsOf(places, room.tinted),
    verdictRanges: [area(pilot.first, 4, pilot.last + 1, 4), area(items.first, 10, items.last, 10)],
    names: [],
    charts: [],
    print: { landscape: true },
  };
}

export const currencyLogSheet = currencyLogWith(usualRoom);
