import { failure, type Outcome } from '#core/fault.ts';
import { readResult } from './read-result.ts';
import type { SealedResult } from './result.ts';
import { resultOfCode } from './short-code.ts';

/** One thing that was handed in, by the name of its file or its place in what was pasted. */
export interface Piece {
  readonly name: string;
  readonly result: Outcome<SealedResult>;
}

/** A code with a full stop at its end, or without one and cut off. Never across the beginning of the next. */
const CODE = /\bkb1\b[^.{]*?(?:\.|(?=\bkb1\b)|$)/gi;

/**
 * What a text holds of results: a document, a list of them, or any count of codes with other words between them.
 */
export function piecesOf(name: string, text: string): readonly Piece[] {
  const written = text.replace(/^\uFEFF/, '').trim();
  if (/^[{[]/.test(written)) return ofJson(name, written);
  const codes = [...written.matchAll(CODE)].map(([code]) => code.trim());
  if (codes.length === 0) return [{ name, result: NO_RESULT }];
  return codes.map((code, i) => ({
    name: codes.length === 1 ? name : `${name}, ${i + 1} of ${codes.length}`,
    result: code.endsWith('.') ? resultOfCode(code) : CUT_OFF,
  }));
}

function ofJson(name: string, json: string): readonly Piece[] {
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch {
    return [{ name, result: NO_RESULT }];
  }
  if (!Array.isArray(value)) return [{ name, result: readResult(value) }];
  if (value.length === 0) return [{ name, result: NO_RESULT }];
  return value.map((one: unknown, i) => ({
    name: `${name}, ${i + 1} of ${value.length}`,
    result: readResult(one),
  }));
}

const NO_RESULT: Piece['result'] = failure({
  path: '',
  wrong: 'holds no result that can be read',
  allowed: 'the file that a student hands in, or a code from kb1 to its full stop',
});

const CUT_OFF: Piece['result'] = failure({
  path: '',
  wrong: 'is a code without its end',
  allowed: 'the whole code, up to its full stop',
});
