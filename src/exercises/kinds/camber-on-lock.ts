import { camberFromCaster, camberFromInclination } from '#core/camber-by-rule.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { fromSI } from '#core/units/convert.ts';
import { step, type Kind } from '../kind.ts';
import { bare, deg, directed, phrase, rounded, si, sign, term } from '../phrase.ts';
import { wrongBar } from '../pictures/bars.ts';
import type { Bar } from '../pictures/picture.ts';

interface Item {
  readonly inclination_deg: number;
  readonly caster_deg: number;
  readonly camber_deg: number;
  readonly turn_deg: number;
  readonly way: 'in' | 'out';
}

const inclination = ({ inclination_deg }: Item): number => si(inclination_deg, 'deg');
const caster = ({ caster_deg }: Item): number => si(caster_deg, 'deg');
const camber = ({ camber_deg }: Item): number => si(camber_deg, 'deg');
const size = ({ turn_deg }: Item): number => si(turn_deg, 'deg');
const wayOf = ({ way }: Item): 1 | -1 => (way === 'out' ? 1 : -1);
const turn = (item: Item): number => wayOf(item) * size(item);

const shares = (item: Item): readonly Bar[] => [
  { says: 'straight', value: camber(item) },
  { says: 'inclination', value: camberFromInclination(inclination(item), turn(item)) },
  { says: 'caster', value: camberFromCaster(caster(item), turn(item)) },
];

