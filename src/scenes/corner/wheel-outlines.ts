import type { Anatomy } from '#core/car/anatomy.ts';
import type { PartPoint } from './part-axes.ts';

/** Outer surface of the tyre, (out, radius), from the inner bead over the tread to the outer bead. */
export function tyreSurface({ tyreWidth, tyreRadius, rimRadius, rimWidth }: Anatomy): PartPoint[] {
  const half = tyreWidth / 2;
  const bead = rimWidth / 2;
  const wall = tyreRadius - rimRadius;
  const centreToBead: PartPoint[] = [
    [0, tyreRadius],
    [0.4 * half, tyreRadius - 1],
    [0.72 * half, tyreRadius - 5],
    [0.86 * half, tyreRadius - 0.13 * wall],
    [0.97 * half, tyreRadius - 0.3 * wall],
    [half, rimRadius + 0.48 * wall],
    [bead + 6, rimRadius + 0.16 * wall],
    [bead - 1, rimRadius + 3],
  ];
  return bothSides(centreToBead);
}

/** Cross-section of the carcass: the outer surface and back along the inner one. */
export function tyreSection(anatomy: Anatomy): PartPoint[] {
  const { tyreWidth, tyreRadius, rimRadius, rimWidth } = anatomy;
  const half = tyreWidth / 2;
  const wall = tyreRadius - rimRadius;
  const inside: PartPoint[] = [
    [0, tyreRadius - 17],
    [0.62 * half, tyreRadius - 20],
    [half - 13, rimRadius + 0.5 * wall],
    [rimWidth / 2 - 12, rimRadius + 6],
  ];
  return [...tyreSurface(anatomy), ...bothSides(inside).reverse()];
}

/** The rim's section, one open line from flange to flange. */
export function rimSection({ rimRadius: r, rimWidth }: Anatomy): PartPoint[] {
  const b = rimWidth / 2;
  return [
    [-b - 8, r + 14],
    [-b - 2, r + 12],
    [-b, r],
    [-b + 18, r - 3],
    [-0.3 * b, r - 4],
    [-0.15 * b, r - 19],
    [0.3 * b, r - 19],
    [0.45 * b, r - 4],
    [b - 18, r - 3],
    [b, r],
    [b + 2, r + 12],
    [b + 8, r + 14],
  ];
}

/** The wheel disc's section from rim to hub, closed; the hub face lies at the inset. */
export function discSection({ rimRadius: r, rimWidth, inset }: Anatomy): PartPoint[] {
  const b = rimWidth / 2;
  return [
    [0.34 * b, r - 20],
    [0.6 * b, r - 20],
    [Math.max(inset, 0.35 * b) + 22, 0.66 * r],
    [inset + 16, 84],
    [inset + 11, 66],
    [inset + 11, 32],
    [inset, 32],
    [inset, 70],
    [inset + 6, 86],
    [Math.max(inset, 0.35 * b) + 11, 0.66 * r],
  ];
}

/**
 * The section as it is squeezed under load: heights between rim and tread shrink so that the tread ends at
 * the loaded radius, and the side walls bulge.
 */
export function squeezed(
  section: readonly PartPoint[],
  { rimRadius, tyreRadius }: Anatomy,
  loadedRadius: number,
): PartPoint[] {
  const ratio = (loadedRadius - rimRadius) / (tyreRadius - rimRadius);
  return section.map(([out, radius]) => {
    if (radius <= rimRadius) return [out, radius];
    const share = (radius - rimRadius) / (tyreRadius - rimRadius);
    const bulge = 1 + (1 - ratio) * 0.5 * Math.sin(Math.PI * Math.min(1, share));
    return [out * bulge, Math.min(loadedRadius, rimRadius + share * (loadedRadius - rimRadius))];
  });
}

/** The same section below the wheel centre. */
export const below = (section: readonly PartPoint[]): PartPoint[] =>
  section.map(([out, up]) => [out, -up]);

function bothSides(centreOut: readonly PartPoint[]): PartPoint[] {
  const inner = centreOut.slice(1).map(([out, up]): PartPoint => [-out, up]);
  return [...inner.reverse(), ...centreOut];
}
