import type { Sides } from '#core/axle.ts';
import { isAxleQuantity } from '#core/axle-quantities.ts';
import { quantity, type QuantityId } from '#core/quantities.ts';

/** What a prediction is about, in SI: the value before and after the change. */
export interface Outcomes {
  readonly of: QuantityId;
  readonly before: number;
  readonly after: number;
  /** The moment after the change had the force acted at the other height: for a force along the car. */
  readonly atOtherLever?: number | undefined;
  /** For a life of the bearing. */
  readonly rolling?: RollingOutcomes | undefined;
  /** For a quantity of the wheel bearing. */
  readonly bearing?: BearingOutcomes;
  /** What each side brings to it, for what both front wheels do together. */
  readonly sides?: Sides<number> | undefined;
  /** The moment of a side force had it acted at the contact centre, without the tyre's own trail. */
  readonly withoutTyre?: number | undefined;
  /** The value before with the whole change of camber in it: for the included angle. */
  readonly withTheCamber?: number | undefined;
  /** The value before grown as the force has grown: for the moment of a side force. */
  readonly inProportion?: number | undefined;
}

/** What else a prediction about a wheel bearing may end at, in SI. */
export interface BearingOutcomes {
  readonly wheelLoad: number;
  readonly sideForce: number;
  /** The same of the other row. */
  readonly otherRow?: number | undefined;
  /** Had the rows pressed straight down, with no more than their spacing between them. */
  readonly overRows: number;
  /** Had the road pushed the tyre sideways the other way. */
  readonly sideTurnedRound: number;
  /** Had the side force come on top of the row's own induced thrust. */
  readonly ownInduced?: number | undefined;
}

/** What changes about a rolling bearing: its loads and the way straight ahead, as factors; and what its two rows come to. */
export interface RollingOutcomes {
  readonly loads: number;
  readonly straight: number;
  readonly rows: readonly [number, number];
  /** The value after the change, with the bends that the car is otherwise driven through. */
  readonly withItsBends: number;
}

interface PredictionSlip {
  readonly value: (outcomes: Outcomes) => number;
  readonly text: (name: string, of: QuantityId) => string;
}

