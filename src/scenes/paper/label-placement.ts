import type { Place } from './frame.ts';

/** Words that want to stand beside a place. */
export interface Wish {
  readonly key: string;
  readonly at: Place;
  readonly text: string;
  /** Clear space to keep from the place itself. */
  readonly clearance: number;
  /** How far the thing named reaches to either side of the place, where that is more. */
  readonly reach?: number;
  /** The words go to the place itself. */
  readonly here?: boolean;
}

/** Where words ended up: the middle of their line box. */
export interface Seat {
  readonly x: number;
  readonly y: number;
  readonly halfWidth: number;
}

/** A straight stroke that words should not lie on. */
export interface Stroke {
  readonly from: Place;
  readonly to: Place;
  /** How much it hurts to cross it: 1 for a thin line, more for what matters. */
  readonly weight: number;
}

const TEXT_SIZE = 13;
const HALF_LINE = 8.5;
const MARGIN = 3;
/** Texts that touch are as bad as ones that lie on each other by so much: any free seat is better. */
const TOUCHING = 5;

/** Room a text takes, from the mean advance of the figure face (0.53 em a letter, measured on its own labels). */
export const textWidth = (text: string): number => text.length * TEXT_SIZE * 0.53 + 4;

/**
 * Seats each text beside its place: of the spots around it, the one with the least overlap with texts
 * already seated, strokes and the paper's edge. First come, first served, so the order is the importance.
 */
export function seated(
  wishes: readonly Wish[],
  strokes: readonly Stroke[],
  paper: { readonly width: number; readonly height: number },
): ReadonlyMap<string, Seat> {
  const seats = new Map<string, Seat>();
  for (const wish of wishes) {
    let best: Seat | undefined;
    let least = Infinity;
    for (const [seat, distance] of spotsAround(wish)) {
      // Most words find a free seat close by, and the many farther off need no looking at.
      if (distance >= least) continue;
      const cost =
        distance +
        200 * overhang(seat, paper) +
        60 * overlapWith(seat, seats.values()) +
        crossings(seat, strokes);
      if (cost < least) {
        least = cost;
        best = seat;
      }
    }
    if (best) seats.set(wish.key, within(best, paper));
  }
  return seats;
}

/** Candidate seats, nearest first: right, left, below, above and the diagonals, at growing distance. */
function* spotsAround({
  at,
  text,
  clearance,
  reach = 0,
  here = false,
}: Wish): Generator<[Seat, number]> {
  const halfWidth = textWidth(text) / 2;
  if (here) {
    yield [{ ...at, halfWidth }, 0];
    return;
  }
  for (const [ring, gap] of [4, 16, 30, 46, 64, 84].entries()) {
    const sideways = halfWidth + Math.max(clearance, reach) + gap;
    const upright = HALF_LINE + clearance + gap;
    const cost = ring * 9;
    const seat = (dx: number, dy: number): Seat => ({ x: at.x + dx, y: at.y + dy, halfWidth });
    yield [seat(sideways, 0), cost];
    yield [seat(-sideways, 0), cost + 1];
    yield [seat(sideways * 0.85, upright * 0.8), cost + 2];
    yield [seat(-sideways * 0.85, upright * 0.8), cost + 2.5];
    yield [seat(sideways * 0.85, -upright * 0.8), cost + 2];
    yield [seat(-sideways * 0.85, -upright * 0.8), cost + 2.5];
    yield [seat(0, upright), cost + 3];
    yield [seat(0, -upright), cost + 3];
  }
}

/** Words as far from their place as this, on paper, are tied to it by a line. */
const FAR = 30;

/** The line from words to the place that they name, where that is too far off to be plain without; it ends short of the place. */
export function leader({ x, y, halfWidth }: Seat, { at, clearance }: Wish): Stroke | undefined {
  const from = {
    x: Math.min(x + halfWidth, Math.max(x - halfWidth, at.x)),
    y: Math.min(y + HALF_LINE, Math.max(y - HALF_LINE, at.y)),
  };
  const length = Math.hypot(at.x - from.x, at.y - from.y);
  if (length <= FAR) return undefined;
  const share = 1 - clearance / length;
  const to = { x: from.x + (at.x - from.x) * share, y: from.y + (at.y - from.y) * share };
  return { from, to, weight: 1 };
}

const overhang = ({ x, y, halfWidth }: Seat, paper: { width: number; height: number }): number =>
  Math.max(0, MARGIN + halfWidth - x) +
  Math.max(0, x + halfWidth + MARGIN - paper.width) +
  Math.max(0, MARGIN + HALF_LINE - y) +
  Math.max(0, y + HALF_LINE + MARGIN - paper.height);

function overlapWith(seat: Seat, others: Iterable<Seat>): number {
  let overlap = 0;
  for (const other of others) {
    const across = seat.halfWidth + other.halfWidth + 4 - Math.abs(seat.x - other.x);
    const upright = 2 * HALF_LINE - Math.abs(seat.y - other.y);
    if (across > 0 && upright > 0) overlap += TOUCHING + Math.min(across, upright);
  }
  return overlap;
}

function crossings(seat: Seat, strokes: readonly Stroke[]): number {
  let cost = 0;
  for (const stroke of strokes) if (crosses(seat, stroke)) cost += 6 * stroke.weight;
  return cost;
}

/** Whether a stroke passes through the text's box: most lie wholly to one side of it, the others are clipped. */
function crosses(seat: Seat, stroke: Stroke): boolean {
  const { x, y, halfWidth } = seat;
  const { from, to } = stroke;
  if (from.x < x - halfWidth && to.x < x - halfWidth) return false;
  if (from.x > x + halfWidth && to.x > x + halfWidth) return false;
  if (from.y < y - HALF_LINE && to.y < y - HALF_LINE) return false;
  if (from.y > y + HALF_LINE && to.y > y + HALF_LINE) return false;
  return clips(seat, stroke);
}

/** Liang–Barsky clipping of a stroke by the text's box (from memory): whether anything is left. */
function clips({ x, y, halfWidth }: Seat, { from, to }: Stroke): boolean {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  let enter = 0;
  let leave = 1;
  const edges = [
    [-dx, from.x - (x - halfWidth)],
    [dx, x + halfWidth - from.x],
    [-dy, from.y - (y - HALF_LINE)],
    [dy, y + HALF_LINE - from.y],
  ] as const;
  for (const [run, room] of edges) {
    if (run === 0) {
      if (room < 0) return false;
    } else if (run < 0) enter = Math.max(enter, room / run);
    else leave = Math.min(leave, room / run);
  }
  return enter <= leave;
}

const within = (seat: Seat, paper: { width: number; height: number }): Seat => ({
  ...seat,
  x: Math.min(paper.width - MARGIN - seat.halfWidth, Math.max(MARGIN + seat.halfWidth, seat.x)),
  y: Math.min(paper.height - MARGIN - HALF_LINE, Math.max(MARGIN + HALF_LINE, seat.y)),
});
