// Three flights of a day, each on sheets of its own: what the second reads of the first, and every slip by which the one verdict would be too good.
import type { IWorkbookData } from '@univerjs/core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openSaved, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { withTripCopied } from '../../addon/local/saved/copyTrip';
import { checkWorkbook } from '../../addon/workbook/check/checkWorkbook';
import type { FormulaCell } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { address } from '../../sheets-templates/addresses';
import { tankRows } from '../../sheets-templates/balance/rows';
import { flightList } from '../../sheets-templates/day/places';
import { demoDay } from '../../sheets-templates/demo/day';
import { tripRows as rows } from '../../sheets-templates/trip/rows';
import { toldWords } from '../../sheets-templates/working/told';
import { workingRows } from '../../sheets-templates/working/rows';
import { savedAfter, withoutSheet } from '../local/savedSheets';
import { day, dayReason, dayVerdict, flightsOn, idOf, wayBack, withFlightAdded } from '../support/flights';

const second = 'Trip sheet 2';
const balance = 'Weight and balance 2';
/** The engine writes into what it is given. */
const opened = (data: IWorkbookData): Promise<HeadlessWorkbook> => openSaved(structuredClone(data));
const itemOn = (workbook: HeadlessWorkbook, item: string, name = 'trip_reasons_2'): unknown[] =>
  workbook
    .named(name)
    .find(([one]) => one === item)
    ?.slice(1) ?? [];
const tankCell = `C${tankRows.first}`;

/** The demonstration with the way back added to it, nothing typed there yet. */
async function twoFlights(): Promise<IWorkbookData> {
  const saved = await savedAfter(sheetTemplates);
  const workbook = await opened(saved);
  const { data } = withFlightAdded(saved, workbook.snapshot(), 'Trip sheet');
  workbook.dispose();
  return data;
}

let added: IWorkbookData;
/** The way back typed. */
let typed: IWorkbookData;
beforeAll(async () => {
  added = await twoFlights();
  const workbook = await opened(added);
  await workbook.set(second, wayBack);
  const saved = workbook.saved();
  typed = {
    ...saved,
    resources: [...(saved.resources ?? []), ...(added.resources ?? []).filter(({ name }) => !saved.resources?.some((one) => one.name === name))],
  };
  workbook.dispose();
}, 120_000);

describe('the flight added', () => {
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    workbook = await opened(added);
  });
  afterAll(() => workbook.dispose());

  it('begins at the destination of the first, with what is left in each tank, by formulas', () => {
    expect(workbook.value(second, `B${rows.field}`)).toBe('Tansy Ridge');
    // 48 on board, less 1.4 for taxi, 0.8 for the climb and 107.6 NM at 118 kt and 10.5 an hour, half from each wing.
    const [left, right] = workbook.values(balance, `C${tankRows.first}:C${tankRows.first + 1}`).flat();
    expect([left, right]).toEqual([expect.closeTo(18.114, 2), expect.closeTo(18.114, 2)]);
    expect(workbook.value(second, `B${rows.beforeFuel}`)).toBeCloseTo(36.228, 2);
    expect(workbook.value(second, `B${rows.beforeMinutes}`)).toBeCloseTo(54.7, 1);
    expect(workbook.value(balance, `C${tankRows.first + 2}`)).toBe(70);
  });

  it('has nothing of the first left, and is UNKNOWN until it is typed', () => {
    const [mine, first] = [
      workbook.values(second, `A${rows.metars.first}:A${rows.tafs.last}`),
      workbook.values('Trip sheet', `A${rows.metars.first}:A${rows.tafs.last}`),
    ];
    expect(mine.flat().every((text) => text === '')).toBe(true);
    expect(first.flat().every((text) => text !== '')).toBe(true);
    for (const cell of [`C${rows.field}`, `D${rows.field}`, `B${rows.takeoffTime}`, `B${rows.night}`, `B${rows.groundspeed}`, `B${rows.runwayName}`])
      expect(workbook.value(second, cell), cell).toBe('');
    expect([...workbook.values('Route 2', 'B10:I29').flat(), ...workbook.values('Route 2', 'K35:O46').flat()].every((one) => one === '')).toBe(true);
    expect(workbook.values('Weight and balance 2', 'A8:F23')).toEqual(workbook.values('Weight and balance', 'A8:F23'));
    expect([workbook.value(second, `B${rows.pilot}`), workbook.value(second, `B${rows.passengers}`)]).toEqual(['A. Invented', 'yes']);
    expect([workbook.value('Trip sheet', 'B3'), workbook.value(second, 'B3'), dayVerdict(workbook)]).toEqual(['OK', 'UNKNOWN', 'UNKNOWN']);
    expect(dayReason(workbook)).toContain('flight 2 cannot be read: to, take-off, landing, fuel at landing');
    expect(JSON.stringify(workbook.snapshot().sheets.map(({ values }) => values))).not.toMatch(/#(VALUE|REF|NAME|SPILL)/);
  });

  it('keeps typed weather of the first to the first', async () => {
    await workbook.set('Trip sheet', { [`B${rows.temperature}`]: 18 });
    expect(workbook.value(second, `B${rows.temperature}`)).toBe('');
    expect(workbook.value('Trip working 2', `B${workingRows.temperature}`)).toBe('');
    await workbook.set('Trip sheet', { [`B${rows.temperature}`]: '' });
  });
});

