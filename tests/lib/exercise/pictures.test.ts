import { describe, expect, test } from 'vitest';
import { toSI } from '#core/units/convert.ts';
import { plain } from '#exercises/phrase.ts';
import type { Exercise } from '#exercises/exercise.ts';
import type { Picture } from '#exercises/pictures/picture.ts';
import { loadKinds } from '#exercises/registry.ts';
import { drawingOf } from '$lib/exercise/pictures/drawing-of';

const SEEDS = ['a', 'b', 'c', 'd', 'e', 'f'];

/** Every picture that an exercise can show: beside question and solution, of its slips, and of both ends of a scale. */
const picturesOf = ({ picture, solved, parts }: Exercise): readonly Picture[] => [
  ...[picture, solved].flatMap((one) => (one ? [one()] : [])),
  ...parts.flatMap(({ slips, definition: { form, unit } }) => [
    ...slips().flatMap((slip) => slip.picture?.() ?? []),
    ...(form?.kind === 'set'
      ? [form.scale.least, form.scale.start, form.scale.most].map((at) =>
          form.picture(toSI(at, unit)),
        )
      : []),
  ]),
];

const drawing = (await loadKinds()).filter((kind) => picturesOf(kind.exercise('a')).length > 0);

test('there are pictures of every scene', () => {
  const scenes = drawing.flatMap((kind) =>
    picturesOf(kind.exercise('a')).map(({ scene }) => scene),
  );
  expect([...new Set(scenes)].toSorted()).toEqual([
    'axle',
    'bars',
    'bearing',
    'bolt',
    'chart',
    'contact',
    'corner',
    'sheet',
    'tyre',
    'wheel',
  ]);
});

describe.each(drawing)('$id', (kind) => {
  const pictures = SEEDS.flatMap((seed) => picturesOf(kind.exercise(seed)));

  test('draws shapes, each under a key of its own, and says what it shows', () => {
    for (const picture of pictures) {
      if (picture.scene === 'sheet') continue;
      const { shapes, title, description } = drawingOf(picture);
      const keys = shapes.map(({ key }) => key);
      expect(new Set(keys).size, keys.join(' ')).toBe(keys.length);
      expect(JSON.stringify(shapes)).not.toMatch(/NaN|Infinity|null/);
      expect(title).not.toBe('');
      expect(description).not.toMatch(/NaN|undefined|^$/);
    }
  });

  test('writes no number beside the question that is not given there', () => {
    for (const seed of SEEDS) {
      const { picture, question } = kind.exercise(seed);
      const shown = picture?.();
      if (!shown || shown.scene === 'sheet' || shown.scene === 'chart') continue;
      const said = plain(question());
      const numbers = drawingOf(shown)
        .shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))
        .filter((text) => /\d/.test(text));
      for (const text of numbers) expect(said).toContain(text);
    }
  });
});
