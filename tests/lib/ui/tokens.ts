import { readFileSync } from 'node:fs';

const CSS = readFileSync(new URL('../../../src/lib/ui/tokens.css', import.meta.url), 'utf8');
const DARK = '@media screen and (prefers-color-scheme: dark)';

/** The tokens of one colour scheme by name, as written: `--ink: #1d2329` is `ink`. */
export interface Tokens {
  readonly scheme: 'light' | 'dark';
  /** @throws RangeError for a token that is not there */
  readonly of: (name: string) => string;
}

const [light = '', dark = ''] = CSS.split(DARK);

/** The light scheme, and the dark one on top of it. */
export const SCHEMES: readonly [Tokens, Tokens] = [
  tokens('light', declared(light)),
  tokens('dark', { ...declared(light), ...declared(dark) }),
];

function declared(css: string): Record<string, string> {
  const found = css.matchAll(/--([a-z]+):\s*([^;]+);/g);
  return Object.fromEntries(Array.from(found, ([, name = '', value = '']) => [name, value]));
}

function tokens(scheme: Tokens['scheme'], values: Readonly<Record<string, string>>): Tokens {
  const of = (name: string): string => {
    const value = values[name];
    if (value === undefined) throw new RangeError(`tokens.css has no --${name}`);
    return value;
  };
  return { scheme, of };
}
