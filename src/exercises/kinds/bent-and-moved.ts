import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { kept } from '../forms/kept.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerWithPivots } from '../paper/corner.ts';
import { camberRead, onSheet_deg, sheetAngle_deg } from '../paper/sheet.ts';
import { deg, phrase, rounded, si, sign, term } from '../phrase.ts';
import { seenBeside } from '../pictures/corner-pictures.ts';

interface Item {
  /** As the maker means this corner to be. */
  readonly setInclination_deg: number;
  readonly setCamber_deg: number;
  /** As it is measured after the kerb. */
  readonly inclination_deg: number;
  readonly camber_deg: number;
}

const included = (inclination_deg: number, camber_deg: number): number =>
  measure(cornerWithPivots(si(inclination_deg, 'deg'), si(camber_deg, 'deg'))).includedAngle;

const meant = kept((item: Item): number => included(item.setInclination_deg, item.setCamber_deg));
const measured = kept((item: Item): number => included(item.inclination_deg, item.camber_deg));

const camber = ({ camber_deg }: Item): number => si(camber_deg, 'deg');
const setCamber = ({ setCamber_deg }: Item): number => si(setCamber_deg, 'deg');
const camberChange = (item: Item): number => camber(item) - setCamber(item);
const inclinationChange = ({ inclination_deg, setInclination_deg }: Item): number =>
  si(inclination_deg - setInclination_deg, 'deg');

/** The axis takes the wheel along, the other way about. */
const withAxisBack = (item: Item): number => camber(item) + inclinationChange(item);

