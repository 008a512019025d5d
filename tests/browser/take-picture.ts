// npm run picture: takes the README's picture of a lesson again, once its look has changed.

import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { chromium, type Page } from '@playwright/test';
import { buildIfStale } from '../../src/cli/site.mjs';
import { findBrowser } from './find-browser.ts';

await buildIfStale();
const server = spawn(process.execPath, [beside('../../src/cli/serve.mjs'), '--port', '0'], {
  stdio: ['ignore', 'pipe', 'inherit'],
});
try {
  const address = await addressFrom(server.stdout);
  const executablePath = findBrowser();
  const browser = await chromium.launch({
    ...(executablePath !== undefined && { executablePath }),
    // A browser refuses to run as root with its sandbox on.
    chromiumSandbox: process.getuid?.() !== 0,
  });
  const page = await browser.newPage({
    viewport: { width: 1280, height: 880 },
    locale: 'en-GB',
    // The figure then jumps to its place instead of gliding there.
    reducedMotion: 'reduce',
  });
  await predict(page, address);
  await page.screenshot({ path: beside('pictures/lesson.png') });
  await browser.close();
} finally {
  server.kill();
}

/** Makes the prediction of the step that puts a spacer in, so that figure, table and explanation show what it does. */
async function predict(page: Page, address: string): Promise<void> {
  await page.goto(`${address}/lessons/at-the-road#step-3`);
  const step = page.locator('#step-3');
  await step.getByRole('textbox').fill('29.7');
  await step.getByRole('radio', { name: 'inboard' }).check();
  await step.getByRole('button', { name: 'That is my prediction' }).click();
  await step.getByText('Your guess').waitFor();
}

/** Where the server says that it is. */
async function addressFrom(output: AsyncIterable<unknown>): Promise<string> {
  for await (const words of output) {
    const [address] = /http:\/\/\S+/.exec(String(words)) ?? [];
    if (address !== undefined) return address;
  }
  throw new Error('the server ended without saying where it is');
}

function beside(path: string): string {
  return fileURLToPath(new URL(path, import.meta.url));
}
