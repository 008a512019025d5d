import { inducedThrust, rowThrusts } from '#core/bearing/thrust.ts';
import { writeFixed } from '#core/write-number.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { ballFactors, inward, sideWords, type InTurn } from '../paper/bearing.ts';
import { bare, deg, given, phrase, rounded } from '../phrase.ts';
import { wrongBar } from '../pictures/bars.ts';

interface Item {
  readonly which: InTurn;
  readonly angle_deg: number;
  readonly outboard_N: number;
  readonly inboard_N: number;
  readonly side_N: number;
}

type RowName = 'outboard' | 'inboard';

const factorY = ({ angle_deg }: Item): number => ballFactors(angle_deg).Y;
/** The row that stands against the side force, and the one that is turned away from it. */
const facing = ({ which }: Item): RowName => (which === 'outer' ? 'outboard' : 'inboard');
const away = ({ which }: Item): RowName => (which === 'outer' ? 'inboard' : 'outboard');
const radial = (item: Item, row: RowName): number =>
  row === 'outboard' ? item.outboard_N : item.inboard_N;
const induced = (item: Item, row: RowName): number =>
  inducedThrust(radial(item, row), ballFactors(item.angle_deg));
/** Thrusts by the core, from what somebody has for the row that is turned away. */
const thrusts = (item: Item, ofAway: number) =>
  rowThrusts(
    facing(item) === 'outboard'
      ? { outboard: induced(item, 'outboard'), inboard: ofAway }
      : { outboard: ofAway, inboard: induced(item, 'inboard') },
    inward(item.which, item.side_N),
  );
const ofFacing = (item: Item, earlier: Earlier): number =>
  thrusts(item, step(earlier, 0))[facing(item)];

