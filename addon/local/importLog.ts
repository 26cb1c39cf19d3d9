// Reads a pilot's log from a file of comma-separated values, whatever the order of its columns, into the rows of the Currency
// log. Pure: text in; rows, and everything that was not taken, out. The file is taken apart by Papa Parse.
import Papa from 'papaparse';
import { saidHeadings } from '../../core/currency/logColumns';
import { hourColumns, logHeadings, partsOfLandings, undividedHeadings, type LogColumn } from '../../core/currency/flightLog';
import { numberFromCell } from '../../functions/registry/readNumber';
import { plainWords } from '../../functions/registry/readText';
import { firstFew } from '../../functions/registry/sharedWords';
import { dateOrderOf, isoOf, type DateOrder } from '../workbook/typed/writtenDays';
import { isHeadedBy, linesOfTitle, pilotNamed, placesNamed, type Column, type NamedColumns } from './namedColumns';
import { pilotColumn, type PilotColumn } from './pilotColumn';

/** One flight, in words of the log: a day as 2026-11-21, counts and hours as numbers, nothing where the file has none. */
export type ImportedFlight = Readonly<Partial<Record<LogColumn, number>>> & {
  readonly date: string;
  readonly aircraft: string;
  /** Whose flight it is, where that is known. */
  readonly pilot?: string;
};

export interface ImportedLog {
  readonly flights: readonly ImportedFlight[];
  /** Line of the file for each of them. */
  readonly lines: readonly number[];
  /** Where the file has flights of several people: whose, until one of them is chosen. */
  readonly pilots: readonly string[];
  /** Flights of other people, left out. */
  readonly ofOthers: number;
  /** Heading of the file for each column found. */
  readonly found: Readonly<Partial<Record<Column, string>>>;
  /** Headings of the file that the log has no place for. */
  readonly passedOver: readonly string[];
  /** Why rows, or the whole file, were not taken: told with their line. */
  readonly problems: readonly string[];
}

export function placesIn(header: readonly string[]): Map<Column, number> {
  const words = header.map((cell) => plainWords(cell));
  const places = new Map<Column, number>();
  const free = (word: string): number => words.findIndex((heading, index) => heading === word && ![...places.values()].includes(index));
  for (const [column, headings] of Object.entries(logHeadings) as [Column, readonly string[]][]) {
    const at = headings.map(free).find((index) => index >= 0);
    if (at !== undefined) places.set(column, at);
  }
  for (const { day, night, words: undivided } of undividedHeadings) {
    const at = undivided.map(free).find((index) => index >= 0);
    if (at !== undefined && !places.has(day) && !places.has(night)) places.set(day, at);
  }
  return places;
}

/** Where the log says who flew; -1 where it does not. */
export const pilotPlace = (header: readonly string[]): number => header.findIndex((cell) => saidHeadings.pilot.includes(plainWords(cell)));

/** A whole count, or hours as 1.4, 1,4 or 1:24; a mark of yes is one. */
export function amountOf(text: string, isTimed: boolean): number | undefined {
  const plain = numberFromCell(text);
  if (plain !== undefined) return plain >= 0 && plain <= 1000 && (isTimed || Number.isInteger(plain)) ? plain : undefined;
  const clock = isTimed ? /^(\d{1,3}):([0-5]\d)(?::[0-5]\d)?$/.exec(text.trim()) : null;
  if (clock !== null) return Number(clock[1]) + Number(clock[2]) / 60;
  const word = plainWords(text);
  if (word === 'yes' || word === 'x' || word === 'true') return 1;
  return word === 'no' || word === 'false' ? 0 : undefined;
}

interface Row {
  readonly cells: readonly string[];
  readonly line: number;
}

