import { expect, test, type Page } from '@playwright/test';
import { control, drag, handle, valueNow } from './figure.ts';
import { PHONE, WIDE } from './site.ts';
import { step, visit } from './visit.ts';

const LESSON = '/lessons/left-against-right';

test.use({ viewport: WIDE, reducedMotion: 'reduce' });

const figure = (page: Page) => page.locator('.panel');
const choice = (page: Page, name: string) =>
  figure(page).getByRole('button', { name, exact: true });

test('a force is dragged rearward, and the rack feels the difference', async ({ page }) => {
  await visit(page, `${LESSON}#step-8`);
  const rack = figure(page).locator('tr[data-quantity=netRackForce] .now');
  const before = await rack.innerText();
  const force = await valueNow(handle(page, 'leftBrake'));
  await drag(page, handle(page, 'leftBrake'), 0, -30);
  const after = await valueNow(handle(page, 'leftBrake'));
  expect(after).toBeLessThan(force - 1000);
  expect(after % 100).toBe(0);
  await expect(rack).not.toHaveText(before);
  await handle(page, 'leftBrake').press('ArrowUp');
  expect(await valueNow(handle(page, 'leftBrake'))).toBe(after + 100);
});

test('the same force is handed from the brakes to the shafts and back', async ({ page }) => {
  await visit(page, `${LESSON}#step-8`);
  const steering = figure(page).locator('tr[data-quantity=leftMoment] .now');
  const braked = await steering.innerText();
  await choice(page, 'Shaft').click();
  await expect(control(page, 'leftDrive').number).toHaveValue('−4500');
  await expect(steering).not.toHaveText(braked);
  await choice(page, 'Brake').click();
  await expect(control(page, 'leftBrake').number).toHaveValue('4500');
  await expect(steering).toHaveText(braked);
});

test('a link opens the case that it speaks of', async ({ page }) => {
  await visit(page, `${LESSON}?set=leftDrag:60,rightDrag:140#step-7`);
  await expect(choice(page, 'Rolling')).toHaveAttribute('aria-pressed', 'true');
  await expect(control(page, 'rightDrag').number).toHaveValue('140');
});

test('no case can be chosen that would get round a prediction', async ({ page }) => {
  await visit(page, `${LESSON}#step-5`);
  await expect(choice(page, 'Brake')).toBeDisabled();
  await step(page, 5).getByRole('button', { name: 'Show me' }).click();
  await expect(choice(page, 'Brake')).toBeEnabled();
});

test.describe('on a phone', () => {
  test.use({ viewport: PHONE });

  test('“More” stands clear of what can be chosen and pressed', async ({ page }) => {
    await visit(page, `${LESSON}#step-4`);
    const more = await choice(page, 'More').boundingBox();
    const { less } = control(page, 'spacer');
    for (const other of [choice(page, 'Rolling'), less]) {
      const box = await other.boundingBox();
      if (!more || !box) throw new Error('both are shown');
      const apart =
        box.x + box.width <= more.x ||
        box.y + box.height <= more.y ||
        more.y + more.height <= box.y;
      expect(apart).toBe(true);
    }
  });
});

test.describe('with scripts off', () => {
  test.use({ javaScriptEnabled: false });

  test('the drawing of the first step and its table are there', async ({ page }) => {
    await page.goto(LESSON);
    await expect(page.locator('svg text', { hasText: 'front of the car' })).toHaveCount(1);
    await expect(figure(page).getByRole('row', { name: /force of both rods/ })).toBeVisible();
    await expect(figure(page).getByRole('textbox')).toHaveCount(0);
  });
});
