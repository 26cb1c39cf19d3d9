// Rows put in for a table that is longer than its list, in the same change as its cells: looks, rules and every range go with them, and the same
// change turned round takes all of it back, but never what somebody wrote there since.
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { changeCells } from '../../addon/google/changeCells';
import { insertSheets } from '../../addon/google/insertSheets';
import { readWorkbook } from '../../addon/google/readWorkbook';
import { listNow, manualTables } from '../../addon/workbook/aircraft/aircraftLists';
import { tablePlan, type TablePlan } from '../../addon/workbook/aircraft/tablePlan';
import { turnedRound, type CellsStep } from '../../addon/workbook/cellChanges';
import { keysIn } from '../../addon/workbook/keys';
import { tableKinds } from '../../addon/workbook/pasted/tableKinds';
import { sheetTemplates } from '../../sheets-templates';
import { demoSnapshot, showAnswers } from '../browser/answeredDouble';
import type { Double } from './double/services';
import { documentOf } from './smallDocument';
import { withDouble, withoutPlatform } from './support';

const tables = () => manualTables(readWorkbook({ sheets: 'all' }), sheetTemplates);
const [takeoff] = tableKinds;
const rows = Array.from({ length: 250 }, (_, index) => ({ pressureAltitude: index * 40, over50Feet: 400 + index }));

let double: Double;
let plan: TablePlan;
let given: CellsStep;
beforeEach(async () => {
  double = withDouble('Europe/Paris');
  insertSheets(
    sheetTemplates.map(({ key }) => key),
    sheetTemplates,
  );
  showAnswers(double, await demoSnapshot());
  if (takeoff === undefined) throw new Error('no table');
  plan = tablePlan(tables(), { kind: takeoff, aircraft: 'Brindle Two', rows, keep: false });
  given = { changes: plan.changes, ...(plan.rowsIn && { rowsIn: plan.rowsIn }) };
});
afterEach(withoutPlatform);

/** The change turned round, as the panel asks for it. */
function back(): CellsStep {
  const keys = keysIn(tables())?.cell;
  if (plan.rowsIn === undefined || keys === undefined) throw new Error('no rows were put in');
  return { changes: turnedRound(plan.changes), rowsOut: { ...plan.rowsIn, keys } };
}
const sheet = () => double.sheet('Manual tables');

describe('rows put in with a change', () => {
  it('grow every list and formula, look as the rows above and have their rules, and go again with it', () => {
    const before = documentOf(double);
    const formula = sheet().cell(12, 1).formula;
    const count = plan.rowsIn?.count ?? 0;
    changeCells(given);
    expect(listNow(tables(), 'takeoff').last).toBe(321 + count);
    expect(listNow(tables(), 'corrections').last).toBe(321 + count);
    expect(sheet().cell(12, 1).formula).toBe(formula.replace(/321/g, String(321 + count)));
    expect(
      [double.sheet('Trip working'), double.sheet('Weight and balance')].flatMap((one) =>
        [...one.cells.values()].filter((cell) => /Manual tables.*321\b/.test(cell.formula)),
      ),
    ).toEqual([]);
    const look = (row: number) =>
      Array.from({ length: sheet().columns }, (_, at) => {
        const { validation, numberFormat, background } = sheet().cell(row, at + 1);
        return [validation, numberFormat, background];
      });
    for (const row of [321, 321 + count - 1]) expect(look(row)).toEqual(look(320));
    expect(look(320).some(([validation]) => validation !== null)).toBe(true);
    changeCells(back());
    expect(documentOf(double)).toEqual(before);
  });

  it.each<readonly [string, () => void]>([
    ['in a list beside', () => void (sheet().cell(325, 14).value = 'Quillon Four')],
    ['a 0', () => void (sheet().cell(326, 44).value = 0)],
    ['a formula', () => void (sheet().cell(327, 30).formula = '=A1')],
  ])('stay where something stands in them by now: %s', (_, write) => {
    changeCells(given);
    write();
    const before = documentOf(double);
    expect(() => changeCells(back())).toThrow(/^Something stands by now in the rows of "Manual tables" that were put in/);
    expect(documentOf(double)).toEqual(before);
  });

  it('neither go in nor out where rows of the sheet were moved since they were seen', () => {
    const asked = given;
    sheet().insertRowsAfter(400 - 100, 1);
    const moved = documentOf(double);
    expect(() => changeCells(asked)).toThrow('Cells of "Manual tables" were changed since you looked');
    expect(documentOf(double)).toEqual(moved);
    sheet().deleteRows(301, 1);
    changeCells(asked);
    const undo = back();
    sheet().insertRowsAfter(330, 1);
    expect(() => changeCells(undo)).toThrow('Cells of "Manual tables" were changed since you looked');
  });

  it('leave everything as it was wherever the platform fails on the way', () => {
    const before = documentOf(double);
    const sentences: string[] = [];
    for (let step = 1; sentences[sentences.length - 1] !== ''; step += 1) {
      double.recorder.failAt = double.recorder.count('document') + step;
      try {
        changeCells(given);
        sentences.push('');
      } catch (thrown) {
        double.recorder.failAt = undefined;
        expect(documentOf(double), `failing at call ${step}`).toEqual(before);
        sentences.push(thrown instanceof Error ? thrown.message : '?');
      }
    }
    double.recorder.failAt = undefined;
    expect(sentences.filter((sentence) => /^Nothing was written, .* every cell is as it was\./.test(sentence)).length).toBeGreaterThan(4);
    const written = documentOf(double);
    const undo = back();
    double.recorder.failAt = double.recorder.count('document') + 8;
    expect(() => changeCells(undo)).toThrow();
    double.recorder.failAt = undefined;
    expect(documentOf(double)).toEqual(written);
  });
});
