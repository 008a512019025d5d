import { path } from '../corner/sketch.ts';
import type { Mark, Scene } from '../marks.ts';
import { point } from '../plane.ts';

/** Two rows of a wheel bearing and the load that goes through them, from the front. Millimetres, outboard positive. */
export interface BearingPicture {
  readonly offset_mm: number;
  readonly before_mm?: number;
  readonly spread_mm: number;
  readonly measures: readonly { readonly of: 'offset' | 'spread'; readonly says: string }[];
  readonly load?: string;
  readonly side?: { readonly says: string; readonly inward: boolean };
}

const HALF_HEIGHT = 62;
const ROW = 9;
const RING = 26;

/** Spin axis, both rows, and the middle of the wheel, which the load goes up through. */
export function bearingPicture(picture: BearingPicture): Scene {
  const { offset_mm, before_mm, spread_mm, measures, load, side } = picture;
  const half = spread_mm / 2;
  const line = (key: string, across: number, before = false): Mark =>
    path([point(across, -HALF_HEIGHT), point(across, HALF_HEIGHT)], {
      key,
      role: 'wheel',
      line: 'chain',
      closed: false,
      before,
    });
  const row = (key: string, across: number, name: string): readonly Mark[] => [
    ...[RING, -RING].map((up): Mark => ({
      kind: 'circle',
      key: `${key}-${up}`,
      role: 'bearing',
      centre: point(across, up),
      radius: ROW,
      line: 'outline',
      filled: true,
    })),
    { kind: 'spot', key: `${key}-centre`, role: 'bearing', at: point(across, 0) },
    {
      kind: 'label',
      key: `${key}-name`,
      role: 'bearing',
      at: point(across, RING + 16),
      text: name,
    },
  ];
  const foot = point(offset_mm, -HALF_HEIGHT);
  return {
    title: 'Both rows of a left wheel bearing from the front',
    description: words(picture),
    window: { centre: point(0, -8), height: 190 },
    marks: [
      path([point(-110, 0), point(110, 0)], {
        key: 'spin-axis',
        role: 'part',
        line: 'chain',
        closed: false,
      }),
      ...row('inboard', -half, 'inboard row'),
      ...row('outboard', half, 'outboard row'),
      ...(before_mm === undefined ? [] : [line('line-before', before_mm, true)]),
      line('line', offset_mm),
      ...(load === undefined
        ? []
        : ([
            {
              kind: 'arrow',
              key: 'load',
              role: 'force',
              from: point(offset_mm, -HALF_HEIGHT - 32),
              to: foot,
            },
            { kind: 'label', key: 'load-name', role: 'force', at: foot, text: load },
          ] as const)),
      ...(side
        ? ([
            {
              kind: 'arrow',
              key: 'side',
              role: 'force',
              from: point(offset_mm + (side.inward ? 40 : -40), -HALF_HEIGHT - 20),
              to: point(offset_mm, -HALF_HEIGHT - 20),
            },
            {
              kind: 'label',
              key: 'side-name',
              role: 'force',
              at: point(offset_mm + (side.inward ? 40 : -40), -HALF_HEIGHT - 20),
              text: side.says,
            },
          ] as const)
        : []),
      ...measures.map(({ of, says }): Mark => {
        const [from, to] = of === 'spread' ? [-half, half] : [0, offset_mm];
        const up = of === 'spread' ? -RING - 18 : HALF_HEIGHT;
        return {
          kind: 'dimension',
          key: of,
          role: 'guide',
          from: point(from, 0),
          to: point(to, 0),
          fromFoot: point(from, up),
          toFoot: point(to, up),
          text: says,
        };
      }),
    ],
  };
}

function words({ offset_mm, before_mm, spread_mm, measures, load, side }: BearingPicture): string {
  const where =
    Math.abs(offset_mm) < 0.05
      ? 'through the middle between them'
      : Math.abs(offset_mm) > spread_mm / 2
        ? `beyond the ${offset_mm > 0 ? 'outboard' : 'inboard'} row`
        : `between them, nearer to the ${offset_mm > 0 ? 'outboard' : 'inboard'} one`;
  return [
    `The spin axis lies level, with the inboard row at the left and the outboard row at the right. The middle of the wheel runs upright ${where}.`,
    ...(before_mm === undefined ? [] : ['Pale: where it ran before.']),
    ...(load === undefined ? [] : [`Up along it goes the ${load}.`]),
    ...(side
      ? [
          `From the side the road pushes ${side.inward ? 'toward' : 'away from'} the car: ${side.says}.`,
        ]
      : []),
    ...measures.map(({ of, says }) =>
      of === 'spread' ? `From row to row: ${says}.` : `From the middle of the rows: ${says}.`,
    ),
  ].join(' ');
}
