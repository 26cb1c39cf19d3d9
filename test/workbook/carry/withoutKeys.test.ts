// Workbooks of versions 1 and 2, whose sheets have no keys, come over once: each entry arrives under its key of today, wherever
// that stands by now and whatever the words beside it, or the update is refused.
import { describe, expect, it } from 'vitest';
import { migrateEntries, type MigratedEntries } from '../../../addon/workbook/migrateEntries';
import { listsOf, singlesOf } from '../../../addon/workbook/carry/oldEntries';
import { formerKeys, retired } from '../../../addon/workbook/formerKeys';
import { keysOf } from '../../../addon/workbook/keys';
import { unpackTemplates, type PackedTemplates } from '../../../addon/workbook/packedTemplates';
import type { CellValue, WorkbookSnapshot } from '../../../addon/workbook/snapshot';
import words from '../../../addon/workbook/withoutKeys/version2.json';
import { sheetTemplates } from '../../../sheets-templates';
import { address } from '../../../sheets-templates/build';
import { isEntry } from '../../../sheets-templates/template';
import { edited, typedOver } from '../../support/editedWorkbook';
import { call } from '../../support/call';
import { carried, uniqueBook } from '../../support/uniqueBook';
import packed from '../../support/version2.json';

/** The sheets as they were, cell by cell. */
const version2 = unpackTemplates(packed as unknown as PackedTemplates);
const { book, filled } = uniqueBook(version2);

/** What was typed into each entry of version 2, by its key then; a list's cells as "sheet.list.column.3". */
const typedThen = new Map<string, CellValue>();
const cellThen = new Map<string, string>();
for (const { key: sheet, singles, lists } of words) {
  const take = (key: string, cell: string): void => {
    const content = filled.get(`${sheet} ${cell}`);
    if (content === undefined) return;
    typedThen.set(`${sheet}.${key}`, content);
    cellThen.set(`${sheet}.${key}`, cell);
  };
  for (const { key, cell } of singles) take(key, cell);
  const entries = new Set((version2.find(({ key }) => key === sheet)?.cells ?? []).filter(isEntry).map(({ row, column }) => address(row, column)));
  for (const { key, first, columns } of lists)
    for (const { key: name, column } of columns)
      for (let row = first; entries.has(address(row, columns[0]?.column ?? 1)); row += 1)
        take(`${key}.${name}.${row - first + 1}`, address(row, column));
}

/** What arrived, by the keys of today. */
function arrived(result: MigratedEntries): Map<string, CellValue> {
  const all = carried(result);
  const found = new Map<string, CellValue>();
  for (const template of sheetTemplates) {
    const keys = keysOf(template);
    if (keys === undefined) throw new Error('no keys');
    const take = (key: string, row: number, column: number): void => {
      const content = all.get(`${template.key} ${address(row, column)}`);
      if (content !== undefined) found.set(`${template.key}.${key}`, content);
    };
    for (const [key, { row, column }] of singlesOf(keys)) take(key, row, column);
    for (const [list, { first, last, columns }] of listsOf(keys))
      for (const [name, column] of columns) for (let row = first; row <= last; row += 1) take(`${list}.${name}.${row - first + 1}`, row, column);
  }
  return found;
}

const retiredKeys = retired.flatMap(({ keys }) => keys);
const isRetired = (key: string): boolean => retiredKeys.includes(key) || retiredKeys.includes(key.replace(/\.\d+$/, ''));
const known = new Set(arrivalKeys());
/** Under its own key where there is such an entry today, and under every key that comes from it. */
const keysToday = (key: string): string[] => [
  ...(known.has(key.replace(/\.\d+$/, '')) ? [key] : []),
  ...Object.entries(formerKeys).flatMap(([today, before]) => (before === key ? [today] : [])),
];
const expected = new Map([...typedThen].flatMap(([key, content]) => keysToday(key).map((today) => [today, content] as const)));

