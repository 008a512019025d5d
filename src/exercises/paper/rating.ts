import { ratingLife } from '#core/bearing/life.ts';
import { radialLoads } from '#core/bearing/rows.ts';
import { systemLife } from '#core/bearing/system-life.ts';
import type { RowKind } from '#core/bearing/factors.ts';
import { toSI } from '#core/units/convert.ts';

/** What rolls in a row, for a sentence. */
export const ROLLING: Readonly<Record<RowKind, string>> = {
  ball: 'balls',
  roller: 'tapered rollers',
};

/** The exponent of the life equation as it is written. */
export const EXPONENT: Readonly<Record<RowKind, string>> = { ball: '3', roller: '10/3' };

/** The exponent of the life of two rows together, as it is written. */
export const PAIR_EXPONENT: Readonly<Record<RowKind, string>> = { ball: '10/9', roller: '9/8' };

/** The exponent of the other kind, for whoever has mixed them up. */
export const otherKind = (kind: RowKind): RowKind => (kind === 'ball' ? 'roller' : 'ball');

/** Rating life in revolutions from C/P. */
export const lifeAt = (kind: RowKind, ratio: number): number =>
  toSI(ratingLife(kind, ratio, 1), 'Mrev');

/** Rating life of two rows of one kind together, in the unit of the two lives. */
export const pairLife = (kind: RowKind, one: number, other: number): number =>
  systemLife([
    { kind, life: one },
    { kind, life: other },
  ]);

/** Radial load of the outboard row straight ahead, in newtons; lengths in metres. */
export const outboardRadial = (vertical: number, loadLineOffset: number, spread: number): number =>
  radialLoads({ loadLineOffset, spread }, { vertical, inward: 0 }, 0.3).outboard;
