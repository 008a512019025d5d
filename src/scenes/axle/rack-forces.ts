import type { Side } from '#core/corner.ts';
import { sizeText } from '#core/display.ts';
import { quantity, type QuantityId } from '#core/quantities.ts';
import { flat } from '../corner/sketch.ts';
import type { Label, Mark } from '../marks.ts';
import { point, type Point } from '../plane.ts';
import type { AxleLook } from './axle-scene.ts';
import type { AxleStanding } from './axle-standing.ts';

/** Units of paper for a newton, the shortest arrow, and the longest that still keeps clear of its twin. */
const SCALE = 0.033;
const SHORTEST = 16;
const LONGEST = 58;

/** Below this, in newtons, there is no direction to draw. */
const LEAST_FORCE = 0.5;

/** How far beside the rack its net force is drawn, and the words of each rod on the other side of it: units of paper. */
const BESIDE = 15;
const WORDS_BESIDE = 16;

/** How far out along the rod from the rack’s end its words stand. */
const OUT_ALONG_ROD = 10;

const ROD_IDS = { left: 'leftRodForce', right: 'rightRodForce' } as const;

/** What each rod does to the rack, at its end; and both together, beside the rack’s middle. */
export function rackForces(axle: AxleStanding, look: AxleLook, unit: number): Mark[] {
  const { reaction, corners } = axle;
  const [left, right] = [corners.left.tieRod, corners.right.tieRod];
  if (!reaction || !left || !right) return [];
  const middle = flat({ view: 'top', side: 'left' }, left.inner).up;
  const hub = flat({ view: 'top', side: 'left' }, corners.left.wheelCentre).up;
  const away = Math.sign(middle - hub);
  const each = (side: Side): Mark[] => {
    const of = reaction[side].tieRod;
    const at = flat({ view: 'top', side }, (side === 'left' ? left : right).inner);
    const id = ROD_IDS[side];
    if (!of || !look.measures.includes(id)) return [];
    const words = point(
      at.across + Math.sign(at.across) * OUT_ALONG_ROD * unit,
      at.up - away * WORDS_BESIDE * unit,
    );
    const text = sizeText(of.rodForce, quantity(id), look.units);
    return pushed(id, at, of.rackForce, { text, at: words, here: true }, unit);
  };
  const beside = point(0, middle + away * BESIDE * unit);
  return [
    ...each('right'),
    ...each('left'),
    ...(look.measures.includes('netRackForce')
      ? pushed(
          'netRackForce',
          beside,
          reaction.rackForce,
          {
            text: `rack ${sizeText(reaction.rackForce, quantity('netRackForce'), look.units)}`,
            at: point(0, beside.up + away * WORDS_BESIDE * unit),
            here: true,
          },
          unit,
        )
      : []),
  ];
}

/** A push along the rack, positive to the left, which is to the right on paper. */
function pushed(
  id: QuantityId,
  at: Point,
  force: number,
  words: Pick<Label, 'text' | 'at' | 'here'>,
  unit: number,
): Mark[] {
  const some = Math.abs(force) >= LEAST_FORCE;
  const run = some
    ? Math.sign(force) * Math.min(LONGEST, Math.max(SHORTEST, SCALE * Math.abs(force))) * unit
    : 0;
  const to = point(at.across + run, at.up);
  const common = { role: 'force', quantity: id } as const;
  return [
    ...(some ? [{ kind: 'arrow', key: `force-${id}`, ...common, from: at, to } as const] : []),
    { kind: 'label', key: `force-${id}-name`, ...common, ...words },
  ];
}
