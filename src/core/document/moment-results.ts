import { senseOf } from '../action.ts';
import { stanceOf, type Corner } from '../corner.ts';
import { failure, success, type Outcome } from '../fault.ts';
import { handwheelTorque } from '../handwheel.ts';
import { actionOn } from '../load-cases.ts';
import { reactionTo, type Reaction } from '../reaction.ts';
import type { MomentResult } from './corner-result.ts';
import { unsigned0 } from './edge-units.ts';
import type { CornerSetup } from './set-up.ts';

/** What each force of a document does about the steering axis; nothing where it has no forces. */
export function momentResults(
  corner: Corner,
  setup: CornerSetup,
): Outcome<readonly MomentResult[] | undefined> {
  if (setup.loads === undefined) return success(undefined);
  const stance = stanceOf(corner);
  const results: MomentResult[] = [];
  for (const load of setup.loads) {
    const reaction = reactionTo(corner, [actionOn(corner, stance, load)]);
    if (!reaction.ok)
      return failure(...reaction.faults.map((fault) => ({ ...fault, path: causeOf(setup) })));
    const { moment } = reaction.value;
    results.push({
      case: load.kind,
      moment_Nm: unsigned0(moment),
      sense: senseOf(corner.side, moment),
      ...wayToTheHands(reaction.value, setup),
    });
  }
  return success(results);
}

function wayToTheHands(
  { tieRod }: Reaction,
  { gear }: CornerSetup,
): Pick<MomentResult, 'rod_N' | 'rack_N' | 'handwheel_Nm'> {
  if (tieRod === undefined || gear === undefined) return {};
  return {
    rod_N: unsigned0(tieRod.rodForce),
    rack_N: unsigned0(tieRod.rackForce),
    handwheel_Nm: unsigned0(handwheelTorque(tieRod.rackForce, gear)),
  };
}

/** A tie rod that could steer the corner of the document has lost its lever by what was done to it since. */
const causeOf = ({ rotation }: CornerSetup): string => (rotation === 0 ? 'change' : 'rotation_deg');
