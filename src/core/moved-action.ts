import type { Action } from './action.ts';
import { cross, minus, plus, times, type Vector } from './vector.ts';

/**
 * The same action with its force counted at another point: the force stays, and the couple becomes
 * T + (B − B′) × F. About every axis it has the moment that it had.
 *
 * A force of size F moved by a distance R across its line brings a couple F·R, and a couple F·R is spent
 * by moving the force: that is how a brake torque carries a braking force down to the ground.
 *
 * @param point B′ in vehicle axes, in metres
 *
 * Source: rigid-body statics, reduction of a force system (from memory).
 */
export const movedTo = ({ force, point: from, couple }: Action, point: Vector): Action => ({
  force,
  point,
  couple: plus(couple, cross(minus(from, point), force)),
});

/** What the other body feels at the same place: force and couple turned round (action and reaction). */
export const opposite = ({ force, point, couple }: Action): Action => ({
  force: times(-1, force),
  point,
  couple: times(-1, couple),
});
