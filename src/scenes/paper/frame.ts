import type { Window } from '../marks.ts';
import { point, type Point } from '../plane.ts';

/** A place on the paper: x to the right and y downward, in the drawing's own units (one CSS pixel on a phone). */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** How a window of the drawing plane lies on the paper. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  /** Paper units for each millimetre of the car. */
  readonly scale: number;
  readonly centre: Point;
}

/** The paper that every view of a corner is drawn on: as wide as the smallest phone's column is when whole. */
export const PAPER = { width: 400, height: 300 } as const;

export const frameOf = (
  window: Window,
  { width, height }: { readonly width: number; readonly height: number } = PAPER,
): Frame => ({ width, height, scale: height / window.height, centre: window.centre });

/** A point of the drawing plane on the paper. */
export const onPaper = (frame: Frame, { across, up }: Point): Place => ({
  x: frame.width / 2 + (across - frame.centre.across) * frame.scale,
  y: frame.height / 2 - (up - frame.centre.up) * frame.scale,
});

/** The point of the drawing plane under a place on the paper: the inverse of `onPaper`. */
export const offPaper = (frame: Frame, { x, y }: Place): Point =>
  point(
    frame.centre.across + (x - frame.width / 2) / frame.scale,
    frame.centre.up - (y - frame.height / 2) / frame.scale,
  );

/** Whether a place lies on the paper, at least so far from its edges. */
export const isOnPaper = ({ width, height }: Frame, { x, y }: Place, margin = 0): boolean =>
  x >= margin && x <= width - margin && y >= margin && y <= height - margin;

/**
 * Rounds to two decimals, once, at the border between numbers and text: engines may differ in the last
 * digit of a sine, and a page drawn on the server must match the one that wakes up in the browser.
 */
export const rounded = (value: number): number => Math.round(value * 100) / 100 + 0;
