// Puts the flights of a file into the Currency log: below its last filled row, in one step that can be undone, and never
// twice, since landings counted twice would look like recent experience. What the file does not show is asked.
import type { ICellData } from '@univerjs/core';
import { headingsThatWouldDo, headingsWithoutPlace, importLog, placesIn, rowsUnder, waysToWrite, type ImportedLog } from '../importLog';
import { compareFlights, type Compared } from '../knownFlights';
import { fileColumns, plainHeadings, strange, type Column, type Meaning } from '../namedColumns';
import { logHeadings } from '../../../core/currency/flightLog';
import { firstFew } from '../../../functions/registry/sharedWords';
import { sheetNames } from '../../../sheets-templates/places';
import type { Area } from '../../workbook/areas';
import { argumentOf, callIn, NotThereError, sheetOfKind } from '../../workbook/ownCalls';
import { valuesIn } from '../../workbook/readPlace';
import { isoDay, serialFromIso } from '../../workbook/serialDates';
import type { CellValue } from '../../workbook/snapshot';
import type { Worksheet } from './cells';
import { askOwner, counted, pilotsNamed, withOwner, type FileAnswers, type ImportSaid } from './flightOwner';
import type { LiveWorkbook } from './liveWorkbook';

const wordOf = (value: CellValue): CellValue => (typeof value === 'string' && isoDay.test(value.trim()) ? serialFromIso(value.trim()) : value);

/** The log as it stands: the range that the pilot's list is worked out from. */
interface Log {
  readonly sheet: Worksheet;
  readonly name: string;
  /** Rows and columns counted from 1; the first row holds the headings. */
  readonly area: Area;
  readonly headings: readonly string[];
  /** Last row with anything in it, on the whole sheet; a formula that shows a blank fills its row too. */
  readonly lastFilled: number;
  readonly flights: readonly (readonly CellValue[])[];
}

function logIn({ workbook, snapshot }: LiveWorkbook): Log {
  const all = snapshot('all');
  const found = sheetOfKind(all, 'currency');
  if (found === undefined) throw new NotThereError(`The sheet "${sheetNames.currency}" is no longer in this workbook.`);
  const place = argumentOf(all, callIn(found, 'PILOT_STATUS'), 'log');
  const sheet = place === undefined ? null : workbook.getSheetByName(place.sheet.name);
  if (place === undefined || sheet === null)
    throw new NotThereError(`The formula with PILOT_STATUS in the sheet "${found.name}" no longer reads a range.`);
  const { name, values, formulas } = place.sheet;
  const area = {
    ...place.area,
    lastRow: Math.min(place.area.lastRow, sheet.getMaxRows()),
    lastColumn: Math.min(place.area.lastColumn, sheet.getMaxColumns()),
  };
  const inFormulas = new Set(formulas.map(({ row }) => row));
  let lastFilled = area.lastRow;
  while (lastFilled > area.row && !inFormulas.has(lastFilled) && (values[lastFilled - 1] ?? []).every((value) => value === '')) lastFilled -= 1;
  const [headings = [], ...flights] = valuesIn({ sheet: place.sheet, area: { ...area, lastRow: lastFilled } });
  return { sheet, name, area, headings: headings.map(String), lastFilled, flights };
}

const maxListed = 8;
const inWords = (column: Column): string => logHeadings[column][0] ?? column;

/** Each flight that is perhaps one of the log, by the line of the file and the row of the log. */
function doubtsIn({ doubtful }: Compared, { area }: Log, { flights, lines }: ImportedLog): string {
  const told = doubtful.map(({ index, row, columns }) => {
    const flight = flights[index];
    return `line ${lines[index] ?? '?'} (${flight?.date ?? ''}, ${flight?.aircraft ?? ''}) and row ${area.row + 1 + row}, other ${columns.map(inWords).join(', ')}`;
  });
  return firstFew(told, maxListed, { separator: '; ' });
}

