// Reader of the history of loads: a line that cannot be read spoils only the card that it names.
import { dayNumber } from '../../core/basics/civilDate';
import type { LoadLine } from '../../core/ledger/loads';
import { ArgumentError } from '../registry/argumentError';
import { isBlank, isRange, sizeInWords, type CellValue, type RangeValue } from '../registry/cellValues';
import type { DateHost } from '../registry/dateHost';
import type { Parameter } from '../registry/declaration';
import { civilDateFromCell } from '../registry/readDate';
import { namedFromCell, plainWords } from '../registry/readText';
import { verification } from './readCards';

const rowsOf = 'rows of aircraft, box or card, database, data effective, loaded on, verified on, by, failed, remark';
const columns = 8;
const head = 'aircraft';

/** Any word but no says that the load did not end well. */
const hasFailed = (cell: CellValue): boolean =>
  !isBlank(cell) && cell !== false && !(typeof cell === 'string' && ['no', 'false'].includes(plainWords(cell)));

const saysNothing = (cell: CellValue): boolean => isBlank(cell) || !hasFailed(cell);

function loadLine(cells: readonly CellValue[], row: number, dates: DateHost): LoadLine {
  const [aircraft, unit, database, effective, loaded, verified, , failed] = cells;
  const dayOf = (cell: CellValue): number | undefined => {
    const day = civilDateFromCell(cell, dates);
    return day === undefined ? undefined : dayNumber(day);
  };
  return {
    row,
    aircraft: namedFromCell(aircraft),
    unit: namedFromCell(unit),
    database: namedFromCell(database),
    effectiveDay: dayOf(effective),
    loadedOnDay: dayOf(loaded) ?? (isBlank(loaded) ? 'missing' : 'unreadable'),
    verified: verification(verified, dates),
    failed: hasFailed(failed),
  };
}

/** A line with nothing but the names of its card is no load yet. A first row of heads is passed over; columns beyond the eighth are not read. */
export function loadRows(help: string): Parameter<readonly LoadLine[]> & { readonly shape: 'table' } {
  const read = (raw: CellValue, dates: DateHost): readonly LoadLine[] => {
    const given: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const first = given[0]?.[0];
    const range = typeof first === 'string' && plainWords(first) === head ? given.slice(1) : given;
    const used = range.map((row, index) => ({ row, place: index + 1 })).filter(({ row }) => !row.slice(3, columns).every(saysNothing));
    const width = given[0]?.length ?? 0;
    if (used.length > 0 && width < columns) throw new ArgumentError(rowsOf, `a range of ${sizeInWords(given.length, width)}`);
    return used.map(({ row, place }) => loadLine(row, place, dates));
  };
  return { shape: 'table', unit: 'rows', mustBe: rowsOf, help, optional: undefined, read };
}
