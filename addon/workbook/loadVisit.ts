// A visit to load cards: what the Load list asks for, and the lines of the history for the cards that were ticked. Pure: nothing is written here.
import { dayNumber, isCivilDate, serialDayZero } from '../../core/basics/civilDate';
import type { SheetTemplate } from '../../sheets-templates/template';
import type { Area } from './areas';
import { isoFromSerial } from './serialDates';
import type { CellValue, SheetSnapshot, WorkbookSnapshot } from './snapshot';
import { cellsOf, companion, eachRow, sheetInSight, valueAt, type EntryWritten } from './tripEntries';

/** A row of the Load list that asks for a load. */
export interface CardToLoad {
  readonly when: string;
  readonly aircraft: string;
  readonly who: string;
  readonly box: string;
  readonly database: string;
  readonly cycle: string;
  /** Effective date of the data, as a serial day. */
  readonly effective: number;
}

export interface VisitCards {
  readonly cards: readonly CardToLoad[];
  /** The day on which the ledger is judged, in ISO form. */
  readonly day: string;
}

/** What was done, as typed; `cards` are places in the list of cards. */
export interface Visit {
  readonly cards: readonly { readonly at: number; readonly failed: boolean }[];
  readonly day: string;
  readonly by: string;
  /** Somebody looked at each unit after loading it, on that day. */
  readonly seen: boolean;
  readonly remark: string;
}

export interface VisitLines {
  readonly sheet: string;
  readonly firstRow: number;
  readonly entries: readonly EntryWritten[];
  /** For the user: each line in words. */
  readonly shown: readonly string[];
}

const dateFormat = 'yyyy-mm-dd';
const isoOfSerial = (serial: number): string => isoFromSerial(Math.floor(serial));

const loadListOf = (workbook: WorkbookSnapshot, templates: readonly SheetTemplate[]): SheetSnapshot =>
  sheetInSight(workbook, templates, 'due', {
    missing: 'There is no Load list in this workbook. Insert it first, or bring the sheets up to date.',
    several: 'Load lists',
  });

function ledgerOf(workbook: WorkbookSnapshot, list: SheetSnapshot): SheetSnapshot {
  const ledger = companion(workbook, list, 'ledger');
  if (ledger === undefined) throw new Error(`The Data ledger of "${list.name}" was not found.`);
  return ledger;
}

function dayOfLedger(workbook: WorkbookSnapshot, list: SheetSnapshot): number {
  const start = companion(workbook, list, 'start');
  const [cell] = start === undefined ? [] : cellsOf(start, ['asOf']);
  const day = start === undefined || cell === undefined ? '' : valueAt(start, cell);
  if (typeof day !== 'number') throw new Error('The day as_of on Start is no date.');
  return Math.floor(day);
}

/** The rows of the list below its call that ask for a load. */
export function cardsToLoad(workbook: WorkbookSnapshot, templates: readonly SheetTemplate[]): VisitCards {
  const list = loadListOf(workbook, templates);
  const call = list.formulas.find(({ text }) => /^=LEDGER_DUE\(/i.test(text));
  if (call === undefined) throw new Error(`"${list.name}" no longer has its formula with LEDGER_DUE.`);
  const cell = (row: readonly CellValue[], across: number): CellValue => row[call.column - 1 + across] ?? '';
  const word = (row: readonly CellValue[], across: number): string => String(cell(row, across)).trim();
  const cards = list.values.slice(call.row).flatMap((row): CardToLoad[] => {
    const effective = cell(row, 7);
    if (word(row, 5) !== 'load' || typeof effective !== 'number') return [];
    const [when = '', aircraft = '', who = '', box = '', database = ''] = [0, 1, 2, 3, 4].map((across) => word(row, across));
    return [{ ...{ when, aircraft, who, box, database, effective }, cycle: word(row, 6) }];
  });
  return { cards, day: isoOfSerial(dayOfLedger(workbook, list)) };
}

/** The day typed, as a serial; not one that is still to come for the ledger. */
function dayOfVisit(text: string, ledgerDay: number): number {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text.trim());
  const date = { year: Number(parts?.[1]), month: Number(parts?.[2]), day: Number(parts?.[3]) };
  if (parts === null || !isCivilDate(date)) throw new Error('The day of the visit must be a date such as 2026-11-26.');
  const serial = dayNumber(date) - serialDayZero;
  if (serial > ledgerDay)
    throw new Error(
      `The day of the visit lies after ${isoOfSerial(ledgerDay)}, on which the ledger is judged: a load on a day still to come is refused.`,
    );
  return serial;
}

