import { add, cross, divide, dot, multiply, norm, rotationMatrix, subtract } from 'mathjs';
import type { LoadCase } from '#core/load-cases.ts';
import type { Vector } from '#core/vector.ts';
import type { CornerCalculation, Measures } from './corner-numbers.ts';

type Row = readonly [number, number, number];

/** A corner in the arrays of mathjs. */
interface ArrayCorner {
  readonly outward: number;
  readonly point: Row;
  readonly axis: Row;
  readonly centre: Row;
  readonly spin: Row;
  readonly radius: number;
}

const UP: Row = [0, 0, 1];

/** The same numbers from the definitions, with the arrays and matrices of mathjs. */
export const mathjsNumbers: CornerCalculation = (corner, angle, loads) => {
  const ahead: ArrayCorner = {
    outward: corner.side === 'left' ? 1 : -1,
    point: row(corner.axis.point),
    axis: row(corner.axis.direction),
    centre: row(corner.wheelCentre),
    spin: row(corner.spin),
    radius: corner.loadedRadius,
  };
  const turn = rotationMatrix(angle, [...ahead.axis]) as unknown as number[][];
  const now: ArrayCorner = {
    ...ahead,
    centre: plus(rows(multiply(turn, list(minus(ahead.centre, ahead.point)))), ahead.point),
    spin: rows(multiply(turn, list(ahead.spin))),
  };
  const from = headingOf(ahead);
  const to = headingOf(now);
  return {
    geometry: measuresOf(ahead),
    steered: {
      ...measuresOf(now),
      steer: Math.atan2(along(UP, over(from, to)), along(from, to)),
      lift: contactOf(ahead)[2] - contactOf(now)[2],
    },
    moments: loads.map((load) => momentOf(now, load)),
  };
};

const row = ({ x, y, z }: Vector): Row => [x, y, z];

// The library's types know of matrices in general only: here all are lists of three numbers.
const list = (v: Row): number[] => [...v];
const rows = (v: unknown): Row => v as Row;
const plus = (a: Row, b: Row): Row => rows(add(list(a), list(b)));
const minus = (a: Row, b: Row): Row => rows(subtract(list(a), list(b)));
const times = (k: number, a: Row): Row => rows(multiply(k, list(a)));
const along = (a: Row, b: Row): number => dot(list(a), list(b));
const over = (a: Row, b: Row): Row => rows(cross(list(a), list(b)));
const size = (a: Row): number => Number(norm(list(a)));
const unit = (a: Row): Row => rows(divide(list(a), size(a)));

const headingOf = ({ spin, outward }: ArrayCorner): Row => unit(times(outward, over(spin, UP)));

const contactOf = ({ centre, spin, radius }: ArrayCorner): Row => {
  const up = unit(minus(UP, times(along(UP, spin), spin)));
  return minus(centre, times(radius, up));
};

const atHeight = ({ point, axis }: ArrayCorner, z: number): Row =>
  plus(point, times((z - point[2]) / axis[2], axis));

function measuresOf(corner: ArrayCorner): Measures {
  const { outward, point, axis, centre, spin } = corner;
  const ahead = headingOf(corner);
  const out = times(outward, over(UP, ahead));
  const contact = contactOf(corner);
  const atGround = minus(contact, atHeight(corner, contact[2]));
  const atCentre = minus(centre, atHeight(corner, centre[2]));
  return {
    inclination: Math.atan2(-outward * axis[1], axis[2]),
    caster: Math.atan2(-axis[0], axis[2]),
    camber: Math.asin(-spin[2]),
    scrubRadius: along(atGround, out),
    trail: -along(atGround, ahead),
    spindleOffset: along(atCentre, out),
    casterOffsetAtCentre: -along(atCentre, ahead),
    axisDistance: size(over(minus(centre, point), axis)),
  };
}

function momentOf(corner: ArrayCorner, load: LoadCase): number {
  const { centre, point, axis, spin } = corner;
  const moment = (force: Row, at: Row) => along(axis, over(minus(at, point), force));
  const ahead = headingOf(corner);
  const contact = contactOf(corner);
  switch (load.kind) {
    case 'brake-on-carrier':
      return moment(times(-load.force, ahead), contact);
    case 'shaft': {
      const force = times(load.force, ahead);
      if (!load.shaftDirection) return moment(force, centre);
      const shaft = unit(row(load.shaftDirection));
      const torque = -along(spin, over(minus(contact, centre), force));
      const couple = times(torque / (1 + along(spin, shaft)), plus(spin, shaft));
      return moment(force, contact) + along(axis, couple);
    }
    case 'impact':
      return moment(row(load.force), centre);
    case 'lateral':
      return moment(
        times(load.force, over(UP, ahead)),
        minus(contact, times(load.pneumaticTrail, ahead)),
      );
    case 'vertical':
      return moment(times(load.force, UP), contact);
  }
}