/** Text stays text whatever it begins with; a day is a date; the look is that of the first row of the log where the cell has none. */
function contentOf({ sheet, area }: Log, value: CellValue, row: number, column: number): ICellData {
  const cells = sheet.getSheet();
  const style = cells.getCellRaw(row - 1, column - 1)?.s ?? cells.getCellRaw(area.row, column - 1)?.s;
  const look = style === undefined || style === null ? {} : { s: style };
  const word = wordOf(value);
  if (word === '') return look;
  return { ...look, v: word, t: typeof word === 'number' ? 2 : 1 };
}

function write(log: Log, row: number, rows: readonly CellValue[][]): void {
  const { column } = log.area;
  const contents = rows.map((cells, down) => cells.map((value, across) => contentOf(log, value, row + down, column + across)));
  log.sheet.getRange(row - 1, column - 1, rows.length, contents[0]?.length ?? 1).setValues(contents);
}

function notTaken(log: ImportedLog, headings: readonly string[]): string[] {
  const passedOver = [...log.passedOver, ...headingsWithoutPlace(headings, log)];
  return [
    ...(log.problems.length === 0 ? [] : [`Not taken: ${firstFew(log.problems, maxListed, { separator: '; ' })}.`, ...waysToWrite(log.problems)]),
    ...(passedOver.length === 0 ? [] : [`Columns not understood: ${passedOver.join(', ')}.`]),
    ...(passedOver.length === 0 ? [] : [`Headings that would do besides: ${headingsThatWouldDo(headings, log).join(', ')}.`]),
    ...(log.ofOthers === 0 ? [] : [`Left out: ${counted(log.ofOthers)} of others.`]),
  ];
}

/** Adds these flights of the file, or throws why not. */
function add(log: Log, imported: ImportedLog, indexes: readonly number[], already: string): string {
  const { name, area, headings, lastFilled } = log;
  const rows = rowsUnder(headings, imported);
  const fresh = [...indexes].sort((one, other) => one - other).map((index) => rows[index] ?? []);
  if (fresh.length === 0) return `Nothing was added.${already}`;
  const room = area.lastRow - lastFilled;
  if (fresh.length > room)
    throw new NotThereError(
      `the log is read down to row ${area.lastRow} and has room for ${counted(room)} more, and the file has ${fresh.length} new. Insert rows before that row first.`,
    );
  write(log, lastFilled + 1, fresh);
  const rowsTold = fresh.length === 1 ? `row ${lastFilled + 1}` : `rows ${lastFilled + 1} to ${lastFilled + fresh.length}`;
  return `${counted(fresh.length)} added to the sheet "${name}", ${rowsTold}.${already}`;
}

/** The flights that the log does not have; those that it has in part are asked about first. */
function addNew(log: Log, read: ImportedLog, answers: FileAnswers): ImportSaid {
  const { headings } = log;
  const named = pilotsNamed(headings, log.flights);
  const asked = askOwner(read, named, answers);
  if (asked !== undefined) return asked;
  const imported = withOwner(read, named, answers.owner);
  if (headingsWithoutPlace(headings, imported, ['date', 'aircraft']).length > 0)
    throw new NotThereError('the log of the Currency log no longer has a column "date" and a column "aircraft".');
  const columns = ([...placesIn(headings).keys()] as Column[]).filter((column) => column in imported.found);
  const compared = compareFlights(headings, log.flights, imported.flights, columns);
  const { fresh, known, doubtful } = compared;
  if (doubtful.length > 0 && answers.alike === undefined) {
    const choices = [
      { label: 'Other flights: add them', answers: { ...answers, alike: 'add' as const } },
      { label: 'The same flights: leave them out', answers: { ...answers, alike: 'leave out' as const } },
    ];
    const said = `Nothing was added yet. ${counted(doubtful.length)} of the file may stand in the log already, on the same day in the same aircraft: ${doubtsIn(compared, log, imported)}.`;
    return { said, choices };
  }
  const leftOut = answers.alike === 'leave out' ? doubtful.length : 0;
  const already = [
    ...(known === 0 ? [] : [` ${counted(known)} of the file ${known === 1 ? 'stands' : 'stand'} in the log already.`]),
    ...(leftOut === 0 ? [] : [` ${counted(leftOut)} left out as you said.`]),
  ].join('');
  const taken = answers.alike === 'add' ? [...fresh, ...doubtful.map(({ index }) => index)] : fresh;
  return { said: [add(log, imported, taken, already), ...notTaken(imported, headings)].join(' '), choices: [] };
}

