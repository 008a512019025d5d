import { expect, test, type Page } from '@playwright/test';
import { LESSONS, PHONE, WIDE } from './site.ts';
import { step, visit } from './visit.ts';

test.use({ reducedMotion: 'reduce' });

for (const lesson of LESSONS) {
  test.describe('on a phone', () => {
    test.use({ viewport: PHONE });

    test(`${lesson.slug}: whatever gets the focus shows it, in the window and clear of the docked figure`, async ({
      page,
    }) => {
      test.slow();
      await visit(page, lesson.path);
      for (let number = 1; number <= lesson.steps.length; number++) {
        if (number > 1) await goOn(page, number);
        // A figure that is fetched docks a moment after the heading was reached, which then makes room.
        await expect
          .poll(() => focusFault(page), `the heading of step ${number}`)
          .toBe(number > 1 ? '' : undefined);
        await tabThrough(page, 'Tab');
        // Back from the end, what comes next lies above and would scroll in under the figure.
        if (number === 2) await tabThrough(page, 'Shift+Tab');
      }
    });
  });
}

for (const path of [
  '/',
  '/lessons',
  '/practice',
  '/glossary',
  '/practice/spacer-scrub',
  '/lessons/at-the-road',
]) {
  test.describe('on a wide screen', () => {
    test.use({ viewport: WIDE });

    test(`${path}: whatever gets the focus shows it, in the window`, async ({ page }) => {
      await visit(page, path);
      await tabThrough(page, 'Tab');
    });
  });
}

test('a reader who has scrolled on stays there when the docked figure gets higher or lower', async ({
  page,
}) => {
  await page.setViewportSize(PHONE);
  await visit(page, '/lessons/at-the-road');
  await goOn(page, 2);
  await expect.poll(() => focusFault(page)).toBe('');
  await page.mouse.move(PHONE.width / 2, PHONE.height - 60);
  const start = await page.evaluate(() => scrollY);
  await page.mouse.wheel(0, 200);
  const place = (): Promise<number> => page.evaluate(() => scrollY);
  await expect.poll(place).toBeGreaterThan(start);
  const figure = page.locator('aside.figure');
  const height = (): Promise<number> => figure.evaluate((e) => e.getBoundingClientRect().height);
  const before = await height();
  await figure.evaluate((e) => (e.style.paddingBottom = '80px'));
  await expect.poll(height).toBeGreaterThan(before + 60);
  await twoFrames(page);
  await expect(step(page, 2).getByRole('heading')).toBeFocused();
  expect(await place()).toBeGreaterThan(start);
});

/** What tells of a new height does so before the next frame is painted. */
const twoFrames = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise((done) => {
        requestAnimationFrame(() => requestAnimationFrame(() => done()));
      }),
  );

/** Presses the key until the focus leaves the page, and looks at every stop. */
async function tabThrough(page: Page, key: 'Tab' | 'Shift+Tab'): Promise<void> {
  for (let stop = 0; stop < 250; stop++) {
    await page.keyboard.press(key);
    const fault = await lastingFault(page);
    if (fault === undefined) return;
    expect(fault).toBe('');
  }
  throw new Error('the focus never leaves the page');
}

/** The way a reader takes to the next step: by its link. */
async function goOn(page: Page, number: number): Promise<void> {
  await step(page, number - 1)
    .getByRole('link', { name: /^Next/ })
    .press('Enter');
  await expect(step(page, number)).toBeVisible();
}

/** What is still wrong after a while: a figure that is fetched, or grows, makes room for what it would cover. */
async function lastingFault(page: Page): Promise<string | undefined> {
  let fault = await focusFault(page);
  for (let tries = 0; fault && tries < 200; tries++) {
    await twoFrames(page);
    fault = await focusFault(page);
  }
  return fault;
}

/** What is wrong with how the focus is shown: nothing (an empty text), or undefined where the page has it no more. */
const focusFault = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => {
    const focused = document.activeElement;
    if (!focused || focused === document.body) return undefined;
    const figure = document.querySelector('.figure');
    const docked = figure !== null && getComputedStyle(figure).zIndex === '2';
    const box = focused.getBoundingClientRect();
    const { top, bottom } = figure?.getBoundingClientRect() ?? box;
    const overlaps = box.top < bottom - 1 && box.bottom > top + 1;
    const widths = [focused, focused.parentElement ?? focused].map((e) => {
      const { outlineStyle, outlineWidth } = getComputedStyle(e);
      return outlineStyle === 'none' ? 0 : parseFloat(outlineWidth);
    });
    const ring = focused.querySelector(':scope > .ring');
    if (ring) widths.push(parseFloat(getComputedStyle(ring).strokeWidth));
    const faults = [];
    if (box.bottom < 1 || box.top > innerHeight - 1) faults.push('outside the window');
    if (docked && overlaps && !figure.contains(focused)) faults.push('under the figure');
    if (Math.max(...widths) < 2 && focused.tagName !== 'H2') faults.push('not marked');
    return faults.length === 0 ? '' : `${focused.outerHTML.slice(0, 120)}: ${faults.join(', ')}`;
  });
