import { expect, test, type Page } from '@playwright/test';
import { WIDE } from './site.ts';
import { step, visit } from './visit.ts';

test.use({ viewport: WIDE, reducedMotion: 'reduce' });

const figure = (page: Page) => page.locator('.panel');
const lit = (page: Page): Promise<string[]> =>
  page
    .locator('svg path.heavy.lit')
    .evaluateAll((paths) => paths.map((path) => (path as SVGElement).dataset['key'] ?? ''));

test('taken apart, wheel and carrier show in pairs what they do to each other', async ({
  page,
}) => {
  await visit(page, '/lessons/braking-at-the-ground');
  await expect(figure(page).getByRole('button', { name: 'carrier on wheel' })).toBeHidden();
  await figure(page).getByRole('button', { name: 'Apart' }).click();
  await figure(page).getByRole('button', { name: 'carrier on wheel' }).focus();
  expect(await lit(page)).toEqual(['deed-held', 'deed-felt']);
  await figure(page).getByRole('button', { name: 'disc on pads' }).focus();
  expect(await lit(page)).toEqual(['deed-pads', 'deed-dragged']);
  await figure(page).getByRole('button', { name: 'Shaft' }).click();
  await expect(figure(page).getByRole('button', { name: 'disc on pads' })).toBeHidden();
  await expect(figure(page).getByText('no torque')).toBeVisible();
});

test('the force is carried to the road by keys and by number, and the moment never changes', async ({
  page,
}) => {
  await visit(page, '/lessons/braking-at-the-ground#step-2');
  const down = figure(page).locator('[data-control=carried]');
  const moment = figure(page).locator('[data-quantity=brakeMoment] dd');
  const before = await moment.innerText();
  const slider = down.getByRole('slider');
  await slider.press('End');
  await expect(slider).toHaveAttribute('aria-valuetext', /at the road/);
  await expect(page.locator('svg [data-key=deed-left]')).toHaveCount(0);
  await expect(moment).toHaveText(before);
  await down.getByRole('textbox').fill('14,6 cm');
  await down.getByRole('textbox').press('Enter');
  await expect(slider).toHaveAttribute('aria-valuetext', /^146\.0\u202fmm below/);
  await expect(page.locator('svg [data-key=deed-left]')).toHaveCount(1);
  await expect(moment).toHaveText(before);
  await down.getByRole('textbox').fill('400');
  await down.getByRole('textbox').press('Enter');
  await expect(down.getByRole('alert')).toContainText('allowed');
});

test('a step begins as it is written, whatever was done before', async ({ page }) => {
  await visit(page, '/lessons/what-the-carrier-feels');
  await figure(page).getByRole('button', { name: 'Shaft', exact: true }).click();
  await expect(page.locator('svg [data-key=deed-shaft]')).toHaveCount(1);
  await step(page, 1).getByRole('link', { name: /^Next/ }).click();
  await expect(page.locator('svg [data-key=deed-load]')).toHaveCount(1);
  await step(page, 2).getByRole('link', { name: /^Back/ }).click();
  const edge = figure(page).getByRole('button', { name: 'Edge', exact: true });
  await expect(edge).toHaveAttribute('aria-pressed', 'true');
  await expect(page.locator('svg [data-key=deed-tyre]')).toHaveCount(1);
});

test.describe('with scripts off', () => {
  test.use({ javaScriptEnabled: false });

  test('the drawing of the first step and its table are there', async ({ page }) => {
    await page.goto('/lessons/what-the-carrier-feels');
    await expect(page.locator('svg text', { hasText: 'edge on tyre' })).toHaveCount(1);
    await expect(figure(page).getByRole('row', { name: /edge on tyre/ })).toContainText('4000');
    await expect(figure(page).getByRole('slider')).toHaveCount(0);
  });
});
