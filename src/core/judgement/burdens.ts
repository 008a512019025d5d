import type { JudgedId } from './judged-quantities.ts';

/** A result that may get worse by growing in size, or by shrinking, with what to say of either. */
export interface Burden {
  /** Which way is worse: `more` in size, `less` in size, or `up` and `down` as the numbers go. */
  readonly worse: 'more' | 'less' | 'up' | 'down';
  readonly onWorse: string;
  readonly onBetter: string;
  readonly onUnknown: string;
}

/** What of a judgement a driver or a shop will feel or has to look after, in the order in which it is told. */
export const BURDENS: Partial<Readonly<Record<JudgedId, Burden>>> = {
  splitRimForceUnassisted: {
    worse: 'more',
    onWorse: 'On split friction the steering wheel pulls harder at the hands.',
    onBetter: 'On split friction the steering wheel pulls less at the hands.',
    onUnknown: 'Whether split friction pulls harder or less at the hands is not known.',
  },
  brakingRimForce: {
    worse: 'more',
    onWorse: 'Braking alike on both sides pulls at the steering wheel more than before.',
    onBetter: 'Braking alike on both sides pulls at the steering wheel less than before.',
    onUnknown: 'Whether braking alike on both sides pulls more or less than before is not known.',
  },
  blowRimForceUnassisted: {
    worse: 'more',
    onWorse: 'A blow on one wheel reaches the hands harder.',
    onBetter: 'A blow on one wheel reaches the hands less hard.',
    onUnknown: 'Whether a blow on one wheel reaches the hands harder is not known.',
  },
  driveMoment: {
    worse: 'more',
    onWorse: 'Driving hard turns each wheel harder about its axis: the two have to cancel.',
    onBetter: 'Driving hard turns each wheel less about its axis.',
    onUnknown: 'Whether driving hard turns each wheel more about its axis is not known.',
  },
  outboardMeanLoad: {
    worse: 'more',
    onWorse: 'The outboard row of the wheel bearing carries more.',
    onBetter: 'The outboard row of the wheel bearing carries less.',
    onUnknown: 'Whether the outboard row of the wheel bearing carries more is not known.',
  },
  inboardMeanLoad: {
    worse: 'more',
    onWorse: 'The inboard row of the wheel bearing carries more.',
    onBetter: 'The inboard row of the wheel bearing carries less.',
    onUnknown: 'Whether the inboard row of the wheel bearing carries more is not known.',
  },
  hubLife: {
    worse: 'down',
    onWorse: 'The wheel bearing is rated for a shorter distance.',
    onBetter: 'The wheel bearing is rated for a longer distance.',
    onUnknown: 'Whether the wheel bearing is rated for a shorter distance is not known.',
  },
  outerSidewall: {
    worse: 'up',
    onWorse: 'The tyre stands farther out: less room to the arch.',
    onBetter: 'The tyre stands less far out: more room to the arch.',
    onUnknown: 'Whether the tyre stands farther out is not known.',
  },
  innerSidewall: {
    worse: 'down',
    onWorse: 'The tyre reaches farther in: less room to strut, arm and brake hose.',
    onBetter: 'The tyre reaches less far in: more room to strut, arm and brake hose.',
    onUnknown: 'Whether the tyre reaches farther in is not known.',
  },
  innerEdge: {
    worse: 'down',
    onWorse: 'The rim reaches farther in: less room to caliper and tie rod.',
    onBetter: 'The rim reaches less far in: more room to caliper and tie rod.',
    onUnknown: 'Whether the rim reaches farther in is not known.',
  },
  trueSpeed: {
    worse: 'up',
    onWorse: 'The car is faster than its speedometer shows, against before.',
    onBetter: 'The car is slower than its speedometer shows, against before.',
    onUnknown: 'Whether the speedometer shows more or less than before is not known.',
  },
  loadShare: {
    worse: 'up',
    onWorse: 'The tyre is nearer to what its load index allows.',
    onBetter: 'The tyre is farther from what its load index allows.',
    onUnknown: 'Whether the tyre is nearer to what its load index allows is not known.',
  },
  engagementSpare: {
    worse: 'down',
    onWorse: 'The threads hold over a shorter length.',
    onBetter: 'The threads hold over a longer length.',
    onUnknown: 'Whether the threads hold over a shorter length is not known.',
  },
};

export const BURDEN_IDS = Object.keys(BURDENS) as readonly JudgedId[];
