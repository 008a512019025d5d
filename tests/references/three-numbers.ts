import { Quaternion, Vector3 } from 'three';
import type { LoadCase } from '#core/load-cases.ts';
import type { CornerCalculation, Measures } from './corner-numbers.ts';

/** A corner in the vectors of three.js. */
interface ThreeCorner {
  readonly outward: number;
  readonly point: Vector3;
  readonly axis: Vector3;
  readonly centre: Vector3;
  readonly spin: Vector3;
  readonly radius: number;
}

const UP = new Vector3(0, 0, 1);

/** The same numbers from the definitions, with the vectors and quaternions of three.js. */
export const threeNumbers: CornerCalculation = (corner, angle, loads) => {
  const ahead: ThreeCorner = {
    outward: corner.side === 'left' ? 1 : -1,
    point: three(corner.axis.point),
    axis: three(corner.axis.direction),
    centre: three(corner.wheelCentre),
    spin: three(corner.spin),
    radius: corner.loadedRadius,
  };
  const turn = new Quaternion().setFromAxisAngle(ahead.axis, angle);
  const now: ThreeCorner = {
    ...ahead,
    centre: ahead.centre.clone().sub(ahead.point).applyQuaternion(turn).add(ahead.point),
    spin: ahead.spin.clone().applyQuaternion(turn),
  };
  const from = headingOf(ahead);
  const to = headingOf(now);
  return {
    geometry: measuresOf(ahead),
    steered: {
      ...measuresOf(now),
      steer: Math.atan2(UP.dot(from.clone().cross(to)), from.dot(to)),
      lift: contactOf(ahead).z - contactOf(now).z,
    },
    moments: loads.map((load) => momentOf(now, load)),
  };
};

const three = ({ x, y, z }: { x: number; y: number; z: number }) => new Vector3(x, y, z);

const headingOf = ({ spin, outward }: ThreeCorner) =>
  spin.clone().cross(UP).multiplyScalar(outward).normalize();

const contactOf = ({ centre, spin, radius }: ThreeCorner) => {
  const up = UP.clone().projectOnPlane(spin).normalize();
  return centre.clone().addScaledVector(up, -radius);
};

const atHeight = ({ point, axis }: ThreeCorner, z: number) =>
  point.clone().addScaledVector(axis, (z - point.z) / axis.z);

function measuresOf(corner: ThreeCorner): Measures {
  const { outward, point, axis, centre, spin } = corner;
  const ahead = headingOf(corner);
  const out = UP.clone().cross(ahead).multiplyScalar(outward);
  const contact = contactOf(corner);
  const atGround = contact.clone().sub(atHeight(corner, contact.z));
  const atCentre = centre.clone().sub(atHeight(corner, centre.z));
  return {
    inclination: Math.atan2(-outward * axis.y, axis.z),
    caster: Math.atan2(-axis.x, axis.z),
    camber: spin.angleTo(UP) - Math.PI / 2,
    scrubRadius: atGround.dot(out),
    trail: -atGround.dot(ahead),
    spindleOffset: atCentre.dot(out),
    casterOffsetAtCentre: -atCentre.dot(ahead),
    axisDistance: centre.clone().sub(point).projectOnPlane(axis).length(),
  };
}

function momentOf(corner: ThreeCorner, load: LoadCase): number {
  const { centre, point, axis, spin } = corner;
  const moment = (force: Vector3, at: Vector3) => axis.dot(at.clone().sub(point).cross(force));
  const ahead = headingOf(corner);
  const contact = contactOf(corner);
  switch (load.kind) {
    case 'brake-on-carrier':
      return moment(ahead.multiplyScalar(-load.force), contact);
    case 'shaft': {
      const force = ahead.multiplyScalar(load.force);
      if (!load.shaftDirection) return moment(force, centre);
      const shaft = three(load.shaftDirection).normalize();
      const torque = -spin.dot(contact.clone().sub(centre).cross(force));
      const couple = spin
        .clone()
        .add(shaft)
        .multiplyScalar(torque / (1 + spin.dot(shaft)));
      return moment(force, contact) + axis.dot(couple);
    }
    case 'impact':
      return moment(three(load.force), centre);
    case 'lateral': {
      const left = UP.clone().cross(ahead).multiplyScalar(load.force);
      return moment(left, contact.addScaledVector(ahead, -load.pneumaticTrail));
    }
    case 'vertical':
      return moment(UP.clone().multiplyScalar(load.force), contact);
  }
}
