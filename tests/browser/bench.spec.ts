import { readFileSync } from 'node:fs';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { garageBench } from '../garage-benches.ts';
import { benchFragment } from '#core/judgement/bench-link.ts';
import { pdfText } from './pdf-text.ts';
import { PHONE } from './site.ts';
import { visit } from './visit.ts';

test.use({ viewport: PHONE });

const spacer = (page: Page): Locator => page.getByRole('textbox', { name: 'Spacer', exact: true });

/** Puts a car on the bench of which nothing is known but its tyre. */
async function begin(page: Page, name = 'Mine'): Promise<void> {
  await visit(page, '/bench');
  await page.getByLabel('Front tyre, as marked on its sidewall').fill('205/55 R16 91V');
  await page.getByLabel(/^A name for it/).fill(name);
  await page.getByRole('button', { name: 'Begin with my car' }).click();
  await expect(page.getByRole('heading', { name: 'The result' })).toBeVisible();
}

test('an enthusiast with tape, sidewall and alignment sheet enters a car on a phone, a spacer, and takes a report along', async ({
  page,
}) => {
  await visit(page, '/');
  await page.getByRole('link', { name: 'Put my car on the bench' }).click();
  await page.getByLabel('Front tyre, as marked on its sidewall').fill('two hundred');
  await page.getByRole('button', { name: 'Begin with my car' }).click();
  await expect(page.getByRole('alert').first()).toContainText('allowed');
  await page.getByLabel('Front tyre, as marked on its sidewall').fill('205/55 R16 91V');
  await page.getByRole('button', { name: 'Begin with my car' }).click();

  await page.getByLabel('Inset of the wheel', { exact: true }).fill('45');
  await page.getByRole('button', { name: 'On to: Alignment sheet' }).click();
  await page.getByLabel('Camber', { exact: true }).fill('-0,5');
  await page.getByLabel('Caster angle', { exact: true }).fill('4.5');
  await page.getByLabel('Steering-axis inclination', { exact: true }).fill('13');
  await page.getByRole('button', { name: 'On to: Where the axis runs' }).click();
  await page.getByLabel('Rim line to lower pivot', { exact: true }).fill('6 in');
  await page.getByLabel('Height of the lower pivot', { exact: true }).fill('190 kN');
  await page.getByLabel('Height of the lower pivot', { exact: true }).blur();
  await expect(page.getByText('is a force, but a length is asked for')).toBeVisible();
  await page.getByLabel('Height of the lower pivot', { exact: true }).fill('190');

  await page.getByRole('button', { name: 'Add a change' }).click();
  await spacer(page).fill('15');
  const headline = page.locator('p.headline');
  await expect(headline).toContainText('Change 1');
  await expect(headline).toContainText('→');
  // In reach whatever is looked at.
  await expect(headline).toBeInViewport();
  await expect(page.getByRole('heading', { name: 'Worse' })).toBeVisible();
  await expect(page.getByRole('row', { name: /scrub radius/ }).first()).toBeVisible();
  await expect(page.getByText('never that a change is safe')).toBeVisible();

  await page.getByRole('link', { name: 'Report for the workshop' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('My car: Change 1');
  await expect(page.getByText('To be changed:')).toBeVisible();
});

test('by keyboard alone a training car is opened, changed, and the change undone and done again', async ({
  page,
}) => {
  await visit(page, '/bench');
  await tabTo(page, page.getByRole('button', { name: 'Linnet' }));
  await page.keyboard.press('Enter');
  await tabTo(page, page.getByRole('button', { name: 'Add a change' }));
  await page.keyboard.press('Enter');
  await expect(
    page.getByRole('heading', { level: 3, name: 'Change 1', exact: true }),
  ).toBeFocused();
  await tabTo(page, spacer(page));
  await page.keyboard.type('20');
  await page.keyboard.press('Enter');
  await expect(page.locator('p.headline')).toContainText('Change 1');
  await page.keyboard.press('Control+z');
  await expect(spacer(page)).toHaveValue('');
  await page.keyboard.press('Control+y');
  await expect(spacer(page)).toHaveValue('20');
});

test('nothing typed is lost: by a reload, by going back, by a closed tab, and not what cannot be read either', async ({
  page,
  context,
}) => {
  await begin(page);
  await page.getByLabel('Inset of the wheel', { exact: true }).fill('4x');
  await page.getByLabel('Rim width between the flanges', { exact: true }).fill('6.5');
  await page.reload();
  await expect(page.getByLabel('Inset of the wheel', { exact: true })).toHaveValue('4x');
  await expect(page.getByLabel('Rim width between the flanges', { exact: true })).toHaveValue(
    '6.5',
  );
  await page.getByLabel('Track width', { exact: true }).fill('1500');
  await page.goto('/glossary');
  await page.goBack();
  await expect(page.getByLabel('Track width', { exact: true })).toHaveValue('1500');
  await page.getByLabel('Height of the wheel centre', { exact: true }).fill('295');
  await page.close();
  const again = await context.newPage();
  await visit(again, '/bench');
  await expect(again.getByLabel('Height of the wheel centre', { exact: true })).toHaveValue('295');
  await expect(again.getByLabel('Inset of the wheel', { exact: true })).toHaveValue('4x');
});

test('a car that is kept but cannot be read is said so, saved as it is, and stays; the others open', async ({
  page,
}) => {
  await begin(page, 'Broken one');
  await page.evaluate(() => {
    const key = 'knucklebook:bench-open';
    const record = JSON.parse(localStorage.getItem(key) ?? '{}') as {
      at: number;
      document: { version: number };
    };
    record.at += 1000;
    record.document.version = 99;
    localStorage.setItem(key, JSON.stringify(record));
  });
  await page.reload();
  await expect(page.getByText('could not be read. It is kept as it is')).toBeVisible();
  await expect(page.getByText('which a newer copy of the course has written')).toBeVisible();
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save what is there as a file' }).click();
  const file = readFileSync(await (await saving).path(), 'utf8');
  expect((JSON.parse(file) as { version: number }).version).toBe(99);

  // Nonsense in the place of a record is no reason to stop.
  await page.evaluate(() => {
    localStorage.setItem('knucklebook:bench-open', '{"half');
  });
  await page.reload();
  await expect(page.getByRole('button', { name: 'Open Broken one' })).toBeVisible();
});

test('cars are named, copied, removed and brought back, saved as a file and opened again', async ({
  page,
}) => {
  await begin(page);
  await page.getByLabel('Name', { exact: true }).fill('Daily');
  await page.getByRole('button', { name: 'Copy Daily' }).click();
  await expect(page.getByRole('button', { name: 'Remove Daily, copy' })).toBeVisible();
  await page.getByRole('button', { name: 'Remove Daily, copy' }).click();
  await page.getByRole('button', { name: 'Bring back Daily, copy' }).click();
  await expect(page.getByRole('button', { name: 'Remove Daily, copy' })).toBeVisible();

  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file' }).click();
  const saved = await saving;
  expect(saved.suggestedFilename()).toBe('daily-copy.bench.json');
  const text = readFileSync(await saved.path(), 'utf8');
  await page.getByText('Another car', { exact: true }).click();
  const open = (body: string) =>
    page
      .getByLabel('Its file')
      .setInputFiles({ name: 'car.json', mimeType: 'application/json', buffer: Buffer.from(body) });
  await open(text.replace('"tyre"', '"tire"'));
  await expect(page.getByText('car.tire is not known here')).toBeVisible();
  await open(text.replace('Daily, copy', 'From a file'));
  await expect(page.getByLabel('Name', { exact: true })).toHaveValue('From a file');
});

test('where storage is forbidden everything works, and the page says that nothing is kept', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const forbid = (): never => {
      throw new DOMException('forbidden', 'SecurityError');
    };
    Object.defineProperty(window, 'indexedDB', { get: forbid });
    Object.defineProperty(window, 'localStorage', { get: forbid });
  });
  await begin(page);
  await expect(page.getByText('does not let the page keep anything')).toBeVisible();
  await page.getByRole('button', { name: 'Add a change' }).click();
  await spacer(page).fill('10');
  await expect(page.locator('p.headline')).toContainText('Change 1');
});

