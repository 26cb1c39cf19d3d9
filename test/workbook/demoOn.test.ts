// The demonstration on any day of ten years: its dates moved, and what our functions say of them as good as on the day it was written for.
// The whole trip is OK while the World Magnetic Model holds: the wind of a report cannot be turned to magnetic after it (2025 to 2029).
import { describe, expect, it } from 'vitest';
import { openHeadless } from '../../addon/local/engine/headless';
import { civilDateFromDayNumber, dayNumber, isoDate } from '../../core/basics/civilDate';
import { demoOn } from '../../addon/workbook/demoOn';
import { readArea } from '../../addon/workbook/areas';
import { sheetTemplates } from '../../sheets-templates';
import { demoDay } from '../../sheets-templates/demo/day';
import { dataLedgerSheet } from '../../sheets-templates/ledger/sheet';
import type { SheetKey, SheetTemplate } from '../../sheets-templates/template';
import { tripRows } from '../../sheets-templates/trip/rows';
import { call } from '../support/call';

const iso = (day: number): string => isoDate(civilDateFromDayNumber(day));
const [first, last] = [dayNumber({ year: 2026, month: 1, day: 1 }), dayNumber({ year: 2035, month: 12, day: 31 })];

/** Days spread over all years, and those around the ends of months and the changes of data, which come every 28 days. */
const days: readonly string[] = Array.from({ length: last - first + 1 }, (_, index) => first + index)
  .filter((day) => {
    const { day: ofMonth } = civilDateFromDayNumber(day);
    const sinceChange = (day - dayNumber({ year: 2026, month: 1, day: 22 }) + 28 * 100) % 28;
    return day % 29 === 0 || ofMonth >= 30 || ofMonth === 1 || sinceChange <= 1 || (sinceChange >= 23 && sinceChange % 2 === 0);
  })
  .map(iso);

/** The values of a range as our functions are given them; formulas are blank. */
function valuesOf(template: SheetTemplate, range: string): (string | number | boolean)[][] {
  const { row, column, lastRow, lastColumn } = readArea(range);
  const byPlace = new Map(template.cells.map((cell) => [`${cell.row} ${cell.column}`, cell.value]));
  return Array.from({ length: lastRow - row + 1 }, (_, down) =>
    Array.from({ length: lastColumn - column + 1 }, (__, across) => {
      const value = byPlace.get(`${row + down} ${column + across}`);
      return typeof value === 'object' ? value.date : (value ?? '');
    }),
  );
}

function sheetOn(day: string, key: SheetKey): SheetTemplate {
  const [found] = demoOn(
    sheetTemplates.filter((template) => template.key === key),
    day,
  );
  if (found === undefined) throw new Error(key);
  return found;
}
const { firstDay, lastDay } = tripRows;
/** The verdict of the demonstration written on a day, and every item that is not OK, as the engine of the local workbook works it out. */
async function tripWords(day: string): Promise<{ readonly verdict: unknown; readonly others: readonly string[] }> {
  const workbook = await openHeadless(demoOn(sheetTemplates, day), day);
  const { judged } = tripRows;
  const items = Array.from({ length: judged.last - judged.first + 1 }, (_, index) => judged.first + index).map(
    (row) => ['G', 'H', 'I'].map((column) => String(workbook.value('Trip sheet', `${column}${row}`))) as [string, string, string],
  );
  const verdict = workbook.value('Trip sheet', 'B3');
  workbook.dispose();
  return { verdict, others: items.filter(([, word]) => word !== 'OK' && word !== '').map(([item, word, why]) => `${item}: ${word}, ${why}`) };
}

const tripOn = (day: string) => {
  const trip = sheetOn(day, 'trip');
  const value = (range: string): string => String(valuesOf(trip, range)[0]?.[0]);
  return { trip, value, from: value(`B${firstDay}`), to: value(`B${lastDay}`) };
};

/** The range of an argument, and where it is called from, so that a moved list is followed. */
function callIn(template: SheetTemplate, name: string): { readonly given: readonly string[] } {
  const formula = template.cells.find((cell) => cell.formula?.startsWith(`=${name}(`))?.formula ?? '';
  return {
    given:
      formula
        .slice(name.length + 2, -1)
        .replace(/\$/g, '')
        .match(/"[^"]*"|[^,]+/g) ?? [],
  };
}

