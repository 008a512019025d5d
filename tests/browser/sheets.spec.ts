import { readFileSync } from 'node:fs';
import { expect, test, type Browser, type Page } from '@playwright/test';
import { plain } from '#exercises/phrase.ts';
import type { Sheet } from '#exercises/sheet/sheet.ts';
import { sheetKinds } from '#exercises/sheet/sheet-kinds.ts';
import { sheetFragment, sheetIn } from '#exercises/sheet/sheet-link.ts';
import { variantOf } from '#exercises/sheet/variant.ts';
import { valueOf } from '../core/example-corner.ts';
import { SHEET } from '../exercises/sheet/a-sheet.ts';
import { fillPart } from './exercise-page.ts';
import { pdfText } from './pdf-text.ts';
import { PHONE, WIDE } from './site.ts';
import { visit } from './visit.ts';

test.use({ viewport: WIDE });

test('an instructor composes a sheet, students do it on their phones, and it is collected, marked anew and saved', async ({
  page,
  browser,
}) => {
  test.slow();
  const link = await compose(page);
  const sheet = valueOf(sheetIn(link));
  expect(sheet.items.map(({ kind, marks }) => [kind, marks])).toEqual([
    ['spacer-scrub', 4],
    ['inset-scrub', 2],
  ]);

  // One right, one with a slip carried forward, one all wrong.
  const right = await student(browser, link, 1, async (phone) => {
    await answer(phone, sheet, 1, (value) => value);
    await expect(phone.getByText('6 of 6 marks')).toBeVisible();
  });
  const [before] = (await variant(sheet, 2))[0]?.parts ?? [];
  const turnedRound = -(before?.answer ?? NaN);
  const carried = await student(browser, link, 2, async (phone) => {
    await answer(phone, sheet, 2, (value, item, part, follow) => {
      if (item > 0) return value;
      return part === 0 ? turnedRound : follow([turnedRound]);
    });
    await expect(phone.getByText('4 of 6 marks')).toBeVisible();
    await expect(phone.getByText('follows from your own value').first()).toBeVisible();
  });
  const wrong = await student(browser, link, 3, async (phone) => {
    await answer(phone, sheet, 3, (_value, _item, part) => (part === 0 ? 0.777 : -0.999));
    await expect(phone.getByText('0 of 6 marks')).toBeVisible();
  });

  await visit(page, `/sheets/collect${new URL(link).hash}`);
  const tampered = { ...(JSON.parse(wrong.file) as object), number: 4 };
  await page.getByLabel(/^Files of students/).setInputFiles([
    { name: 'one.json', mimeType: 'application/json', buffer: Buffer.from(right.file) },
    {
      name: 'four.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(tampered)),
    },
  ]);
  await page.getByLabel(/^Codes/).fill(`Hello, this is mine: ${carried.code}\nand ${wrong.code}`);
  await page.getByRole('button', { name: 'Take in the codes' }).click();
  await expect(page.getByText('3 results count, 1 refused.')).toBeVisible();
  await expect(page.getByText('four.json, number 4: changed after handing in')).toBeVisible();
  const slips = page.getByRole('listitem').filter({ hasText: 'inboard and outboard, in' });
  await expect(slips.getByRole('link', { name: 'Where the axis meets the road' })).toBeVisible();

  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save marks as CSV' }).click();
  const saved = await saving;
  expect(saved.suggestedFilename()).toBe('week-three-marks.csv');
  expect(readFileSync(await saved.path(), 'utf8')).toBe(
    [
      '\uFEFFnumber,1 A spacer behind the wheel,2 Wheels of another inset,marks,of,percent,hints',
      '1,4,2,6,6,100,0',
      '2,2,2,4,6,66.7,0',
      '3,0,0,0,6,0,0',
      '',
    ].join('\r\n'),
  );

  // What was collected is still there after the page is opened again, and one can be put aside.
  await visit(page, '/sheets');
  await visit(page, `/sheets/collect${new URL(link).hash}`);
  await expect(page.getByText('3 results count, 1 refused.')).toBeVisible();
  await page.getByRole('button', { name: 'Put aside: four.json' }).click();
  await page.getByRole('button', { name: 'Remove number 3' }).click();
  await expect(page.getByText('2 results count, 0 refused.')).toBeFocused();
});

