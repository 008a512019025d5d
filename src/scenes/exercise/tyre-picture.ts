import { circle } from '../corner/sketch.ts';
import type { Mark, Scene } from '../marks.ts';
import { point } from '../plane.ts';

interface TyreSize {
  readonly diameter_mm: number;
  readonly rim_mm: number;
}

interface TyreMark {
  readonly of: keyof typeof MEASURED;
  readonly says: string;
}

/** A tyre on its rim from the side, standing on the road. Millimetres. */
export interface TyrePicture {
  readonly tyre: TyreSize;
  readonly before?: TyreSize;
  readonly measures: readonly TyreMark[];
  readonly wrong_mm?: number;
}

const MEASURED = {
  diameter: 'across the tyre, from tread to tread',
  rim: 'across the rim',
  height: 'the sidewall, from the rim to the tread',
} as const;

/** All stand on the road, so that a larger one reaches higher. */
export function tyrePicture(picture: TyrePicture): Scene {
  const { tyre, before, measures, wrong_mm } = picture;
  const radius = tyre.diameter_mm / 2;
  const centre = point(0, radius);
  const most = Math.max(tyre.diameter_mm, before?.diameter_mm ?? 0, wrong_mm ?? 0);
  return {
    title: 'A tyre on its rim, from the side',
    description: words(picture),
    window: { centre: point(0, most / 2), height: 1.2 * most },
    marks: [
      { kind: 'ground', key: 'ground', role: 'ground', up: 0 },
      ...(before
        ? [
            circle(point(0, before.diameter_mm / 2), before.diameter_mm / 2, {
              ...{ key: 'before', role: 'wheel', before: true },
            }),
          ]
        : []),
      circle(centre, radius, { key: 'tyre', role: 'wheel', filled: true }),
      circle(centre, tyre.rim_mm / 2, { key: 'rim-edge', role: 'part' }),
      ...(wrong_mm === undefined
        ? []
        : [
            circle(point(0, wrong_mm / 2), wrong_mm / 2, {
              ...{ key: 'wrong', role: 'wheel', wrong: true },
            }),
            dimension('wrong-diameter', 'yours', 0, wrong_mm, most / 2 + 70, true),
          ]),
      ...measures.map(({ of, says }): Mark => {
        const low = radius - tyre.rim_mm / 2;
        if (of === 'diameter') return dimension(of, says, 0, tyre.diameter_mm, -most / 2 - 40);
        return of === 'rim'
          ? dimension(of, says, low, low + tyre.rim_mm, 0)
          : dimension(of, says, 0, low, radius * 0.55);
      }),
    ],
  };
}

function dimension(
  key: string,
  says: string,
  low: number,
  high: number,
  across: number,
  wrong = false,
): Mark {
  return {
    ...{ kind: 'dimension', key, role: 'guide', text: says },
    ...{ from: point(0, low), to: point(0, high) },
    ...{ fromFoot: point(across, low), toFoot: point(across, high) },
    ...(wrong && { wrong }),
  };
}

function words({ tyre, before, measures, wrong_mm }: TyrePicture): string {
  return [
    'The tyre stands on the road, its rim in the middle.',
    ...(before
      ? [
          `Pale: the old one, which is ${before.diameter_mm < tyre.diameter_mm ? 'lower' : 'taller'}.`,
        ]
      : []),
    ...measures.map(({ of, says }) => `${says}: ${MEASURED[of]}.`),
    ...(wrong_mm === undefined
      ? []
      : [
          `Dashed is the road that was taken: a tyre that is ${wrong_mm < tyre.diameter_mm ? 'lower' : 'taller'}.`,
        ]),
  ].join(' ');
}
