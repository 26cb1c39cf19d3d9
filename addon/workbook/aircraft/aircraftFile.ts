// One aircraft as a file: open JSON of our own, which another workbook takes in after every value was shown. What is not understood refuses the
// whole file with a sentence; nothing is left out unseen.
import type { CellValue } from '../snapshot';
import { aircraftLists, type WholeAircraft } from './wholeAircraft';

export const aircraftFormat = 'rampwright aircraft';
/** Raised when a version begins to keep what an older one would not understand. */
export const aircraftFileVersion = 1;

type Cell = string | number;

/** Rows as lists under their columns, so that the file can be read by eye. */
export function aircraftFile({ name, lists }: WholeAircraft): string {
  const written = aircraftLists.map(({ key }) => {
    const rows = lists[key] ?? [];
    const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
    return [key, { columns, rows: rows.map((row) => columns.map((column) => row[column] ?? null)) }] as const;
  });
  const lines = written.map(([key, { columns, rows }]) => {
    const inRows = rows.map((row) => `        ${JSON.stringify(row)}`).join(',\n');
    return `    ${JSON.stringify(key)}: {\n      "columns": ${JSON.stringify(columns)},\n      "rows": [${rows.length === 0 ? '' : `\n${inRows}\n      `}]\n    }`;
  });
  return `{\n  "format": ${JSON.stringify(aircraftFormat)},\n  "version": ${aircraftFileVersion},\n  "aircraft": ${JSON.stringify(name)},\n  "lists": {\n${lines.join(',\n')}\n  }\n}\n`;
}

const refuse = (why: string): never => {
  throw new Error(`This is no file of an aircraft that can be taken in: ${why}. Nothing was changed.`);
};

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === 'object' && value !== null && !Array.isArray(value);
const quoted = (value: unknown): string => JSON.stringify(value)?.slice(0, 60) ?? 'nothing';

const longestText = 300;
/** No list is that long by hand, nor by a table that is put in. */
const mostRows = 3000;
/** A spreadsheet would make a formula, a number or a date of these. */
const readOtherwise = /^\s*[=+\-@']|^[\d.,:/\s-]+$/;

function cellOf(value: unknown, place: string): Cell | undefined {
  if (value === null) return undefined;
  if (typeof value === 'number' && Number.isFinite(value)) return value;
  if (typeof value !== 'string') return refuse(`${place} must be a number, a text or null; got ${quoted(value)}`);
  if (value.length > longestText || /[\u0000-\u001f\u007f]/.test(value))
    return refuse(`${place} is a text that is too long or holds signs that cannot be shown`);
  if (readOtherwise.test(value))
    return refuse(`${place} is the text ${quoted(value)}, which a spreadsheet would read as a formula, a number or a date`);
  return value.trim() === '' ? undefined : value;
}

function rowsIn(key: string, list: unknown, known: ReadonlyMap<string, string>): Readonly<Record<string, CellValue>>[] {
  if (!isRecord(list)) return refuse(`"${key}" must hold columns and rows; got ${quoted(list)}`);
  const { columns, rows } = list;
  if (!Array.isArray(columns) || !Array.isArray(rows)) return refuse(`"${key}" must hold a list of columns and a list of rows`);
  const strange: unknown = (columns as unknown[]).find((column) => typeof column !== 'string' || !known.has(column));
  if (strange !== undefined) return refuse(`"${key}" has a column ${quoted(strange)}, which this version does not know`);
  if (new Set(columns).size < columns.length) return refuse(`"${key}" has a column twice`);
  if (rows.length > mostRows) return refuse(`"${key}" has ${rows.length} rows, more than ${mostRows}`);
  return (rows as unknown[]).map((row, index) => {
    if (!Array.isArray(row) || row.length !== columns.length) return refuse(`row ${index + 1} of "${key}" must have ${columns.length} values`);
    return Object.fromEntries(
      (columns as string[]).flatMap((column, at) => {
        const cell = cellOf(row[at] as unknown, `${column} in row ${index + 1} of "${key}"`);
        return cell === undefined ? [] : [[column, cell] as const];
      }),
    );
  });
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    return refuse('it is not whole, or no JSON');
  }
}

/** `known`: the columns of each list in the workbook that takes it in. */
export function aircraftInFile(text: string, known: ReadonlyMap<string, ReadonlyMap<string, string>>): WholeAircraft {
  const file = parsed(text);
  if (!isRecord(file) || file['format'] !== aircraftFormat) return refuse(`its "format" must be "${aircraftFormat}"`);
  const { version, aircraft, lists } = file;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) return refuse('its "version" is missing');
  if (version > aircraftFileVersion)
    return refuse(`it is of version ${version}, and this one knows versions up to ${aircraftFileVersion}; bring Rampwright up to date`);
  const name = cellOf(aircraft, 'the name of the aircraft');
  if (name === undefined) return refuse('the name of the aircraft is missing');
  if (!isRecord(lists)) return refuse('its "lists" are missing');
  const strange = Object.keys(lists).find((key) => !known.has(key));
  if (strange !== undefined) return refuse(`it has a list ${quoted(strange)}, which this version does not know`);
  const read = Object.fromEntries([...known].map(([key, columns]) => [key, lists[key] === undefined ? [] : rowsIn(key, lists[key], columns)]));
  if (read['aircraft']?.length !== 1) return refuse('its "aircraft" must have one row, with units and limits');
  return { name, lists: read };
}
