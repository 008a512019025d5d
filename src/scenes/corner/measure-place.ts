import { valueText, type UnitSystem } from '#core/display.ts';
import { quantity, type QuantityId } from '#core/quantities.ts';
import type { Window } from '../marks.ts';
import type { Sketch } from './sketch.ts';
import type { Standing } from './standing.ts';

/** What a reader thought quantities would be, in SI. */
export type Guesses = Partial<Readonly<Record<QuantityId, number>>>;

/** What it takes to draw a measure: the view, the corner, the paper's window, the units. */
export interface MeasurePlace {
  readonly sketch: Sketch;
  readonly standing: Standing;
  readonly window: Window;
  readonly units: UnitSystem;
  /** Stay in the drawing beside what came out. */
  readonly guesses: Guesses;
}

/** One unit of paper in millimetres of the car. */
export const paperUnit = ({ height }: Window): number => height / 300;

/** Name and value as they stand in a drawing: `scrub radius −8.2 mm`. */
export const named = (id: QuantityId, value: number, units: UnitSystem): string =>
  `${DRAWING_NAMES[id] ?? quantity(id).name} ${valueText(value, quantity(id).kind, units)}`;

export const GUESS = 'your guess';

const DRAWING_NAMES: Partial<Record<QuantityId, string>> = {
  inclination: 'inclination',
  caster: 'caster',
  trail: 'trail',
  casterOffsetAtCentre: 'caster offset',
};
