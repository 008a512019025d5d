import { expect, test } from '@playwright/test';
import { throughSteps } from './lesson-steps.ts';
import { PREDICTIONS } from './predictions.ts';
import { LESSONS, PHONE } from './site.ts';
import { step } from './visit.ts';

test.use({ viewport: PHONE, reducedMotion: 'reduce' });

for (const lesson of LESSONS) {
  const { slug, path, steps } = lesson;

  test(`${slug} can be read with scripts off: every step, the drawing, and on request what comes out, word for word`, async ({
    page,
    browser,
    baseURL,
  }) => {
    const bare = await browser.newContext({
      viewport: PHONE,
      javaScriptEnabled: false,
      ...(baseURL !== undefined && { baseURL }),
    });
    const plain = await bare.newPage();
    await plain.goto(path);
    const drawing = plain.locator('.figure svg[role=group]').first();
    await expect(drawing).toBeVisible();
    expect(await drawing.locator('path').count()).toBeGreaterThan(10);
    for (const number of steps.keys()) await expect(step(plain, number + 1)).toBeVisible();
    // Nothing listens to a button.
    expect(await plain.getByRole('button').filter({ visible: true }).allInnerTexts()).toEqual([]);

    const predicted = PREDICTIONS.filter((one) => one.lesson.slug === slug).map((one) => one.step);
    await throughSteps(page, lesson, async (number) => {
      if (!predicted.includes(number)) return;
      const closed = step(plain, number).locator('details');
      await expect(closed.locator('p').first()).toBeHidden();
      await closed.locator('summary').click();
      const explained = await closed.locator('p').allInnerTexts();
      expect(explained.length).toBeGreaterThan(0);
      const seen = await step(page, number).innerText();
      for (const words of explained) expect(seen).toContain(words);
    });
    await bare.close();
  });
}

test('practice can be read with scripts off: a worked example, an exercise, and its solution on request', async ({
  browser,
  baseURL,
}) => {
  const bare = await browser.newContext({
    javaScriptEnabled: false,
    ...(baseURL !== undefined && { baseURL }),
  });
  const page = await bare.newPage();
  await page.goto('/practice/spacer-scrub');
  await expect(page.locator('form .question')).toBeVisible();
  await expect(page.getByText('First, one worked from start to end')).toBeVisible();
  const solution = page.locator('form .solution');
  await expect(solution).toHaveCount(1);
  await expect(solution).toBeHidden();
  await page.locator('form summary').click();
  await expect(solution).toBeVisible();
  expect(await page.getByRole('button').filter({ visible: true }).allInnerTexts()).toEqual([]);
  await bare.close();
});
