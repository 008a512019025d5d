import { defineConfig } from '@playwright/test';
import { findBrowser } from './tests/browser/find-browser.ts';

/** Far from the ports that people use for their own servers; another where two copies are tried side by side. */
const port = Number(process.env['TEST_PORT'] ?? 41877);

const asRoot = process.getuid?.() === 0;
const browser = findBrowser();

export default defineConfig({
  testDir: 'tests/browser',
  testMatch: '**/*.spec.ts',
  outputDir: 'test-results',
  forbidOnly: Boolean(process.env['CI']),
  fullyParallel: true,
  // A busy machine may be slow, and no test asserts a time: waits are long, and a lone stumble is tried once more.
  retries: 1,
  timeout: 120_000,
  expect: { timeout: 20_000 },
  workers: 2,
  reporter: 'list',
  use: {
    baseURL: `http://127.0.0.1:${port}`,
    locale: 'en-GB',
    timezoneId: 'UTC',
    // A trace of every test costs as much as the test: only what stumbled is traced, when it is tried again.
    trace: 'on-first-retry',
    launchOptions: {
      ...(browser !== undefined && { executablePath: browser }),
      // A browser refuses to run as root with its sandbox on.
      chromiumSandbox: !asRoot,
      args: [
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  webServer: {
    command: `node src/cli/serve.mjs --host 127.0.0.1 --port ${port}`,
    url: `http://127.0.0.1:${port}/`,
    reuseExistingServer: false,
  },
});
