import type { Point } from '#core/judgement/telling.ts';

/** A sentence of a summary, and which wheel it is said of; `both` where it is said of either in the same words. */
export interface JoinedPoint extends Omit<Point, 'place'> {
  readonly place: Point['place'] | 'both';
}

/** Sentences that are said of the left wheel and of the right one in the same words, said once. */
export function joinedPoints(points: readonly Point[]): readonly JoinedPoint[] {
  const other = ({ id, place, text }: Point): boolean =>
    points.some((one) => one.id === id && one.text === text && one.place === place);
  return points.flatMap((point): readonly JoinedPoint[] => {
    if (point.place === 'left' && other({ ...point, place: 'right' }))
      return [{ ...point, place: 'both' }];
    return point.place === 'right' && other({ ...point, place: 'left' }) ? [] : [point];
  });
}
