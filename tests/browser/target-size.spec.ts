import { expect, test, type Page } from '@playwright/test';
import { throughSteps } from './lesson-steps.ts';
import { LESSONS, OTHER_PAGES, PHONE, WIDE } from './site.ts';
import { visit } from './visit.ts';

test.use({ viewport: PHONE, reducedMotion: 'reduce' });

/** In the workshop, with gloves on; and everywhere else. */
const LARGE = 44;
const ENOUGH = 24;

const VIEWPORTS = [PHONE, WIDE] as const;

for (const lesson of LESSONS) {
  test(`${lesson.slug}: handles and buttons of the figure are large, all else is large enough, on a phone and a wide screen`, async ({
    page,
  }) => {
    test.slow();
    await throughSteps(page, lesson, async (number) => {
      for (const viewport of VIEWPORTS) {
        await page.setViewportSize(viewport);
        const more = page.getByRole('button', { name: 'More', exact: true });
        if (number === 1 && (await more.isVisible())) await more.click();
        expect(await smallHandles(page)).toEqual([]);
        expect(await smallTargets(page, '.panel button', LARGE)).toEqual([]);
        expect(await smallTargets(page, TARGETS, ENOUGH)).toEqual([]);
      }
    });
  });
}

test('on the other pages everything is large enough, on a phone and a wide screen', async ({
  page,
}) => {
  test.slow();
  for (const path of OTHER_PAGES) {
    await visit(page, path);
    for (const viewport of VIEWPORTS) {
      await page.setViewportSize(viewport);
      expect(await smallTargets(page, TARGETS, ENOUGH), path).toEqual([]);
    }
  }
});

/** Whatever can be pressed. A link in a sentence is as high as its line; a choice is pressed by its label. */
const TARGETS = 'button, summary, a[href], label:has(input), input:not(label input)';

const smallTargets = (page: Page, selector: string, least: number): Promise<string[]> =>
  page.locator(selector).evaluateAll((targets, size) => {
    const inSentence = (target: Element): boolean =>
      getComputedStyle(target).display === 'inline' && target.closest('p, li, dd, td') !== null;
    return targets
      .filter((target) => target.checkVisibility() && !inSentence(target))
      .map((target) => ({ target, box: target.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 1 && Math.min(box.width, box.height) < size - 0.5)
      .map(({ target, box }) => `${target.outerHTML.slice(0, 90)} ${box.width}×${box.height}`);
  }, least);

/** Handles that a finger at the edge of their 44 pixels would miss. */
const smallHandles = (page: Page): Promise<string[]> =>
  page.locator('svg [role=slider]').evaluateAll((grips, size) => {
    const misses: string[] = [];
    for (const grip of grips) {
      grip.scrollIntoView({ block: 'center' });
      const ring = (grip.querySelector('circle') ?? grip).getBoundingClientRect();
      const [x, y] = [ring.x + ring.width / 2, ring.y + ring.height / 2];
      const reach = size / 2 - 1;
      for (const [dx, dy] of [
        [reach, 0],
        [-reach, 0],
        [0, reach],
        [0, -reach],
      ] as const) {
        const hit = document.elementFromPoint(x + dx, y + dy)?.closest('[role=slider]');
        if (hit !== grip) misses.push(`${grip.getAttribute('aria-label') ?? ''} ${dx} ${dy}`);
      }
    }
    return misses;
  }, LARGE);
