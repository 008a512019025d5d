import type { QuantityKind } from '#core/quantities.ts';
import { readQuantity } from '#core/quantity-reader/read-quantity.ts';
import { toSI } from '#core/units/convert.ts';
import { UNIT_NAMES, UNITS, type UnitName } from '#core/units/units.ts';
import type { Exercise } from '../exercise.ts';
import { isList } from '../forms/form.ts';
import { own } from '../own-road.ts';
import type { Figure } from '../phrase.ts';
import type { Check } from './check.ts';

/** What drawing an exercise makes sure of holds to the last digits but these. */
const ALMOST = 1 - 1e-6;

/**
 * Past this a value belongs to no front corner of a car, in SI: half a track and a wheel, an angle that no
 * suspension has, all bolts of a wheel together, a hard push on both wheels, lives and ways that nobody drives.
 *
 * Common practice, no source.
 */
const MOST: Readonly<Record<QuantityKind, number>> = {
  length: toSI(1500, 'mm'),
  angle: toSI(45, 'deg'),
  force: toSI(500, 'kN'),
  moment: toSI(10_000, 'Nm'),
  speed: toSI(300, 'km/h'),
  life: toSI(1e5, 'Mrev'),
  distance: toSI(1e8, 'km'),
  share: 20,
};

/** What holds of the numbers of an exercise. */
export const NUMBER_CHECKS: readonly Check[] = [
  {
    id: 'plausible',
    says: 'has answers that are finite and could be those of a car',
    faults: ({ parts }) =>
      parts.flatMap(({ answer, tolerance, definition: { id, quantity, form } }) => [
        ...(Number.isFinite(answer) && tolerance > 0 ? [] : [`${id}: ${answer} ± ${tolerance}`]),
        ...(isList(form) || Math.abs(answer) <= MOST[quantity.kind]
          ? []
          : [`${id}: ${answer} is beyond a car`]),
      ]),
  },
  {
    id: 'apart',
    says: 'keeps answers four tolerances from slips and nought, and slips two from one another',
    faults: ({ parts }) =>
      parts.flatMap(({ answer, tolerance, slips }) => [
        ...(Math.abs(answer) >= 4 * tolerance * ALMOST ? [] : ['answer near nought']),
        ...slips().flatMap(({ id, value }, i) => [
          ...(Math.abs(value - answer) >= 4 * tolerance * ALMOST ? [] : [`${id} near answer`]),
          ...slips()
            .slice(0, i)
            .filter((other) => !(Math.abs(other.value - value) >= 2 * tolerance * ALMOST))
            .map((other) => `${id} near ${other.id}`),
        ]),
      ]),
  },
  {
    id: 'consistent',
    says: 'comes to the same answers from one part to the next, with nothing entered',
    faults: ({ parts }) => {
      const values = own(parts, [], parts.length);
      return parts.flatMap(({ answer, follow, definition: { id } }, i) => [
        ...(follow(values.slice(0, i)) === answer && values[i] === answer
          ? []
          : [`${id} does not follow from the parts before it`]),
      ]);
    },
  },
  {
    id: 'leads-on',
    says: 'has every part lead to a later one',
    faults: ({ parts }) => {
      const answers = parts.map(({ answer }) => answer);
      return parts.slice(0, -1).flatMap(({ definition, tolerance, slips }, i) => {
        // Of a list, any other letter or order that is known.
        const others = isList(definition.form)
          ? slips().map(({ value }) => value)
          : [(answers[i] ?? NaN) + 20 * tolerance];
        const felt = others.some((other) => {
          const road = answers.with(i, other);
          return parts
            .slice(i + 1)
            .some((later, j) => later.follow(road.slice(0, i + 1 + j)) !== later.answer);
        });
        return felt ? [] : [`${definition.id} leads nowhere`];
      });
    },
  },
  {
    id: 'givens',
    says: 'prints every given so that it reads back exactly, and nothing else',
    faults: (exercise) => {
      const { givens } = exercise;
      const read = printed(exercise).map(({ figure }) => {
        const reading = readQuantity(figure, unitOf(figure));
        return reading.kind === 'quantity' && reading.unitTyped ? Math.abs(reading.amount) : NaN;
      });
      const used = givens.map(({ amount }) => Math.abs(amount));
      const same = read.toSorted(up).join(' ') === used.toSorted(up).join(' ');
      return same ? [] : [`${read.join(' ')} printed, ${used.join(' ')} used`];
    },
  },
];

/** The numbers of an exercise: in its question, in what there is to choose or to order, and on the sheet beside it. */
function printed({ question, parts, picture }: Exercise): readonly Figure[] {
  const options = parts.flatMap(({ definition: { form } }) =>
    isList(form) ? form.options.flatMap(({ words }) => words) : [],
  );
  const shown = picture?.();
  // What both sides had before stands in two columns.
  const cells =
    shown?.scene === 'sheet'
      ? shown.rows.flatMap(({ cells: [was = '', left = '', , right = ''] }) => [was, left, right])
      : [];
  return [
    ...[...question(), ...options].filter((piece) => typeof piece !== 'string'),
    ...cells.map((figure) => ({ figure })),
  ];
}

/** The unit that a number is printed with. */
const unitOf = (figure: string): UnitName =>
  UNIT_NAMES.find((name) => figure.endsWith(`\u202f${UNITS[name].symbol}`)) ?? 'deg';

const up = (a: number, b: number): number => a - b;
