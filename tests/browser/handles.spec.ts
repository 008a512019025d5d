import { expect, test, type Page } from '@playwright/test';
import { SHOWN } from '#core/display.ts';
import { PARAMETERS, type ParameterId } from '#scenes/parameters.ts';
import { control, handle, handlesShown, valueNow } from './figure.ts';
import { throughSteps } from './lesson-steps.ts';
import { LESSONS, WIDE } from './site.ts';
import { visit } from './visit.ts';

test.use({ reducedMotion: 'reduce', viewport: WIDE });

const FIRST: readonly string[] = LESSONS.slice(0, 3).map(({ slug }) => slug);

for (const lesson of LESSONS) {
  test(`${lesson.slug}: every handle is a slider that says its value in words, and has a field and buttons that do the same`, async ({
    page,
  }) => {
    let met = 0;
    await throughSteps(page, lesson, async () => {
      for (const id of await handlesShown(page)) {
        met++;
        await expectSpokenSlider(page, id);
        await expectSameByButtons(page, id);
        await expectSameByNumber(page, id);
      }
    });
    // The first lessons teach by handles; later ones may do without.
    if (FIRST.includes(lesson.slug)) expect(met).toBeGreaterThan(0);
  });
}

test('the handle on the first page can be moved by field and buttons too', async ({ page }) => {
  await visit(page, '/');
  await expectSpokenSlider(page, 'spacer');
  await expectSameByButtons(page, 'spacer');
  await expectSameByNumber(page, 'spacer');
});

/** What a screen reader gets: a name, the bounds, and the value in words with unit and direction. */
async function expectSpokenSlider(page: Page, id: ParameterId): Promise<void> {
  const { name, least, most, positive, negative, none } = PARAMETERS[id];
  const grip = handle(page, id);
  await expect(grip).toHaveRole('slider');
  await expect(grip).toHaveAccessibleName(name);
  await expect(grip).toHaveAttribute('aria-valuemin', String(least));
  await expect(grip).toHaveAttribute('aria-valuemax', String(most));
  for (const [key, word] of [
    ['End', positive],
    ['Home', least < 0 ? negative : none],
  ] as const) {
    await grip.press(key);
    const text = (await grip.getAttribute('aria-valuetext')) ?? '';
    expect(text.endsWith(word), `${name}: ${text}`).toBe(true);
    if (word !== none) expect(text).toMatch(/^\d+(\.\d)?(\u202fmm|°|\u202fN) [a-z ]+$/);
  }
}

async function expectSameByButtons(page: Page, id: ParameterId): Promise<void> {
  const grip = handle(page, id);
  const { less, more, slider } = control(page, id);
  await grip.press('Home');
  const start = await valueNow(grip);
  await more.click();
  const { step } = PARAMETERS[id];
  expect(await valueNow(grip)).toBeCloseTo(start + step);
  await expect(slider).toHaveValue(String(await valueNow(grip)));
  await less.click();
  expect(await valueNow(grip)).toBe(start);
}

async function expectSameByNumber(page: Page, id: ParameterId): Promise<void> {
  const { number } = control(page, id);
  for (const value of [PARAMETERS[id].most / 2, 2.5]) {
    await number.fill(String(value));
    await number.press('Enter');
    await expect.poll(() => valueNow(handle(page, id))).toBe(value);
    const { decimals } = SHOWN.metric[PARAMETERS[id].kind];
    await expect(number).toHaveValue(value.toFixed(decimals));
  }
}
