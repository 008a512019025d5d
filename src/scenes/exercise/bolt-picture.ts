import { path } from '../corner/sketch.ts';
import type { Mark, Scene } from '../marks.ts';
import { point } from '../plane.ts';

interface BoltMark {
  readonly of: keyof typeof MEASURED;
  readonly says: string;
  readonly long_mm?: number;
}

/** A bolt or a stud along its length, the seat at nought, the hub to the right. Millimetres. */
export interface BoltPicture {
  readonly length_mm: number;
  readonly wheel_mm: number;
  readonly spacer_mm: number;
  readonly nut?: boolean;
  readonly measures: readonly BoltMark[];
  readonly wrong_mm?: number;
}

const MEASURED = {
  length: 'from the seat to the end of the thread',
  wheel: 'the wheel under the seat',
  spacer: 'the spacer',
  engaged: 'the thread that holds',
  thread: 'the thread that is asked for',
} as const;

/** Half of a bolt's thickness and of what it goes through, and how far the hub reaches. */
const HALF = 7;
const AROUND = 21;
const HUB = 34;

/** Bolt, wheel, spacer and hub, or a stud with its nut. */
export function boltPicture(picture: BoltPicture): Scene {
  const { length_mm, wheel_mm, spacer_mm, nut = false, measures, wrong_mm } = picture;
  const face = wheel_mm + spacer_mm;
  const begins = nut ? spacer_mm : face;
  const [least, most] = nut ? [-26, 46] : [-14, face + HUB];
  return {
    title: nut ? 'A stud in its nut, cut open' : 'A wheel bolt in its hub, cut open',
    description: words(picture),
    window: { centre: point((least + most) / 2, 0), height: Math.max(74, 0.78 * (most - least)) },
    marks: [
      ...(nut ? nutMarks(spacer_mm) : boltParts(wheel_mm, spacer_mm, face)),
      ...shank(length_mm, nut),
      ...measures.map((mark, i) => {
        const [from, to] = ends(mark, picture, begins);
        return dimension(mark.of, mark.says, from, to, [29, -29, -38, 38][i] ?? 29);
      }),
      ...(wrong_mm === undefined
        ? []
        : [
            {
              ...dimension('wrong', 'yours', begins, begins + wrong_mm, -29),
              wrong: true,
            } as const,
          ]),
    ],
  };
}

function ends(
  { of, long_mm = 0 }: BoltMark,
  { length_mm, wheel_mm, spacer_mm }: BoltPicture,
  begins: number,
): readonly [number, number] {
  switch (of) {
    case 'length':
      return [0, length_mm];
    case 'wheel':
      return [0, wheel_mm];
    case 'spacer':
      return [wheel_mm, wheel_mm + spacer_mm];
    case 'engaged':
      return [begins, length_mm];
    case 'thread':
      return [begins, begins + long_mm];
  }
}

const block = (key: string, from: number, to: number, role: 'wheel' | 'part' | 'bearing'): Mark =>
  path([point(from, -AROUND), point(from, AROUND), point(to, AROUND), point(to, -AROUND)], {
    ...{ key: `${key}-block`, role, filled: true },
  });

const name = (key: string, across: number, role: 'wheel' | 'part' | 'bearing'): Mark => ({
  ...{ kind: 'label', key: `${key}-name`, role, at: point(across, -15), text: key },
});

const boltParts = (wheel: number, spacer: number, face: number): readonly Mark[] => [
  block('wheel', 0, wheel, 'wheel'),
  ...(spacer > 0
    ? [block('spacer', wheel, face, 'part'), name('spacer', wheel + spacer / 2, 'part')]
    : []),
  block('hub', face, face + HUB, 'bearing'),
  name('wheel', wheel / 2, 'wheel'),
  name('hub', face + HUB / 2, 'bearing'),
];

const nutMarks = (seat: number): readonly Mark[] => [
  block('nut', seat, seat + 30, 'part'),
  ...(seat > 0 ? [block('spacer', 0, seat, 'wheel'), name('spacer', seat / 2, 'wheel')] : []),
  name('nut', seat + 15, 'part'),
];

/** The thread as it is drawn after ISO 6410: its crests heavy, its roots thin. */
function shank(length_mm: number, nut: boolean): readonly Mark[] {
  const from = nut ? -26 : 0;
  const line = (key: string, up: number): Mark =>
    path([point(from, up), point(length_mm, up)], {
      ...{ key, role: 'part', line: 'thin', closed: false },
    });
  return [
    path([point(from, -HALF), point(from, HALF), point(length_mm, HALF), point(length_mm, -HALF)], {
      ...{ key: 'shank', role: 'part', filled: true },
    }),
    line('root-above', HALF - 1.4),
    line('root-below', 1.4 - HALF),
    ...(nut
      ? []
      : [
          path([point(-10, -12), point(-10, 12), point(0, 12), point(0, -12)], {
            ...{ key: 'head', role: 'part', filled: true },
          }),
        ]),
  ];
}

function dimension(key: string, says: string, from: number, to: number, up: number): Mark {
  const edge = Math.sign(up) * HALF;
  return {
    ...{ kind: 'dimension', key, role: 'guide', text: says },
    ...{ from: point(from, edge), to: point(to, edge) },
    ...{ fromFoot: point(from, up), toFoot: point(to, up) },
  };
}

function words({ nut, spacer_mm, measures, wrong_mm, length_mm, wheel_mm }: BoltPicture): string {
  const engaged = length_mm - (nut ? 0 : wheel_mm) - spacer_mm;
  return [
    nut
      ? 'The stud comes from the left and ends inside the nut.'
      : 'The head of the bolt is at the left; its shank goes through the wheel into the hub at the right.',
    ...(spacer_mm > 0 ? [`A spacer lies between ${nut ? 'wheel and nut' : 'wheel and hub'}.`] : []),
    ...measures.map(({ of, says }) => `${says}: ${MEASURED[of]}.`),
    ...(wrong_mm === undefined
      ? []
      : [
          `Dashed is the road that was taken: ${wrong_mm > engaged ? 'more' : 'less'} thread than there is.`,
        ]),
  ].join(' ');
}
