// The panel of the Google host in Chromium, at its 300 pixels, with a google.script.run that answers as the script does:
// the built Code.js in a bare context, before the double.
import { readFile } from 'node:fs/promises';
import ical from 'ical.js';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { googleFiles } from '../../addon/build/build';
import type { WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { isOurs, readFormula } from '../../addon/workbook/formulaReading';
import { sheetTemplates } from '../../sheets-templates';
import { tripRows } from '../../sheets-templates/trip/rows';
import { bareContext } from '../bundle/bareContext';
import { runOnServer } from '../google/double/scriptRun';
import { Double } from '../google/double/services';
import { demoSnapshot, select, showAnswers } from './answeredDouble';
import { openPanel, showView } from './panelSupport';
import { launch } from './support';

const names = sheetTemplates.map(({ name }) => name);

let files: Awaited<ReturnType<typeof googleFiles>>;
let demo: WorkbookSnapshot;
let browser: Browser;
let page: Page;
let double: Double;
let troubles: string[];

beforeAll(async () => {
  files = await googleFiles();
  demo = await demoSnapshot();
  browser = await launch();
});
afterAll(async () => browser.close());

beforeEach(async () => {
  double = new Double('Europe/Paris', { panel: files['panel.html'] });
  const script = bareContext(files['Code.js'], double.globals());
  const topLevel = { answerPanel: script.run('answerPanel'), attendRun: script.run('attendRun') };
  // As the platform's page service hands it on.
  const served = double.html.createHtmlOutputFromFile('panel').getContent();
  ({ page, troubles } = await openPanel(browser, served, (...given) => runOnServer(topLevel, 'answerPanel', given), {
    attend: (given) => runOnServer(topLevel, 'attendRun', [given]),
  }));
});
afterEach(async () => {
  expect(troubles).toEqual([]);
  await page.close();
});

/** Calls of our functions in all sheets. */
const callsOfOurs = sheetTemplates
  .flatMap(({ cells }) => cells.flatMap(({ formula }) => (formula === undefined ? [] : readFormula(formula).calls)))
  .filter(({ name }) => isOurs(name)).length;
/** The day of the document, to which the demo moves. */
const today = (): string => new Intl.DateTimeFormat('sv-SE', { timeZone: 'Europe/Paris' }).format(new Date());
const outcome = () => page.getByRole('tabpanel').getByRole('status').last();
const said = async (kind: 'done' | 'shown' | 'refused'): Promise<string> => {
  await page.locator(`[role=tabpanel]:not([hidden]) .outcome.${kind}`).waitFor({ state: 'attached' });
  return (await outcome().textContent()) ?? '';
};
const press = (name: string): Promise<void> => page.getByRole('button', { name, exact: true }).click();

async function insertEverything(): Promise<void> {
  await press('Insert every sheet');
  await said('done');
  showAnswers(double, demo);
}

describe('Sheets', () => {
  it('inserts every sheet, and says which', async () => {
    await press('Insert every sheet');
    expect(await said('done')).toBe(`Inserted: ${names.join(', ')}.`);
    expect(double.document.sheets).toHaveLength(1 + sheetTemplates.length);
    await Promise.all([page.getByText(/^Inserted: Currency log 2\. It reads what was there already: /).waitFor(), press('Currency log')]);
  });

  it('tells a refusal in words', async () => {
    double.recorder.failAt = 20;
    await press('Insert every sheet');
    expect(await said('refused')).toMatch(/^Not done\. No sheet was inserted, .*Service Spreadsheets failed/);
  });

  it('says when there is nothing to bring up to date', async () => {
    await press('Look for older sheets');
    expect(await said('done')).toBe('This document has no sheets of Rampwright yet.');
    await insertEverything();
    await press('Look for older sheets');
    await page.getByText('Every sheet of ours is up to date.').waitFor();
    expect(await page.getByRole('heading', { name: 'Set 1: nothing to do' }).isVisible()).toBe(true);
    expect(await page.getByRole('button', { name: 'Bring this set up to date' }).count()).toBe(0);
  });
});

describe('Sheets, older ones', () => {
  const madeOlder = (): void => {
    for (const sheet of double.document.sheets) {
      for (const one of sheet.getDeveloperMetadata()) {
        one.remove();
        sheet.addDeveloperMetadata(one.getKey(), one.getValue()?.replace(/"version":\d+/, '"version":0') ?? '', {});
      }
    }
  };
  const entry = sheetTemplates.flatMap(({ key, cells }) =>
    key === 'trip' ? cells.filter(({ style, value }) => style === 'input' && typeof value === 'number') : [],
  )[0];
  const entryOnTrip = () => double.sheet('Trip sheet').cell(entry?.row ?? 0, entry?.column ?? 0);

  beforeEach(async () => {
    await insertEverything();
    madeOlder();
    entryOnTrip().value = 1234.5;
  });

  it('brings a set up to date with the entries in it, keeps the older sheets, and puts the keyboard where it goes on', async () => {
    await press('Look for older sheets');
    await press('Bring this set up to date');
    await page.getByText('Look the new ones through').waitFor();
    expect(await said('done')).toBe(
      `Up to date, with your entries: ${names.map((name) => `"${name}"`).join(', ')}. The older ones are kept as ${names.map((name) => `"${name} (before)"`).join(', ')}. Look the new ones through; then the older ones may be deleted.`,
    );
    expect(entryOnTrip().value).toBe(1234.5);
    expect(double.sheet('Trip sheet (before)').cell(entry?.row ?? 0, entry?.column ?? 0).value).toBe(1234.5);
    expect(await page.evaluate('document.activeElement.textContent')).toBe('Bring up to date');
    expect(await page.getByRole('button', { name: 'Bring this set up to date' }).count()).toBe(0);
  });

  it('tells what stands in the way, and then has no button for it', async () => {
    double.sheet('Start').cell(30, 2).value = 42;
    await press('Look for older sheets');
    await page.getByRole('heading', { name: 'Fix these first' }).waitFor();
    expect(await page.getByText('"Start" holds what has no place').textContent()).toContain('B30 42');
    expect(await page.getByRole('button', { name: 'Bring this set up to date' }).count()).toBe(0);
    expect(double.document.sheets).toHaveLength(1 + sheetTemplates.length);
  });

  it('changes nothing when what was read out no longer holds, and takes what was typed last', async () => {
    await press('Look for older sheets');
    double.sheet('Start').cell(30, 2).value = 'a remark';
    await press('Bring this set up to date');
    expect(await said('refused')).toMatch(/^Not done\. The sheets were changed since you looked\./);
    expect(double.document.sheets).toHaveLength(1 + sheetTemplates.length);
    expect(await page.getByText('These texts of "Start"').textContent()).toContain('B30 "a remark"');
    entryOnTrip().value = 77.25;
    await press('Bring this set up to date');
    await page.getByText('Look the new ones through').waitFor();
    expect(entryOnTrip().value).toBe(77.25);
  });
});

describe('Functions', () => {
  it('is worked by the keyboard alone: finds a function and puts its example into the selected cell', async () => {
    select(double, 'Sheet1', 4, 2);
    await page.keyboard.press('Tab');
    // Past the view of an aircraft.
    for (let step = 0; step < 2; step += 1) await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Tab');
    await page.keyboard.type('pressure altitude');
    await page.keyboard.press('Tab');
    expect(await page.evaluate('document.activeElement.id')).toBe('function-PRESSURE_ALTITUDE');
    await page.keyboard.press('Enter');
    await page.waitForFunction("document.activeElement.textContent === 'PRESSURE_ALTITUDE'");
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    expect(await said('done')).toBe('The example is in B4.');
    expect(double.sheet('Sheet1').cell(4, 2).formula).toMatch(/^=PRESSURE_ALTITUDE\(.*;.*\)$/);
    await page.keyboard.press('Escape');
    await page.waitForFunction("document.activeElement.id === 'function-PRESSURE_ALTITUDE'");
  });
});

describe('Picture', () => {
  const picture = () => page.getByRole('img');

  beforeEach(async () => {
    await insertEverything();
    await showView(page, 'Picture');
  });

  it('draws the selected row as wide as the panel has room, says what and from where, and saves it', async () => {
    select(double, 'Descent and hold card', 55);
    await press('Draw the selected row');
    expect(await said('shown')).toBe('Drawn. Hold: Descent and hold card, row 54.');
    expect(await page.locator('figcaption').textContent()).toBe('Hold: Descent and hold card, row 54');
    expect(await picture().getAttribute('width')).toBe('268');
    expect(await picture().textContent()).toContain('entry teardrop');
    const [saved] = await Promise.all([page.waitForEvent('download'), page.getByRole('link', { name: 'Save the picture (SVG)' }).click()]);
    expect(saved.suggestedFilename()).toBe('hold-descent-and-hold-card-row-54.svg');
    expect(await readFile(await saved.path(), 'utf8')).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg".*<\/svg>$/s);
  });

  it('keeps the focus when it draws another row, and takes the picture away where there is none', async () => {
    select(double, 'Weight and balance', 46);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.locator('figcaption', { hasText: 'Weight and balance, row 46' }).waitFor();
    select(double, 'Currency log', 43);
    await page.keyboard.press('Enter');
    await page.locator('figcaption', { hasText: 'Currency log, row 43' }).waitFor();
    expect(await page.evaluate('document.activeElement.textContent')).toBe('Draw the selected row');
    select(double, 'Sheet1', 1);
    await page.keyboard.press('Enter');
    expect(await said('done')).toMatch(/^Nothing on "Sheet1" has a picture\. Select a row of/);
    expect(await picture().count()).toBe(0);
  });
});

describe('Check', () => {
  it('counts in words what was found and what was not, and goes to a cell', async () => {
    await insertEverything();
    double.sheet('Trip sheet').cell(tripRows.judged.first, 8).formula = '';
    Object.assign(double.sheet('Sheet1').cell(3, 2), { formula: '=1/0', value: '#DIV/0!' });
    await showView(page, 'Check');
    await press('Check this workbook');
    await said('shown');
    const counts = await page.locator('ul.counts > li').allTextContents();
    expect(counts).toContain('1 cell with an error');
    expect(counts).toContain('1 formula of a sheet of ours was changed');
    expect(counts).toContain('No function of ours depends on NOW or RAND.');
    expect(counts).toContain(`Judged on ${today()}, as_of of "Start".`);
    expect(await page.locator('.calls .sum').textContent()).toBe(`Total${callsOfOurs}`);
    await page.getByRole('button', { name: 'Go to B3 of Sheet1' }).click();
    expect(await said('done')).toBe('B3 is selected.');
    expect(double.document.active.name).toBe('Sheet1');
    expect(double.document.selected?.getA1Notation()).toBe('B3');
    await page.getByRole('button', { name: `Go to H${tripRows.judged.first} of Trip sheet` }).click();
    await page.getByText(`H${tripRows.judged.first} is selected.`).waitFor();
    expect(double.document.active.name).toBe('Trip sheet');
  });

  it('takes the report away when a later check is refused, and keeps it while another view is shown', async () => {
    await insertEverything();
    await showView(page, 'Check');
    await press('Check this workbook');
    await said('shown');
    await showView(page, 'Send');
    await showView(page, 'Check');
    expect(await page.locator('ul.counts').count()).toBe(1);
    Object.assign(double.sheet('Trip sheet').cell(tripRows.judged.first, 8), { value: 'Loading...' });
    await press('Check this workbook');
    expect(await said('refused')).toMatch(/^Not done\. /);
    expect(await page.locator('ul.counts').count()).toBe(0);
  });
});

describe('Send', () => {
  beforeEach(async () => {
    await insertEverything();
    await showView(page, 'Send');
  });

  it('saves the calendar file, tells what is not in it, and leaves a link to save it again', async () => {
    const [saved] = await Promise.all([page.waitForEvent('download'), press('Make the calendar file')]);
    expect(saved.suggestedFilename()).toBe('rampwright.ics');
    const events = new ical.Component(ical.parse(await readFile(await saved.path(), 'utf8')) as [string, unknown[], unknown[]]).getAllSubcomponents(
      'vevent',
    );
    const told = await said('shown');
    expect(told).toContain(`Calendar file rampwright.ics: ${events.length} dates, as of ${today()}.`);
    expect(told).toContain('Not in it: ');
    expect(await page.getByText(told).first().isVisible()).toBe(true);
    const [again] = await Promise.all([page.waitForEvent('download'), page.getByRole('link', { name: 'Save rampwright.ics' }).click()]);
    expect(again.suggestedFilename()).toBe('rampwright.ics');
  });

  it('says when there is nothing for a calendar', async () => {
    double.document.sheets = double.document.sheets.slice(0, 1);
    double.document.active = double.sheet('Sheet1');
    await press('Make the calendar file');
    expect(await said('done')).toMatch(/^No calendar file/);
    expect(await page.getByRole('link').count()).toBe(0);
  });

  it('copies the sheet in sight as values, and names the copy', async () => {
    select(double, 'Trip sheet', 1);
    await press('Copy this sheet as values');
    const told = await said('done');
    expect(told).toMatch(/^The copy is the sheet "Trip sheet \(values\)": \d+ formulas are values there\./);
    expect(double.sheet('Trip sheet (values)').cell(3, 2).formula).toBe('');
    expect(double.sheet('Trip sheet').cell(3, 2).formula).not.toBe('');
  });
});

describe('a failure of the platform', () => {
  const buttons = [
    ['Sheets', 'Insert every sheet'],
    ['Sheets', 'Look for older sheets'],
    ['Picture', 'Draw the selected row'],
    ['Check', 'Check this workbook'],
    ['Send', 'Make the calendar file'],
    ['Send', 'Copy this sheet as values'],
  ] as const;

  it('is told with what helps, in every view', async () => {
    await page.evaluate('window.onServer = () => Promise.reject(new Error("PERMISSION_DENIED"))');
    for (const [view, name] of buttons) {
      await showView(page, view);
      await press(name);
      const told = await said('refused');
      expect(told, name).toMatch(/^Not done\. /);
      expect(told, name).toContain('It said: PERMISSION_DENIED.');
      expect(told, name).toContain('several Google accounts');
      expect(await page.getByRole('button', { name }).getAttribute('aria-disabled'), name).toBe('false');
    }
  });
});
