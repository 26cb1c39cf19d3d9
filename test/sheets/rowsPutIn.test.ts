// Rows put into a list as a user puts them in, at its top, in its middle and below its last row, and an entry typed there:
// it must count, or the verdict must say that it does not. One workbook for all: every row is put in at once, since rows that move have
// everything calculated, and each entry is taken back together with typing the next.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { sheetTemplates } from '../../sheets-templates';
import { columnLetter } from '../../sheets-templates/build';
import { cornerRows, stationRows, tankRows } from '../../sheets-templates/balance/rows';
import { crossings, schedule, winds } from '../../sheets-templates/card/descentLists';
import { placesFor as currencyPlaces, usualRoom as currencyRoom } from '../../sheets-templates/currency/places';
import { placesFor as ledgerPlaces, defaultRoom as ledgerRoom } from '../../sheets-templates/ledger/places';
import { fieldList, runwayList } from '../../sheets-templates/fields/sheet';
import { manualTablesSheet } from '../../sheets-templates/manual/sheet';
import { balanceCells, sheetNames } from '../../sheets-templates/places';
import type { TemplateValue } from '../../sheets-templates/template';

type Entries = Readonly<Record<string, TemplateValue>>;
type End = 'top' | 'middle' | 'end';

interface List {
  readonly what: string;
  readonly sheet: string;
  readonly first: number;
  readonly last: number;
  /** An entry that must be seen: far too heavy, out of date, in the way. */
  readonly entry: Entries;
  /** The item of the trip that is no longer OK where the row counts. */
  readonly item: string;
  /** Another item where the row stands inside the list. */
  readonly inside?: string;
  /** What is said where a row put in at that end cannot be read. */
  readonly unread?: Partial<Record<End, RegExp>>;
}

const moveDown = /right below the heads of its list, where it is not read: move it down/;
const beside = /stands in a row beside its list, where it is not read/;
const { cards } = ledgerPlaces(ledgerRoom);
const { papers, items, flights } = currencyPlaces(currencyRoom);
const corrections = manualTablesSheet.keys.lists['corrections'] ?? { first: 0, last: 0, columns: {} };
const old = { date: '2020-01-01' };

const lists: readonly List[] = [
  {
    what: 'a station',
    sheet: sheetNames.balance,
    ...stationRows,
    entry: { A: 'Quillon Four', B: 'anvil', C: 900, D: 142 },
    item: 'Loading, take-off',
  },
  {
    what: 'a tank',
    sheet: sheetNames.balance,
    ...tankRows,
    entry: { A: 'Quillon Four', B: 'tip', C: 40, D: 2 },
    item: 'Fuel',
    unread: { end: /missing fuel on board/ },
  },
  {
    what: 'a corner',
    sheet: sheetNames.balance,
    ...cornerRows,
    entry: { A: 'Quillon Four', B: 'normal', D: 1700 },
    item: 'Loading, take-off',
  },
  {
    what: 'a restriction',
    sheet: sheetNames.card,
    ...crossings,
    entry: { A: 'Zed', B: 5, D: 3000, E: 'at' },
    item: 'Descent',
    unread: { top: moveDown },
  },
  {
    what: 'a row of the schedule',
    sheet: sheetNames.card,
    ...schedule,
    entry: { E: 10000, F: 60, G: 100 },
    item: 'Descent',
    unread: { top: moveDown },
  },
  { what: 'a wind', sheet: sheetNames.card, ...winds, entry: { E: 8000, F: 90, G: 290 }, item: 'Descent', unread: { top: moveDown } },
  {
    what: 'a card',
    sheet: sheetNames.ledger,
    ...cards,
    entry: { A: 'Quillon Four', B: 'old', C: 'navigation', D: '28-day', E: '0000Z', F: 'Ada' },
    item: 'Navigation data',
    unread: { end: beside },
  },
  {
    what: 'a paper',
    sheet: sheetNames.currency,
    ...papers,
    entry: { A: 'winch checkout', B: old, C: 12 },
    item: 'Pilot',
    unread: { top: beside, end: beside },
  },
  {
    what: 'an item of the aircraft',
    sheet: sheetNames.currency,
    ...items,
    entry: { A: 'propeller', B: 'Quillon Four', E: old, F: 12 },
    item: 'Aircraft',
    unread: { end: beside },
  },
  {
    what: 'a field',
    sheet: sheetNames.fields,
    ...fieldList,
    entry: { A: 'Marrowfield', B: 'ZZXA', C: 60, D: 10, E: 900 },
    item: 'Fields',
    unread: { top: beside, end: beside },
  },
  {
    what: 'a runway',
    sheet: sheetNames.fields,
    ...runwayList,
    entry: { A: 'Marrowfield', B: '21', D: 500, E: 500, F: 'ft', G: 'grass, wet', H: 2 },
    item: 'Fields',
    inside: 'Entries',
    unread: { top: beside, end: beside },
  },
];

/** An entry in a row put in above this row of the sheet as it comes. */
interface Place extends Pick<List, 'what' | 'sheet' | 'entry'> {
  readonly end: End;
  readonly row: number;
}