test('a draft says what is wrong at its place, and keeps every letter', async ({ page }) => {
  await visit(page, '/sheets/compose');
  await page.getByRole('button', { name: 'Publish', exact: true }).click();
  await expect(page.getByText('This is empty. Allowed: a text of 1 to 120 letters.')).toBeVisible();
  await page.getByLabel('Title').fill('Half done');
  await page.locator('summary').filter({ hasText: 'Where the axis meets the road' }).click();
  await page.getByRole('button', { name: 'Add: A spacer behind the wheel' }).click();
  await page.getByRole('textbox', { name: 'Marks' }).fill('four');
  await expect(page.getByText('This is the text "four". Allowed: a number')).toBeVisible();
  await visit(page, '/sheets');
  await visit(page, '/sheets/compose');
  await expect(page.getByLabel('Title')).toHaveValue('Half done');
  await expect(page.getByRole('textbox', { name: 'Marks' })).toHaveValue('four');

  // Another sheet takes the draft's place only where that is wanted.
  await page.goto('about:blank');
  await visit(page, `/sheets/compose#${sheetFragment(SHEET)}`);
  await page.getByRole('button', { name: 'Keep my draft' }).click();
  await expect(page.getByLabel('Title')).toHaveValue('Half done');
  await page.goto('about:blank');
  await visit(page, `/sheets/compose#${sheetFragment(SHEET)}`);
  await page.getByRole('button', { name: 'Replace my draft' }).click();
  await expect(page.getByLabel('Title')).toHaveValue('Week three');
});

test('a student who closes the page finds the work again, and attempts stay used up', async ({
  page,
}) => {
  const link = await compose(page);
  const path = `/sheets/do${new URL(link).hash}`;
  await visit(page, path);
  await page.getByLabel('Your number').fill('x');
  await page.getByRole('button', { name: 'Begin' }).click();
  await expect(page.getByText('Type the number that your instructor gave you')).toBeVisible();
  await begin(page, 9);
  await page.getByRole('textbox').first().fill('-777');
  await page.getByRole('button', { name: 'Check' }).first().click();
  await expect(page.getByText('1 attempt left').first()).toBeVisible();
  await page.getByRole('textbox').nth(1).fill('12,5');
  await visit(page, '/sheets');
  await visit(page, path);
  await expect(page.getByLabel('Your number')).toHaveValue('9');
  await begin(page, 9);
  await expect(page.getByRole('textbox').first()).toHaveValue('-777');
  await expect(page.getByRole('textbox').nth(1)).toHaveValue('12,5');
  await expect(page.getByText('1 attempt left').first()).toBeVisible();
});

test('between attempts no answer is told, an empty one costs none, and the focus stays with the work', async ({
  page,
}) => {
  const link = await compose(page, { hints: true });
  const sheet = valueOf(sheetIn(link));
  const [exercise] = await variant(sheet, 9);
  const [before, after] = exercise?.parts ?? [];
  if (!exercise || !before || !after) throw new Error('the sheet has another exercise');
  await visit(page, `/sheets/do${new URL(link).hash}`);
  await begin(page, 9);
  const form = page.locator('section form').first();
  const check = form.getByRole('button', { name: 'Check' });

  await check.click();
  await expect(form.getByText('Nothing is filled in yet')).toBeVisible();
  await expect(form.getByText('2 attempts left')).toBeVisible();
  await form.getByRole('button', { name: /^Hint/ }).first().press('Enter');
  await expect(form.locator('.hint')).toBeFocused();

  // The first value turned round, and the second one carried on from there.
  await fillPart(form, 0, before, -before.answer);
  await fillPart(form, 1, after, after.follow([-before.answer]));
  await check.press('Enter');
  await expect(form.getByText('follows from your own value')).toBeVisible();
  await expect(form.getByText('it comes to this')).toHaveCount(0);
  await check.press('Enter');
  await expect(form.getByText('No attempt left.')).toBeFocused();
  await expect(form.getByText('it comes to this')).toBeVisible();
});

