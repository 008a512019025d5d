import { expect, test, type Page } from '@playwright/test';
import { control, drag } from './figure.ts';
import { visit } from './visit.ts';

/** The first figure of a lesson, turned in space. */
async function inSpace(page: Page): Promise<void> {
  await visit(page, '/lessons/two-points');
  await page.getByRole('button', { name: 'In space' }).first().click();
  await expect(drawing(page)).toBeVisible();
}

const drawing = (page: Page) => page.locator('svg', { hasText: 'front corner in space' });
const round = (page: Page) => page.locator('[data-control=viewpoint-round]').getByRole('slider');
const above = (page: Page) => page.locator('[data-control=viewpoint-above]').getByRole('slider');

test('the figure in space is fetched only when it is asked for', async ({ page }) => {
  await visit(page, '/lessons/two-points');
  await expect(drawing(page)).toHaveCount(0);
  const fetched = page.waitForRequest(/\.js$/);
  await page.getByRole('button', { name: 'In space' }).first().click();
  await fetched;
  await expect(drawing(page)).toBeVisible();
  await expect(page.getByRole('button', { name: 'In space' }).first()).toBeFocused();
});

test('a drag walks round the corner, and a press of a button goes back', async ({ page }) => {
  await inSpace(page);
  const before = Number(await round(page).inputValue());
  await drag(page, drawing(page), 100);
  expect(Number(await round(page).inputValue())).toBeLessThan(before);
  await page.getByRole('button', { name: 'Reset the viewpoint' }).click();
  await expect(round(page)).toHaveValue(String(before));
});

test('the arrow keys do what a drag does, and the words follow', async ({ page }) => {
  await inSpace(page);
  const words = drawing(page).locator('desc');
  await expect(words).toContainText('from ahead and the right, 20° above the road');
  await round(page).focus();
  for (let i = 0; i < 12; i++) await page.keyboard.press('ArrowRight');
  await above(page).focus();
  await page.keyboard.press('ArrowUp');
  await expect(words).toContainText('25° above the road');
  await expect(words).not.toContainText('and the right');
});

test('the wheel steers while the axis stays', async ({ page }) => {
  await inSpace(page);
  const pivot = page.locator('svg [data-key=upper-pivot]').first();
  const tyre = page.locator('svg [data-key=tyre]').first();
  const [place, outline] = [await pivot.getAttribute('d'), await tyre.getAttribute('d')];
  await control(page, 'steer').more.click();
  await expect(tyre).not.toHaveAttribute('d', outline ?? '');
  await expect(pivot).toHaveAttribute('d', place ?? '');
});
