import { describe, expect, test } from 'vitest';
import type { Corner } from '#core/corner.ts';
import type { Exercise } from '#exercises/exercise.ts';
import type { DrawnRoad } from '#exercises/drawn-road.ts';
import { grade } from '#exercises/grade.ts';
import { plain } from '#exercises/phrase.ts';
import type { Picture } from '#exercises/pictures/picture.ts';
import { loadKinds } from '#exercises/registry.ts';
import { respond } from '#exercises/respond.ts';
import { drawingOf } from '$lib/exercise/pictures/drawing-of';

const SEEDS = ['a', 'b'];
/** What an earlier value is taken times, beyond all tolerances; the last one turns it round. */
const FACTORS = [1.17, 0.83, -0.6];

const SENSE = 'shows which way things turn, which the forces in it settle';
const LEVERS = 'shows a lever or a direction on the car as the question gives it';

/** Parts whose pictures an own earlier value alters nothing in, and why. */
const DRAWN_TRUE: Readonly<Record<string, string>> = {
  'brake-difference-from-rim moment': SENSE,
  'brake-force-moved together':
    'shows a sum of two moments as the lever that this car has at the road',
  'drive-moment moment': LEVERS,
  'lever-by-case moment': LEVERS,
  'load-left-right left': SENSE,
  'load-left-right right': SENSE,
  'load-left-right net': SENSE,
  'net-rack-from-brakes rack': SENSE,
  'rod-force-from-brake rod': SENSE,
  'row-loads-in-a-turn outboard': 'load line, radius and side force are given, and the rows follow',
  'row-loads-in-a-turn inboard': 'load line, radius and side force are given, and the rows follow',
  'scrub-for-rim-force rack': SENSE,
  'shaft-torque moment': LEVERS,
  'side-force-moment moment': LEVERS,
  'side-force-that-empties side-force': LEVERS,
  'spacer-that-flips moment': SENSE,
  'unequal-shafts both': SENSE,
  'yaw-and-steering steering': SENSE,
};

interface Taken {
  readonly slip: string;
  /** The part and its kind. */
  readonly place: string;
  readonly exercise: Exercise;
  readonly road: DrawnRoad | undefined;
  /** The same slip from the true values. */
  readonly fromTrue: Picture | undefined;
}

/** All slips that a learner can take from own earlier values of which one is off, the others following from it. */
function takenFromOwn(exercise: Exercise, factors = FACTORS): readonly Taken[] {
  const { kind, parts } = exercise;
  return parts.flatMap((part, i) =>
    parts.slice(0, i).flatMap((off, j) =>
      factors.flatMap((factor) => {
        if (off.definition.form && off.definition.form.kind !== 'set') return [];
        const own = [...parts.slice(0, j).map(({ answer }) => answer), off.answer * factor];
        for (const between of parts.slice(j + 1, i)) own.push(between.follow(own));
        return part.slips().flatMap((slip) => {
          const entries = [...own, slip.follow(own)];
          const mark = grade(exercise, entries).parts[i];
          const fromTrue = slip.picture?.();
          if (mark?.slip?.id !== slip.id || !mark.fromOwn || !fromTrue) return [];
          const road = respond(exercise, entries, i).road?.();
          const place = `${kind} ${part.definition.id}`;
          return [{ slip: slip.id, place, exercise, road, fromTrue }];
        });
      }),
    ),
  );
}

const kinds = await loadKinds();
const taken = kinds.flatMap((kind) => SEEDS.flatMap((seed) => takenFromOwn(kind.exercise(seed))));
const words = ({ road }: Taken): string => plain(road?.beside ?? []);
const isDrawnTrue = ({ place }: Taken): boolean => place in DRAWN_TRUE;