/** Camber of a turned wheel, share by share. */
export const camberOnLock: Kind<Item> = {
  id: 'camber-on-lock',
  version: 1,
  title: 'Camber of a turned wheel',
  lesson: 'the-wheel-turns',
  level: 2,
  draw: (random) => ({
    inclination_deg: random.grid(8, 16, 0.5),
    caster_deg: random.grid(2, 9, 0.5),
    camber_deg: random.pick([-1, 1]) * random.grid(0.5, 1.5, 0.25),
    turn_deg: random.integer(20, 38),
    way: random.pick(['in', 'out']),
  }),
  sound: () => true,
  pattern: ({ way }) => `turned ${way}`,
  question: ({ inclination_deg, caster_deg, camber_deg, turn_deg, way }) =>
    phrase`A front wheel has an inclination of ${deg(inclination_deg)}, a caster of ${deg(caster_deg)} and, straight ahead, a camber of ${directed(camber_deg, 'deg', QUANTITIES.camber)}. The top of its axis leans inboard and rearward. The wheel is turned ${way} by ${deg(turn_deg)}. By the workshop’s rule the inclination adds its own size times one less the cosine of the turn, and the caster adds or takes away its own size times the sine. What is the camber then?`,
  solved: (item) => ({
    scene: 'bars',
    title: 'Camber straight ahead, what comes on lock, and all together, outboard upward',
    bars: [
      ...shares(item),
      { says: 'camber', value: shares(item).reduce((sum, { value }) => sum + value, 0) },
    ],
  }),
  wrong: (item, road) => {
    const [straight, ofInclination, ofCaster] = shares(item);
    const taken = {
      'from-inclination': [ofInclination],
      'from-caster': [ofCaster],
      camber: [
        straight,
        ...[ofInclination, ofCaster].map(
          (bar, i) => bar && { ...bar, value: road.earlier[i] ?? bar.value },
        ),
        { says: 'camber', value: road.answer },
      ],
    }[road.part];
    const bars = (taken ?? []).flatMap((bar) => bar ?? []);
    return wrongBar('Camber and its shares, outboard upward', bars, road);
  },
  parts: [
    {
      id: 'from-inclination',
      quantity: QUANTITIES.camberFromInclination,
      unit: 'deg',
      decimals: 2,
      label: 'Camber from the inclination',
      value: (item) => camberFromInclination(inclination(item), turn(item)),
      hint: () =>
        phrase`Take the cosine of the turn away from one, then multiply. A bar on the hub sinks whichever way the wheel is turned: where does the top of the wheel go?`,
      slips: [
        {
          id: 'sine',
          confuses: 'sine',
          value: (item) => inclination(item) * Math.sin(size(item)),
          text: () =>
            phrase`That takes the sine of the turn, which belongs to the caster. The share of the inclination begins much more gently, the same to both sides: one less the cosine.`,
        },
        {
          id: 'cosine',
          confuses: 'cosine alone',
          value: (item) => inclination(item) * Math.cos(size(item)),
          text: () =>
            phrase`That takes the cosine alone, which would give the most straight ahead, where nothing has changed yet. The share is what the cosine has lost since then: one less the cosine.`,
        },
        {
          id: 'radians',
          confuses: 'radians',
          value: (item) => inclination(item) * (1 - Math.cos(fromSI(size(item), 'deg'))),
          text: () =>
            phrase`The formula is right, but the calculator took the degrees for radians. In mechanics that setting has its place; turn plates are marked in degrees. Set it to DEG and take the cosine again.`,
        },
        {
          id: 'inboard',
          confuses: 'inboard and outboard',
          value: (item) => -camberFromInclination(inclination(item), turn(item)),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places. It would be so for an axis that leans outboard at the top. This one leans inboard, and so the wheel goes outboard at the top, on both locks.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`One less the cosine of ${deg(item.turn_deg)} is ${bare(1 - Math.cos(size(item)), 4)}, and ${deg(item.inclination_deg)} · ${bare(1 - Math.cos(size(item)), 4)} = ${rounded(value, 'deg', 2)}: outboard, whichever way the wheel is turned.`,
    },
    {
      id: 'from-caster',
      quantity: QUANTITIES.camberFromCaster,
      unit: 'deg',
      decimals: 2,
      label: 'Camber from the caster',
      value: (item) => camberFromCaster(caster(item), turn(item)),
      hint: () =>
        phrase`The caster times the sine of the turn. It leans both wheels of the car into the turn: is that outboard or inboard for a wheel that is turned out, and for one turned in?`,
      slips: [
        {
          id: 'other-lock',
          confuses: 'in and out',
          value: (item) => -camberFromCaster(caster(item), turn(item)),
          text: () =>
            phrase`The size fits, but in and out have changed places: this is the other lock. With the top of the axis leaning rearward, the wheel gains camber turned out and loses it turned in.`,
        },
        {
          id: 'cosine',
          confuses: 'cosine',
          value: (item) => wayOf(item) * caster(item) * Math.cos(size(item)),
          text: () =>
            phrase`That uses the cosine, which would give the most straight ahead, where nothing has changed yet. The share of the caster grows with the turn from nothing: that is the sine.`,
        },
        {
          id: 'inclination-taken',
          confuses: 'inclination',
          value: (item) => camberFromCaster(inclination(item), turn(item)),
          text: () =>
            phrase`That takes the inclination where the caster belongs. The lean seen from the front has its share already; this one comes from the lean seen from the side.`,
        },
        {
          id: 'radians',
          confuses: 'radians',
          value: (item) => caster(item) * Math.sin(fromSI(turn(item), 'deg')),
          text: () =>
            phrase`The formula is right, but the calculator took the degrees for radians. In mechanics that setting has its place; turn plates are marked in degrees. Set it to DEG and take the sine again.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`The sine of ${deg(item.turn_deg)} is ${bare(Math.sin(size(item)), 4)}, and ${deg(item.caster_deg)} · ${bare(Math.sin(size(item)), 4)} = ${rounded(Math.abs(value), 'deg', 2)}. Turned ${item.way}, the top of the wheel leans ${sign(value, QUANTITIES.camberFromCaster)} by that.`,
    },
    {
      id: 'camber',
      quantity: QUANTITIES.camber,
      unit: 'deg',
      decimals: 2,
      label: 'Camber with the wheel turned',
      value: (item, earlier) => camber(item) + step(earlier, 0) + step(earlier, 1),
      sum: 'rounded',
      hint: () => phrase`What was there straight ahead, and both shares, each with its sign.`,
      slips: [
        {
          id: 'other-lock',
          confuses: 'other lock',
          value: (item, earlier) => camber(item) + step(earlier, 0) - step(earlier, 1),
          text: () =>
            phrase`That is the camber on the other lock: the share of the caster has come in with the wrong sign. Add it with the sign that it has.`,
        },
        {
          id: 'straight-left-out',
          confuses: 'camber straight ahead',
          value: (_item, earlier) => step(earlier, 0) + step(earlier, 1),
          text: () =>
            phrase`That is the change alone. It would be the camber if the camber straight ahead were nought. The wheel had some before it was turned, and the change comes on top.`,
        },
        {
          id: 'inclination-taken-away',
          confuses: 'share of the inclination',
          value: (item, earlier) => camber(item) - step(earlier, 0) + step(earlier, 1),
          text: () =>
            phrase`That takes the share of the inclination away. It would be right if that share went inboard. With the axis leaning inboard it goes outboard on both locks, so it is added.`,
        },
        {
          id: 'caster-alone',
          confuses: 'share of the caster alone',
          value: (item, earlier) => camber(item) + step(earlier, 1),
          text: () =>
            phrase`That adds the share of the caster alone. From lock to lock the inclination drops out, as in the workshop’s swing; from straight ahead to one lock it does not.`,
        },
      ],
      solution: ({ camber_deg }, earlier, value) =>
        phrase`${deg(camber_deg)} + ${term(rounded(step(earlier, 0), 'deg', 3))} + ${term(rounded(step(earlier, 1), 'deg', 3))} = ${rounded(value, 'deg', 2)}: the top of the wheel leans ${sign(value, QUANTITIES.camber)}.`,
    },
  ],
};
