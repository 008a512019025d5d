import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { fromSI } from '#core/units/convert.ts';
import type { DrawnPart, Exercise } from '#exercises/exercise.ts';
import { isKindId, loadKind } from '#exercises/registry.ts';
import { LESSONS, PHONE } from './site.ts';
import { visit } from './visit.ts';

test.use({ viewport: PHONE, reducedMotion: 'reduce' });

/** Opens the site as somebody who has read the first two lessons. */
async function asReader(page: Page): Promise<void> {
  const read = Object.fromEntries(LESSONS.slice(0, 2).map(({ slug }) => [slug, 99]));
  await page.addInitScript((reached) => {
    localStorage.setItem('knucklebook:reached', reached);
  }, JSON.stringify(read));
}

const exerciseForm = (page: Page): Locator => page.locator('form.exercise');

/** The exercise that is on the page. */
async function drawn(page: Page): Promise<Exercise> {
  const form = exerciseForm(page);
  const kind = (await form.getAttribute('data-kind')) ?? '';
  const seed = (await form.getAttribute('data-seed')) ?? '';
  if (!isKindId(kind)) throw new Error(`no kind is called ${kind}`);
  return (await loadKind(kind)).exercise(seed);
}

/** Fills in the last part, which vouches for those before it, with the sign that the learner writes before decimals. */
async function answer(
  page: Page,
  sign: '.' | ',',
  of = (part: DrawnPart) => part.answer,
): Promise<string> {
  const part = (await drawn(page)).parts.at(-1);
  if (!part) throw new Error('an exercise without parts');
  const { unit, decimals, quantity } = part.definition;
  const value = of(part);
  const text = Math.abs(fromSI(value, unit)).toFixed(decimals).replace('.', sign);
  const place = exerciseForm(page).locator('.parts > li').last();
  await place.getByRole('textbox').fill(text);
  const word = value < 0 ? quantity.negative : quantity.positive;
  if (word !== undefined) await place.getByRole('radio', { name: word }).check();
  return text;
}

const check = (page: Page): Promise<void> => page.getByRole('button', { name: 'Check' }).click();
const goOn = (page: Page): Promise<void> =>
  page.getByRole('button', { name: /Next exercise|Finish the set/ }).click();

/** What the database of the record has of attempts. */
const stored = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((done) => {
        const opening = indexedDB.open('knucklebook');
        opening.onsuccess = () => {
          const { result } = opening;
          const count = result.transaction('attempts').objectStore('attempts').count();
          count.onsuccess = () => {
            result.close();
            done(count.result);
          };
        };
      }),
  );

/** Keeps what is typed a moment before the page is gone. */
async function reload(page: Page): Promise<void> {
  await page.reload();
  await page.locator('html[data-awake]').waitFor({ state: 'attached' });
}

