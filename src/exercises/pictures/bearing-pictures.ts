import type { Kind, Road } from '../kind.ts';
import { rowLoads, type OnBearing } from '../paper/bearing.ts';
import { given, mm, rounded } from '../phrase.ts';
import { rowsAsGiven } from './given-pictures.ts';
import type { BearingMeasure, BearingPicture, RowLoad } from './picture.ts';

/** A part that can be seen on a bearing. */
export type BearingPart<Item> = {
  /** The bearing at this step; the one of the solution unless said. */
  readonly on?: (item: Item) => OnBearing;
  /** Roads on which another distance was taken. */
  readonly taken?: Readonly<Record<string, BearingMeasure>>;
} & (
  | { readonly seen: 'row'; readonly row: RowLoad['row'] }
  /** A place of the load line: where a value puts it, in millimetres from the middle of the rows. */
  | {
      readonly seen: 'line';
      readonly of: BearingMeasure;
      readonly says: string;
      readonly to: (item: Item, value: number) => number;
    }
  /** A distance that other ones are taken for. */
  | { readonly seen: 'distance'; readonly of: BearingMeasure; readonly says: string }
  /** A direction of the side force. */
  | { readonly seen: 'side' }
);

/** A part that asks where the load line lies, in metres from the middle of the rows. */
export const LOAD_LINE = {
  ...{ seen: 'line', of: 'offset', says: 'offset' },
  to: (_item: unknown, value: number): number => 1000 * value,
} as const satisfies BearingPart<unknown>;

/** The same, where the lever about the inboard row is taken for it; and a part that asks how far a spacer moves it. */
export const LINE_WITH_SPACER = {
  line: { ...LOAD_LINE, taken: { 'from-inboard-centre': 'fromInboard' } },
  spacer: {
    ...LOAD_LINE,
    to: ({ offset_mm }: { readonly offset_mm: number }, value: number) => offset_mm + 1000 * value,
  },
} as const;

interface About<Item> {
  /** As the question gives it. */
  readonly given: (item: Item) => OnBearing;
  /** As the worked solution has it. */
  readonly end: (item: Item) => OnBearing;
  /** Whether the wheel is seen down to the road. */
  readonly toRoad?: true;
  /** Whether the spread is any: then neither it nor a row is told. */
  readonly anySpread?: true;
  readonly parts: Readonly<Record<string, BearingPart<Item>>>;
}

/** How many wheel loads fit on a row, and the least difference that can be seen, as a share of one and in millimetres. */
const MOST_SHARE = 3;
const LEAST = { share: 0.04, mm: 1.5 };
/** The farthest that a load line may lie from the middle and still be on the paper. */
const FARTHEST_mm = 110;

/** The pictures of a kind about two rows and a load line. */
export function bearingPictures<Item>(
  about: About<Item>,
): Required<Pick<Kind<Item>, 'picture' | 'solved' | 'wrong'>> {
  const { given: on, end, toRoad, anySpread, parts } = about;
  return {
    picture: (item) => {
      const picture = { ...rowsAsGiven(on(item)), ...seenDown(on(item), toRoad, true) };
      return anySpread
        ? { ...picture, measures: picture.measures.filter(({ of }) => of !== 'spread') }
        : picture;
    },
    solved: (item) => {
      const last = end(item);
      const moved = last.offset_mm !== on(item).offset_mm;
      return {
        ...bare(last, toRoad),
        ...(moved && { before_mm: on(item).offset_mm }),
        measures: [
          { of: 'offset', says: rounded(Math.abs(last.offset_mm) / 1000, 'mm', 1).figure },
        ],
        ...(!anySpread && {
          rows: (['outboard', 'inboard'] as const).map((row) => rowOf(row, last, true)),
        }),
      };
    },
    wrong: (item, road) => {
      const part = parts[road.part];
      if (!part) return undefined;
      const at = standing(part, item, road, part.on?.(item) ?? end(item));
      if (Math.abs(at.offset_mm) > FARTHEST_mm) return undefined;
      const taken = part.taken?.[road.slip];
      if (taken) return { ...right(part, at, toRoad), wrong: { measures: [yours(taken)] } };
      const wrong = wrongOf(part, item, road, at);
      return wrong && { ...right(part, at, toRoad), wrong };
    },
  };
}

