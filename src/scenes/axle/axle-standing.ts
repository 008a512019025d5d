import type { Action } from '#core/action.ts';
import { axleReaction, type AxleReaction, type Sides } from '#core/axle.ts';
import type { Corner, Side } from '#core/corner.ts';
import type { LoadCase } from '#core/load-cases.ts';
import { mirroredCorner } from '#core/mirror.ts';
import { vector } from '#core/vector.ts';
import { feltAction, shaftDirection, trailOfTyre } from '../corner/loads.ts';
import type { Standing } from '../corner/standing.ts';
import type { Setting } from '../setting.ts';
import { AXLE_CASE_IDS, AXLE_CASES, type AxleCase } from './axle-cases.ts';

/** A load on one wheel of an axle, and what it does to the carrier. */
export interface AxleLoad {
  readonly which: AxleCase | 'crown';
  readonly load: LoadCase;
  readonly action: Action;
}

/** Both front wheels straight ahead, the right one the left one’s mirror image, and what is set to act on each. */
export interface AxleStanding {
  readonly corners: Sides<Corner>;
  readonly loads: Sides<readonly AxleLoad[]>;
  /** Absent where a tie rod’s line passes its axis and can hold nothing. */
  readonly reaction: AxleReaction | undefined;
}

/** The axle that a standing corner belongs to: what has been changed holds for both of its sides. */
export function axleStanding({ ahead, gear, setting }: Standing): AxleStanding {
  const [left, right] =
    ahead.side === 'left' ? [ahead, mirroredCorner(ahead)] : [mirroredCorner(ahead), ahead];
  const loads = { left: loadsOn(left, setting), right: loadsOn(right, setting) };
  const cases = (side: Side): readonly LoadCase[] => loads[side].map(({ load }) => load);
  const reaction = axleReaction(
    { left, right, gear },
    { left: cases('left'), right: cases('right') },
  );
  return {
    corners: { left, right },
    loads,
    reaction: reaction.ok ? reaction.value : undefined,
  };
}

function loadsOn(corner: Corner, setting: Setting): readonly AxleLoad[] {
  const along = AXLE_CASE_IDS.flatMap((which) => {
    const force = setting[AXLE_CASES[which].loads[corner.side]];
    return force === 0 ? [] : [loaded(corner, which, loadCase(corner, which, force, setting))];
  });
  if (setting.crown === 0) return along;
  const across = {
    kind: 'lateral',
    force: setting.crown,
    pneumaticTrail: trailOfTyre(setting.crown),
  } as const;
  return [...along, loaded(corner, 'crown', across)];
}

const loaded = (corner: Corner, which: AxleLoad['which'], load: LoadCase): AxleLoad => ({
  which,
  load,
  action: feltAction(corner, load),
});

function loadCase(corner: Corner, which: AxleCase, force: number, setting: Setting): LoadCase {
  switch (which) {
    case 'brake':
      return { kind: 'brake-on-carrier', force };
    case 'shaft': {
      const rise = setting[corner.side === 'left' ? 'leftShaftRise' : 'rightShaftRise'];
      return { kind: 'shaft', force, shaftDirection: shaftDirection(corner, rise) };
    }
    case 'edge':
    case 'rolling':
      return { kind: 'impact', force: vector(-force, 0, 0) };
  }
}
