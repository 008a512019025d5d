import type { QuantityId } from '#core/quantities.ts';
import type { Handle, Line, Mark, Role } from '../marks.ts';
import { rounded, type Place } from './frame.ts';
import type { Stroke } from './label-placement.ts';

interface Ink {
  readonly key: string;
  readonly role: Role;
  readonly quantity: QuantityId | undefined;
  readonly pair?: string | undefined;
  readonly before: boolean;
  readonly wrong?: boolean | undefined;
}

/** An SVG path, ready to paint. */
export interface PathShape extends Ink {
  readonly kind: 'path';
  readonly d: string;
  readonly line: Line;
  readonly filled: boolean;
}

/** Words, centred on (x, y). */
export interface TextShape extends Ink {
  readonly kind: 'text';
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** A value, as against a name. */
  readonly strong: boolean;
}

export type Shape = PathShape | TextShape;

/** A place to grab, on paper. */
export interface Grip {
  readonly key: string;
  readonly x: number;
  readonly y: number;
  readonly handle: Handle;
}

/** What a mark leaves on the paper. */
export interface Inked {
  readonly shapes: readonly PathShape[];
  /** Lines that words should keep off. */
  readonly strokes: readonly Stroke[];
  /** Words that want a seat near a place. */
  readonly words?: {
    readonly text: string;
    readonly at: Place;
    readonly clearance: number;
    readonly reach?: number;
    readonly here?: boolean;
    readonly strong: boolean;
  };
}

export const inkOf = ({ key, role, quantity, pair, before, wrong }: Mark): Ink => ({
  key,
  role,
  quantity,
  pair,
  before: before ?? false,
  ...(wrong && { wrong }),
});

/** A path of a mark; `part` tells apart the several paths that one mark may need. */
export function pathShape(mark: Mark, d: string, line: Line, filled = false, part = ''): PathShape {
  const ink = inkOf(mark);
  return { ...ink, key: ink.key + part, kind: 'path', d, line, filled };
}

/** Coordinates as SVG text, rounded. */
export const at = ({ x, y }: Place): string => `${rounded(x)} ${rounded(y)}`;

export const circlePath = ({ x, y }: Place, radius: number): string => {
  const r = rounded(radius);
  return `M${at({ x: x - radius, y })}a${r} ${r} 0 1 0 ${rounded(2 * radius)} 0a${r} ${r} 0 1 0 ${rounded(-2 * radius)} 0Z`;
};

/** Length of the head of a force, a torque or a direction. */
export const ARROW_HEAD = 13;

/** A closed arrow head with its point at `tip`, pointing along the angle `towards` (radians, clockwise on paper). */
export function headPath(tip: Place, towards: number, size = 8): string {
  const corner = (side: number): Place => ({
    x: tip.x - size * Math.cos(towards) + side * 0.36 * size * Math.sin(towards),
    y: tip.y - size * Math.sin(towards) - side * 0.36 * size * Math.cos(towards),
  });
  return `M${at(tip)}L${at(corner(1))}L${at(corner(-1))}Z`;
}
