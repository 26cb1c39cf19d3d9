// The sheet in sight on paper: every cell that shows something, as it looks and with its verdict's tint, on as many pages as it says.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sheetTemplates } from '../../sheets-templates';
import { area } from '../../sheets-templates/build';
import { tripRows } from '../../sheets-templates/trip/rows';
import { clickCell, openWorkbook, shown, showSheet, takePicture, type OpenWorkbook } from './support';

const { judged } = tripRows;
const judgedRows = Array.from({ length: judged.last - judged.first + 1 }, (_, index) => judged.first + index);
/** As long as the reasons of a bad day are: of wind and climb, of slips and lists, of a thunderstorm in the forecast. */
const [reason, longReason, weatherReason] = [
  'crosswind 27 kt on departure, 25 kt at the destination, gusts and variable directions taken in; your limit 12 kt',
  'looks like a slip of typing: groundspeed of 30 kt, usually 40 to 350 kt; groundspeed to the alternate of 30 kt, usually 40 to 350 kt; climb gradient of 1500 ft/NM, usually 50 to 700 ft/NM',
  'TAF: ceiling 100 ft, below your minimum of 1,500 ft; TAF: visibility 400 m, below your minimum of 8,047 m; TAF: thunderstorm with heavy rain (+TSRA); TAF: gusts 23 kt above the wind, more than your maximum of 10 kt; TAF: wind 55 kt, gusts included, more than your maximum of 25 kt; TAF: crosswind 50.6 kt, more than your maximum of 12 kt; TAF: tailwind 21.7 kt, more than your maximum of 5 kt; cumulonimbus (CB); fog (FG)',
];
const reasonOf = (item: string): string =>
  item.startsWith('Weather') ? weatherReason : ['Entries', 'Typed weather', 'Pilot', 'Aircraft'].includes(item) ? longReason : reason;

