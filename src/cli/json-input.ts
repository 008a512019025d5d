import { readFile } from 'node:fs/promises';
import { text as textOf } from 'node:stream/consumers';
import { jsonMistake } from '#core/document/json-mistake.ts';
import { messageOf, Refusal } from './refusal.ts';

/** The JSON in a file, or in standard input without one or with - in its place. */
export async function jsonInput(file: string | undefined): Promise<unknown> {
  const fromInput = file === undefined || file === '-';
  const text = fromInput ? await inputText() : await fileText(file);
  return parsedJson(text, fromInput ? 'standard input' : file);
}

async function inputText(): Promise<string> {
  if (process.stdin.isTTY)
    console.error('Reading from the keyboard; --help says what is expected.');
  return textOf(process.stdin);
}

async function fileText(file: string): Promise<string> {
  try {
    return await readFile(file, 'utf8');
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    if (code === 'ENOENT') throw new Refusal(`there is no file ${file}`);
    if (code === 'EISDIR') throw new Refusal(`${file} is a folder, not a file`);
    throw new Refusal(`${file} cannot be read: ${messageOf(error)}`);
  }
}

function parsedJson(text: string, source: string): unknown {
  // Some editors put a byte order mark in front, which is no part of the text.
  const json = text.replace(/^\uFEFF/, '');
  try {
    return JSON.parse(json);
  } catch (error) {
    const mistake = jsonMistake(json);
    if (mistake === undefined) throw new Refusal(`${source} is not JSON: ${messageOf(error)}`);
    const { line, column, found, allowed } = mistake;
    throw new Refusal(
      `${source} is not JSON: line ${line}, column ${column}: found ${found}; allowed: ${allowed}`,
    );
  }
}
