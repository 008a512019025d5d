import { expect, test, type Locator, type Page } from '@playwright/test';
import { visit } from './visit.ts';
import { PHONE } from './site.ts';

test.use({ viewport: PHONE });

const inset = (page: Page): Locator => page.getByLabel('Inset of the wheel', { exact: true });
const rim = (page: Page): Locator =>
  page.getByLabel('Rim width between the flanges', { exact: true });
const notice = (page: Page): Locator =>
  page.getByRole('status').filter({ hasText: 'Another tab has' });
const take = (page: Page): Locator =>
  page.getByRole('button', { name: 'Take what the other tab has' });
const keep = (page: Page): Locator => page.getByRole('button', { name: 'Keep what stands here' });
/** A car in the list of this browser’s cars that is not on the bench. */
const listed = (page: Page, name: string): Locator =>
  page.getByRole('button', { name: `Open ${name}`, exact: true });

/** One car, open in two tabs of one browser. */
async function twoTabs(page: Page): Promise<readonly [Page, Page]> {
  await visit(page, '/bench');
  await page.getByLabel('Front tyre, as marked on its sidewall').fill('205/55 R16 91V');
  await page.getByLabel(/^A name for it/).fill('Mine');
  await page.getByRole('button', { name: 'Begin with my car' }).click();
  await inset(page).fill('40');
  const other = await page.context().newPage();
  await visit(other, '/bench');
  await expect(inset(other)).toHaveValue('40');
  return [page, other];
}

test('a car that another tab has changed is said to be so; taking it over can be undone, and what was entered meanwhile stays', async ({
  page,
}) => {
  const [here, there] = await twoTabs(page);
  await inset(there).fill('45');
  await expect(notice(here)).toContainText('Another tab has changed Mine');
  // Nobody is stopped, and nothing that is entered goes over the other tab’s.
  await rim(here).fill('7,5');
  await expect(notice(here)).toContainText('kept as Mine, from this tab');
  await expect(inset(here)).toHaveValue('40');
  await expect(inset(there)).toHaveValue('45');
  await expect(rim(there)).toHaveValue('');

  await take(here).click();
  await expect(notice(here)).toHaveCount(0);
  await expect(inset(here)).toHaveValue('45');
  await expect(rim(here)).toHaveValue('');
  await expect(listed(here, 'Mine, from this tab')).toBeVisible();
  await expect(listed(there, 'Mine, from this tab')).toBeVisible();
  await here.getByRole('button', { name: 'Undo' }).click();
  await expect(inset(here)).toHaveValue('40');
  await expect(rim(here)).toHaveValue('7.5');
});

test('keeping what stands here leaves the other tab’s car beside it, and says so over there', async ({
  page,
}) => {
  const [here, there] = await twoTabs(page);
  await inset(there).fill('45');
  await expect(notice(here)).toBeVisible();
  await rim(here).fill('7');
  await keep(here).focus();
  await here.keyboard.press('Enter');
  await expect(notice(here)).toHaveCount(0);
  await expect(here.getByText('Kept as it stands here.')).toBeFocused();
  await expect(listed(here, 'Mine, as in the other tab')).toBeVisible();
  await expect(listed(here, 'Mine, from this tab')).toHaveCount(0);
  await expect(notice(there)).toContainText('Another tab has changed Mine');
  await here.reload();
  await expect(rim(here)).toHaveValue('7');
  await expect(inset(here)).toHaveValue('40');
  await here.getByRole('button', { name: 'Open Mine, as in the other tab' }).click();
  await expect(inset(here)).toHaveValue('45');
});

test('a tab that has not been told still does not write over what another one has kept', async ({
  page,
  context,
}) => {
  // Browsers let a tab in the background sleep, and then it hears nothing.
  await context.addInitScript(() => {
    Reflect.deleteProperty(globalThis, 'BroadcastChannel');
  });
  const [here, there] = await twoTabs(page);
  await inset(there).fill('45');
  await expect(inset(there)).toHaveValue('45');
  await there.waitForTimeout(300);
  await expect(notice(here)).toHaveCount(0);
  await rim(here).fill('7');
  await expect(notice(here)).toContainText('kept as Mine, from this tab');
  await there.reload();
  await there.getByRole('button', { name: 'Open Mine', exact: true }).click();
  await expect(inset(there)).toHaveValue('45');
  await expect(rim(there)).toHaveValue('');
  await expect(listed(there, 'Mine, from this tab')).toBeVisible();
});

test('a car that another tab has removed is still there to be kept', async ({ page }) => {
  const [here, there] = await twoTabs(page);
  await there.getByRole('button', { name: 'Remove Mine' }).click();
  await expect(notice(here)).toContainText('Another tab has removed this car');
  await keep(here).click();
  await expect(notice(here)).toHaveCount(0);
  await here.reload();
  await expect(inset(here)).toHaveValue('40');
});
