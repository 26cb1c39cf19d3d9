// The built panel of the Google host in Chromium, at its 300 pixels, before whatever answers its questions.
import type { Browser, Page } from 'playwright-core';

/** What the platform puts into the page: each request runs on the server, plain data both ways. */
const scriptRun = `window.google = { script: { run: (() => {
  const runner = (ok, failed) => ({
    withSuccessHandler: (handler) => runner(handler, failed),
    withFailureHandler: (handler) => runner(ok, handler),
    ...Object.fromEntries(['answerPanel', 'attendRun'].map((name) => [
      name,
      (...given) => void window.onServer(name, JSON.stringify(given)).then((text) => ok(JSON.parse(text)), (error) => failed(error)),
    ])),
  });
  return runner();
})() } };`;

export interface OpenedPanel {
  readonly page: Page;
  /** Errors of the page, and requests that it sent. */
  readonly troubles: string[];
}

/** Where the page is said to come from: the platform serves it from an address of its own. */
const address = 'https://panel.invalid/';

export type Answering = (question: string, given: unknown, run: string | null) => unknown;

interface PanelOptions {
  readonly dark?: boolean;
  /** Answers who asks after a run. */
  readonly attend?: (given: unknown) => unknown;
}

export async function openPanel(browser: Browser, html: string, answer: Answering, options: PanelOptions = {}): Promise<OpenedPanel> {
  const { dark = false, attend = () => ({ progress: null }) } = options;
  const page = await browser.newPage({ viewport: { width: 300, height: 700 }, colorScheme: dark ? 'dark' : 'light' });
  const troubles: string[] = [];
  page.on('pageerror', (error) => troubles.push(error.message));
  page.on('console', (message) => message.type() === 'error' && troubles.push(message.text()));
  page.on(
    'request',
    (request) => request.url() !== address && !request.url().startsWith('blob:') && troubles.push(`asked the network for ${request.url()}`),
  );
  await page.exposeFunction('onServer', async (name: string, text: string) => {
    const given = JSON.parse(text) as [string, unknown, string | null];
    return JSON.stringify(await (name === 'answerPanel' ? answer(...given) : attend(given[0])));
  });
  await page.route(address, (route) =>
    route.fulfill({ contentType: 'text/html; charset=utf-8', body: html.replace('<head>', () => `<head><script>${scriptRun}</script>`) }),
  );
  await page.goto(address);
  return { page, troubles };
}

export const viewOf = (page: Page, tab: string) => page.getByRole('tabpanel', { name: tab });

export const scrolledWidth = (page: Page): Promise<number> => page.evaluate('document.documentElement.scrollWidth');

export async function showView(page: Page, tab: string): Promise<void> {
  await page.getByRole('tab', { name: tab }).click();
}
