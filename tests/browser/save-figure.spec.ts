import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { WIDE } from './site.ts';
import { visit } from './visit.ts';

test.use({ viewport: WIDE, reducedMotion: 'reduce' });

/** One of each sort of figure: views, turn plates, a sheet, bodies apart, a chart, and the invitation. */
const FIGURES = [
  '/lessons/two-points#step-2',
  '/lessons/the-wheel-turns#step-6',
  '/lessons/alignment-sheet',
  '/lessons/what-the-carrier-feels',
  '/lessons/from-axis-to-hands#step-5',
  '/',
] as const;

for (const path of FIGURES) {
  test(`the figure of ${path} is saved as an SVG that needs nothing from elsewhere, and as a PNG`, async ({
    page,
  }) => {
    const heard: string[] = [];
    page.on('console', (message) => heard.push(message.text()));
    await visit(page, path);
    const labels = await page
      .locator('.panel figure :is(svg[role=group] text, .value)')
      .evaluateAll((texts) =>
        texts.filter((text) => text.checkVisibility()).map((text) => text.textContent.trim()),
      );
    expect(labels.length).toBeGreaterThan(0);

    const svg = (await saved(page, 'Save as SVG')).toString('utf8');
    // The typeface goes along; otherwise there are neither styles nor addresses of anything.
    const bare = svg.replace(/<style[^>]*>@font-face[^<]*<\/style>/, '');
    const said = await page.evaluate((text) => {
      const file = new DOMParser().parseFromString(text, 'image/svg+xml');
      const of = (name: string) => file.querySelector(`svg > ${name}`)?.textContent ?? '';
      return {
        root: file.documentElement.localName,
        title: of('title'),
        words: of('desc'),
        texts: [...file.querySelectorAll('text')].map((one) => one.textContent),
        grips: file.querySelectorAll('[role=slider], .grip').length,
      };
    }, bare);
    expect(said.root).toBe('svg');
    expect(said.title.length).toBeGreaterThan(10);
    expect(said.words.length).toBeGreaterThan(40);
    expect(labels.filter((label) => !said.texts.join('\n').includes(label))).toEqual([]);
    expect(said.grips).toBe(0);
    expect(bare).not.toMatch(/var\(|color-mix|url\(|href=|class=|<style/);

    const png = await saved(page, 'Save as PNG');
    expect(png.subarray(1, 4).toString('latin1')).toBe('PNG');
    expect(png.readUInt32BE(16)).toBe(1620);
    expect(await inks(page, png)).toBeGreaterThan(3);
    expect(heard).toEqual([]);
  });
}

test('the link to the state of the invitation brings its setting along', async ({ page }) => {
  await visit(page, '/?set=spacer:25');
  await expect(page.locator('svg [data-parameter=spacer]')).toHaveAttribute('aria-valuenow', '25');
});

/** What the browser hands over when a button is pressed. */
async function saved(page: Page, name: string): Promise<Buffer> {
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name }).first().click();
  return readFileSync(await (await waiting).path());
}

/** How many colours a picture is painted with, looked at here and there: one, and it is blank. */
const inks = (page: Page, png: Buffer): Promise<number> =>
  page.evaluate(async (data) => {
    const image = new Image();
    image.src = `data:image/png;base64,${data}`;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.width;
    canvas.height = image.height;
    const context = canvas.getContext('2d');
    context?.drawImage(image, 0, 0);
    const dots = context?.getImageData(0, 0, image.width, image.height).data ?? [];
    const colours = new Set<string>();
    for (let i = 0; i < dots.length; i += 4 * 7)
      colours.add(`${dots[i]},${dots[i + 1]},${dots[i + 2]}`);
    return colours.size;
  }, png.toString('base64'));
