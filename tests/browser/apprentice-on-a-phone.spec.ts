import { expect, test, type Page } from '@playwright/test';
import { loadKind } from '#exercises/registry.ts';
import { plain } from '#exercises/phrase.ts';
import { fillPart } from './exercise-page.ts';
import { control, dragWithFinger, handle, valueNow } from './figure.ts';
import { LESSONS, PHONE } from './site.ts';
import { predict, step, visit } from './visit.ts';

test.use({ viewport: PHONE, isMobile: true, hasTouch: true, deviceScaleFactor: 2 });

const FIRST = 'two-points';

test('an apprentice reads the first lesson on a phone, predicts, drags, gets an exercise wrong and then right', async ({
  page,
}) => {
  const count = LESSONS.find(({ slug }) => slug === FIRST)?.steps.length ?? 0;

  await visit(page, '/');
  await page.getByRole('link', { name: 'Take the technician’s trail' }).tap();
  await page.getByRole('link', { name: 'Two points make an axis' }).first().tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Two points make an axis');

  await dragWithFinger(page, handle(page, 'upperInboard'), -40);
  const moved = await valueNow(handle(page, 'upperInboard'));
  expect(moved).toBeGreaterThan(20);
  await expect(control(page, 'upperInboard').number).toHaveValue(moved.toFixed(1));

  for (let number = 1; number <= count; number++) {
    const here = step(page, number);
    await expect(here).toBeVisible();
    if ((await here.getByText('Predict first').count()) > 0) {
      await predict(here, '7');
      await expect(here.getByText(/^Your guess: 7.0°/)).toBeVisible();
    }
    await onward(page, number, count);
  }

  const kind = await loadKind('inclination-from-pivots');
  const { parts } = kind.exercise(FIRST);
  const [across] = parts;
  const slip = across?.slips().find(({ id }) => id === 'turned-round');
  if (!across || !slip) throw new Error('the exercise has changed its first part');
  const form = page.locator(`form[data-kind="${kind.id}"]`);
  await expect(form).toBeVisible();
  await fillPart(form, 0, across, slip.value);
  await form.getByRole('button', { name: 'Check' }).tap();
  await expect(form).toContainText(plain(slip.text()));

  for (const [i, part] of parts.entries()) await fillPart(form, i, part, part.answer);
  await form.getByRole('button', { name: 'Check' }).tap();
  await expect(form).toContainText(`${parts.length} of ${parts.length} parts`);
  await expect(form).not.toContainText(plain(slip.text()));

  await page.reload({ waitUntil: 'networkidle' });
  await page.getByRole('link', { name: 'Lessons', exact: true }).tap();
  await expect(page.getByRole('listitem').filter({ hasText: 'Two points' })).toContainText(
    `read to step ${count}`,
  );
  await page.getByRole('link', { name: 'Practice', exact: true }).tap();
  await expect(page.getByRole('listitem').filter({ hasText: kind.title })).toContainText(
    'tried once',
  );
});

/** Taps on to the next step; again where the first tap only stopped the page, which a finger had set in motion. */
async function onward(page: Page, number: number, count: number): Promise<void> {
  const link = step(page, number).getByRole('link', { name: /^Next|^On to/ });
  const next = number < count ? step(page, number + 1) : page.locator('#practice form').first();
  await expect(async () => {
    await link.tap({ timeout: 2000 });
    await expect(next).toBeVisible({ timeout: 3000 });
  }).toPass();
}
