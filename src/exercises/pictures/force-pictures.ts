import type { Corner, Side } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { mirroredCorner } from '#core/mirror.ts';
import type { Earlier, Kind, Road } from '../kind.ts';
import { withNumber, type OnCorner } from './corner-pictures.ts';
import type { CornerMeasure, CornerPicture, ForceAt, Picture, Sense } from './picture.ts';

/** A force along the car as a picture needs it. */
export interface SeenForce {
  readonly at: ForceAt;
  /** In newtons, positive forward. */
  readonly force: number;
  readonly says: string;
}

/** A part that is a lever of a force, or the moment of one. */
interface ForcePart<Item> {
  readonly seen: 'lever' | 'moment';
  readonly force: (item: Item) => SeenForce;
  /** The corner as the parts before have it, as if it were a left one; the one of the question unless said. */
  readonly on?: (item: Item, earlier: Earlier) => Corner;
  /** Roads on which another length was taken for the lever. */
  readonly taken?: Readonly<Record<string, CornerMeasure>>;
}

interface About<Item> {
  readonly side: (item: Item) => Side;
  /** The corner, as if it were a left one. */
  readonly left: (item: Item) => Corner;
  /** What the question gives; the forces stand where the question has them act. */
  readonly given: (item: Item) => OnCorner & { readonly corner?: Corner };
  /** The forces where they count for the carrier. */
  readonly forces: (item: Item) => readonly SeenForce[];
  readonly parts: Readonly<Record<string, ForcePart<Item>>>;
  /** Pictures of parts that are something else. */
  readonly other?: Kind<Item>['wrong'];
}

/** The longest lever that fits on the paper, and the least difference that can be seen, in metres. */
const LONGEST = 0.3;
const LEAST = 0.0015;

/** The lever that a force along the car has in the front view: square to the axis. */
const leverAt = (at: ForceAt): CornerMeasure => (at === 'road' ? 'leverAtRoad' : 'shortest');

/** Slips that take the lever of the other height, whatever they are called. */
const OTHER_HEIGHT = new Set([
  'other-height',
  'at-the-road',
  'at-the-centre',
  'scrub-radius',
  'spindle-offset',
  'other-lever',
]);

/**
 * The pictures of a kind about forces along the car and their levers: from the front, where a lever is seen in its true
 * length, and from above where a direction has gone wrong.
 */
export function forcePictures<Item>(
  about: About<Item>,
): Required<Pick<Kind<Item>, 'picture' | 'solved' | 'wrong'>> {
  const { side, left, given, forces, parts, other } = about;
  const onSide = (item: Item, ofLeft: Corner): Corner =>
    side(item) === 'left' ? ofLeft : mirroredCorner(ofLeft);
  const corner = (item: Item): Corner => onSide(item, left(item));
  const front = (of: Corner): Pick<CornerPicture, 'scene' | 'view' | 'corner'> => ({
    ...{ scene: 'corner', view: 'front' },
    corner: of,
  });
  return {
    picture: (item) => ({ ...front(corner(item)), ...given(item) }),
    solved: (item) => {
      const counted = forces(item);
      return {
        ...front(corner(item)),
        forces: counted.map(onCorner),
        measures: [...new Set(counted.map(({ at }) => leverAt(at)))].map((of) => ({
          of,
          says: withNumber(of, 'lever', corner(item)),
        })),
      };
    },
    wrong: (item, road) => {
      const part = parts[road.part];
      if (!part) return other?.(item, road);
      const force = part.force(item);
      const seenOn = part.on ? onSide(item, part.on(item, road.earlier)) : corner(item);
      if (part.seen === 'moment' && turnsOver(road)) return fromAbove(seenOn, force, road);
      if (road.slip === 'both-wheels') return bothWheels(side(item), seenOn, force);
      const right: CornerPicture = {
        ...front(seenOn),
        forces: [onCorner(force)],
        measures: [{ of: leverAt(force.at), says: 'lever' }],
      };
      const otherAt = force.at === 'road' ? 'centre' : 'road';
      if (OTHER_HEIGHT.has(road.slip) && !part.taken?.[road.slip])
        return {
          ...right,
          wrong: {
            measures: [{ of: leverAt(otherAt), says: 'yours' }],
            forces: [onCorner({ ...force, at: otherAt, says: '' })],
          },
        };
      const taken = part.taken?.[road.slip];
      if (taken) return { ...right, wrong: { measures: [{ of: taken, says: 'yours' }] } };
      const per = part.seen === 'moment' ? Math.abs(force.force) : 1;
      const [length, answer] = [Math.abs(road.value / per), Math.abs(road.answer / per)];
      if (
        Math.max(length, answer) > LONGEST ||
        Math.abs(length - answer) < LEAST ||
        road.value * road.answer < 0
      )
        return undefined;
      return { ...right, wrong: { lever: { at: force.at, length } } };
    },
  };
}

const onCorner = ({ at, force, says }: SeenForce) => ({
  ...{ at, says },
  towards: [Math.sign(force), 0, 0] as const,
});

/** The right size the wrong way round. */
const turnsOver = ({ value, answer }: Road): boolean =>
  Math.abs(value + answer) < 1e-6 * Math.abs(answer);

const fromAbove = (corner: Corner, force: SeenForce, { answer }: Road): CornerPicture => ({
  ...{ scene: 'corner', view: 'top', corner },
  forces: [onCorner(force)],
  turn: { left: answer > 0, says: 'turns it' },
  wrong: { turn: { left: answer < 0, says: 'yours' } },
});

/** The moment of the other wheel counted as well. */
function bothWheels(side: Side, corner: Corner, { at, force, says }: SeenForce): Picture {
  const own = { says, ahead: force };
  const other = { says: 'yours too', ahead: force, wrong: true };
  const { scrubRadius, spindleOffset } = measure(corner);
  const offset_mm = 1000 * (at === 'road' ? scrubRadius : spindleOffset);
  // A force ahead, outboard of an axis, turns a left wheel to the right.
  const sense = (which: Side): Sense => {
    const turnsLeft = (which === 'left' ? -1 : 1) * force * offset_mm > 0;
    return turnsLeft ? 1 : -1;
  };
  return {
    ...{ scene: 'axle', scrub_mm: offset_mm },
    left: side === 'left' ? own : other,
    right: side === 'right' ? own : other,
    turns: { [side]: sense(side) },
    // As if it turned the same way.
    wrong: side === 'left' ? { right: sense('left') } : { left: sense('right') },
  };
}