const listOn = (day: string, name: 'PILOT_STATUS' | 'AIRCRAFT_STATUS'): unknown[][] => {
  const log = sheetOn(day, 'currency');
  const valueOf = (one: string): unknown => {
    if (one.startsWith('"')) return one.slice(1, -1);
    if (one === 'as_of') return day;
    const [range = '', sheet] = one.split('!').reverse();
    const values = valuesOf(sheet === "'Fields'" ? sheetOn(day, 'fields') : log, range);
    return range.includes(':') ? values : values[0]?.[0];
  };
  const given = callIn(log, name).given.map(valueOf);
  return call(name, ...given) as unknown[][];
};
const verdictsOf = (rows: readonly unknown[][], column: number): string[] => rows.map((row) => String(row[column])).filter((word) => word !== '');

describe('the demonstration', () => {
  it('is as it is written on its own day', () => {
    const plain = (templates: readonly SheetTemplate[]): unknown =>
      templates.map(({ cells }) => cells.map(({ value }) => (typeof value === 'object' ? value.date : value)));
    expect(plain(demoOn(sheetTemplates, demoDay))).toEqual(plain(sheetTemplates));
  });

  it('is judged on the day on which it is written', () => {
    for (const day of days) expect(valuesOf(sheetOn(day, 'start'), 'A6')).toEqual([[day]]);
  });

  it('has a trip of that very day, and reports of it', () => {
    expect(days.length).toBeGreaterThan(800);
    for (const day of days) {
      const { value, from, to } = tripOn(day);
      expect([from, to]).toEqual([day, day]);
      const [tomorrow] = [iso(dayNumber({ year: Number(day.slice(0, 4)), month: Number(day.slice(5, 7)), day: Number(day.slice(8)) }) + 1)];
      const { metars, tafs } = tripRows;
      for (let row = metars.first; row <= metars.last; row += 1) expect(value(`A${row}`), day).toContain(` ${day.slice(8)}1350Z `);
      for (let row = tafs.first; row <= tafs.last; row += 1)
        expect(value(`A${row}`), day).toContain(` ${day.slice(8)}1100Z ${day.slice(8)}12/${tomorrow.slice(8)}12 `);
    }
  });

  it.each([
    '2026-02-28',
    '2026-03-01',
    '2026-10-28',
    '2026-10-29',
    '2026-11-25',
    '2026-11-26',
    '2026-12-31',
    '2027-01-01',
    '2028-02-28',
    '2028-02-29',
    '2028-03-31',
    '2029-12-30',
  ])(
    'is OK on %s, item by item',
    async (day) => {
      const words = await tripWords(day);
      expect(words).toEqual({ verdict: 'OK', others: [] });
    },
    60_000,
  );

  it.each(['2030-01-02', '2035-12-31'])(
    'is UNKNOWN on %s, when the World Magnetic Model 2025 has ended, and says nothing else against the trip',
    async (day) => {
      const { verdict, others } = await tripWords(day);
      expect(verdict).toBe('UNKNOWN');
      expect(others.length).toBeGreaterThan(0);
      for (const other of others) expect(other).toMatch(/^(Take-off runway|Landing runway|Landing, alternate|Wind limits|Weather, \w+): UNKNOWN/);
    },
    60_000,
  );

  const firstOf = (list: string): number => dataLedgerSheet.keys.lists[list]?.first ?? 0;
  it('has cards of the ledger on dates of their series, none loaded on a day to come', () => {
    for (const day of days) {
      const ledger = sheetOn(day, 'ledger');
      const cards = valuesOf(ledger, `A${firstOf('cards')}:D${firstOf('cards') + 9}`);
      const loads = valuesOf(ledger, `A${firstOf('loads')}:F${firstOf('loads') + 12}`);
      const onDate = loads.map(([aircraft, box, database, effective]) => {
        const series = cards.find((card) => card[0] === aircraft && card[1] === box && card[2] === database)?.[3];
        return (call('CYCLE_CURRENT', effective, series) as Date).toISOString().slice(0, 10) === effective;
      });
      expect(onDate, day).toEqual(loads.map((_, index) => index !== 7));
      for (const [, , , , loaded] of loads) expect(String(loaded) <= day, day).toBe(true);
    }
  });

  it('has a pilot and aircraft of which is OK, on every day, what is OK on its own day; nothing else is', () => {
    const listed = (day: string): string[] => [...verdictsOf(listOn(day, 'PILOT_STATUS'), 3), ...verdictsOf(listOn(day, 'AIRCRAFT_STATUS'), 0)];
    const own = listed(demoDay);
    expect(own.filter((word) => word === 'OK')).toHaveLength(20);
    // The last month of an inspection ends with the calendar's, so the one that is soon due may have 31 days left.
    const soonDue = own.lastIndexOf('CHECK') - 2;
    const settled = (words: readonly string[]): string[] => words.map((word, index) => (index === soonDue && word !== 'NO' ? 'CHECK' : word));
    for (const day of days.filter((_, index) => index % 3 === 0)) expect(settled(listed(day)), day).toEqual(own);
  });
});