function flightOf({ cells, line }: Row, places: ReadonlyMap<Column, number>, header: readonly string[], order: DateOrder): ImportedFlight | string {
  // A decimal comma in a file of commas moves everything after it one column on.
  if (cells.slice(header.length).some((cell) => cell.trim() !== '')) return `line ${line}: more cells than headings`;
  const written = cells[places.get('date') ?? -1] ?? '';
  const date = isoOf(written, order);
  if (date === undefined) return `line ${line}: "${written}" is no date`;
  const done: Partial<Record<LogColumn, number>> = {};
  for (const [column, at] of places) {
    const text = cells[at] ?? '';
    if (column === 'date' || column === 'aircraft' || text.trim() === '') continue;
    const amount = amountOf(text, hourColumns.has(column));
    if (amount === undefined)
      return `line ${line}: "${text}" under "${header[at] ?? ''}" is no ${hourColumns.has(column) ? '' : 'whole '}number from 0 to 1,000`;
    done[column] = amount;
  }
  for (const [part, whole] of partsOfLandings) {
    if ((done[part] ?? 0) > (done[whole] ?? 0))
      return `line ${line}: ${done[part] ?? 0} under "${header[places.get(part) ?? -1] ?? ''}", more than landings`;
  }
  return { date, aircraft: (cells[places.get('aircraft') ?? -1] ?? '').trim(), ...done };
}

const nothing = (problem: string, pilots: readonly string[] = []): ImportedLog => ({
  flights: [],
  lines: [],
  pilots,
  ofOthers: 0,
  found: {},
  passedOver: [],
  problems: [problem],
});

const maxNamed = 8;
const quoted = (words: readonly string[]): string =>
  firstFew(
    words.map((word) => `"${word}"`),
    maxNamed,
  );

/** What would have done for headings, beside what the file begins with. */
function noHeadings(rows: readonly Row[]): string {
  const first = rows.find(({ cells }) => cells.filter((cell) => cell.trim() !== '').length > 1) ?? rows[0];
  const there = first?.cells.map((cell) => cell.trim()).filter((cell) => cell !== '') ?? [];
  const has = there.length === 0 ? '' : `; line ${first?.line ?? 1} has ${quoted(there)}`;
  return `no line of headings with a date and an aircraft was found: the day must stand under ${quoted(logHeadings.date)}, the aircraft under ${quoted(logHeadings.aircraft)}${has}`;
}

/** How what could not be taken may be written, once for all lines of the file. */
export function waysToWrite(problems: readonly string[]): string[] {
  const has = (words: RegExp): boolean => problems.some((problem) => words.test(problem));
  return [
    ...(has(/ is no date$/) ? ['Days are read as 2026-11-26, 26.11.2026, 26/11/2026 or 26 Nov 2026.'] : []),
    ...(has(/ is no number /) ? ['Hours are read as 1.4, 1,4 or 1:24.'] : []),
  ];
}

/** Columns that a log with such headings has and the file has not, by the heading that would do. */
export const headingsThatWouldDo = (headings: readonly string[], { found }: ImportedLog): string[] =>
  [...placesIn(headings).keys()].flatMap((column) => (column in found ? [] : (logHeadings[column][0] ?? [])));

/** What is to be known of a file beyond what it says itself. */
export interface Answers {
  /** How dates such as 03/04/2026 are meant. */
  readonly order?: DateOrder;
  /** Whose flights, in a file of several people; everyone where all of them are the pilot's own. */
  readonly pilot?: { readonly named: string } | 'everyone';
  /** What the columns are, where a person has said so. */
  readonly columns?: NamedColumns;
}

/** Rows with the line of the file on which each begins: a quoted cell may run over several. */
function rowsOf(data: readonly (readonly string[])[]): Row[] {
  let line = 1;
  return data.map((cells) => {
    const row = { cells, line };
    line += 1 + cells.reduce((sum, cell) => sum + (cell.match(/\r\n|\r|\n/g)?.length ?? 0), 0);
    return row;
  });
}

function read(body: readonly Row[], header: readonly string[], places: ReadonlyMap<Column, number>, order: DateOrder, pilotOf: (row: Row) => string) {
  const flights: ImportedFlight[] = [];
  const lines: number[] = [];
  const problems: string[] = [];
  for (const row of body) {
    const flight = flightOf(row, places, header, order);
    if (typeof flight === 'string') problems.push(flight);
    else {
      const pilot = pilotOf(row);
      flights.push(pilot === '' ? flight : { ...flight, pilot });
      lines.push(row.line);
    }
  }
  return { flights, lines, problems };
}

