import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { codeOf } from '#exercises/sheet/short-code.ts';
import { sheetFragment } from '#exercises/sheet/sheet-link.ts';
import { resultOf, SHEET } from '../exercises/sheet/a-sheet.ts';
import { throughSteps } from './lesson-steps.ts';
import { LESSONS, NOWHERE, PHONE, SHEET_PAGES, WIDE } from './site.ts';
import { visit } from './visit.ts';

test.use({ reducedMotion: 'reduce' });

/** So tall that nothing lies scrolled away in a figure beside the text, where axe could not decide about it. */
const TALL = { ...WIDE, height: 2600 };

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/**
 * What axe cannot decide and people have: single signs have the colour of the words or buttons beside them, and cells
 * that are scrolled out of view in a table the colours of those in view. The colours of drawings are held against each
 * other in tests of their own.
 */
const REVIEWED = [
  { rule: 'color-contrast', within: 'math' },
  { rule: 'color-contrast', within: '.slide button' },
  { rule: 'color-contrast', within: '.scroll table' },
  { rule: 'color-contrast', within: 'figure[data-scene]' },
  { rule: 'color-contrast', within: 'li[data-place] .buttons' },
] as const;

/** One of each sort of page. */
const OTHERS = [
  '/',
  '/lessons',
  '/trails',
  '/trails/technician',
  '/formulas',
  '/sources',
  '/derivations',
  '/derivations/lift-as-work',
  '/practice',
  '/practice/scrub-from-pivots',
  '/glossary',
  '/bench',
  '/bench/report',
  '/bench?car=siskin&set=spacer:20',
  ...SHEET_PAGES,
  NOWHERE,
];

for (const lesson of LESSONS) {
  test(`${lesson.slug}: axe finds nothing in any step, on a phone or a wide screen, light or dark`, async ({
    page,
  }) => {
    test.setTimeout(180_000);
    // One step in the one way, the next in the other: a lesson’s steps are all of one make.
    await throughSteps(page, lesson, (number) => expectNoFault(page, [WAYS[number % 2 ? 0 : 1]]));
  });
}

test('axe finds nothing on the other pages, on a phone or a wide screen, light or dark', async ({
  page,
}) => {
  test.slow();
  for (const path of OTHERS) {
    await visit(page, path);
    await expectNoFault(page);
  }
});

test('axe finds nothing before a prediction, after one that cannot be read, and after a wrong answer', async ({
  page,
}) => {
  test.slow();
  await visit(page, '/lessons/at-the-road#step-3');
  await expectNoFault(page);
  await page.getByRole('textbox', { name: 'Scrub radius' }).fill('12 kN');
  await page.getByRole('button', { name: 'That is my prediction' }).click();
  await expectNoFault(page);
  await visit(page, '/practice/spacer-scrub');
  await page.getByRole('textbox').first().fill('4 bananas');
  await page.getByRole('button', { name: 'Check' }).click();
  await expectNoFault(page);
  await page.getByRole('textbox').first().fill('+999');
  await page.getByRole('button', { name: 'Check' }).click();
  await page.getByRole('button', { name: 'Hint' }).first().click();
  await page.getByRole('button', { name: 'Show the solution' }).click();
  await expectNoFault(page);
});

test('axe finds nothing on a sheet that is composed, worked on, collected and printed', async ({
  page,
}) => {
  test.slow();
  const link = `#${sheetFragment(SHEET)}`;
  await visit(page, `/sheets/compose${link}`);
  await page.getByRole('button', { name: 'Compare their variants' }).click();
  await page.getByRole('textbox', { name: 'Marks' }).first().fill('many');
  await page.getByRole('button', { name: 'Publish', exact: true }).click();
  await expectNoFault(page);
  await page.getByRole('textbox', { name: 'Marks' }).first().fill('4');
  await expect(page.getByLabel('Link for students')).toBeVisible();
  await expectNoFault(page);

  await visit(page, `/sheets/do${link}`);
  await page.getByLabel('Your number').fill('7');
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.getByRole('textbox').nth(2).fill('-999');
  await page.getByRole('button', { name: 'Check' }).nth(1).click();
  await page.getByRole('button', { name: /^Hint/ }).first().click();
  await page.getByRole('textbox').first().fill('4 bananas');
  await page.getByRole('button', { name: 'Hand in …' }).click();
  await expectNoFault(page);
  await page.getByRole('textbox').first().fill('');
  await page.getByRole('button', { name: 'Hand in …' }).click();
  await page.getByRole('button', { name: 'Hand in now' }).click();
  await expectNoFault(page);

  await visit(page, `/sheets/collect${link}`);
  await page.getByLabel(/^Codes/).fill(`${codeOf(resultOf(1))} nonsense kb1 0000`);
  await page.getByRole('button', { name: 'Take in the codes' }).click();
  await page.getByText('Look', { exact: true }).click();
  await expectNoFault(page);

  await visit(page, `/sheets/print${link}`);
  await expect(page.getByRole('article')).toHaveCount(3);
  await expectNoFault(page);
  await page.getByRole('radio', { name: /key/ }).check();
  await expectNoFault(page);
});

