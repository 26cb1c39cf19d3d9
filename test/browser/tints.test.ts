// The tint of a verdict belongs to the word in its own cell, wherever its row has gone: rows are put in, taken out, moved and brought back
// at random, and each word is held against its tint in the grid and on paper, also in a copy of the sheet and in a workbook of an earlier version.
import { readFile, writeFile } from 'node:fs/promises';
import type { IWorkbookData } from '@univerjs/core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { rangeFromA1 } from '../../addon/local/engine/a1';
import { withResource, resourceIn } from '../../addon/local/engine/workbookData';
import { resourceNames } from '../../addon/local/engine/workbookResources';
import { sheetTemplates } from '../../sheets-templates';
import { verdictTints } from '../../sheets-templates/look';
import { randomFrom } from '../support/seededRandom';
import { openPage, openWorkbook, showSheet, takePicture, untilSaved, type OpenWorkbook } from './support';

const ledger = sheetTemplates.find(({ key }) => key === 'ledger');
if (ledger === undefined) throw new Error('no ledger');
const sheetName = ledger.name;

interface Rows {
  readonly first: number;
  readonly last: number;
}

/** What a spreadsheet does to the rows of a range, counted from 1; nothing where none is left. */
const rowsNow = ({ first, last }: Rows, at: number, putIn: number, takenOut: number): Rows | undefined => {
  const kept = Array.from({ length: last - first + 1 }, (_, index) => first + index)
    .filter((row) => row < at || row >= at + takenOut)
    .map((row) => (row < at ? row : row + putIn - takenOut));
  return kept.length === 0 ? undefined : { first: Math.min(...kept), last: Math.max(...kept) };
};

type Shown = readonly (readonly [row: number, column: number, word: string, tint: string])[];

/** Every cell of the sheet in sight that holds a verdict's word or has the tint of one. */
const wordsShown = (page: Page): Promise<Shown> =>
  page.evaluate<Shown>(`(() => {
    const sheet = window.rampwright.workbook.getActiveSheet().getSheet();
    const found = [];
    for (let row = 0; row < sheet.getRowCount(); row += 1) for (let column = 0; column < sheet.getColumnCount(); column += 1) {
      const word = String(sheet.getCell(row, column)?.v ?? '');
      const tint = sheet.getComposedCellStyle(row, column).bg?.rgb ?? '';
      if (${JSON.stringify(Object.keys(verdictTints))}.includes(word) || ${JSON.stringify(Object.values(verdictTints))}.includes(tint)) found.push([row, column, word, tint]);
    }
    return found;
  })()`);

/** Until nothing was calculated for a while: on a busy machine a calculation of everything takes seconds. */
async function settled(page: Page): Promise<void> {
  await page.evaluate(`(async () => {
    const formula = window.rampwright.api.getFormula();
    window.calculation ??= (() => {
      const state = { running: false, ended: performance.now() };
      formula.calculationStart(() => (state.running = true));
      formula.calculationEnd(() => Object.assign(state, { running: false, ended: performance.now() }));
      return state;
    })();
    const asked = performance.now();
    const quiet = () => !window.calculation.running && performance.now() - Math.max(asked, window.calculation.ended) > 1500;
    while (!quiet()) await new Promise((resolve) => setTimeout(resolve, 50));
  })()`);
  await page.waitForTimeout(500);
}
const onSheet = (page: Page, code: string): Promise<unknown> => page.evaluate(`window.rampwright.workbook.getActiveSheet().${code}`);