/** The rows of one pilot. One that names nobody, among rows that do, belongs to nobody. */
function rowsOfPilot(body: readonly Row[], people: PilotColumn | undefined, pilot: Answers['pilot']): readonly Row[] {
  if (people === undefined || pilot === undefined || pilot === 'everyone') return body;
  return body.filter(({ cells }) => plainWords(cells[people.at] ?? '') === plainWords(pilot.named));
}

/** The name in its row. Where all are the pilot's own, the column names somebody else, such as the instructor. */
const pilotIn =
  (people: PilotColumn | undefined, pilot: Answers['pilot']) =>
  ({ cells }: Row): string =>
    people === undefined || pilot === 'everyone' ? '' : (cells[people.at] ?? '').trim();

const several = ({ heading, names }: PilotColumn): string =>
  `the file has flights of ${names.length} pilots under "${heading}": ${quoted(names.map((name) => (name === '' ? 'nobody named' : name)))}. Say whose they are: other people's landings are not yours`;

/** `answers` settles what the file itself does not show. */
export function importLog(text: string, answers: Answers = {}): ImportedLog {
  const { data, errors } = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), { skipEmptyLines: false });
  const rows = rowsOf(data);
  const quotes = errors.find(({ type }) => type === 'Quotes');
  if (quotes !== undefined)
    return nothing(
      `line ${rows[quotes.row ?? 0]?.line ?? 1}: a quotation mark is not closed, or stands inside a quoted cell, so that rows run into one another`,
    );
  const { columns: named } = answers;
  const isHead = ({ cells }: Row): boolean =>
    named === undefined ? ['date', 'aircraft'].every((column) => placesIn(cells).has(column as Column)) : isHeadedBy(cells, named);
  const head = rows.slice(0, linesOfTitle).find(isHead);
  if (head === undefined) return nothing(noHeadings(rows));
  const header = head.cells;
  const everything = rows.filter(({ cells, line }) => line > head.line && cells.some((cell) => cell.trim() !== ''));
  const people = pilotColumn(
    header,
    everything.map(({ cells }) => cells),
    (cell) => amountOf(cell, true) === undefined,
    pilotNamed(named),
  );
  if (people !== undefined && people.names.length > 1 && answers.pilot === undefined) return nothing(several(people), people.names);
  // A column of names under a heading of hours in command is no column of hours.
  const places = new Map([...(named === undefined ? placesIn(header) : placesNamed(named))].filter(([, at]) => at !== people?.at));
  const body = rowsOfPilot(everything, people, answers.pilot);
  const shown = dateOrderOf(body.map(({ cells }) => cells[places.get('date') ?? -1] ?? ''));
  if (shown === 'both') return nothing('some dates can only be day first and some only month first');
  if (shown === 'either' && answers.order === undefined)
    return nothing('dates such as 03/04/2026 can be read two ways: say whether the day or the month comes first');
  const used = new Set([...places.values(), ...(people === undefined ? [] : [people.at])]);
  return {
    ...read(body, header, places, shown === 'either' ? (answers.order ?? 'day first') : shown, pilotIn(people, answers.pilot)),
    pilots: [],
    ofOthers: everything.length - body.length,
    found: Object.fromEntries([...places].map(([column, at]) => [column, header[at] ?? ''])),
    passedOver: header.filter((heading, index) => heading.trim() !== '' && !used.has(index)),
  };
}

/** Headings of the file for columns (of these, or of all) that a log with such headings has no place for. */
export function headingsWithoutPlace(headings: readonly string[], { found }: ImportedLog, among?: readonly Column[]): string[] {
  const places = placesIn(headings);
  return Object.entries(found).flatMap(([column, heading]) =>
    !places.has(column as Column) && (among?.includes(column as Column) ?? true) ? [heading] : [],
  );
}

/** The flights as rows under the headings of a log (those of the sheet, gaps among them): a day as text, else numbers. */
export function rowsUnder(headings: readonly string[], { flights }: ImportedLog): (string | number)[][] {
  const [places, pilotAt] = [placesIn(headings), pilotPlace(headings)];
  return flights.map((flight) => {
    const row: (string | number)[] = headings.map((_, at) => (at === pilotAt ? (flight.pilot ?? '') : ''));
    for (const [column, at] of places) row[at] = flight[column] ?? '';
    return row;
  });
}