describe('a wrong road that goes on from a wrong value of the learner’s own', () => {
  const told = taken.filter(({ road }) => road?.beside);

  test('is drawn from that value, and says so, in all parts but those that are named here', () => {
    const own = told.filter((one) => !isDrawnTrue(one));
    expect(own.length).toBeGreaterThan(1000);
    for (const one of own) {
      const name = `${one.place} ${one.slip}`;
      expect(one.road?.picture, name).not.toEqual(one.fromTrue);
      expect(words(one), name).toMatch(/^Drawn from your own value for “.+”: solid/);
    }
  });

  test('is drawn from true values, and says so, where own ones alter nothing', () => {
    const same = told.filter(isDrawnTrue);
    expect([...new Set(same.map(({ place }) => place))].toSorted()).toEqual(
      Object.keys(DRAWN_TRUE).toSorted(),
    );
    for (const one of same) {
      expect(one.road?.picture, one.place).toEqual(one.fromTrue);
      expect(words(one), one.place).toMatch(/^Drawn from the true values: your own value for “/);
    }
  });

  test('is dashed beside what is right from there, and gives no number away', () => {
    for (const { place, slip, road, exercise } of told) {
      if (!road || road.picture.scene === 'sheet') continue;
      const { shapes } = drawingOf(road.picture);
      expect(JSON.stringify(shapes), place).not.toMatch(/NaN|Infinity|null/);
      const paths = shapes.flatMap((shape) => (shape.kind === 'path' ? [shape] : []));
      const right = new Set(paths.filter((path) => !path.wrong).map(({ d }) => d));
      const wrong = paths.filter((path) => path.wrong && !right.has(path.d));
      expect(wrong.length, `${place} ${slip}`).toBeGreaterThan(0);
      for (const shape of shapes)
        if (shape.kind === 'text' && /\d/.test(shape.text))
          expect(plain(exercise.question()), place).toContain(shape.text);
    }
  });
});

const mm = 1e-3;

/** The exercise of a kind. */
function drawn(id: string): Exercise {
  const exercise = kinds.find((kind) => kind.id === id)?.exercise('a');
  if (!exercise) throw new Error(`no kind ${id}`);
  return exercise;
}

/** What was given in it, in millimetres or newtons as it is printed. */
const givenIn = ({ item }: Exercise, name: string): number =>
  (item as Readonly<Record<string, number>>)[name] ?? NaN;

/** What is drawn for somebody who takes a slip of a part from these earlier values. */
function pictureOf(exercise: Exercise, part: number, slip: string, earlier: readonly number[]) {
  const found = exercise.parts[part]?.slips().find(({ id }) => id === slip);
  if (!found) throw new Error(`no slip ${slip}`);
  return respond(exercise, [...earlier, found.follow(earlier)], part).road?.();
}

/** How far the axis is outboard at a height, in metres, seen from the front. */
const outAt = ({ axis: { point, direction } }: Corner, up: number): number =>
  point.y + ((up - point.z) * direction.y) / direction.z;

