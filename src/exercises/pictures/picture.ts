import type { Corner } from '#core/corner.ts';

/**
 * A picture as a kind names it: which drawing, and the state that it shows. Plain data, since exercises know no
 * scenes; `src/lib/exercise/pictures/` draws it. Words and numbers in it are those that the question gives away.
 */
export type Picture = CornerPicture | BearingPicture | AxlePicture | ChartPicture | SheetPicture;

/** A measure of a corner that can be dimensioned. */
export type CornerMeasure =
  | 'scrubRadius'
  | 'trail'
  | 'spindleOffset'
  | 'casterOffsetAtCentre'
  | 'loadedRadius'
  /** How far the axis leans, seen in this view, from the road up to the height of the wheel centre. */
  | 'lean'
  /** From the wheel centre square to the axis, in this view. */
  | 'shortest'
  | 'inclination'
  | 'caster'
  | 'camber';

/** Where a force of the road reaches the wheel. */
export type ForceAt = 'road' | 'centre';

export interface CornerPicture {
  readonly scene: 'corner';
  readonly view: 'front' | 'side' | 'top';
  /** How much of the corner is seen; the whole wheel unless said. */
  readonly close?: 'road' | 'whole';
  readonly corner: Corner;
  /** The state before, drawn pale. */
  readonly before?: Corner;
  /** What is dimensioned, and what stands there: the number that is given, a question mark, a letter. */
  readonly measures?: readonly { readonly of: CornerMeasure; readonly says: string }[];
  /** Points that have a letter or a name. */
  readonly points?: readonly { readonly at: CornerPoint; readonly says: string }[];
  readonly forces?: readonly {
    readonly at: ForceAt;
    /** Ahead, out and up, of any length: only the direction is drawn. */
    readonly towards: readonly [number, number, number];
    readonly says: string;
  }[];
}

export type CornerPoint = 'contact' | 'ground' | 'centre' | 'axisAtCentre' | 'top' | 'axis';

/** Two bearing rows on the spin axis with the wheel's load, seen from the front. Millimetres. */
export interface BearingPicture {
  readonly scene: 'bearing';
  /** Of the wheel's middle from the middle between the rows, positive outboard. */
  readonly offset_mm: number;
  readonly before_mm?: number;
  readonly spread_mm: number;
  /** Distances that are dimensioned. */
  readonly measures: readonly { readonly of: 'offset' | 'spread'; readonly says: string }[];
  readonly load?: string;
  /** A push of the road on the tyre, toward the car or away from it. */
  readonly side?: { readonly says: string; readonly inward: boolean };
}

/** Both front wheels from above, the car's front at the top, with a force at each of them. */
export interface AxlePicture {
  readonly scene: 'axle';
  /** How far the axis meets the road inboard of each wheel's middle; negative outboard. Millimetres. */
  readonly scrub_mm: number;
  readonly left: AxleForce;
  readonly right: AxleForce;
}

interface AxleForce {
  readonly says: string;
  /** Its size compared with the other one, and its sign: positive forward. */
  readonly ahead: number;
}

/** A chart with a grid to read from. */
export interface ChartPicture {
  readonly scene: 'chart';
  readonly across: ChartAxis;
  readonly up: ChartAxis;
  readonly curves: readonly {
    readonly says: string;
    readonly points: readonly (readonly [number, number])[];
  }[];
}

export interface ChartAxis {
  readonly name: string;
  readonly least: number;
  readonly most: number;
  /** From one numbered line to the next, and from one thin line to the next. */
  readonly numbered: number;
  readonly division: number;
}

/** An alignment sheet: one row for each angle, printed as it is read out. */
export interface SheetPicture {
  readonly scene: 'sheet';
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly { readonly name: string; readonly cells: readonly string[] }[];
}
