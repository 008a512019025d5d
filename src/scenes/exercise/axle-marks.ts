import { path } from '../corner/sketch.ts';
import type { Mark } from '../marks.ts';
import { PAPER } from '../paper/frame.ts';
import { point, type Point } from '../plane.ts';
import type { AxlePicture, AxleTurns, Sense } from './axle-picture.ts';

/** Half of the rack, how far its line lies from the axes, and how far a rod's outer end is drawn from the rack. */
const HALF_RACK = 62;
const RACK_AT = 72;
const RADIUS = { right: 34, wrong: 48 };

/** An arrow bent round an axis: counterclockwise is to the left. */
export function turnOn(
  key: string,
  centre: Point,
  sense: Sense | undefined,
  isWrong: boolean,
): readonly Mark[] {
  if (sense === undefined) return [];
  const sweep = 2.4 * sense;
  return [
    {
      ...{ kind: 'turn', key: `${isWrong ? 'wrong-' : ''}${key}-turn`, role: 'lever', centre },
      ...{ radius: isWrong ? RADIUS.wrong : RADIUS.right, from: Math.PI / 2 - sweep / 2, sweep },
      ...(isWrong && { wrong: true }),
    },
  ];
}

/** Calls a wrong arrow what it is, at the top of it. */
export const yoursAbove = (key: string, { across, up }: Point, height: number): Mark => ({
  ...{ kind: 'label', key: `wrong-${key}-turn-name`, role: 'lever', text: 'yours', wrong: true },
  at: point(across, up + (RADIUS.wrong * height) / PAPER.height),
});

/** What both wheels are turned together, which way the car is, and the rack. */
export function netMarks(turns: AxleTurns, isWrong: boolean): readonly Mark[] {
  const { both, car, rack } = turns;
  const pen = isWrong ? { wrong: true } : {};
  const prefix = isWrong ? 'wrong-' : '';
  const name = isWrong ? 'yours' : undefined;
  const label = (key: string, at: Point, text: string): Mark => ({
    ...{ ...pen, kind: 'label', key: `${prefix}${key}-name`, role: 'lever', at, text },
  });
  const aside = isWrong ? -46 : 0;
  const arrow = (key: string, up: number, sense: Sense): Mark => ({
    ...{ ...pen, kind: 'arrow', key: `${prefix}${key}`, role: 'lever' },
    ...{ from: point(34 * sense, up + aside), to: point(-34 * sense, up + aside) },
  });
  return [
    ...(both === undefined
      ? []
      : [arrow('both', 110, both), label('both', point(0, 110 + aside), name ?? 'both wheels')]),
    ...(rack === undefined
      ? []
      : [arrow('rack-way', -120, rack), label('rack-way', point(0, -120 + aside), name ?? 'rack')]),
    ...(car === undefined
      ? []
      : [
          ...turnOn('car', point(0, -120), car, isWrong),
          label('car', point(0, -120 + (isWrong ? -80 : 0)), name ?? 'car'),
        ]),
  ];
}

/** Rack, rods and steering arms, ahead of the axes or behind them. */
export function rackMarks(
  { rack, one, rodAngle = 0, turns, wrong }: AxlePicture,
  axisOf: (out: 1 | -1) => Point,
): readonly Mark[] {
  if (!rack) return [];
  const up = rack === 'ahead' ? RACK_AT : -RACK_AT;
  const sides = (one ? [-1] : [-1, 1]) as readonly (1 | -1)[];
  const pen = { role: 'part', closed: false } as const;
  const rods = sides.flatMap((out): Mark[] => {
    const key = out < 0 ? 'left' : 'right';
    const axis = axisOf(out);
    const end = point(axis.across, up);
    const inner = point(
      out * HALF_RACK,
      up - Math.abs(end.across - out * HALF_RACK) * Math.tan(rodAngle),
    );
    return [
      path([axis, end], { ...pen, key: `${key}-arm`, line: 'heavy' }),
      path([end, inner], { ...pen, key: `${key}-rod`, line: 'outline' }),
      { kind: 'spot', key: `${key}-rod-end`, role: 'part', at: end },
    ];
  });
  const line = up - Math.max(0, Math.abs(axisOf(-1).across) - HALF_RACK) * Math.tan(rodAngle);
  const from = one ? -HALF_RACK : -HALF_RACK;
  return [
    ...rods,
    path([point(from, line), point(one ? 0 : HALF_RACK, line)], {
      ...{ key: 'rack', role: 'part', line: 'heavy', closed: false },
    }),
    { kind: 'label', key: 'rack-name', role: 'part', at: point(one ? -30 : 0, line), text: 'rack' },
    ...rodForce(turns?.rod, axisOf(-1).across, up, false),
    ...rodForce(wrong?.rod, axisOf(-1).across, up, true),
  ];
}

/** What the rod does to the arm: it pulls it toward the rack, or pushes it away. */
function rodForce(
  rod: AxleTurns['rod'],
  across: number,
  up: number,
  isWrong: boolean,
): readonly Mark[] {
  if (!rod) return [];
  const at = up + (isWrong ? -26 : 0);
  const far = across + 74;
  const [from, to] = rod === 'tension' ? [across + 8, far] : [far, across + 8];
  const pen = { role: 'force', ...(isWrong && { wrong: true }) } as const;
  const key = isWrong ? 'wrong-rod-force' : 'rod-force';
  return [
    { ...pen, kind: 'arrow', key, from: point(from, at), to: point(to, at) },
    {
      ...{ ...pen, kind: 'label', key: `${key}-name`, at: point((from + to) / 2, at) },
      text: isWrong ? 'yours' : rod,
    },
  ];
}
