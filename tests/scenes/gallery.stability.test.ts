import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { cornerScene } from '#scenes/corner/corner-scene.ts';
import { drawn } from '#scenes/paper/drawn.ts';
import { readSettingText } from '#scenes/setting-text.ts';
import { valueOf } from '../core/example-corner.ts';
import { PICTURES, type Picture } from './gallery-pictures.ts';
import { modelNamed } from './scene-arbitraries.ts';
import { svgOf } from './svg.ts';

/**
 * No proof of anything: these are our own drawings, kept so that a change of them is noticed. Whoever changes them on
 * purpose looks at them in a browser, writes them anew with GALLERY=refresh in the environment, and says why.
 */
const GALLERY = new URL('./gallery/', import.meta.url);
const REFRESH = process.env['GALLERY'] === 'refresh';

/** Engines may differ in the last digit of a sine, and so in the second decimal on paper. */
const TOLERANCE = 0.02;
const NUMBER = /-?\d+(?:\.\d+)?/g;

const fileOf = ({ name }: Picture): URL => new URL(`${name}.svg`, GALLERY);

function pictured({ corner, set, look }: Picture): string {
  const setting = valueOf(readSettingText(set));
  return svgOf(drawn(cornerScene(modelNamed(corner), setting, look)));
}

describe('the picture', () => {
  test.each(PICTURES)('$name has not changed', (picture) => {
    const now = pictured(picture);
    if (REFRESH) writeFileSync(fileOf(picture), now);
    expect(existsSync(fileOf(picture)), 'no such picture yet: set GALLERY=refresh').toBe(true);
    const kept = readFileSync(fileOf(picture), 'utf8');
    expect(now.replace(NUMBER, '#')).toBe(kept.replace(NUMBER, '#'));
    expect(farthestApart(numbersOf(now), numbersOf(kept))).toBeLessThanOrEqual(TOLERANCE + 1e-9);
  });
});

test('the gallery holds its pictures and no others', () => {
  const files = readdirSync(GALLERY).filter((name) => name.endsWith('.svg'));
  expect(files.sort()).toEqual(PICTURES.map(({ name }) => `${name}.svg`).sort());
});

const numbersOf = (svg: string): readonly number[] => (svg.match(NUMBER) ?? []).map(Number);

const farthestApart = (a: readonly number[], b: readonly number[]): number =>
  Math.max(...a.map((value, i) => Math.abs(value - (b[i] ?? NaN))));
