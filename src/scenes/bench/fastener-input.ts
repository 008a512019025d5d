import type { InputId } from '#core/judgement/inputs.ts';
import { path } from '../corner/sketch.ts';
import type { Mark } from '../marks.ts';
import { point } from '../plane.ts';
import { jointLengths, type JointLengths } from '../thread/joint-lengths.ts';
import { fastener, hubSection, wheelSection } from '../thread/joint-parts.ts';
import type { FastenerInput } from './from-where.ts';
import { across, upright, type InputDrawing, type InputLook, seated } from './input-drawing.ts';

export type JointInput = FastenerInput | Extract<InputId, 'reach_mm'>;

/** As many turns are measured over at once. */
const TURNS = 10;

/** Heights of the dimensions above and below the fastener’s axis, in millimetres. */
const ABOVE = 31;
const BELOW = -31;

/** One of the wheel’s bolts or studs, cut along its axis, without a spacer: hub on the left, outside on the right. */
export function fastenerInput(id: JointInput, { model, value, text }: InputLook): InputDrawing {
  const { fixing } = model;
  const lengths = jointLengths(fixing, 0);
  const { tip, seat, hubBack } = lengths;
  const [left, right] = [Math.min(hubBack, tip) - 6, Math.max(seat + 26, tip + 6)];
  const height = Math.max(88, 0.75 * (right - left));
  return {
    seen: `One of the wheel’s ${fixing.fastener}s with hub and wheel, cut along its axis.`,
    window: { centre: point((left + right) / 2, 0), height },
    marks: [
      ...hubSection(fixing, lengths),
      ...wheelSection(fixing, lengths),
      // The nut is off while a rule lies along the thread.
      ...fastener(fixing, lengths).filter(({ key }) => id !== 'pitch_mm' || key !== 'head'),
      seated('hub', point(hubBack / 2, 20), 'hub', 'part'),
      seated('wheel', point(seat / 2, -20), 'wheel', 'wheel'),
      ...measured(id, lengths, { kind: fixing.fastener, depth: 1000 * fixing.depth, value, text }),
    ],
  };
}

interface Held {
  readonly kind: 'bolt' | 'stud';
  /** Of the counterpart's thread, in millimetres. */
  readonly depth: number;
  readonly value: number;
  readonly text: string;
}

function measured(id: JointInput, lengths: JointLengths, held: Held): Mark[] {
  const { kind, depth, text } = held;
  const { diameter, tip, seat, hubBack } = lengths;
  const half = diameter / 2;
  const free = kind === 'bolt' ? 0 : seat;
  switch (id) {
    case 'thread_mm': {
      const foot = kind === 'bolt' ? tip - 10 : tip + 10;
      return [upright(point(tip, -half), point(tip, half), foot, text)];
    }
    case 'pitch_mm':
      return turns(lengths, held);
    case 'reach_mm':
      return [across(point(free, half), point(tip, half), ABOVE, text)];
    case 'depth_mm':
      return kind === 'bolt'
        ? [across(point(hubBack, -half), point(0, -half), BELOW, text)]
        : [across(point(seat, -half), point(seat + depth, -half), BELOW, text)];
    case 'wheelThickness_mm':
      return [across(point(0, 25), point(seat, 25), ABOVE, text)];
  }
}

/** The crests of ten turns from the free end on, as a rule is laid along them. */
function turns({ diameter, tip }: JointLengths, { kind, value, text }: Held): Mark[] {
  const half = diameter / 2;
  const pitch = 1000 * value;
  const inward = kind === 'bolt' ? 1 : -1;
  const crests = Array.from({ length: TURNS + 1 }, (_, i) => tip + inward * i * pitch);
  const last = crests.at(-1) ?? tip;
  return [
    ...crests.map((at, i) =>
      path([point(at, half), point(at, half + 2.5)], {
        key: `crest-${i}`,
        role: 'guide',
        line: 'thin',
        closed: false,
      }),
    ),
    across(point(tip, half), point(last, half), ABOVE, `${TURNS} turns: ${TURNS} × ${text}`),
  ];
}
