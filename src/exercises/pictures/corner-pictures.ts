import { changed, NO_CHANGE } from '#core/change.ts';
import type { Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import type { Earlier, Kind, Road } from '../kind.ts';
import { cornerAtRoad } from '../paper/corner.ts';
import { rounded } from '../phrase.ts';
import type { CornerMeasure, CornerPicture, MarkedMeasure } from './picture.ts';

/** All that a picture of a corner says besides its scene. */
export type OnCorner = Omit<CornerPicture, 'scene' | 'view' | 'corner'>;

/** A part whose answer can be seen on a corner. */
export interface SeenPart<Item> {
  readonly of: CornerMeasure;
  /** What it is called in the drawing. */
  readonly says: string;
  /** The corner with another value in its place, as those before it have it; of the right ones it is the corner itself. */
  readonly to: (item: Item, value: number, earlier: Earlier) => Corner;
  /** The state before, where this part is about what has changed. */
  readonly before?: (item: Item, earlier: Earlier) => Corner;
  /** Roads that are told better by what was taken than by where it ends. */
  readonly taken?: Readonly<Record<string, CornerMeasure>>;
}

interface About<Item> {
  readonly view: CornerPicture['view'];
  readonly close?: 'road';
  readonly pivots?: true;
  readonly wheelless?: true;
  /** What the question gives, on the corner as it gives it. */
  readonly given: (item: Item) => OnCorner & { readonly corner: Corner };
  /** The corner of the worked solution, and the one before. */
  readonly end: (item: Item) => Corner;
  readonly before?: (item: Item) => Corner;
  readonly parts: Readonly<Record<string, SeenPart<Item>>>;
}

/** What cannot be told from the right one, or lies off the paper: metres and radians. */
const LEAST = { length: 0.0015, angle: 0.008 };
const MOST = { road: 0.14, whole: 0.3, angle: 1.45 };

const ANGLES: readonly CornerMeasure[] = ['inclination', 'caster', 'camber'];

/** Whether a wrong value can be drawn beside the right one. */
function canBeSeen(of: CornerMeasure, { value, answer }: Road, close?: 'road'): boolean {
  const isAngle = ANGLES.includes(of);
  const most = isAngle ? MOST.angle : MOST[close ?? 'whole'];
  return (
    Math.abs(value - answer) > (isAngle ? LEAST.angle : LEAST.length) &&
    Math.max(Math.abs(value), Math.abs(answer)) < most
  );
}

/**
 * The pictures of a kind whose answers are lengths or angles of a corner: what is given beside the question, all of it
 * with its numbers beside the solution, and of a wrong road the corner as the wrong value would have it.
 */
export function cornerPictures<Item>(
  about: About<Item>,
): Required<Pick<Kind<Item>, 'picture' | 'solved' | 'wrong'>> {
  const { view, close, pivots, wheelless, given, end, before, parts } = about;
  const base: Omit<CornerPicture, 'corner'> = {
    scene: 'corner',
    view,
    ...(close && { close }),
    ...(pivots && { pivots }),
    ...(wheelless && { wheelless }),
  };
  return {
    picture: (item): CornerPicture => ({ ...base, ...given(item) }),
    solved: (item): CornerPicture => {
      const corner = end(item);
      const was = before?.(item);
      return {
        ...{ ...base, corner },
        ...(was && { before: was }),
        measures: Object.values(parts)
          .filter(({ of }, i, all) => all.findLastIndex((one) => one.of === of) === i)
          .map(({ of, says }) => ({ of, says: withNumber(of, says, corner) })),
      };
    },
    wrong: (item, road) => {
      const part = parts[road.part];
      if (!part) return undefined;
      const { of, says } = part;
      const to = (value: number): Corner => part.to(item, value, road.earlier);
      const taken = part.taken?.[road.slip];
      if (!taken && !canBeSeen(of, road, close)) return undefined;
      const was = part.before?.(item, road.earlier);
      const measures: readonly MarkedMeasure[] = [{ of, says }];
      return {
        ...{ ...base, corner: to(road.answer) },
        ...(was && { before: was }),
        measures,
        wrong: taken
          ? { measures: [{ of: taken, says: 'yours' }] }
          : { corner: to(road.value), measures: [{ of, says: 'yours' }] },
      };
    },
  };
}

/** One wrong value beside the right one, where a kind is about more than such values. */
export function seenBeside(
  { of, says, view, close }: Omit<SeenPart<never>, 'to'> & Pick<CornerPicture, 'view' | 'close'>,
  road: Road,
  to: (value: number) => Corner,
): CornerPicture | undefined {
  if (!canBeSeen(of, road, close === 'road' ? 'road' : undefined)) return undefined;
  return {
    scene: 'corner',
    view,
    ...(close && { close }),
    corner: to(road.answer),
    measures: [{ of, says }],
    wrong: { corner: to(road.value), measures: [{ of, says: 'yours' }] },
  };
}

/**
 * A wrong scrub radius beside the right one, where the wheel has moved and its axis has stayed.
 *
 * @param before the scrub radius that it was moved from, in metres
 */
export const movedScrub = (before: number, road: Road): CornerPicture | undefined =>
  seenBeside(
    { of: 'scrubRadius', says: 'scrub radius', view: 'front', close: 'road' },
    road,
    (value) =>
      changed(cornerAtRoad({ scrubRadius: before }), { ...NO_CHANGE, spacer: value - before }),
  );

/** A name with the number that the core finds, for the solution. */
export function withNumber(of: CornerMeasure, says: string, corner: Corner): string {
  const number = numberOf(of, corner);
  return number === undefined ? says : `${says} ${number}`;
}

function numberOf(of: CornerMeasure, corner: Corner): string | undefined {
  const geometry = measure(corner);
  const length = (value: number): string => rounded(Math.abs(value), 'mm', 1).figure;
  switch (of) {
    case 'scrubRadius':
    case 'trail':
    case 'spindleOffset':
    case 'casterOffsetAtCentre':
      return length(geometry[of]);
    case 'inclination':
    case 'caster':
      return rounded(Math.abs(geometry[of]), 'deg', 1).figure;
    case 'camber':
      return rounded(geometry.camber, 'deg', 2).figure;
    case 'lean':
      return length(geometry.spindleOffset - geometry.scrubRadius);
    case 'shortest':
      return length(geometry.axisDistance);
    case 'leverAtRoad':
      return length(geometry.scrubRadius * Math.cos(geometry.inclination));
    default:
      return undefined;
  }
}