test('a set is done with decimal comma and point, through a reload in the middle, saved, erased and brought back', async ({
  page,
}) => {
  await asReader(page);
  await visit(page, '/practice');
  await page.getByRole('link', { name: 'Begin' }).click();
  await expect(page.getByRole('heading', { name: 'Exercise 1 of 3' })).toBeVisible();
  expect(page.url()).toMatch(/\/practice\/today$/);
  await expect(page).toHaveTitle(/^Today’s set/);

  const kinds: string[] = [];
  for (const [i, sign] of ([',', '.', ','] as const).entries()) {
    await expect(page.getByRole('heading', { name: `Exercise ${i + 1} of 3` })).toBeVisible();
    const { kind, seed, title } = await drawn(page);
    kinds.push(kind);
    // Neither the kind nor its lesson is given away.
    expect(await page.locator('main').innerText()).not.toContain(title);
    const text = await answer(page, sign);
    if (i === 1) {
      await exerciseForm(page).getByRole('button', { name: 'Hint' }).last().click();
      await reload(page);
      await expect(page.getByRole('heading', { name: 'Exercise 2 of 3' })).toBeVisible();
      expect(await drawn(page)).toMatchObject({ kind, seed });
      await expect(exerciseForm(page).getByRole('textbox').last()).toHaveValue(text);
      await expect(exerciseForm(page).locator('.hint')).toHaveCount(1);
    }
    await check(page);
    await expect(exerciseForm(page).locator('.reply').last()).toContainText('That fits');
    await expect(page.locator('main')).toContainText(`That was “${title}”`);
    if (i === 1) {
      // What has been marked stays marked, and is not counted again.
      await reload(page);
      await expect(exerciseForm(page).locator('.reply').last()).toContainText('That fits');
      await check(page);
    }
    await goOn(page);
  }
  expect(new Set(kinds).size).toBe(3);
  await expect(page.getByRole('heading', { name: 'Done' })).toBeFocused();
  await expect(page.locator('main')).toContainText('3 of 3 at the first try');
  await expect(page.getByRole('row', { name: 'with help' })).toHaveCount(3);
  expect(await stored(page)).toBe(3);

  await visit(page, '/practice');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save it as a file' }).click();
  const file = await (await saving).path();
  // The focus goes along with what comes in a button's place.
  await page.getByRole('button', { name: 'Erase my record …' }).press('Enter');
  await expect(page.getByText('Erase all of it')).toBeFocused();
  await page.getByRole('button', { name: 'Keep it' }).press('Enter');
  await expect(page.getByRole('button', { name: 'Erase my record …' })).toBeFocused();
  await page.getByRole('button', { name: 'Erase my record …' }).click();
  await page.getByRole('button', { name: 'Erase my record', exact: true }).click();
  await expect(page.getByText('Your record is erased.')).toBeFocused();
  expect(await stored(page)).toBe(0);

  // A file with a fault changes nothing and says where.
  const text = await readFile(file, 'utf8');
  await page.getByLabel('Bring one in').setInputFiles({
    name: 'bent.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text.replace('"help":', '"halp":')),
  });
  await expect(page.getByRole('alert')).toContainText('attempts[0].halp');
  expect(await stored(page)).toBe(0);

  await page.getByLabel('Bring one in').setInputFiles(file);
  await expect(page.getByText('3 exercises brought in.')).toBeVisible();
  await expect(page.getByRole('alert')).toHaveCount(0);
  await page.getByLabel('Bring one in').setInputFiles(file);
  await expect(page.getByText('3 of the file were here already')).toBeVisible();
  expect(await stored(page)).toBe(3);
  await reload(page);
  await expect(page.getByText('3 exercises so far.')).toBeVisible();
});

test('what is typed at the end of a lesson and on a kind’s page comes back', async ({ page }) => {
  for (const path of ['/practice/spacer-scrub', '/lessons/two-points#practice']) {
    await visit(page, path);
    const form = exerciseForm(page).first();
    await form.getByRole('button', { name: 'Another like this' }).click();
    const seed = (await form.getAttribute('data-seed')) ?? '';
    expect(seed).toMatch(/^[a-z0-9]{8}$/);
    await form.getByRole('textbox').first().fill('7,25');
    await form.getByRole('radio').first().check();
    await reload(page);
    await expect(form).toHaveAttribute('data-seed', seed);
    await expect(form.getByRole('textbox').first()).toHaveValue('7,25');
    await expect(form.getByRole('radio').first()).toBeChecked();
  }
});

test('an easier one can be done first, with a way back', async ({ page }) => {
  await visit(page, '/practice/bent-carrier');
  await page.getByRole('link', { name: 'An easier one first' }).click();
  await expect(page).toHaveURL(/\/practice\/caster-from-pivots\?/);
  await page.getByRole('link', { name: 'Back to the harder one' }).click();
  await expect(page).toHaveURL(/\/practice\/bent-carrier$/);
  await expect(exerciseForm(page)).toHaveAttribute('data-kind', 'bent-carrier');
});

test('a record of the first version is brought along', async ({ page }) => {
  await page.goto('/');
  await page.evaluate(
    () =>
      new Promise<void>((done) => {
        const opening = indexedDB.open('knucklebook', 1);
        opening.onupgradeneeded = () => {
          opening.result.createObjectStore('attempts', { autoIncrement: true });
        };
        opening.onsuccess = () => {
          const write = opening.result.transaction('attempts', 'readwrite');
          for (const [i, firstTry] of [true, false].entries())
            write.objectStore('attempts').add({
              kind: 'spacer-scrub',
              version: 1,
              seed: `seed-${i}`,
              at: 1_700_000_000_000 + i,
              help: 2,
              firstTry,
              earned: 1,
              possible: 2,
            });
          write.oncomplete = () => {
            opening.result.close();
            done();
          };
        };
      }),
  );
  await visit(page, '/practice');
  await expect(page.getByText('2 exercises so far.')).toBeVisible();
  await expect(page.locator('li', { hasText: 'A spacer behind the wheel' })).toContainText(
    'tried 2 times, due today',
  );
});