describe('printing', () => {
  let workbook: OpenWorkbook;
  let page: Page;

  beforeAll(async () => {
    workbook = await openWorkbook(sheetTemplates);
    page = workbook.page;
  });
  afterAll(() => workbook.stop());

  const pagesOf = async (): Promise<number> =>
    ((await page.pdf({ preferCSSPageSize: true })).toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;
  /** A real printer leaves the grid its room; the emulation takes it, and pictures of the grid wait until it is there again. */
  const backOnScreen = async (): Promise<void> => {
    await page.emulateMedia({ media: 'screen' });
    await expect.poll(() => page.evaluate<number>("document.querySelector('canvas').getBoundingClientRect().width")).toBeGreaterThan(100);
    await page.waitForTimeout(300);
  };
  /** What the page hands to the printer, left standing. */
  const onPaper = <Result>(code: string): Promise<Result> =>
    page.evaluate<Result>(
      `(() => { window.dispatchEvent(new Event('beforeprint')); const paper = document.getElementById('paper'); const answer = (${code}); return answer; })()`,
    );
  const cells = (): Promise<readonly string[]> =>
    onPaper("[...paper.querySelectorAll('td')].map((cell) => cell.textContent.trim()).filter((text) => text !== '')");

  it('has the trip sheet on one page, with every word of it and the caution', async () => {
    await showSheet(page, 'Trip sheet');
    const words = await cells();
    const places = [tripRows.pilot, tripRows.field, tripRows.groundspeed, tripRows.reserve].map((row) => `B${row}`);
    const told = [...judgedRows.flatMap((row) => [`G${row}`, `H${row}`, `I${row}`]), `H${tripRows.startDecided}`, `H${tripRows.holdEntry}`];
    const reports = [`A${tripRows.metars.first}`, `A${tripRows.tafs.last}`];
    for (const cell of ['A1', 'B3', ...places, ...told, ...reports]) expect(words, cell).toContain(String(await shown(page, cell)));
    for (const row of [tripRows.fuelRequired, tripRows.startDown])
      expect(words).toContain(`${String(await shown(page, `H${row}`))} ${String(await shown(page, `I${row}`))}`);
    expect(await onPaper<string>("paper.querySelector('p').textContent")).toMatch(/^Trip sheet, printed on \d{4}-\d\d-\d\d\. Planning aid only: /);
    const tints = await onPaper<readonly string[]>(
      "[...paper.querySelectorAll('td')].filter((cell) => cell.textContent === 'OK').map((cell) => cell.style.background)",
    );
    expect(new Set(tints)).toEqual(new Set(['rgb(191, 230, 216)']));
    expect(await pagesOf()).toBe(1);
  });

  /** What does not lie wholly in its cell and on the page, letters smaller than 8 points, and the pages that it takes. */
  async function tripPrinted(
    name: string,
  ): Promise<{ readonly cut: readonly string[]; readonly small: readonly string[]; readonly pages: number; readonly fits: boolean }> {
    await page.emulateMedia({ media: 'print' });
    const found = await onPaper<{ readonly cut: readonly string[]; readonly small: readonly string[]; readonly fits: boolean }>(`(() => {
      paper.style.width = '725px';
      const room = paper.getBoundingClientRect();
      const written = [...paper.querySelectorAll('td, div, p')].filter((one) => [...one.childNodes].some((node) => node.nodeType === 3 && node.data.trim() !== ''));
      const out = (one) => {
        const range = document.createRange();
        range.selectNodeContents(one);
        const [text, box] = [range.getBoundingClientRect(), one.getBoundingClientRect()];
        return text.right > box.right + 1 || text.left < box.left - 1 || text.bottom > box.bottom + 1 || box.right > room.right + 1;
      };
      const answer = {
        // The narrower and the shorter of A4 and letter paper between margins of 8 mm.
        fits: paper.scrollHeight <= 995 && paper.scrollWidth <= 733,
        cut: written.filter(out).map((one) => one.textContent),
        small: written.filter((one) => parseFloat(getComputedStyle(one).fontSize) < 8 * 96 / 72 - 0.01).map((one) => one.textContent),
      };
      paper.style.width = '';
      return answer;
    })()`);
    await page.setViewportSize({ width: 725, height: 985 });
    await takePicture(page, name);
    await page.setViewportSize({ width: 1280, height: 800 });
    await backOnScreen();
    return { ...found, pages: await pagesOf() };
  }

  it('has the demo trip on one page in letters of 8 points or more, nothing cut', async () => {
    await showSheet(page, 'Trip sheet');
    expect(await tripPrinted('printed-trip')).toEqual({ cut: [], small: [], pages: 1, fits: true });
  });

  it('has what the user wrote into rows put in among ours', async () => {
    const row = tripRows.reserve;
    await page.evaluate(`window.rampwright.workbook.getActiveSheet().insertRowsBefore(${row - 1}, 1)`);
    await page.evaluate(`window.rampwright.workbook.getActiveSheet().getRange('A${row}').setValue('keys are with Ada')`);
    expect(await cells()).toContain('keys are with Ada');
    await page.evaluate(`window.rampwright.workbook.getActiveSheet().deleteRows(${row - 1}, 1)`);
  });

  it('has the drawings of a sheet, from the numbers of now', async () => {
    await showSheet(page, 'Descent and hold card');
    await page.evaluate("window.rampwright.workbook.getActiveSheet().getRange('A13').setValue('Elsewhere')");
    const described = (): Promise<string> => onPaper<string>("[...paper.querySelectorAll('svg desc')].map((one) => one.textContent).join(' ')");
    await expect.poll(described).toContain('Elsewhere at 7,000 feet');
    expect(await described()).toContain('Holding pattern with left turns');
    await page.emulateMedia({ media: 'print' });
    await takePicture(page, 'printed');
    await backOnScreen();
  });

  it.each([
    ['Load list', 'loadlist-on-paper', ['overdue', 'panel, right', '2611', '[   ]', '__________', 'signature']],
    ['Statement', 'statement-on-paper', ['hangar', 'balance', '1,639.13']],
  ] as const)('has the %s on one page', async (sheet, picture, words) => {
    await showSheet(page, sheet);
    await page.waitForTimeout(700);
    expect(await pagesOf()).toBe(1);
    const printed = await cells();
    for (const word of words) expect(printed, word).toContain(word);
    if (sheet === 'Statement') expect(printed).not.toContain('Bo');
    await page.emulateMedia({ media: 'print' });
    await takePicture(page, picture);
    await backOnScreen();
  });

  it('leaves nothing of it on the page, and enters what is being typed before it prints', async () => {
    await page.evaluate(
      "window.print = () => { window.dispatchEvent(new Event('beforeprint')); window.printed = document.getElementById('paper').textContent; window.dispatchEvent(new Event('afterprint')); }",
    );
    await showSheet(page, 'Trip sheet');
    // The printer's small page has scrolled it.
    await page.evaluate('window.rampwright.workbook.getActiveSheet().scrollToCell(0, 0)');
    await clickCell(page, `B${tripRows.pilot}`);
    await page.keyboard.type('Ada 171');
    await page.keyboard.press('Control+p');
    await expect.poll(() => page.evaluate('window.printed')).toContain('Ada 171');
    expect(await page.evaluate("document.getElementById('paper').innerHTML")).toBe('');
    await page.getByRole('button', { name: 'Print' }).click();
    expect(workbook.watched).toEqual({ foreign: [], errors: [] });
  });

  it('lets another sheet come while the page is on paper, without an error', async () => {
    await page.emulateMedia({ media: 'print' });
    await expect.poll(() => page.evaluate<number>("document.querySelector('canvas').getBoundingClientRect().width")).toBe(0);
    await showSheet(page, 'Statement');
    await page.evaluate("window.rampwright.workbook.getActiveSheet().getRange('B5').activate()");
    await page.waitForTimeout(300);
    await backOnScreen();
    expect(workbook.watched).toEqual({ foreign: [], errors: [] });
  });

  it.each(['Data ledger', 'Load list', 'Dues', 'Statement', 'Currency log', 'Weight and balance', 'Fields'])(
    'cuts no text of %s off, neither at the next cell nor at the edge of the page',
    async (name) => {
      await showSheet(page, name);
      if (name === 'Data ledger')
        await page.evaluate(
          "window.rampwright.workbook.getSheetByName('Data ledger').getRange('C11').setValue('navigation, both boxes of the panel and the standby box')",
        );
      await page.emulateMedia({ media: 'print' });
      const cut = await onPaper<readonly string[]>(`[...paper.querySelectorAll('td')].flatMap((cell) => {
      const range = document.createRange();
      range.selectNodeContents(cell);
      const [text, box] = [range.getBoundingClientRect(), cell.getBoundingClientRect()];
      const table = paper.querySelector('table').getBoundingClientRect();
      const out = text.right > box.right + 1 || text.left < box.left - 1 || text.bottom > box.bottom + 1 || box.right > table.right + 1;
      return cell.textContent.trim() !== '' && out ? [cell.textContent] : [];
    })`);
      // Pixels between the margins of the shorter of A4 and letter paper.
      const room = (await onPaper<string>("paper.querySelector('style').textContent")).includes('landscape') ? 970 : 700;
      const wide = await onPaper<number>("paper.querySelector('table').getBoundingClientRect().width");
      await takePicture(page, `printed-${name.toLowerCase().replace(/ /g, '-')}`);
      await backOnScreen();
      expect(cut).toEqual([]);
      // Borders are drawn in whole pixels.
      expect(wide).toBeLessThanOrEqual(room + 1);
    },
  );

  it('has a trip on one page on which every item is NO, with long reasons and every entry filled', async () => {
    await showSheet(page, 'Trip sheet');
    const items = await Promise.all(judgedRows.map((row) => shown(page, `G${row}`)));
    const reasons = items.map((item) => ['NO', reasonOf(String(item))]);
    const weather = [
      [1009, 1007, 1008],
      [18, 21, 20],
      [220, 90, 120],
      [12, 8, 6],
      [20, 18, 16],
    ];
    const taf = 'TAF ZZXA 251100Z 2512/2612 21012KT 9999 FEW040 BECMG 2516/2518 24020G32KT 6000 -RA BKN012 TEMPO 2518/2524 3000 TSRA BKN008CB';
    const put = (range: string, values: unknown): Promise<unknown> =>
      page.evaluate(`window.rampwright.workbook.getActiveSheet().getRange('${range}').setValues(${JSON.stringify(values)})`);
    await put(area(judged.first, 8, judged.last, 9), reasons);
    await put(area(tripRows.altimeter, 2, tripRows.gust, 4), weather);
    await put(
      area(tripRows.landingsRecent, 2, tripRows.data, 2),
      Array.from({ length: 5 }, () => [46400]),
    );
    await put(
      area(tripRows.tafs.first, 1, tripRows.tafs.last, 1),
      Array.from({ length: 3 }, () => [taf]),
    );
    await page.getByRole('button', { name: 'Overwrite them' }).click();
    await expect.poll(() => shown(page, `H${judged.first}`)).toBe('NO');
    await page.waitForTimeout(500);
    await takePicture(page, 'every-item-no');
    expect(await tripPrinted('printed-trip-no')).toEqual({ cut: [], small: [], pages: 1, fits: true });
  });

  it('shows every reason whole on the screen when every item is NO', async () => {
    const cut = await page.evaluate<readonly number[]>(`(() => {
      const sheet = window.rampwright.workbook.getActiveSheet();
      const skeleton = sheet.getSkeleton();
      return ${JSON.stringify(judgedRows)}.filter((row) => skeleton.calculateAutoHeightForCell(row - 1, 8) > sheet.getRowHeight(row - 1));
    })()`);
    expect(cut).toEqual([]);
    const right = await page.evaluate<number>(
      "(() => { const box = window.rampwright.workbook.getActiveSheet().getRange('I7').getCellRect(); return box.x + box.width; })()",
    );
    // The grid's own bar for scrolling is 10 pixels wide.
    expect(right).toBeLessThanOrEqual(1270);
  });
});
