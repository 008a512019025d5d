import { expect, test } from '@playwright/test';
import { PHONE } from './site.ts';
import { step, visit } from './visit.ts';

test.use({ viewport: PHONE });

test('after one visit another lesson opens without a signal, by link and by address', async ({
  page,
  context,
}) => {
  await visit(page, '/');
  // The worker answers for a page only when everything has been fetched and kept.
  await page.evaluate(() => navigator.serviceWorker.ready);
  await context.setOffline(true);

  await page.goto('/lessons/at-the-wheel-centre');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Where the axis passes the wheel centre',
  );
  await step(page, 1).getByRole('link', { name: /^Next/ }).click();
  await expect(step(page, 2)).toBeVisible();

  await page.getByRole('link', { name: 'Lessons', exact: true }).click();
  await page.getByRole('link', { name: 'Where the axis meets the road' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Where the axis meets the road');

  await page.getByRole('link', { name: 'Practice', exact: true }).click();
  await page.getByRole('link', { name: 'A spacer behind the wheel' }).click();
  await page.getByRole('button', { name: 'Another like this' }).click();
  await page.getByRole('textbox').first().fill('+999');
  await page.getByRole('button', { name: 'Check' }).click();
  await expect(page.getByRole('status').first()).not.toBeEmpty();

  await page.goto('/practice/spacer-scrub?seed=monday-1');
  await expect(page.locator('form.exercise')).toHaveAttribute('data-seed', 'monday-1');
});