// Worked by hand: similar triangles, moments about the other row, and sums.
describe('from a wrong value of one’s own', () => {
  test('the axis still passes the lower pivot, and leans as that value has it', () => {
    const exercise = drawn('scrub-from-pivots');
    const lean = 1.4 * (exercise.parts[1]?.answer ?? NaN);
    const own = [exercise.parts[0]?.answer ?? NaN, lean];
    const picture = pictureOf(exercise, 2, 'turned-round', own)?.picture;
    if (picture?.scene !== 'corner') throw new Error('no corner');
    const { corner } = picture;
    const pivot =
      corner.wheelCentre.y -
      (givenIn(exercise, 'contact_mm') - givenIn(exercise, 'lowerOut_mm')) * mm;
    expect(outAt(corner, givenIn(exercise, 'lowerUp_mm') * mm)).toBeCloseTo(pivot, 9);
    expect(outAt(corner, 0)).toBeCloseTo(pivot + lean, 9);
  });

  test('the spacer brings the wheel from there to the scrub radius that is wanted', () => {
    const exercise = drawn('spacer-for-scrub');
    const [without = NaN] = exercise.parts.map(({ answer }) => answer);
    const own = without - 7 * mm;
    const picture = pictureOf(exercise, 1, 'added', [own])?.picture;
    const turned = pictureOf(exercise, 1, 'turned-round', [own])?.picture;
    for (const one of [picture, turned]) {
      if (one === undefined) continue;
      if (one.scene !== 'corner' || !one.before) throw new Error('no corner');
      expect(one.corner.wheelCentre.y - outAt(one.corner, 0)).toBeCloseTo(
        givenIn(exercise, 'wanted_mm') * mm,
        9,
      );
      expect(one.before.wheelCentre.y - outAt(one.before, 0)).toBeCloseTo(own, 9);
    }
    expect(picture ?? turned).toBeDefined();
  });

  test('the rows carry what the own lever has them carry', () => {
    const exercise = drawn('row-loads');
    const lever = 0.8 * (exercise.parts[0]?.answer ?? NaN);
    const picture = pictureOf(exercise, 1, 'other-row', [lever])?.picture;
    if (picture?.scene !== 'bearing') throw new Error('no bearing');
    // About the pressure centre of the inboard row.
    const share = lever / (givenIn(exercise, 'spread_mm') * mm);
    expect(picture.rows?.map(({ row }) => row)).toEqual(['outboard']);
    expect(picture.rows?.[0]?.share).toBeCloseTo(share, 9);
    expect(picture.offset_mm).toBeCloseTo(1000 * lever - givenIn(exercise, 'spread_mm') / 2, 6);
  });

  test('bars of earlier parts are as high as the learner has them', () => {
    const exercise = drawn('caster-from-swing');
    const difference = 1.3 * (exercise.parts[0]?.answer ?? NaN);
    const picture = pictureOf(exercise, 1, 'whole-swing', [difference])?.picture;
    if (picture?.scene !== 'bars') throw new Error('no bars');
    expect(picture.bars[0]).toEqual({ says: 'out less in', value: difference });
  });

  test('a scrub radius on the other side turns the wheel the other way, about an axis that stands there', () => {
    const exercise = drawn('brake-moment');
    const own = -1.5 * (exercise.parts[0]?.answer ?? NaN);
    const picture = pictureOf(exercise, 1, 'wrong-way', [own])?.picture;
    const fromTrue = exercise.parts[1]
      ?.slips()
      .find(({ id }) => id === 'wrong-way')
      ?.picture?.();
    if (picture?.scene !== 'corner' || fromTrue?.scene !== 'corner') throw new Error('no corner');
    expect(picture.turn?.left).toBe(!fromTrue.turn?.left);
    const { corner } = picture;
    const side = corner.side === 'left' ? 1 : -1;
    expect(side * (corner.wheelCentre.y - outAt(corner, 0))).toBeCloseTo(own, 9);
  });
});

describe('nothing is drawn', () => {
  test('where a picture of true values would show the opposite of what was entered', () => {
    const exercise = drawn('net-rack-from-brakes');
    const own = -1.5 * (exercise.parts[0]?.answer ?? NaN);
    expect(pictureOf(exercise, 1, 'turned-round', [own])).toBeUndefined();
    expect(pictureOf(exercise, 1, 'turned-round', [-own])?.picture).toBeDefined();
  });

  test('where an own value is so wild that no car has it', () => {
    for (const kind of kinds) {
      const exercise = kind.exercise('a');
      const wildly = [-4.9, 0.001, 4.9].flatMap((factor) => takenFromOwn(exercise, [factor]));
      for (const { place, road } of wildly)
        if (road && road.picture.scene !== 'sheet')
          expect(JSON.stringify(drawingOf(road.picture)), place).not.toMatch(/NaN|Infinity/);
    }
    const exercise = drawn('taller-tyre');
    const [gain = NaN] = exercise.parts.map(({ answer }) => answer);
    expect(pictureOf(exercise, 1, 'wrong-way', [3 * gain])).toBeDefined();
    expect(pictureOf(exercise, 1, 'wrong-way', [6 * gain])).toBeUndefined();
  });

  test('where no right road leads on from the own value', () => {
    const exercise = drawn('spacer-for-scrub');
    // Past what is wanted already: a spacer would have to be thinner than nothing.
    expect(
      pictureOf(exercise, 1, 'turned-round', [(givenIn(exercise, 'wanted_mm') + 9) * mm]),
    ).toBeUndefined();
  });
});

test('values that are rounded, but right, are drawn as the true ones, and nothing is said of them', () => {
  const exercise = drawn('caster-from-swing');
  const part = exercise.parts[0];
  const nearly = (part?.answer ?? NaN) + 0.3 * (part?.tolerance ?? NaN);
  const road = pictureOf(exercise, 1, 'whole-swing', [nearly]);
  const found = exercise.parts[1]?.slips().find(({ id }) => id === 'whole-swing');
  expect(road).toEqual({ picture: found?.picture?.() });
});
