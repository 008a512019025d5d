import { expect, type Page } from '@playwright/test';
import { step, visit } from './visit.ts';
import type { LessonFile } from './site.ts';

/**
 * Goes through a lesson step by step, with every prediction already made, so that nothing is locked.
 *
 * @param look what to do in each step; numbers count from 1
 */
export async function throughSteps(
  page: Page,
  { path, steps }: LessonFile,
  look: (number: number) => Promise<void>,
): Promise<void> {
  await visit(page, path);
  for (let number = 1; number <= steps.length; number++) {
    await page.goto(`${path}#step-${number}`);
    // The browser is there before the page: what is read at once would still be the last step's.
    await expect(step(page, number)).toBeVisible();
    const show = step(page, number).getByRole('button', { name: 'Show me' });
    if ((await show.count()) > 0) await show.click();
    // What is fetched for the figure would move the page while it is looked at.
    const figure = page.locator('aside.figure');
    if ((await figure.count()) > 0) await expect(figure.locator('svg').first()).toBeVisible();
    // The exercises as they come from the server give way to those that can be worked.
    if (number === steps.length) await expect(page.locator('#practice form').first()).toBeVisible();
    await look(number);
  }
}
