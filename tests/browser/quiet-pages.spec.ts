import { expect, test, type Browser, type Page, type ViewportSize } from '@playwright/test';
import { LESSONS, NOWHERE, PAGES, PHONE, WIDE } from './site.ts';

for (const [name, viewport] of Object.entries({ phone: PHONE, 'wide screen': WIDE })) {
  test(`on a ${name} every page opens with one heading, without a word to the console, a request elsewhere or a shift`, async ({
    browser,
  }) => {
    test.setTimeout(300_000);
    const faults: string[] = [];
    for (const path of PAGES) {
      const { heard, shifts, headings } = await firstVisit(browser, viewport, path);
      // 0.1 is what Core Web Vitals call good.
      const felt = shifts.filter(({ size }) => size > 0.1);
      const found = [...heard, ...felt.map(({ words, size }) => `${words} by ${size.toFixed(3)}`)];
      if (headings !== 1) found.push(`has ${headings} headings of the first level`);
      for (const fault of found) {
        // The browser itself reports the missing page that was asked for.
        if (path !== NOWHERE || !fault.includes('404')) faults.push(`${path} ${fault}`);
      }
    }
    expect(faults).toEqual([]);
  });

  for (const { slug, path, steps } of LESSONS) {
    test(`on a ${name} the steps of ${slug} open by their links without a shift that could be felt`, async ({
      browser,
    }) => {
      // On a wide screen nothing is docked: every second step will do.
      const looked = [...steps.keys()].filter((number) => viewport === PHONE || number % 2 === 1);
      for (const number of looked) {
        const address = `${path}#step-${number + 1}`;
        const { heard, shifts } = await firstVisit(browser, viewport, address);
        expect(heard, address).toEqual([]);
        // Half of what Core Web Vitals call good.
        expect(
          shifts.filter(({ size }) => size > 0.05),
          address,
        ).toEqual([]);
      }
    });
  }
}

interface Shift {
  readonly size: number;
  readonly words: string;
}

/** Opens a page as somebody who has never been here, and says what was to be heard and seen of it. */
async function firstVisit(browser: Browser, viewport: ViewportSize, path: string) {
  const context = await browser.newContext({ viewport });
  const page = await context.newPage();
  const heard = listenTo(page);
  await page.addInitScript(observeShifts);
  // Until nothing more comes: what comes late is what shifts.
  await page.goto(path, { waitUntil: 'networkidle' });
  const shifts = await page.evaluate(() => (window as unknown as { shifts: Shift[] }).shifts);
  const headings = await page.getByRole('heading', { level: 1 }).count();
  await context.close();
  return { heard, shifts, headings };
}

/** What goes to the console, and which requests go elsewhere. A breach of the content policy goes to the console too. */
function listenTo(page: Page): string[] {
  const heard: string[] = [];
  const home = new URL(test.info().project.use.baseURL ?? '').host;
  page.on('console', (message) => heard.push(`${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => heard.push(`error: ${error.message}`));
  page.on('request', (request) => {
    const { protocol, host } = new URL(request.url());
    if (protocol !== 'data:' && host !== home) heard.push(`asks ${request.url()}`);
  });
  return heard;
}

/** Runs in the page, before anything else does. */
function observeShifts(): void {
  const shifts: Shift[] = [];
  Object.assign(window, { shifts });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as LayoutShift[]) {
      if (entry.hadRecentInput) continue;
      const moved = entry.sources.map(({ node }) => (node?.textContent ?? '').trim().slice(0, 40));
      shifts.push({ size: entry.value, words: `shifts ${moved.join(' | ')}` });
    }
  }).observe({ type: 'layout-shift', buffered: true });
}

/** As the browser reports a shift; TypeScript's own library does not have it. */
interface LayoutShift extends PerformanceEntry {
  readonly value: number;
  readonly hadRecentInput: boolean;
  readonly sources: readonly { readonly node: Node | null }[];
}
