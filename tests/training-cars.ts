import { readdirSync, readFileSync } from 'node:fs';
import type { Car } from '#core/car/car.ts';
import { readCar } from '#core/car/read-car.ts';
import { faultLine } from '#core/fault.ts';

const FOLDER = new URL('../seeds/cars/', import.meta.url);

/** The training cars' files by name, parsed and not yet read. */
export const CAR_FILES: ReadonlyMap<string, unknown> = new Map(
  readdirSync(FOLDER).map((name) => [
    name,
    JSON.parse(readFileSync(new URL(name, FOLDER), 'utf8')) as unknown,
  ]),
);

/** The training cars, read and without fault. */
export const TRAINING_CARS: readonly Car[] = Array.from(CAR_FILES, ([name, file]) => {
  const car = readCar(file);
  if (car.ok) return car.value;
  throw new Error(`${name}:\n${car.faults.map(faultLine).join('\n')}`);
});

export function trainingCar(id: string): Car {
  const car = TRAINING_CARS.find((one) => one.id === id);
  if (car) return car;
  throw new RangeError(`no training car is called ${id}`);
}
