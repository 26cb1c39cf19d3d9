// A value typed over a computed cell: two answers may stand side by side then, so no verdict that rests on it may be OK.
import { flownFrom } from '../../sheets-templates/manual/flown';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { sheetTemplates } from '../../sheets-templates';
import { momentColumn } from '../../sheets-templates/balance/entries';
import { cornerRows } from '../../sheets-templates/balance/rows';
import { address } from '../../sheets-templates/build';
import { balanceCells, cardCells, sheetNames, startCells, typedOverCells } from '../../sheets-templates/places';
import type { TemplateCell } from '../../sheets-templates/template';
import { tripRows } from '../../sheets-templates/trip/rows';
import { workingRows } from '../../sheets-templates/working/rows';

const results = new Set(['computed', 'computedText', 'verdict', 'columnHead']);
const isMoment = (sheet: string, { row, column }: TemplateCell): boolean =>
  sheet === sheetNames.balance && row > 7 && (column === momentColumn || (row === cornerRows.first - 1 && column > 4));
/** What no verdict rests on: the moments shown beside the stations and the outline that is drawn. */
const computedIn = (sheet: string): TemplateCell[] =>
  (sheetTemplates.find(({ name }) => name === sheet)?.cells ?? []).filter(
    (cell) => cell.formula !== undefined && results.has(cell.style) && !isMoment(sheet, cell),
  );
const formulaAt = (sheet: string, place: string): string =>
  sheetTemplates.find(({ name }) => name === sheet)?.cells.find(({ row, column }) => address(row, column) === place)?.formula ?? '';

const [itemWord, itemReason] = [`H${tripRows.judged.last}`, `I${tripRows.judged.last}`];
/** What tells of all others cannot tell of itself: each is tried alone below. */
const tellers: ReadonlySet<string> = new Set([
  `${sheetNames.trip} ${itemWord}`,
  `${sheetNames.balance} ${typedOverCells.balance}`,
  `${sheetNames.card} ${typedOverCells.card}`,
]);

describe('a value typed over a computed cell', () => {
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    workbook = await openHeadless(sheetTemplates);
  });
  afterAll(() => workbook.dispose());

  const overall = (): unknown => workbook.named('trip_verdict')[0]?.[0];
  const reason = (): string => String(workbook.value(sheetNames.trip, 'G3'));
  const item = (): string => String(workbook.value(sheetNames.trip, itemReason));

  it('is OK before anything is typed', () => expect([overall(), reason()]).toEqual(['OK', 'Every item below is OK.']));

  it('"fuel on board at start" typed over with 20 while the tanks hold 48 is CHECK, and named', async () => {
    const [sheet, place] = [sheetNames.balance, balanceCells.fuelOnBoard];
    await workbook.set(sheet, { [place]: 20 });
    const told = `typed over: fuel on board at start (${place})`;
    expect(workbook.value(sheet, typedOverCells.balance)).toBe(told);
    expect(['CHECK', 'NO']).toContain(overall());
    expect(reason()).toContain(`Cells and sheets: ${told}: two answers may stand side by side`);
    await workbook.set(sheet, { [place]: formulaAt(sheet, place) });
    expect([overall(), workbook.value(sheet, typedOverCells.balance)]).toEqual(['OK', '']);
  });

  it.each([sheetNames.trip, sheetNames.working, sheetNames.balance, sheetNames.card, sheetNames.start])(
    'on %s is named, whichever cell it is',
    async (sheet) => {
      const cells = computedIn(sheet).map((cell) => ({ place: address(cell.row, cell.column), formula: cell.formula ?? '' }));
      const typed = cells.filter(({ place }) => !tellers.has(`${sheet} ${place}`));
      expect(typed.length).toBeGreaterThan(0);
      await workbook.set(sheet, Object.fromEntries(typed.map(({ place }) => [place, workbook.value(sheet, place) || 'typed'])));
      const told = item();
      const word = overall();
      await workbook.set(sheet, Object.fromEntries(typed.map(({ place, formula }) => [place, formula])));
      expect(typed.filter(({ place }) => !told.includes(`(${place})`))).toEqual([]);
      expect(word).not.toBe('OK');
      expect(overall()).toBe('OK');
    },
  );

  it.each([
    [sheetNames.trip, `H${tripRows.judged.first}`, 'OK', 'typed over: Entries'],
    [sheetNames.trip, itemWord, 'OK', 'typed over: the verdict of Cells and sheets'],
    [sheetNames.trip, `H${tripRows.tripFuel}`, 9, 'typed over: trip fuel'],
    [sheetNames.working, `B${workingRows.available}`, 9000, 'typed over: available: take-off, landing, landing'],
    [sheetNames.working, typedOverCells.working, '', `typed over: what ${sheetNames.working} tells of its own`],
    [sheetNames.balance, 'A41', 'Every tank', 'typed over: the line below the fuel'],
    [sheetNames.balance, typedOverCells.balance, '', `typed over: what ${sheetNames.balance} tells of its own`],
    [sheetNames.card, cardCells.descent.verdict, 'OK', 'typed over: Descent'],
    [sheetNames.start, startCells.dayVerdict, 'OK', 'typed over: whether as_of is today, on Start'],
  ])('alone on %s, %s, makes the trip CHECK', async (sheet, place, typed, told) => {
    await workbook.set(sheet, { [place]: typed });
    expect(overall()).toBe('CHECK');
    expect(reason()).toContain(`${told} (${place})`);
    await workbook.set(sheet, { [place]: formulaAt(sheet, place) });
    expect([overall(), reason()]).toEqual(['OK', 'Every item below is OK.']);
  });

  it.each(
    [sheetNames.fields, sheetNames.tables].flatMap((sheet) =>
      // How the aircraft was flown before is told, and judges nothing.
      computedIn(sheet)
        .filter(({ column }) => sheet !== sheetNames.tables || column < flownFrom)
        .map(({ row, column, formula = '' }) => ({ sheet, place: address(row, column), formula })),
    ),
  )('on $sheet, over the head $place of a list that is answered, takes the whole answer away: UNKNOWN', async ({ sheet, place, formula }) => {
    await workbook.set(sheet, { [place]: 'OK' });
    expect(overall()).toBe('UNKNOWN');
    await workbook.set(sheet, { [place]: formula });
    expect(overall()).toBe('OK');
  });

  it.each([
    [sheetNames.ledger, 'LEDGER_CARDS', typedOverCells.ledger, ['C3', 'E3']],
    [sheetNames.currency, 'PILOT_STATUS', typedOverCells.currency, ['B3', 'B4']],
  ])('on %s, over %s, is said at the top', async (sheet, name, toldAt, tops) => {
    const call = computedIn(sheet).find(({ formula }) => formula?.startsWith(`=${name}(`));
    const place = address(call?.row ?? 0, call?.column ?? 0);
    await workbook.set(sheet, { [place]: 'OK' });
    expect(workbook.value(sheet, toldAt)).toMatch(new RegExp(`^typed over: .*\\(${place}\\)$`));
    expect(tops.map((top) => workbook.value(sheet, top)).join(' ')).toContain('CHECK: see the line');
    await workbook.set(sheet, { [place]: call?.formula ?? '' });
    expect(workbook.value(sheet, toldAt)).toBe('');
  });
});
