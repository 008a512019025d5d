import type { Corner } from '#core/corner.ts';
import type { BoltPicture, ContactPicture, TyrePicture, WheelPicture } from './part-pictures.ts';

/**
 * A picture as a kind names it: which drawing, and the state that it shows. Plain data, since exercises know no
 * scenes; `src/lib/exercise/pictures/` draws it. Words and numbers in it are those that the question gives away.
 */
export type Picture =
  | CornerPicture
  | BearingPicture
  | ContactPicture
  | AxlePicture
  | WheelPicture
  | BoltPicture
  | TyrePicture
  | BarsPicture
  | ChartPicture
  | SheetPicture;

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
  /** From the middle of the tyre on the road square to the axis, in this view. */
  | 'leverAtRoad'
  | 'inclination'
  | 'caster'
  | 'camber'
  /** From the lower pivot to the upper one. */
  | 'pivotsLevel'
  | 'pivotsUp'
  /** From the road up. */
  | 'lowerUp'
  | 'upperUp'
  /** From the middle of the car, which is drawn nearer than it is. */
  | 'lowerOut'
  | 'upperOut'
  | 'contactOut'
  /** From the upright through the wheel centre, seen from the side. */
  | 'lowerAhead'
  | 'upperAhead'
  /** At the road, from below the lower pivot to the axis. */
  | 'lowerLean'
  /** At the road: from the middle of the tyre back to the first force, and from the axis back to it. */
  | 'tyreTrail'
  | 'sideLever'
  /** From where the wheel stood before to where it stands. */
  | 'wheelMove';

/** Where a force of the road reaches the wheel. */
export type ForceAt = 'road' | 'centre';

export interface CornerPicture {
  readonly scene: 'corner';
  readonly view: 'front' | 'side' | 'top';
  /** How much of the corner is seen; the whole wheel unless said. */
  readonly close?: 'road' | 'whole';
  readonly corner: Corner;
  /** How much of the axis is drawn, where the rest of it would tell what is asked for; the whole unless said. */
  readonly axis?: 'whole' | 'low' | 'high' | 'pivots' | 'none';
  /** Whether the pivots are seen; the corner has some then. */
  readonly pivots?: boolean;
  /** Axis and road alone, where nobody speaks of the wheel. */
  readonly wheelless?: boolean;
  /** The state before, drawn pale. */
  readonly before?: Corner;
  /** What is dimensioned, and what stands there: the number that is given, a question mark, a letter. */
  readonly measures?: readonly MarkedMeasure[];
  /** Points that have a letter or a name. */
  readonly points?: readonly { readonly at: CornerPoint; readonly says: string }[];
  readonly forces?: readonly CornerForce[];
  /** What a moment does to the wheel, seen from above. */
  readonly turn?: Turning;
  /** The road that was taken, dashed beside the right one: the corner as it would stand, or what was taken on this one. */
  readonly wrong?: {
    readonly corner?: Corner;
    readonly measures?: readonly MarkedMeasure[];
    readonly points?: readonly { readonly at: CornerPoint; readonly says: string }[];
    readonly forces?: readonly CornerForce[];
    readonly turn?: Turning;
    /** A lever of another length, from where the force counts; in metres. */
    readonly lever?: { readonly at: ForceAt; readonly length: number };
  };
}

export interface MarkedMeasure {
  readonly of: CornerMeasure;
  readonly says: string;
}

export interface CornerForce {
  readonly at: ForceAt;
  /** Ahead, out and up, of any length: only the direction is drawn. */
  readonly towards: readonly [number, number, number];
  readonly says: string;
  /** How far behind its place it counts, in metres: the pneumatic trail of a side force. */
  readonly behind?: number;
}

export interface Turning {
  readonly left: boolean;
  readonly says: string;
}

export type CornerPoint = 'contact' | 'ground' | 'centre' | 'axisAtCentre' | 'top' | 'axis';

/** Two bearing rows on the spin axis with the wheel's load, seen from the front. Millimetres. */
export interface BearingPicture {
  readonly scene: 'bearing';
  /** Of the wheel's middle from the middle between the rows, positive outboard. */
  readonly offset_mm: number;
  readonly before_mm?: number;
  readonly spread_mm: number;
  /** With it the wheel is seen down to the road. */
  readonly radius_mm?: number;
  /** Distances that are dimensioned. */
  readonly measures: readonly BearingMark[];
  readonly load?: string;
  /** A push of the road on the tyre, toward the car or away from it. */
  readonly side?: { readonly says: string; readonly inward: boolean };
  /** What the rows carry. */
  readonly rows?: readonly RowLoad[];
  /** The road that was taken, dashed: where the load line would run, what was measured, what a row would carry. */
  readonly wrong?: {
    readonly offset_mm?: number;
    readonly measures?: readonly BearingMark[];
    readonly rows?: readonly RowLoad[];
    readonly side?: { readonly says: string; readonly inward: boolean };
  };
}

export interface BearingMark {
  readonly of: BearingMeasure;
  readonly says: string;
}

/** From the middle of the rows or from a pressure centre, along the spin axis; and up from the road. */
export type BearingMeasure =
  'offset' | 'spread' | 'halfSpread' | 'fromInboard' | 'fromOutboard' | 'radius';

export interface RowLoad {
  readonly row: 'outboard' | 'inboard';
  /** Of the wheel load; negative at the bottom. */
  readonly share: number;
  readonly says: string;
}

/** Front wheels from above, the car's front at the top, with what is spoken of: forces, rack, which way things turn. */
export interface AxlePicture {
  readonly scene: 'axle';
  /** How far the axis meets the road inboard of each wheel's middle; negative outboard. Millimetres. */
  readonly scrub_mm: number;
  readonly left?: AxleForce;
  readonly right?: AxleForce;
  /** The left wheel alone. */
  readonly one?: boolean;
  readonly rack?: 'ahead' | 'behind';
  /** How far the left rod stands out of line with the rack, in radians. */
  readonly rodAngle?: number;
  readonly turns?: AxleTurns;
  readonly measures?: readonly AxleMeasure[];
  /** Which way somebody had them turn, dashed. */
  readonly wrong?: AxleTurns;
}

export interface AxleForce {
  readonly says: string;
  /** Its size compared with the other one, and its sign: positive forward. */
  readonly ahead: number;
  /** Counted by somebody where it should not be: dashed. */
  readonly wrong?: boolean;
}

export interface AxleMeasure {
  readonly of: 'scrub' | 'halfTrack' | 'track';
  readonly says: string;
  readonly wrong?: boolean;
}

/** +1 to the left, −1 to the right. */
export type Sense = 1 | -1;

export interface AxleTurns {
  readonly left?: Sense;
  readonly right?: Sense;
  readonly both?: Sense;
  readonly car?: Sense;
  readonly rack?: Sense;
  readonly rod?: 'tension' | 'compression';
}

/** Amounts of one kind beside each other, true to scale: loads, lives, forces. */
export interface BarsPicture {
  readonly scene: 'bars';
  /** What they are: `rating lives`. */
  readonly title: string;
  readonly bars: readonly Bar[];
}

export interface Bar {
  readonly says: string;
  /** Its height, in a unit of its own; a negative one hangs below the line. */
  readonly value: number;
  /** Its width, against 1 of the others. */
  readonly width?: number;
  /** Where the road that was taken ends: dashed. */
  readonly wrong?: boolean;
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
