import { expect, test, type Page } from '@playwright/test';
import { INPUT_STEPS } from '../../src/lib/bench/input-steps.ts';
import { INPUTS } from '#core/judgement/inputs.ts';
import { FROM_WHERE } from '#scenes/bench/from-where.ts';
import { visit } from './visit.ts';

test.use({ viewport: { width: 320, height: 640 } });

async function begin(page: Page): Promise<void> {
  await visit(page, '/bench');
  await page.getByLabel('Front tyre, as marked on its sidewall').fill('205/55r16 91v');
  await page.getByRole('button', { name: 'Begin with my car' }).click();
  await expect(page.getByRole('heading', { name: 'The result' })).toBeVisible();
}

test('beside every number that is asked for stands a picture: from where to where, at 320 pixels, by keyboard', async ({
  page,
}) => {
  await begin(page);
  for (const [i, { title, inputs }] of INPUT_STEPS.entries()) {
    const stop = page.locator('details', { has: page.getByText(title, { exact: true }) }).first();
    if (i > 0) await stop.locator('> summary').press('Enter');
    for (const [j, id] of inputs('sheet').entries()) {
      const field = stop.locator(`[data-input="${id}"]`);
      const how = field.locator('summary', { hasText: 'How to measure it' });
      expect((await how.boundingBox())?.height).toBeGreaterThanOrEqual(44);
      // The first one of a stop stands open.
      if (j > 0) {
        await how.focus();
        await page.keyboard.press('Enter');
      }
      const picture = field.getByRole('group', { name: `What to measure: ${INPUTS[id].name}` });
      await expect(picture).toBeVisible();
      await expect(picture.locator('desc')).toContainText(FROM_WHERE[id]);
      await expect(field.locator('figcaption')).toContainText(FROM_WHERE[id].slice(1));
    }
  }
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
});

test('pictures follow what is entered, and their code is not fetched before one is opened', async ({
  page,
}) => {
  const scripts: string[] = [];
  page.on('response', (response) => {
    if (response.request().resourceType() === 'script') scripts.push(response.url());
  });
  await visit(page, '/bench');
  await page.getByRole('button', { name: 'Linnet' }).click();
  await expect(page.getByRole('heading', { name: 'The result' })).toBeVisible();
  await page.waitForLoadState('networkidle');
  const before = scripts.length;
  await page
    .locator('summary', { hasText: /^Wheel/ })
    .first()
    .click();
  const field = page.locator('[data-input="track_mm"]');
  await field.locator('summary').click();
  await expect(field.locator('svg')).toBeVisible();
  expect(scripts.length).toBeGreaterThan(before);
  await page.getByLabel('Track width', { exact: true }).fill('1610');
  await expect(field.locator('svg text', { hasText: '1610.0' })).toBeVisible();
});

test('a larger tyre of a lesson’s figure comes along to the bench as a marked size', async ({
  page,
}) => {
  await visit(page, '/bench?car=linnet&set=radius:9');
  await expect(page.getByRole('textbox', { name: 'New tyre, as marked' })).toHaveValue(
    '195/70 R15',
  );
  await expect(
    page.getByRole('heading', {
      name: 'As in the figure, with the nearest size of tyre',
      exact: true,
    }),
  ).toBeVisible();
});

test('a spacer at one wheel alone: what differs left and right is said, and either wheel is drawn', async ({
  page,
}) => {
  await visit(page, '/bench?car=linnet&set=spacer:10');
  await page.getByRole('checkbox', { name: 'Left and right differ' }).check();
  await page
    .getByRole('textbox', { name: /Spacer/ })
    .last()
    .fill('20');
  const table = page.getByRole('table').filter({ hasText: 'scrub radius' }).first();
  await expect(
    page.getByRole('heading', { name: 'Left and right after the change' }),
  ).toBeVisible();
  await expect(table.getByRole('row', { name: /^scrub radius/ })).toBeVisible();
  await page.getByRole('radio', { name: 'Right' }).last().check();
  await expect(page.locator('figcaption', { hasText: 'right front corner' })).toBeVisible();
});
