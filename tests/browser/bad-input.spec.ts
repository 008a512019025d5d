import { expect, test, type Locator } from '@playwright/test';
import { control, handle, valueNow } from './figure.ts';
import { WIDE } from './site.ts';
import { step, visit } from './visit.ts';

test.use({ viewport: WIDE, reducedMotion: 'reduce' });

/** What people type that is no length, and what has to be said about it. */
const UNREADABLE = [
  ['12 kN', 'is a force, but a length is asked for'],
  ['4 bananas', 'is not a unit that is known here'],
  ['twelve', 'Allowed:'],
  ['1e99', 'is too large'],
  ['1.234.5', 'Allowed:'],
] as const;

test('a field of the figure takes any common unit, keeps what it cannot read and says why', async ({
  page,
}) => {
  await visit(page, '/');
  const { number, place } = control(page, 'spacer');
  const grip = handle(page, 'spacer');
  for (const [text, millimetres] of [
    ['12,5', 12.5],
    ['1,5 in', 38.1],
    ['2 cm', 20],
    ['0', 0],
  ] as const) {
    await number.fill(text);
    await number.press('Enter');
    await expect.poll(() => valueNow(grip), text).toBeCloseTo(millimetres, 6);
    await expect(place.getByRole('alert')).toHaveCount(0);
  }
  for (const [text, said] of [
    ...UNREADABLE,
    ['', 'Nothing has been entered'],
    ['900', 'outside what this figure can show; allowed: 0.0 to 60.0'],
    ['-5', 'outside what this figure can show'],
  ] as const) {
    await number.fill(text);
    await number.press('Enter');
    await expectComplaint(number, text, said);
    expect(await valueNow(grip), text).toBe(0);
  }
  await number.press('Escape');
  await expect(number).toHaveValue('0.0');
  await expect(place.getByRole('alert')).toHaveCount(0);
});

test('a prediction that cannot be read is kept, explained at its place, and reveals nothing', async ({
  page,
}) => {
  await visit(page, '/lessons/at-the-road#step-3');
  const here = step(page, 3);
  const number = here.getByRole('textbox');
  const commit = here.getByRole('button', { name: 'That is my prediction' });
  for (const [text, said] of [
    ...UNREADABLE,
    ['', 'Write down a number first'],
    ['25', 'Which way?'],
  ] as const) {
    await number.fill(text);
    await commit.click();
    await expect(here.getByRole('alert')).toContainText(said);
    await expect(number).toHaveValue(text);
    await expect(here.getByRole('status')).toBeEmpty();
  }
  await number.fill('-25');
  await here.getByRole('radio', { name: /^inboard/ }).check();
  await commit.click();
  await expect(here.getByRole('alert')).toContainText(
    'The minus says outboard, but inboard is chosen',
  );
  await expect(here.getByRole('status')).toBeEmpty();
});

test('an answer that cannot be read is kept, explained at its place, and counts as no try', async ({
  page,
}) => {
  await visit(page, '/practice/spacer-scrub');
  const first = page.locator('form .parts > li').first();
  const number = first.getByRole('textbox');
  for (const [text, said] of UNREADABLE) {
    await number.fill(text);
    await page.getByRole('button', { name: 'Check' }).click();
    await expectComplaint(number, text, said, first);
  }
  await expect(page.getByText(/of 2 parts/)).toHaveCount(0);
  await visit(page, '/practice');
  await expect(page.getByText('No exercises so far.')).toBeVisible();
});

/** The complaint stands beside the field, belongs to it for a screen reader too, and the text is still there. */
async function expectComplaint(
  number: Locator,
  text: string,
  said: string,
  place: Locator = number.locator('xpath=ancestor::*[@data-control]'),
): Promise<void> {
  await expect(place.getByRole('alert'), text).toContainText(said);
  await expect(number).toHaveValue(text);
  await expect(number).toHaveAttribute('aria-invalid', 'true');
  await expect(number).toHaveAccessibleDescription(new RegExp(said.slice(0, 20)));
}
