import fc from 'fast-check';
import { describe, test } from 'vitest';
import { axleReaction, type Axle } from '#core/axle.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { anyCorner, between } from './corner-arbitraries.ts';
import { valueOf } from './example-corner.ts';
import { expectClose } from './near.ts';

const anyAxle: fc.Arbitrary<Axle> = fc
  .record({
    corner: anyCorner.filter(({ side }) => side === 'left'),
    gear: fc.record({
      travelPerTurn: between(0.03, 0.08),
      rimRadius: between(0.15, 0.22),
      assist: between(1, 8),
    }),
  })
  .map(({ corner, gear }) => ({ left: corner, right: mirroredCorner(corner), gear }));

const anyKind = fc.constantFrom('brake-on-carrier', 'shaft', 'vertical');

describe('an axle that is its own mirror image', () => {
  test('has nothing on the rack under equal forces', () => {
    fc.assert(
      fc.property(anyAxle, anyKind, between(-5000, 5000), (axle, kind, force) => {
        const loads = [{ kind, force }];
        expectClose(valueOf(axleReaction(axle, { left: loads, right: loads })).rackForce, 0);
      }),
    );
  });

  test('takes forces changed over from side to side the other way round', () => {
    fc.assert(
      fc.property(
        anyAxle,
        anyKind,
        between(-5000, 5000),
        between(-5000, 5000),
        (axle, kind, first, second) => {
          const torque = (left: number, right: number) =>
            valueOf(
              axleReaction(axle, {
                left: [{ kind, force: left }],
                right: [{ kind, force: right }],
              }),
            ).handwheelTorque;
          expectClose(torque(first, second), -torque(second, first));
        },
      ),
    );
  });
});
