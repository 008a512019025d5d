import type { Quantity } from '#core/quantities.ts';
import type { UnitName } from '#core/units/units.ts';
import type { Earlier } from '../kind.ts';
import type { Phrase } from '../phrase.ts';
import type { Picture } from '../pictures/picture.ts';

/** One thing to choose, to mark, or to put in its place. Where it stands in the list is its letter. */
export interface Option {
  readonly id: string;
  /** What it is; of a mark in a picture, where it lies, for whoever does not see the picture. */
  readonly words: Phrase;
}

/** One of several is right. `mark`: the letters stand in the picture, and the words say where. */
interface ChoosingForm<Options, Count> {
  readonly kind: 'choice' | 'mark';
  readonly options: Options;
  /** How many options there are, which can be told before their words are made. */
  readonly count: Count;
}

/** All of them in order. The entry is the rank of the order, see `rank.ts`. */
interface OrderForm<Options, Count> {
  readonly kind: 'order';
  readonly options: Options;
  readonly count: Count;
  /** What stands first and what last: `largest`, `smallest`. */
  readonly first: string;
  readonly last: string;
}

/** What is moved in the picture, in the unit of its part. */
export interface Scale {
  readonly least: number;
  readonly most: number;
  /** One press of a button or an arrow key. */
  readonly step: number;
  /** Where it stands at first. */
  readonly start: number;
}

/** What has to be reached by moving something. */
export interface Aim {
  readonly quantity: Quantity;
  readonly unit: UnitName;
  readonly decimals: number;
  /** How near is near enough, in SI; the learner is told. */
  readonly near: number;
}

/** Something is moved until the core finds what was asked for. The entry is the setting; what it comes to is computed. */
export interface SetForm<Item> {
  readonly kind: 'set';
  readonly scale: (item: Item) => Scale;
  readonly aim: Aim;
  /** What is to be reached, in SI. */
  readonly target: (item: Item, earlier: Earlier) => number;
  /** What is to be reached as the question says it, where its number would tell what is to be found first. */
  readonly wanted?: (item: Item) => Phrase;
  /** What a setting comes to, both in SI: by the core, from the state that the picture shows. */
  readonly reached: (item: Item, setting: number) => number;
  /** The state that a setting makes, drawn; nothing in it says what it comes to. */
  readonly picture: (item: Item, setting: number) => Picture;
}

/** How a part is answered, where it is not by a number with its unit and direction. */
export type Form<Item> =
  | ChoosingForm<(item: Item) => readonly Option[], (item: Item) => number>
  | OrderForm<(item: Item) => readonly Option[], (item: Item) => number>
  | SetForm<Item>;

/** The form of a part of a drawn exercise. */
export type DrawnForm =
  | ChoosingForm<readonly Option[], number>
  | OrderForm<readonly Option[], number>
  | {
      readonly kind: 'set';
      readonly scale: Scale;
      readonly aim: Aim;
      readonly target: (earlier: Earlier) => number;
      /** The target of the true earlier values. */
      readonly goal: number;
      readonly wanted?: Phrase;
      readonly reached: (setting: number) => number;
      readonly picture: (setting: number) => Picture;
    };

/** A form whose entries are places in a list, so that guessing may hit. */
export type ListForm = Exclude<DrawnForm, { kind: 'set' }>;

/** Entries are whole numbers: anything nearer than the next one is meant. */
export const LIST_TOLERANCE = 0.25;

export const isList = (form: DrawnForm | undefined): form is ListForm =>
  form !== undefined && form.kind !== 'set';

export type DrawnSet = Extract<DrawnForm, { kind: 'set' }>;

/** The form as an item gives it, with the true values before it. */
export function drawnForm<Item>(form: Form<Item>, item: Item, earlier: Earlier): DrawnForm {
  if (form.kind === 'set') {
    return {
      kind: 'set',
      scale: form.scale(item),
      aim: form.aim,
      target: (own) => form.target(item, own),
      goal: form.target(item, earlier),
      ...(form.wanted && { wanted: form.wanted(item) }),
      reached: (setting) => form.reached(item, setting),
      picture: (setting) => form.picture(item, setting),
    };
  }
  let options: readonly Option[] | undefined;
  const list = {
    count: form.count(item),
    // Words are made when somebody reads them: drawing has to be fast.
    get options(): readonly Option[] {
      return (options ??= form.options(item));
    },
  };
  return form.kind === 'order'
    ? Object.assign(list, { kind: form.kind, first: form.first, last: form.last })
    : Object.assign(list, { kind: form.kind });
}
