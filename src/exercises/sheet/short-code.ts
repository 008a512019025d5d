import { failure, type Outcome } from '#core/fault.ts';
import type { Typed } from '../read-entry.ts';
import { fromBase32, plainBase32, toBase32 } from './base32.ts';
import { NibbleReader, NibbleWriter } from './nibbles.ts';
import { readResult } from './read-result.ts';
import {
  RESULT_FORMAT,
  RESULT_VERSION,
  type ItemWork,
  type SealedResult,
  type SheetResult,
} from './result.ts';

const PREFIX = 'kb1';
const SHEET_SIGNS = 10;
const CHECK_SIGNS = 8;
const GROUP = 5;

/** Half bytes that are no digits. */
const POINT = 10;
const ENDS = { none: 11, positive: 12, negative: 13 } as const;
const CLOSE = 14;
const ESCAPE = 15;

/**
 * A result in as few signs as it goes, for a message or for reading aloud: `kb1 4x2k9 … .` From `kb1` to the
 * full stop; spaces, line ends and capitals do not matter.
 */
export function codeOf(result: SealedResult): string {
  const writer = new NibbleWriter();
  digits(writer, result.number);
  digits(writer, result.handedIn_min);
  digits(writer, result.items.length);
  for (const { attempts, hints } of result.items) {
    digits(writer, attempts.length);
    for (const entries of attempts) {
      for (const entry of entries) typed(writer, entry);
      writer.put(CLOSE);
    }
    writer.put(...hints, CLOSE);
  }
  const signs = result.sheet + result.check + toBase32(writer.bytes());
  const groups = signs.match(new RegExp(`.{1,${GROUP}}`, 'g')) ?? [];
  return `${[PREFIX, ...groups].join(' ')}.`;
}

/** The result of a code, as strictly read as a document. */
export function resultOfCode(code: string): Outcome<SealedResult> {
  const signs = plainBase32(code.replace(/^\s*kb1/i, '').replace(/\.\s*$/, ''));
  const bytes = fromBase32(signs.slice(SHEET_SIGNS + CHECK_SIGNS));
  if (bytes === undefined) return failure(UNREADABLE);
  try {
    return readResult({
      ...unpacked(new NibbleReader(bytes)),
      sheet: signs.slice(0, SHEET_SIGNS),
      check: signs.slice(SHEET_SIGNS, SHEET_SIGNS + CHECK_SIGNS),
    });
  } catch {
    return failure(UNREADABLE);
  }
}

const UNREADABLE = {
  path: '',
  wrong: 'is a code that cannot be read; a part of it is missing or mistyped',
  allowed: 'the whole code, from kb1 to its full stop',
};

const utf8 = new TextEncoder();

function digits(writer: NibbleWriter, number: number | undefined): void {
  writer.put(
    ...String(number ?? '')
      .split('')
      .map(Number),
    CLOSE,
  );
}

function typed(writer: NibbleWriter, { text, word }: Typed): void {
  for (const sign of text) {
    if (/\d/.test(sign)) writer.put(Number(sign));
    else if (sign === '.') writer.put(POINT);
    else for (const byte of utf8.encode(sign)) writer.put(ESCAPE, byte >> 4, byte & 15);
  }
  writer.put(ENDS[word ?? 'none']);
}

function unpacked(reader: NibbleReader): Omit<SheetResult, 'sheet'> {
  const number = readDigits(reader);
  const handedIn_min = readDigits(reader);
  const count = readDigits(reader) ?? 0;
  const items: ItemWork[] = [];
  for (let i = 0; i < count; i++) items.push(readItem(reader));
  if (!reader.ended) throw new RangeError('the code goes on behind its end');
  return {
    format: RESULT_FORMAT,
    version: RESULT_VERSION,
    number: number ?? NaN,
    ...(handedIn_min !== undefined && { handedIn_min }),
    items,
  };
}

function readItem(reader: NibbleReader): ItemWork {
  const count = readDigits(reader) ?? 0;
  const attempts = Array.from({ length: count }, () => {
    const entries: Typed[] = [];
    for (let nibble = reader.next(); nibble !== CLOSE; nibble = reader.next())
      entries.push(readTyped(reader, nibble));
    return entries;
  });
  const hints: number[] = [];
  for (let nibble = reader.next(); nibble !== CLOSE; nibble = reader.next()) hints.push(nibble);
  return { attempts, hints };
}

function readDigits(reader: NibbleReader): number | undefined {
  let text = '';
  for (let nibble = reader.next(); nibble !== CLOSE; nibble = reader.next()) text += String(nibble);
  return text === '' ? undefined : Number(text);
}

function readTyped(reader: NibbleReader, first: number): Typed {
  const bytes: number[] = [];
  let nibble = first;
  while (nibble < ENDS.none || nibble === ESCAPE) {
    if (nibble === ESCAPE) bytes.push((reader.next() << 4) | reader.next());
    else bytes.push(nibble === POINT ? 0x2e : 0x30 + nibble);
    nibble = reader.next();
  }
  const text = new TextDecoder('utf-8', { fatal: true }).decode(Uint8Array.from(bytes));
  if (nibble === ENDS.positive) return { text, word: 'positive' };
  return nibble === ENDS.negative ? { text, word: 'negative' } : { text };
}
