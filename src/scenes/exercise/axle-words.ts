import type { AxleForce, AxleMeasure, AxlePicture, AxleTurns, Sense } from './axle-picture.ts';

/** The axle in words: where the axes are, what the road does, and which way things turn. */
export function axleWords(picture: AxlePicture): string {
  const { scrub_mm, left, right, one, rack, turns, wrong, measures = [] } = picture;
  const place = scrub_mm > 0 ? 'inboard' : 'outboard';
  const axes = one
    ? `The steering axis meets the road ${place} of the middle of the tyre.`
    : `Each steering axis meets the road ${place} of the middle of its tyre.`;
  const [a, b] = [left && !left.wrong && left, right && !right.wrong && right];
  return [
    'The front of the car is at the top.',
    // Nought stands where nobody says.
    ...(scrub_mm === 0 ? [] : [axes]),
    ...(a && b
      ? [
          `The road pushes the left tyre ${way(a)} with ${a.says} and the right one ${way(b)} with ${b.says}. Forces are true to scale to one another, the distance of the axes is not.`,
        ]
      : forceWords(a, b)),
    ...(rack ? [`The rack lies ${rack === 'ahead' ? 'ahead of' : 'behind'} the axes.`] : []),
    ...measures.filter((one_) => !one_.wrong).map((one_) => `${measured(one_)}.`),
    ...(turns ? turned(turns) : []),
    ...wrongWords(
      [...(wrong ? turned(wrong) : []), ...measures.filter((m) => m.wrong).map(measured)],
      [left, right].filter((force) => force?.wrong),
    ),
  ].join(' ');
}

const forceWords = (a: AxleForce | undefined | false, b: AxleForce | undefined | false) =>
  (
    [
      ['left', a],
      ['right', b],
    ] as const
  ).flatMap(([side, force]) =>
    force ? [`The road pushes the ${side} tyre ${way(force)} with ${force.says}.`] : [],
  );

function wrongWords(
  taken: readonly string[],
  forces: readonly (AxleForce | undefined)[],
): readonly string[] {
  const all = [
    ...taken.map((words) => words.replace(/\.$/, '')),
    ...forces.map(() => 'a force on the other wheel, counted as well'),
  ];
  return all.length > 0 ? [`Dashed is the road that was taken: ${all.join('; ')}.`] : [];
}

const sideOf = (sense: Sense): string => (sense > 0 ? 'left' : 'right');

const turned = ({ left, right, both, car, rack, rod }: AxleTurns): readonly string[] => [
  ...(left ? [`The left wheel is turned to the ${sideOf(left)}.`] : []),
  ...(right ? [`The right wheel is turned to the ${sideOf(right)}.`] : []),
  ...(both ? [`Both wheels together go to the ${sideOf(both)}.`] : []),
  ...(rack ? [`The rack is pushed to the ${sideOf(rack)}.`] : []),
  ...(car ? [`The car is turned to the ${sideOf(car)}.`] : []),
  ...(rod ? [`The left rod is in ${rod}.`] : []),
];

const MEASURED: Readonly<Record<AxleMeasure['of'], string>> = {
  scrub: 'from the middle of the tyre to the axis',
  halfTrack: 'from the middle of the left tyre to the middle of the car',
  track: 'from the middle of one tyre to that of the other',
};

const measured = ({ of, says }: AxleMeasure): string => `${says}: ${MEASURED[of]}`;

const way = ({ ahead }: AxleForce): string => (ahead < 0 ? 'rearward' : 'forward');
