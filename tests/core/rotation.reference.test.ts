import fc from 'fast-check';
import { glMatrix, quat, vec3 } from 'gl-matrix';
import { Quaternion, Vector3 } from 'three';
import { describe, test } from 'vitest';
import { rotation, turned, turnedAbout } from '#core/rotation.ts';
import { direction, length, vector } from '#core/vector.ts';
import { anyVector, between } from './corner-arbitraries.ts';
import { expectNear } from './near.ts';

// In its own arrays of 32-bit numbers gl-matrix is good for seven digits only.
glMatrix.setMatrixArrayType(Array);

const anyAxis = anyVector(1)
  .filter((v) => length(v) > 0.1)
  .map(direction);

/** Rounding of a dozen products of numbers up to 5. */
const ROUNDING = 2e-14;

describe('a rotation by Rodrigues’ formula', () => {
  test('is that of a quaternion of three.js', () => {
    fc.assert(
      fc.property(anyAxis, between(-3, 3), anyVector(2), (axis, angle, v) => {
        const quaternion = new Quaternion().setFromAxisAngle(
          new Vector3(axis.x, axis.y, axis.z),
          angle,
        );
        const { x, y, z } = new Vector3(v.x, v.y, v.z).applyQuaternion(quaternion);
        expectNear(turned(v, rotation(axis, angle)), vector(x, y, z), ROUNDING);
      }),
    );
  });

  test('about a pivot is that of gl-matrix', () => {
    fc.assert(
      fc.property(
        anyAxis,
        between(-3, 3),
        anyVector(2),
        anyVector(2),
        (axis, angle, point, pivot) => {
          const q = quat.setAxisAngle(quat.create(), [axis.x, axis.y, axis.z], angle);
          const arm = vec3.fromValues(point.x - pivot.x, point.y - pivot.y, point.z - pivot.z);
          const [x = NaN, y = NaN, z = NaN] = vec3.transformQuat(vec3.create(), arm, q);
          expectNear(
            turnedAbout(point, pivot, rotation(axis, angle)),
            vector(x + pivot.x, y + pivot.y, z + pivot.z),
            ROUNDING,
          );
        },
      ),
    );
  });
});
