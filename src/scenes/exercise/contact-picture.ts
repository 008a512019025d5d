import { circle, path } from '../corner/sketch.ts';
import type { Mark, Scene } from '../marks.ts';
import { point } from '../plane.ts';

interface ContactMark {
  readonly of: keyof typeof MEASURED;
  readonly says: string;
}

/** Two ball rows back to back, cut open, with the lines through their contacts. Millimetres and radians. */
export interface ContactPicture {
  readonly rows_mm: number;
  readonly circle_mm: number;
  readonly angle: number;
  readonly measures: readonly ContactMark[];
  readonly isSolved: boolean;
  readonly wrong?: { readonly reach_mm?: number; readonly spread_mm?: number };
}

const MEASURED = {
  rows: 'from row to row',
  circle: 'across the circle of the ball centres',
  reach: 'from the row to where its line meets the spin axis',
  spread: 'from one of these places to the other',
  angle: 'between the line through the contacts and the line square to the spin axis',
} as const;

const BALL = 7;
/** How much of a contact line is seen beside the ball, in millimetres. */
const STUB = 16;

/** The inboard row at the left; the spin axis level in the middle. */
export function contactPicture(picture: ContactPicture): Scene {
  const { rows_mm, circle_mm, angle, measures, isSolved, wrong } = picture;
  const [half, up] = [rows_mm / 2, circle_mm / 2];
  const reach = up * Math.tan(angle);
  const lineOf = (out: 1 | -1, above: 1 | -1, key: string, by: number, pen = {}): Mark => {
    const ball = point(out * half, above * up);
    const foot = point(out * (half + by), 0);
    const share = STUB / Math.hypot(by, up);
    const end = isSolved || key.startsWith('wrong') ? foot : along(ball, foot, share);
    return path([along(ball, foot, -share), end], {
      ...{ key: `${key}-${out}-${above}`, role: 'force', line: 'outline', closed: false },
      ...pen,
    });
  };
  const sides = [1, -1] as const;
  const balls = sides.flatMap((out) =>
    sides.map((above) =>
      circle(point(out * half, above * up), BALL, {
        ...{ key: `ball-${out}-${above}`, role: 'bearing', filled: true },
      }),
    ),
  );
  const lines = (key: string, by: number, pen = {}): readonly Mark[] =>
    sides.flatMap((out) => sides.map((above) => lineOf(out, above, key, by, pen)));
  return {
    title: 'Two ball rows back to back, cut open',
    description: words(picture),
    window: { centre: point(0, 4), height: circle_mm + 62 },
    marks: [
      path([point(-120, 0), point(120, 0)], {
        ...{ key: 'spin-axis', role: 'part', line: 'chain', closed: false },
      }),
      ...balls,
      ...lines('line', reach),
      ...(wrong?.reach_mm === undefined
        ? []
        : lines('wrong-line', wrong.reach_mm, { wrong: true })),
      ...measures.map(({ of, says }) => measureOf(of, says, half, up, reach)),
      ...(wrong?.reach_mm === undefined
        ? []
        : [yours(level('wrong-reach', 'yours', half, half + wrong.reach_mm, -24))]),
      ...(wrong?.spread_mm === undefined
        ? []
        : [yours(level('wrong-spread', 'yours', -wrong.spread_mm / 2, wrong.spread_mm / 2, -24))]),
    ],
  };
}

const yours = (mark: Mark): Mark => ({ ...mark, wrong: true });

const along = (
  from: { across: number; up: number },
  to: { across: number; up: number },
  share: number,
) => point(from.across + share * (to.across - from.across), from.up + share * (to.up - from.up));

const level = (key: string, says: string, from: number, to: number, up: number): Mark => ({
  ...{ kind: 'dimension', key, role: 'guide', text: says },
  ...{ from: point(from, 0), to: point(to, 0) },
  ...{ fromFoot: point(from, up), toFoot: point(to, up) },
});

function measureOf(
  of: ContactMark['of'],
  says: string,
  half: number,
  up: number,
  reach: number,
): Mark {
  switch (of) {
    case 'rows':
      return level(of, says, -half, half, up + 16);
    case 'reach':
      return level(of, says, half, half + reach, -12);
    case 'spread':
      return level(of, says, -half - reach, half + reach, -12);
    case 'circle': {
      const across = -half - reach - 22;
      return {
        ...{ kind: 'dimension', key: of, role: 'guide', text: says },
        ...{ from: point(-half, -up), to: point(-half, up) },
        ...{ fromFoot: point(across, -up), toFoot: point(across, up) },
      };
    }
    case 'angle':
      // Beside the lower outboard ball, where the line leans up and outboard.
      return {
        ...{ kind: 'angle', key: of, role: 'guide', text: says },
        ...{ vertex: point(half, -up), towards: point(half + reach * 0.6, -up * 0.4) },
      };
  }
}

function words({ measures, isSolved, wrong }: ContactPicture): string {
  return [
    'The spin axis lies level, with a ball of either row above it and below it. The lines through the contacts lean apart toward the axis.',
    ...(isSolved ? ['They are drawn down to it.'] : []),
    ...measures.map(({ of, says }) => `${says}: ${MEASURED[of]}.`),
    ...(wrong
      ? [
          `Dashed is the road that was taken: ${wrong.reach_mm === undefined ? 'another distance between the two places' : 'lines that meet the axis elsewhere'}.`,
        ]
      : []),
  ].join(' ');
}
