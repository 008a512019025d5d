import type { Car } from '#core/car/car.ts';
import { readCar } from '#core/car/read-car.ts';
import { faultLine } from '#core/fault.ts';

const files = import.meta.glob<unknown>('/seeds/cars/*.json', { eager: true, import: 'default' });

/** The order in which the cars are shown: by how far the axis meets the road from the tyre's centre. */
const ORDER = ['linnet', 'pelican', 'siskin', 'bittern'];

/**
 * The training cars, read from their files and checked.
 *
 * @throws Error with every fault: a site with a broken car must not build
 */
export const trainingCars = (): readonly Car[] => carFiles().map(({ car }) => car);

/** The training cars with their files. */
export function carFiles(): readonly {
  readonly id: string;
  readonly car: Car;
  readonly file: unknown;
}[] {
  return Object.entries(files)
    .map(([path, file]) => {
      const car = readCar(file);
      if (!car.ok) throw new Error(`${path}:\n${car.faults.map(faultLine).join('\n')}`);
      return { id: car.value.id, car: car.value, file };
    })
    .sort((a, b) => ORDER.indexOf(a.id) - ORDER.indexOf(b.id));
}