/** Which row takes the thrust, and how much the rows push each other. */
export const thrustThroughRows: Kind<Item> = {
  id: 'thrust-through-rows',
  version: 1,
  title: 'Who holds the side force',
  lesson: 'cornering',
  level: 2,
  draw: (random) => {
    const which = random.pick<InTurn>(['outer', 'inner']);
    const less = random.grid(1500, 5000, 50);
    const more = less + random.grid(1500, 5500, 50);
    return {
      which,
      angle_deg: random.pick([25, 30, 35, 40]),
      outboard_N: which === 'outer' ? less : more,
      inboard_N: which === 'outer' ? more : less,
      side_N: random.grid(800, 5000, 50),
    };
  },
  // As in any bend that matters, the row that faces the side force has the smaller radial load: so it is drawn.
  sound: () => true,
  pattern: ({ which }) => which,
  question: (item) =>
    phrase`The ${item.which} front wheel of a car in a bend is pushed ${sideWords(item.which)} with ${given(item.side_N, 'N')}. Its hub has two ball rows back to back with a contact angle of ${deg(item.angle_deg)}, for which the table gives a factor Y of ${writeFixed(factorY(item), 2)}. The inner rings turn with the wheel; there is no clearance and no preload. The outboard row carries ${given(item.outboard_N, 'N')} radially, the inboard row ${given(item.inboard_N, 'N')}, each on its own side. Through which row does the side force go, and what are the thrusts?`,
  picture: (item) => ({
    scene: 'bars',
    title: 'Radial loads of the rows, and the side force',
    bars: [item.outboard_N, item.inboard_N, item.side_N].map((value) => ({
      says: given(value, 'N').figure,
      value,
    })),
  }),
  wrong: (item, road) => {
    const ofRow = (row: RowName): number =>
      row === away(item) ? (road.earlier[0] ?? road.answer) : induced(item, row);
    return wrongBar(
      'Induced thrusts of both rows, the side force, and what is asked for',
      [
        { says: 'outboard', value: ofRow('outboard') },
        { says: 'inboard', value: ofRow('inboard') },
        { says: 'side force', value: item.side_N },
        { says: 'asked', value: road.answer },
      ],
      road,
    );
  },
  parts: [
    {
      id: 'induced',
      quantity: OWN_QUANTITIES.inducedAway,
      unit: 'N',
      decimals: 0,
      label: 'Induced thrust of the row that is turned away from the side force',
      value: (item) => induced(item, away(item)),
      possible: (value) => value > 0,
      hint: () =>
        phrase`In rows back to back the outboard row stands against a hub that is pushed inboard. Which one is turned away here? Its radial load over twice Y is its induced thrust.`,
      slips: [
        {
          id: 'other-row',
          confuses: 'row that faces the side force',
          value: (item) => induced(item, facing(item)),
          text: () =>
            phrase`That is the induced thrust of the row that faces the side force. Back to back, the outboard row stands against a push inboard, the inboard row against a pull outboard.`,
        },
        {
          id: 'not-halved',
          confuses: 'twice Y',
          value: (item) => 2 * induced(item, away(item)),
          text: () =>
            phrase`That divides by Y alone. In the rule for the induced thrust it is twice Y. Some handbooks have another factor there; this course keeps to the usual one.`,
        },
        {
          id: 'multiplied',
          confuses: 'way to an equivalent load',
          value: (item) => (radial(item, away(item)) * factorY(item)) / 2,
          text: () =>
            phrase`That multiplies by Y, as on the way to an equivalent load. Here the radial load makes the thrust, and Y stands below the line.`,
        },
        {
          id: 'both-rows',
          confuses: 'both rows together',
          value: (item) => induced(item, 'outboard') + induced(item, 'inboard'),
          text: () =>
            phrase`That takes both rows together. Their induced thrusts push against each other; asked for is that of one row, which leans on the other.`,
        },
      ],
      solution: (item, _earlier, value) =>
        phrase`The side force is held by the ${facing(item)} row, so the ${away(item)} one is turned away: ${given(radial(item, away(item)), 'N')} ÷ ${bare(2 * factorY(item), 2)} = ${rounded(value, 'N', 1)}.`,
    },
    {
      id: 'facing',
      quantity: OWN_QUANTITIES.thrustFacing,
      unit: 'N',
      decimals: 0,
      label: 'Thrust through the row that faces the side force',
      value: ofFacing,
      possible: (value) => value > 0,
      hint: () =>
        phrase`Two things press on this row along the spin axis: the side force, and the other row, which leans on it with its induced thrust.`,
      slips: [
        {
          id: 'side-alone',
          confuses: 'side force alone',
          value: ({ side_N }) => side_N,
          text: () =>
            phrase`That is the side force alone, as with a single row. The other row leans on this one with its induced thrust, and that has to be held as well.`,
        },
        {
          id: 'shared',
          confuses: 'half of the side force',
          value: (item, earlier) => ofFacing(item, earlier) - item.side_N / 2,
          text: () =>
            phrase`That has half of the side force in it, as if both rows shared it. Rows back to back hold a thrust one way each: all of it goes through the row that faces it.`,
        },
        {
          id: 'taken-away',
          confuses: 'directions of the two',
          value: (item, earlier) => ofFacing(item, earlier) - 2 * item.side_N,
          text: () =>
            phrase`That takes the side force away from the induced thrust. The directions of the two are the same: the row that is turned away from the side force pushes the hub the way it pushes.`,
        },
        {
          id: 'own-induced',
          confuses: 'own induced thrust',
          value: (item) => induced(item, facing(item)) + item.side_N,
          text: () =>
            phrase`That adds the row’s own induced thrust. With that it pushes the other row away; what it has to hold is the other row’s, and the side force.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`${rounded(step(earlier, 0), 'N', 2)} + ${given(item.side_N, 'N')} = ${rounded(value, 'N', 1)}. That is more than the row’s own induced thrust of ${rounded(induced(item, facing(item)), 'N', 1)}, so the hub leans on the ${facing(item)} row.`,
    },
    {
      id: 'away',
      quantity: OWN_QUANTITIES.thrustAway,
      unit: 'N',
      decimals: 0,
      label: 'Thrust through the row that is turned away from it',
      value: (item, earlier) => step(earlier, 1) - item.side_N,
      sum: 'rounded',
      possible: (value) => value > 0,
      hint: () =>
        phrase`Along the spin axis the hub stands still: the two rows’ thrusts push against each other, and the side force is all they differ by.`,
      slips: [
        {
          id: 'added',
          confuses: 'sum with the side force',
          value: (item, earlier) => step(earlier, 1) + item.side_N,
          text: () =>
            phrase`That is the sum with the side force once more. The row that faces it has the larger thrust already; this one has less by the side force.`,
        },
        {
          id: 'same',
          confuses: 'same thrust in both rows',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That puts the same thrust in both rows. It would be so on a straight road; in a turn somebody has to hold the side force.`,
        },
        {
          id: 'half',
          confuses: 'half of the side force',
          value: (item, earlier) => step(earlier, 1) - item.side_N / 2,
          text: () =>
            phrase`That shares the difference, with half of the side force for either row. The two thrusts differ by the whole of it.`,
        },
        {
          id: 'own-facing',
          confuses: 'row that faces the side force',
          value: (item) => induced(item, facing(item)),
          text: () =>
            phrase`That is the induced thrust of the row that faces the side force. In this bend it plays no part: the other one’s is larger, and the side force comes on top of that.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`${rounded(step(earlier, 1), 'N', 1)} − ${given(item.side_N, 'N')} = ${rounded(value, 'N', 1)}: its own induced thrust, as it should be.`,
    },
  ],
};