describe('two flights', () => {
  let workbook: HeadlessWorkbook;
  let formulas: Map<string, readonly FormulaCell[]>;
  beforeAll(async () => {
    workbook = await opened(typed);
    formulas = new Map(workbook.snapshot().sheets.map((sheet) => [sheet.name, sheet.formulas]));
  });
  afterAll(() => workbook.dispose());
  /** What the day says with something typed, which is taken back. */
  async function seen(sheet: string, cells: Record<string, string | number>): Promise<{ word: unknown; said: string; item: unknown[] }> {
    const before = Object.fromEntries(
      Object.keys(cells).map((cell) => {
        const formula = formulas.get(sheet)?.find((one) => address(one.row, one.column) === cell);
        return [cell, formula?.text ?? workbook.value(sheet, cell)];
      }),
    );
    await workbook.set(sheet, cells);
    const told = { word: dayVerdict(workbook), said: dayReason(workbook), item: itemOn(workbook, 'Flight before') };
    await workbook.set(sheet, before);
    expect(dayVerdict(workbook)).toBe('OK');
    return told;
  }

  it('are OK, each and both, and the check of the workbook finds nothing but what is UNKNOWN', () => {
    expect([dayVerdict(workbook), dayReason(workbook)]).toEqual([
      'OK',
      'every flight is OK, and begins where, when and with what the one before it ends',
    ]);
    expect(itemOn(workbook, 'Flight before')).toEqual(['OK', 'it ends at Tansy Ridge at 2026-11-25 15:24Z, with the fuel that this one begins with']);
    expect(itemOn(workbook, 'Flight before', 'trip_reasons')).toEqual(['OK', 'none is named: the first flight']);
    const { findings } = checkWorkbook(workbook.snapshot(), sheetTemplates, demoDay);
    // The Route and the card of the second are blank, and it has no alternate: their calls refuse that, as in every blank sheet.
    expect(new Set(findings.filter(({ kind }) => kind !== 'unknown').map(({ kind, sheet }) => `${kind} ${sheet}`))).toEqual(
      new Set(['error Route 2', 'error Descent and hold card 2', 'error Trip working 2']),
    );
  });

  it('are not OK with more fuel than was left, unless it was taken on', async () => {
    const more = await seen(balance, { [tankCell]: 24 });
    expect([more.word, more.item]).toEqual(['NO', ['NO', '42.1 US gal at start, but 36.2 US gal left and 0 US gal taken on']]);
    expect(more.said).toContain('flight 2 does not follow: 42.1 US gal at start, but 36.2 left and 0 taken on');
    await workbook.set(second, { [`B${rows.takenOn}`]: 5.886 });
    await workbook.set(balance, { [tankCell]: 24 });
    expect([dayVerdict(workbook), itemOn(workbook, 'Flight before')[0]]).toEqual(['OK', 'OK']);
    await workbook.set(balance, { [tankCell]: workbook.value(balance, `C${tankRows.first + 1}`) });
    // Fuel that is on board and not in the loading.
    expect([dayVerdict(workbook), itemOn(workbook, 'Flight before')[0]]).toEqual(['CHECK', 'CHECK']);
    await workbook.set(second, { [`B${rows.takenOn}`]: '' });
    await workbook.set(balance, {
      [tankCell]: `=IFERROR(IF(ISNUMBER(VLOOKUP("in "&B${tankRows.first},flight_told,2,FALSE)),VLOOKUP("in "&B${tankRows.first},flight_told,2,FALSE),""),"")`,
    });
    expect(dayVerdict(workbook)).toBe('OK');
  });

  it('are not OK where the second leaves before the first has landed, or from another field', async () => {
    const early = await seen(second, { [`B${rows.takeoffTime}`]: 1500 });
    expect([early.word, early.item[0]]).toEqual(['NO', 'NO']);
    expect(early.said).toContain('take-off 2026-11-25 15:00Z is before the landing 2026-11-25 15:24Z of the flight before');
    const elsewhere = await seen(second, { [`B${rows.field}`]: 'Sorrel Plain' });
    expect([elsewhere.word, elsewhere.item[0]]).toEqual(['NO', 'NO']);
    expect(elsewhere.said).toContain('leaves Sorrel Plain, but the flight before ends at Tansy Ridge');
  });

  it('hear every change of the first', async () => {
    const longer = await seen('Trip sheet', { [`B${rows.groundspeed}`]: 90 });
    expect(longer.word).toBe('OK');
    const unknown = await seen('Trip sheet', { [`B${rows.groundspeed}`]: '' });
    expect([unknown.word, unknown.item[0]]).toEqual(['UNKNOWN', 'UNKNOWN']);
    expect(String(unknown.item[1])).toContain(
      'missing: its landing, its fuel at landing, the minutes flown before, the fuel on board of this flight',
    );
    const loaded = await seen('Weight and balance', { C9: 900 });
    expect(loaded.word).toBe('NO');
    expect(loaded.said).toContain('flight 1: Loading');
  });

  it('never take an emptied cell for 0', async () => {
    const told = (word: keyof typeof toldWords): string => `B${workingRows.told.first + Object.keys(toldWords).indexOf(word)}`;
    const fuel = await seen('Trip working', { [told('fuelLeft')]: '' });
    expect([fuel.word, fuel.item[0]]).toEqual(['UNKNOWN', 'UNKNOWN']);
    const row = await seen(day, { [`I${flightList.first}`]: '' });
    expect(row.word).toBe('UNKNOWN');
    const taken = await seen(second, { [`B${rows.takenOn}`]: 'some' });
    expect([taken.word, taken.item[0]]).toEqual(['UNKNOWN', 'UNKNOWN']);
    const text = await seen(second, { [`B${rows.beforeFuel}`]: 'thirty' });
    expect(text.item[0]).toBe('UNKNOWN');
    // It would give hours back to the aircraft's inspections.
    const below = await seen(second, { [`B${rows.beforeMinutes}`]: -60 });
    expect(below.item).toEqual(['UNKNOWN', 'missing: the minutes flown before (below 0)']);
  });

  it('are read in the order of the list: a gap, the wrong order, a row beside it', async () => {
    const [one, two] = [flightsOn(workbook)[0] ?? [], flightsOn(workbook)[1] ?? []];
    const rowOf = (row: number, values: readonly unknown[]): Record<string, string | number> =>
      Object.fromEntries(values.slice(0, 10).map((value, index) => [`${String.fromCharCode(66 + index)}${row}`, value as string | number]));
    const turned = await seen(day, { ...rowOf(flightList.first, two), ...rowOf(flightList.first + 1, one) });
    expect(turned.word).toBe('NO');
    expect(turned.said).toContain('is before the landing');
    const blank = rowOf(flightList.first + 1, Array<string>(10).fill(''));
    const gap = await seen(day, { ...blank, ...rowOf(flightList.first + 2, two) });
    expect([gap.word, gap.said]).toEqual(['UNKNOWN', expect.stringContaining('the row above is blank')]);
    const beside = await seen(day, { [`B${flightList.last + 1}`]: 'Trip sheet 5' });
    expect([beside.word, beside.said]).toEqual(['UNKNOWN', expect.stringContaining('beside the list')]);
    const over = await seen(day, { [`L${flightList.first + 1}`]: 'OK' });
    expect([over.word, over.said]).toEqual(['CHECK', expect.stringContaining('typed over')]);
    const named = await seen(day, { [`B${flightList.first + 2}`]: 'Trip sheet 3' });
    expect([named.word, named.said]).toEqual(['UNKNOWN', expect.stringContaining('flight 3 cannot be read')]);
  });

  it('go on reading their own under other names', async () => {
    workbook.rename('Trip working', 'Way out');
    workbook.rename(second, 'Way back');
    await workbook.set('Trip sheet', { [`B${rows.groundspeed}`]: 100 });
    expect(dayVerdict(workbook)).toBe('OK');
    expect(workbook.value('Way back', `B${rows.beforeMinutes}`)).toBeCloseTo(64.54, 1);
    await workbook.set('Way back', { [`B${rows.takeoffTime}`]: 1500 });
    expect(dayVerdict(workbook)).toBe('NO');
  });
});

