import { expect, test } from 'vitest';
import type { VariantDocument } from '#core/judgement/bench-document.ts';
import { notJudged } from '#core/judgement/cautions.ts';
import { setUpBench } from '#core/judgement/bench-setup.ts';
import { judge } from '#core/judgement/judge.ts';
import { benchOfTrainingCar } from '#core/judgement/start.ts';
import { sidesApart } from '../../../src/lib/bench/sides-apart.ts';
import { readTyre } from '../../../src/lib/bench/read-text.ts';
import { valueOf } from '../../core/example-corner.ts';
import { CAR_FILES } from '../../training-cars.ts';

const linnet = valueOf(benchOfTrainingCar(CAR_FILES.get('linnet.json')));

function setUp(variant: VariantDocument) {
  const setup = valueOf(setUpBench({ ...linnet, variants: [variant] }));
  const [changes] = setup.variants;
  if (changes === undefined) throw new RangeError('no variant');
  return { setup, changes };
}

/** What differs, by name: left and right as they are shown. */
function apart(variant: VariantDocument) {
  const { setup, changes } = setUp(variant);
  return new Map(
    sidesApart(judge(setup, changes), 'metric').map(({ id, left, right }) => [id, [left, right]]),
  );
}

test('a spacer at one wheel alone sets the two apart by its thickness, outboard of where the other stays', () => {
  const scrub = apart({ name: 'one', left: { spacer_mm: 20 }, right: {} }).get('scrubRadius');
  const [left = NaN, right = NaN] = (scrub ?? []).map(
    (text) => Number.parseFloat(text) * (text.includes('outboard') ? -1 : 1),
  );
  // Worked by hand: the wheel stands upright but for its camber, so the contact centre goes out by the spacer.
  expect(left - right).toBeCloseTo(20, 0);
});

test('the same at both wheels is apart in nothing, nor is what goes by the axle', () => {
  expect(apart({ name: 'both', both: { spacer_mm: 20 } }).size).toBe(0);
  expect(apart({ name: 'one', left: { spacer_mm: 20 }, right: {} }).has('track')).toBe(false);
});

test('a tyre for another rim without the inset of its wheel is said not to be judged whole', () => {
  const said = (variant: VariantDocument): string => {
    const { setup, changes } = setUp(variant);
    return notJudged(setup.car, changes).join(' ');
  };
  expect(said({ name: 'a', both: { tyre: '205/50 R17' } })).toContain('rims of 17 inches');
  expect(said({ name: 'a', both: { tyre: '205/50 R17', inset_mm: 40 } })).not.toContain('rims of');
  expect(said({ name: 'a', both: { tyre: '205/60 R15' } })).not.toContain('rims of');
});

test('a tyre is kept as tables write it, however it was typed', () => {
  expect(valueOf(readTyre(' 205/55r16 91v '))).toBe('205/55 R16 91V');
  expect(readTyre('two hundred').ok).toBe(false);
});
