import { AXIS } from './textbook/axis.ts';
import { BEARING } from './textbook/bearing.ts';
import { CHANGE } from './textbook/change.ts';
import { FORCES } from './textbook/forces.ts';
import { FORMS } from './textbook/forms.ts';
import type { Step } from './textbook/sums.ts';

/**
 * The answers of every kind once more, by the textbooks and without the core: for each part of an exercise, a sum from
 * the item's numbers and from the values of the parts before it. Millimetres, degrees, newtons and newton metres
 * throughout. Where the sums come from stands with each part of the course.
 */
export const TEXTBOOK: Readonly<Record<string, readonly Step[]>> = {
  ...AXIS,
  ...FORCES,
  ...BEARING,
  ...CHANGE,
  ...FORMS,
};
