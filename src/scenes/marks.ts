import type { QuantityId } from '#core/quantities.ts';
import type { ParameterId } from './parameters.ts';
import type { Point } from './plane.ts';

/** What a mark stands for; each role has one colour and one way of being drawn. */
export type Role = 'axis' | 'wheel' | 'force' | 'lever' | 'bearing' | 'part' | 'ground' | 'guide';

/** Line types after ISO 128: outline, heavy and thin are continuous, chain is long-dash-dot, hidden is dashed. */
export type Line =
  'outline' | 'heavy' | 'thin' | 'chain' | 'heavy-chain' | 'hidden' | 'faint' | 'none';

interface Common {
  /** Unique within a scene and stable from state to state, so that a view can move a mark instead of replacing it. */
  readonly key: string;
  readonly role: Role;
  /** The quantity that this mark shows: marks, prose, table rows of one quantity light up together. */
  readonly quantity?: QuantityId;
  /** Marks of one pair light up together: what one body does to another, and what it gets in return. */
  readonly pair?: string;
  /** Part of the pale picture of the state before the change. */
  readonly before?: boolean;
  /** Part of a wrong road that somebody took: dashed, beside the right one. */
  readonly wrong?: boolean;
}

/** A run of points, straight or smooth, open or closed. */
export interface Path extends Common {
  readonly kind: 'path';
  readonly points: readonly Point[];
  readonly closed?: boolean;
  readonly smooth?: boolean;
  readonly line: Line;
  readonly filled?: boolean;
  /** Words may lie on it. */
  readonly quiet?: boolean;
}

export interface Circle extends Common {
  readonly kind: 'circle';
  readonly centre: Point;
  readonly radius: number;
  readonly line: Line;
  readonly filled?: boolean;
}

/** A named point: a dot, or a ringed dot for a pivot. Its size is the paper's, not the car's. */
export interface Spot extends Common {
  readonly kind: 'spot';
  readonly at: Point;
  readonly ringed?: boolean;
}

/** The distance between two feet of extension lines that come from the measured points. */
export interface Dimension extends Common {
  readonly kind: 'dimension';
  readonly from: Point;
  readonly to: Point;
  readonly fromFoot: Point;
  readonly toFoot: Point;
  readonly text: string;
}

/** The angle at `vertex` from straight up to the direction of `towards`. */
export interface Angle extends Common {
  readonly kind: 'angle';
  readonly vertex: Point;
  readonly towards: Point;
  readonly text: string;
}

/** An arrow from tail to head: a force, or a direction. */
export interface Arrow extends Common {
  readonly kind: 'arrow';
  readonly from: Point;
  readonly to: Point;
}

/** A torque, or a turning: an arrow bent round a centre. Its size is the paper's, not the car's. */
export interface Turn extends Common {
  readonly kind: 'turn';
  readonly centre: Point;
  /** In units of paper. */
  readonly radius: number;
  /** Where the tail is, and how far from there the head: radians, counterclockwise on paper, from the right. */
  readonly from: number;
  readonly sweep: number;
}

/** Words beside the part they name. */
export interface Label extends Common {
  readonly kind: 'label';
  readonly at: Point;
  readonly text: string;
  /** Centred on the very place, where the drawing leaves room for it; otherwise near by, where it hurts least. */
  readonly here?: boolean;
}

/** The road: a level line hatched below. */
export interface Ground extends Common {
  readonly kind: 'ground';
  readonly up: number;
}

/** A place to grab: moves one parameter, along the drawing's level, its upright, or round a centre. */
export interface Handle extends Common {
  readonly kind: 'handle';
  readonly at: Point;
  readonly parameter: ParameterId;
  readonly moves: 'across' | 'up' | 'round';
  /** Centre of a handle that moves round. */
  readonly centre?: Point;
  /**
   * The share of its way that the view shows, where it is seen at an angle; 1 unless said. Of a force: how far
   * its handle goes for a newton.
   */
  readonly share?: number;
}

export type Mark =
  Path | Circle | Spot | Dimension | Angle | Arrow | Turn | Label | Ground | Handle;

/** A drawing before it meets paper: marks in millimetres of the car, and its description in words. */
export interface Scene {
  readonly title: string;
  readonly description: string;
  readonly window: Window;
  readonly marks: readonly Mark[];
}

/** The part of the drawing plane that is shown, in millimetres. */
export interface Window {
  readonly centre: Point;
  /** Height of the part shown; the width follows from the paper. */
  readonly height: number;
}