describe('the tints of verdicts', () => {
  let workbook: OpenWorkbook;
  let page: Page;
  beforeAll(async () => {
    workbook = await openWorkbook(sheetTemplates);
    page = workbook.page;
    await showSheet(page, sheetName);
  });
  afterAll(() => workbook.stop());

  const expectRight = async (
    ranges: readonly { readonly column: number; readonly lastColumn: number; readonly rows: Rows | undefined }[],
    what: string,
  ) => {
    const words = await wordsShown(page);
    const covered = ([row, column]: Shown[number]): boolean =>
      ranges.some(
        ({ column: from, lastColumn, rows }) =>
          rows !== undefined && column >= from && column <= lastColumn && row + 1 >= rows.first && row + 1 <= rows.last,
      );
    const inRanges = words.filter(covered);
    expect(inRanges.length, what).toBeGreaterThan(5);
    for (const [row, , word, tint] of inRanges)
      expect(`${word} ${tint}`, `${what}, row ${row + 1}`).toBe(`${word} ${(verdictTints as Readonly<Record<string, string>>)[word]}`);
  };
  const asDelivered = (ledger.verdictRanges ?? []).map((range) => {
    const { startRow, endRow, startColumn, endColumn } = rangeFromA1(range);
    return { column: startColumn, lastColumn: endColumn, rows: { first: startRow + 1, last: endRow + 1 } as Rows | undefined };
  });

  it('follow their words through rows put in, taken out and brought back', { timeout: 240_000 }, async () => {
    await settled(page);
    await expectRight(asDelivered, 'as delivered');
    let ranges = asDelivered;
    const before: (typeof ranges)[] = [];
    const random = randomFrom(3);
    await onSheet(page, 'insertRowsBefore(19, 10)');
    before.push(ranges);
    ranges = ranges.map((one) => ({ ...one, rows: one.rows && rowsNow(one.rows, 20, 10, 0) }));
    await settled(page);
    await expectRight(ranges, '10 rows above row 20');
    await takePicture(page, 'tints');
    for (let edit = 0; edit < 8; edit += 1) {
      const [kind, at, count] = [random(), 6 + Math.floor(random() * 60), 1 + Math.floor(random() * 3)];
      if (kind < 0.25 && before.length > 0) {
        await page.evaluate('window.rampwright.workbook.undo()');
        ranges = before.pop() ?? ranges;
      } else {
        const putIn = kind < 0.65;
        await onSheet(page, putIn ? `insertRowsBefore(${at - 1}, ${count})` : `deleteRows(${at - 1}, ${count})`);
        before.push(ranges);
        ranges = ranges.map((one) => ({ ...one, rows: one.rows && rowsNow(one.rows, at, putIn ? count : 0, putIn ? 0 : count) }));
      }
      await settled(page);
      await expectRight(ranges, `edit ${edit + 1}, at row ${at}`);
    }
    await untilSaved(page);
    await openPage(page, workbook.address);
    await showSheet(page, sheetName);
    await settled(page);
    await expectRight(ranges, 'loaded anew');
  });

  it('are right in a workbook whose rules look at other cells, as an earlier version left them', { timeout: 60_000 }, async () => {
    const saved = JSON.parse(await readFile(workbook.filePath, 'utf8')) as IWorkbookData;
    const kept = resourceIn<readonly { readonly rule: { readonly value: string } }[]>(saved, resourceNames.tints);
    const old = Object.entries(kept).map(([id, rules]) => [
      id,
      rules.map((one) => ({ ...one, rule: { ...one.rule, subType: 'formula', operator: undefined, value: `=J30="${one.rule.value}"` } })),
    ]);
    await writeFile(workbook.filePath, JSON.stringify(withResource(saved, resourceNames.tints, Object.fromEntries(old) as object)));
    await openPage(page, workbook.address);
    await showSheet(page, sheetName);
    await settled(page);
    const words = (await wordsShown(page)).filter(([, , , tint]) => tint !== '');
    expect(words.length).toBeGreaterThan(5);
    for (const [row, , word, tint] of words) expect(tint, `row ${row + 1}`).toBe((verdictTints as Readonly<Record<string, string>>)[word]);
  });

  it('are right on paper and in a copy of the sheet', { timeout: 60_000 }, async () => {
    const onPaper = (): Promise<readonly string[]> =>
      page.evaluate(
        "(() => { window.dispatchEvent(new Event('beforeprint')); return [...document.querySelectorAll('#paper td')].filter((cell) => cell.textContent === 'NO').map((cell) => cell.style.background); })()",
      );
    expect(new Set(await onPaper())).toEqual(new Set(['rgb(244, 195, 166)']));
    await page.evaluate('window.rampwright.workbook.duplicateActiveSheet()');
    await settled(page);
    const words = (await wordsShown(page)).filter(([, , , tint]) => tint !== '');
    expect(words.length).toBeGreaterThan(5);
    for (const [row, , word, tint] of words) expect(tint, `row ${row + 1}`).toBe((verdictTints as Readonly<Record<string, string>>)[word]);
    expect(workbook.watched.errors).toEqual([]);
  });
});