/** The common wrong roads of a prediction, by the names that lessons use. */
const SLIPS = {
  unchanged: {
    value: ({ before }) => before,
    text: (name) => `That is the ${name} before the change, as if nothing about it had moved.`,
  },
  wrongWay: {
    value: ({ before, after }) => 2 * before - after,
    text: (name) => `The right amount, the wrong way: the ${name} changes in the other direction.`,
  },
  doubled: {
    value: ({ before, after }) => before + 2 * (after - before),
    text: (name) => `That counts the change twice. The ${name} takes it once.`,
  },
  halved: {
    value: ({ before, after }) => before + (after - before) / 2,
    text: (name) => `That is half of the change; all of it goes into the ${name}.`,
  },
  onlyTheChange: {
    value: ({ before, after }) => after - before,
    text: (name) =>
      `That is the change alone. The ${name} had a value before, and the change comes on top.`,
  },
  otherSide: {
    value: ({ after }) => -after,
    text: (name) =>
      `The right size, the other way round. Look again at which way counts as positive for the ${name}.`,
  },
  mirrored: {
    value: ({ before }) => -before,
    text: (name) =>
      `That turns the ${name} before round, as if one lock undid what the other does. A part of it comes on both locks alike.`,
  },
  otherLever: {
    value: ({ atOtherLever = NaN }) => atOtherLever,
    text: (name, of) =>
      isAxleQuantity(of)
        ? `That takes the lever at the other height. The ${name} would come to that if somebody else held the torque: a brake on the carrier makes a force count at the road, and a shaft at the wheel centre.`
        : of === 'brakeMoment'
          ? `That takes the spindle offset for the lever. The ${name} would come to that if the brake sat inside the car, at the other end of a shaft.`
          : `That takes the scrub radius for the lever. The ${name} would come to that if the carrier held the torque, as it does with a brake that sits on it.`,
  },
  addedUp: {
    value: ({ sides }) => (sides ? Math.abs(sides.left) + Math.abs(sides.right) : NaN),
    text: (name) =>
      `That adds left and right. The two wheels are mirror images: for the ${name} one of them counts against the other.`,
  },
  leftAlone: {
    value: ({ sides }) => sides?.left ?? NaN,
    text: (name) => `That is the left wheel alone. The right one has its part in the ${name} too.`,
  },
  wholeTrack: {
    value: ({ after }) => 2 * after,
    text: (name) =>
      `That takes the whole track for the lever. Each tyre is half a track from the middle of the car, and about that middle the ${name} is asked for.`,
  },
  otherRow: {
    value: ({ bearing }) => bearing?.otherRow ?? NaN,
    text: (name) =>
      `That is what the other row has. The ${name} is asked for: look again which of the two it leans on.`,
  },
  halfLoad: {
    value: ({ bearing }) => (bearing?.wheelLoad ?? NaN) / 2,
    text: (name) =>
      `That is half of the wheel load, as if it stood midway between the rows and nothing tipped it. The ${name} has the lever in it.`,
  },
  wholeLoad: {
    value: ({ bearing }) => bearing?.wheelLoad ?? NaN,
    text: () => 'That is the whole wheel load. It is what the two rows carry together.',
  },
  overRows: {
    value: ({ bearing }) => bearing?.overRows ?? NaN,
    text: (name) =>
      `That takes the row spacing for the distance of the two supports. For the ${name} it is the spread of the pressure centres.`,
  },
  sideTurnedRound: {
    value: ({ bearing }) => bearing?.sideTurnedRound ?? NaN,
    text: (name) =>
      `The ${name} would come to that if the road pushed the tyre the other way. It pushes at the bottom: the top of the wheel tips against the push.`,
  },
  sideForceAlone: {
    value: ({ bearing }) => bearing?.sideForce ?? NaN,
    text: () =>
      'That is the side force alone. The other row leans on this one as well, with the thrust that its radial load makes.',
  },
  ownInduced: {
    value: ({ bearing }) => bearing?.ownInduced ?? NaN,
    text: () =>
      'That puts the side force on top of the row’s own induced thrust. With that it pushes the other row; what comes on top is the other one’s.',
  },
  withoutTyre: {
    value: ({ withoutTyre = NaN }) => withoutTyre,
    text: (name) =>
      `That takes the mechanical trail alone. It would be the ${name} if the side force acted at the contact centre; it acts farther back, by the pneumatic trail.`,
  },
  withTheCamber: {
    value: ({ withTheCamber = NaN }) => withTheCamber,
    text: (name) =>
      `That carries the change of camber over into the ${name}. It would be so if the wheel leaned alone. Here the axis leans along, and what the one loses the other gains.`,
  },
  oneWheel: {
    value: ({ after }) => after / 2,
    text: (name) => `That is what one wheel brings. For the ${name} it comes twice.`,
  },
  wholeAngle: {
    value: ({ before, after }) => before + 2 * (after - before),
    text: () =>
      'That takes the tangent of the whole angle of the shaft. The couple goes with the tangent of half of it.',
  },
  twiceAll: {
    value: ({ before }) => 2 * before,
    text: (name) =>
      `That doubles all of the ${name}. The braking force has doubled, the wheel load has not, and it has its part.`,
  },
  inProportion: {
    value: ({ inProportion = NaN }) => inProportion,
    text: (name) =>
      `That lets the ${name} grow as the force has grown. It would be so with a lever that stays; here a part of the lever is the tyre’s own, and it shrinks.`,
  },
  inMillimetres: {
    value: ({ after }) => 1000 * after,
    text: (name) =>
      `That is newtons times millimetres. For the ${name} in newton metres the lever has to be in metres.`,
  },
  inStep: {
    value: ({ before, rolling }) => before / (rolling?.loads ?? NaN),
    text: (name) =>
      `That is in step with the load, as if the ${name} were a tank that is emptied faster. Fatigue is steeper: each pass of a ball over a spot counts with a power of the load.`,
  },
  squared: {
    value: ({ before, rolling }) => before / (rolling?.loads ?? NaN) ** 2,
    text: (name) =>
      `That takes the square of the load, as with the energy of a moving car. The ${name} goes with a power of about three.`,
  },
  byShare: {
    value: ({ before, rolling }) => before * (rolling?.straight ?? NaN),
    text: (name) =>
      `That takes the share of the distance off the ${name}, as if every kilometre counted alike. A kilometre under a high load counts many times over.`,
  },
  halfLeft: {
    value: ({ before }) => before / 2,
    text: (name) => `That leaves half of the ${name}. The bends take more, and by far.`,
  },
  withItsBends: {
    value: ({ rolling }) => rolling?.withItsBends ?? NaN,
    text: (name) =>
      `That is the ${name} with bends in the duty cycle, where wheel load and side force tip the wheel against each other. Straight ahead there is no side force.`,
  },
  shorterRow: {
    value: ({ rolling }) => Math.min(...(rolling?.rows ?? [NaN])),
    text: (name) =>
      `That is the weaker row by itself. The other one may be the first to fail as well, so the ${name} is below both.`,
  },
  meanOfRows: {
    value: ({ rolling }) => ((rolling?.rows[0] ?? NaN) + (rolling?.rows[1] ?? NaN)) / 2,
    text: (name) =>
      `That is the mean of the two rows. The hub does not last until the average row fails, but until the first: the ${name} is below both.`,
  },
} as const satisfies Record<string, PredictionSlip>;

export type PredictionSlipId = keyof typeof SLIPS;

export const isPredictionSlip = (id: string): id is PredictionSlipId => Object.hasOwn(SLIPS, id);

/** Where a wrong road ends, in SI. */
export const slipValue = (id: PredictionSlipId, outcomes: Outcomes): number =>
  SLIPS[id].value(outcomes);

/** The wrong road that a guess took, in words; empty where it is none of these. */
export function slipOf(
  guess: number,
  ids: readonly PredictionSlipId[],
  outcomes: Outcomes,
  tolerance: number,
): string {
  const taken = ids.find((id) => Math.abs(slipValue(id, outcomes) - guess) <= tolerance);
  return taken ? SLIPS[taken].text(quantity(outcomes.of).name, outcomes.of) : '';
}
