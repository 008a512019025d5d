import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { inclinationBySwing, swingFactor } from '#core/swing-by-rule.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerWithPivots } from '../paper/corner.ts';
import { between } from '../paper/plausible.ts';
import { bare, computed, deg, directed, phrase, rounded, si, term } from '../phrase.ts';
import { wrongBar } from '../pictures/bars.ts';
import { seenBeside } from '../pictures/corner-pictures.ts';
import { swingSlips } from '../slips/swing-slips.ts';

interface Item {
  /** Lean of the bar across the wheel's face, front end up positive; the turn each way; camber straight ahead. */
  readonly turnedIn_deg: number;
  readonly turnedOut_deg: number;
  readonly turn_deg: number;
  readonly camber_deg: number;
}

const turnedIn = ({ turnedIn_deg }: Item): number => si(turnedIn_deg, 'deg');
const turnedOut = ({ turnedOut_deg }: Item): number => si(turnedOut_deg, 'deg');
const turn = ({ turn_deg }: Item): number => si(turn_deg, 'deg');
const camber = ({ camber_deg }: Item): number => si(camber_deg, 'deg');
const twiceTheSine = (item: Item): number => 1 / swingFactor(turn(item));

const byRule = (item: Item): number =>
  inclinationBySwing(turnedOut(item) - turnedIn(item), 0, swingFactor(turn(item)));

