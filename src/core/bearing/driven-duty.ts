import type { DutyPhase } from './hub-rating.ts';

/** The kinds of driving that a duty cycle is made of. In bends, `outer` has this wheel on the outside. */
export const DRIVING_KINDS = ['straight', 'rough', 'inner', 'outer'] as const;

export type DrivingKind = (typeof DRIVING_KINDS)[number];

/** A phase of a duty cycle that says what kind of driving it is. */
export interface DrivenPhase extends DutyPhase {
  readonly kind: DrivingKind;
}

/** How a car is driven, against its own duty cycle. */
export interface Driving {
  /** All loads, as a factor; more than 0. */
  readonly load: number;
  /** Shares of the distance that bends have gained, from straight driving. */
  readonly outer: number;
  readonly inner: number;
  /** Share of the distance on rough road, taken from straight driving. */
  readonly rough: number;
  /** Side force in bends and the load it shifts from wheel to wheel, as a factor; 0 or more. */
  readonly pace: number;
}

/** Its own duty cycle. */
export const AS_DRIVEN: Driving = { load: 1, outer: 0, inner: 0, rough: 0, pace: 1 };

/**
 * Wheel load on a rough road, against a smooth one.
 *
 * Source: SKF (UK) Racing Unit, Tech Note 2, Calculation of wheel bearing loads: a fifth more for rough
 * conditions. Single blows are far above it, and no fatigue.
 */
export const ROUGH_ROAD = 1.2;

/**
 * The duty cycle of a car that is driven in another way: shares of bends and of rough road are taken from
 * straight driving; in bends at another pace, side force and shifted wheel load change by the same factor.
 *
 * @param duty with one phase straight ahead (no lateral force), one with the force inward, one outward
 * @returns straight, rough, inner, outer; the shares add up to 1
 * @throws RangeError for a duty of other phases, or for shares that leave less than nothing straight ahead
 */
export function drivenDuty(duty: readonly DutyPhase[], driving: Driving): readonly DrivenPhase[] {
  const straight = onePhase(duty, 'straight', (inward) => inward === 0);
  const bend = (kind: 'inner' | 'outer') => {
    const wanted = kind === 'outer' ? 1 : -1;
    const { share, vertical, inward } = onePhase(
      duty,
      kind,
      (force) => Math.sign(force) === wanted,
    );
    const shifted = driving.pace * (vertical - straight.vertical);
    const phase: DrivenPhase = {
      kind,
      share: Math.max(0, share + driving[kind]),
      vertical: driving.load * (straight.vertical + shifted),
      inward: driving.load * driving.pace * inward,
    };
    return { phase, gained: phase.share - share };
  };
  const [inner, outer] = [bend('inner'), bend('outer')];
  const vertical = driving.load * straight.vertical;
  const left = straight.share - inner.gained - outer.gained - driving.rough;
  if (left < -ROUNDING) throw new RangeError(`a share of ${left} is left to drive straight ahead`);
  return [
    { kind: 'straight', share: Math.max(0, left), vertical, inward: 0 },
    { kind: 'rough', share: driving.rough, vertical: ROUGH_ROAD * vertical, inward: 0 },
    inner.phase,
    outer.phase,
  ];
}

const ROUNDING = 1e-9;

function onePhase(
  duty: readonly DutyPhase[],
  kind: DrivingKind,
  is: (inward: number) => boolean,
): DutyPhase {
  const [phase, another] = duty.filter(({ inward }) => is(inward));
  if (phase !== undefined && another === undefined) return phase;
  throw new RangeError(`a duty cycle without exactly one phase that is ${kind}`);
}
