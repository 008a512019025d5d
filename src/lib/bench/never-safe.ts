/** Stands wherever a change is judged. */
export const NEVER_SAFE =
  'These numbers say what changes, never that a change is safe or allowed: that is judged at the car, by somebody licensed for it.';

/** Whoever measures lies on the floor beside a car. */
export const LIFTING =
  'Lift at the maker’s points, on firm level ground, on stands; never work under or beside a car that only a jack holds.';
