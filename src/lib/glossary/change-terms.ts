import type { Entry } from './entry';

/** Terms of other wheels and tyres on a car. */
export const CHANGE_TERMS = [
  {
    id: 'rolling-circumference',
    term: 'Rolling circumference',
    aliases: ['dynamic rolling circumference'],
    meaning:
      'How far a tyre rolls in one turn under its load: less than the circumference of the free tyre, more than that of a circle with the loaded radius.',
    source: 'ETRTO and WdK tables (from memory)',
    lesson: 'tyres-and-camber',
  },
  {
    id: 'track-width',
    term: 'Track width',
    aliases: ['track'],
    meaning:
      'Distance between the contact centres of the two wheels of an axle. It changes by twice what each of them moves.',
    source: 'ISO 8855:2011 (from memory)',
    quantity: 'track',
    lesson: 'spacers-and-inset',
  },
] as const satisfies readonly Entry[];
