import { path } from '../corner/sketch.ts';
import type { Mark, Scene } from '../marks.ts';
import { point } from '../plane.ts';

interface Bar {
  readonly says: string;
  readonly value: number;
  readonly width?: number;
  readonly wrong?: boolean;
}

/** Amounts of one kind beside each other, true to scale. */
export interface BarsPicture {
  readonly title: string;
  readonly bars: readonly Bar[];
}

/** Height of the highest bar, the room that all of them share, and what lies between two, in units of the drawing. */
const HIGHEST = 200;
const ACROSS = 340;
const BETWEEN = 18;

/** Bars on one line; a wrong one is dashed and empty. */
export function barsPicture(picture: BarsPicture): Scene {
  const { title, bars } = picture;
  const values = bars.map(({ value }) => value);
  const [most, least] = [Math.max(0, ...values), Math.min(0, ...values)];
  const scale = HIGHEST / (most - least);
  const widths = bars.map(({ width = 1 }) => width);
  const room = ACROSS - BETWEEN * (bars.length - 1);
  const unit = room / widths.reduce((sum, width) => sum + width, 0);
  let left = -ACROSS / 2;
  const marks = bars.flatMap(({ value, says, width = 1, wrong = false }, i): readonly Mark[] => {
    const [from, to] = [left, left + unit * width];
    left = to + BETWEEN;
    const up = scale * value;
    const pen = { role: wrong ? 'guide' : 'bearing', ...(wrong && { wrong }) } as const;
    return [
      path([point(from, 0), point(from, up), point(to, up), point(to, 0)], {
        ...{ ...pen, key: `bar-${i}`, filled: !wrong },
      }),
      {
        ...{ ...pen, kind: 'label', key: `bar-${i}-name`, text: says, here: true },
        at: point((from + to) / 2, up + (up < 0 ? -13 : 13)),
      },
    ];
  });
  return {
    title,
    description: words(picture),
    window: { centre: point(0, (scale * (most + least)) / 2), height: HIGHEST + 62 },
    marks: [
      path([point(-ACROSS / 2 - 8, 0), point(ACROSS / 2 + 8, 0)], {
        ...{ key: 'line', role: 'guide', closed: false },
      }),
      ...marks,
    ],
  };
}

/** Their order by size, since names may be given where numbers are asked for. */
function words({ title, bars }: BarsPicture): string {
  const right = bars.filter(({ wrong }) => !wrong);
  const sorted = [...right].sort((a, b) => b.value - a.value);
  const below = sorted.filter(({ value }) => value < 0).map(({ says }) => says);
  const taken = bars.find(({ wrong }) => wrong);
  return [
    `${title}, as bars true to scale. From the highest: ${sorted.map(({ says }) => says).join(', ')}.`,
    ...(below.length > 0 ? [`Below the line: ${below.join(', ')}.`] : []),
    ...(taken ? [`Dashed is where the road that was taken ends: ${placeOf(taken, sorted)}.`] : []),
  ].join(' ');
}

/** Where a bar stands among the others, from the highest down. */
function placeOf({ value }: Bar, sorted: readonly Bar[]): string {
  const next = sorted.find((bar) => bar.value < value);
  const side = value < 0 ? 'below the line' : 'above the line';
  if (!next) return `${side}, lower than all others`;
  return next === sorted[0]
    ? `${side}, higher than all others`
    : `${side}, higher than ${next.says}`;
}
