import type { Car } from '#core/car/car.ts';
import { Exploration } from '$lib/figures/exploration.svelte';
import { getContext, setContext } from 'svelte';
import type { LessonFacts } from './lesson';

const KEY = Symbol('lesson');

/** A lesson being read: which step, which corner, which predictions have been made. */
export class LessonState {
  readonly facts: LessonFacts;
  readonly cars: readonly Car[];
  readonly car: Car;
  readonly exploration: Exploration;
  /** Number of the step that is read, from 1. */
  step = $state(1);

  constructor(facts: LessonFacts, cars: readonly Car[]) {
    this.facts = facts;
    this.cars = cars;
    this.car = this.carNamed(facts.car);
    this.exploration = new Exploration(this.car.left);
    // The first step is what the server draws: it begins where that step does.
    const start = facts.steps[0]?.look.start;
    if (start) this.exploration.place(start);
  }

  carNamed(id: string): Car {
    const car = this.cars.find((one) => one.id === id);
    if (!car) throw new Error(`no training car is called ${id}`);
    return car;
  }
}

export const provideLesson = (lesson: LessonState): LessonState => setContext(KEY, lesson);

export function lesson(): LessonState {
  const found = getContext<LessonState | undefined>(KEY);
  if (!found) throw new Error('no lesson around this component');
  return found;
}
