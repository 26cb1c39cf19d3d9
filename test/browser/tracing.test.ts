// From a chart's picture to the table written: opened, its corners clicked, curves followed, points handed to the panel, and all of it on this machine.
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { FrameLocator, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sheetTemplates } from '../../sheets-templates';
import { hostPublished } from './publishedSupport';
import { launch, openPage, openWorkbook, shown, showSheet, takePicture, watch, type OpenWorkbook } from './support';

/** The chart that the test draws, invented: distances in feet by temperature, a curve for each of two altitudes. Turned by some degrees. */
const size = { width: 900, height: 700 };
const turned = (7 * Math.PI) / 180;
const distance = (altitude: number, temperature: number): number =>
  900 + 0.12 * altitude + (8 + altitude / 1000) * temperature + 0.1 * temperature ** 2;

/** Where a value is in the picture; the test's own arithmetic, which the page is given none of. */
function inPicture(temperature: number, feet: number): { x: number; y: number } {
  const [x, y] = [(temperature / 40 - 0.5) * 640, (0.5 - (feet - 500) / 2000) * 480];
  return { x: size.width / 2 + x * Math.cos(turned) - y * Math.sin(turned), y: size.height / 2 + x * Math.sin(turned) + y * Math.cos(turned) };
}

interface Stroke {
  readonly width: number;
  readonly colour: string;
  readonly places: readonly { readonly x: number; readonly y: number }[];
}

const strokes = (): Stroke[] => {
  const grid = (from: readonly [number, number], to: readonly [number, number]): Stroke => ({
    width: 1,
    colour: '#888',
    places: [inPicture(...from), inPicture(...to)],
  });
  const curve = (altitude: number): Stroke => ({
    width: 2.5,
    colour: '#111',
    places: Array.from({ length: 81 }, (_, index) => inPicture(index / 2, distance(altitude, index / 2))),
  });
  return [
    ...Array.from({ length: 9 }, (_, index) => grid([index * 5, 500], [index * 5, 2500])),
    ...Array.from({ length: 21 }, (_, index) => grid([0, 500 + index * 100], [40, 500 + index * 100])),
    curve(0),
    curve(4000),
  ];
};

/** Drawn on a canvas of the page itself. */
async function drawn(page: Page): Promise<Buffer> {
  const address = await page.evaluate<string>(
    `((strokes) => {
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [${size.width}, ${size.height}];
      const context = canvas.getContext('2d');
      context.fillStyle = '#fbfaf5';
      context.fillRect(0, 0, canvas.width, canvas.height);
      for (const { width, colour, places } of strokes) {
        context.lineWidth = width;
        context.strokeStyle = colour;
        context.beginPath();
        for (const { x, y } of places) context.lineTo(x + 0.5, y + 0.5);
        context.stroke();
      }
      return canvas.toDataURL('image/png');
    })(${JSON.stringify(strokes())})`,
  );
  return Buffer.from(address.split(',')[1] ?? '', 'base64');
}

