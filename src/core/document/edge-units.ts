import { degrees } from '../angle.ts';
import { vector, type Vector } from '../vector.ts';
import type { Triple } from './corner-document.ts';

/** The number with 0 in place of −0, which is the same value and a riddle on paper. */
export const unsigned0 = (x: number): number => x + 0;

export const inMetres = (length_mm: number): number => length_mm / 1000;

export const inMillimetres = (length: number): number => unsigned0(1000 * length);

export const inDegrees = (angle: number): number => unsigned0(degrees(angle));

/** A force or a direction: its numbers are what they are. */
export const vectorOf = ([x, y, z]: Triple): Vector => vector(x, y, z);

export const pointOf = ([x, y, z]: Triple): Vector => vector(inMetres(x), inMetres(y), inMetres(z));

export const tripleInMillimetres = ({ x, y, z }: Vector): Triple => [
  inMillimetres(x),
  inMillimetres(y),
  inMillimetres(z),
];
