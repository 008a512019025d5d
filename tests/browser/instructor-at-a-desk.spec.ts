import { expect, test } from '@playwright/test';
import { loadKind } from '#exercises/registry.ts';
import { plain } from '#exercises/phrase.ts';
import { LESSONS, WIDE } from './site.ts';
import { visit } from './visit.ts';

test.use({ viewport: WIDE });

test('an instructor finds the course, sends out an exercise by its address, and gets another by another seed', async ({
  page,
}) => {
  const kind = await loadKind('spacer-scrub');
  const question = (seed: string) => plain(kind.exercise(seed).question());

  await visit(page, '/');
  await page.getByRole('link', { name: 'Lessons', exact: true }).click();
  for (const { path } of LESSONS)
    await expect(page.locator(`main a[href$="${path}"]`)).toBeVisible();
  await page.getByRole('link', { name: 'Where the axis meets the road' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Where the axis meets the road');

  for (const seed of ['monday-1', 'monday-1', 'monday-2']) {
    await visit(page, `/practice/${kind.id}?seed=${seed}`);
    await expect(page.locator('form .question')).toHaveText(question(seed));
  }
  expect(question('monday-1')).not.toBe(question('monday-2'));

  await page.getByRole('button', { name: 'Another like this' }).click();
  await expect(page.locator('form .question')).not.toHaveText(question('monday-2'));
  const drawn = await page.locator('form .question').innerText();
  await page.reload({ waitUntil: 'networkidle' });
  await expect(page.locator('form .question')).toHaveText(drawn);
});

test('an answer may be typed in any common unit, with a comma or a point', async ({ page }) => {
  const kind = await loadKind('spacer-scrub');
  const seeds = Array.from({ length: 1000 }, (_, i) => `unit-${i}`);
  const seed = seeds.find((one) => {
    const answer = kind.exercise(one).parts[1]?.answer ?? NaN;
    return Math.abs(answer - 0.038) < 1e-9;
  });
  await visit(page, `/practice/${kind.id}?seed=${seed}`);
  const last = page.locator('form .parts > li').nth(1);
  const number = last.getByRole('textbox');
  const check = page.getByRole('button', { name: 'Check' });
  await last.getByRole('radio', { name: 'inboard' }).check();
  for (const text of ['1,5 in', '38.1 mm', '38,1', '3.81cm', '0.0381 m', '1 1/2 in', '1.5"']) {
    await number.fill(text);
    await check.click();
    await expect(last.getByRole('status'), text).toContainText('That fits');
    await number.fill('999');
    await check.click();
    await expect(last.getByRole('status')).not.toContainText('That fits');
  }
});
