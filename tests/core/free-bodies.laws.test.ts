import fc from 'fast-check';
import { describe, test } from 'vitest';
import type { Action } from '#core/action.ts';
import type { Corner } from '#core/corner.ts';
import { freeBodies, onCarrier, type FreeBodies, type LoadAlong } from '#core/free-bodies.ts';
import { actionOf, type LoadCase } from '#core/load-cases.ts';
import { movedTo } from '#core/moved-action.ts';
import { cross, dot, minus, NOTHING, plus, type Vector } from '#core/vector.ts';
import { anyLoadedCorner, anyVector } from './corner-arbitraries.ts';
import { expectClose, expectNear } from './near.ts';

const anyLoadedAlong = anyLoadedCorner.filter((pair): pair is [(typeof pair)[0], LoadAlong] =>
  isAlong(pair[1]),
);

const isAlong = ({ kind }: LoadCase): boolean => kind !== 'lateral' && kind !== 'vertical';

const onTheWheel = ({ tyre, shaft, pads, bearing }: FreeBodies): readonly Action[] =>
  [tyre, shaft, pads, bearing].filter((action) => action !== undefined);

/** Force and moment about a point, added up. */
function sumAt(point: Vector, actions: readonly Action[]): { force: Vector; moment: Vector } {
  return actions.reduce(
    (sum, { force, point: at, couple }) => ({
      force: plus(sum.force, force),
      moment: plus(sum.moment, plus(couple, cross(minus(at, point), force))),
    }),
    { force: NOTHING, moment: NOTHING },
  );
}

const law = (check: (corner: Corner, load: LoadAlong, point: Vector) => void): void => {
  fc.assert(
    fc.property(anyLoadedAlong, anyVector(1), ([corner, load], point) => {
      check(corner, load, point);
    }),
  );
};

describe('the wheel', () => {
  test('is in balance about any point', () => {
    law((corner, load, point) => {
      const { force, moment } = sumAt(point, onTheWheel(freeBodies(corner, load)));
      expectNear(force, NOTHING, 1e-8);
      expectNear(moment, NOTHING, 1e-8);
    });
  });
});

describe('the bearing', () => {
  test('passes no couple about the spin axis', () => {
    law((corner, load) => {
      expectClose(dot(corner.spin, freeBodies(corner, load).bearing.couple), 0);
    });
  });
});

describe('the carrier', () => {
  test('feels what the load case says, wherever it is counted', () => {
    law((corner, load, point) => {
      const felt = movedTo(onCarrier(freeBodies(corner, load)), point);
      const said = movedTo(actionOf(corner, load), point);
      expectNear(felt.force, said.force, 1e-8);
      expectNear(felt.couple, said.couple, 1e-8);
    });
  });
});
