import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { kept } from '../forms/kept.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { leverOf } from '../paper/along.ts';
import { cornerAtCentre } from '../paper/corner.ts';
import { between } from '../paper/plausible.ts';
import { bare, deg, directed, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { seenBeside } from '../pictures/corner-pictures.ts';
import { forcePictures, type SeenForce } from '../pictures/force-pictures.ts';

interface Item {
  readonly most_Nm: number;
  readonly blow_kN: number;
  readonly inclination_deg: number;
  readonly radius_mm: number;
  readonly scrub_mm: number;
}

const blow = ({ blow_kN }: Item): number => si(blow_kN, 'kN');
const inclination = ({ inclination_deg }: Item): number => si(inclination_deg, 'deg');
const radius = ({ radius_mm }: Item): number => si(radius_mm, 'mm');
const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const lever = (item: Item): number => item.most_Nm / blow(item);
const cornerWith = (item: Item, spindleOffset: number) =>
  cornerAtCentre({
    spindleOffset,
    inclination: inclination(item),
    loadedRadius: radius(item),
  });
const leverPerMetre = kept((item: Item): number => leverOf(cornerWith(item, 1), 'edge'));
/** Spindle offset that has this lever about the axis. */
const spindleFor = (item: Item, about: number): number => about / leverPerMetre(item);
const scrubFor = (item: Item, spindleOffset: number): number =>
  measure(cornerWith(item, spindleOffset)).scrubRadius;
const lean = kept((item: Item): number => -scrubFor(item, 0));

const push = (item: Item): SeenForce => ({
  at: 'centre',
  force: -blow(item),
  says: given(item.blow_kN, 'kN').figure,
});

/** An enthusiast's case, backwards: from a blow at a kerb to what is left for a spacer. */
export const caseKerbSpacer: Kind<Item> = {
  id: 'case-kerb-spacer',
  version: 1,
  title: 'Case: a spacer and a kerb',
  lesson: 'capstone',
  level: 3,
  draw: (random) => {
    const blow_kN = random.grid(3, 8, 0.5);
    return {
      most_Nm: 5 * Math.round((blow_kN * random.integer(70, 118)) / 5),
      blow_kN,
      inclination_deg: random.grid(9, 16, 0.5),
      radius_mm: random.integer(270, 350),
      scrub_mm: random.pick([-1, 1]) * random.integer(3, 15),
    };
  },
  sound: (item) => {
    const may = scrubFor(item, spindleFor(item, lever(item)));
    return between(1000 * may, 6, 50) && between(1000 * (may - scrub(item)), 6, 45);
  },
  question: ({ most_Nm, blow_kN, inclination_deg, radius_mm, scrub_mm }) =>
    phrase`You want spacers for your own car, and set yourself a limit: a kerb that pushes the left wheel centre rearward with ${given(blow_kN, 'kN')} shall not make more than ${given(most_Nm, 'Nm')} about the steering axis. The axis leans inboard at its top by ${deg(inclination_deg)} and not at all rearward; the wheel stands upright on a loaded radius of ${mm(radius_mm)}. You have measured a scrub radius of ${directed(scrub_mm, 'mm', QUANTITIES.scrubRadius)}. Judge it: how thick may a spacer be?`,
  ...forcePictures<Item>({
    side: () => 'left',
    left: (item) => cornerWith(item, spindleFor(item, lever(item))),
    given: (item) => ({
      corner: cornerWith(item, scrub(item) + lean(item)),
      axis: 'low',
      measures: [
        { of: 'scrubRadius', says: mm(Math.abs(item.scrub_mm)).figure },
        { of: 'inclination', says: deg(item.inclination_deg).figure },
        { of: 'loadedRadius', says: mm(item.radius_mm).figure },
      ],
    }),
    forces: (item) => [push(item)],
    parts: { lever: { seen: 'lever', force: push } },
    other: (item, road) =>
      road.part === 'spindle-offset'
        ? seenBeside(
            { of: 'spindleOffset', says: 'spindle offset', view: 'front' },
            road,
            (value) => cornerWith(item, value),
          )
        : seenBeside(
            { of: 'scrubRadius', says: 'scrub radius', view: 'front' },
            road.part === 'scrub'
              ? road
              : {
                  ...road,
                  value: road.value + scrub(item),
                  answer: road.answer + scrub(item),
                },
            (value) => cornerWith(item, value + lean(item)),
          ),
  }),
  parts: [
    {
      id: 'lever',
      quantity: OWN_QUANTITIES.lever,
      unit: 'mm',
      decimals: 1,
      label: 'Longest lever about the axis',
      value: lever,
      hint: () => phrase`A moment is a force times a lever. Both others are known.`,
      slips: [
        {
          id: 'kilonewtons',
          confuses: 'kilonewtons',
          value: (item) => 1000 * lever(item),
          text: () =>
            phrase`That takes kilonewtons for newtons. In kN and kN·m it would come out right; here the moment is in N·m, so the force has to be in newtons.`,
        },
        {
          id: 'upside-down',
          confuses: 'force over moment',
          value: (item) => 1 / lever(item),
          text: () =>
            phrase`That is force over moment, the wrong way up. It would tell how many newtons a newton metre needs for each metre; the lever is moment over force.`,
        },
        {
          id: 'both-wheels',
          confuses: 'both wheels',
          value: (item) => lever(item) / 2,
          text: () =>
            phrase`That shares the blow between both wheels. It would be so for a sleeper across the road. Here one wheel takes all of it.`,
        },
        {
          id: 'diameter',
          confuses: 'diameter',
          value: (item) => 2 * lever(item),
          text: () =>
            phrase`That doubles the lever, as one does from a radius to a diameter. The lever reaches from the axis to the line of the force, once.`,
        },
      ],
      solution: ({ most_Nm, blow_kN }, _earlier, value) =>
        phrase`Moment over force: ${given(most_Nm, 'Nm')} ÷ ${given(1000 * blow_kN, 'N')} = ${rounded(value, 'm', 5)}, which is ${rounded(value, 'mm', 1)}.`,
    },
    {
      id: 'spindle-offset',
      quantity: QUANTITIES.spindleOffset,
      unit: 'mm',
      decimals: 1,
      label: 'Largest spindle offset',
      value: (item, earlier) => spindleFor(item, step(earlier, 0)),
      hint: () =>
        phrase`A blow counts at the wheel centre. The axis leans, so the lever is a little shorter than the level distance.`,
      slips: [
        {
          id: 'sine',
          confuses: 'sine',
          value: (item, earlier) => step(earlier, 0) / Math.sin(inclination(item)),
          text: () =>
            phrase`That divides by the sine. It would be right for an angle to the road; the inclination is counted from upright, and the lever is the cosine’s share of the level distance.`,
        },
        {
          id: 'tangent',
          confuses: 'tangent',
          value: (item, earlier) => step(earlier, 0) / Math.tan(inclination(item)),
          text: () =>
            phrase`That divides by the tangent, which goes between a level and an upright length. Level distance and lever have the cosine between them.`,
        },
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item, earlier) => -spindleFor(item, step(earlier, 0)),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places. A wheel with spacers stands outboard of the axis: the axis passes inboard of its centre.`,
        },
        {
          id: 'road',
          confuses: 'distance at the road',
          value: (item, earlier) => scrubFor(item, step(earlier, 0)),
          text: () =>
            phrase`That goes down to the distance at the road already. It would be right for a brake on the carrier; a kerb’s blow counts at the wheel centre, so keep to that height first.`,
        },
      ],
      solution: ({ inclination_deg }, earlier, value) =>
        phrase`Lever over the cosine of ${deg(inclination_deg)}: ${rounded(step(earlier, 0), 'mm', 2)} ÷ ${bare(Math.cos(si(inclination_deg, 'deg')), 4)} = ${rounded(Math.abs(value), 'mm', 1)}, and the axis passes ${sign(value, QUANTITIES.spindleOffset)} of the wheel centre.`,
    },
    {
      id: 'scrub',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 1,
      label: 'Largest scrub radius',
      value: (item, earlier) => scrubFor(item, step(earlier, 1)),
      hint: () =>
        phrase`On the way down from the wheel centre the axis comes outboard by the loaded radius times a tangent.`,
      slips: [
        {
          id: 'added',
          confuses: 'way up',
          value: (item, earlier) => step(earlier, 1) + lean(item),
          text: () =>
            phrase`That adds what the axis leans, as on the way up from the road. On the way down it has to be taken away.`,
        },
        {
          id: 'same',
          confuses: 'wheel centre',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That is the distance at the wheel centre still. At the road it would be the same only for an upright axis; this one leans.`,
        },
        {
          id: 'turned-round',
          confuses: 'sign of the scrub radius',
          value: (item, earlier) => -scrubFor(item, step(earlier, 1)),
          text: () =>
            phrase`The size fits; the sign of the scrub radius is the other one. The spindle offset is larger than what the axis leans, so the axis is inboard of the tyre at the road too.`,
        },
        {
          id: 'lean-alone',
          confuses: 'lean of the axis',
          value: lean,
          text: () =>
            phrase`That is only the lean of the axis between road and wheel centre. Take it from the spindle offset, and the scrub radius is left.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`The axis leans ${mm(item.radius_mm)} · ${bare(Math.tan(inclination(item)), 4)} = ${rounded(lean(item), 'mm', 1)} on the way, so ${rounded(step(earlier, 1), 'mm', 1)} − ${rounded(lean(item), 'mm', 1)} = ${rounded(value, 'mm', 1)}, ${sign(value, QUANTITIES.scrubRadius)}.`,
    },
    {
      id: 'spacer',
      quantity: OWN_QUANTITIES.spacer,
      unit: 'mm',
      decimals: 1,
      label: 'Thickest spacer',
      value: (item, earlier) => step(earlier, 2) - scrub(item),
      sum: 'rounded',
      possible: (value) => value > 0,
      hint: () => phrase`From the scrub radius that you measured to the largest one.`,
      slips: [
        {
          id: 'added',
          confuses: 'sign of the scrub radius',
          value: (item, earlier) => step(earlier, 2) + scrub(item),
          text: () =>
            phrase`That takes the sign of the scrub radius the other way round. It would be right with the axis on the other side of the tyre. Take what you measured away, sign and all.`,
        },
        {
          id: 'all-of-it',
          confuses: 'scrub radius that is there already',
          value: (_item, earlier) => step(earlier, 2),
          text: () =>
            phrase`That leaves out the scrub radius that is there already. It would be right for a car that begins at nought.`,
        },
        {
          id: 'spindle',
          confuses: 'spindle offset',
          value: (item, earlier) => step(earlier, 1) - scrub(item),
          text: () =>
            phrase`That takes the scrub radius from the spindle offset. They belong to different heights. Compare at the road what you measured at the road.`,
        },
        {
          id: 'half',
          confuses: 'both wheels',
          value: (item, earlier) => (step(earlier, 2) - scrub(item)) / 2,
          text: () =>
            phrase`That shares the way between both wheels. Each side gets its own spacer, and each takes all of its own way.`,
        },
      ],
      solution: ({ scrub_mm }, earlier, value) =>
        phrase`Largest less measured: ${rounded(step(earlier, 2), 'mm', 1)} − ${term(mm(scrub_mm))} = ${rounded(value, 'mm', 1)}. That keeps your own limit at one kerb. Bolts, centring, clearance, bearing, and what your road authority allows are judged by a licensed workshop or inspector.`,
    },
  ],
};