test('a link holds the whole bench, a cut one is told, and a figure’s car comes with its change', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await visit(page, '/bench?car=siskin&set=spacer:20,camberAtTop:-1');
  await expect(spacer(page)).toHaveValue('20');
  await expect(page.getByLabel(/^Camber gained at the top plate/)).toHaveValue('−1');
  await page.getByRole('button', { name: 'Copy a link' }).click();
  await expect(page.getByText('Link copied')).toBeVisible();
  const link = await page.evaluate(() => navigator.clipboard.readText());
  const sign = await page.locator('p.headline').innerText();
  await page.goto('about:blank');
  await visit(page, link);
  await expect(spacer(page)).toHaveValue('20');
  expect(await page.locator('p.headline').innerText()).toBe(sign);
  await page.goto('about:blank');
  await visit(page, link.slice(0, -9));
  await expect(page.getByText('may have been cut off on its way')).toBeVisible();
});

for (const format of ['A4', 'Letter']) {
  test(`the report prints on one page of ${format}, with sources, cautions and what is left out`, async ({
    page,
  }) => {
    await visit(page, `/bench/report#${benchFragment(garageBench('all-at-once'))}`);
    await expect(page.getByRole('heading', { name: 'To have checked' })).toBeVisible();
    const file = await page.pdf({ format });
    expect(file.toString('latin1').match(/\/Type \/Page\b/g)).toHaveLength(1);
    const text = pdfText(file);
    for (const said of await page.locator('.report td, .report li').allInnerTexts())
      expect(text).toContain(said.replaceAll(/\s/g, ''));
    expect(text).not.toContain('Printit');
  });
}

async function tabTo(page: Page, target: Locator): Promise<void> {
  const wanted = await target.elementHandle();
  for (let press = 0; press < 120; press++) {
    if (await page.evaluate((element) => document.activeElement === element, wanted)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`no way by Tab to ${target.toString()}`);
}
