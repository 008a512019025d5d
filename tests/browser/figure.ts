import type { Locator, Page } from '@playwright/test';
import { PARAMETERS, type ParameterId } from '#scenes/parameters.ts';

/** A place in the window, in CSS pixels. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** The handle in the drawing that moves a parameter. */
export const handle = (page: Page, id: ParameterId): Locator =>
  page.locator(`svg [role=slider][data-parameter=${id}]`);

/** The parameters that have a handle in the drawings at the moment. */
export const handlesShown = (page: Page): Promise<ParameterId[]> =>
  page
    .locator('svg [role=slider]')
    .evaluateAll((grips) =>
      grips.map((grip) => (grip as SVGElement).dataset['parameter'] as ParameterId),
    );

/** What stands beside the drawing for a parameter. */
export function control(page: Page, id: ParameterId) {
  const { name } = PARAMETERS[id];
  const place = page.locator(`[data-control=${id}]`);
  return {
    place,
    number: place.getByRole('textbox', { name }),
    slider: place.getByRole('slider'),
    less: place.getByRole('button', { name: `${name}: less` }),
    more: place.getByRole('button', { name: `${name}: more` }),
  };
}

/** The parameter's value as a handle tells it to assistive software, in millimetres or degrees. */
export const valueNow = async (slider: Locator): Promise<number> =>
  Number(await slider.getAttribute('aria-valuenow'));

/** The middle of something in the window. */
export async function middleOf(place: Locator): Promise<Spot> {
  const box = await place.boundingBox();
  if (!box) throw new Error('it is not shown, so it has no middle');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Where marks of the drawing are in the window, by their keys: the middles of their shapes, through the drawing's own matrix. */
export const marksAt = (page: Page, keys: readonly string[]): Promise<readonly Spot[]> =>
  page.evaluate(
    (wanted) =>
      wanted.map((key) => {
        const mark = document.querySelector<SVGGraphicsElement>(`svg [data-key="${key}"]`);
        const matrix = mark?.getScreenCTM();
        if (!mark || !matrix) throw new Error(`no ${key} in the drawing`);
        const { x, y, width, height } = mark.getBBox();
        const middle = new DOMPoint(x + width / 2, y + height / 2).matrixTransform(matrix);
        return { x: middle.x, y: middle.y };
      }),
    keys,
  );

/** Drags with a mouse. */
export async function drag(page: Page, from: Locator, across: number, up = 0): Promise<void> {
  const { x, y } = await middleOf(from);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + across, y - up, { steps: 8 });
  await page.mouse.up();
}

/** Drags with a finger. */
export async function dragWithFinger(page: Page, from: Locator, across: number): Promise<void> {
  const { x, y } = await middleOf(from);
  const session = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', at?: Spot) =>
    session.send('Input.dispatchTouchEvent', { type, touchPoints: at ? [at] : [] });
  await touch('touchStart', { x, y });
  for (let share = 1; share <= 8; share++)
    await touch('touchMove', { x: x + (across * share) / 8, y });
  await touch('touchEnd');
  await session.detach();
}
