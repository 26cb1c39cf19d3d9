// Reads a pilot's log from a file of comma-separated values, whatever the order of its columns, into the rows of the Currency
// log. Pure: text in; rows, and everything that was not taken, out. The file is taken apart by Papa Parse.
import Papa from 'papaparse';
import { dayNumber, isCivilDate, isoDate } from '../../core/civilDate';
import { logHeadings, undividedHeadings, type LogColumn } from '../../core/flightLog';
import { numberFromCell } from '../../functions/registry/readNumber';
import { plainWords } from '../../functions/registry/readText';

type Column = LogColumn | 'date' | 'aircraft';

/** Columns of hours; in every other one a number of times, always whole. */
const timed: ReadonlySet<Column> = new Set(['hours', 'commandHours', 'trainingHours']);
const limits: readonly (readonly [part: LogColumn, whole: LogColumn])[] = [['dayFullStops', 'dayLandings'], ['nightFullStops', 'nightLandings']];

/** One flight, in words of the log: a day as 2026-11-21, counts and hours as numbers, nothing where the file has none. */
export type ImportedFlight = Readonly<Partial<Record<LogColumn, number>>> & { readonly date: string; readonly aircraft: string };

export interface ImportedLog {
  readonly flights: readonly ImportedFlight[];
  /** Heading of the file for each column found. */
  readonly found: Readonly<Partial<Record<Column, string>>>;
  /** Headings of the file that the log has no place for. */
  readonly passedOver: readonly string[];
  /** Why rows, or the whole file, were not taken: told with their line. */
  readonly problems: readonly string[];
}

export type DateOrder = 'day first' | 'month first';

/** Headings stand in the first line, or under a few lines of title. */
const linesOfTitle = 15;

function placesIn(header: readonly string[]): Map<Column, number> {
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

/** 21.11.2026 or 11/21/2026, a time of day after it or not. */
const turnedDate = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4})(?: .*)?$/;

/** The order in which a file writes day and month, where they are told apart by slashes or points: as its own dates show. */
export function dateOrderOf(dates: readonly string[]): DateOrder | 'either' | 'both' {
  const parts = dates.map((date) => turnedDate.exec(date.trim())).filter((found) => found !== null);
  const dayFirst = parts.some(([, one]) => Number(one) > 12);
  const monthFirst = parts.some(([, , other]) => Number(other) > 12);
  if (dayFirst && monthFirst) return 'both';
  if (parts.length === 0 || dayFirst) return 'day first';
  return monthFirst ? 'month first' : 'either';
}

function isoOf(text: string, order: DateOrder): string | undefined {
  const written = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ].*)?$/.exec(text.trim());
  const turned = turnedDate.exec(text.trim());
  const [year, month, day] = written !== null ? [written[1], written[2], written[3]] : turned === null ? [] : order === 'day first' ? [turned[3], turned[2], turned[1]] : [turned[3], turned[1], turned[2]];
  const date = { year: Number(year), month: Number(month), day: Number(day) };
  return year !== undefined && isCivilDate(date) && dayNumber(date) > dayNumber({ year: 1950, month: 1, day: 1 }) ? isoDate(date) : undefined;
}

/** A whole count, or hours as 1.4, 1,4 or 1:24; a mark of yes is one. */
function amountOf(text: string, isTimed: boolean): number | undefined {
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
    const amount = amountOf(text, timed.has(column));
    if (amount === undefined) return `line ${line}: "${text}" under "${header[at] ?? ''}" is no ${timed.has(column) ? '' : 'whole '}number from 0 to 1,000`;
    done[column] = amount;
  }
  for (const [part, whole] of limits) {
    if ((done[part] ?? 0) > (done[whole] ?? 0)) return `line ${line}: ${done[part] ?? 0} under "${header[places.get(part) ?? -1] ?? ''}", more than landings`;
  }
  return { date, aircraft: (cells[places.get('aircraft') ?? -1] ?? '').trim(), ...done };
}

const nothing = (problem: string): ImportedLog => ({ flights: [], found: {}, passedOver: [], problems: [problem] });

/** Rows with the line of the file on which each begins: a quoted cell may run over several. */
function rowsOf(data: readonly (readonly string[])[]): Row[] {
  let line = 1;
  return data.map((cells) => {
    const row = { cells, line };
    line += 1 + cells.reduce((sum, cell) => sum + (cell.match(/\r\n|\r|\n/g)?.length ?? 0), 0);
    return row;
  });
}

/** `order` settles how dates such as 03/04/2026 are meant where the file itself does not show it. */
export function importLog(text: string, order?: DateOrder): ImportedLog {
  const { data, errors } = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), { skipEmptyLines: false });
  const rows = rowsOf(data);
  const quotes = errors.find(({ type }) => type === 'Quotes');
  if (quotes !== undefined) return nothing(`line ${rows[quotes.row ?? 0]?.line ?? 1}: a quotation mark is not closed, or stands inside a quoted cell, so that rows run into one another`);
  const head = rows.slice(0, linesOfTitle).find(({ cells }) => ['date', 'aircraft'].every((column) => placesIn(cells).has(column as Column)));
  if (head === undefined) return nothing('no line of headings with a date and an aircraft was found');
  const header = head.cells;
  const places = placesIn(header);
  const body = rows.filter(({ cells, line }) => line > head.line && cells.some((cell) => cell.trim() !== ''));
  const shown = dateOrderOf(body.map(({ cells }) => cells[places.get('date') ?? -1] ?? ''));
  if (shown === 'both') return nothing('some dates can only be day first and some only month first');
  if (shown === 'either' && order === undefined) return nothing('dates such as 03/04/2026 can be read two ways: say whether the day or the month comes first');
  const read = body.map((row) => flightOf(row, places, header, shown === 'either' ? (order ?? 'day first') : shown));
  const used = new Set(places.values());
  return {
    flights: read.filter((flight) => typeof flight !== 'string'),
    found: Object.fromEntries([...places].map(([column, at]) => [column, header[at] ?? ''])),
    passedOver: header.filter((heading, index) => heading.trim() !== '' && !used.has(index)),
    problems: read.filter((flight) => typeof flight === 'string'),
  };
}

/** Headings of the file for columns (of these, or of all) that a log with such headings has no place for. */
export function headingsWithoutPlace(headings: readonly string[], { found }: ImportedLog, among?: readonly Column[]): string[] {
  const places = placesIn(headings);
  return Object.entries(found).flatMap(([column, heading]) => (!places.has(column as Column) && (among?.includes(column as Column) ?? true) ? [heading] : []));
}

/** The flights as rows under the headings of a log (those of the sheet, gaps among them): a day as text, else numbers. */
export function rowsUnder(headings: readonly string[], { flights }: ImportedLog): (string | number)[][] {
  const places = placesIn(headings);
  return flights.map((flight) => {
    const row: (string | number)[] = headings.map(() => '');
    for (const [column, at] of places) row[at] = flight[column] ?? '';
    return row;
  });
}
