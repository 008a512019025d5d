import type { CornerModel } from '#core/car/car.ts';
import { along, type Vector } from '#core/vector.ts';
import type { Mark } from '../marks.ts';
import { PARAMETERS } from '../parameters.ts';
import type { Setting } from '../setting.ts';
import { bar, flat, path, type Sketch } from './sketch.ts';
import { standing, type Standing } from './standing.ts';

/** What leaves a trace in the drawing while the wheel is steered from lock to lock. */
export const TRACE_NAMES = {
  bar: 'bar on the hub',
  contact: 'path of the contact centre',
} as const;

export type TraceName = keyof typeof TRACE_NAMES;

/** From the wheel centre to the end of the bar, and half its width: metres and millimetres. */
const BAR_LENGTH = 0.19;
const BAR_HALF_WIDTH = 5;

/** Degrees between two points of a trace. */
const STEP = 4;

/**
 * The way of a point of the wheel from lock to lock, dashed. The contact centre's is seen from above; the
 * bar's is seen from everywhere, with the bar itself where it is now.
 */
export function traceMarks(
  name: TraceName,
  sketch: Sketch,
  now: Standing,
  model: CornerModel,
  setting: Setting,
): Mark[] {
  const way = everySteer().map((steer) => {
    const there = standing(model, { ...setting, steer });
    return flat(sketch, name === 'bar' ? barEnd(there) : there.geometry.contactCentre);
  });
  const [start] = way;
  const trace = path(way, {
    key: `trace-${name}`,
    role: 'wheel',
    line: 'hidden',
    closed: false,
    smooth: true,
  });
  if (name === 'contact') {
    if (sketch.view !== 'top' || !start) return [];
    const text = TRACE_NAMES.contact;
    return [trace, { kind: 'label', key: 'trace-contact-name', role: 'wheel', at: start, text }];
  }
  const end = flat(sketch, barEnd(now));
  const root = flat(sketch, now.corner.wheelCentre);
  return [
    trace,
    bar(root, end, BAR_HALF_WIDTH, { key: 'bar', role: 'guide', filled: true }),
    { kind: 'spot', key: 'bar-end', role: 'wheel', at: end },
    { kind: 'label', key: 'bar-name', role: 'guide', at: end, text: TRACE_NAMES.bar },
  ];
}

const barEnd = ({ corner }: Standing): Vector => along(corner.wheelCentre, BAR_LENGTH, corner.spin);

function everySteer(): readonly number[] {
  const { least, most } = PARAMETERS.steer;
  return Array.from({ length: (most - least) / STEP + 1 }, (_, i) => least + i * STEP);
}
