import { expect, test, type Page } from '@playwright/test';
import { LESSONS, PHONE } from './site.ts';
import { visit } from './visit.ts';

test.use({ viewport: PHONE, serviceWorkers: 'block' });

/** What may cross the network, in kilobytes as they are sent. */
const MOST = { scripts: 90, fonts: 60, everything: 250 };

for (const { slug, path, steps } of LESSONS) {
  test(`${slug} weighs little enough for a poor signal: to begin with, and read to the end with its exercises`, async ({
    page,
  }) => {
    const sent = countBytes(page);
    await visit(page, path);
    expect(sent('script')).toBeGreaterThan(10);
    expect(sent('script')).toBeLessThanOrEqual(MOST.scripts);

    for (const number of steps.keys()) await page.goto(`${path}#step-${number + 1}`);
    await expect(page.locator('form.exercise').first()).toBeVisible();
    await page.waitForLoadState('networkidle');
    expect(sent('font')).toBeLessThanOrEqual(MOST.fonts);
    expect(sent()).toBeLessThanOrEqual(MOST.everything);
  });
}

/** Counts the bodies that the server sends, compressed as they are. */
function countBytes(page: Page): (kind?: string) => number {
  const sizes: { kind: string; size: number }[] = [];
  page.on('response', (response) => {
    const kind = response.request().resourceType();
    // Our server says the size of everything: it has it all compressed beforehand.
    sizes.push({ kind, size: Number(response.headers()['content-length'] ?? NaN) });
  });
  return (kind) =>
    sizes
      .filter((one) => kind === undefined || one.kind === kind)
      .reduce((sum, { size }) => sum + size, 0) / 1000;
}
