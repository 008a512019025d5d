import { outboardSign, type Corner, type Side } from '#core/corner.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { kept, keptStep } from '../forms/kept.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { coupleMoment, momentAlong } from '../paper/along.ts';
import { cornerAtCentre } from '../paper/corner.ts';
import { computed, deg, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { forcePictures, type SeenForce } from '../pictures/force-pictures.ts';
import { axisFromCentre } from '../pictures/given-measures.ts';
import { momentSlips } from '../slips/moment-slips.ts';

interface Item {
  readonly side: Side;
  readonly force_N: number;
  readonly radius_mm: number;
  readonly spindle_mm: number;
  readonly inclination_deg: number;
}

const inclination = ({ inclination_deg }: Item): number => si(inclination_deg, 'deg');
const spindle = ({ spindle_mm }: Item): number => si(spindle_mm, 'mm');
const radius = ({ radius_mm }: Item): number => si(radius_mm, 'mm');
const corner = kept((item: Item): Corner =>
  cornerAtCentre({
    spindleOffset: spindle(item),
    inclination: inclination(item),
    loadedRadius: radius(item),
  }),
);
const torque = (item: Item): number => item.force_N * radius(item);
/** Held through a shaft, the same force would count at the wheel centre. */
const ofForce = kept((item: Item): number =>
  momentAlong(corner(item), item.side, { by: 'shaft', force: -item.force_N }),
);
const ofCouple = keptStep((item: Item, earlier: Earlier): number =>
  coupleMoment(corner(item), item.side, step(earlier, 0)),
);
/** The sign of a moment to the left on a left wheel. */
const out = ({ side }: Item): number => outboardSign(side);

const held = ({ force_N }: Item, at: SeenForce['at']): SeenForce => ({
  ...{ at, force: -force_N, says: given(force_N, 'N').figure },
});

/** The brake taken apart: force at the wheel centre, couple about the spin axis, and what the two come to. */
export const brakeForceMoved: Kind<Item> = {
  id: 'brake-force-moved',
  version: 1,
  title: 'Force and couple',
  lesson: 'braking-at-the-ground',
  level: 3,
  draw: (random) => ({
    side: random.pick(['left', 'right']),
    force_N: 50 * random.integer(20, 80),
    radius_mm: random.integer(285, 345),
    spindle_mm: random.integer(50, 110),
    inclination_deg: 0.5 * random.integer(22, 30),
  }),
  sound: (item) => {
    const scrub_mm = 1000 * (spindle(item) - radius(item) * Math.tan(inclination(item)));
    return Math.abs(scrub_mm) > 8 && Math.abs(scrub_mm) < 40;
  },
  question: ({ side, force_N, radius_mm, spindle_mm, inclination_deg }) =>
    phrase`A caliper on the carrier brakes the ${side} front wheel: the road holds the tyre back with ${given(force_N, 'N')}. The wheel is upright, its loaded radius ${mm(radius_mm)}, the spindle offset ${mm(spindle_mm)} inboard. The steering axis leans ${deg(inclination_deg)} inboard without caster. Count the force at the wheel centre and the brake torque as a couple, and put the two together.`,
  ...forcePictures<Item>({
    side: ({ side }) => side,
    left: corner,
    given: (item) => ({
      axis: 'high',
      forces: [{ at: 'road', towards: [-1, 0, 0], says: given(item.force_N, 'N').figure }],
      measures: axisFromCentre(item),
    }),
    forces: (item) => [held(item, 'road')],
    parts: {
      'of-force': {
        seen: 'moment',
        force: (item) => held(item, 'centre'),
        taken: { 'loaded-radius': 'loadedRadius' },
      },
      together: { seen: 'moment', force: (item) => held(item, 'road') },
    },
  }),
  drawnTrue: ['together'],
  parts: [
    {
      id: 'torque',
      quantity: QUANTITIES.brakeTorque,
      unit: 'Nm',
      decimals: 1,
      label: 'Torque that the caliper hands to the carrier',
      value: torque,
      possible: (value) => value > 0,
      hint: () =>
        phrase`Look at the wheel alone: the pads hold it against the road’s pull. About the wheel centre that pull has the loaded radius for a lever.`,
      slips: [
        {
          id: 'diameter',
          confuses: 'diameter',
          value: (item) => 2 * torque(item),
          text: () =>
            phrase`That takes the diameter of the wheel for the lever. The road’s pull acts about the wheel centre, and from there down to the road it is one loaded radius.`,
        },
        {
          id: 'millimetres',
          confuses: 'millimetres',
          value: (item) => 1000 * torque(item),
          text: () =>
            phrase`That multiplies newtons by millimetres. Some drawings do give torques in N·mm; in N·m the radius has to be in metres.`,
        },
        {
          id: 'spindle-offset',
          confuses: 'spindle offset',
          value: (item) => item.force_N * spindle(item),
          text: () =>
            phrase`That takes the spindle offset, a lever about the steering axis. The pads hold the wheel about its spin axis, and about that one the road’s pull has the loaded radius.`,
        },
        {
          id: 'divided',
          confuses: 'dividing by the radius',
          value: (item) => item.force_N / radius(item),
          text: () =>
            phrase`That comes from dividing by the radius, the way from a torque to a force. Here the force is known and the torque asked for: multiply.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`The pads hold the wheel against the road’s pull: ${given(item.force_N, 'N')} · ${rounded(radius(item), 'm', 3)} = ${rounded(value, 'Nm', 1)}. The disc gives it back to the pads, and the carrier has it.`,
    },
    {
      id: 'of-force',
      quantity: OWN_QUANTITIES.momentAtCentre,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment of the force, counted at the wheel centre',
      value: ofForce,
      hint: () =>
        phrase`At the wheel centre the lever is the spindle offset, of which a leaning axis takes the cosine of its lean. Rearward, outboard of the axis: which way?`,
      slips: [
        ...momentSlips(ofForce),
        {
          id: 'loaded-radius',
          confuses: 'loaded radius',
          value: (item) => out(item) * torque(item) * Math.cos(inclination(item)),
          text: () =>
            phrase`That takes the loaded radius for the lever: it is the lever about the spin axis. About the steering axis, at the height of the wheel centre, it is the spindle offset.`,
        },
        {
          id: 'sine',
          confuses: 'sine',
          value: (item) => out(item) * item.force_N * spindle(item) * Math.sin(inclination(item)),
          text: () =>
            phrase`That takes the sine of the lean. It will come in with the couple, in the next line. For a force along the car a leaning axis takes the cosine of its lever.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`${given(item.force_N, 'N')} · ${rounded(spindle(item), 'm', 3)} · cos ${deg(item.inclination_deg)} = ${rounded(Math.abs(value), 'Nm', 1)}, ${sign(value, OWN_QUANTITIES.momentAtCentre)}: that would be all if the brake were inboard.`,
    },
    {
      id: 'of-couple',
      quantity: OWN_QUANTITIES.momentOfCouple,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment of the couple about the steering axis',
      value: ofCouple,
      hint: () =>
        phrase`The couple turns about the spin axis, which lies level. Of that the steering axis takes only as much as it leans toward it: the sine of its lean. It turns the wheel the other way than the force does.`,
      slips: [
        {
          id: 'cosine',
          confuses: 'cosine',
          value: (item, earlier) => -out(item) * step(earlier, 0) * Math.cos(inclination(item)),
          text: () =>
            phrase`That takes the cosine, as for a couple about an upright line. This one lies level, along the spin axis; an upright steering axis would take nothing of it, and one that leans takes the sine.`,
        },
        {
          id: 'whole-torque',
          confuses: 'whole torque',
          value: (item, earlier) => -out(item) * step(earlier, 0),
          text: () =>
            phrase`That takes the whole torque, as if the steering axis lay along the spin axis. It stands nearly square to it, and takes only the sine of its lean.`,
        },
        {
          id: 'same-way',
          confuses: 'direction of the couple',
          value: (item, earlier) => -ofCouple(item, earlier),
          text: () =>
            phrase`The size fits, but the direction of the couple is turned round: like this it would help the force. The disc drags the pads forward over the top, and about an axis that leans inboard that turns against the force.`,
        },
        {
          id: 'calculator-on-radians',
          confuses: 'radians',
          value: (item, earlier) => -out(item) * step(earlier, 0) * Math.sin(item.inclination_deg),
          text: () =>
            phrase`The formula is right, but the calculator took the degrees for radians. In mechanics that setting has its place; the inclination here is in degrees. Set it to DEG and take the sine again.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`${rounded(step(earlier, 0), 'Nm', 1)} · sin ${deg(item.inclination_deg)} = ${rounded(Math.abs(value), 'Nm', 1)}, ${sign(value, OWN_QUANTITIES.momentOfCouple)}, against the force.`,
    },
    {
      id: 'together',
      quantity: QUANTITIES.brakeMoment,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment of the brake, both together',
      value: (_item, earlier) => step(earlier, 1) + step(earlier, 2),
      sum: 'rounded',
      hint: () =>
        phrase`Add the two with their signs: to the left is positive, to the right negative. What comes out is the force with the scrub radius for its lever.`,
      slips: [
        {
          id: 'signs-lost',
          confuses: 'signs',
          value: (_item, earlier) => step(earlier, 1) - step(earlier, 2),
          text: () =>
            phrase`That adds the sizes and loses the signs. The two turn the wheel in opposite directions, so one is taken from the other.`,
        },
        {
          id: 'force-alone',
          confuses: 'inboard brake',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That is the force alone, as for an inboard brake. Here the caliper sits on the carrier and hands the couple over as well.`,
        },
        {
          id: 'couple-alone',
          confuses: 'couple alone',
          value: (_item, earlier) => step(earlier, 2),
          text: () =>
            phrase`That is the couple alone. The force passes the bearing besides and has a moment of its own; the carrier feels both.`,
        },
        {
          id: 'turned-round',
          confuses: 'direction',
          value: (_item, earlier) => -step(earlier, 1) - step(earlier, 2),
          text: () =>
            phrase`The size fits, but the direction is turned round. The larger of the two decides: look which one that is, and which way it turns the wheel.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`${term(rounded(step(earlier, 1), 'Nm', 1))} + ${term(rounded(step(earlier, 2), 'Nm', 1))} = ${rounded(value, 'Nm', 1)}: ${sign(value, QUANTITIES.brakeMoment)}. The same force at the road says it at once: the axis meets the road ${computed(Math.abs(value / item.force_N / Math.cos(inclination(item))), 'length')} ${value * out(item) > 0 ? 'inboard' : 'outboard'} of the contact centre.`,
    },
  ],
};
