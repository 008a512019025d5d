import fc from 'fast-check';
import { expect, test } from 'vitest';
import { momentOf } from '#core/action.ts';
import { movedTo, opposite } from '#core/moved-action.ts';
import { plus, vector } from '#core/vector.ts';
import { anyCorner, anyVector } from './corner-arbitraries.ts';
import { expectClose, expectNear } from './near.ts';

const anyAction = fc.record({
  force: anyVector(6000),
  point: anyVector(1),
  couple: anyVector(900),
});

test('an action has the same moment about any axis wherever its force is counted', () => {
  fc.assert(
    fc.property(anyCorner, anyAction, anyVector(1), (corner, action, point) => {
      expectClose(momentOf(corner, movedTo(action, point)), momentOf(corner, action));
    }),
  );
});

test('an action moved there and back is what it was', () => {
  fc.assert(
    fc.property(anyAction, anyVector(1), (action, point) => {
      const back = movedTo(movedTo(action, point), action.point);
      expectNear(back.couple, action.couple, 1e-8);
      expect(back.force).toEqual(action.force);
    }),
  );
});

test('an action and its opposite do nothing together', () => {
  fc.assert(
    fc.property(anyCorner, anyAction, (corner, action) => {
      const other = opposite(action);
      expectNear(plus(action.force, other.force), vector(0, 0, 0));
      expectClose(momentOf(corner, action) + momentOf(corner, other), 0);
    }),
  );
});
