import { changed, NO_CHANGE } from '#core/change.ts';
import type { Corner } from '#core/corner.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { kept } from '../forms/kept.ts';
import { step, type Kind, type Road } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerAtRoad } from '../paper/corner.ts';
import { between } from '../paper/plausible.ts';
import { brakeMoment, cornerOnRack } from '../paper/steering.ts';
import { directed, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { seenBeside } from '../pictures/corner-pictures.ts';
import { momentSlips } from '../slips/moment-slips.ts';

interface Item {
  readonly rod_N: number;
  readonly lever_mm: number;
  readonly brake_N: number;
  readonly scrub_mm: number;
  readonly oldInset_mm: number;
  readonly newInset_mm: number;
}

const moment = ({ rod_N, lever_mm }: Item): number => rod_N * si(lever_mm, 'mm');
const brake = ({ brake_N }: Item): number => brake_N;
/** Moment about an upright axis for a metre of scrub radius. */
const perMetre = kept((item: Item): number => brakeMoment(cornerOnRack(1, 0.1, 1), brake(item)));
const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const lessInset = ({ oldInset_mm, newInset_mm }: Item): number =>
  si(oldInset_mm - newInset_mm, 'mm');

/** The corner with its wheel so far out. */
const moved = (item: Item, move: number): Corner =>
  changed(cornerAtRoad({ scrubRadius: scrub(item) }), { ...NO_CHANGE, spacer: move });

/** A movement or a spacer as the scrub radius that it leads to. */
const withMost = (item: Item, road: Road): Road => {
  const other = scrub(item) + (road.part === 'spacer' ? lessInset(item) : 0);
  return { ...road, value: road.value + other, answer: road.answer + other };
};

/** A technician's case, backwards: from what a tie rod may hold to what is left for a spacer. */
export const caseVanTieRod: Kind<Item> = {
  id: 'case-van-tie-rod',
  version: 1,
  title: 'Case: wheels for a van',
  lesson: 'capstone',
  level: 3,
  draw: (random) => ({
    rod_N: random.grid(800, 2000, 50),
    lever_mm: random.integer(95, 150),
    brake_N: random.grid(2500, 4500, 100),
    scrub_mm: random.pick([-1, 1]) * random.integer(6, 20),
    oldInset_mm: random.integer(40, 60),
    newInset_mm: random.integer(28, 38),
  }),
  sound: (item) => {
    const most = moment(item) / perMetre(item);
    return (
      between(1000 * most, 15, 75) && between(1000 * (most - scrub(item) - lessInset(item)), 6, 45)
    );
  },
  question: ({ rod_N, lever_mm, brake_N, scrub_mm, oldInset_mm, newInset_mm }) =>
    phrase`A customer has bought wheels for a van and asks for spacers with them. The old wheels have an inset of ${mm(oldInset_mm)}, the new ones ${mm(newInset_mm)}. The scrub radius now is ${directed(scrub_mm, 'mm', QUANTITIES.scrubRadius)}; the steering axis stands nearly upright, and the wheel does too. Your workshop does not want more than ${given(rod_N, 'N')} in a tie rod at a hard stop with ${given(brake_N, 'N')} at the left front tyre, on a rod ${mm(lever_mm)} from the axis. The brake sits on the carrier, and the wheel is meant to stand outboard of where the axis meets the road. Judge it: how thick may a spacer be?`,
  picture: (item) => ({
    ...{ scene: 'corner', view: 'front', close: 'road' },
    corner: moved(item, 0),
    measures: [{ of: 'scrubRadius', says: mm(Math.abs(item.scrub_mm)).figure }],
  }),
  solved: (item) => {
    const most = moment(item) / perMetre(item);
    return {
      ...{ scene: 'corner', view: 'front', close: 'road' },
      before: moved(item, 0),
      corner: moved(item, most - scrub(item)),
      measures: [
        { of: 'scrubRadius', says: `scrub radius ${rounded(most, 'mm', 1).figure}` },
        { of: 'wheelMove', says: 'movement' },
      ],
    };
  },
  wrong: (item, road) =>
    road.part === 'moment'
      ? undefined
      : seenBeside(
          { of: 'scrubRadius', says: 'scrub radius', view: 'front', close: 'road' },
          road.part === 'scrub' ? road : withMost(item, road),
          (value) => moved(item, value - scrub(item)),
        ),
  parts: [
    {
      id: 'moment',
      quantity: QUANTITIES.brakeMoment,
      unit: 'Nm',
      decimals: 1,
      label: 'Most moment about the steering axis',
      value: moment,
      hint: () =>
        phrase`What the rod holds with its lever is the moment. Braked outboard of the axis, which way does a left wheel turn?`,
      slips: [
        ...momentSlips<Item>(moment),
        {
          id: 'divided',
          confuses: 'dividing by the lever',
          value: (item) => item.rod_N / si(item.lever_mm, 'mm') / 100,
          text: () =>
            phrase`That comes from dividing by the lever. It would be right on the way from the moment to the rod. Here the force in the rod is known: multiply.`,
        },
      ],
      solution: ({ rod_N, lever_mm }, _earlier, value) =>
        phrase`Force times lever: ${given(rod_N, 'N')} · ${given(lever_mm / 1000, 'm')} = ${rounded(value, 'Nm', 1)}. Pulled rearward outboard of the axis, a left wheel turns ${sign(value, QUANTITIES.brakeMoment)}.`,
    },
    {
      id: 'scrub',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 1,
      label: 'Most scrub radius',
      value: (item, earlier) => step(earlier, 0) / perMetre(item),
      hint: () => phrase`The braking force makes the same moment. What is its lever?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item, earlier) => -step(earlier, 0) / perMetre(item),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places. It would be so for a moment to the right. Here the wheel turns to the left: it is pulled outboard of the axis.`,
        },
        {
          id: 'both-wheels',
          confuses: 'both front wheels',
          value: (item, earlier) => step(earlier, 0) / perMetre(item) / 2,
          text: () =>
            phrase`That lets both front wheels pull at one rod. They brake the car together, but each has a rod of its own; here it is one wheel.`,
        },
        {
          id: 'width',
          confuses: 'width of the circle',
          value: (item, earlier) => (2 * step(earlier, 0)) / perMetre(item),
          text: () =>
            phrase`That is the width of the circle on which the tyre scrubs. The lever reaches from the axis to the tyre: half of it.`,
        },
        {
          id: 'lever-of-the-rod',
          confuses: 'lever of the tie rod',
          value: ({ lever_mm }) => si(lever_mm, 'mm'),
          text: () =>
            phrase`That is the lever of the tie rod. It belongs to the rod’s force; the braking force is larger and has a lever of its own.`,
        },
      ],
      solution: ({ brake_N }, earlier, value) =>
        phrase`Moment over braking force: ${rounded(step(earlier, 0), 'Nm', 1)} ÷ ${given(brake_N, 'N')} = ${rounded(value, 'm', 4)}, a scrub radius of ${rounded(Math.abs(value), 'mm', 1)}, ${sign(value, QUANTITIES.scrubRadius)}.`,
    },
    {
      id: 'move',
      quantity: OWN_QUANTITIES.wheelMove,
      unit: 'mm',
      decimals: 1,
      label: 'How far the wheel may move',
      value: (item, earlier) => step(earlier, 1) - scrub(item),
      sum: 'rounded',
      hint: () => phrase`From the scrub radius that the car has to the most it may have.`,
      slips: [
        {
          id: 'added',
          confuses: 'sign of the scrub radius',
          value: (item, earlier) => step(earlier, 1) + scrub(item),
          text: () =>
            phrase`That takes the sign of the scrub radius the other way round. It would be right for an axis on the other side of the contact centre. Take what the car has away from what it may have, sign and all.`,
        },
        {
          id: 'half',
          confuses: 'both wheels of the axle',
          value: (item, earlier) => (step(earlier, 1) - scrub(item)) / 2,
          text: () =>
            phrase`That shares the way between both wheels of the axle, as one does with a track. The scrub radius belongs to one wheel, and so does the way.`,
        },
        {
          id: 'backward',
          confuses: 'direction of the way',
          value: (item, earlier) => scrub(item) - step(earlier, 1),
          text: () =>
            phrase`The size fits, the direction of the way does not. It would be right for a wheel that comes back. This one may go farther out than it stands.`,
        },
        {
          id: 'all-of-it',
          confuses: 'scrub radius that is there already',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That leaves out the scrub radius that is there already. It would be right for a car whose axis meets the road at the contact centre.`,
        },
      ],
      solution: ({ scrub_mm }, earlier, value) =>
        phrase`May have less has: ${rounded(step(earlier, 1), 'mm', 1)} − ${term(mm(scrub_mm))} = ${rounded(value, 'mm', 1)}, ${sign(value, OWN_QUANTITIES.wheelMove)}.`,
    },
    {
      id: 'spacer',
      quantity: OWN_QUANTITIES.spacer,
      unit: 'mm',
      decimals: 1,
      label: 'Thickest spacer with the new wheels',
      value: (item, earlier) => step(earlier, 2) - lessInset(item),
      sum: 'rounded',
      possible: (value) => value > 0,
      hint: () => phrase`The new wheels have less inset. Which way does that move them already?`,
      slips: [
        {
          id: 'inset-turned-round',
          confuses: 'sign of inset',
          value: (item, earlier) => step(earlier, 2) + lessInset(item),
          text: () =>
            phrase`That takes the sign of inset the other way round: more inset would bring the wheel in and leave more room. Less inset takes it out and uses room up.`,
        },
        {
          id: 'inset-forgotten',
          confuses: 'new wheels',
          value: (_item, earlier) => step(earlier, 2),
          text: () =>
            phrase`That leaves out the new wheels. It would be right for spacers behind the old ones. The new ones have taken a part of the way already.`,
        },
        {
          id: 'inset-twice',
          confuses: 'difference of the insets',
          value: (item, earlier) => step(earlier, 2) - 2 * lessInset(item),
          text: () =>
            phrase`That counts the difference of the insets twice, as if the track were asked for, which both wheels widen. One wheel moves by it once.`,
        },
        {
          id: 'inset-alone',
          confuses: 'inset of the new wheel',
          value: (item, earlier) => step(earlier, 2) - si(item.newInset_mm, 'mm'),
          text: () =>
            phrase`That takes the whole inset of the new wheel away. Old and new wheel both have one; only what they differ by moves the wheel.`,
        },
      ],
      solution: ({ oldInset_mm, newInset_mm }, earlier, value) =>
        phrase`The new wheels take ${mm(oldInset_mm)} − ${mm(newInset_mm)} = ${mm(oldInset_mm - newInset_mm)} of it: ${rounded(step(earlier, 2), 'mm', 1)} − ${mm(oldInset_mm - newInset_mm)} = ${rounded(value, 'mm', 1)} are left. That is a sum about one tie rod, no leave to fit anything: bolts, clearance, bearing and the law of the place come on top.`,
    },
  ],
};
