// The pocket view for who listens to it, works it by keys, or enlarges it: every entry and answer has a name and a value in the accessibility tree of
// Chromium, the keyboard goes down the page, and at 200 per cent nothing is lost and nothing scrolls sideways.
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hostPublished, type PublishedHost } from './publishedSupport';
import { launch, onDemoDay, takePicture, until, watch, type Watched } from './support';

interface Spoken {
  readonly nodeId: string;
  readonly childIds?: readonly string[];
  readonly ignored: boolean;
  readonly role?: { readonly value: string };
  readonly name?: { readonly value: string };
  readonly value?: { readonly value: unknown };
  readonly properties?: readonly { readonly name: string; readonly value: { readonly value?: unknown } }[];
}

const entryRoles: readonly string[] = ['textbox', 'combobox', 'Date'];

describe('the pocket view, read out and enlarged', () => {
  let host: PublishedHost;
  let browser: Browser;
  let context: BrowserContext;
  let page: Page;
  let watched: Watched;

  beforeAll(async () => {
    host = await hostPublished();
    browser = await launch();
    // What a window of 1280 by 800 has at 200 per cent.
    context = await browser.newContext({ viewport: { width: 640, height: 400 }, deviceScaleFactor: 2 });
    page = await context.newPage();
    await page.addInitScript(onDemoDay);
    watched = watch(page);
    await page.goto(host.address);
    await until(page, "document.querySelector('#pocket .verdict .word')?.textContent === 'OK'");
    await page.selectOption('#pocket header select', { label: 'Trip sheet' });
    await until(page, "window.rampwright.workbook.getActiveSheet().getSheetName() === 'Trip sheet'");
    await page.waitForTimeout(700);
    await page.evaluate("document.querySelectorAll('#pocket main details').forEach((one) => { one.open = true; })");
    await page.waitForTimeout(500);
  });
  afterAll(async () => {
    await browser.close();
    await host.stop();
  });

  /** In the order in which it is read out. */
  async function spoken(): Promise<readonly Spoken[]> {
    const devTools = await context.newCDPSession(page);
    const { nodes } = (await devTools.send('Accessibility.getFullAXTree')) as unknown as { readonly nodes: readonly Spoken[] };
    await devTools.detach();
    const byId = new Map(nodes.map((one) => [one.nodeId, one]));
    const inOrder = (one: Spoken): Spoken[] => [one, ...(one.childIds ?? []).flatMap((id) => byId.get(id) ?? []).flatMap(inOrder)];
    return nodes
      .slice(0, 1)
      .flatMap(inOrder)
      .filter(({ ignored }) => !ignored);
  }
  const roleOf = (one: Spoken): string => one.role?.value ?? '';
  const nameOf = (one: Spoken): string => one.name?.value ?? '';

  it('has a name and a value for each entry of the trip, the same as the page shows', async () => {
    const tree = await spoken();
    const entries = tree.filter((one) => entryRoles.includes(roleOf(one)));
    const onPage = await page.evaluate<readonly (readonly [string, string])[]>(
      `[...document.querySelectorAll('#pocket input, #pocket select, #pocket textarea')].map((one) => [
        one.getAttribute('aria-label'), one.tagName === 'SELECT' ? one.selectedOptions[0].textContent : one.value])`,
    );
    expect(onPage.length).toBeGreaterThan(40);
    expect(onPage.filter(([name]) => !name)).toEqual([]);
    const heard = new Map(entries.map((one) => [nameOf(one), String(one.value?.value ?? '')]));
    // No two entries have one name, or nobody could tell which is meant.
    expect(new Set(onPage.map(([name]) => name)).size).toBe(onPage.length);
    // A day is read out in the order of the device's country.
    const isDay = (text: string): boolean => /^\d{4}-\d\d-\d\d$/.test(text);
    const missing = onPage.filter(([name, value]) => !heard.has(name) || (value !== '' && !isDay(value) && heard.get(name) !== value));
    expect(missing).toEqual([]);
    for (const [name, value] of onPage.filter((one) => isDay(one[1])))
      expect(heard.get(name)?.match(/\d+/g)?.sort(), name).toEqual(value.split('-').sort());
  });

  it('reads out each answer, its label before it, and the verdict as a state that is told', async () => {
    const all = await spoken();
    const texts = all.filter((one) => roleOf(one) === 'StaticText').map(nameOf);
    const answers = await page.evaluate<readonly (readonly [string, string])[]>(
      `[...document.querySelectorAll('#pocket main .line')].flatMap((line) => [...line.querySelectorAll('.answer, b.word')].map((one) => [
        line.querySelector('.label').firstChild?.textContent ?? '', one.textContent]))`,
    );
    expect(answers.length).toBeGreaterThan(25);
    const unlabelled = answers.filter(([label]) => label === '');
    expect(unlabelled).toEqual([]);
    let [from, before] = [texts.findIndex((text) => text === 'Judged'), ''];
    const next = (wanted: string): number => texts.findIndex((text, index) => index > from && text.trim() === wanted.trim());
    for (const [label, answer] of answers) {
      // Of several answers beside one another the label is read out once.
      if (label !== before) from = next(label);
      expect(from, label).toBeGreaterThanOrEqual(0);
      from = next(answer);
      expect(from, `${label}: ${answer}`).toBeGreaterThanOrEqual(0);
      before = label;
    }
    expect(all.some((one) => roleOf(one) === 'status')).toBe(true);
    // Sections are buttons that say whether they are open.
    const folded = all.filter((one) => /Disclosure/i.test(roleOf(one)));
    expect(folded.length).toBeGreaterThan(8);
    expect(folded.every((one) => nameOf(one) !== '' && one.properties?.some(({ name }) => name === 'expanded'))).toBe(true);
  });

  it('is gone through by the Tab key in the order of the page, each place in sight and not below the verdict', async () => {
    await page.evaluate(
      "document.activeElement?.blur(); window.scrollTo(0, 0); document.querySelectorAll('#pocket main details').forEach((one) => { one.open = true; })",
    );
    const wanted = await page.evaluate<number>(
      `{ const all = [...document.querySelectorAll('#pocket button, #pocket input, #pocket select, #pocket textarea, #pocket summary')]
           .filter((one) => one.getClientRects().length > 0);
         all.forEach((one, index) => { one.dataset.order = index; });
         all.length; }`,
    );
    const passed: number[] = [];
    const hidden: string[] = [];
    // A picker of days has three parts and a button.
    for (let step = 0; step < wanted * 4 && passed[passed.length - 1] !== wanted - 1; step += 1) {
      await page.keyboard.press('Tab');
      const at = await page.evaluate<{ readonly order: number; readonly inSight: boolean; readonly html: string } | null>(
        `(() => { const one = document.activeElement; if (!one.dataset.order) return null;
          const box = one.getBoundingClientRect(); const head = document.querySelector('#pocket header').getBoundingClientRect();
          const inHead = one.closest('header') !== null;
          return { order: Number(one.dataset.order), html: one.outerHTML.slice(0, 90),
            inSight: inHead || (box.bottom > head.bottom && box.top < innerHeight && box.top >= Math.min(head.bottom, innerHeight - box.height) - 1) }; })()`,
      );
      if (at === null || at.order === passed[passed.length - 1]) continue;
      passed.push(at.order);
      if (!at.inSight) hidden.push(at.html);
    }
    expect(passed).toEqual(Array.from({ length: wanted }, (_, index) => index));
    expect(hidden).toEqual([]);
  });

  it('loses nothing at 200 per cent, and scrolls one way only', async () => {
    await page.evaluate('window.scrollTo(0, 0)');
    expect(await page.evaluate('[document.documentElement.scrollWidth, innerWidth]')).toEqual([640, 640]);
    const cut = await page.evaluate<readonly string[]>(
      `[...document.querySelectorAll('#pocket main *, #pocket header *')].filter((one) => {
        const box = one.getBoundingClientRect();
        if (box.width === 0 || one.closest('svg') !== null || one.matches('option')) return false;
        const isText = [...one.childNodes].some((node) => node.nodeType === 3 && node.data.trim() !== '');
        // The first reason is cut after two lines on purpose: opened, the verdict has it whole.
        const clipped = isText && !one.matches('.reason, select, textarea') && (one.scrollWidth > one.clientWidth + 1) && getComputedStyle(one).display !== 'inline';
        return clipped || box.right > innerWidth + 1 || box.left < -1;
      }).map((one) => one.outerHTML.slice(0, 120))`,
    );
    expect(cut).toEqual([]);
    const [header, height] = await page.evaluate<[number, number]>(
      "[document.querySelector('#pocket header').getBoundingClientRect().height, innerHeight]",
    );
    console.log(`the head of the pocket view takes ${Math.round(header)} of ${height} pixels at 200 per cent`);
    await page.evaluate("document.querySelector('#pocket .verdict').open = false");
    await takePicture(page, 'pocket-zoomed');
    await page.evaluate("document.querySelector('#pocket [aria-label=\"reserve required, minutes\"]').scrollIntoView({ block: 'center' })");
    await takePicture(page, 'pocket-zoomed-entries');
  });

  it('reported no error', () => {
    expect(watched.errors).toEqual([]);
    expect(watched.foreign).toEqual([]);
  });
});
