import type { Side } from '#core/corner.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { returningOffset, selfReturnByRule } from '#core/self-return.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerAtRoad } from '../paper/corner.ts';
import { roughLean_mm } from '../paper/plausible.ts';
import { bare, deg, directed, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';

interface Item {
  readonly way: Side;
  readonly load_N: number;
  readonly spindle_mm: number;
  readonly scrub_mm: number;
  readonly inclination_deg: number;
  readonly turn_deg: number;
}

const load = ({ load_N }: Item): number => si(load_N, 'N');
const spindle = ({ spindle_mm }: Item): number => si(spindle_mm, 'mm');
const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const inclination = ({ inclination_deg }: Item): number => si(inclination_deg, 'deg');
const turn = ({ turn_deg }: Item): number => si(turn_deg, 'deg');
/** What a newton turns back with, by the offset that is taken. */
const leverWith = (item: Item, offset: number): number =>
  Math.abs(selfReturnByRule(1, { spindle: offset, scrub: offset }, inclination(item), turn(item)));
/** Both loads on a lever: back to straight ahead. */
const back = (item: Item, lever: number): number =>
  (item.way === 'left' ? -2 : 2) * load(item) * lever;
const moment = (item: Item, earlier: Earlier): number => back(item, step(earlier, 1));

/** Both wheel loads on lock: they turn the wheels back. */
export const selfReturnOnLock: Kind<Item> = {
  id: 'self-return-on-lock',
  version: 1,
  title: 'How the weight brings the wheels back',
  lesson: 'side-weight-parking',
  level: 2,
  draw: (random) => {
    const scrub_mm = random.pick([-1, 1]) * random.integer(6, 28);
    const inclination_deg = 0.5 * random.integer(18, 32);
    return {
      way: random.pick(['left', 'right']),
      load_N: random.grid(2500, 5000, 100),
      // On a wheel of common size, so that both offsets could be of one car.
      spindle_mm: scrub_mm + Math.round(roughLean_mm(random.integer(280, 330), inclination_deg)),
      scrub_mm,
      inclination_deg,
      turn_deg: random.integer(22, 38),
    };
  },
  sound: () => true,
  question: ({ way, load_N, spindle_mm, scrub_mm, inclination_deg, turn_deg }) =>
    phrase`The front wheels of a car carry ${given(load_N, 'N')} each. Its steering axes lean ${deg(inclination_deg)} inboard without caster; the scrub radius is ${directed(scrub_mm, 'mm', QUANTITIES.scrubRadius)}, the spindle offset ${mm(spindle_mm)} inboard. Both wheels are turned ${deg(turn_deg)} to the ${way}. Find the offset that counts at this turn first, then use the rule: offset times two sines.`,
  picture: (item) => ({
    ...{ scene: 'corner', view: 'front' },
    corner: cornerAtRoad({
      scrubRadius: scrub(item),
      inclination: inclination(item),
      loadedRadius: (spindle(item) - scrub(item)) / Math.tan(inclination(item)),
    }),
    measures: [
      { of: 'spindleOffset', says: mm(item.spindle_mm).figure },
      { of: 'scrubRadius', says: mm(Math.abs(item.scrub_mm)).figure },
      { of: 'inclination', says: deg(item.inclination_deg).figure },
    ],
  }),
  parts: [
    {
      id: 'offset',
      quantity: OWN_QUANTITIES.returningOffset,
      unit: 'mm',
      decimals: 1,
      label: 'Offset that counts at this turn',
      value: (item) => returningOffset({ spindle: spindle(item), scrub: scrub(item) }, turn(item)),
      possible: (value) => value > 0,
      hint: () =>
        phrase`Begin with the scrub radius, with its sign, and add the lean of the axis between road and wheel centre. The lean counts in full straight ahead, and with the cosine of the turn on lock.`,
      slips: [
        {
          id: 'scrub-alone',
          confuses: 'scrub radius',
          value: (item) => Math.abs(scrub(item)),
          text: () =>
            phrase`That takes the scrub radius alone. It would be right for a foot that is fixed to the carrier and scrapes along the road. A tyre stands on another part of its tread at every turn, so the lean of the axis counts too.`,
        },
        {
          id: 'spindle-alone',
          confuses: 'spindle offset',
          value: spindle,
          text: () =>
            phrase`That takes the spindle offset as it is. It would be right close to straight ahead. This wheel is turned far, leans on its tread, and loses a part of it.`,
        },
        {
          id: 'lean-alone',
          confuses: 'lean between road and wheel centre',
          value: (item) => (spindle(item) - scrub(item)) * Math.cos(turn(item)),
          text: () =>
            phrase`That is the lean between road and wheel centre alone. It would be all for an axis that met the road under the middle of the tyre. Here the scrub radius comes on top, with its sign.`,
        },
        {
          id: 'sine-of-turn',
          confuses: 'sine of the turn',
          value: (item) => scrub(item) + (spindle(item) - scrub(item)) * Math.sin(turn(item)),
          text: () =>
            phrase`That takes the sine of the turn. Straight ahead it would leave nothing of the lean, but there all of it counts: take the cosine.`,
        },
      ],
      solution: ({ scrub_mm, spindle_mm, turn_deg }, _earlier, value) =>
        phrase`The lean between road and wheel centre is ${mm(spindle_mm)} − ${term(mm(scrub_mm))} = ${mm(spindle_mm - scrub_mm)}. At this turn ${mm(spindle_mm - scrub_mm)} · cos ${deg(turn_deg)} = ${rounded(si(spindle_mm - scrub_mm, 'mm') * Math.cos(si(turn_deg, 'deg')), 'mm', 1)} of it count. With the scrub radius that makes ${rounded(value, 'mm', 1)}.`,
    },
    {
      id: 'lever',
      quantity: OWN_QUANTITIES.lever,
      unit: 'mm',
      decimals: 2,
      label: 'Lever with which a wheel load turns its wheel back',
      value: (item, earlier) => leverWith(item, step(earlier, 0)),
      possible: (value) => value > 0,
      hint: () => phrase`Offset times two sines: one of the lean of the axis, one of the turn.`,
      slips: [
        {
          id: 'turn-forgotten',
          confuses: 'turn',
          value: (item, earlier) => step(earlier, 0) * Math.sin(inclination(item)),
          text: () =>
            phrase`That forgets the turn. It would be the lever with the wheels turned by a right angle. On the way there it grows with the sine of the turn.`,
        },
        {
          id: 'cosine-of-turn',
          confuses: 'cosine of the turn',
          value: (item, earlier) =>
            step(earlier, 0) * Math.sin(inclination(item)) * Math.cos(turn(item)),
          text: () =>
            phrase`That takes the cosine of the turn, which is largest straight ahead. There the inclination turns nothing back; the farther the wheels are turned the more it does. So it is the sine.`,
        },
        {
          id: 'lean-forgotten',
          confuses: 'lean of the axis',
          value: (item, earlier) => step(earlier, 0) * Math.sin(turn(item)),
          text: () =>
            phrase`That forgets the lean of the axis. About an upright axis no weight is lifted and nothing comes back. The sine of the inclination says how much of the offset counts.`,
        },
        {
          id: 'cosine-of-lean',
          confuses: 'cosine of the lean',
          value: (item, earlier) =>
            step(earlier, 0) * Math.cos(inclination(item)) * Math.sin(turn(item)),
          text: () =>
            phrase`That takes the cosine of the lean, the share for a force that lies level. The wheel load stands upright and runs nearly along the axis: its share is the sine.`,
        },
      ],
      solution: ({ inclination_deg, turn_deg }, earlier, value) =>
        phrase`Offset times both sines: ${rounded(step(earlier, 0), 'mm', 2)} · sin ${deg(inclination_deg)} · sin ${deg(turn_deg)} = ${rounded(value, 'mm', 2)}.`,
    },
    {
      id: 'moment',
      quantity: QUANTITIES.selfReturn,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment of both wheel loads together',
      value: moment,
      hint: () =>
        phrase`Both wheels are turned, both are loaded, and both want back to where the car stands lowest. Which way is that?`,
      slips: [
        {
          id: 'farther-in',
          confuses: 'direction',
          value: (item, earlier) => -moment(item, earlier),
          text: () =>
            phrase`The size fits, the direction does not: this would turn the wheels farther in, as with an axis that leans outboard. This one lifts the car when it is turned, and weight does not climb by itself.`,
        },
        {
          id: 'one-wheel',
          confuses: 'one wheel alone',
          value: (item, earlier) => moment(item, earlier) / 2,
          text: () =>
            phrase`That is one wheel alone. On lock the shares of the inclination do not cancel, as they do straight ahead: both wheels turn back the same way, so count both.`,
        },
        {
          id: 'millimetres',
          confuses: 'millimetres',
          value: (item, earlier) => 1000 * moment(item, earlier),
          text: () =>
            phrase`That multiplies newtons by millimetres. Some drawings do give moments in N·mm; in N·m the lever has to be in metres, a thousand times smaller a number.`,
        },
        {
          id: 'scrub',
          confuses: 'scrub radius',
          value: (item) => back(item, leverWith(item, Math.abs(scrub(item)))),
          text: () =>
            phrase`That comes from the scrub radius. A car without any still comes back by its weight: what lifts it is the lean of the axis between road and wheel centre.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Two wheels: ${bare(2, 0)} · ${given(item.load_N, 'N')} · ${rounded(step(earlier, 1), 'm', 5)} = ${rounded(Math.abs(value), 'Nm', 1)}. The wheels are turned to the ${item.way}, and the weight turns them back: ${sign(value, QUANTITIES.selfReturn)}.`,
    },
  ],
};
