import type { Quantity } from '#core/quantities.ts';
import type { UnitName } from '#core/units/units.ts';
import type { Form } from './forms/form.ts';
import type { Phrase } from './phrase.ts';
import type { Picture } from './pictures/picture.ts';
import type { Random } from './random.ts';

/** Values of the parts before this one, in SI: the true ones, or the learner's own. */
export type Earlier = readonly number[];

/** A known wrong road: what somebody gets who takes it, and how to tell them. */
export interface Slip<Item> {
  readonly id: string;
  /** What was taken for something else, in words that stand in the text: `angle to the road`. */
  readonly confuses: string;
  /** The value at the end of the wrong road, in SI. */
  readonly value: (item: Item, earlier: Earlier) => number;
  /** What was done, when that would be right, and what is different here. */
  readonly text: (item: Item) => Phrase;
  /** What was done, drawn: the wrong lever, the figure as it would then stand. Shown once the road was taken. */
  readonly picture?: ((item: Item) => Picture) | undefined;
}

/** A wrong road as a picture needs it: of which part, which slip, and where it ends. In SI. */
export interface Road {
  readonly part: string;
  readonly slip: string;
  readonly value: number;
  /** Where the right road ends. */
  readonly answer: number;
  /** What both begin from: the true values of the parts before, or the learner's own where those led here. */
  readonly earlier: Earlier;
}

/** One thing to be found, on the way or at the end: a number, or what stands for one (see `form`). */
export interface Part<Item> {
  readonly id: string;
  /** Name, kind and the words of its sign; from the core's table where the course has the quantity. */
  readonly quantity: Quantity;
  readonly unit: UnitName;
  /** Decimals asked for, in `unit`. */
  readonly decimals: number;
  /** What is to be found, as a label: `Scrub radius with the spacer`. */
  readonly label: string;
  /** The answer by the core, in SI, from the item and the values before it. */
  readonly value: (item: Item, earlier: Earlier) => number;
  /**
   * Only adds and takes away, or changes a length by a few hundredths, so that no share of the answer is
   * forgiven: it would swallow the slips. `exact` where all terms are printed numbers and nothing has to be rounded.
   */
  readonly sum?: 'exact' | 'rounded' | undefined;
  /** Whether a value can be at all (a spacer has a thickness above 0); angles stay below a right angle anyway. */
  readonly possible?: ((value: number) => boolean) | undefined;
  /** How it is answered; absent for a number with its unit and direction. */
  readonly form?: Form<Item> | undefined;
  /** What two readings of the same chart may differ by, in SI: half a division of its grid. */
  readonly readTo?: ((item: Item) => number) | undefined;
  readonly slips: readonly Slip<Item>[];
  /** This step of the worked solution, with the numbers of this item; `value` is the step's result. */
  readonly solution: (item: Item, earlier: Earlier, value: number) => Phrase;
  /** A nudge for whoever is stuck; says where to look, not what comes out. */
  readonly hint: (item: Item) => Phrase;
  /** Marks for this part, 1 unless said. */
  readonly weight?: number | undefined;
}

/** What an author writes: one file, found by the registry and by its test suite. */
export interface Kind<Item> {
  readonly id: string;
  /** Goes up with every change to what a seed gives or how it is graded; the old version's stability test then moves with it. */
  readonly version: number;
  readonly title: string;
  /** Lesson that teaches it, by its address: `at-the-road`. */
  readonly lesson: string;
  /** 1 one relation · 2 several steps · 3 backwards, compare or design. */
  readonly level: 1 | 2 | 3;
  /**
   * Plain data on a printed grid: millimetres, degrees and newtons as they are shown, in members whose names
   * end in the unit (`spacer_mm`).
   */
  readonly draw: (random: Random) => Item;
  /** Whether an item could be a car. That the answers keep clear of nought, givens and slips is seen to elsewhere. */
  readonly sound: (item: Item) => boolean;
  /** What of an item makes it easier or harder than others of its kind, besides the signs of its answers. */
  readonly pattern?: ((item: Item) => string) | undefined;
  readonly question: (item: Item) => Phrase;
  /** What stands beside the question; it shows nothing that is asked for. */
  readonly picture?: ((item: Item) => Picture) | undefined;
  /** The same with what was asked for, beside the worked solution. */
  readonly solved?: ((item: Item) => Picture) | undefined;
  /**
   * A known wrong road beside the right one, for slips that have no picture of their own; nothing where the road
   * cannot be seen in a drawing. Shown once it was taken.
   */
  readonly wrong?: ((item: Item, road: Road) => Picture | undefined) | undefined;
  /**
   * Parts whose wrong roads begin from the true earlier values whatever the learner's own are, since the picture shows
   * what those cannot alter: which way a force turns a wheel.
   */
  readonly drawnTrue?: readonly string[] | undefined;
  /**
   * Each part leads to a later one, so that the last answer vouches for those before it. The last one is a number
   * or a setting: what can be guessed counts only with a number that bears it out.
   */
  readonly parts: readonly Part<Item>[];
}

/** The value of an earlier part. */
export function step(earlier: Earlier, index: number): number {
  const value = earlier[index];
  if (value === undefined) throw new RangeError(`part ${index} of ${earlier.length} earlier ones`);
  return value;
}
