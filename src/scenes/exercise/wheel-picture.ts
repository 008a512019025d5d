import { path } from '../corner/sketch.ts';
import type { Mark, Scene } from '../marks.ts';
import { point } from '../plane.ts';

interface Rim {
  readonly middle_mm: number;
  readonly width_mm: number;
}

interface WheelMark {
  readonly of: keyof typeof MEASURED;
  readonly says: string;
}

/** A rim cut across, on its hub, from the front; the hub's face at nought, outboard positive. Millimetres. */
export interface WheelPicture {
  readonly wheel: Rim;
  readonly before?: Rim;
  readonly spacer_mm?: number;
  readonly strut_mm?: number;
  readonly measures: readonly WheelMark[];
  readonly wrong?: { readonly wheel?: Rim; readonly at_mm?: number; readonly from_mm?: number };
}

const MEASURED = {
  move: 'from where the middle of the wheel was to where it is',
  inset: 'from the middle of the wheel to its mounting face',
  spacer: 'from the hub to the wheel',
  width: 'from edge to edge of the rim',
  half: 'from the inner edge of the rim to its middle',
  back: 'from the inner edge of the rim to its mounting face',
  clearance: 'from the strut to the inner edge of the rim',
  innerMove: 'from where the inner edge was to where it is',
} as const;

/** Heights above the spin axis: of the rim's bed, its edges, the hub, and the drawing's middle. */
const BED = 118;
const EDGE = 150;
const HUB = 66;
const MIDDLE = 78;
const HEIGHT = 270;

/** The upper half of a rim with its disc, the hub, and what stands between them. */
export function wheelPicture(picture: WheelPicture): Scene {
  const { wheel, before, spacer_mm = 0, strut_mm, measures, wrong } = picture;
  const dimension = (of: WheelMark['of'], says: string, i: number): Mark => {
    const [from, to] = ends(of, picture);
    return dimensioned(of, says, from, to, i);
  };
  return {
    title: 'A left wheel on its hub, cut across, from the front',
    description: words(picture),
    window: { centre: point((wheel.middle_mm + 0) / 2, MIDDLE), height: HEIGHT },
    marks: [
      ...hub(),
      ...(spacer_mm > 0 ? [block('spacer', 0, spacer_mm)] : []),
      ...(strut_mm === undefined ? [] : strut(strut_mm)),
      ...(before ? rim('before', before, spacer_mm, { before: true }) : []),
      ...rim('wheel', wheel, spacer_mm),
      middle('middle', wheel.middle_mm),
      ...(wrong?.wheel
        ? [
            ...rim('wrong', wrong.wheel, spacer_mm, { wrong: true }),
            middle('wrong-middle', wrong.wheel.middle_mm, true),
          ]
        : []),
      ...(wrong?.at_mm === undefined ? [] : [middle('wrong-place', wrong.at_mm, true)]),
      ...measures.map(({ of, says }, i) => dimension(of, says, i)),
      ...(wrong?.from_mm === undefined
        ? []
        : [
            {
              ...dimensioned(
                'wrong-measure',
                'yours',
                wrong.from_mm,
                wrong.at_mm ?? wrong.wheel?.middle_mm ?? 0,
                measures.length,
              ),
              wrong: true,
            } as const,
          ]),
    ],
  };
}

function ends(of: WheelMark['of'], picture: WheelPicture): readonly [number, number] {
  const { wheel, before = wheel, spacer_mm = 0, strut_mm = 0 } = picture;
  const inner = (rim_: Rim): number => rim_.middle_mm - rim_.width_mm / 2;
  switch (of) {
    case 'move':
      return [before.middle_mm, wheel.middle_mm];
    case 'inset':
      return [wheel.middle_mm, spacer_mm];
    case 'spacer':
      return [0, spacer_mm];
    case 'width':
      return [inner(wheel), inner(wheel) + wheel.width_mm];
    case 'half':
      return [inner(wheel), wheel.middle_mm];
    case 'back':
      return [inner(wheel), spacer_mm];
    case 'clearance':
      return [strut_mm, inner(wheel)];
    case 'innerMove':
      return [inner(before), inner(wheel)];
  }
}

