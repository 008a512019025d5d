import { describe, expect, test } from 'vitest';
import type { DrawnSlip, Exercise } from '#exercises/exercise.ts';
import { plain } from '#exercises/phrase.ts';
import { loadKinds } from '#exercises/registry.ts';
import { drawingOf, type PictureDrawing } from '$lib/exercise/pictures/drawing-of';

const SEEDS = ['a', 'b', 'c', 'd', 'e', 'f'];
const kinds = await loadKinds();

/** Kinds that nothing is drawn for, and why. */
const WITHOUT_ANY: Readonly<Record<string, string>> = {
  'parking-at-the-rim': 'the side of the scrub radius is not said, and has no say',
  'clamp-for-a-stop': 'a chain of sums over friction, without a length but the bolt circle',
};

/** Kinds whose slips are not drawn, and why. */
const SLIPS_UNDRAWN: Readonly<Record<string, string>> = {
  ...WITHOUT_ANY,
  'find-what-moved': 'the sheet itself is the picture',
  'read-life-chart': 'the chart itself is the picture',
  'self-return-on-lock': 'an offset by a rule, which no drawing shows as a length',
};

/** Of about a thousand; many of the rest are slips of the number alone, such as millimetres for metres. */
const LEAST_SLIPS = 600;

interface Shown {
  readonly exercise: Exercise;
  readonly slip: DrawnSlip;
  readonly drawing: PictureDrawing;
}

const shownIn = (exercise: Exercise): readonly Shown[] =>
  exercise.parts.flatMap(({ slips }) =>
    slips().flatMap((slip) => {
      const picture = slip.picture?.();
      return picture && picture.scene !== 'sheet'
        ? [{ exercise, slip, drawing: drawingOf(picture) }]
        : [];
    }),
  );

const texts = ({ shapes }: PictureDrawing): readonly string[] =>
  shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));

test('all kinds but those that are named here have a picture', () => {
  const bare = kinds.filter((kind) => {
    const { picture, solved } = kind.exercise('a');
    return !picture && !solved && shownIn(kind.exercise('a')).length === 0;
  });
  expect(bare.map(({ id }) => id).toSorted()).toEqual(Object.keys(WITHOUT_ANY).toSorted());
});

test('all kinds but those that are named here draw wrong roads', () => {
  const without = kinds.filter((kind) =>
    SEEDS.every((seed) => shownIn(kind.exercise(seed)).length === 0),
  );
  expect(without.map(({ id }) => id).toSorted()).toEqual(Object.keys(SLIPS_UNDRAWN).toSorted());
});

test('most slips are drawn', () => {
  const drawn = kinds.flatMap((kind) => [
    ...new Set(
      SEEDS.flatMap((seed) =>
        kind.exercise(seed).parts.flatMap(({ definition, slips }) =>
          slips()
            .filter((slip) => slip.picture?.())
            .map(({ id }) => `${definition.id} ${id}`),
        ),
      ),
    ),
  ]);
  expect(drawn.length).toBeGreaterThan(LEAST_SLIPS);
});

describe.each(kinds.filter(({ id }) => !(id in SLIPS_UNDRAWN)))('$id', (kind) => {
  const shown = SEEDS.flatMap((seed) => shownIn(kind.exercise(seed)));

  test('draws each wrong road dashed, beside what is right, and says so', () => {
    for (const { slip, drawing } of shown) {
      const wrong = drawing.shapes.filter((shape) => shape.wrong);
      expect(wrong.length, slip.id).toBeGreaterThan(0);
      expect(drawing.shapes.length, slip.id).toBeGreaterThan(wrong.length);
      expect(drawing.description, slip.id).toMatch(/Dashed .+\./);
    }
  });

  test('draws it elsewhere than what is right', () => {
    for (const { slip, drawing } of shown) {
      const paths = drawing.shapes.flatMap((shape) => (shape.kind === 'path' ? [shape] : []));
      const right = new Set(paths.filter(({ wrong }) => !wrong).map(({ d }) => d));
      const wrong = paths.filter((path) => path.wrong);
      expect(wrong.filter(({ d }) => !right.has(d)).length, slip.id).toBeGreaterThan(0);
    }
  });

  test('gives no number away that the question does not give', () => {
    for (const { exercise, slip, drawing } of shown) {
      const said = plain(exercise.question());
      const options = exercise.parts.flatMap(({ definition: { form } }) =>
        form && 'options' in form ? form.options.map(({ words }) => plain(words)) : [],
      );
      for (const text of texts(drawing).filter((one) => /\d/.test(one)))
        expect([said, ...options].join(' '), `${slip.id}: ${text}`).toContain(text);
    }
  });

  test('has nothing dashed beside question and solution', () => {
    for (const seed of SEEDS) {
      const { picture, solved } = kind.exercise(seed);
      for (const one of [picture?.(), solved?.()]) {
        if (!one || one.scene === 'sheet') continue;
        expect(drawingOf(one).shapes.filter((shape) => shape.wrong)).toEqual([]);
      }
    }
  });
});
