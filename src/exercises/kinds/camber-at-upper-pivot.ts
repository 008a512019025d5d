import { changed, NO_CHANGE } from '#core/change.ts';
import type { Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerWithPivots } from '../paper/corner.ts';
import { deg, phrase, rounded, si, sign, term } from '../phrase.ts';
import { cornerPictures } from '../pictures/corner-pictures.ts';

interface Item {
  readonly inclination_deg: number;
  /** Camber on the sheet, and camber wanted. */
  readonly camber_deg: number;
  readonly wanted_deg: number;
}

const inclination = ({ inclination_deg }: Item): number => si(inclination_deg, 'deg');
const camber = ({ camber_deg }: Item): number => si(camber_deg, 'deg');
const wanted = ({ wanted_deg }: Item): number => si(wanted_deg, 'deg');
const change = (item: Item): number => wanted(item) - camber(item);

/** The corner with its wheel and its axis leaned as one piece. */
const leaned = (item: Item, by = change(item)): Corner =>
  cornerWithPivots(inclination(item) - by, camber(item) + by);

/** Camber set by the upper pivot turns wheel and axis together. */
export const camberAtUpperPivot: Kind<Item> = {
  id: 'camber-at-upper-pivot',
  version: 1,
  title: 'Camber set at the top',
  lesson: 'two-points',
  level: 2,
  draw: (random) => ({
    inclination_deg: random.grid(8, 16, 0.25),
    camber_deg: random.pick([-1, 1]) * random.grid(0.5, 1.5, 0.25),
    wanted_deg: -random.grid(1.5, 3.5, 0.25),
  }),
  sound: ({ camber_deg, wanted_deg }) => camber_deg - wanted_deg >= 0.75,
  pattern: ({ camber_deg }) => (camber_deg > 0 ? 'from outboard' : 'from inboard'),
  question: ({ inclination_deg, camber_deg, wanted_deg }) =>
    phrase`An alignment sheet shows an inclination of ${deg(inclination_deg)}; the top of the axis leans inboard. Camber is ${deg(camber_deg)}: the top of the wheel leans ${sign(camber_deg, QUANTITIES.camber)}. It is to become ${deg(wanted_deg)}, the top leaning inboard, and is set by moving the upper pivot across in its slots. The lower pivot stays.`,
  ...cornerPictures<Item>({
    view: 'front',
    given: (item) => ({
      corner: cornerWithPivots(inclination(item), camber(item)),
      measures: [
        { of: 'inclination', says: deg(item.inclination_deg).figure },
        { of: 'camber', says: deg(item.camber_deg).figure },
      ],
    }),
    end: (item) => leaned(item),
    before: (item) => cornerWithPivots(inclination(item), camber(item)),
    parts: {
      change: {
        of: 'camber',
        says: 'camber',
        to: (item, value) => cornerWithPivots(inclination(item), camber(item) + value),
      },
      inclination: {
        of: 'inclination',
        says: 'inclination',
        to: (item, value, earlier) => ({
          ...leaned(item, step(earlier, 0)),
          axis: cornerWithPivots(value, 0).axis,
        }),
      },
    },
  }),
  parts: [
    {
      id: 'change',
      quantity: OWN_QUANTITIES.camberChange,
      unit: 'deg',
      decimals: 2,
      label: 'Change of camber',
      value: change,
      sum: 'exact',
      hint: () => phrase`A change is the new value less the old one, each with its sign.`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'old and new',
          value: (item) => -change(item),
          text: () =>
            phrase`That takes the new camber from the old, so old and new have changed places. It would undo the job. The top of the wheel goes inboard here.`,
        },
        {
          id: 'sign-lost',
          confuses: 'sign of the camber',
          value: (item) => wanted(item) + camber(item),
          text: () =>
            phrase`That adds the two values. It would be right if the old camber had the other sign. Take the old one away with the sign of the camber that stands on the sheet.`,
        },
        {
          id: 'wanted-alone',
          confuses: 'camber wanted',
          value: wanted,
          text: () =>
            phrase`That is the camber wanted, counted from an upright wheel. The wheel does not start upright: count from the camber on the sheet.`,
        },
        {
          id: 'both-wheels',
          confuses: 'both wheels',
          value: (item) => 2 * change(item),
          text: () =>
            phrase`That counts both wheels together, as is done with total toe. Camber belongs to each wheel by itself.`,
        },
      ],
      solution: ({ camber_deg, wanted_deg }, _earlier, value) =>
        phrase`New less old: ${deg(wanted_deg)} − ${term(deg(camber_deg))} = ${rounded(value, 'deg', 2)}. The top of the wheel goes inboard.`,
    },
    {
      id: 'inclination',
      quantity: QUANTITIES.inclination,
      unit: 'deg',
      decimals: 2,
      label: 'Inclination afterwards',
      value: (item, earlier) =>
        measure(
          changed(cornerWithPivots(inclination(item), camber(item)), {
            ...NO_CHANGE,
            camberAtUpperPivot: step(earlier, 0),
          }),
        ).inclination,
      sum: 'exact',
      hint: () =>
        phrase`Carrier and strut move as one piece about the lower pivot. If the top of the wheel goes inboard, where does the top of the axis go?`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'direction of the inclination',
          value: (item, earlier) => inclination(item) + step(earlier, 0),
          text: () =>
            phrase`That adds the change as it stands, as if the direction of the inclination were counted like that of camber. Camber is positive outboard, inclination is positive inboard: the same tilt makes one smaller and the other larger.`,
        },
        {
          id: 'axis-stays',
          confuses: 'setting at the carrier',
          value: inclination,
          text: () =>
            phrase`That leaves the axis where it was. A setting at the carrier, by a slotted bolt below the strut, does so. Here the upper pivot itself moves, and the axis runs through it.`,
        },
        {
          id: 'halved',
          confuses: 'half of the change',
          value: (item, earlier) => inclination(item) - step(earlier, 0) / 2,
          text: () =>
            phrase`That gives the axis half of the change. Wheel and axis are one piece here: the axis tilts by as much as the wheel does.`,
        },
        {
          id: 'twice',
          confuses: 'twice the change',
          value: (item, earlier) => inclination(item) - 2 * step(earlier, 0),
          text: () =>
            phrase`That gives the axis twice the change. Wheel and axis tilt about the lower pivot as one piece, so each by the change once.`,
        },
      ],
      solution: ({ inclination_deg }, earlier, value) =>
        phrase`The axis tilts with the wheel, and inboard is the positive side for inclination: ${deg(inclination_deg)} − ${term(rounded(step(earlier, 0), 'deg', 2))} = ${rounded(value, 'deg', 2)}.`,
    },
    {
      id: 'included-angle',
      quantity: QUANTITIES.includedAngle,
      unit: 'deg',
      decimals: 2,
      label: 'Included angle afterwards',
      value: (item, earlier) =>
        measure(cornerWithPivots(step(earlier, 1), wanted(item))).includedAngle,
      sum: 'exact',
      hint: () => phrase`Inclination plus camber, each with its sign, and both as they are now.`,
      slips: [
        {
          id: 'old-camber',
          confuses: 'camber on the sheet',
          value: (item, earlier) => step(earlier, 1) + camber(item),
          text: () =>
            phrase`That adds the camber on the sheet to the new inclination. It mixes before and after: both values have to be taken afterwards.`,
        },
        {
          id: 'old-inclination',
          confuses: 'inclination on the sheet',
          value: (item) => inclination(item) + wanted(item),
          text: () =>
            phrase`That adds the new camber to the inclination on the sheet. It would be right after a setting at the carrier, where the axis stays. Here the axis has tilted too.`,
        },
        {
          id: 'taken-away',
          confuses: 'sign of the camber',
          value: (item, earlier) => step(earlier, 1) - wanted(item),
          text: () =>
            phrase`That takes the camber away where it should be added. It would be right if the sign of the camber were the other one: a wheel leaning outboard at the top. This one leans inboard.`,
        },
        {
          id: 'inclination-alone',
          confuses: 'inclination alone',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That is the inclination alone, the angle from upright to the axis. The included angle goes on to the plane of the wheel, so the camber belongs to it.`,
        },
      ],
      solution: ({ inclination_deg, camber_deg, wanted_deg }, earlier, value) =>
        phrase`${rounded(step(earlier, 1), 'deg', 2)} + ${term(deg(wanted_deg))} = ${rounded(value, 'deg', 2)}. Before, it was ${deg(inclination_deg)} + ${term(deg(camber_deg))}, the same: the included angle belongs to the carrier, and the carrier was only tilted.`,
    },
  ],
};
