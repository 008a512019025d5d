import type { BenchDocument } from '#core/judgement/bench-document.ts';
import { rad, type Numbers } from './plane-car.ts';

/** ISO 281, Table 3, single-row angular contact ball bearings (from memory): angle, e, X, Y. */
const BALLS = [
  [20, 0.57, 0.43, 1],
  [25, 0.68, 0.41, 0.87],
  [30, 0.8, 0.39, 0.76],
  [35, 0.95, 0.37, 0.66],
  [40, 1.14, 0.35, 0.57],
  [45, 1.34, 0.33, 0.5],
] as const;

function factors(kind: string, angle: number): { e: number; X: number; Y: number } {
  if (kind !== 'ball') {
    const tan = Math.tan(rad(angle));
    return { e: 1.5 * tan, X: 0.4, Y: 0.4 / tan };
  }
  const i = Math.min(BALLS.length - 2, Math.floor((angle - 20) / 5));
  const [a, b] = [BALLS[i], BALLS[i + 1]];
  if (a === undefined || b === undefined) throw new RangeError(`no factors at ${angle} degrees`);
  const part = (angle - a[0]) / 5;
  const between = (k: 1 | 2 | 3): number => a[k] + part * (b[k] - a[k]);
  return { e: between(1), X: between(2), Y: between(3) };
}

/** Row loads and rating lives in million revolutions, with the wheel so far outboard of where it stood and a loaded radius R, both in millimetres. */
export function planeBearing(
  { corner }: BenchDocument['car'],
  v: Numbers,
  out: number,
  R: number,
): Record<string, number> {
  const { hub } = corner;
  if (hub === undefined) return {};
  const x = (v['loadLineOffset_mm'] ?? NaN) + out;
  const a = v['spread_mm'] ?? NaN;
  const load = v['wheelLoad_N'] ?? NaN;
  const angle = v['contactAngle_deg'] ?? NaN;
  const rows = [hub.outboard, hub.inboard].map((row) => ({
    p: row.kind === 'ball' ? 3 : 10 / 3,
    w: row.kind === 'ball' ? 10 / 9 : 9 / 8,
    C: ((v['rowRating_N'] ?? NaN) * row.C_N) / hub.outboard.C_N,
    ...factors(row.kind, angle + row.contactAngle_deg - hub.outboard.contactAngle_deg),
  }));
  const [o, i] = rows;
  if (o === undefined || i === undefined) return {};
  const steps = hub.duty.map(({ share, vertical_N, inward_N }) => {
    const scale = load / (hub.duty[0]?.vertical_N ?? NaN);
    const [F, K] = [vertical_N * scale, inward_N * scale];
    const tilt = (x * F - R * K) / a;
    const [Fo, Fi] = [Math.abs(F / 2 + tilt), Math.abs(F / 2 - tilt)];
    const [So, Si] = [Fo / (2 * o.Y), Fi / (2 * i.Y)];
    // The catalogue’s cases, one after the other; the outboard row takes a push toward the car.
    const [Ao, Ai] =
      K >= 0
        ? Si + K >= So
          ? [Si + K, Si]
          : [So, So - K]
        : So - K >= Si
          ? [So, So - K]
          : [Si + K, Si];
    const P = (row: typeof o, Fr: number, Fa: number): number =>
      Fa <= row.e * Fr ? Fr : row.X * Fr + row.Y * Fa;
    return { share, o: P(o, Fo, Ao), i: P(i, Fi, Ai) };
  });
  const mean = (at: 'o' | 'i', p: number): number =>
    steps.reduce((sum, step) => sum + step.share * step[at] ** p, 0) ** (1 / p);
  const [Po, Pi] = [mean('o', o.p), mean('i', i.p)];
  const [Lo, Li] = [(o.C / Po) ** o.p, (i.C / Pi) ** i.p];
  return {
    outboardRadial: load / 2 + (x * load) / a,
    inboardRadial: load / 2 - (x * load) / a,
    outboardMeanLoad: Po,
    inboardMeanLoad: Pi,
    outboardLife: Lo,
    inboardLife: Li,
    hubLife: (Lo ** -o.w + Li ** -o.w) ** (-1 / o.w),
  };
}