/** The bearing with its load line where the right road has it, or where this row carries what the right road says. */
function standing<Item>(
  part: BearingPart<Item>,
  item: Item,
  { answer }: Road,
  at: OnBearing,
): OnBearing {
  switch (part.seen) {
    case 'line':
      return { ...at, offset_mm: part.to(item, answer) };
    case 'row': {
      // What one row gains, the other one loses, by moments about it.
      const outward = part.row === 'outboard' ? 1 : -1;
      const more = (answer - rowLoads(at)[part.row]) / at.load_N;
      return { ...at, offset_mm: at.offset_mm + outward * more * at.spread_mm };
    }
    case 'distance':
    case 'side':
      return at;
  }
}

const yours = (of: BearingMeasure) => ({ of, says: 'yours' });

/** What is right at this step, without its number. */
function right<Item>(
  part: BearingPart<Item>,
  at: OnBearing,
  toRoad: true | undefined,
): BearingPicture {
  const picture = bare(at, toRoad);
  switch (part.seen) {
    case 'row':
      return { ...picture, rows: [rowOf(part.row, at, false)] };
    case 'line':
    case 'distance':
      return { ...picture, measures: [{ of: part.of, says: part.says }] };
    case 'side':
      // Its size is asked for.
      return picture.side ? { ...picture, side: { ...picture.side, says: 'side force' } } : picture;
  }
}

function wrongOf<Item>(
  part: BearingPart<Item>,
  item: Item,
  { value, answer }: Road,
  { load_N, inward_N = 0 }: OnBearing,
): BearingPicture['wrong'] {
  switch (part.seen) {
    case 'row': {
      const share = value / load_N;
      const isSeen =
        Math.abs(share) <= MOST_SHARE && Math.abs(value - answer) / load_N >= LEAST.share;
      return isSeen ? { rows: [{ row: part.row, share, says: 'yours' }] } : undefined;
    }
    case 'line': {
      const offset_mm = part.to(item, value);
      const isSeen =
        Math.abs(offset_mm) <= FARTHEST_mm &&
        Math.abs(offset_mm - part.to(item, answer)) >= LEAST.mm;
      return isSeen ? { offset_mm, measures: [yours(part.of)] } : undefined;
    }
    case 'distance':
      return undefined;
    case 'side':
      return value * answer < 0 ? { side: { says: 'yours', inward: inward_N < 0 } } : undefined;
  }
}

function rowOf(row: RowLoad['row'], on: OnBearing, isTold: boolean): RowLoad {
  const load = rowLoads(on)[row];
  const says = isTold ? rounded(Math.abs(load), 'N', 0).figure : '';
  return { row, share: load / on.load_N, says };
}

const bare = (on: OnBearing, toRoad: true | undefined): BearingPicture => ({
  scene: 'bearing',
  ...{ offset_mm: on.offset_mm, spread_mm: on.spread_mm, measures: [] },
  load: given(on.load_N, 'N').figure,
  ...seenDown(on, toRoad, false),
});

/** The side force and the wheel down to the road, where they are spoken of. */
function seenDown(
  { inward_N, radius_mm, offset_mm, spread_mm }: OnBearing,
  toRoad: true | undefined,
  isGiven: boolean,
): Partial<BearingPicture> {
  return {
    ...(inward_N && {
      side: { says: rounded(Math.abs(inward_N), 'N', 0).figure, inward: inward_N > 0 },
    }),
    ...(toRoad && radius_mm !== undefined && { radius_mm }),
    ...(toRoad &&
      radius_mm !== undefined &&
      isGiven && {
        measures: [
          { of: 'offset', says: mm(Math.abs(offset_mm)).figure },
          { of: 'spread', says: mm(spread_mm).figure },
          { of: 'radius', says: mm(radius_mm).figure },
        ],
      }),
  };
}