/** One above the other, from the top of the rim up, then below the spin axis. */
function dimensioned(key: string, says: string, from: number, to: number, i: number): Mark {
  const up = [EDGE + 22, EDGE + 44, -14, -36][i] ?? -36;
  return {
    ...{ kind: 'dimension', key, role: 'guide', text: says },
    ...{ from: point(from, EDGE), to: point(to, EDGE) },
    ...{ fromFoot: point(from, up), toFoot: point(to, up) },
  };
}

/** Edges, bed and disc of a rim. */
function rim(key: string, { middle_mm, width_mm }: Rim, face: number, pen = {}): readonly Mark[] {
  const [inner, outer] = [middle_mm - width_mm / 2, middle_mm + width_mm / 2];
  const line = { role: 'wheel', closed: false, ...pen } as const;
  return [
    path(
      [
        point(inner, EDGE),
        point(inner + 5, BED + 6),
        point(middle_mm - 20, BED - 12),
        point(outer - 5, BED + 6),
        point(outer, EDGE),
      ],
      { ...line, key: `${key}-rim` },
    ),
    // The disc goes from the mounting face out to the bed.
    path([point(face, 0), point(face, HUB + 10), point((face + middle_mm) / 2, BED - 6)], {
      ...{ ...line, key: `${key}-disc`, line: 'heavy' },
    }),
  ];
}

const middle = (key: string, across: number, wrong = false): Mark =>
  path([point(across, 0), point(across, EDGE + 8)], {
    ...{ key, role: 'wheel', line: 'chain', closed: false },
    ...(wrong && { wrong }),
  });

const block = (key: string, from: number, to: number): Mark =>
  path([point(from, 0), point(from, HUB), point(to, HUB), point(to, 0)], {
    ...{ key: `${key}-block`, role: 'part', filled: true },
  });

const hub = (): readonly Mark[] => [
  path(
    [
      point(-46, 0),
      point(-46, HUB - 20),
      point(-12, HUB - 20),
      point(-12, HUB),
      point(0, HUB),
      point(0, 0),
    ],
    {
      ...{ key: 'hub', role: 'bearing', filled: true },
    },
  ),
  { kind: 'label', key: 'hub-name', role: 'bearing', at: point(-30, 24), text: 'hub' },
  path([point(-200, 0), point(200, 0)], {
    ...{ key: 'spin-axis', role: 'part', line: 'chain', closed: false },
  }),
];

const strut = (across: number): readonly Mark[] => [
  path(
    [
      point(across - 26, 40),
      point(across - 26, EDGE + 60),
      point(across, EDGE + 60),
      point(across, 40),
    ],
    {
      ...{ key: 'strut', role: 'part', filled: true },
    },
  ),
  { kind: 'label', key: 'strut-name', role: 'part', at: point(across - 13, 60), text: 'strut' },
];

function words({ before, spacer_mm, strut_mm, measures, wrong }: WheelPicture): string {
  return [
    'The car is at the left. The wheel, cut across above the spin axis, sits with its mounting face on the hub; a chain line runs through the middle of its rim.',
    ...(spacer_mm ? ['A spacer lies between hub and wheel.'] : []),
    ...(strut_mm === undefined ? [] : ['The strut stands inboard of the rim.']),
    ...(before ? ['Pale: the wheel as it was.'] : []),
    ...measures.map(({ of, says }) => `${says}: ${MEASURED[of]}.`),
    ...(wrong ? [wrongWords(wrong)] : []),
  ].join(' ');
}

function wrongWords({ wheel, at_mm }: NonNullable<WheelPicture['wrong']>): string {
  const what =
    wheel === undefined
      ? `a place ${(at_mm ?? 0) < 0 ? 'inboard' : 'outboard'} of the hub’s face`
      : 'the wheel where that would put it';
  return `Dashed is the road that was taken: ${what}.`;
}
