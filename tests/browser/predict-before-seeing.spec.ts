import { expect, test, type Page } from '@playwright/test';
import { sizeText, valueText } from '#core/display.ts';
import { quantity } from '#core/quantities.ts';
import type { ParameterId } from '#scenes/parameters.ts';
import { control, drag, handle } from './figure.ts';
import { PREDICTIONS, type Prediction } from './predictions.ts';
import { WIDE } from './site.ts';
import { predict, step, visit } from './visit.ts';

test.use({ viewport: WIDE, reducedMotion: 'reduce' });

for (const prediction of PREDICTIONS) {
  const { lesson, step: number, of, after, moved } = prediction;
  const about = quantity(of);

  test(`${lesson.slug}, step ${number}: the ${about.name} stays hidden and the figure still until a prediction is made`, async ({
    page,
  }) => {
    await visit(page, `${lesson.path}#step-${number}`);
    const here = step(page, number);
    const answer = sizeText(after, about);

    for (const id of moved) await expectLocked(page, id);
    const told = `${await page.locator('body').innerText()} ${await accessibilityTree(page)}`;
    if (canBeHidden(prediction)) expect(numbersIn(told)).not.toContain(shown(after, prediction));
    expect(told).not.toContain('It comes out');

    await predict(here, '1');
    const reply = here.getByRole('status');
    await expect(reply).toContainText(/Your guess: 1(\.0)?\b/);
    await expect(reply).toContainText(`It comes out at ${answer}`);
    const heard = await accessibilityTree(page);
    expect(heard).toMatch(/Your guess: 1(\.0)?\b/);
    expect(heard).toContain(`It comes out at ${answer}`);
    for (const id of moved) await expect(control(page, id).number).toBeEnabled();
  });
}

test('most predictions are about something that changes', () => {
  expect(PREDICTIONS.filter(canBeHidden).length).toBeGreaterThan(PREDICTIONS.length / 2);
});

/** Nothing moves a parameter that waits: no control, no drag, no key. */
async function expectLocked(page: Page, id: ParameterId): Promise<void> {
  const { number, slider, less, more } = control(page, id);
  for (const part of [number, slider, less, more]) await expect(part).toBeDisabled();
  const grip = handle(page, id);
  if ((await grip.count()) === 0) return;
  await expect(grip).toHaveAttribute('aria-disabled', 'true');
  const value = await grip.getAttribute('aria-valuenow');
  await drag(page, grip, 30);
  await grip.dispatchEvent('keydown', { key: 'PageUp' });
  await expect(grip).toHaveAttribute('aria-valuenow', value ?? '');
}

/** Whether the answer differs from what stands on the page anyway: the value before the change. */
function canBeHidden(prediction: Prediction): boolean {
  return shown(prediction.before, prediction) !== shown(prediction.after, prediction);
}

const shown = (value: number, { of }: Prediction): string =>
  valueText(Math.abs(value), quantity(of).kind);

/** Every number with its unit, without its sign. */
const numbersIn = (text: string): string[] =>
  text.match(/\d+(?:\.\d+)?(?:\u202f(?:mm|N·m|N)|°)/g) ?? [];

async function accessibilityTree(page: Page): Promise<string> {
  const session = await page.context().newCDPSession(page);
  const { nodes } = await session.send('Accessibility.getFullAXTree');
  await session.detach();
  return nodes
    .flatMap(({ name, value, description }) => [name, value, description])
    .map((said) => String(said?.value))
    .join(' ');
}