/** The workshop's way to the inclination, with the brake applied, and on to the included angle. */
export const inclinationFromSwing: Kind<Item> = {
  id: 'inclination-from-swing',
  version: 1,
  title: 'A bar across the braked wheel',
  lesson: 'the-wheel-turns',
  level: 2,
  draw: (random) => {
    // Tenths of a degree, as whole numbers until the end. Caster lets both readings sink a little.
    const turn_deg = random.integer(18, 28);
    const eachWay = random.integer(26, 50) + (turn_deg - 18);
    const caster = random.integer(3, 9);
    return {
      turnedIn_deg: -(eachWay + caster) / 10,
      turnedOut_deg: (eachWay - caster) / 10,
      turn_deg,
      camber_deg: (random.pick([-1, 1]) * random.integer(6, 20)) / 10,
    };
  },
  sound: ({ turnedIn_deg, turnedOut_deg, turn_deg }) =>
    between((turnedOut_deg - turnedIn_deg) * (30 / turn_deg), 8, 17),
  question: ({ turnedIn_deg, turnedOut_deg, turn_deg, camber_deg }) =>
    phrase`A front wheel stands on a turn plate, its brake held on. A bar across its face was level straight ahead. Turned in by ${deg(turn_deg)}, the front end of the bar points ${directed(turnedIn_deg, 'deg', OWN_QUANTITIES.pitch)}; turned out by as much, ${directed(turnedOut_deg, 'deg', OWN_QUANTITIES.pitch)}. Straight ahead the camber is ${directed(camber_deg, 'deg', QUANTITIES.camber)}. Find the inclination by the workshop’s rule, lean of the bar turned out less lean turned in, divided by twice the sine of the turn, and from it the included angle.`,
  picture: (item) => ({
    scene: 'bars',
    title: 'Lean of the bar turned in and turned out, front end up upward',
    bars: [item.turnedIn_deg, item.turnedOut_deg].map((value) => ({
      says: deg(Math.abs(value)).figure,
      value,
    })),
  }),
  solved: (item) => ({
    ...{ scene: 'corner', view: 'front' },
    corner: cornerWithPivots(byRule(item), camber(item)),
    measures: [
      { of: 'inclination', says: `inclination ${rounded(byRule(item), 'deg', 1).figure}` },
      { of: 'camber', says: deg(item.camber_deg).figure },
    ],
  }),
  wrong: (item, road) => {
    switch (road.part) {
      case 'difference':
        return wrongBar(
          'Lean turned in and turned out, and the one less the other',
          [
            { says: 'in', value: turnedIn(item) },
            { says: 'out', value: turnedOut(item) },
            { says: 'out less in', value: road.answer },
          ],
          road,
        );
      case 'inclination':
        return seenBeside(
          { of: 'inclination', says: 'inclination', view: 'front' },
          road,
          (value) => ({
            ...cornerWithPivots(0, camber(item)),
            axis: cornerWithPivots(value, 0).axis,
          }),
        );
      default:
        return undefined;
    }
  },
  parts: [
    {
      id: 'difference',
      quantity: OWN_QUANTITIES.pitchDifference,
      unit: 'deg',
      decimals: 1,
      label: 'Lean of the bar turned out, less its lean turned in',
      value: (item) => turnedOut(item) - turnedIn(item),
      sum: 'exact',
      hint: () =>
        phrase`Up is positive, down is negative. From down on one side to up on the other: how far has the bar tipped in all?`,
      slips: [
        {
          id: 'sign-lost',
          confuses: 'up and down',
          value: (item) => turnedOut(item) + turnedIn(item),
          text: () =>
            phrase`That takes one size from the other, as if both were up. It mixes up and down: the bar went through the level, so its way from the one to the other is both together.`,
        },
        {
          id: 'turned-round',
          confuses: 'in and out',
          value: (item) => turnedIn(item) - turnedOut(item),
          text: () =>
            phrase`The size fits, but in and out have changed places. The rule counts the lean turned out, less the lean turned in: an axis that leans inboard makes that positive.`,
        },
        {
          id: 'halved',
          confuses: 'half of the difference',
          value: (item) => (turnedOut(item) - turnedIn(item)) / 2,
          text: () =>
            phrase`That is half of the difference, the share of one lock. The two comes in with the sine, in the next step; here the whole difference is asked for.`,
        },
        {
          id: 'camber-taken-away',
          confuses: 'camber',
          value: (item) => turnedOut(item) - turnedIn(item) - camber(item),
          text: () =>
            phrase`That has the camber in it. Camber is how the wheel leans to the side; the bar lies along the wheel and tips front up or front down. The camber comes in with the included angle.`,
        },
      ],
      solution: ({ turnedIn_deg, turnedOut_deg }, _earlier, value) =>
        phrase`Out less in, each with its sign: ${deg(turnedOut_deg)} − ${term(deg(turnedIn_deg))} = ${rounded(value, 'deg', 1)}.`,
    },
    {
      id: 'inclination',
      quantity: QUANTITIES.inclination,
      unit: 'deg',
      decimals: 1,
      label: 'Inclination by the rule',
      value: (item, earlier) => inclinationBySwing(step(earlier, 0), 0, swingFactor(turn(item))),
      hint: () =>
        phrase`Divide by twice the sine of the turn that was made each way, not of the whole swing.`,
      slips: swingSlips<Item>({ found: 'inclination', turn }),
      solution: (item, earlier, value) =>
        phrase`Twice the sine of ${deg(item.turn_deg)} is ${bare(twiceTheSine(item), 4)}, and ${rounded(step(earlier, 0), 'deg', 1)} ÷ ${bare(twiceTheSine(item), 4)} = ${computed(value, 'angle')}, the top of the axis leaning inboard.`,
    },
    {
      id: 'included-angle',
      quantity: QUANTITIES.includedAngle,
      unit: 'deg',
      decimals: 1,
      label: 'Included angle',
      value: (item, earlier) =>
        measure(cornerWithPivots(step(earlier, 1), camber(item))).includedAngle,
      sum: 'rounded',
      hint: () => phrase`Inclination plus camber, each with its sign.`,
      slips: [
        {
          id: 'taken-away',
          confuses: 'sign of the camber',
          value: (item, earlier) => step(earlier, 1) - camber(item),
          text: () =>
            phrase`That takes the camber away. It would be right if the sign of the camber were the other one. The included angle is the sum, with the sign as it was read.`,
        },
        {
          id: 'inclination-alone',
          confuses: 'inclination alone',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That is the inclination alone, the angle from upright to the axis. The included angle goes on to the plane of the wheel, so the camber belongs to it.`,
        },
        {
          id: 'difference-used',
          confuses: 'difference of the two leans',
          value: (item, earlier) => step(earlier, 0) + camber(item),
          text: () =>
            phrase`That adds the camber to the difference of the two leans. The gauge shows only a part of the inclination; the rule makes the inclination of it, and that is what the camber is added to.`,
        },
        {
          id: 'camber-twice',
          confuses: 'both wheels',
          value: (item, earlier) => step(earlier, 1) + 2 * camber(item),
          text: () =>
            phrase`That counts the camber twice, as if both wheels shared one included angle. It belongs to one carrier: one inclination, one camber.`,
        },
      ],
      solution: ({ camber_deg }, earlier, value) =>
        phrase`${rounded(step(earlier, 1), 'deg', 1)} + ${term(deg(camber_deg))} = ${rounded(value, 'deg', 1)}. Held against the other side, it tells a bent carrier from an axis that has shifted.`,
    },
  ],
};
