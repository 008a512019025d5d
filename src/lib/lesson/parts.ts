/** A chapter of the course; the letter is the folder's. */
export const PARTS = {
  a: 'The steering axis',
  b: 'Forces and levers',
  c: 'The bearing',
  d: 'Changing a car',
} as const;

export type PartId = keyof typeof PARTS;
