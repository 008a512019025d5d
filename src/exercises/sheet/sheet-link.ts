import { failure, type Outcome } from '#core/fault.ts';
import { readSheet } from './read-sheet.ts';
import type { Sheet } from './sheet.ts';

const KEY = 'sheet=';

/** What stands behind the # of a sheet's link: the whole sheet, so that nothing has to be asked of any server. */
export function sheetFragment(sheet: Sheet): string {
  const bytes = new TextEncoder().encode(JSON.stringify(sheet));
  const text = btoa(String.fromCharCode(...bytes));
  return KEY + text.replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** The sheet in a link, in its fragment alone, or in the text of a sheet's file. */
export function sheetIn(text: string): Outcome<Sheet> {
  const written = text.replace(/^\uFEFF/, '').trim();
  const found = written.startsWith('{') ? written : fromLink(written);
  if (found === undefined) return failure(NO_SHEET);
  try {
    return readSheet(JSON.parse(found));
  } catch {
    return failure(NO_SHEET);
  }
}

const NO_SHEET = {
  path: '',
  wrong: 'holds no sheet that can be read; a link may have been cut off on its way',
  allowed: 'the whole link of a sheet, or the file of one',
};

function fromLink(link: string): string | undefined {
  const at = link.indexOf(KEY);
  if (at < 0) return undefined;
  const [text = ''] = /^[\w-]*/.exec(link.slice(at + KEY.length)) ?? [];
  try {
    const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
    const bytes = Uint8Array.from(binary, (sign) => sign.charCodeAt(0));
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}
