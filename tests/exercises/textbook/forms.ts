/**
 * The answers of the kinds whose parts are letters, orders and settings once more, by plane trigonometry and without the
 * core: a letter is the place of what the textbook calls for, an order the rank of sizes worked out one by one. Millimetres,
 * degrees, newtons and newton metres.
 *
 * Source: Reimpell, Stoll and Betzler, The Automotive Chassis, section 3.8; plane statics; ISO 281:2007, life equation
 * (relations from memory). What a sheet says of bent and of moved parts: common practice, no source.
 */

import { arctan, n, out, tan, was, type Numbers, type Step } from './sums.ts';

const word = (item: Numbers, name: string): string => item[name] as unknown as string;
const listed = (item: Numbers): readonly number[] =>
  (item['listed'] as unknown as readonly number[] | undefined) ?? [];

/** The letter, from 1, of the thing with that place in the author's own order. */
const letter = (item: Numbers, place: number): number => listed(item).indexOf(place) + 1;

/** How many orders of A, B, C … come before this one in a dictionary, and one more. */
function rank(sizes: readonly number[]): number {
  const all = permutations(sizes.map((_size, i) => i));
  const wanted = all.findIndex((order) =>
    order.every((at, i) => i === 0 || (sizes[order[i - 1] ?? -1] ?? NaN) > (sizes[at] ?? NaN)),
  );
  return wanted + 1;
}

const permutations = (things: readonly number[]): readonly (readonly number[])[] =>
  things.length < 2
    ? [things]
    : things.flatMap((first) =>
        permutations(things.filter((other) => other !== first)).map((rest) => [first, ...rest]),
      );

/** Sizes in the order of the letters. */
const lettered = (item: Numbers, sizes: readonly number[]): readonly number[] =>
  listed(item).map((place) => sizes[place] ?? NaN);
const largest = (sizes: readonly number[]): number => Math.max(...sizes);

const leans = (item: Numbers): number => n(item, 'radius_mm') * tan(n(item, 'lean_deg'));
const marked: readonly Step[] = [
  (item) => letter(item, word(item, 'asks') === 'offset' ? 0 : 2),
  (item) => leans(item) + (word(item, 'asks') === 'offset' ? n(item, 'offset_mm') : 0),
];

const MOMENTS = (item: Numbers): readonly number[] => [
  (n(item, 'caliper_N') * n(item, 'roadLever_mm')) / 1000,
  ...['inboard_N', 'drive_N', 'edge_N'].map(
    (force) => (n(item, force) * n(item, 'hubLever_mm')) / 1000,
  ),
];

/** A beam on two supports under a load off its middle and a push across it, a radius below. */
function rows(item: Numbers): readonly number[] {
  const onBeam = (load: number, push: number): readonly number[] => {
    const couple =
      (load * n(item, 'offset_mm') - push * n(item, 'radius_mm')) / n(item, 'spread_mm');
    return [Math.abs(load / 2 + couple), Math.abs(load / 2 - couple)];
  };
  return [
    ...onBeam(n(item, 'outer_N'), n(item, 'sideOuter_N')),
    ...onBeam(n(item, 'inner_N'), -n(item, 'sideInner_N')),
  ];
}

const ways = (item: Numbers): readonly number[] => [
  n(item, 'spacer_mm'),
  n(item, 'inset_mm') - n(item, 'otherInset_mm'),
  n(item, 'bothSpacer_mm') + n(item, 'inset_mm') - n(item, 'bothInset_mm'),
  n(item, 'track_mm') / 2,
];

/** What a sheet says: a sum that has changed is a bent part, both sides off the subframe, one side off the upper pivot. */
function cause(item: Numbers): number {
  const sum = n(item, 'inclinationWas_deg') + n(item, 'camberWas_deg');
  const off = (side: 'left' | 'right') => ({
    sum: n(item, `${side}Inclination_deg`) + n(item, `${side}Camber_deg`) - sum,
    camber: n(item, `${side}Camber_deg`) - n(item, 'camberWas_deg'),
  });
  const [left, right] = [off('left'), off('right')];
  const is = (value: number): boolean => Math.abs(value) > 0.01;
  if (is(left.sum)) return 1;
  if (is(right.sum)) return 2;
  if (is(left.camber) && is(right.camber)) return left.camber < 0 ? 5 : 6;
  return is(left.camber) ? 3 : 4;
}

const causeSide = (item: Numbers): string => (cause(item) % 2 === 1 ? 'left' : 'right');

export const FORMS: Readonly<Record<string, readonly Step[]>> = {
  'marked-across': marked,
  'marked-along': marked,
  'marked-point': [
    (item) => letter(item, word(item, 'which') === 'caliper' ? 0 : 1),
    (item) => {
      const lever = n(item, word(item, 'which') === 'caliper' ? 'roadLever_mm' : 'hubLever_mm');
      const rearward = word(item, 'which') === 'drive' ? -1 : 1;
      return (out(item) * rearward * n(item, 'force_N') * lever) / 1000;
    },
  ],
  'order-by-moment': [
    (item) => rank(lettered(item, MOMENTS(item))),
    (item) => largest(MOMENTS(item)),
  ],
  'order-row-loads': [(item) => rank(lettered(item, rows(item))), (item) => largest(rows(item))],
  'order-changes': [
    (item) => rank(lettered(item, ways(item))),
    (item) => n(item, 'scrub_mm') + largest(ways(item)),
  ],
  'sense-of-two-brakes': [
    (item) =>
      letter(item, (n(item, 'left_N') - n(item, 'right_N')) * n(item, 'scrub_mm') > 0 ? 0 : 1),
    (item) => ((n(item, 'left_N') - n(item, 'right_N')) * n(item, 'scrub_mm')) / 1000,
  ],
  'find-what-moved': [
    cause,
    (item) => n(item, `${causeSide(item)}Camber_deg`) - n(item, 'camberWas_deg'),
    (item) => {
      const side = causeSide(item);
      return n(item, `${side}Inclination_deg`) + n(item, `${side}Camber_deg`);
    },
  ],
  'read-life-chart': [
    (item) => {
      const { rating_kN } = item['curves'] as unknown as { readonly rating_kN: number };
      return (rating_kN / n(item, 'load_kN')) ** (word(item, 'kind') === 'ball' ? 3 : 10 / 3);
    },
    (item) => (2 * Math.PI * n(item, 'radius_mm')) / 1000,
    (_item, before) => 1000 * was(before, 0) * was(before, 1),
  ],
  'set-upper-pivot': [
    (item) => arctan(n(item, 'rearward_mm') / n(item, 'rise_mm')),
    (item, before) =>
      n(item, 'rise_mm') * tan(was(before, 0) + n(item, 'more_deg')) - n(item, 'rearward_mm'),
  ],
  'set-wheel-for-scrub': [
    (item) => n(item, 'spindle_mm') - n(item, 'radius_mm') * tan(n(item, 'inclination_deg')),
    (item, before) => n(item, 'wanted_mm') - was(before, 0),
  ],
  'set-load-line': [
    (item) =>
      n(item, 'load_N') / 2 + (n(item, 'load_N') * n(item, 'offset_mm')) / n(item, 'spread_mm'),
    (item, before) =>
      ((n(item, 'wanted_N') - was(before, 0)) * n(item, 'spread_mm')) / n(item, 'load_N'),
  ],
};
