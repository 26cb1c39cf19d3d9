// A workbook in which somebody types, puts rows in, takes rows out and undoes at random must stand as the same workbook opened anew. A
// formula that the engine forgot, or one that reads what spilled before the rows moved, shows here; so does a growing memory of formulas
// that are gone, since the engine writes of each. Run with RANDOM_EDITS=1000 for a long walk.
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openHeadless, openSaved, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import type { WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { tankRows } from '../../sheets-templates/balance/rows';
import { address } from '../../sheets-templates/build';
import { randomFrom } from '../support/seededRandom';

const edits = Number(process.env['RANDOM_EDITS'] ?? 16);
const comparedEvery = edits > 100 ? 25 : 8;

const entries = sheetTemplates.flatMap(({ name: sheet, cells }) =>
  cells.filter(({ style }) => style.startsWith('input')).map((cell) => ({ sheet, ...cell })),
);

/** The cells that are filled, by sheet and address. */
const filled = ({ sheets }: WorkbookSnapshot): Record<string, unknown> =>
  Object.fromEntries(
    sheets.flatMap(({ name, values }) =>
      values.flatMap((line, row) => line.flatMap((value, column) => (value === '' ? [] : [[`${name} ${address(row + 1, column + 1)}`, value]]))),
    ),
  );

async function expectAsOpenedAnew(workbook: HeadlessWorkbook, what: string): Promise<void> {
  const fresh = await openSaved(structuredClone(workbook.saved()));
  expect(filled(workbook.snapshot()), what).toEqual(filled(fresh.snapshot()));
  fresh.dispose();
}

/** One edit, in words; `undoable` is how many there are to take back. */
async function editAtRandom(workbook: HeadlessWorkbook, random: () => number, undoable: number): Promise<string> {
  const pick = <Item>(items: readonly Item[]): Item => items[Math.floor(random() * items.length)] as Item;
  const kind = random();
  const { name, rows } = pick(sheetTemplates);
  const row = 4 + Math.floor(random() * Math.min(80, rows - 8));
  const count = 1 + Math.floor(random() * 3);
  if (kind < 0.5) {
    const { sheet, row: of, column } = pick(entries);
    const like = pick(entries.filter((one) => one.sheet === sheet && one.column === column));
    const content = random() < 0.2 ? '' : (like.value ?? like.formula ?? '');
    await workbook.set(sheet, { [address(of, column)]: content });
    return `${sheet} ${address(of, column)} = ${JSON.stringify(content)}`;
  }
  if (kind < 0.82 || undoable === 0) {
    const putIn = kind < 0.7;
    await (putIn ? workbook.insertRows(name, row, count) : workbook.removeRows(name, row, count));
    return `${count} rows ${putIn ? 'into' : 'out of'} ${name} at ${row}`;
  }
  await workbook.undo();
  return 'undo';
}

describe('a workbook whose rows come and go', () => {
  let workbook: HeadlessWorkbook;
  const written: string[] = [];
  beforeEach(async () => {
    workbook = await openHeadless(sheetTemplates);
    written.length = 0;
    vi.spyOn(console, 'error').mockImplementation((...told) => void written.push(told.join(' ')));
  });
  afterEach(() => {
    vi.restoreAllMocks();
    workbook.dispose();
  });

  it('hears a row that is put into the tanks, and a row that is taken out below a brief', async () => {
    const row = tankRows.first + 2;
    await workbook.insertRows('Weight and balance', row, 1);
    await workbook.set('Weight and balance', { [`A${row}`]: 'Quillon Four', [`B${row}`]: 'tip', [`C${row}`]: 1, [`D${row}`]: 40 });
    await expectAsOpenedAnew(workbook, 'a row in the tanks');
    await workbook.removeRows('Descent and hold card', 83, 1);
    await expectAsOpenedAnew(workbook, 'a row out of the card');
    expect(written).toEqual([]);
  });

  it(`stands after ${edits} random edits as if it were opened anew`, { timeout: 40_000 + edits * 5000 }, async () => {
    const random = randomFrom(1);
    const done: string[] = [];
    let undoable = 0;
    for (let edit = 1; edit <= edits; edit += 1) {
      const what = await editAtRandom(workbook, random, undoable);
      undoable += what === 'undo' ? -1 : 1;
      done.push(what);
      if (edit % comparedEvery === 0) await expectAsOpenedAnew(workbook, done.slice(-comparedEvery).join('\n'));
    }
    expect(written).toEqual([]);
  });
});