/** A phone in the light, a wide screen in the dark: colours do not hang on the width. */
const WAYS = [
  [PHONE, 'light'],
  [TALL, 'dark'],
] as const;

async function expectNoFault(
  page: Page,
  ways: readonly (typeof WAYS)[number][] = WAYS,
): Promise<void> {
  for (const [viewport, colorScheme] of ways) {
    await page.setViewportSize(viewport);
    await page.emulateMedia({ colorScheme });
    expect(await faults(page), page.url()).toEqual([]);
    expect(await paleLabels(page), page.url()).toEqual([]);
  }
}

/** Violations, and what axe could not decide and nobody has reviewed. */
async function faults(page: Page): Promise<string[]> {
  // A docked figure over half of a text would keep axe from deciding about the text, and so would the bench’s docked
  // headline and the shapes of a drawing, which it takes to go on where they are cut off. The words of a drawing are
  // looked at by themselves.
  await page.evaluate(() => {
    window.scrollTo(0, 0);
    for (const shapes of document.querySelectorAll<SVGElement>('svg > g[aria-hidden]'))
      shapes.style.display = 'none';
    for (const docked of document.querySelectorAll<HTMLElement>('.bench > .headline'))
      docked.style.position = 'static';
  });
  const axe = new AxeBuilder({ page });
  axe.options({ runOnly: [...TAGS], rules: { 'target-size': { enabled: true } } });
  const { violations, incomplete } = await axe.analyze();
  await page.evaluate(() => {
    for (const shapes of document.querySelectorAll<SVGElement>('svg > g[aria-hidden]'))
      shapes.style.display = '';
    for (const docked of document.querySelectorAll<HTMLElement>('.bench > .headline'))
      docked.style.position = '';
  });
  const found: string[] = [];
  for (const { id, nodes } of violations)
    for (const { target } of nodes) found.push(`${id}: ${target.join(' ')}`);
  for (const { id, nodes } of incomplete) {
    for (const { target } of nodes) {
      const place = target.join(' ');
      if (!(await isReviewed(page, id, place))) found.push(`undecided, ${id}: ${place}`);
    }
  }
  return found;
}

async function isReviewed(page: Page, id: string, place: string): Promise<boolean> {
  for (const { rule, within } of REVIEWED) {
    if (rule !== id) continue;
    if (await page.locator(place).evaluate((e, name) => e.closest(name) !== null, within))
      return true;
  }
  return false;
}

/** Words in drawings with less than 4.5 : 1 against the paper, by WCAG's own formula. */
const paleLabels = (page: Page): Promise<string[]> =>
  page.locator('svg text').evaluateAll((texts) => {
    const channels = (colour: string): number[] =>
      (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);
    const luminance = (colour: string): number => {
      const [r = NaN, g = NaN, b = NaN] = channels(colour).map((byte) => {
        const share = byte / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    return texts
      .filter((text) => {
        const paper = luminance(getComputedStyle(text.closest('svg') ?? text).backgroundColor);
        const ink = luminance(getComputedStyle(text).fill);
        const contrast = (Math.max(paper, ink) + 0.05) / (Math.min(paper, ink) + 0.05);
        return !(contrast >= 4.5);
      })
      .map((text) => text.outerHTML.slice(0, 120));
  });