describe('a flight whose sheets are gone', () => {
  it.each([
    ['Trip working', 'Trip working 2'],
    ['Trip sheet', 'Trip sheet 2'],
  ])('is UNKNOWN, and so is the one after it: %s', async (gone, goneToo) => {
    const first = await opened(withoutSheet(typed, idOf(typed, gone)));
    expect([dayVerdict(first), first.value(second, 'B3'), itemOn(first, 'Flight before')[0]]).toEqual(['UNKNOWN', 'UNKNOWN', 'UNKNOWN']);
    first.dispose();
    const other = await opened(withoutSheet(typed, idOf(typed, goneToo)));
    expect([dayVerdict(other), flightsOn(other)[0]?.[10]]).toEqual(['UNKNOWN', 'OK']);
    other.dispose();
  });
});

describe('a third flight, and a trip copied by its tab', () => {
  it('reads the second, and the minutes of both', async () => {
    const workbook = await opened(typed);
    const three = withFlightAdded(typed, workbook.snapshot(), second);
    expect(three.copies[0]).toBe('Trip sheet 3');
    workbook.dispose();
    const all = await opened(three.data);
    expect(all.value('Trip sheet 3', `B${rows.field}`)).toBe('Marrowfield');
    expect(all.value('Trip sheet 3', `B${rows.beforeFuel}`)).toBeCloseTo(Number(all.value('Trip working 2', `B${workingRows.told.first + 6}`)), 9);
    expect(Number(all.value('Trip sheet 3', `B${rows.beforeMinutes}`))).toBeCloseTo(54.6966 + 58.6745, 1);
    expect(flightsOn(all).map(([name]) => name)).toEqual(['Trip sheet', 'Trip sheet 2', 'Trip sheet 3', '']);
    all.dispose();
  });

  it('is refused in the middle of the day, when the day is full, and for a trip that is not listed', async () => {
    const workbook = await opened(typed);
    const snapshot = workbook.snapshot();
    expect(() => withFlightAdded(typed, snapshot, 'Trip sheet')).toThrow('a flight stands after that of "Trip sheet"');
    workbook.dispose();
    const copied = withTripCopied(typed, idOf(typed, 'Trip sheet')).data;
    const other = await opened(copied);
    expect(() => withFlightAdded(copied, other.snapshot(), 'Trip sheet 3')).toThrow('"Trip sheet 3" is not on "Flights of the day"');
    other.dispose();
  });
});