/** One corner with two faults: what of its camber is bent in, and what came with the axis. */
export const bentAndMoved: Kind<Item> = {
  id: 'bent-and-moved',
  version: 1,
  title: 'Bent, moved, or both',
  lesson: 'alignment-sheet',
  level: 3,
  draw: (random) => {
    const setInclination_deg = sheetAngle_deg(random, 10, 15);
    const setCamber_deg = sheetAngle_deg(random, -1.2, -0.4);
    const moved_deg = random.pick([-1, 1]) * sheetAngle_deg(random, 1, 2.8);
    const bent_deg = random.pick([
      sheetAngle_deg(random, -2.5, -0.8),
      // Enough to lean the wheel outboard.
      sheetAngle_deg(random, 0.7 - setCamber_deg, 2.8),
    ]);
    return {
      setInclination_deg,
      setCamber_deg,
      inclination_deg: onSheet_deg(setInclination_deg - moved_deg),
      camber_deg: onSheet_deg(setCamber_deg + moved_deg + bent_deg),
    };
  },
  sound: ({ camber_deg }) => Math.abs(camber_deg) >= 0.4 && Math.abs(camber_deg) <= 4,
  question: ({ setInclination_deg, setCamber_deg, inclination_deg, camber_deg }) =>
    phrase`A corner on a strut is meant to have an inclination of ${deg(setInclination_deg)} and a camber of ${camberRead(setCamber_deg)}. After a kerb it has an inclination of ${deg(inclination_deg)} and a camber of ${camberRead(camber_deg)}. How much of the camber is bent into carrier or strut, and how much came with an axis that has moved?`,
  picture: (item) => ({
    ...{ scene: 'corner', view: 'front' },
    before: cornerWithPivots(si(item.setInclination_deg, 'deg'), setCamber(item)),
    corner: cornerWithPivots(si(item.inclination_deg, 'deg'), camber(item)),
    measures: [
      { of: 'inclination', says: deg(item.inclination_deg).figure },
      { of: 'camber', says: deg(item.camber_deg).figure },
    ],
  }),
  solved: (item) => ({
    ...{ scene: 'corner', view: 'front' },
    before: cornerWithPivots(si(item.inclination_deg, 'deg'), camber(item)),
    corner: cornerWithPivots(si(item.setInclination_deg, 'deg'), withAxisBack(item)),
    measures: [
      { of: 'inclination', says: deg(item.setInclination_deg).figure },
      { of: 'camber', says: `camber ${rounded(withAxisBack(item), 'deg', 2).figure}` },
    ],
  }),
  wrong: (item, road) =>
    road.part === 'with-axis-back'
      ? seenBeside({ of: 'camber', says: 'camber', view: 'front' }, road, (value) =>
          cornerWithPivots(si(item.setInclination_deg, 'deg'), value),
        )
      : undefined,
  parts: [
    {
      id: 'bent-in',
      quantity: OWN_QUANTITIES.camberBentIn,
      unit: 'deg',
      decimals: 2,
      label: 'Change of the included angle: camber that is bent in',
      value: (item) => measured(item) - meant(item),
      sum: 'exact',
      hint: () =>
        phrase`Whatever moves axis and wheel as one piece leaves the included angle as it is. Add inclination and camber, before and after.`,
      slips: [
        {
          id: 'camber-alone',
          confuses: 'camber alone',
          value: camberChange,
          text: () =>
            phrase`That is the change of the camber alone. It would be the bend if the axis had stayed. The inclination has changed too, so part of the camber came with the axis.`,
        },
        {
          id: 'measured-alone',
          confuses: 'included angle as it is measured',
          value: measured,
          text: () =>
            phrase`That is the included angle as it is measured. By itself it says nothing: every carrier has its own. Hold it against the one that is meant.`,
        },
        {
          id: 'taken-away',
          confuses: 'sign of the camber',
          value: (item) => inclinationChange(item) - camberChange(item),
          text: () =>
            phrase`That takes the camber away both times. It would be right if the sign of the camber were counted positive inboard, like inclination. As the sheet has it, add.`,
        },
        {
          id: 'turned-round',
          confuses: 'before and after',
          value: (item) => meant(item) - measured(item),
          text: () =>
            phrase`The size fits, but before and after have changed places. A change is what there is now less what there was.`,
        },
      ],
      solution: (item, _earlier, value) => {
        const { setInclination_deg, setCamber_deg, inclination_deg, camber_deg } = item;
        const [was, is] = [rounded(meant(item), 'deg', 2), rounded(measured(item), 'deg', 2)];
        return phrase`Meant: ${deg(setInclination_deg)} + ${term(deg(setCamber_deg))} = ${was}. Measured: ${deg(inclination_deg)} + ${term(deg(camber_deg))} = ${is}. So ${is} − ${was} = ${rounded(value, 'deg', 2)}: carrier or strut is bent, the top of the wheel ${sign(value, OWN_QUANTITIES.camberBentIn)}.`;
      },
    },
    {
      id: 'came-with-axis',
      quantity: OWN_QUANTITIES.camberWithAxis,
      unit: 'deg',
      decimals: 2,
      label: 'Camber that came with the axis',
      value: (item, earlier) => camberChange(item) - step(earlier, 0),
      sum: 'exact',
      hint: () =>
        phrase`By how much has the camber changed in all? What is bent in explains part of it.`,
      slips: [
        {
          id: 'whole-change',
          confuses: 'whole change of the camber',
          value: camberChange,
          text: () =>
            phrase`That is the whole change of the camber. It would have come with the axis if nothing were bent. Take away what is bent in.`,
        },
        {
          id: 'added',
          confuses: 'sign of what is bent in',
          value: (item, earlier) => camberChange(item) + step(earlier, 0),
          text: () =>
            phrase`That adds what is bent in to the whole change: the sign of what is bent in has been lost. The whole change holds it already, so take it away.`,
        },
        {
          id: 'way-of-the-axis',
          confuses: 'lean of the axis',
          value: (item, earlier) => step(earlier, 0) - camberChange(item),
          text: () =>
            phrase`That is the lean of the axis, counted positive inboard. The wheel goes the same way, but camber counts positive outboard, so the sign turns round.`,
        },
        {
          id: 'halved',
          confuses: 'half of the rest',
          value: (item, earlier) => (camberChange(item) - step(earlier, 0)) / 2,
          text: () =>
            phrase`That is half of the rest, as if axis and wheel shared a lean between them. They lean as one piece, each by all of it.`,
        },
      ],
      solution: (item, earlier, value) => {
        const whole = rounded(camberChange(item), 'deg', 2);
        return phrase`In all, the camber has changed by ${deg(item.camber_deg)} − ${term(deg(item.setCamber_deg))} = ${whole}. Of that, ${whole} − ${term(rounded(step(earlier, 0), 'deg', 2))} = ${rounded(value, 'deg', 2)} is not bent in. The inclination has changed by just as much the other way: a mounting or the lower arm has let the axis lean, and the wheel with it.`;
      },
    },
    {
      id: 'with-axis-back',
      quantity: QUANTITIES.camber,
      unit: 'deg',
      decimals: 2,
      label: 'Camber if only the axis were put back',
      value: (item, earlier) => camber(item) - step(earlier, 1),
      sum: 'exact',
      hint: () =>
        phrase`The axis goes back and takes the wheel along, by what came with it. What is bent stays bent.`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'way back',
          value: (item, earlier) => camber(item) + step(earlier, 1),
          text: () =>
            phrase`That leans the wheel farther the way it went. The way back goes the other way, so take away what came with the axis.`,
        },
        {
          id: 'all-well',
          confuses: 'camber that is meant',
          value: setCamber,
          text: () =>
            phrase`That is the camber that is meant. It would come back if nothing were bent. But a bent part stays bent, wherever the axis goes.`,
        },
        {
          id: 'as-measured',
          confuses: 'camber as it is measured',
          value: camber,
          text: () =>
            phrase`That is the camber as it is measured now. It would stay if the wheel did not follow the axis. It does: the two lean as one piece.`,
        },
        {
          id: 'bend-alone',
          confuses: 'bend alone',
          value: (item, earlier) => camberChange(item) - step(earlier, 1),
          text: () =>
            phrase`That is the bend alone. It would be the camber if the wheel were meant to stand upright. It is meant to have a camber of its own.`,
        },
      ],
      solution: ({ camber_deg }, earlier, value) =>
        phrase`${deg(camber_deg)} − ${term(rounded(step(earlier, 1), 'deg', 2))} = ${rounded(value, 'deg', 2)}, which is not yet what is meant. A workshop looks for both faults: it puts right what has moved, and replaces what is bent. Nothing is straightened.`,
    },
  ],
};
