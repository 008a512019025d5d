import type { Fixing } from '#core/fastening/fixing.ts';
import { path } from '../corner/sketch.ts';
import type { Mark } from '../marks.ts';
import { point, type Point } from '../plane.ts';
import { corners, hatching, mirrored, type Box } from './hatching.ts';
import type { JointLengths } from './joint-lengths.ts';

/** How far the section reaches from the fastener’s axis, and how far a hole is wider than the shank, each side. */
const REACH = 25;
const CLEARANCE = 0.7;

/** Half of a head or nut, and its seat’s rim; how deep a cone or a ball goes into the wheel, and how long a head is. */
const HEAD = 10;
const SEAT_RIM = 12;
const SEAT_DEPTH = 5;
const HEAD_LENGTH = 12;

/** The hub in section. A bolt’s hole is threaded: its crests are outlined and its root is thin, as ISO 6410 has it. */
export function hubSection(fixing: Fixing, lengths: JointLengths): Mark[] {
  const { hubBack, root, diameter } = lengths;
  const isBolt = fixing.fastener === 'bolt';
  const box = { left: hubBack, right: 0, bottom: isBolt ? root : diameter / 2, top: REACH };
  const rootLine = (side: 1 | -1): Mark =>
    thin(`hub-root-${side}`, [
      point(hubBack, (side * diameter) / 2),
      point(0, (side * diameter) / 2),
    ]);
  return [...sectioned(box, 'hub', 'part', true), ...(isBolt ? [rootLine(1), rootLine(-1)] : [])];
}

/** The spacer in section, a plain ring that the fasteners pass through. */
export const spacerSection = ({ spacer, diameter }: JointLengths): Mark[] =>
  spacer === 0
    ? []
    : sectioned(
        { left: 0, right: spacer, bottom: diameter / 2 + CLEARANCE, top: REACH },
        'spacer',
        'lever',
        false,
      );

/** The wheel in section, with its seat; pale where it sat without the spacer. */
export function wheelSection(
  fixing: Fixing,
  { spacer, seat, diameter }: JointLengths,
  before = false,
): Mark[] {
  const [left, right] = before ? [0, seat - spacer] : [spacer, seat];
  const hole = diameter / 2 + CLEARANCE;
  const seatLine = seatPoints(fixing.seat, right, hole);
  const upper = [point(left, hole), ...seatLine, point(right, REACH), point(left, REACH)];
  const key = before ? 'wheel-before' : 'wheel';
  const pen = {
    role: 'wheel',
    filled: !before,
    line: before ? 'thin' : 'outline',
    before,
  } as const;
  const clear = fixing.seat === 'flat' ? hole : SEAT_RIM;
  const box = { left, right, bottom: clear, top: REACH };
  return [
    path(upper, { ...pen, key: `${key}-above` }),
    path(flipped(upper), { ...pen, key: `${key}-below` }),
    ...(before
      ? []
      : [
          ...hatching(box, 'wheel-lines', 'wheel', false),
          ...hatching(mirrored(box), 'wheel-lines-below', 'wheel', false),
        ]),
  ];
}

/** Bolt, or stud and nut, in full: what is round and solid is not cut. Root of the thread thin, its end outlined. */
export function fastener(fixing: Fixing, lengths: JointLengths): Mark[] {
  const { seat, tip, root, diameter, spacer } = lengths;
  const half = diameter / 2;
  const isBolt = fixing.fastener === 'bolt';
  const length = isBolt ? HEAD_LENGTH : 1000 * fixing.depth;
  const head = headOutline(fixing.seat, seat, half, length);
  // A stud’s nut hides nothing of the stud: it is cut.
  const [start, end] = isBolt ? [tip, seat] : [lengths.hubBack - 3, tip];
  const thread = isBolt ? [tip, Math.max(tip, spacer)] : [0, tip];
  const rootLine = (side: 1 | -1): Mark =>
    thin(
      `bolt-root-${side}`,
      thread.map((across) => point(across, side * root)),
    );
  return [
    path(head, { key: 'head', role: 'part', filled: true }),
    path(corners({ left: start, right: end, bottom: -half, top: half }), {
      key: 'bolt',
      role: 'part',
      filled: true,
    }),
    rootLine(1),
    rootLine(-1),
    path([point(start - 4, 0), point(Math.max(end, seat + length) + 4, 0)], {
      key: 'bolt-axis',
      role: 'guide',
      line: 'chain',
      closed: false,
    }),
  ];
}

/** From the hole outward to the rim of the seat. */
function seatPoints(seat: Fixing['seat'], at: number, hole: number): Point[] {
  switch (seat) {
    case 'flat':
      return [point(at, hole)];
    case 'cone':
      return [point(at - SEAT_DEPTH, hole), point(at, SEAT_RIM)];
    case 'ball':
      return [0, 0.25, 0.5, 0.75, 1].map((share) => {
        const angle = (share * Math.PI) / 2;
        return point(
          at - SEAT_DEPTH * Math.cos(angle),
          hole + (SEAT_RIM - hole) * Math.sin(angle) ** 1.3,
        );
      });
  }
}

function headOutline(
  seat: Fixing['seat'],
  at: number,
  half: number,
  length: number,
): readonly Point[] {
  const upper = [...seatPoints(seat, at, half), point(at, HEAD), point(at + length, HEAD)];
  return [...upper, ...flipped(upper).toReversed()];
}

function sectioned(box: Box, key: string, role: Mark['role'], rising: boolean): Mark[] {
  return [box, mirrored(box)].flatMap((half, i) => [
    path(corners(half), { key: `${key}-${i}`, role, filled: true }),
    ...hatching(half, `${key}-lines-${i}`, role, rising),
  ]);
}

const thin = (key: string, points: readonly Point[]): Mark =>
  path(points, { key, role: 'part', line: 'thin', closed: false });

const flipped = (points: readonly Point[]): Point[] =>
  points.map(({ across, up }) => point(across, -up));