/** Answers that would let a file be read of which nothing can be taken so far. */
function choicesFor(text: string, { pilots }: ImportedLog, answers: FileAnswers): ImportSaid['choices'] {
  if (pilots.length > 0)
    return [
      ...pilots.map((named) => ({ label: named === '' ? 'Of nobody named' : `Of ${named}`, answers: { ...answers, pilot: { named } } })),
      { label: 'All are mine', answers: { ...answers, pilot: 'everyone' as const } },
    ];
  if (answers.order !== undefined || importLog(text, { ...answers, order: 'day first' }).flights.length === 0) return [];
  return [
    { label: 'Day first', answers: { ...answers, order: 'day first' } },
    { label: 'Month first', answers: { ...answers, order: 'month first' } },
  ];
}

/** What the headings say by themselves. */
function meaningsOf(headings: readonly string[]): Meaning[] {
  const places = [...placesIn(headings)];
  return headings.map((_, index) => places.find(([, at]) => at === index)?.[0] ?? '');
}

/** The columns as they are taken now, for a person to change. */
function columnsOf(text: string, { columns }: FileAnswers, label: string): Pick<ImportSaid, 'columns'> {
  const of = fileColumns(text);
  if (of === undefined) return {};
  const headings = plainHeadings(of.headings);
  return { columns: { label, of, now: columns ?? { headings, meanings: meaningsOf(of.headings) } } };
}

/** Landings could stand below a heading that nobody knows, so it is asked about before anything is added. */
function askStrange(text: string, { passedOver }: ImportedLog, answers: FileAnswers): ImportSaid | undefined {
  const unknown = answers.columns === undefined ? strange(passedOver) : [];
  if (unknown.length === 0) return undefined;
  const { columns } = columnsOf(text, answers, 'Say what they are');
  const [are, they] = unknown.length === 1 ? ['A column is', 'it holds'] : ['Columns are', 'they hold'];
  return {
    said: `Nothing was added yet. ${are} not understood: ${firstFew(unknown, maxListed)}. What ${they} would not be counted.`,
    choices: [{ label: unknown.length === 1 ? 'Leave it out' : 'Leave them out', answers: { ...answers, ...(columns && { columns: columns.now }) } }],
    ...(columns && { columns }),
  };
}

/** `answers.columns`: also what was said of an earlier file with these headings. */
export function importFlights(live: LiveWorkbook, text: string, answers: FileAnswers = {}): ImportSaid {
  const log = importLog(text, answers);
  const change = columnsOf(text, answers, answers.columns === undefined ? 'Say what the columns are' : 'Change what the columns are');
  if (log.flights.length === 0) {
    const why = log.problems.length === 0 ? 'the file has no flights' : firstFew(log.problems, maxListed, { separator: '; ' });
    return { said: [`Nothing was added: ${why}.`, ...waysToWrite(log.problems)].join(' '), choices: choicesFor(text, log, answers), ...change };
  }
  try {
    const asked = askStrange(text, log, answers);
    return asked ?? { ...addNew(logIn(live), log, answers), ...(answers.columns !== undefined && change) };
  } catch (thrown) {
    if (!(thrown instanceof NotThereError)) throw thrown;
    return { said: `Nothing was added: ${thrown.message}`, choices: [] };
  }
}