const ends = ({ first, last, ...list }: List): (List & Place)[] => [
  { ...list, first, last, end: 'top', row: first },
  { ...list, first, last, end: 'middle', row: first + 2 },
  { ...list, first, last, end: 'end', row: last + 1 },
];
const places = lists.flatMap(ends);
const letters = Object.values(corrections.columns).map(columnLetter);
const mud = Object.fromEntries(letters.map((letter, index) => [letter, ['Quillon Four', 'take-off', 'mud', 300, 1, 1][index] ?? '']));
const flown = { A: 'Quillon Four', B: { date: '2026-11-22' }, C: 2, D: 2 };
const twoOf = (what: string, sheet: string, { first }: { readonly first: number }, entry: Entries): Place[] => [
  { what, sheet, entry, end: 'top', row: first },
  { what, sheet, entry, end: 'middle', row: first + 2 },
];
const correctionPlaces = twoOf('a correction of the take-off', sheetNames.tables, corrections, mud);
const flightPlaces = twoOf('a flight', sheetNames.currency, flights, flown);

const putIn: readonly Place[] = [...places, ...correctionPlaces, ...flightPlaces];
/** From the last row up, so that none moves one that is still to come. */
const upwards = [...putIn].sort((one, other) => other.row - one.row);
/** Where the row stands with every other one put in too. */
const rowNow = ({ sheet, row }: Place): number => row + putIn.filter((one) => one.sheet === sheet && one.row < row).length;
const inRow = (row: number, entry: Entries): Entries =>
  Object.fromEntries(Object.entries(entry).map(([column, value]) => [`${column}${row}`, value]));

let workbook: HeadlessWorkbook;
beforeAll(async () => {
  workbook = await openHeadless(sheetTemplates);
}, 300_000);
afterAll(() => workbook.dispose());
const overall = (): unknown[] => [workbook.named('trip_verdict')[0]?.[0], workbook.value(sheetNames.trip, 'G3')];
const allOk = ['OK', 'Every item below is OK.'];
const told = (item: string): unknown[] => workbook.named('trip_reasons').find(([name]) => name === item) ?? [];

it('a station put in adds its own to the sums', async () => {
  const weight = (): number => Number(workbook.value(sheetNames.balance, balanceCells.takeoffWeight));
  const before = weight();
  await workbook.insertRows(sheetNames.balance, stationRows.first, 1);
  await workbook.set(sheetNames.balance, inRow(stationRows.first, { A: 'Quillon Four', B: 'bag', C: 7, D: 100 }));
  const below = balanceCells.takeoffWeight.replace(/\d+/, (row) => String(Number(row) + 1));
  expect(workbook.value(sheetNames.balance, below)).toBe(before + 7);
  await workbook.removeRows(sheetNames.balance, stationRows.first, 1);
  expect(weight()).toBe(before);
});

describe('a row put into a list', () => {
  let typed: { readonly sheet: string; readonly cells: Entries } | undefined;
  /** Takes the last entry back and types this one. */
  async function type(place?: Place): Promise<void> {
    const sheets: Record<string, Entries> = {};
    if (typed !== undefined) sheets[typed.sheet] = Object.fromEntries(Object.keys(typed.cells).map((cell) => [cell, '']));
    typed = place === undefined ? undefined : { sheet: place.sheet, cells: inRow(rowNow(place), place.entry) };
    if (typed !== undefined) sheets[typed.sheet] = { ...sheets[typed.sheet], ...typed.cells };
    if (Object.keys(sheets).length > 0) await workbook.setSheets(sheets);
  }

  it('leaves everything OK while it is empty', async () => {
    await Promise.all(upwards.map(({ sheet, row }) => workbook.insertRows(sheet, row, 1)));
    expect(overall()).toEqual(allOk);
  });

  it.each(places)('$what, $end', async (place) => {
    const { item, inside = item, end, unread } = place;
    await type(place);
    const [, verdict, reason] = told(end === 'middle' ? inside : item);
    expect(['NO', 'UNKNOWN']).toContain(overall()[0]);
    expect(['NO', 'UNKNOWN']).toContain(verdict);
    const said = unread?.[end];
    if (said !== undefined) expect([verdict, reason]).toEqual(['UNKNOWN', expect.stringMatching(said)]);
  });

  it.each(correctionPlaces)('$what, $end', async (place) => {
    await type(place);
    expect(told('Take-off runway')[1]).toBe('NO');
  });

  const landings = (): number => Number(workbook.values(sheetNames.currency, 'A1:B90').find(([item]) => item === 'passengers, SEL')?.[1]);
  it.each(flightPlaces)('$what, $end, counts', async (place) => {
    await type();
    expect(overall()).toEqual(allOk);
    const before = landings();
    await type(place);
    expect(landings()).toBe(before + 2);
  });

  it('leaves nothing behind when it is emptied and taken out', async () => {
    await type();
    expect(overall()).toEqual(allOk);
    await Promise.all(upwards.map((place) => workbook.removeRows(place.sheet, rowNow(place), 1)));
    expect(overall()).toEqual(allOk);
  });
});
