import type { CornerModel } from '#core/car/car.ts';
import { valueText, type UnitSystem } from '#core/display.ts';
import { turnsIn } from '#core/fastening/engagement.ts';
import type { Fixing } from '#core/fastening/fixing.ts';
import { writeFixed, writeShortest } from '#core/write-number.ts';
import { path } from '../corner/sketch.ts';
import type { Handle, Mark, Scene, Window } from '../marks.ts';
import { point } from '../plane.ts';
import type { ParameterId } from '../parameters.ts';
import type { Setting } from '../setting.ts';
import { corners } from './hatching.ts';
import { jointLengths, type JointLengths } from './joint-lengths.ts';
import { fastener, hubSection, spacerSection, wheelSection } from './joint-parts.ts';

/** What a drawing of a thread is asked to show. */
export interface ThreadLook {
  readonly handles: readonly ParameterId[];
  readonly units: UnitSystem;
}

/** The paper keeps still while the wheel moves out on a thicker spacer. */
const WINDOW: Window = { centre: point(20, 0), height: 80 };

/** Heights of the dimensions above and below the fastener’s axis. */
const ABOVE = 30;
const BELOW = -31;
const HEAD_ROOM = 21;

/** One of a wheel’s fasteners cut along its axis, from the hub on the left to the outside on the right. */
export function threadScene(
  { fixing }: CornerModel,
  { spacer }: Setting,
  { handles, units }: ThreadLook,
): Scene {
  const lengths = jointLengths(fixing, spacer / 1000);
  return {
    title: `Section along a wheel ${fixing.fastener}`,
    description: threadDescription(fixing, lengths, units),
    window: WINDOW,
    marks: [
      ...hubSection(fixing, lengths),
      ...(spacer > 0 ? wheelSection(fixing, lengths, true) : []),
      ...spacerSection(lengths),
      ...wheelSection(fixing, lengths),
      ...fastener(fixing, lengths),
      ...engagedBands(lengths),
      ...missingThread(lengths, units),
      ...dimensions(fixing, lengths, units),
      ...names(fixing, lengths),
      ...(handles.includes('spacer') ? [spacerHandle(lengths)] : []),
    ],
  };
}

/** What the drawing shows, in words and from the same numbers. */
function threadDescription(fixing: Fixing, lengths: JointLengths, units: UnitSystem): string {
  const mm = (value: number): string => valueText(value / 1000, 'length', units);
  const into =
    fixing.fastener === 'bolt'
      ? 'A bolt goes through the wheel into a thread in the hub.'
      : 'A stud stands out of the hub through the wheel, and a nut goes on it.';
  const between = lengths.spacer > 0 ? ` A spacer of ${mm(lengths.spacer)} lies between.` : '';
  return `${into}${between} Seat: ${fixing.seat}. ${engagementWords(fixing, lengths, units)}`;
}

/** Engagement and turns, and how that stands to one diameter. */
function engagementWords(
  { thread }: Fixing,
  { engaged, missing, diameter }: JointLengths,
  units: UnitSystem,
): string {
  const mm = (value: number): string => valueText(value / 1000, 'length', units);
  if (engaged === 0) return 'No thread holds: the fastener does not reach.';
  const turns = writeFixed(turnsIn(engaged / 1000, thread), 1);
  const against =
    missing > 0
      ? `short of one diameter by ${mm(missing)}`
      : `one diameter, ${mm(diameter)}, is reached`;
  return `Thread engagement ${mm(engaged)}, ${turns} turns: ${against}.`;
}

/** Where the threads hold each other. */
const engagedBands = ({ from, to, root, diameter, engaged }: JointLengths): Mark[] =>
  engaged === 0
    ? []
    : ([1, -1] as const).map((side) => {
        const [a, b] = [side * (root - 0.4), side * (diameter / 2 + 0.4)];
        return path(
          corners({ left: from, right: to, bottom: Math.min(a, b), top: Math.max(a, b) }),
          { key: `engaged-${side}`, role: 'lever', line: 'none', filled: true },
        );
      });

/** Thread that one diameter would ask for and that is not there: dashed, and said. */
function missingThread(
  { missingTo, from, to, missing, engaged, diameter }: JointLengths,
  units: UnitSystem,
): Mark[] {
  if (missingTo === undefined) return [];
  const start = missingTo < from ? from : to;
  const box = {
    left: Math.min(start, missingTo),
    right: Math.max(start, missingTo),
    bottom: -diameter / 2,
    top: diameter / 2,
  };
  const words =
    engaged === 0 ? 'no thread holds' : `short by ${valueText(missing / 1000, 'length', units)}`;
  return [
    path(corners(box), { key: 'missing', role: 'force', line: 'hidden' }),
    {
      kind: 'label',
      key: 'missing-words',
      role: 'force',
      // Beside the dimension of the spacer where a bolt ends in the hub; above the nut where a stud ends in it.
      at: missingTo < from ? point(-19, BELOW) : point(box.right + 6, HEAD_ROOM),
      text: words,
      here: true,
    },
  ];
}

function dimensions(fixing: Fixing, lengths: JointLengths, units: UnitSystem): Mark[] {
  const { from, to, engaged, spacer, diameter } = lengths;
  const mm = (value: number): string => valueText(value / 1000, 'length', units);
  const turns = writeFixed(turnsIn(engaged / 1000, fixing.thread), 1);
  const marks: Mark[] = [];
  if (engaged > 0) {
    marks.push({
      kind: 'dimension',
      key: 'engagement',
      role: 'lever',
      quantity: 'engagement',
      from: point(from, diameter / 2),
      to: point(to, diameter / 2),
      fromFoot: point(from, ABOVE),
      toFoot: point(to, ABOVE),
      text: `${mm(engaged)}, ${turns} turns`,
    });
  }
  if (spacer > 0) {
    marks.push({
      kind: 'dimension',
      key: 'spacer',
      role: 'guide',
      from: point(0, -25),
      to: point(spacer, -25),
      fromFoot: point(0, BELOW),
      toFoot: point(spacer, BELOW),
      text: `spacer ${mm(spacer)}`,
    });
  }
  return marks;
}

function names(fixing: Fixing, { hubBack, spacer, seat, diameter }: JointLengths): Mark[] {
  const name = (key: string, text: string, across: number, up: number, here = true): Mark => ({
    kind: 'label',
    key: `name-${key}`,
    role: key === 'wheel' ? 'wheel' : 'part',
    at: point(across, up),
    text,
    here,
  });
  const thread = `M${writeShortest(diameter)} × ${writeShortest(1000 * fixing.thread.pitch)}`;
  return [
    name('hub', 'hub', hubBack / 2, 19),
    name('wheel', 'wheel', (spacer + seat) / 2, 19),
    name('fastener', `${fixing.fastener}, ${thread}`, seat + 18, -17),
  ];
}

/** The wheel is carried out and in by its lower half. */
const spacerHandle = ({ spacer }: JointLengths): Handle => ({
  kind: 'handle',
  key: 'handle-spacer',
  role: 'guide',
  parameter: 'spacer',
  at: point(spacer, -17),
  moves: 'across',
});
