import type { CornerModel } from '#core/car/car.ts';
import type { UnitSystem } from '#core/display.ts';
import type { Dimension, Label, Mark, Window } from '../marks.ts';
import { point, type Point } from '../plane.ts';

/** What a picture of an input is made from. */
export interface InputLook {
  readonly model: CornerModel;
  /** The wheel on the other side. */
  readonly other: CornerModel;
  /** The value as it is taken now: in SI, and as it is written. */
  readonly value: number;
  readonly text: string;
  readonly units: UnitSystem;
}

/** A picture of an input, short of its title: what is seen at all, and how it is drawn. */
export interface InputDrawing {
  readonly seen: string;
  readonly window: Window;
  readonly marks: readonly Mark[];
}

/** A level dimension from one place to another, its line at the height `foot`. */
export const across = (from: Point, to: Point, foot: number, text: string): Dimension => ({
  ...DIMENSION,
  from,
  to,
  fromFoot: point(from.across, foot),
  toFoot: point(to.across, foot),
  text,
});

/** An upright dimension from one place to another, its line at `foot` across. */
export const upright = (from: Point, to: Point, foot: number, text: string): Dimension => ({
  ...DIMENSION,
  from,
  to,
  fromFoot: point(foot, from.up),
  toFoot: point(foot, to.up),
  text,
});

const labelled = (key: string, at: Point, text: string, role: Mark['role'] = 'guide'): Label => ({
  kind: 'label',
  key: `name-${key}`,
  role,
  at,
  text,
});

/** Words beside the place that they name. */
export const label: (...words: Parameters<typeof labelled>) => Mark = labelled;

/** Words at the very place, where the drawing leaves room for them. */
export const seated = (...words: Parameters<typeof labelled>): Mark => ({
  ...labelled(...words),
  here: true,
});

/** A dimension besides the input’s own needs another key. */
const DIMENSION = { kind: 'dimension', key: 'input', role: 'guide' } as const;
