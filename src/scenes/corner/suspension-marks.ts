import { plus, vector } from '#core/vector.ts';
import type { Line, Mark } from '../marks.ts';
import { rightward, type Point } from '../plane.ts';
import type { Anatomy } from '#core/car/anatomy.ts';
import {
  brakeDisc,
  hubSection,
  knuckle,
  outerRing,
  rollingElements,
  strutFoot,
} from './carrier-outlines.ts';
import { carrierAxes, onPart, placed } from './part-axes.ts';
import { bar, between, circle, flat, outline, path, type Sketch } from './sketch.ts';
import type { Standing } from './standing.ts';
import { below } from './wheel-outlines.ts';

/** Knuckle, hub, bearing and brake disc in the cut through the spin axis, with the spacer if there is one. */
export function carrierSection(
  sketch: Sketch,
  standing: Standing,
  anatomy: Anatomy,
  spacer: number,
): Mark[] {
  const { corner, wheelShift } = standing;
  const axes = carrierAxes(corner, wheelShift);
  const { lower, upper } = corner.pivots;
  const disc = brakeDisc(anatomy);
  const ring = outerRing(anatomy);
  const part = { role: 'part', filled: true } as const;
  const bearing = { role: 'bearing', filled: true, line: 'thin' } as const;
  const { centres, radius } = rollingElements(anatomy);
  const plate = (sign: number): Mark =>
    outline(
      sketch,
      axes,
      [
        [anatomy.inset, sign * 31],
        [anatomy.inset, sign * 72],
        [anatomy.inset + spacer, sign * 72],
        [anatomy.inset + spacer, sign * 31],
      ],
      { key: `spacer${sign}`, role: 'guide', filled: true },
    );
  return [
    outline(sketch, axes, knuckle(anatomy, onPart(axes, lower), onPart(axes, upper)), {
      key: 'knuckle',
      ...part,
    }),
    outline(sketch, axes, disc, { key: 'brake-above', ...part, line: 'thin' }),
    outline(sketch, axes, below(disc), { key: 'brake-below', ...part, line: 'thin' }),
    outline(sketch, axes, ring, { key: 'ring-above', ...bearing }),
    outline(sketch, axes, below(ring), { key: 'ring-below', ...bearing }),
    outline(sketch, axes, hubSection(anatomy), { key: 'hub', ...part }),
    ...centres.map((centre, i) =>
      circle(flat(sketch, placed(axes, centre)), radius, { key: `rolling-${i}`, ...bearing }),
    ),
    ...(spacer > 0 ? [plate(1), plate(-1)] : []),
  ];
}

/** Strut or upper arm, lower arm and tie rod: what holds the carrier to the body. */
export function links(sketch: Sketch, standing: Standing, anatomy: Anatomy, line: Line): Mark[] {
  const { corner } = standing;
  const { lower, upper } = corner.pivots;
  const inboard = corner.side === 'left' ? -1 : 1;
  const armEnd = (from: Point, to: Point, key: string): Mark[] => [
    bar(from, to, 11, { key, role: 'part', filled: true, line }),
    circle(to, 15, { key: `${key}-bush`, role: 'part', filled: true, line }),
  ];
  const marks: Mark[] = [];
  const inward = (ahead: number, run: number, rise: number) => vector(ahead, inboard * run, rise);
  if (sketch.view !== 'side') {
    const spread = sketch.view === 'top' ? [0.14, -0.14] : [0];
    for (const [i, ahead] of spread.entries()) {
      marks.push(
        ...armEnd(
          flat(sketch, lower),
          flat(sketch, plus(lower, inward(ahead, 0.3, 0.012))),
          `lower-arm-${i}`,
        ),
      );
    }
  }
  if (anatomy.suspension === 'double-arm' && sketch.view === 'front') {
    marks.push(
      ...armEnd(flat(sketch, upper), flat(sketch, plus(upper, inward(0, 0.22, 0.01))), 'upper-arm'),
    );
  }
  if (anatomy.suspension === 'strut' && sketch.view !== 'top') {
    marks.push(...strut(sketch, standing, anatomy, line));
  }
  if (corner.tieRod && sketch.view === 'top') {
    const { outer, inner } = corner.tieRod;
    const axes = carrierAxes(corner, standing.wheelShift);
    const [out, up] = onPart(axes, outer);
    const root = flat(sketch, placed(axes, [Math.min(out, -20), up]));
    marks.push(
      bar(root, flat(sketch, outer), 10, { key: 'steering-arm', role: 'part', filled: true, line }),
      bar(flat(sketch, outer), flat(sketch, inner), 6, {
        key: 'tie-rod',
        role: 'part',
        filled: true,
        line,
      }),
      circle(flat(sketch, outer), 9, { key: 'rod-end', role: 'part', filled: true, line }),
    );
  }
  return marks;
}

/** Tube, rod and spring between the carrier and the top bearing. */
function strut(
  sketch: Sketch,
  { corner, wheelShift }: Standing,
  anatomy: Anatomy,
  line: Line,
): Mark[] {
  const axes = carrierAxes(corner, wheelShift);
  const foot = flat(sketch, placed(axes, strutFoot(anatomy)));
  const top = flat(sketch, corner.pivots.upper);
  const tubeTop = between(foot, top, 0.52);
  const run = Math.hypot(top.across - foot.across, top.up - foot.up);
  const hand = rightward(sketch.view, sketch.side) / run;
  const side = { across: hand * (top.up - foot.up), up: -hand * (top.across - foot.across) };
  const coil = (share: number, offset: number): Point => {
    const at = between(foot, top, share);
    return { across: at.across + offset * side.across, up: at.up + offset * side.up };
  };
  const turns = Array.from({ length: 9 }, (_, i) => coil(0.56 + 0.045 * i, i % 2 === 0 ? -48 : 48));
  return [
    bar(foot, tubeTop, 24, { key: 'strut-tube', role: 'part', filled: true, line }),
    bar(tubeTop, top, 8, { key: 'strut-rod', role: 'part', filled: true, line }),
    path([coil(0.54, -58), coil(0.54, 58)], {
      key: 'spring-seat',
      role: 'part',
      closed: false,
      line,
    }),
    path(turns, {
      key: 'spring',
      role: 'part',
      closed: false,
      line: line === 'hidden' ? 'hidden' : 'thin',
    }),
    path([coil(0.96, -62), coil(1, -40), coil(1, 40), coil(0.96, 62)], {
      key: 'strut-top',
      role: 'part',
      closed: false,
      line,
    }),
  ];
}