function arrivalKeys(): string[] {
  return sheetTemplates.flatMap((template) => {
    const keys = keysOf(template);
    if (keys === undefined) throw new Error('no keys');
    return [...keys.ranges.keys()].map((key) => `${template.key}.${key}`);
  });
}

const sorted = (all: ReadonlyMap<string, CellValue>): [string, CellValue][] => [...all].sort(([one], [other]) => (one < other ? -1 : 1));

describe('a workbook of version 2', () => {
  it('has every entry under a key', () => expect(typedThen.size).toBe(filled.size));

  it('comes over whole', () => {
    const result = migrateEntries(book, 'one', sheetTemplates);
    expect(result.refusals).toEqual([]);
    expect(sorted(arrived(result))).toEqual(sorted(expected));
  });

  it('has no entry that is neither carried nor named in the notes, with its content', () => {
    const { notes } = migrateEntries(book, 'one', sheetTemplates);
    const told = new Set(notes.join(' ').match(/\b[A-Z]+\d+ \d+(?=[,.])/g) ?? []);
    const wanted = [...typedThen].flatMap(([key, content]) => (isRetired(key) ? [`${cellThen.get(key) ?? ''} ${String(content)}`] : []));
    expect([...told].sort()).toEqual(wanted.sort());
    expect(wanted.length).toBeGreaterThan(10);
    for (const [key] of typedThen) expect([key, isRetired(key) || keysToday(key).length > 0]).toEqual([key, true]);
    expect(notes).toHaveLength(retired.length);
    for (const { told: sentence } of retired) expect(notes.some((note) => note.startsWith(`${sentence}. These entries of "`))).toBe(true);
  });

  it('gives its two fields a row each on Fields, and a runway each whose name and unit are still asked for', () => {
    const all = arrived(migrateEntries(book, 'one', sheetTemplates));
    for (const [row, end, available, other] of [
      [1, 'departure', 'takeoffAvailable', 'landingAvailable'],
      [2, 'destination', 'landingAvailable', 'takeoffAvailable'],
    ] as const) {
      for (const name of ['field', 'latitude', 'longitude', 'elevation'])
        expect([name, all.get(`fields.fields.${name}.${row}`)]).toEqual([name, typedThen.get(`trip.${name}.${end}`)]);
      expect(all.get(`fields.runways.field.${row}`)).toBe(typedThen.get(`trip.field.${end}`));
      expect(all.get(`fields.runways.direction.${row}`)).toBe(typedThen.get(`trip.runway.${end}`));
      expect(all.get(`fields.runways.${available}.${row}`)).toBe(typedThen.get(`trip.available.${end}`));
      for (const name of [other, 'runway', 'lengthIn', 'surface', 'slope'])
        expect([name, all.has(`fields.runways.${name}.${row}`)]).toEqual([name, false]);
    }
    expect(all.get('start.takeoffFactor')).toBe(typedThen.get('trip.factor.departure'));
    expect(all.get('start.landingFactor')).toBe(typedThen.get('trip.factor.destination'));
  });

  it('leaves out, and tells, what the formulas of its entries had read from an old report', () => {
    const trip = version2.find(({ key }) => key === 'trip');
    const own = trip?.cells.filter((cell) => isEntry(cell) && cell.formula !== undefined) ?? [];
    expect(own).toHaveLength(8);
    const result = migrateEntries(
      typedOver(
        book,
        trip?.name ?? '',
        own.map(({ row, column, formula = '' }) => ({ row, column, content: formula })),
      ),
      'one',
      sheetTemplates,
    );
    expect(result.refusals).toEqual([]);
    const all = arrived(result);
    for (const name of ['altimeter', 'temperature', 'windFrom', 'wind'])
      for (const end of ['departure', 'destination']) expect([name, end, all.has(`trip.${name}.${end}`)]).toEqual([name, end, false]);
    for (const { row, column } of own) expect(result.notes.join(' ')).toContain(`${address(row, column)} of "Trip sheet" held the formula =IF(`);
    expect(result.notes.filter((note) => note.includes("today's sheet reads the report itself"))).toHaveLength(8);
  });

  it('keeps the fields that its set has already, and tells those of the trip', () => {
    const fields = sheetTemplates.filter(({ key }) => key === 'fields');
    const withFields = uniqueBook(fields).book.sheets.map((sheet) => ({ ...sheet, mark: sheet.mark && { ...sheet.mark, version: 2 } }));
    const result = migrateEntries({ ...book, sheets: [...book.sheets, ...withFields] } as WorkbookSnapshot, 'one', sheetTemplates);
    expect(result.refusals).toEqual([]);
    expect(result.notes.join(' ')).toMatch(
      /Today's sheets hold other entries in the place of this\. These entries of "Trip sheet" stay in the older sheet: .*B12 \d+/,
    );
    expect(arrived(result).get('fields.fields.latitude.1')).not.toBe(typedThen.get('trip.latitude.departure'));
  });

  it('keeps the word in the place of the day on which a card was verified, which is CHECK there', () => {
    const ledger = words.find(({ key }) => key === 'ledger');
    const column = ledger?.lists.find(({ key }) => key === 'cards')?.columns.find(({ key }) => key === 'verified')?.column ?? 0;
    const first = ledger?.lists.find(({ key }) => key === 'cards')?.first ?? 0;
    const said = typedOver(book, version2.find(({ key }) => key === 'ledger')?.name ?? '', [{ row: first, column, content: 'yes' }]);
    const brought = arrived(migrateEntries(said, 'one', sheetTemplates));
    expect(brought.get('ledger.loads.verified.1')).toBe('yes');
    for (const name of ['aircraft', 'card', 'database', 'effective', 'loadedOn', 'loadedBy'])
      expect(brought.get(`ledger.loads.${name}.1`)).toEqual(typedThen.get(`ledger.cards.${name}.1`));
    const [status] = call(
      'LEDGER_STATUS',
      'Quillon Four',
      'navigation',
      '28-day',
      '2026-10-29',
      'yes',
      '2026-11-11',
      [],
      5,
      '0000Z',
      '2026-10-28',
    ) as unknown[][];
    expect([status?.[0], status?.[3]]).toEqual(['CHECK', expect.stringContaining('verified')]);
  });

  it('comes over whole with rows and columns put in, or is refused', () => {
    let whole = 0;
    for (const { name, rows } of version2) {
      for (const [lines, at] of [
        ['row', 3],
        ['row', Math.min(rows, 30)],
        ['row', Math.min(rows, 60)],
        ['column', 2],
      ] as const) {
        const result = migrateEntries(edited(book, { sheet: name, lines, at, inserted: 1 }), 'one', sheetTemplates);
        if (result.refusals.length > 0) continue;
        whole += 1;
        expect([name, lines, at, [...arrived(result).values()].sort()]).toEqual([name, lines, at, [...expected.values()].sort()]);
      }
    }
    expect(whole).toBeGreaterThan(20);
  });

  it('is refused where the label of an entry was changed, since nothing else tells what it is', () => {
    const card = version2.find(({ key }) => key === 'card');
    const renamed = typedOver(book, card?.name ?? '', [{ row: 7, column: 1, content: 'level now' }]);
    expect(migrateEntries(renamed, 'one', sheetTemplates).refusals.join()).toContain(`B7 ${String(filled.get('card B7'))}`);
  });

  it('of version 1 comes over by the same words', () => {
    const first: WorkbookSnapshot = {
      ...book,
      sheets: book.sheets.map((sheet) => (sheet.mark === undefined ? sheet : { ...sheet, mark: { ...sheet.mark, version: 1 } })),
    };
    expect(sorted(arrived(migrateEntries(first, 'one', sheetTemplates)))).toEqual(sorted(expected));
  });
});
