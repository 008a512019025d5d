import { chromium } from '@playwright/test';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Names under which Chromium and its relatives are found on the PATH. */
const COMMANDS = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
];

/** Where they are installed without being on the PATH; variables stand for Windows' folders. */
const PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/opt/google/chrome/chrome',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  '%ProgramFiles%\\Google\\Chrome\\Application\\chrome.exe',
  '%ProgramFiles(x86)%\\Google\\Chrome\\Application\\chrome.exe',
  '%LocalAppData%\\Google\\Chrome\\Application\\chrome.exe',
  '%ProgramFiles(x86)%\\Microsoft\\Edge\\Application\\msedge.exe',
];

type Environment = Readonly<Record<string, string | undefined>>;

/**
 * The full path of a browser to test with: the one named in KNUCKLEBOOK_BROWSER, otherwise the first
 * installed one, otherwise Playwright's own where it has been downloaded; undefined where there is none.
 *
 * @throws RangeError when KNUCKLEBOOK_BROWSER names a file that is not there
 */
export function findBrowser(
  environment: Environment = process.env,
  exists: (path: string) => boolean = existsSync,
): string | undefined {
  const named = environment['KNUCKLEBOOK_BROWSER'];
  if (named) {
    if (exists(named)) return named;
    throw new RangeError(`KNUCKLEBOOK_BROWSER is ${named}; allowed: the path of a browser`);
  }
  const folders = (environment['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  return [
    ...COMMANDS.flatMap((command) => folders.map((folder) => join(folder, command))),
    ...PLACES.map((place) => withVariables(place, environment)),
    chromium.executablePath(),
  ].find(exists);
}

const withVariables = (place: string, environment: Environment): string =>
  place.replace(/%(.+?)%/g, (_, name: string) => environment[name] ?? name);

// Run as a command, it prints the path, or ends with exit code 1.
if (import.meta.main) {
  const browser = findBrowser();
  if (browser === undefined) process.exitCode = 1;
  else console.log(browser);
}