describe('a chart traced', () => {
  let workbook: OpenWorkbook;
  let page: Page;
  let panel: FrameLocator;
  let dialog: Locator;
  let png: Buffer;
  const loaded: string[] = [];

  const place = (): Locator => dialog.getByRole('application');
  /** A press in the picture, which is shown whole. */
  async function press(x: number, y: number): Promise<void> {
    const box = await dialog.locator('.picture-place canvas').first().boundingBox();
    if (box === null) throw new Error('no picture');
    const scale = Math.min(box.width / size.width, box.height / size.height);
    await page.mouse.click(
      box.x + (box.width - size.width * scale) / 2 + (x + 0.5) * scale,
      box.y + (box.height - size.height * scale) / 2 + (y + 0.5) * scale,
    );
  }
  const pressValue = (temperature: number, feet: number): Promise<void> => {
    const { x, y } = inPicture(temperature, feet);
    return press(x, y);
  };
  const axis = (name: string): Locator => dialog.getByRole('group', { name });
  const corners = [
    [0, 500],
    [40, 500],
    [40, 2500],
    [0, 2500],
  ] as const;
  const goOn = (): Locator => dialog.getByRole('button', { name: /go on to the curves/ });
  const axe = async (): Promise<string[]> => {
    const source = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
    await page.evaluate(source);
    const { violations } = await page.evaluate<AxeResults>("window.axe.run('dialog', { resultTypes: ['violations'] })");
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`);
  };

  beforeAll(async () => {
    workbook = await openWorkbook(sheetTemplates);
    page = workbook.page;
    page.setDefaultTimeout(15_000);
    page.on('request', (request) => loaded.push(request.url()));
    png = await drawn(page);
    await page.getByRole('button', { name: 'Show panel' }).click();
    panel = page.frameLocator('#panel');
    await panel.getByRole('tab', { name: 'Aircraft' }).click();
    await panel.getByRole('button', { name: 'Begin' }).click();
    dialog = page.getByRole('dialog', { name: 'Trace a chart' });
  });
  afterAll(() => workbook.stop());

  it('opens a picture, and says plainly what it does not open', { timeout: 120_000 }, async () => {
    await panel.getByRole('button', { name: 'Trace a chart in a picture' }).click();
    await dialog.waitFor();
    const file = dialog.getByLabel(/^Picture of the chart/);
    await file.setInputFiles({ name: 'page.pdf', mimeType: 'application/pdf', buffer: Buffer.from('%PDF-1.7 nothing') });
    await dialog.getByText('Save the page as a picture first').waitFor();
    await file.setInputFiles({ name: 'cut.png', mimeType: 'image/png', buffer: png.subarray(0, 60) });
    await dialog.getByText('The picture could not be read').waitFor();
    await file.setInputFiles({ name: 'distance.png', mimeType: 'image/png', buffer: png });
    await dialog.getByText('"distance.png" is open').waitFor();
    expect(await axe()).toEqual([]);
  });

  it('takes the axes only when the points fit, and shows the grid as it was understood', { timeout: 120_000 }, async () => {
    for (const [name, role, unit, first, last, step, ends] of [
      ['Across the page', 'temperature', '\u00b0C', '0', '40', '5', ['left', 'right']],
      ['Up the page', 'over 50 ft', 'ft', '500', '2500', '100', ['lower', 'upper']],
    ] as const) {
      await axis(name).getByLabel('What it is').selectOption({ label: role });
      await axis(name).getByLabel('Unit').selectOption(unit);
      await axis(name).getByLabel(`At the ${ends[0]} end`).fill(first);
      await axis(name).getByLabel(`At the ${ends[1]} end`).fill(last);
      await axis(name).getByLabel('Smallest step').fill(step);
    }
    // The two lower corners confused: refused, and there is no way on.
    const [one, two, three, four] = corners;
    for (const [x, y] of [two, one, three, four]) await pressValue(x, y);
    await dialog.getByText('two of them were confused').waitFor();
    expect(await goOn().count()).toBe(0);
    for (const [index, [x, y]] of [one, two].entries()) {
      await dialog.getByRole('radio', { name: new RegExp(`^${index + 1}: lower`) }).check();
      await pressValue(x, y);
    }
    expect(await dialog.getByText('grows').count()).toBe(0);
    await dialog.getByLabel('One more, to check the others').check();
    await dialog.getByLabel('Value across (\u00b0C)').fill('20');
    await dialog.getByLabel('Value up (ft)').fill('1700');
    await pressValue(20, 1500);
    await dialog.getByText('The known points disagree').waitFor();
    await dialog.getByRole('button', { name: 'Remove point 5' }).click();
    await dialog.getByLabel('Value across (\u00b0C)').fill('20');
    await dialog.getByLabel('Value up (ft)').fill('1500');
    await pressValue(20, 1500);
    await dialog.getByText(/^The blue lines are the grid/).waitFor();
    expect(await axe()).toEqual([]);
    await takePicture(page, 'trace-axes');
    await goOn().click();
    await dialog.getByRole('group', { name: 'The curves' }).waitFor();
  });

  it('follows both curves from a click, and lets points be removed and set', { timeout: 120_000 }, async () => {
    await dialog.getByLabel('Each curve is one').selectOption({ label: 'pressure altitude' });
    await dialog.getByLabel('Unit of the curves').selectOption('ft');
    await dialog.getByLabel(/^A point at every/).fill('10');
    await dialog.getByLabel(/^Its pressure altitude/).fill('0');
    await pressValue(13, 750);
    await dialog.getByText('No dark line is near').waitFor();
    await pressValue(13, distance(0, 13));
    await dialog.getByText(/^Followed from/).waitFor();
    // Where it stopped at a grid line, a click behind it goes on with the same curve.
    await pressValue(31, distance(0, 31));
    await expect.poll(() => dialog.getByRole('row').count()).toBe(6);
    await dialog.getByRole('button', { name: 'Next curve' }).click();
    await dialog.getByLabel(/^Its pressure altitude/).fill('4000');
    await pressValue(27, distance(4000, 27));
    await expect.poll(() => dialog.getByRole('row').count()).toBe(6);
    const cells = await dialog.locator('table td:nth-child(2)').allTextContents();
    // Half a small step is 50 ft.
    for (const [index, text] of cells.entries()) expect(Math.abs(Number(text) - distance(4000, 10 * index))).toBeLessThan(25);
    await dialog.getByRole('button', { name: 'Remove the point at 20' }).click();
    await dialog.getByLabel('A click sets one point').check();
    await pressValue(20, distance(4000, 20));
    await dialog.getByText('by hand').waitFor();
    expect(await axe()).toEqual([]);
    await takePicture(page, 'trace-curves');
  });

  it('goes by keys alone: a point set, held, moved and removed', async () => {
    const rows = (): Promise<number> => dialog.getByRole('row').count();
    await place().focus();
    const before = await rows();
    for (let step = 0; step < 6; step += 1) await page.keyboard.press('Shift+ArrowDown');
    await page.keyboard.press('Enter');
    await expect.poll(rows).toBe(before + 1);
    await page.keyboard.press('Enter');
    await dialog.getByText('A point is held').waitFor();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Delete');
    await expect.poll(rows).toBe(before);
  });

  it('is kept when the window is closed, and hands its points to the panel, where they are written with an undo', { timeout: 240_000 }, async () => {
    await page.keyboard.press('Escape');
    await panel.getByText('What you traced is kept').first().waitFor();
    await panel.getByRole('button', { name: 'Trace a chart in a picture' }).click();
    await dialog.getByRole('button', { name: "Take the points into the table's text" }).click();
    await panel.getByText('The points of the chart stand below').first().waitFor();
    const text = await panel.getByLabel(/^The table, pasted/).inputValue();
    expect(text.split('\n')[0]).toBe('pressure altitude, ft\ttemperature, \u00b0C\tover 50 ft, ft');
    expect(text.split('\n')).toHaveLength(11);
    expect(await panel.getByLabel(/^Where the numbers come from/).inputValue()).toBe('curve');
    expect(await panel.getByLabel(/^A note for all of it/).inputValue()).toMatch(/^traced from the picture "distance\.png" \(SHA-256 [0-9a-f]{16}\)/);
    expect(await panel.getByRole('button', { name: 'Write into Manual tables' }).count()).toBe(0);
    await panel.getByLabel(/^The weight/).selectOption('none');
    await panel.getByLabel(/has \d+ rows there/).selectOption('replace them');
    await showSheet(page, 'Manual tables');
    const before = await shown(page, 'F23');
    await panel.getByRole('button', { name: 'Write into Manual tables' }).click();
    await panel.locator('.outcome.done').getByText('Written: Take-off distance').waitFor();
    expect(await shown(page, 'F22')).toBe('ft, curve');
    expect(await shown(page, 'F23')).not.toBe(before);
    await takePicture(page, 'trace-written');
    await panel.getByRole('button', { name: /^Undo: / }).click();
    await expect.poll(() => shown(page, 'F23')).toBe(before);
  });

  it('is saved as a file with its picture, and opened again from it; a file that was changed is refused', { timeout: 120_000 }, async () => {
    await panel.getByRole('button', { name: 'Trace a chart in a picture' }).click();
    const saving = page.waitForEvent('download');
    await dialog.getByRole('button', { name: 'Save the picture with all that was traced' }).click();
    const saved = await saving;
    expect(saved.suggestedFilename()).toBe('distance.chart.json');
    const text = await readFile(await saved.path(), 'utf8');
    const open = (content: string): Promise<void> =>
      dialog.locator('input[type=file]').setInputFiles({ name: 'distance.chart.json', mimeType: 'application/json', buffer: Buffer.from(content) });
    const before = await dialog.locator('table td').allTextContents();
    await dialog.getByRole('button', { name: 'Remove this curve' }).click();
    await open(text.replace('"sha256":"', '"sha256":"0'));
    await dialog.getByText('is not the one that was traced').waitFor();
    await open(text.replace('"figure":', '"figur":'));
    await dialog.getByText('This chart file is damaged').waitFor();
    await open('{}');
    await dialog.getByText('This file is no chart saved here.').waitFor();
    await open(text);
    await dialog.getByText('"distance.png" is open').waitFor();
    expect(await dialog.locator('table td').allTextContents()).toEqual(before);
  });

  it('fits a phone, and the night', { timeout: 120_000 }, async () => {
    await page.emulateMedia({ colorScheme: 'dark' });
    await page.waitForTimeout(300);
    await takePicture(page, 'trace-night');
    expect(await axe()).toEqual([]);
    await page.setViewportSize({ width: 390, height: 800 });
    await page.waitForTimeout(300);
    await takePicture(page, 'trace-390');
    expect(await axe()).toEqual([]);
    const sizes = await page.evaluate<number[]>(
      "[...document.querySelectorAll('.tracing :is(button, select, input:not([type=radio], [type=checkbox], [type=file]), label.choice)')].map((one) => one.getBoundingClientRect().height)",
    );
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(44);
    expect(await page.evaluate<boolean>("document.querySelector('.tracing').scrollWidth <= document.querySelector('.tracing').clientWidth")).toBe(
      true,
    );
    await page.emulateMedia({ colorScheme: 'light' });
    await page.setViewportSize({ width: 1280, height: 800 });
  });

  it('asked for nothing beside the files of the page, and those of the window only when it was opened', () => {
    expect(workbook.watched.foreign).toEqual([]);
    expect(loaded.filter((address) => /^https?:/.test(address) && !address.startsWith(workbook.address.replace(/\?.*$/, '')))).toEqual([]);
    expect(loaded.some((address) => /traceChart[^/]*\.js/.test(address))).toBe(true);
  });
});

it('is traced in the page for any web host too, under its policy, and nothing is asked of that host but files', { timeout: 240_000 }, async () => {
  const host = await hostPublished();
  const browser = await launch();
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    const watched = watch(page);
    await openPage(page, host.address);
    const png = await drawn(page);
    await page.getByRole('button', { name: 'Show panel' }).click();
    const panel = page.frameLocator('#panel');
    await panel.getByRole('tab', { name: 'Aircraft' }).click();
    await panel.getByRole('button', { name: 'Begin' }).click();
    await panel.getByRole('button', { name: 'Trace a chart in a picture' }).click();
    const dialog = page.getByRole('dialog', { name: 'Trace a chart' });
    await dialog.getByLabel(/^Picture of the chart/).setInputFiles({ name: 'distance.png', mimeType: 'image/png', buffer: png });
    await dialog.getByText('"distance.png" is open').waitFor();
    await dialog.getByRole('application').waitFor();
    expect(watched).toEqual({ foreign: [], errors: [] });
    expect(host.asked.filter((one) => !/^GET \/club\/[^?]*$/.test(one))).toEqual([]);
  } finally {
    await browser.close();
    await host.stop();
  }
});
