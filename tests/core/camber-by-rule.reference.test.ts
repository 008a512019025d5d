import { describe, expect, test } from 'vitest';
import { degrees, radians } from '#core/angle.ts';
import { camberByRule } from '#core/camber-by-rule.ts';

/** An inclination of atan(0.06/0.55) and a caster of atan(0.03/0.55), camber 0. */
const axis = { inclination: radians(6.2258291), caster: radians(3.1221305) };

describe('camber by the rule', () => {
  const rows = [
    {
      turn: 19.83159,
      camber: 1.4326,
      source: 'rigid rotation by +20° in MuJoCo 3.3.8, three.js, cannon-es and mathjs',
    },
    {
      turn: -19.86971,
      camber: -0.68962,
      source: 'rigid rotation by −20° in the same four',
    },
  ];

  // Tolerance: the rule leaves out the third powers of the angles, 0.1 rad of lean to the third being 0.06°.
  test.each(rows)('turned by $turn° is near the $camber° of four engines', ({ turn, camber }) => {
    expect(Math.abs(degrees(camberByRule(0, axis, radians(turn))) - camber)).toBeLessThan(0.02);
  });
});
