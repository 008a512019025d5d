import type { Locator, Page } from '@playwright/test';

/** Opens a page and waits until its scripts have taken over: a click before that would be lost. */
export async function visit(page: Page, path: string): Promise<void> {
  await page.goto(path);
  await page.locator('html[data-awake]').waitFor({ state: 'attached' });
}

/** A step of the lesson that is open. */
export const step = (page: Page, number: number): Locator => page.locator(`#step-${number}`);

/** Makes the prediction of a step: a size and, where a direction is asked for, the word given or else the first. */
export async function predict(place: Locator, size: string, word = /./): Promise<void> {
  await place.getByRole('textbox').fill(size);
  const words = place.getByRole('radio', { name: word });
  if ((await words.count()) > 0) await words.first().check();
  await place.getByRole('button', { name: 'That is my prediction' }).click();
}
