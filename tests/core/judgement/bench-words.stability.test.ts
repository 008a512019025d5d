import { expect, test } from 'vitest';
import { BENCH_WORDS } from '#core/judgement/bench-words.ts';
import { benchIn } from '#core/judgement/bench-link.ts';
import { INPUT_IDS } from '#core/judgement/inputs.ts';
import { garageBench } from '../../garage-benches.ts';

// Our own links, kept so that those which people have saved go on to open; they prove nothing else.
const PUBLISHED =
  'bench=aBQQICgkGAAELBQgNAxhTYW5kZXJsaW5nLCBiYXJlbHkga25vd24OHg8fECERAwoxOTUvNjUgUjE1EgUFPho_BQJDBAMGAAUGAYA4BgGrDkQEAwcBrQQGAbQsBgHHP0AFBUkEAwYAAAYBljsGAfcWSgcBBUsGAQFMBgH3Fk0GALQCQQUFTgQDBwB7BgG4NgYBwQ9PBAMHAHsGDvv_ytnggL8-BgGJEVAGADBRBgDyAlIGAAVCBQVTBgAFVAYAQVUFA1g8WQYAsOoBWgYAI1YFA1g8WQYAsOoBWgYAI1cEAwUDWwYBCVwGAJQjXQYAAAUDWwYCBVwGALsvXQYAjBUFA1sGAgVcBgDtFl0HAN4HEyUUBQAMBAEFAg0DDTI1IG1tIHNwYWNlcnMZBQEqBgAZVEY';

test('a published link opens for ever', () => {
  expect(benchIn(PUBLISHED)).toEqual({ ok: true, value: garageBench('nothing-measured') });
});

test('no word stands twice, and every input has one', () => {
  expect(new Set(BENCH_WORDS).size).toBe(BENCH_WORDS.length);
  expect(INPUT_IDS.filter((id) => !BENCH_WORDS.includes(id))).toEqual([]);
});
