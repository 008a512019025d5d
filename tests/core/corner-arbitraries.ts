import fc from 'fast-check';
import { radians } from '#core/angle.ts';
import type { Change } from '#core/change.ts';
import { spinAxis, type Corner, type Pivots, type TieRod } from '#core/corner.ts';
import { lineThrough } from '#core/line.ts';
import type { LoadCase } from '#core/load-cases.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { vector, type Vector } from '#core/vector.ts';
import { between } from './bearing/arbitraries.ts';

export { between };

export const anyAngle_deg = (least: number, most: number): fc.Arbitrary<number> =>
  between(least, most).map(radians);

const anyPoint = (
  [x, y, z]: readonly [number, number, number],
  spread: number,
): fc.Arbitrary<Vector> =>
  fc
    .tuple(between(-spread, spread), between(-spread, spread), between(-spread, spread))
    .map(([dx, dy, dz]) => vector(x + dx, y + dy, z + dz));

export const anyVector = (size: number): fc.Arbitrary<Vector> => anyPoint([0, 0, 0], size);

const anyPivots: fc.Arbitrary<Pivots> = fc.record({
  lower: anyPoint([0, 0.65, 0.19], 0.05),
  upper: anyPoint([-0.02, 0.6, 0.58], 0.09),
});

type Wheel = Pick<Corner, 'wheelCentre' | 'spin' | 'loadedRadius'>;

const anyWheel = (camber: number, toe: number): fc.Arbitrary<Wheel> =>
  fc.record({
    wheelCentre: anyPoint([0, 0.75, 0.3], 0.03),
    spin: fc
      .tuple(anyAngle_deg(-camber, camber), anyAngle_deg(-toe, toe))
      .map(([gamma, psi]) => spinAxis('left', gamma, psi)),
    loadedRadius: between(0.2, 0.45),
  });

const anyTieRod = fc.record({
  outer: anyPoint([-0.12, 0.65, 0.21], 0.02),
  inner: anyPoint([-0.11, 0.33, 0.23], 0.02),
});

const anyLeftCorner = (wheel: fc.Arbitrary<Wheel>): fc.Arbitrary<SteerableCorner> =>
  fc.tuple(anyPivots, wheel, anyTieRod).map(([pivots, rest, tieRod]) => ({
    side: 'left',
    axis: lineThrough(pivots.lower, pivots.upper),
    pivots,
    ...rest,
    tieRod,
  }));

/** A corner with everything known about it. */
export type SteerableCorner = Corner & { readonly pivots: Pivots; readonly tieRod: TieRod };

const onEitherSide = (left: fc.Arbitrary<SteerableCorner>): fc.Arbitrary<SteerableCorner> =>
  fc
    .tuple(left, fc.boolean())
    .map(([corner, right]) => (right ? (mirroredCorner(corner) as SteerableCorner) : corner));

/** A corner of a car-like size on either side, with up to 8° of camber and 3° of toe. */
export const anyCorner = onEitherSide(anyLeftCorner(anyWheel(8, 3)));

/** The same with its wheel upright and straight. */
export const anyUprightCorner = onEitherSide(anyLeftCorner(anyWheel(0, 0)));

export const anyRotation = anyAngle_deg(-40, 40);

const anyForce = between(-8000, 8000);

/** Any load case; a shaft at an angle points to the side of the corner that it is for. */
export const anyLoadFor = ({ side }: Corner): fc.Arbitrary<LoadCase> => {
  const shaftDirection = fc
    .tuple(between(-0.4, 0.4), between(0.5, 2), between(-0.4, 0.4))
    .map(([x, y, z]) => vector(x, side === 'left' ? y : -y, z));
  return fc.oneof(
    fc.record({ kind: fc.constant('brake-on-carrier' as const), force: anyForce }),
    fc.record({ kind: fc.constant('shaft' as const), force: anyForce }),
    fc.record({ kind: fc.constant('shaft' as const), force: anyForce, shaftDirection }),
    fc.record({ kind: fc.constant('impact' as const), force: anyVector(6000) }),
    fc.record({
      kind: fc.constant('lateral' as const),
      force: anyForce,
      pneumaticTrail: between(-0.02, 0.06),
    }),
    fc.record({ kind: fc.constant('vertical' as const), force: between(0, 9000) }),
  );
};

/** A corner with a load on it. */
export const anyLoadedCorner: fc.Arbitrary<readonly [SteerableCorner, LoadCase]> = anyCorner.chain(
  (corner) => anyLoadFor(corner).map((load) => [corner, load] as const),
);

export const anyChange: fc.Arbitrary<Change> = fc.record({
  spacer: between(0, 0.06),
  inset: between(-0.04, 0.04),
  loadedRadius: between(-0.04, 0.06),
  camberAtUpperPivot: anyAngle_deg(-4, 4),
  camberAtCarrier: anyAngle_deg(-4, 4),
});
