import { expect, test } from '@playwright/test';
import { existsSync, readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { buildSite } from '../../src/cli/site.mjs';
import { inProject } from '../../src/cli/project.mjs';
import { handle } from './figure.ts';
import { visit } from './visit.ts';

for (const [path, said] of [
  ['/lessons/no-such-lesson', 'There is no lesson called “no-such-lesson”.'],
  ['/practice/no-such-kind', 'There is no kind of exercise called “no-such-kind”.'],
  ['/nowhere/at/all', 'This address leads nowhere.'],
] as const) {
  test(`${path} says that it leads nowhere, and where to go`, async ({ page }) => {
    const response = await page.goto(path, { waitUntil: 'networkidle' });
    expect(response?.status()).toBe(404);
    await expect(page.getByRole('main')).toContainText(said);
    await page.getByRole('link', { name: 'course map' }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('The course');
  });
}

test('a link with a broken setting says what is broken, and shows the car as it stands', async ({
  page,
}) => {
  for (const [set, said] of [
    ['spacer:900', 'spacer: is 900; allowed: a number of millimetres from 0 to 60'],
    ['spacr:20', 'spacr: is not something that can be set'],
    ['spacer:20,steer:', 'steer: is empty'],
    ['<b>', 'is not something that can be set'],
  ] as const) {
    await visit(page, `/lessons/at-the-road?set=${encodeURIComponent(set)}#step-3`);
    await expect(page.getByRole('alert'), set).toContainText(said);
    await expect(handle(page, 'spacer')).toHaveAttribute('aria-valuenow', '0');
  }
  await visit(page, '/lessons/at-the-road?set=#step-3');
  await expect(page.getByRole('alert')).toHaveCount(0);
});

test('a link with a broken seed says so, and shows the first exercise', async ({ page }) => {
  await visit(page, '/practice/spacer-scrub');
  const first = await page.locator('form .question').innerText();
  for (const seed of ['%3Cscript%3E', 'Ünsinn', 'a'.repeat(41)]) {
    await visit(page, `/practice/spacer-scrub?seed=${seed}`);
    await expect(page.getByRole('alert'), seed).toContainText('which is no seed');
    await expect(page.locator('form .question')).toHaveText(first);
  }
});

test('a step that there is not opens the lesson at its beginning', async ({ page }) => {
  for (const hash of ['#step-99', '#step-0', '#nonsense']) {
    await page.goto('about:blank');
    await visit(page, `/lessons/at-the-road${hash}`);
    await expect(page.locator('#step-1')).toBeVisible();
  }
});

test.describe('as plain files on any server', () => {
  let server: Server;
  let address: string;

  test.beforeAll(async () => {
    test.setTimeout(120_000);
    if (!existsSync(inProject('build-static/404.html'))) await buildSite('static', 'warn');
    server = createServer((request, response) => {
      const { pathname } = new URL(request.url ?? '/', 'http://any');
      const file = fileFor(pathname);
      response.writeHead(file === NOT_FOUND ? 404 : 200, {
        'content-type': TYPES[extname(file)] ?? '',
      });
      response.end(readFileSync(join(FOLDER, file)));
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  });

  test.afterAll(() => {
    server.close();
  });

  test('an address that leads nowhere says so, and lessons open', async ({ page }) => {
    const response = await page.goto(`${address}/lessons/no-such-lesson`, {
      waitUntil: 'networkidle',
    });
    expect(response?.status()).toBe(404);
    await expect(page.getByRole('main')).toContainText('This address leads nowhere.');
    await page.getByRole('link', { name: 'course map' }).click();
    await page.getByRole('link', { name: 'Two points make an axis' }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Two points make an axis');
    await page.reload({ waitUntil: 'networkidle' });
    await expect(page.locator('#step-1')).toBeVisible();
  });
});

const FOLDER = inProject('build-static');
const NOT_FOUND = '404.html';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
};

/** What a plain server makes of a path: the file, or the folder's page, or the page for everything that is not there. */
const fileFor = (path: string): string =>
  [path, `${path}/index.html`, `${path}.html`]
    .map((name) => name.replace(/^\/+/, ''))
    .find((name) => extname(name) !== '' && existsSync(join(FOLDER, name))) ?? NOT_FOUND;
