import { expect, test } from '@playwright/test';
import { control, drag, handle, valueNow } from './figure.ts';
import { WIDE } from './site.ts';
import { predict, step, visit } from './visit.ts';

test.use({ viewport: WIDE });

test('an enthusiast slides a spacer in, reads before and after, and sends the link to a friend', async ({
  page,
  context,
  browser,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await visit(page, '/');
  await page.getByRole('link', { name: 'Take the shortest road there' }).click();
  await page.getByRole('link', { name: 'Where the axis meets the road' }).first().click();
  await expect(step(page, 1)).toBeVisible();
  await page.goto('/lessons/at-the-road#step-3');
  const here = step(page, 3);
  await expect(here).toBeVisible();
  await predict(here, '29.7', /^inboard/);
  await expect(here).toContainText('Your guess: 29.7 mm inboard');

  const row = page.getByRole('row', { name: /^scrub radius/ });
  const numbers = async (): Promise<number[]> =>
    [...(await row.innerText()).replaceAll('−', '-').matchAll(/-?\d+\.\d/g)].map(Number);
  await drag(page, handle(page, 'spacer'), 40);
  const spacer = await valueNow(handle(page, 'spacer'));
  expect(spacer).toBeGreaterThan(25);
  await expect(control(page, 'spacer').number).toHaveValue(spacer.toFixed(1));
  const [before = NaN, after = NaN, change = NaN] = await numbers();
  expect(after - before).toBeCloseTo(change, 1);
  // The wheel leans a little, so that not every hair of the spacer goes straight across.
  expect(Math.abs(change - spacer)).toBeLessThan(0.2);

  await page.getByRole('button', { name: 'Copy link' }).click();
  await expect(page.getByText('Link copied')).toBeVisible();
  const link = await page.evaluate(() => navigator.clipboard.readText());

  const friend = await browser.newContext({ viewport: WIDE });
  const theirs = await friend.newPage();
  await visit(theirs, link);
  await expect(step(theirs, 3)).toBeVisible();
  await expect(handle(theirs, 'spacer')).toHaveAttribute('aria-valuenow', String(spacer));
  await expect(control(theirs, 'spacer').number).toHaveValue(spacer.toFixed(1));
  await expect(theirs.getByRole('row', { name: /^scrub radius/ })).toHaveText(
    await row.innerText(),
    {
      useInnerText: true,
    },
  );
  await friend.close();
});
