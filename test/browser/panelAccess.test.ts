// Every view of the panel with content in it, good and bad, light and dark: no violation that axe knows of, and nothing
// wider than the panel, with a scroll bar beside it too.
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { googleFiles } from '../../addon/build/build';
import type { PanelAnswer, PanelQuestion, PanelReply } from '../../addon/panel/host';
import type { SheetSnapshot, WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { registry } from '../../functions/registry/index.generated';
import { selecting } from '../support/headlessSnapshot';
import { demoSnapshot } from './answeredDouble';
import { openPanel, scrolledWidth, showView } from './panelSupport';
import { launch } from './support';

const longName = 'A sheet that its owner calls by the longest name anybody ever gave one, and_with_a_part_that_cannot_be_broken_anywhere_in_it';
const longRefusal = `Some formulas are still being worked out on "${longName}". Wait until every cell shows its answer, then ask again. `.repeat(6);

/** A user's own sheet where nearly everything is wrong. */
const brokenSheet: SheetSnapshot = {
  name: longName,
  values: Array.from({ length: 60 }, (_, row) => [`item ${row}`, row % 2 === 0 ? '#N/A' : 'UNKNOWN', 'a reason of some length why it is so']),
  formulas: Array.from({ length: 60 }, (_, row) => ({ row: row + 1, column: 2, text: row === 0 ? '=HOLD_ENTRY(NOW(),1)' : '=ISA_TEMPERATURE(A1)' })),
};

/** Every second formula of ours typed over or changed. */
const spoilt = (workbook: WorkbookSnapshot): WorkbookSnapshot => ({
  ...workbook,
  sheets: [
    ...workbook.sheets.map((sheet) => ({
      ...sheet,
      formulas: sheet.formulas.flatMap((cell, index) => (index % 4 === 0 ? [] : index % 4 === 1 ? [{ ...cell, text: '=1+1' }] : [cell])),
    })),
    brokenSheet,
  ],
});

const older = ({ sheets, ...rest }: WorkbookSnapshot): WorkbookSnapshot => ({
  ...rest,
  sheets: sheets.map((sheet) => ({ ...sheet, ...(sheet.mark && { mark: { ...sheet.mark, version: 0 } }) })),
});

/** A remark and a number beside the lists: the one is told before the update, the other stands in its way. */
const withOwnCells = ({ sheets, ...rest }: WorkbookSnapshot): WorkbookSnapshot => ({
  ...rest,
  sheets: sheets.map((sheet) =>
    sheet.mark?.key === 'currency'
      ? { ...sheet, values: sheet.values.map((line, row) => (row === 20 ? [...line, 'a remark', 42] : [...line, '', ''])) }
      : sheet,
  ),
});

let html: string;
let axe: string;
let demo: WorkbookSnapshot;
let browser: Browser;

beforeAll(async () => {
  html = (await googleFiles())['panel.html'];
  axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
  demo = await demoSnapshot();
  browser = await launch();
});
afterAll(async () => browser.close());

/** What the host answers next. */
let replies: Partial<{ [Question in PanelQuestion]: PanelReply<PanelAnswer<Question>> }>;

describe.each([
  ['light', false],
  ['dark', true],
] as const)('the panel, %s', (_, dark) => {
  let page: Page;
  let troubles: string[];

  beforeAll(async () => {
    ({ page, troubles } = await openPanel(
      browser,
      html,
      (question) => replies[question as PanelQuestion] ?? { refusal: 'Not asked for in this test.' },
      { dark },
    ));
    await page.evaluate(axe);
  });
  afterAll(async () => page.close());

  async function look(at: string): Promise<void> {
    const { violations, passes } = await page.evaluate<AxeResults>('window.axe.run({ resultTypes: ["violations"] })');
    expect(violations.map(({ id, impact, nodes }) => `${at}: ${id} (${impact}) at ${nodes.map(({ html: text }) => text).join(' and ')}`)).toEqual([]);
    expect(passes.length).toBeGreaterThan(10);
    for (const width of [283, 300]) {
      await page.setViewportSize({ width, height: 700 });
      expect(await scrolledWidth(page), `${at} at ${width} pixels`).toBe(width);
    }
    const small = await page
      .locator('button:visible, a:visible, input:visible, select:visible, textarea:visible')
      .evaluateAll((targets) =>
        targets.filter((target) => (target as unknown as { offsetHeight: number }).offsetHeight < 24).map(({ outerHTML }) => outerHTML),
      );
    expect(small, at).toEqual([]);
    expect(troubles).toEqual([]);
  }

  const press = async (name: string, kind: 'done' | 'shown' | 'refused'): Promise<void> => {
    await page.getByRole('button', { name, exact: true }).click();
    await page.locator(`[role=tabpanel]:not([hidden]) .outcome.${kind}`).waitFor({ state: 'attached' });
  };

  it('Sheets, with older ones, notes and a refusal', async () => {
    await look('as it opens');
    const tabHeights = (): Promise<number[]> =>
      page.getByRole('tab').evaluateAll((tabs) => tabs.map((tab) => (tab as unknown as { offsetHeight: number }).offsetHeight));
    const oneLine = await tabHeights();
    // Half as wide is zoomed to twice the size: words stay whole.
    await page.setViewportSize({ width: 150, height: 350 });
    expect([await tabHeights(), await scrolledWidth(page)]).toEqual([oneLine, 150]);
    await page.setViewportSize({ width: 300, height: 700 });
    expect(await page.locator('.caution').innerText()).toBe(
      'Planning aid only: the approved manual, official data, local rules and the pilot in command decide.',
    );
    replies = { readWorkbook: { answer: older(demo) } };
    await press('Look for older sheets', 'done');
    await look('an older set');
    replies = { readWorkbook: { answer: older(withOwnCells(demo)) } };
    await press('Look for older sheets', 'done');
    await page.getByRole('heading', { name: 'Fix these first' }).waitFor();
    await look('an older set that cannot be updated');
    replies = { insertSheets: { refusal: longRefusal } };
    await press('Insert every sheet', 'refused');
    await look('a long refusal');
  });

  it('Aircraft, with a table pasted, open and whole, and a text that is none', async () => {
    await showView(page, 'Aircraft');
    await look('before it is read');
    replies = { readWorkbook: { answer: demo } };
    await press('Begin', 'done');
    await look('nothing pasted');
    const text = page.getByLabel('The table, pasted');
    await text.fill('no table at all\nand a line more');
    await look('no table');
    await text.fill('alt;0;10\n0;1,067;1,150\n1000;1x2;1,250*');
    await look('a cell that cannot be read');
    await text.fill(
      'Weight 1000 kg\naltitude, ft;0;10;20\n0;1,067;1,150;1,240\n1000;1,150;1,250*;1,350\n2000;1,250;1,900;1,460\n3000;1,350;1,470;1,590',
    );
    await look('open questions');
    await page.getByLabel(/^1,067/).selectOption('1067');
    for (const [label, choice] of [
      ['Across the top', 'temperature'],
      ['The figures', 'ground roll'],
      ['The unit of the temperature', '\u00b0C'],
      ['The unit of the figures', 'm'],
      ['has 64 rows there', 'replace them'],
    ] as const)
      await page.getByLabel(label).first().selectOption(choice);
    await page.getByRole('button', { name: 'Write into Manual tables' }).waitFor();
    await look('the whole table');
    replies = { readWorkbook: { answer: demo }, changeCells: { refusal: longRefusal } };
    await press('Write into Manual tables', 'refused');
    replies = { readWorkbook: { answer: demo }, changeCells: { answer: { cells: 12 } } };
    await press('Write into Manual tables', 'done');
    await page.getByRole('button', { name: /^Undo: / }).waitFor();
    expect(await page.evaluate('document.activeElement.tagName')).toBe('H2');
    await look('written');
    await press('Look at the aircraft', 'done');
    for (const task of ['See what it has', 'New aircraft', 'Save an aircraft', 'Take one', 'Remove an aircraft']) {
      const option = await page.locator('option', { hasText: task }).textContent();
      await page.getByLabel('Task').selectOption(option);
      if (task === 'New aircraft') {
        await page.getByLabel('Name').fill(longName.slice(0, 60));
        await page.getByLabel('Begin as').selectOption('a copy of Quillon Four');
      }
      if (task === 'Remove an aircraft') await page.getByLabel('Which aircraft').selectOption('Brindle Two');
      await look(task);
    }
  });

  it('Functions, each page', async () => {
    await showView(page, 'Functions');
    await look('the list');
    // The scheme changes no width.
    for (const { name } of dark ? registry.slice(0, 3) : registry) {
      await page.locator(`#function-${name}`).click();
      expect(await scrolledWidth(page), name).toBe(300);
      if (dark || name === 'HOLD_BRIEF' || name === 'TAKEOFF_BRIEF') await look(name);
      await page.getByRole('button', { name: 'Back to the list' }).click();
    }
  });

  it.each([
    ['Descent and hold card', 55],
    ['Descent and hold card', 34],
    ['Weight and balance', 46],
    ['Currency log', 44],
  ] as const)('Picture of "%s", row %i', async (sheet, row) => {
    await showView(page, 'Picture');
    replies = { readWorkbook: { answer: selecting(demo, sheet, row) } };
    await press('Draw the selected row', 'shown');
    await page.locator('figcaption', { hasText: sheet }).waitFor();
    expect(await page.getByText('As the cells were at').innerText()).toMatch(
      /^As the cells were at \d\d:\d\d:\d\d\. Later changes show when you draw it again\.$/,
    );
    await look(`the picture of ${sheet}`);
  });

  it('Check, with nothing much and with very much', async () => {
    await showView(page, 'Check');
    replies = { readWorkbook: { answer: demo } };
    await press('Check this workbook', 'shown');
    expect(await page.getByText('As the workbook was at').innerText()).toMatch(/^As the workbook was at \d\d:\d\d:\d\d\. /);
    await look('the demo');
    replies = { readWorkbook: { answer: spoilt(demo) }, goTo: { answer: { cell: 'B1' } } };
    await press('Check this workbook', 'shown');
    await page.getByRole('heading', { name: longName }).waitFor();
    await look('many findings');
    const cells = page.locator('ul.findings').last().getByRole('button');
    const before = await cells.count();
    await page
      .getByRole('button', { name: `of ${longName}` })
      .last()
      .click();
    await page.waitForFunction(`document.activeElement.closest('ul.findings') !== null`);
    expect(await cells.count()).toBeGreaterThan(before);
    expect(await page.evaluate(`[...document.activeElement.closest('ul').querySelectorAll('button')].indexOf(document.activeElement)`)).toBe(before);
    await look('all findings');
  });

  it('Send, with a file and a copy', async () => {
    await showView(page, 'Send');
    replies = { readWorkbook: { answer: demo }, freezeSheet: { answer: { sheet: `${longName} (values)`, formulas: 214 } } };
    await press('Make the calendar file', 'shown');
    await look('the calendar file');
    await press('Copy this sheet as values', 'done');
    await look('the copy');
  });
});
