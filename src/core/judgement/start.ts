import { readCar } from '../car/read-car.ts';
import type { CornerDocument } from '../document/corner-document.ts';
import { readCornerDocument } from '../document/read-corner-document.ts';
import { failure, success, type Outcome } from '../fault.ts';
import { parseTyre } from '../tyre/parse-tyre.ts';
import {
  BENCH_FORMAT,
  BENCH_VERSION,
  type BenchCarDocument,
  type BenchDocument,
  type FixingDocument,
  type ValueDocument,
} from './bench-document.ts';
import { typicalCorner } from './typical-car.ts';

/** What a driver knows of a car without a tool. */
export interface GarageStart extends Pick<BenchCarDocument, 'name' | 'suspension' | 'drive'> {
  /** As marked on the sidewall. */
  readonly tyre: string;
}

/** A bench with one’s own car of which nothing has been measured yet: all typical, with a wide ±. */
export function garageBench({
  name,
  suspension,
  drive,
  tyre,
}: GarageStart): Outcome<BenchDocument> {
  const read = parseTyre(tyre, 'tyre');
  if (!read.ok) return read;
  return success(
    benchWith({
      name,
      origin: 'garage',
      suspension,
      drive,
      tyre,
      corner: typicalCorner({ suspension, tyre: read.value }),
      axisFrom: 'sheet',
      values: {},
    }),
  );
}

/** A bench with a corner document of one’s own, and what it does not say. */
export function benchOfCorner(
  corner: unknown,
  { name, suspension, drive, tyre }: GarageStart,
): Outcome<BenchDocument> {
  const read = readCornerDocument(corner);
  if (!read.ok) return read;
  const known = parseTyre(tyre, 'tyre');
  if (!known.ok) return known;
  return success(
    benchWith({
      name,
      origin: 'file',
      suspension,
      drive,
      tyre,
      corner: asItStands(read.value),
      axisFrom: 'lower_mm' in read.value.axis ? 'pivots' : 'sheet',
      values: {},
    }),
  );
}

/** What a training car’s file has besides what `readCar` reads into SI. */
interface CarFile {
  readonly name: string;
  readonly suspension: BenchCarDocument['suspension'];
  readonly drive: BenchCarDocument['drive'];
  readonly tyre: string;
  readonly rimWidth_in: number;
  readonly inset_mm: number;
  readonly fixing: FixingDocument;
  readonly left: CornerDocument;
}

/** A bench with a training car: all of it given, without any doubt. */
export function benchOfTrainingCar(file: unknown): Outcome<BenchDocument> {
  const read = readCar(file);
  if (!read.ok) return failure(...read.faults);
  // `readCar` has found every key of it to be what it should be.
  const { name, suspension, drive, tyre, rimWidth_in, inset_mm, fixing, left } = file as CarFile;
  return success(
    benchWith({
      name,
      origin: 'training-car',
      suspension,
      drive,
      tyre,
      corner: asItStands(left),
      axisFrom: 'pivots',
      values: { rimWidth_in: given(rimWidth_in), inset_mm: given(inset_mm) },
      fixing,
    }),
  );
}

/** A corner without what is asked of it elsewhere: the bench has its own loads, and its own changes. */
function asItStands(corner: CornerDocument): CornerDocument {
  const { side, axis, wheel, steering, hub } = corner;
  return { side, axis, wheel, ...(steering && { steering }), ...(hub && { hub }) };
}

const given = (value: number): ValueDocument => ({ value, plusMinus: 0, source: 'given' });

const benchWith = (car: BenchCarDocument): BenchDocument => ({
  format: BENCH_FORMAT,
  version: BENCH_VERSION,
  car,
  variants: [],
});
