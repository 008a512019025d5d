import { test } from 'vitest';
import { movedTo } from '#core/moved-action.ts';
import { NOTHING, vector } from '#core/vector.ts';
import { expectNear } from './near.ts';

const rearward = vector(-2500, 0, 0);

test('a rearward force moved up by 0.3 m leaves a couple of 750 N·m about the line across the car', () => {
  const atGround = { force: rearward, point: vector(0, 0.7, 0), couple: NOTHING };
  expectNear(movedTo(atGround, vector(0, 0.7, 0.3)).couple, vector(0, 750, 0));
});

test('a couple is spent by the way that its force moves', () => {
  const atCentre = { force: rearward, point: vector(0, 0.7, 0.3), couple: vector(0, 750, 0) };
  expectNear(movedTo(atCentre, vector(0, 0.7, 0.12)).couple, vector(0, 300, 0));
  expectNear(movedTo(atCentre, vector(0, 0.7, 0)).couple, NOTHING);
});

test('a force that slides along its own line brings no couple', () => {
  const action = { force: rearward, point: vector(0, 0.7, 0), couple: NOTHING };
  expectNear(movedTo(action, vector(-1.4, 0.7, 0)).couple, NOTHING);
});
