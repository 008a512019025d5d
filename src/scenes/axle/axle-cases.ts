import type { Side } from '#core/corner.ts';
import { BODIES_CASES, type BodiesCase } from '../bodies/cases.ts';
import type { Setting } from '../setting.ts';
import type { AxleLoadId } from './axle-parameters.ts';

/** Who holds or turns both wheels while forces act on them along the car. */
export type AxleCase = BodiesCase;

interface CaseFacts {
  readonly name: string;
  readonly title: string;
  /** The load on each side. */
  readonly loads: Readonly<Record<Side, AxleLoadId>>;
  /** What a positive load does: 1 pulls rearward, −1 forward. */
  readonly rearward: 1 | -1;
  /** Units of paper for a newton. */
  readonly scale: number;
}

/** Forces of road and edge are drawn to one scale, the far smaller ones of a rolling tyre to a larger one. */
const SCALE = 0.011;
const SCALE_ROLLING = 0.22;

export const AXLE_CASES = {
  brake: {
    name: BODIES_CASES.brake.name,
    title: BODIES_CASES.brake.title,
    loads: { left: 'leftBrake', right: 'rightBrake' },
    rearward: 1,
    scale: SCALE,
  },
  shaft: {
    name: BODIES_CASES.shaft.name,
    title: BODIES_CASES.shaft.title,
    loads: { left: 'leftDrive', right: 'rightDrive' },
    rearward: -1,
    scale: SCALE,
  },
  edge: {
    name: BODIES_CASES.edge.name,
    title: BODIES_CASES.edge.title,
    loads: { left: 'leftBlow', right: 'rightBlow' },
    rearward: 1,
    scale: SCALE,
  },
  rolling: {
    name: BODIES_CASES.rolling.name,
    title: BODIES_CASES.rolling.title,
    loads: { left: 'leftDrag', right: 'rightDrag' },
    rearward: 1,
    scale: SCALE_ROLLING,
  },
} as const satisfies Record<AxleCase, CaseFacts>;

export const AXLE_CASE_IDS = Object.keys(AXLE_CASES) as readonly AxleCase[];

/** The case whose loads are set, where there are any. */
export const caseIn = (setting: Setting): AxleCase | undefined =>
  AXLE_CASE_IDS.find((id) => {
    const { left, right } = AXLE_CASES[id].loads;
    return setting[left] !== 0 || setting[right] !== 0;
  });

/** The case whose loads are among these parameters; braking where there are none. */
export const caseOf = (ids: readonly string[]): AxleCase =>
  AXLE_CASE_IDS.find((id) => ids.includes(AXLE_CASES[id].loads.left)) ?? 'brake';

/** Of one side: how hard the tyre is pulled rearward, in newtons. */
export const rearwardForce = (which: AxleCase, side: Side, setting: Setting): number =>
  AXLE_CASES[which].rearward * setting[AXLE_CASES[which].loads[side]];

/**
 * The loads of one case handed over to another: the same force on the tyre, held by somebody else. Rolling
 * resistance is so small beside the others that it begins at what is usual.
 */
export function handedOver(setting: Setting, from: AxleCase, to: AxleCase): Partial<Setting> {
  if (from === to) return {};
  const small = from === 'rolling' || to === 'rolling';
  const forceOn = (side: Side): number =>
    AXLE_CASES[to].rearward * (small ? USUAL_REARWARD[to] : rearwardForce(from, side, setting));
  return {
    [AXLE_CASES[from].loads.left]: 0,
    [AXLE_CASES[from].loads.right]: 0,
    [AXLE_CASES[to].loads.left]: forceOn('left'),
    [AXLE_CASES[to].loads.right]: forceOn('right'),
  };
}

/** In newtons on each tyre. */
const USUAL_REARWARD: Readonly<Record<AxleCase, number>> = {
  brake: 2500,
  shaft: 2500,
  edge: 4000,
  rolling: 60,
};
