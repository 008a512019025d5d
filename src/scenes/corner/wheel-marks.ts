import type { Mark } from '../marks.ts';
import { point } from '../plane.ts';
import type { Anatomy } from '#core/car/anatomy.ts';
import { placed, wheelAxes, type PartAxes } from './part-axes.ts';
import { silhouette } from './silhouette.ts';
import { flat, outline, path, ringPoints, type Sketch } from './sketch.ts';
import type { Standing } from './standing.ts';
import {
  below,
  discSection,
  rimSection,
  squeezed,
  tyreSection,
  tyreSurface,
} from './wheel-outlines.ts';

/** The tyre's silhouette on its loaded radius, flattened by the road: filled, or pale for the state before. */
export function tyreSilhouette(
  sketch: Sketch,
  { corner, geometry }: Standing,
  anatomy: Anatomy,
  before = false,
): Mark {
  const outline = silhouette(sketch, wheelAxes(corner), tyreSurface(anatomy));
  // Seen from above, the road hides nothing of it.
  const road = sketch.view === 'top' ? -Infinity : 1000 * geometry.contactCentre.z;
  return path(
    outline.map(({ across, up }) => point(across, Math.max(up, road))),
    {
      key: before ? 'tyre-before' : 'tyre',
      role: 'wheel',
      filled: !before,
      line: before ? 'thin' : 'outline',
      before,
    },
  );
}

/** The wheel cut upright through its spin axis: tyre, rim and disc. */
export function wheelSection(sketch: Sketch, { corner }: Standing, anatomy: Anatomy): Mark[] {
  const axes = wheelAxes(corner);
  const tyre = tyreSection(anatomy);
  const rim = rimSection(anatomy);
  const disc = discSection(anatomy);
  const cut = { role: 'wheel', filled: true } as const;
  const loaded = squeezed(tyre, anatomy, 1000 * corner.loadedRadius);
  return [
    outline(sketch, axes, tyre, { key: 'tyre-cut-above', ...cut, line: 'thin' }),
    outline(sketch, axes, below(loaded), { key: 'tyre-cut-below', ...cut, line: 'thin' }),
    outline(sketch, axes, disc, { key: 'disc-above', ...cut }),
    outline(sketch, axes, below(disc), { key: 'disc-below', ...cut }),
    outline(sketch, axes, rim, { key: 'rim-above', role: 'wheel', closed: false }),
    outline(sketch, axes, below(rim), { key: 'rim-below', role: 'wheel', closed: false }),
  ];
}

/** The wheel's outer face: rim edge, hub and bolts as rings about the spin axis. */
export function wheelFace(sketch: Sketch, { corner }: Standing, anatomy: Anatomy): Mark[] {
  const axes = wheelAxes(corner);
  const face = anatomy.rimWidth / 2;
  const bolts = Array.from({ length: 5 }, (_, i) => {
    const angle = (2 * Math.PI * i) / 5;
    const centre: PartAxes = {
      ...axes,
      origin: placed(axes, [anatomy.inset, 54 * Math.cos(angle), 54 * Math.sin(angle)]),
    };
    return ring(sketch, centre, 0, 9, `bolt-${i}`, 'thin');
  });
  return [
    ring(sketch, axes, face, anatomy.rimRadius, 'rim-edge', 'outline'),
    ring(sketch, axes, face, anatomy.rimRadius - 16, 'rim-well', 'thin'),
    ring(sketch, axes, anatomy.inset, 34, 'centre-bore', 'thin'),
    ...bolts,
  ];
}

const ring = (
  sketch: Sketch,
  axes: PartAxes,
  out: number,
  radius: number,
  key: string,
  line: 'outline' | 'thin',
): Mark =>
  path(
    ringPoints(axes, out, radius).map((at) => flat(sketch, at)),
    {
      key,
      role: 'wheel',
      line,
      smooth: true,
    },
  );
