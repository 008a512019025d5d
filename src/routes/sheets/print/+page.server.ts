import { trainingCars } from '$lib/server/cars';
import { cornerScene } from '#scenes/corner/corner-scene.ts';
import { AS_IT_STANDS } from '#scenes/setting.ts';
import { drawn } from '#scenes/paper/drawn.ts';
import { error } from '@sveltejs/kit';
import type { PageServerLoad } from './$types';

/** The car whose corner shows what the words mean: its axis meets the road well inboard, so that names have room. */
const SHOWN = 'linnet';

const NAMES = {
  front: ['axis', 'upper', 'lower', 'ground', 'contact', 'centre'],
  side: ['axis', 'ground', 'contact'],
} as const;

/** Small, so that the names are large enough to read on half the width of a page. */
const PAPER = { width: 330, height: 290 };

/** A corner with its parts named and no number in it: the papers have numbers of their own. */
export const load: PageServerLoad = () => {
  const car = trainingCars().find(({ id }) => id === SHOWN);
  if (!car) error(500, `The training car ${SHOWN} is missing.`);
  const drawings = (['front', 'side'] as const).map((view) => {
    const scene = cornerScene(car.left, AS_IT_STANDS, {
      view,
      closeness: 'whole',
      measures: [],
      names: NAMES[view],
      handles: [],
      units: 'metric',
    });
    const { title, description, shapes, frame } = drawn(scene, PAPER);
    return { title, description, shapes, frame };
  });
  return { drawings };
};