const columns = ['aircraft', 'card', 'database', 'effective', 'loadedOn', 'verified', 'loadedBy', 'failed', 'remark'] as const;
type LoadKey = (typeof columns)[number];

function placesOf(ledger: SheetSnapshot): ReadonlyMap<LoadKey, Area> {
  const places = new Map(columns.flatMap((key) => cellsOf(ledger, [`loads.${key}`]).map((area) => [key, area] as const)));
  if (places.size < columns.length) throw new Error(`A column of the history on "${ledger.name}" was taken out, so no line can be written there.`);
  return places;
}

/** The first of so many free rows below the last line; the heads are a filled row of the range. */
function freeRow(ledger: SheetSnapshot, places: ReadonlyMap<LoadKey, Area>, lines: number): number {
  const areas = [...places.values()];
  const rows = areas[0] === undefined ? [] : eachRow(areas[0]).map(({ row }) => row);
  const filled = rows.filter((row) => areas.some((area) => valueAt(ledger, { ...area, row }) !== ''));
  const row = (filled[filled.length - 1] ?? 0) + 1;
  if (!rows.includes(row) || !rows.includes(row + lines - 1))
    throw new Error(`There is no room for ${lines} lines below the last load on "${ledger.name}". Insert rows above its last row, then ask again.`);
  return row;
}

/** The lines that a visit adds to the history: one for each card ticked. */
export function visitLines(workbook: WorkbookSnapshot, templates: readonly SheetTemplate[], visit: Visit): VisitLines {
  const { cards } = cardsToLoad(workbook, templates);
  const list = loadListOf(workbook, templates);
  const ledger = ledgerOf(workbook, list);
  const ticked = visit.cards.flatMap(({ at, failed }) => cards.slice(at, at + 1).map((card) => ({ card, failed })));
  if (ticked.length === 0) throw new Error('No card is ticked.');
  if (visit.by.trim() === '') throw new Error('Say who loaded the cards.');
  const day = dayOfVisit(visit.day, dayOfLedger(workbook, list));
  const places = placesOf(ledger);
  const firstRow = freeRow(ledger, places, ticked.length);
  const entries = ticked.flatMap(({ card, failed }, index): EntryWritten[] => {
    const values: Readonly<Record<LoadKey, string | number>> = {
      ...{ aircraft: card.aircraft, card: card.box, database: card.database, effective: card.effective, loadedOn: day },
      ...{ verified: visit.seen && !failed ? day : '', loadedBy: visit.by.trim(), failed: failed ? 'yes' : '', remark: visit.remark.trim() },
    };
    return columns
      .filter((key) => values[key] !== '')
      .map((key) => ({
        ...{ sheet: ledger.name, row: firstRow + index, column: places.get(key)?.column ?? 0, content: values[key] },
        ...(typeof values[key] === 'number' && { numberFormat: dateFormat }),
      }));
  });
  const seen = visit.seen ? `seen on the unit ${visit.day.trim()}` : 'not verified';
  const shown = ticked.map(
    ({ card, failed }) =>
      `${card.aircraft}, ${card.box}, ${card.database}: ${card.cycle === '' ? '' : `cycle ${card.cycle}, `}effective ${isoOfSerial(card.effective)}, ${failed ? 'the load failed' : seen}`,
  );
  return { sheet: ledger.name, firstRow, entries, shown };
}
