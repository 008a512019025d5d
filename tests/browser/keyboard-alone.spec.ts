import { expect, test, type Locator, type Page } from '@playwright/test';
import { PARAMETERS, type ParameterId } from '#scenes/parameters.ts';
import { control, handle, handlesShown, valueNow } from './figure.ts';
import { LESSONS, WIDE } from './site.ts';
import { step, visit } from './visit.ts';

test.use({ viewport: WIDE, reducedMotion: 'reduce' });

// Nothing in this file touches the page but through keys.

test('the first lesson can be read, predicted, moved and practised by keyboard alone', async ({
  page,
}) => {
  test.slow();
  const [lesson] = LESSONS;
  await visit(page, '/');
  await tabTo(page, page.getByRole('link', { name: 'Take the technician’s trail' }));
  await page.keyboard.press('Enter');
  await tabTo(page, page.getByRole('link', { name: 'Two points make an axis' }).first());
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Two points make an axis');

  const count = lesson?.steps.length ?? 0;
  for (let number = 1; number <= count; number++) {
    const here = step(page, number);
    await expect(here).toBeVisible();
    if ((await here.getByText('Predict first').count()) > 0) await predictByKeys(page, here);
    for (const id of await handlesShown(page)) await moveByKeys(page, id);
    await undoAndReset(page);
    await tabTo(page, here.getByRole('link', { name: /^Next|^On to/ }), 'Shift+Tab');
    await page.keyboard.press('Enter');
    if (number < count) await expect(step(page, number + 1).getByRole('heading')).toBeFocused();
  }

  await expect(page.getByRole('heading', { name: 'Exercises' })).toBeFocused();
  const form = page.locator('form.exercise').first();
  await tabTo(page, form.getByRole('textbox').first());
  await page.keyboard.type('12');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Space');
  await tabTo(page, form.getByRole('button', { name: 'Check' }));
  await page.keyboard.press('Enter');
  await expect(form.getByRole('status').first()).not.toBeEmpty();
});

async function predictByKeys(page: Page, here: Locator): Promise<void> {
  await tabTo(page, here.getByRole('textbox'));
  await page.keyboard.type('7,5');
  if ((await here.getByRole('radio').count()) > 0) {
    await page.keyboard.press('Tab');
    await page.keyboard.press('Space');
  }
  await tabTo(page, here.getByRole('button', { name: 'That is my prediction' }));
  await page.keyboard.press('Enter');
  await expect(here.getByRole('status')).toContainText('Your guess: 7.5°');
}

/** Every key of a slider does what it should, and Escape takes it back. */
async function moveByKeys(page: Page, id: ParameterId): Promise<void> {
  const grip = handle(page, id);
  const { least, most, step: by } = PARAMETERS[id];
  await tabTo(page, grip);
  const start = await valueNow(grip);
  const after = async (key: string): Promise<number> => {
    await page.keyboard.press(key);
    return valueNow(grip);
  };
  expect(await after('ArrowUp')).toBeCloseTo(Math.min(most, start + by));
  expect(await after('Escape')).toBe(start);
  expect(await after('Home')).toBe(least);
  expect(await after('PageUp')).toBeCloseTo(least + 10 * by);
  expect(await after('ArrowDown')).toBeCloseTo(least + 9 * by);
  expect(await after('End')).toBe(most);
  expect(await after('PageDown')).toBeCloseTo(most - 10 * by);
  const [there, back] = [await after('ArrowLeft'), await after('ArrowRight')];
  expect(Math.abs(there - back)).toBeCloseTo(by);
  expect(back).toBeCloseTo(most - 10 * by);
  expect(await after('Escape')).toBe(start);

  const { number } = control(page, id);
  await tabTo(page, number);
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type(String(most / 4));
  await page.keyboard.press('Enter');
  await expect.poll(() => valueNow(grip)).toBe(most / 4);
}

async function undoAndReset(page: Page): Promise<void> {
  const grips = await handlesShown(page);
  const last = grips.at(-1);
  if (last === undefined) return;
  const grip = handle(page, last);
  const moved = await valueNow(grip);
  await tabTo(page, page.getByRole('button', { name: 'Undo' }));
  await page.keyboard.press('Enter');
  expect(await valueNow(grip)).not.toBe(moved);
  await tabTo(page, page.getByRole('button', { name: 'Reset' }));
  await page.keyboard.press('Space');
  for (const id of grips) expect(await valueNow(handle(page, id))).toBe(0);
}

/** Presses Tab until something has the focus. */
async function tabTo(page: Page, target: Locator, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
  const wanted = await target.elementHandle();
  for (let press = 0; press < 250; press++) {
    if (await page.evaluate((element) => document.activeElement === element, wanted)) return;
    await page.keyboard.press(key);
  }
  throw new Error(`no way by ${key} to ${target.toString()}`);
}
