import { delimiter, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { findBrowser } from '../browser/find-browser.ts';

const only =
  (...paths: string[]) =>
  (path: string) =>
    paths.includes(path);

describe('the browser for the tests', () => {
  test('is the one that is named, even where others are installed', () => {
    const environment = { KNUCKLEBOOK_BROWSER: '/mine', PATH: '/usr/bin' };
    expect(findBrowser(environment, only('/mine', '/usr/bin/chromium'))).toBe('/mine');
  });

  test('is no other one when the one that is named is not there', () => {
    expect(() => findBrowser({ KNUCKLEBOOK_BROWSER: '/mine' }, only('/usr/bin/chromium'))).toThrow(
      RangeError,
    );
  });

  test('is found on the PATH', () => {
    const PATH = ['/a', '/b'].join(delimiter);
    const there = join('/b', 'google-chrome');
    expect(findBrowser({ PATH }, only(there))).toBe(there);
  });

  test.each([
    '/usr/bin/chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  ])('is found at its usual place: %s', (place) => {
    expect(findBrowser({ ProgramFiles: 'C:\\Program Files' }, only(place))).toBe(place);
  });

  test('is none where none is installed', () => {
    expect(findBrowser({ PATH: '/usr/bin' }, only())).toBeUndefined();
  });
});
