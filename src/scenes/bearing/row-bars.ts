import type { CornerModel } from '#core/car/car.ts';
import { numberText, sizeText, unitText } from '#core/display.ts';
import { quantity } from '#core/quantities.ts';
import { bar, path } from '../corner/sketch.ts';
import { standing, valueOf } from '../corner/standing.ts';
import '../values/bearing.ts';
import type { Mark, Scene } from '../marks.ts';
import { point } from '../plane.ts';
import { isChanged, unchanged, type Setting } from '../setting.ts';
import type { BearingLook } from './bearing-look.ts';

/** The paper of the bars; one millimetre of the drawing plane is one of its units. */
export const BARS_PAPER = { width: 400, height: 118 } as const;

/** Newtons at the end of the scale: to either side as much as the duty can bring. */
const ENDS = { straight: { least: -4000, most: 9000 }, turn: { least: -14000, most: 20000 } };

const LEFT = 12;
const RIGHT = 388;
const ROWS = [
  ['outboardRadial', 'outboard row', 84],
  ['inboardRadial', 'inboard row', 40],
] as const;

/** The radial loads of both rows as bars on one scale, the state before pale behind them, a guess dashed. */
export function rowBars(model: CornerModel, setting: Setting, look: BearingLook): Scene {
  const now = standing(model, setting);
  const earlier = isChanged(setting) ? standing(model, unchanged(setting)) : undefined;
  const { least, most } = ENDS[look.duty];
  const at = (newtons: number): number =>
    LEFT + ((Math.min(most, Math.max(least, newtons)) - least) / (most - least)) * (RIGHT - LEFT);
  const zero = at(0);
  const { units } = look;
  const marks = ROWS.flatMap(([id, name, up]): Mark[] => {
    const radial = valueOf(id, now);
    const guess = look.guesses[id];
    const run = (value: number, half: number) =>
      bar(point(zero, up), point(at(value), up), half, {
        key: `bar-${id}`,
        role: 'bearing',
        line: 'none',
        filled: true,
      });
    return [
      ...(earlier
        ? [{ ...run(valueOf(id, earlier), 12), key: `bar-${id}-before`, before: true }]
        : []),
      { ...run(radial, 8), quantity: id },
      ...(guess === undefined
        ? []
        : [
            path([point(at(guess), up + 15), point(at(guess), up - 15)], {
              key: `bar-${id}-guess`,
              role: 'guide',
              closed: false,
              line: 'hidden',
            }),
          ]),
      {
        kind: 'label',
        key: `bar-${id}-name`,
        role: 'guide',
        quantity: id,
        here: true,
        at: point(zero + 74, up + 19),
        text: `${name} ${numberText(Math.abs(radial), 'force', units)}${unitText('force', units)}`,
      },
    ];
  });
  return {
    title: 'What the rows carry',
    description: ROWS.map(
      ([id, name]) => `${name}: ${sizeText(valueOf(id, now), quantity(id), units)}.`,
    ).join(' '),
    window: { centre: point(200, 59), height: BARS_PAPER.height },
    marks: [
      path([point(zero, 110), point(zero, 18)], {
        key: 'zero',
        role: 'guide',
        closed: false,
        line: 'thin',
      }),
      ...marks,
      ...(['at the bottom', 'at the top'] as const).map((text, i): Mark => ({
        kind: 'label',
        key: `scale-${i}`,
        role: 'guide',
        here: true,
        at: point(i === 0 ? zero - 52 : zero + 44, 10),
        text: i === 0 ? `← ${text}` : `${text} →`,
      })),
    ],
  };
}
