import { expect, test, type Page } from '@playwright/test';
import { handle, valueNow } from './figure.ts';
import { throughSteps } from './lesson-steps.ts';
import { LESSONS, PAGES, PHONE, WIDE } from './site.ts';
import { step, visit } from './visit.ts';

const NARROW = { width: 320, height: 640 };

test('no page scrolls sideways at 320 pixels, as at 400 % zoom, or with text of twice the size on a phone or a wide screen', async ({
  page,
}) => {
  test.setTimeout(300_000);
  for (const path of PAGES) {
    await page.setViewportSize(NARROW);
    await visit(page, path);
    expect.soft(await tooWide(page), path).toEqual([]);
    await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
    for (const viewport of [PHONE, WIDE]) {
      await page.setViewportSize(viewport);
      expect.soft(await tooWide(page), `${path}, ${viewport.width} pixels`).toEqual([]);
    }
  }
});

for (const lesson of LESSONS) {
  test(`at 320 pixels no step of ${lesson.slug} scrolls sideways`, async ({ page }) => {
    await page.setViewportSize(NARROW);
    await throughSteps(page, lesson, async (number) => {
      expect.soft(await tooWide(page), `step ${number}`).toEqual([]);
    });
  });
}

for (const [width, height] of [
  [844, 390],
  [320, 256],
  [375, 553],
] as const) {
  test(`in a window of ${width} × ${height} the docked figure leaves the text room`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await visit(page, '/lessons/at-the-road#step-3');
    const question = step(page, 3).getByRole('textbox');
    await question.scrollIntoViewIfNeeded();
    await question.click({ timeout: 3000 });
    const covered = await page.evaluate(() => {
      window.scrollTo(0, document.body.scrollHeight / 2);
      const { bottom } = document.querySelector('.figure')?.getBoundingClientRect() ?? {
        bottom: 0,
      };
      return Math.max(0, bottom) / innerHeight;
    });
    expect(covered).toBeLessThan(0.66);
  });
}

test('where motion is not wanted the figure jumps, and nothing on the page is in transition', async ({
  page,
}) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await visit(page, '/lessons/at-the-road#step-3');
  const values = await page.evaluate(async () => {
    const seen: (string | null)[] = [];
    const grip = document.querySelector('svg [data-parameter=spacer]');
    const buttons = [...document.querySelectorAll('#step-3 button')];
    buttons
      .find((button) => button.textContent === 'Show me')
      ?.dispatchEvent(new MouseEvent('click', { bubbles: true }));
    for (let frame = 0; frame < 60; frame++) {
      await new Promise(requestAnimationFrame);
      seen.push(grip?.getAttribute('aria-valuenow') ?? null);
    }
    return seen;
  });
  expect(new Set(values)).toEqual(new Set(['20']));
  expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
});

test('where motion is welcome the figure moves there in view', async ({ page }) => {
  await visit(page, '/lessons/at-the-road#step-3');
  await step(page, 3).getByRole('button', { name: 'Show me' }).click();
  const early = await valueNow(handle(page, 'spacer'));
  expect(early).toBeLessThan(20);
  await expect(handle(page, 'spacer')).toHaveAttribute('aria-valuenow', '20');
});

test('with colours forced by the system, words, lines and handles are still seen', async ({
  page,
}) => {
  await page.emulateMedia({ forcedColors: 'active' });
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    await visit(page, '/lessons/two-points');
    const faint = await page.evaluate(() => {
      const sum = (colour: string): number =>
        (colour.match(/[\d.]+/g) ?? []).slice(0, 3).reduce((a, b) => a + Number(b), 0);
      const seen = [
        ...document.querySelectorAll('h1, p, .axis.heavy-chain, svg text, .grip .ring'),
      ];
      return seen
        .filter((e) => {
          const { color, fill, stroke } = getComputedStyle(e);
          const ink = e.tagName === 'text' ? fill : e instanceof SVGElement ? stroke : color;
          const paper = getComputedStyle(e.closest('svg') ?? document.body).backgroundColor;
          return Math.abs(sum(ink) - sum(paper)) < 200;
        })
        .map((e) => e.outerHTML.slice(0, 80));
    });
    expect(faint, colorScheme).toEqual([]);
  }
});

/** What reaches past the right edge of the page, where the page as a whole can be scrolled there. */
const tooWide = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    const wide = [...document.querySelectorAll('body :not(svg *)')].filter(
      (e) => e.checkVisibility() && e.getBoundingClientRect().right > clientWidth + 0.5,
    );
    return [
      `${scrollWidth} of ${clientWidth}`,
      ...wide.slice(-4).map((e) => e.outerHTML.slice(0, 100)),
    ];
  });