test('papers have each student’s numbers and no answers, the key has them, on A4 and Letter', async ({
  page,
}) => {
  const link = await compose(page);
  const sheet = valueOf(sheetIn(link));
  await visit(page, `/sheets/print${new URL(link).hash}`);
  await page.getByLabel(/^Numbers of the students/).fill('5, 7');
  for (const [format, width] of [
    ['A4', '594'],
    ['Letter', '612'],
  ] as const) {
    await page.getByRole('radio', { name: format }).check();
    await page.getByRole('radio', { name: /a paper for each/ }).check();
    const papers = await page.pdf({ preferCSSPageSize: true });
    expect(papers.toString('latin1')).toContain(`/MediaBox [0 0 ${width}`);
    const text = pdfText(papers);
    for (const number of [5, 7]) {
      for (const exercise of await variant(sheet, number)) {
        const asked = plain(exercise.question()).replaceAll(/\s/g, '');
        expect(text).toContain(asked.slice(0, 60));
        const solution = plain(exercise.parts[0]?.solution() ?? []).replaceAll(/\s/g, '');
        expect(text).not.toContain(solution);
      }
    }
    expect(text).not.toContain('Printpapersandkey');
    await page.getByRole('radio', { name: /the key/ }).check();
    const key = pdfText(await page.pdf({ preferCSSPageSize: true }));
    for (const exercise of await variant(sheet, 7))
      expect(key).toContain(plain(exercise.parts[0]?.solution() ?? []).replaceAll(/\s/g, ''));
  }
});

/** Composes a sheet of two exercises as a person does, and gives its link. */
async function compose(page: Page, { hints = false } = {}): Promise<string> {
  await visit(page, '/sheets/compose');
  await page.getByLabel('Title').fill('Week three');
  await page.locator('summary').filter({ hasText: 'Where the axis meets the road' }).click();
  await page.getByRole('button', { name: 'Add: A spacer behind the wheel' }).click();
  await page.getByRole('button', { name: 'Add: Wheels of another inset' }).click();
  await page.getByRole('textbox', { name: 'Marks' }).first().fill('4');
  if (hints) await page.getByLabel('Hints on request').first().check();
  await page.getByRole('button', { name: 'Publish', exact: true }).click();
  return page.getByLabel('Link for students').inputValue();
}

async function begin(page: Page, number: number): Promise<void> {
  await page.getByLabel('Your number').fill(String(number));
  await page.getByRole('button', { name: 'Begin' }).click();
  await expect(page.getByRole('heading', { name: 'Hand in' })).toBeVisible();
}

/** A student with a phone of their own, who works and hands in. */
async function student(
  browser: Browser,
  link: string,
  number: number,
  work: (phone: Page) => Promise<void>,
): Promise<{ readonly code: string; readonly file: string }> {
  const context = await browser.newContext({ viewport: PHONE });
  const phone = await context.newPage();
  await phone.goto(link);
  await phone.locator('html[data-awake]').waitFor({ state: 'attached' });
  await begin(phone, number);
  await work(phone);
  const code = await phone.getByLabel(/^Your code/).inputValue();
  const saving = phone.waitForEvent('download');
  await phone.getByRole('button', { name: 'Save the file' }).click();
  const file = readFileSync(await (await saving).path(), 'utf8');
  await context.close();
  return { code, file };
}

/** Fills in every part with what the student makes of its answer, and hands in. */
async function answer(
  phone: Page,
  sheet: Sheet,
  number: number,
  made: (
    value: number,
    item: number,
    part: number,
    follow: (earlier: readonly number[]) => number,
  ) => number,
): Promise<void> {
  for (const [i, exercise] of (await variant(sheet, number)).entries()) {
    const form = phone.locator('section form').nth(i);
    for (const [p, part] of exercise.parts.entries())
      await fillPart(form, p, part, made(part.answer, i, p, part.follow));
  }
  await phone.getByRole('button', { name: 'Hand in …' }).click();
  await phone.getByRole('button', { name: 'Hand in now' }).click();
}

const kindsOf = async (sheet: Sheet) => valueOf(await sheetKinds(sheet));

const variant = async (sheet: Sheet, number: number) =>
  variantOf(sheet, await kindsOf(sheet), number);
