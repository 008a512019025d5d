import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '#exercises/kind.ts';
import { cornerAtRoad } from '#exercises/paper/corner.ts';
import { deg, directed, mm, phrase, rounded, si, term } from '#exercises/phrase.ts';
import { tangentSlips } from '#exercises/slips/tangent-slips.ts';

interface Item {
  readonly trail_mm: number;
  readonly radius_mm: number;
  readonly caster_deg: number;
}

const trail = ({ trail_mm }: Item): number => si(trail_mm, 'mm');
const loadedRadius = ({ radius_mm }: Item): number => si(radius_mm, 'mm');
const caster = ({ caster_deg }: Item): number => si(caster_deg, 'deg');

/** From the road up to the wheel centre, seen from the side: n_C = n − R tan τ. */
export const casterOffsetFromTrail: Kind<Item> = {
  id: 'caster-offset-from-trail',
  version: 1,
  title: 'One storey up, from the side',
  lesson: 'at-the-road',
  level: 1,
  draw: (random) => ({
    trail_mm: random.pick([-1, 1]) * random.integer(5, 45),
    radius_mm: random.integer(280, 350),
    caster_deg: random.grid(2, 9, 0.5),
  }),
  sound: ({ trail_mm, caster_deg }) => trail_mm > 0 || caster_deg < 6,
  pattern: ({ trail_mm }) => (trail_mm > 0 ? 'ahead' : 'behind'),
  question: ({ trail_mm, radius_mm, caster_deg }) =>
    phrase`A wheel stands on a loaded radius of ${mm(radius_mm)}. The steering axis meets the road ${directed(trail_mm, 'mm', QUANTITIES.trail)} of the contact centre and leans back by ${deg(caster_deg)} as it rises. How does it pass the wheel centre?`,
  parts: [
    {
      id: 'lean',
      // A quantity of its own: the course has no name for it.
      quantity: { name: 'lean of the axis, seen from the side', symbol: 'a', kind: 'length' },
      unit: 'mm',
      decimals: 1,
      label: 'How far the axis goes back between the road and the wheel centre',
      value: (item) =>
        -measure(cornerAtRoad({ caster: caster(item), loadedRadius: loadedRadius(item) }))
          .casterOffsetAtCentre,
      // What is nought or less is no lean, and the next part could not go on from it.
      possible: (value) => value > 0,
      hint: () =>
        phrase`The axis rises by the loaded radius. Which side of the triangle lies level?`,
      slips: tangentSlips<Item>({
        angle: 'caster',
        up: 'loaded radius',
        length: loadedRadius,
        size: caster,
      }),
      solution: ({ radius_mm, caster_deg }, _earlier, value) =>
        phrase`The loaded radius times the tangent of the caster: ${mm(radius_mm)} · tan ${deg(caster_deg)} = ${rounded(value, 'mm', 1)}.`,
    },
    {
      id: 'offset',
      quantity: QUANTITIES.casterOffsetAtCentre,
      unit: 'mm',
      decimals: 1,
      label: 'Caster offset at the wheel centre',
      // By the core, from the learner's own lean where there is one.
      value: (item, earlier) =>
        measure(
          cornerAtRoad({
            trail: trail(item),
            caster: Math.atan(step(earlier, 0) / loadedRadius(item)),
            loadedRadius: loadedRadius(item),
          }),
        ).casterOffsetAtCentre,
      sum: 'rounded',
      hint: () => phrase`Begin where the axis meets the road, then go back by its lean.`,
      slips: [
        {
          id: 'lean-added',
          confuses: 'way down',
          value: (item, earlier) => trail(item) + step(earlier, 0),
          text: () =>
            phrase`That adds the lean, which is right on the way down, from the wheel centre to the road. On the way up the axis goes back: take the lean away.`,
        },
        {
          id: 'turned-round',
          confuses: 'ahead and behind',
          value: (item, earlier) => step(earlier, 0) - trail(item),
          text: () =>
            phrase`The size fits, but ahead and behind have changed places. The word says where the axis passes, seen from the wheel centre, and not the other way about.`,
        },
        {
          id: 'trail-left-out',
          confuses: 'trail of nought',
          value: (_item, earlier) => -step(earlier, 0),
          text: () =>
            phrase`That is the lean alone, as on a car with a trail of nought. Here the axis does not meet the road under the wheel centre: begin from where it does.`,
        },
        {
          id: 'whole-wheel',
          confuses: 'top of the wheel',
          value: (item, earlier) => trail(item) - 2 * step(earlier, 0),
          text: () =>
            phrase`That goes up by a whole diameter, and so ends at the top of the wheel. The wheel centre is one loaded radius above the road: the lean counts once.`,
        },
      ],
      solution: ({ trail_mm }, earlier, value) =>
        phrase`Trail less lean: ${term(mm(trail_mm))} − ${rounded(step(earlier, 0), 'mm', 1)} = ${rounded(value, 'mm', 1)}; the axis passes ${value < 0 ? 'behind' : 'ahead of'} the wheel centre.`,
    },
  ],
};
