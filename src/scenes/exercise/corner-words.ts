import { measure } from '#core/geometry.ts';
import type { Mark } from '../marks.ts';
import { VIEW_NAMES } from '../plane.ts';
import { comparedWords } from './compared.ts';
import { forceWords, turnWords } from './corner-forces.ts';
import { MEASURE_WORDS } from './corner-measures.ts';
import type { CornerPicture } from './corner-picture.ts';
import { POINT_WORDS } from './corner-points.ts';

/** What the picture shows, and where its letters are: no more than who sees it can see. */
export function cornerWords(
  picture: CornerPicture,
  right: readonly Mark[],
  taken: readonly Mark[],
): string {
  const { view, before, measures = [], points = [], forces = [], turn, wheelless } = picture;
  const marks = [
    ...measures.map(({ of, says }) => `${says}: ${MEASURE_WORDS[of]}`),
    ...points
      .filter(({ says }) => says.length < 3 || picture.wrong)
      .map(({ at, says }) => `${says}: ${POINT_WORDS[at]}`),
    ...forces.map(forceWords),
    ...(turn ? [turnWords(turn)] : []),
  ];
  const what = wheelless ? 'Both pivots over the road' : 'The wheel on the road';
  return [
    `${what} ${VIEW_NAMES[view]}${wheelless ? '' : ', with its middle'}${axisWords(picture)}.`,
    ...(before ? ['Pale: as it stood before.'] : []),
    ...(marks.length > 0 ? [`Marked are ${marks.join('; ')}.`] : []),
    ...(measures.some(({ of }) => of.endsWith('Out'))
      ? ['The middle of the car is drawn nearer than it is.']
      : []),
    ...wrongWords(picture, right, taken),
  ].join(' ');
}

function axisWords({ corner, view, axis = 'whole' }: CornerPicture): string {
  if (axis === 'none') return '';
  const { inclination, caster } = measure(corner);
  const lean = view === 'side' ? caster : inclination;
  const [plus, minus] = view === 'side' ? ['rearward', 'forward'] : ['inboard', 'outboard'];
  const leans = Math.abs(lean) < 1e-6 ? 'upright' : `its top leaning ${lean > 0 ? plus : minus}`;
  const part = {
    whole: 'the steering axis',
    low: 'the steering axis near the road',
    high: 'the steering axis from the wheel centre up',
    pivots: 'the steering axis from pivot to pivot',
  }[axis];
  return `, and ${part}, ${leans}`;
}

/** The road that was taken: what is dashed, and how it lies beside the right one. */
function wrongWords(
  { wrong, measures = [] }: CornerPicture,
  right: readonly Mark[],
  taken: readonly Mark[],
): readonly string[] {
  if (!wrong) return [];
  const lengths = (wrong.measures ?? []).map(({ of, says }, i) => {
    const mark = taken[i];
    const same = right[measures.findIndex((one) => one.of === of)];
    const compared = mark && comparedWords(mark, same);
    return `${says}: ${MEASURE_WORDS[of]}${compared ? `, ${compared}` : ''}`;
  });
  const rest = [
    ...(wrong.points ?? []).map(({ at, says }) => `${says}: ${POINT_WORDS[at]}`),
    ...(wrong.forces ?? []).map(forceWords),
    ...(wrong.turn ? [turnWords(wrong.turn)] : []),
  ];
  const { lever } = wrong;
  const other = lever
    ? [
        `yours: a lever of another length from the ${lever.at === 'road' ? 'middle of the tyre on the road' : 'wheel centre'}`,
      ]
    : [];
  const all = [...lengths, ...rest, ...other];
  return [`Dashed is the road that was taken${all.length > 0 ? `: ${all.join('; ')}` : ''}.`];
}
