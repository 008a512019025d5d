import { expect, test, type Locator, type Page } from '@playwright/test';
import { benchFragment } from '#core/judgement/bench-link.ts';
import { garageBench } from '../garage-benches.ts';
import { pdfText } from './pdf-text.ts';
import { PHONE } from './site.ts';
import { visit } from './visit.ts';

test.use({ viewport: PHONE });

const field = (page: Page, name: string): Locator =>
  page.getByRole('textbox', { name: `${name}, left less right`, exact: true });

/** The right wheel’s row of the table, as the car stands. */
const rightCamber = (page: Page): Locator => page.locator('tbody[data-result="camber right"]');

test('on a phone, by keyboard alone: a sheet on which left and right differ is entered, shown on both wheels, undone and taken along', async ({
  page,
}) => {
  await visit(page, '/bench');
  await page.getByLabel('Front tyre, as marked on its sidewall').fill('205/55 R16 91V');
  await page.getByRole('button', { name: 'Begin with my car' }).click();
  await page.getByRole('button', { name: 'On to: Alignment sheet' }).press('Enter');
  await page.getByLabel('Camber', { exact: true }).fill('-0.4');
  await page.getByLabel('Caster angle', { exact: true }).fill('3.6');
  await expect(rightCamber(page)).toHaveCount(0);
  await expect(page.getByText('since nothing is entered that they differ by')).toBeVisible();

  // Folded away until somebody needs it.
  await expect(field(page, 'Cross camber')).toBeHidden();
  const fold = page.locator('summary', { hasText: 'Left and right differ on your sheet?' });
  expect((await fold.boundingBox())?.height).toBeGreaterThanOrEqual(44);
  await fold.press('Enter');
  await expect(
    page.getByRole('group', { name: 'What to measure: cross camber, left less right' }),
  ).toBeVisible();
  await page.keyboard.press('Tab');
  await expect(field(page, 'Cross camber')).toBeFocused();
  await field(page, 'Cross camber').fill('12');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('alert').filter({ hasText: '−10 to 10°' })).toBeVisible();
  await expect(rightCamber(page)).toHaveCount(0);
  await field(page, 'Cross camber').fill('0,7');
  await field(page, 'Cross caster').fill('-0.6');
  await field(page, 'Cross caster').press('Enter');

  // By hand: −0.4° less 0.7°, and 3.6° less −0.6°.
  await expect(page.getByRole('status').filter({ hasText: 'right wheel stands' })).toContainText(
    'camber −1.10°, caster 4.20°',
  );
  await expect(rightCamber(page)).toContainText('1.1°');
  await expect(
    page.getByRole('heading', { name: 'Left and right as the car stands' }),
  ).toBeVisible();
  await expect(page.getByText('but for what is entered that they differ by')).toBeVisible();
  await page.getByRole('radio', { name: 'Right', exact: true }).check();
  await expect(page.locator('figcaption', { hasText: 'right front corner' })).toBeVisible();
  for (const wheel of ['Left wheel', 'Right wheel'])
    await expect(page.getByText(wheel, { exact: true }).first()).toBeVisible();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(PHONE.width);

  await page.getByRole('button', { name: 'Take both wheels alike again' }).press('Enter');
  await expect(rightCamber(page)).toHaveCount(0);
  await expect(field(page, 'Cross camber')).toHaveValue('');
  await page.keyboard.press('Control+z');
  await expect(field(page, 'Cross camber')).toHaveValue('0.7');
  await expect(rightCamber(page)).toContainText('1.1°');

  // What is kept opens again with the fields in sight.
  await page.reload();
  await page.locator('summary', { hasText: 'Alignment sheet' }).first().click();
  await expect(field(page, 'Cross caster')).toHaveValue('−0.6');
  await page.locator('summary', { hasText: 'Where the axis runs' }).first().click();
  await page.getByRole('radio', { name: 'From both pivots' }).check();
  await expect(page.getByText('measured on the left. On the right the upper one')).toBeVisible();
});

for (const format of ['A4', 'Letter']) {
  test(`the report of a car whose wheels differ has both of them, on two pages of ${format} at most`, async ({
    page,
  }) => {
    const document = garageBench('left-and-right-differ');
    await visit(page, `/bench/report#${benchFragment(document)}`);
    await expect(page.getByRole('heading', { name: 'To have checked' })).toBeVisible();
    await expect(page.locator('.report figure svg')).toHaveCount(2);
    const file = await page.pdf({ format });
    expect(file.toString('latin1').match(/\/Type \/Page\b/g)?.length).toBeLessThanOrEqual(2);
    const text = pdfText(file);
    for (const said of await page.locator('.report td, .report li').allInnerTexts())
      expect(text).toContain(said.replaceAll(/\s/g, ''));
    expect(text).toContain('crosscaster,leftlessright:−0.60°');
  });
}
