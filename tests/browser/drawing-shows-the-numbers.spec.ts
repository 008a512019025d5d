import { expect, test, type Page } from '@playwright/test';
import { changed, NO_CHANGE } from '#core/change.ts';
import type { Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { rotationForSteer, steered } from '#core/steering.ts';
import { radians } from '#core/angle.ts';
import type { Vector } from '#core/vector.ts';
import { trainingCar } from '../training-cars.ts';
import { handle, marksAt, middleOf, valueNow, type Spot } from './figure.ts';
import { WIDE } from './site.ts';
import { step, visit } from './visit.ts';

test.use({ viewport: WIDE, reducedMotion: 'reduce' });

/** What a drawing may be off by, in CSS pixels. */
const PIXEL = 1;

const siskin = trainingCar('siskin').left.corner;

test('while the wheel is dragged outboard, contact centre, axis and scrub radius lie where the core has them', async ({
  page,
}) => {
  await openRevealed(page, 3);
  const { x, y } = await middleOf(handle(page, 'spacer').locator('.ring'));
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (const across of [-200, -11, 7, 23, 60]) {
    await page.mouse.move(x + across, y + 5);
    const spacer = await valueNow(handle(page, 'spacer'));
    const now = changed(siskin, { ...NO_CHANGE, spacer: spacer / 1000 });
    const scale = await expectDrawn(page, now, ({ y: out, z }) => ({ x: out, y: -z }));
    await expectScrubRadius(page, measure(now).scrubRadius, scale);
  }
  await page.mouse.up();
});

test('while the wheel is steered, its centre and its print lie where the core has them, seen from above', async ({
  page,
}) => {
  await openRevealed(page, 6);
  await page
    .getByRole('group', { name: 'View' })
    .first()
    .getByRole('button', { name: 'Above' })
    .click();
  await page
    .getByRole('group', { name: 'How close' })
    .first()
    .getByRole('button', { name: 'Whole' })
    .click();
  const first = page.locator('.view').first();
  const grip = first.locator('[role=slider][data-parameter=steer]');
  const { x, y } = await middleOf(grip.locator('.ring'));
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (const across of [-60, -20, 15, 80]) {
    await page.mouse.move(x + across, y);
    const angle = radians(await valueNow(grip));
    const now = steered(siskin, rotationForSteer(siskin, angle));
    await expectDrawn(page, now, ({ x: ahead, y: out }) => ({ x: out, y: ahead }));
  }
  await page.mouse.up();
});

/** A step of the lesson on the Siskin at the road, its prediction made. */
async function openRevealed(page: Page, number: number): Promise<void> {
  await visit(page, `/lessons/at-the-road#step-${number}`);
  const show = step(page, number).getByRole('button', { name: 'Show me' });
  if ((await show.count()) > 0) await show.click();
}

/**
 * The pivots stay with the body and tell how the drawing lies in the window; everything else then has to be
 * where the core puts it.
 *
 * @param flat how the view shows a point, up to scale and place: to the right, and downward
 * @returns how many pixels a metre is
 */
async function expectDrawn(
  page: Page,
  corner: Corner,
  flat: (at: Vector) => Spot,
): Promise<number> {
  const { groundPoint, contactCentre } = measure(corner);
  const { lower, upper } = siskin.pivots;
  const [low, high, ...drawn] = await marksAt(page, [
    'lower-pivot-ring',
    'upper-pivot-ring',
    'ground-point',
    'contact-centre',
    'wheel-centre',
  ]);
  if (!low || !high) throw new Error('the pivots are not drawn');
  const [a, b] = [flat(lower), flat(upper)];
  const scale = Math.hypot(high.x - low.x, high.y - low.y) / Math.hypot(b.x - a.x, b.y - a.y);
  for (const [i, point] of [groundPoint, contactCentre, corner.wheelCentre].entries()) {
    const { x, y } = flat(point);
    const wanted = { x: low.x + scale * (x - a.x), y: low.y + scale * (y - a.y) };
    const found = drawn[i] ?? { x: NaN, y: NaN };
    expect(Math.hypot(found.x - wanted.x, found.y - wanted.y)).toBeLessThan(PIXEL);
  }
  return scale;
}

/** The dimension line is as long as the scrub radius, and its text says the same. */
async function expectScrubRadius(page: Page, scrubRadius: number, scale: number): Promise<void> {
  const words = `scrub radius ${(1000 * scrubRadius).toFixed(1)}\u202fmm`;
  await expect(page.locator('svg [data-key="scrubRadius-text"]')).toHaveText(words);
  const drawn = await page.locator('svg [data-key=scrubRadius]').evaluate((mark) => {
    // The last stroke of the mark is the dimension line itself.
    const [x1 = NaN, , x2 = NaN] =
      (mark.getAttribute('d') ?? '')
        .match(/[-\d.]+/g)
        ?.slice(-4)
        .map(Number) ?? [];
    return (x2 - x1) * ((mark as SVGGraphicsElement).getScreenCTM()?.a ?? NaN);
  });
  expect(Math.abs(drawn - scrubRadius * scale)).toBeLessThan(PIXEL);
}
