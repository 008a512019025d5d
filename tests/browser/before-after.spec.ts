import { expect, test, type Page } from '@playwright/test';
import { control } from './figure.ts';
import { PHONE, WIDE } from './site.ts';
import { visit } from './visit.ts';

test.use({ viewport: WIDE, reducedMotion: 'reduce' });

const device = (page: Page) => page.getByRole('group', { name: 'Before and after' });
const share = (page: Page) => device(page).getByRole('slider');
const spacer = (page: Page) => control(page, 'spacer').number;

test('a changed figure goes to and fro between before and after by one button', async ({
  page,
}) => {
  await visit(page, '/lessons/spacers-and-inset');
  await expect(spacer(page)).toHaveValue('20.0');
  await expect(page.locator('svg .before')).not.toHaveCount(0);
  await device(page).getByRole('button', { name: 'Show before' }).click();
  await expect(spacer(page)).toHaveValue('0.0');
  await expect(share(page)).toHaveAttribute('aria-valuetext', 'before: the car as it stands');
  await device(page).getByRole('button', { name: 'Show after' }).click();
  await expect(spacer(page)).toHaveValue('20.0');
});

test('and as slowly as one likes by its slider, with keys, the table following', async ({
  page,
}) => {
  await visit(page, '/lessons/spacers-and-inset');
  const row = page.locator('tr[data-quantity=spindleOffset]');
  const after = await row.innerText();
  await share(page).press('Home');
  await expect(spacer(page)).toHaveValue('0.0');
  // The columns stay, so that nothing jumps.
  await expect(row.locator('td')).toHaveCount(4);
  for (let press = 0; press < 5; press++) await share(page).press('PageUp');
  await expect(share(page)).toHaveAttribute('aria-valuetext', '50 per cent of the change');
  await expect(spacer(page)).toHaveValue('10.0');
  await share(page).press('End');
  expect(await row.innerText()).toBe(after);
});

test('the key B flips while the figure has the focus, and nowhere else', async ({ page }) => {
  await visit(page, '/lessons/spacers-and-inset');
  await page.keyboard.press('b');
  await expect(spacer(page)).toHaveValue('20.0');
  await share(page).focus();
  await page.keyboard.press('b');
  await expect(spacer(page)).toHaveValue('0.0');
  await control(page, 'spacer').slider.focus();
  await page.keyboard.press('b');
  await expect(spacer(page)).toHaveValue('20.0');
  // Whoever types means the letter.
  await spacer(page).focus();
  await page.keyboard.press('b');
  await expect(share(page)).toHaveValue('100');
});

test('it comes with the change and goes with it, and waits for a prediction', async ({ page }) => {
  await visit(page, '/lessons/at-the-road#step-3');
  await expect(device(page)).toBeHidden();
  await page.locator('#step-3').getByRole('button', { name: 'Show me' }).click();
  await expect(device(page)).toBeVisible();
  await page.getByRole('button', { name: 'Reset' }).click();
  await expect(device(page)).toBeHidden();
  await control(page, 'spacer').slider.press('ArrowRight');
  await expect(device(page)).toBeVisible();
});

test('on a phone it is there too', async ({ page }) => {
  await page.setViewportSize(PHONE);
  await visit(page, '/lessons/spacers-and-inset');
  await device(page).getByRole('button', { name: 'Show before' }).click();
  await expect(device(page).getByRole('button', { name: 'Show after' })).toBeVisible();
});
