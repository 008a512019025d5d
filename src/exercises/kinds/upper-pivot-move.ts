import type { Corner } from '#core/corner.ts';
import { atHeight } from '#core/line.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerAtRoad, cornerOnPivots } from '../paper/corner.ts';
import { computed, deg, directed, mm, phrase, si, sign, term } from '../phrase.ts';
import { cornerPictures } from '../pictures/corner-pictures.ts';
import { tangentSlips } from '../slips/tangent-slips.ts';

interface Item {
  /** Where the upper pivot sits, counted from the lower one, and the caster that is wanted. */
  readonly rearward_mm: number;
  readonly rise_mm: number;
  readonly caster_deg: number;
}

const now = ({ rearward_mm }: Item): number => si(rearward_mm, 'mm');
const rise = ({ rise_mm }: Item): number => si(rise_mm, 'mm');
const caster = ({ caster_deg }: Item): number => si(caster_deg, 'deg');

/** The corner whose upper pivot sits so far rearward of the lower one. */
const onPivots = (item: Item, rearward: number): Corner =>
  cornerOnPivots({ up: LOWER_UP }, { ahead: -rearward, up: LOWER_UP + rise(item) });

/** The height of the lower pivot, which nobody asks for. */
const LOWER_UP = 0.2;

/** From a wanted caster back to where the upper pivot has to go. */
export const upperPivotMove: Kind<Item> = {
  id: 'upper-pivot-move',
  version: 1,
  title: 'A wanted caster',
  lesson: 'two-points',
  level: 3,
  draw: (random) => ({
    rearward_mm: random.integer(15, 70),
    rise_mm: random.integer(420, 640),
    caster_deg: random.grid(3, 9, 0.5),
  }),
  sound: (item) => Math.abs(wantedStep(item) - now(item)) >= 0.006,
  question: ({ rearward_mm, rise_mm, caster_deg }) =>
    phrase`On a strut with a sliding top plate, the upper pivot sits ${directed(rearward_mm, 'mm', OWN_QUANTITIES.upperAlong)} of the lower one and ${mm(rise_mm)} above it. The caster is to become ${deg(caster_deg)}, the top leaning rearward. The plate slides level, along the car.`,
  ...cornerPictures<Item>({
    view: 'side',
    pivots: true,
    wheelless: true,
    given: (item) => ({
      corner: onPivots(item, now(item)),
      axis: 'pivots',
      measures: [
        { of: 'pivotsLevel', says: mm(item.rearward_mm).figure },
        { of: 'pivotsUp', says: mm(item.rise_mm).figure },
      ],
    }),
    end: (item) => onPivots(item, wantedStep(item)),
    before: (item) => onPivots(item, now(item)),
    parts: {
      'wanted-step': { of: 'pivotsLevel', says: 'step', to: onPivots },
      move: {
        of: 'caster',
        says: 'caster',
        to: (item, value) => onPivots(item, now(item) + value),
        before: (item) => onPivots(item, now(item)),
      },
    },
  }),
  parts: [
    {
      id: 'wanted-step',
      quantity: OWN_QUANTITIES.upperAlong,
      unit: 'mm',
      decimals: 1,
      label: 'From the lower pivot to where the upper one has to be',
      value: wantedStep,
      hint: () =>
        phrase`The step up between the pivots stays. With the wanted caster at the lower pivot, how far along the car is the axis by the time it has climbed that high?`,
      slips: tangentSlips<Item>({
        angle: 'caster',
        up: 'step up',
        length: rise,
        size: caster,
      }),
      solution: ({ rise_mm, caster_deg }, _earlier, value) =>
        phrase`The step up times the tangent of the caster: ${mm(rise_mm)} · tan ${deg(caster_deg)} = ${computed(value, 'length')}, rearward of the lower pivot.`,
    },
    {
      id: 'move',
      quantity: OWN_QUANTITIES.upperMove,
      unit: 'mm',
      decimals: 1,
      label: 'Movement of the upper pivot',
      value: (item, earlier) => step(earlier, 0) - now(item),
      sum: 'rounded',
      hint: () =>
        phrase`You know where the upper pivot has to be and where it is. Both are counted from the lower pivot.`,
      slips: [
        {
          id: 'whole-step',
          confuses: 'place of the upper pivot',
          value: (_item, earlier) => step(earlier, 0),
          text: () =>
            phrase`That is the place of the upper pivot, counted from the lower one. It would be the movement if the axis stood upright now. Part of the way is there already.`,
        },
        {
          id: 'turned-round',
          confuses: 'rearward and forward',
          value: (item, earlier) => now(item) - step(earlier, 0),
          text: () =>
            phrase`The size fits, but rearward and forward have changed places. A movement is where the pivot has to be, less where it is.`,
        },
        {
          id: 'added',
          confuses: 'present place',
          value: (item, earlier) => now(item) + step(earlier, 0),
          text: () =>
            phrase`That adds the present place of the pivot to the wanted one. It would be right if the pivot sat forward of the lower one now. It sits rearward, so the one is to be taken from the other.`,
        },
        {
          id: 'shared',
          confuses: 'both sides of the car',
          value: (item, earlier) => (step(earlier, 0) - now(item)) / 2,
          text: () =>
            phrase`That is half of the way, as if both sides of the car shared it. Each wheel has its own axis: the other side is set by itself.`,
        },
      ],
      solution: ({ rearward_mm }, earlier, value) =>
        phrase`Where it has to be, less where it is: ${computed(step(earlier, 0), 'length')} − ${term(mm(rearward_mm))} = ${computed(value, 'length')}. The upper pivot moves ${sign(value, OWN_QUANTITIES.upperMove)}.`,
    },
  ],
};

function wantedStep(item: Item): number {
  const { axis } = cornerAtRoad({ caster: caster(item) });
  return -atHeight(axis, rise(item)).x;
}
