import { rimDiameter } from '#core/tyre/dimensions.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { tyreOf } from '../paper/tyre.ts';
import { bare, given, mm, phrase, rounded, si } from '../phrase.ts';
import type { TyrePicture } from '../pictures/part-pictures.ts';

interface Item {
  readonly 'shown_km/h': number;
  readonly 'true_km/h': number;
  readonly diameter_mm: number;
  readonly rim_in: number;
}

const shown = (item: Item): number => item['shown_km/h'];
const really = (item: Item): number => item['true_km/h'];
const ahead = (item: Item): number => shown(item) / really(item) - 1;
const diameter = ({ diameter_mm }: Item): number => si(diameter_mm, 'mm');
const rim = ({ rim_in }: Item): number =>
  rimDiameter(tyreOf({ width: 205, aspect: 55, rim: rim_in }));

const onRoad = (item: Item, across: number): TyrePicture => ({
  scene: 'tyre',
  tyre: { diameter_mm: 1000 * across, rim_mm: 1000 * rim(item) },
  measures: [],
});

/** From what the dial shows too much back to the largest tyre with which it never shows too little. */
export const diameterForDial: Kind<Item> = {
  id: 'diameter-for-dial',
  version: 1,
  title: 'How large before the dial lies?',
  lesson: 'tyres-and-camber',
  level: 3,
  draw: (random) => {
    const true_kmh = random.integer(60, 125);
    return {
      'shown_km/h': true_kmh + random.integer(4, 10),
      'true_km/h': true_kmh,
      diameter_mm: random.integer(575, 700),
      rim_in: random.integer(14, 17),
    };
  },
  sound: (item) => ahead(item) >= 0.05 && ahead(item) <= 0.1 && really(item) !== 100,
  question: (item) =>
    phrase`A speedometer may show too much but, in most countries, never too little. A car on tyres with an outer diameter of ${mm(item.diameter_mm)} shows ${given(shown(item), 'km/h')} when a satellite receiver says ${given(really(item), 'km/h')}. Its rims of ${given(item.rim_in, 'in')} stay. How large may another tyre be before the dial is just right, and how high is its sidewall then?`,
  picture: (item) => ({
    ...onRoad(item, diameter(item)),
    measures: [{ of: 'diameter', says: mm(item.diameter_mm).figure }],
  }),
  solved: (item) => {
    const largest = diameter(item) * (1 + ahead(item));
    return {
      ...onRoad(item, largest),
      before: onRoad(item, diameter(item)).tyre,
      measures: [
        { of: 'diameter', says: rounded(largest, 'mm', 1).figure },
        { of: 'height', says: rounded((largest - rim(item)) / 2, 'mm', 1).figure },
      ],
    };
  },
  wrong: (item, { part, value, answer }) => {
    if (part === 'ahead') return undefined;
    const across = (of: number): number => (part === 'height' ? rim(item) + 2 * of : of);
    return {
      ...onRoad(item, across(answer)),
      measures: [{ of: 'height', says: 'sidewall' }],
      wrong_mm: 1000 * across(value),
    };
  },
  parts: [
    {
      id: 'ahead',
      quantity: OWN_QUANTITIES.dialAhead,
      unit: 'percent',
      decimals: 1,
      label: 'What the dial shows too much, of the true speed',
      value: ahead,
      sum: 'rounded',
      possible: (value) => value > 0,
      hint: () => phrase`The difference of the two speeds, as a share of the true one.`,
      slips: [
        {
          id: 'of-shown',
          confuses: 'share of the speed shown',
          value: (item) => 1 - really(item) / shown(item),
          text: () =>
            phrase`That is the share of the speed shown. It would be right for going down from the dial to the truth. The diameter has to grow from what is true now: count from the true speed.`,
        },
        {
          id: 'kilometres',
          confuses: 'kilometres an hour',
          value: (item) => si(shown(item) - really(item), 'percent'),
          text: () =>
            phrase`That is the difference in kilometres an hour. It would be the share in per cent only at a true speed of a hundred. Divide it by the true speed.`,
        },
        {
          id: 'ratio',
          confuses: 'whole ratio',
          value: (item) => shown(item) / really(item),
          text: () =>
            phrase`That is the whole ratio of the two speeds. What the dial shows too much is the part above a hundred per cent.`,
        },
        {
          id: 'inverse',
          confuses: 'true speed over the one shown',
          value: (item) => really(item) / shown(item),
          text: () =>
            phrase`That is the true speed over the one shown. It says which part of the reading is true; asked for is what is too much.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`Shown over true: ${bare(shown(item), 0)} ÷ ${bare(really(item), 0)} = ${bare(1 + value, 4)}, so the dial is ${rounded(value, 'percent', 1)} ahead.`,
    },
    {
      id: 'diameter',
      quantity: OWN_QUANTITIES.outerDiameter,
      unit: 'mm',
      decimals: 1,
      label: 'Largest outer diameter',
      value: (item, earlier) => diameter(item) * (1 + step(earlier, 0)),
      sum: 'rounded',
      possible: (value) => value > 0,
      hint: () =>
        phrase`A larger tyre makes the car faster for the same reading. By which share may it grow until the dial is just right?`,
      slips: [
        {
          id: 'smaller',
          confuses: 'larger and smaller',
          value: (item, earlier) => diameter(item) * (1 - step(earlier, 0)),
          text: () =>
            phrase`That makes the tyre smaller, and larger and smaller have changed places. The dial shows too much now; a smaller tyre would make it show still more.`,
        },
        {
          id: 'doubled',
          confuses: 'both ends of the diameter',
          value: (item, earlier) => diameter(item) * (1 + 2 * step(earlier, 0)),
          text: () =>
            phrase`That counts the share twice, as if both ends of the diameter grew by it. It is a share of the diameter already: once is enough.`,
        },
        {
          id: 'halved',
          confuses: 'radius',
          value: (item, earlier) => diameter(item) * (1 + step(earlier, 0) / 2),
          text: () =>
            phrase`That counts half of the share, as if it were for the radius alone. Radius, diameter and circumference all grow by the same share.`,
        },
        {
          id: 'per-cent-as-mm',
          confuses: 'per cent for millimetres',
          value: (item, earlier) => diameter(item) + si(100 * step(earlier, 0), 'mm'),
          text: () =>
            phrase`That takes the per cent for millimetres. A share has to be taken of something first: here of the outer diameter.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`The way of each turn may grow by the same share: ${mm(item.diameter_mm)} · ${bare(1 + step(earlier, 0), 4)} = ${rounded(value, 'mm', 1)}.`,
    },
    {
      id: 'height',
      quantity: OWN_QUANTITIES.sectionHeight,
      unit: 'mm',
      decimals: 1,
      label: 'Height of its sidewall',
      value: (item, earlier) => (step(earlier, 1) - rim(item)) / 2,
      sum: 'rounded',
      possible: (value) => value > 0,
      hint: () =>
        phrase`What the rim leaves of the diameter is two sidewalls. The rim is in inches.`,
      slips: [
        {
          id: 'both-sidewalls',
          confuses: 'both sidewalls',
          value: (item, earlier) => step(earlier, 1) - rim(item),
          text: () =>
            phrase`That is both sidewalls together, above the rim and below it. One of them is half of that.`,
        },
        {
          id: 'radius',
          confuses: 'radius',
          value: (_item, earlier) => step(earlier, 1) / 2,
          text: () =>
            phrase`That is the radius, from the middle of the wheel to the tread. The rim takes up a part of it; the sidewall is the rest.`,
        },
        {
          id: 'inches',
          confuses: 'inches',
          value: (item, earlier) => (step(earlier, 1) - si(item.rim_in, 'mm')) / 2,
          text: () =>
            phrase`That takes the rim’s number for millimetres. It is in inches: turn it into millimetres before you take it away.`,
        },
        {
          id: 'half-a-rim',
          confuses: 'rim’s radius',
          value: (item, earlier) => step(earlier, 1) - rim(item) / 2,
          text: () =>
            phrase`That takes the rim’s radius from the tyre’s diameter. Both have to be diameters, or both radii.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`The rim is ${rounded(rim(item), 'mm', 1)} across. Half of what is left: ${rounded(step(earlier, 1), 'mm', 1)} · 0.5 − ${rounded(rim(item) / 2, 'mm', 1)} = ${rounded(value, 'mm', 1)}. A dial that is just right leaves nothing for a new tyre of full tread: the shop keeps below.`,
    },
  ],
};
