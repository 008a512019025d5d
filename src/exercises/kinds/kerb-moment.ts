import type { Corner, Side } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { keptStep } from '../forms/kept.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { leverOf, momentWithLever } from '../paper/along.ts';
import { cornerAtCentre, cornerAtRoad } from '../paper/corner.ts';
import { computed, deg, directed, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { seenBeside } from '../pictures/corner-pictures.ts';
import { forcePictures, type SeenForce } from '../pictures/force-pictures.ts';
import { momentSlips } from '../slips/moment-slips.ts';

interface Item {
  readonly side: Side;
  readonly blow_kN: number;
  readonly scrub_mm: number;
  readonly radius_mm: number;
  readonly inclination_deg: number;
}

const inclination = ({ inclination_deg }: Item): number => si(inclination_deg, 'deg');
const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const radius = ({ radius_mm }: Item): number => si(radius_mm, 'mm');
const force = ({ blow_kN }: Item): number => si(blow_kN, 'kN');
const tilt = (item: Item): number => radius(item) * Math.tan(inclination(item));
const moment = keptStep((item: Item, earlier: Earlier): number =>
  momentWithLever(step(earlier, 1), item.side, { by: 'edge', force: force(item) }),
);

const leaning = (item: Item, scrubRadius = scrub(item)): Corner =>
  cornerAtRoad({ scrubRadius, inclination: inclination(item), loadedRadius: radius(item) });

const blow = (item: Item): SeenForce => ({
  at: 'centre',
  force: -force(item),
  says: given(item.blow_kN, 'kN').figure,
});

/** A kerb taken while rolling: up from the road to the wheel centre, then lever and moment. */
export const kerbMoment: Kind<Item> = {
  id: 'kerb-moment',
  version: 1,
  title: 'A kerb taken at speed',
  lesson: 'what-the-carrier-feels',
  level: 2,
  draw: (random) => ({
    side: random.pick(['left', 'right']),
    blow_kN: random.integer(20, 70) / 10,
    scrub_mm: random.pick([-1, 1]) * random.integer(4, 30),
    radius_mm: random.integer(285, 360),
    inclination_deg: 0.5 * random.integer(24, 32),
  }),
  sound: (item) => scrub(item) + tilt(item) >= 0.055,
  question: ({ side, blow_kN, scrub_mm, radius_mm, inclination_deg }) =>
    phrase`The ${side} front wheel of a car rolls freely, upright, against an edge. The part of the blow along the car is ${given(blow_kN, 'kN')}, rearward. The loaded radius is ${mm(radius_mm)}; the steering axis leans ${deg(inclination_deg)} inboard without caster and meets the road ${directed(scrub_mm, 'mm', QUANTITIES.scrubRadius)} of the contact centre.`,
  ...forcePictures<Item>({
    side: ({ side }) => side,
    left: (item) => leaning(item),
    given: (item) => ({
      axis: 'low',
      measures: [
        { of: 'scrubRadius', says: mm(Math.abs(item.scrub_mm)).figure },
        { of: 'inclination', says: deg(item.inclination_deg).figure },
        { of: 'loadedRadius', says: mm(item.radius_mm).figure },
      ],
    }),
    forces: (item) => [blow(item)],
    parts: {
      lever: {
        seen: 'lever',
        force: blow,
        on: (item, earlier) => leaning(item, step(earlier, 0) - tilt(item)),
        taken: { 'lean-forgotten': 'spindleOffset', 'loaded-radius': 'loadedRadius' },
      },
      moment: {
        seen: 'moment',
        force: blow,
        on: (item, earlier) =>
          leaning(item, step(earlier, 1) / Math.cos(inclination(item)) - tilt(item)),
      },
    },
    other: (item, road) =>
      seenBeside({ of: 'spindleOffset', says: 'spindle offset', view: 'front' }, road, (value) =>
        leaning(item, value - tilt(item)),
      ),
  }),
  parts: [
    {
      id: 'spindle',
      quantity: QUANTITIES.spindleOffset,
      unit: 'mm',
      decimals: 1,
      label: 'Spindle offset',
      value: (item) =>
        measure(
          cornerAtRoad({
            scrubRadius: scrub(item),
            inclination: inclination(item),
            loadedRadius: radius(item),
          }),
        ).spindleOffset,
      sum: 'rounded',
      hint: () =>
        phrase`From the road up to the wheel centre the axis goes inboard. By how much, over the loaded radius? Add that to the scrub radius, sign and all.`,
      slips: [
        {
          id: 'taken-away',
          confuses: 'way down',
          value: (item) => scrub(item) - tilt(item),
          text: () =>
            phrase`That takes the lean of the axis away, which is the way down from the wheel centre to the road. Here it goes up, and going up the axis leans inboard: add.`,
        },
        {
          id: 'diameter',
          confuses: 'diameter',
          value: (item) => scrub(item) + 2 * tilt(item),
          text: () =>
            phrase`That climbs over the whole diameter of the wheel, to its top. Up to its centre the axis has only the loaded radius to lean.`,
        },
        {
          id: 'lean-alone',
          confuses: 'lean of the axis',
          value: tilt,
          text: () =>
            phrase`That is the lean of the axis between road and wheel centre alone. It would be the spindle offset of a car without scrub radius; this one has some to begin with.`,
        },
        {
          id: 'side-lost',
          confuses: 'side of the scrub radius',
          value: (item) => tilt(item) - scrub(item),
          text: () =>
            phrase`That has the side of the scrub radius turned round. Inboard counts as positive and outboard as negative: put that sign to it, then add the lean.`,
        },
      ],
      solution: ({ scrub_mm, radius_mm, inclination_deg }, _earlier, value) =>
        phrase`Up from the road: ${term(mm(scrub_mm))} + ${mm(radius_mm)} · tan ${deg(inclination_deg)} = ${computed(value, 'length')}, inboard.`,
    },
    {
      id: 'lever',
      quantity: OWN_QUANTITIES.lever,
      unit: 'mm',
      decimals: 1,
      label: 'Lever of the blow about the steering axis',
      value: (item, earlier) =>
        leverOf(
          cornerAtCentre({ spindleOffset: step(earlier, 0), inclination: inclination(item) }),
          'edge',
        ),
      sum: 'rounded',
      possible: (value) => value > 0,
      hint: () =>
        phrase`A wheel that rolls freely hands no torque to the carrier, so the blow counts at the wheel centre. Of the offset there a leaning axis takes the cosine of its lean.`,
      slips: [
        {
          id: 'lean-forgotten',
          confuses: 'spindle offset',
          value: (_item, earlier) => Math.abs(step(earlier, 0)),
          text: () =>
            phrase`That is the spindle offset itself, the lever about an upright axis. This one leans, and takes only the cosine of its inclination from it.`,
        },
        {
          id: 'scrub-radius',
          confuses: 'scrub radius',
          value: (item) => Math.abs(scrub(item)) * Math.cos(inclination(item)),
          text: () =>
            phrase`That takes the scrub radius. It would be right for a brake on the carrier, which hands a torque over. Nobody holds a wheel that rolls freely: the blow counts at the wheel centre.`,
        },
        {
          id: 'sine',
          confuses: 'sine',
          value: (item, earlier) => Math.abs(step(earlier, 0)) * Math.sin(inclination(item)),
          text: () =>
            phrase`That takes the sine. A hinge that leans a little still takes nearly all of the turning: its share is the cosine, which is close to one here.`,
        },
        {
          id: 'loaded-radius',
          confuses: 'loaded radius',
          value: (item) => radius(item),
          text: () =>
            phrase`That is the loaded radius: the lever of a force at the road about the spin axis. Asked for is the lever about the steering axis, and it runs across the car.`,
        },
      ],
      solution: ({ inclination_deg }, earlier, value) =>
        phrase`The wheel rolls freely, so the blow counts at the wheel centre. The leaning axis takes ${computed(step(earlier, 0), 'length')} · cos ${deg(inclination_deg)} = ${computed(value, 'length')} of the spindle offset.`,
    },
    {
      id: 'moment',
      quantity: QUANTITIES.blowMoment,
      unit: 'Nm',
      decimals: 1,
      label: 'Moment of the blow about the steering axis',
      value: moment,
      hint: () =>
        phrase`Force times lever, in newtons and metres. Then look from above: the blow pushes rearward, outboard of the axis.`,
      slips: [
        ...momentSlips(moment),
        {
          id: 'kilonewtons',
          confuses: 'kilonewtons',
          value: (item, earlier) => moment(item, earlier) / 1000,
          text: () =>
            phrase`That multiplies kilonewtons by metres, which gives kN·m. Large machines are reckoned like that; asked for are N·m, so the force has to be in newtons.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`${given(1000 * item.blow_kN, 'N')} · ${rounded(step(earlier, 1), 'm', 5)} = ${rounded(Math.abs(value), 'Nm', 1)}. Rearward and outboard of the axis turns the ${item.side} wheel ${sign(value, QUANTITIES.blowMoment)}, which is toe-out.`,
    },
  ],
};
