// What an aircraft has and what it lacks, in the order in which it is put in: the row of the list, stations, tanks, envelope, tables.
import { worstVerdict, type Verdict } from '../../../core/basics/verdict';
import type { DateHost } from '../../../functions/registry/dateHost';
import { evaluate } from '../../../functions/registry/evaluate';
import { AIRCRAFT_ENTRIES } from '../../../functions/manual/aircraftEntries';
import type { CellValue, SheetSnapshot, WorkbookSnapshot } from '../snapshot';
import { listNow, rowsOf, sameAircraft, valueAt } from './aircraftLists';
import { wholeAircraft, type AircraftRows } from './wholeAircraft';

export interface AircraftPart {
  readonly title: string;
  readonly verdict: Verdict;
  readonly said: string;
}

const noDates = (): never => {
  throw new Error('nothing of an aircraft is a date');
};
const dates: DateHost = { toCivil: noDates, fromCivil: noDates, fromInstant: noDates };

/** Headings and own rows of a list, as the sheet hands them to a function. */
function rangeOf(
  sheet: SheetSnapshot,
  key: string,
  name: CellValue,
  withName: boolean,
): { readonly table: CellValue[][]; readonly rows: number[][] } {
  const list = listNow(sheet, key);
  const all = rowsOf({ ...list, first: list.head });
  const own = all.filter((row) => row.row === list.head || sameAircraft(valueAt(row, list, 'aircraft'), name));
  return {
    table: own.map(({ values }) => values.filter((_, at) => withName || at !== list.places.get('aircraft'))),
    rows: own.map(({ row }) => [row]),
  };
}

function ofTables(sheet: SheetSnapshot, name: CellValue): AircraftPart[] {
  const [takeoff, landing, climb] = (['takeoff', 'landing', 'climb'] as const).map((key) => rangeOf(sheet, key, name, false));
  const given = [
    rangeOf(sheet, 'aircraft', name, true).table,
    name,
    takeoff?.table,
    landing?.table,
    climb?.table,
    takeoff?.rows,
    landing?.rows,
    climb?.rows,
  ];
  const answer = evaluate(AIRCRAFT_ENTRIES, given, dates);
  const lines = Array.isArray(answer) ? (answer as CellValue[][]) : [];
  const empty = [undefined, takeoff, landing, climb].map((range) => range !== undefined && range.table.length < 2);
  return lines.map(([title, verdict, said], index) =>
    empty[index] === true
      ? { title: String(title), verdict: 'UNKNOWN', said: 'none yet' }
      : { title: String(title), verdict: verdict as Verdict, said: String(said) },
  );
}

const part = (title: string, missing: readonly string[], said: string): AircraftPart =>
  missing.length > 0 ? { title, verdict: 'UNKNOWN', said: missing.join('; ') } : { title, verdict: 'OK', said };

const isNumber = (value: CellValue | undefined): boolean => typeof value === 'number';
const counted = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;
const fewestCorners = 3;

function ofBalance({ stations = [], tanks = [], corners = [], tankArms = [] }: AircraftRows): AircraftPart[] {
  const lacking = (condition: boolean, words: string): string[] => (condition ? [words] : []);
  const categories = [...new Set(corners.map(({ category }) => String(category ?? '')))];
  const few = categories.filter((one) => corners.filter(({ category }) => String(category ?? '') === one).length < fewestCorners);
  const armless = tanks.filter(({ tank }) => !tankArms.some((row) => String(row['tank']).toLowerCase() === String(tank).toLowerCase()));
  return [
    part(
      'stations',
      [
        ...lacking(stations.length === 0, 'none yet'),
        ...lacking(
          stations.length > 0 && !stations.some(({ station, weight }) => /\bempty\b/i.test(String(station)) && isNumber(weight)),
          'no station "empty aircraft" with its weight',
        ),
        ...stations.filter(({ arm, moment }) => !isNumber(arm) && !isNumber(moment)).map(({ station }) => `"${String(station ?? '')}" has no arm`),
      ],
      counted(stations.length, 'station'),
    ),
    part(
      'tanks',
      [...lacking(tanks.length === 0, 'none yet'), ...armless.map(({ tank }) => `"${String(tank ?? '')}" has no arm among the arms of the fuel`)],
      counted(tanks.length, 'tank'),
    ),
    part(
      'envelope',
      [...lacking(corners.length === 0, 'none yet'), ...few.map((one) => `category "${one}" has fewer than ${fewestCorners} corners`)],
      `${counted(corners.length, 'corner')} in ${categories.join(', ')}`,
    ),
  ];
}

export function aircraftStanding(workbook: WorkbookSnapshot, tables: SheetSnapshot, name: CellValue): AircraftPart[] {
  const [list, ...measured] = ofTables(tables, name);
  const { lists } = wholeAircraft(workbook, tables, name);
  const corrections = lists['corrections']?.length ?? 0;
  return [
    ...(list === undefined ? [] : [list]),
    ...ofBalance(lists),
    ...measured,
    {
      title: 'corrections',
      verdict: 'OK',
      said: corrections === 0 ? 'none: wind, slope and surface change no distance' : counted(corrections, 'correction'),
    },
  ];
}

export const standingVerdict = (parts: readonly AircraftPart[]): Verdict => worstVerdict(parts.map(({ verdict }) => verdict));