test('an older copy in another tab is asked to be closed, and nothing is lost meanwhile', async ({
  page,
  context,
}) => {
  const old = await context.newPage();
  await old.goto('/');
  // The first version's pages did not let go of the database.
  await old.evaluate(
    () =>
      new Promise<void>((done) => {
        const opening = indexedDB.open('knucklebook', 1);
        opening.onupgradeneeded = () => {
          opening.result.createObjectStore('attempts', { autoIncrement: true });
        };
        opening.onsuccess = () => {
          Object.assign(globalThis, { held: opening.result });
          done();
        };
      }),
  );
  await visit(page, '/practice/spacer-scrub');
  await answer(page, '.');
  await check(page);
  await expect(page.getByText('Another tab has an older copy')).toBeVisible();
  await old.close();
  await expect(page.getByText('Another tab has an older copy')).toHaveCount(0);
  await expect.poll(() => stored(page)).toBe(1);
});

test('two tabs have one record', async ({ page, context }) => {
  const other = await context.newPage();
  await visit(other, '/practice');
  await expect(other.getByText('No exercises so far.')).toBeVisible();
  await visit(page, '/practice/spacer-scrub');
  await answer(page, ',');
  await check(page);
  await expect(other.getByText('One exercise so far.')).toBeVisible();
});

test('where nothing may be kept, that is said, and practising goes on', async ({ page }) => {
  await asReader(page);
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('forbidden', 'SecurityError');
    };
  });
  await visit(page, '/practice');
  await expect(page.getByText('does not let the page keep anything').first()).toBeVisible();
  await page.getByRole('link', { name: 'Begin' }).click();
  await answer(page, ',');
  await check(page);
  await expect(exerciseForm(page).locator('.reply').last()).toContainText('That fits');
  await goOn(page);
  await expect(page.getByRole('heading', { name: 'Exercise 2 of 3' })).toBeFocused();
});

test('how sure somebody is, is asked if wanted, and drawn from twenty answers on', async ({
  page,
}) => {
  await visit(page, '/practice');
  await page.getByLabel('Ask me how sure I am').check();
  await expect(page.getByText('0 of 20 answers')).toBeVisible();
  await visit(page, '/practice/spacer-scrub');
  for (let i = 0; i < 20; i++) {
    await answer(page, '.', (part) => (i % 2 === 0 ? part.answer : 1.7 * part.answer));
    await page.getByRole('radio', { name: /^Sure/ }).check();
    await check(page);
    await expect(page.getByRole('radio', { name: /^Sure/ })).toBeDisabled();
    await page.getByRole('button', { name: 'Another like this' }).click();
  }
  await visit(page, '/practice');
  await expect(
    page.getByRole('img', { name: 'What was stated against what came out' }),
  ).toBeVisible();
  const row = page.getByRole('row', { name: /^Sure/ });
  await expect(row).toContainText('10 of 20');
  await expect(row).toContainText('surer than you were right');
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
});

test('the day by which it is to be known sets the gaps, and a day that is over is refused', async ({
  page,
}) => {
  await visit(page, '/practice');
  const date = page.getByLabel('By when do you need it?');
  await date.fill('2020-01-01');
  await date.blur();
  await expect(page.getByRole('alert')).toContainText('That day is over');
  const inAYear = new Date(Date.now() + 365 * 24 * 3_600_000).toISOString().slice(0, 10);
  await date.fill(inAYear);
  await date.blur();
  await expect(
    page.getByText('365 days to go. What is new comes back after about 26 days.'),
  ).toBeVisible();
  await reload(page);
  await expect(date).toHaveValue(inAYear);
  await page.getByRole('button', { name: 'No date' }).click();
  await expect(page.getByText('No date: it is spaced as for 120 days.')).toBeVisible();
});
