import type { Kind, Road } from '../kind.ts';
import { momentWithLever } from '../paper/along.ts';
import { si } from '../phrase.ts';
import { brakesAsGiven } from './given-pictures.ts';
import type { AxlePicture, AxleTurns, Picture, Sense } from './picture.ts';

/** What of an axle turns with the sign of a part: positive to the left. */
export type Turned = Exclude<keyof AxleTurns, 'rod'>;

interface About<Item> {
  readonly brakes: (item: Item) => {
    readonly left_N: number;
    readonly right_N: number;
    readonly scrub_mm: number;
  };
  readonly rack?: (item: Item) => AxlePicture['rack'];
  readonly parts: Readonly<Record<string, Turned>>;
  /** Which way each of them really goes. */
  readonly turns: (item: Item) => AxleTurns;
  /** Pictures of roads that are told otherwise. */
  readonly other?: (item: Item, road: Road, base: AxlePicture) => Picture | undefined;
}

export const senseOf = (value: number): Sense => (value < 0 ? -1 : 1);

/** Which way a braking force alone turns its wheel, by the core. */
export const brakeSense = (side: 'left' | 'right', scrub_mm: number): Sense =>
  senseOf(momentWithLever(si(scrub_mm, 'mm'), side, { by: 'brake', force: 1 }));

/** Slips that have both wheels turn the same way. */
const ADDED = new Set(['added-up', 'sizes-added']);

/** The pictures of a kind about both brakes of an axle: which way the wheels, the rack and the car are turned. */
export function axlePictures<Item>(
  about: About<Item>,
): Required<Pick<Kind<Item>, 'picture' | 'solved' | 'wrong'>> {
  const { brakes, rack, parts, turns, other } = about;
  const base = (item: Item): AxlePicture => {
    const { left_N, right_N, scrub_mm } = brakes(item);
    const place = rack?.(item);
    return { ...brakesAsGiven(left_N, right_N, scrub_mm), ...(place && { rack: place }) };
  };
  return {
    picture: base,
    solved: (item) => ({ ...base(item), turns: turns(item) }),
    wrong: (item, road) => {
      const told = other?.(item, road, base(item));
      if (told) return told;
      const turned = parts[road.part];
      return turned && wrongTurn(base(item), turned, road, turns(item));
    },
  };
}

/** What goes the wrong way, or is counted the wrong way, beside what really happens. */
export function wrongTurn(
  base: AxlePicture,
  turned: Turned,
  { slip, value, answer }: Road,
  turns: AxleTurns,
): AxlePicture | undefined {
  const { left, right } = turns;
  const wheels = { ...(left && { left }), ...(right && { right }) };
  if (ADDED.has(slip) && left)
    // Both counted as if they turned the way the left one does.
    return { ...base, turns: wheels, wrong: { right: left } };
  if (value * answer > 0) return undefined;
  return {
    ...base,
    turns: { ...wheels, [turned]: senseOf(answer) },
    wrong: { [turned]: senseOf(value) },
  };
}
