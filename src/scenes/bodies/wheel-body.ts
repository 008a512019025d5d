import type { Anatomy } from '#core/car/anatomy.ts';
import { wheelAxes } from '../corner/part-axes.ts';
import { flat, path, ringPoints, type Sketch } from '../corner/sketch.ts';
import type { Standing } from '../corner/standing.ts';
import { tyreSilhouette, wheelFace } from '../corner/wheel-marks.ts';
import type { Mark } from '../marks.ts';
import { discRadius } from './disc.ts';

/** All that turns: tyre, rim, hub with its bolts, and the brake disc behind them, dashed. */
export function wheelBody(sketch: Sketch, standing: Standing, anatomy: Anatomy): Mark[] {
  const ring = ringPoints(wheelAxes(standing.corner), 0, discRadius(anatomy));
  const disc = path(
    ring.map((at) => flat(sketch, at)),
    { key: 'disc', role: 'wheel', line: 'hidden', smooth: true },
  );
  const face = wheelFace(sketch, standing, anatomy).filter(({ key }) => key !== 'rim-well');
  return [tyreSilhouette(sketch, standing, anatomy), ...face, disc];
}
