/**
 * The bench a second time, as one would reckon it on a sheet of squared paper: plane trigonometry in the front view and
 * the side view, no vectors in space but for the tie rod’s lever, nothing of the core’s. Millimetres, degrees,
 * newtons as the documents have them.
 */

import type {
  BenchDocument,
  VariantDocument,
  WheelChangeDocument,
} from '#core/judgement/bench-document.ts';
import { planeBearing } from './plane-bearing.ts';
import { deg, diameter, LOAD_KG, measuringRim_mm, rad, sizeOf, type Numbers } from './plane-car.ts';

/** The numbers of the right wheel: left less what the sheet has in the column between, all else shared. */
function ofRight(v: Numbers): Numbers {
  const less = (id: string, cross: string): number => (v[id] ?? NaN) - (v[cross] ?? NaN);
  return {
    ...v,
    camber_deg: less('camber_deg', 'crossCamber_deg'),
    caster_deg: less('caster_deg', 'crossCaster_deg'),
    inclination_deg: less('inclination_deg', 'crossInclination_deg'),
    // Measured pivots are the left ones: the right upper one stands where these angles less the differences have it.
    lessCaster_deg: v['crossCaster_deg'] ?? NaN,
    lessInclination_deg: v['crossInclination_deg'] ?? NaN,
  };
}

interface Wheel {
  readonly results: Record<string, number>;
  /** Rack force over moment about the axis, without its sign. */
  readonly toRack: number;
  readonly out_mm: number;
}

/** What a result of the right wheel is called, beside that of the left one. */
export const onRight = (id: string): string => `${id} right`;

/**
 * The results of a car with a change on one or both wheels: those of the left wheel under their names, of the right one under
 * `onRight`, and of the axle.
 */
export function planeResults(
  document: BenchDocument,
  v: Numbers,
  variant?: VariantDocument,
): Record<string, number> {
  const [leftChange, rightChange] =
    variant === undefined
      ? [{}, {}]
      : 'both' in variant
        ? [variant.both, variant.both]
        : [variant.left, variant.right];
  const left = planeWheel(document, v, leftChange);
  const right = planeWheel(document, ofRight(v), rightChange);
  const load = v['wheelLoad_N'] ?? NaN;
  // One newton metre about each axis, by equal work at rack and steering wheel.
  const rim = (v['travelPerTurn_mm'] ?? NaN) / (2 * Math.PI) / ((v['rimDiameter_mm'] ?? NaN) / 2);
  const perLoad = (wheel: Wheel): number => (wheel.results['brakeMoment'] ?? NaN) / 0.8;
  const splitUnassisted =
    rim * (0.8 * perLoad(left) * left.toRack - 0.1 * perLoad(right) * right.toRack);
  const track = left.out_mm + right.out_mm;
  return {
    ...left.results,
    ...rightResults(right),
    track,
    splitRimForceUnassisted: splitUnassisted,
    splitRimForce: splitUnassisted / (v['assist'] ?? NaN),
    brakingRimForce:
      (rim * 0.8 * (perLoad(left) * left.toRack - perLoad(right) * right.toRack)) /
      (v['assist'] ?? NaN),
    splitSteering: 0.8 * perLoad(left) - 0.1 * perLoad(right),
    splitYaw: ((0.8 - 0.1) * load * track) / 2000,
    blowRimForce: (rim * (left.results['blowMoment'] ?? NaN) * left.toRack) / (v['assist'] ?? NaN),
    blowRimForceUnassisted: rim * (left.results['blowMoment'] ?? NaN) * left.toRack,
  };
}

/** Moments that turn a left wheel to the left turn its mirror image to the right; all else is the same on both sides. */
const rightResults = ({ results }: Wheel): Record<string, number> =>
  Object.fromEntries(
    Object.entries(results).map(([id, value]) => [
      onRight(id),
      id.endsWith('Moment') ? -value : value,
    ]),
  );

function planeWheel({ car }: BenchDocument, v: Numbers, change: WheelChangeDocument): Wheel {
  const get = (id: string): number => v[id] ?? NaN;
  // Front view: y outboard from the middle of the car, z up from the floor as the car stands.
  const camber0 = rad(get('camber_deg'));
  const R0 = get('hubUp_mm') / Math.cos(camber0);
  const centre0 = { y: get('track_mm') / 2 + R0 * Math.sin(camber0), z: get('hubUp_mm') };
  const rimLine = centre0.y + get('halfRim_mm');
  const lower = { y: rimLine - get('lowerIn_mm'), z: get('lowerUp_mm') };
  const rise = get('upperUp_mm') - get('lowerUp_mm');
  const byPivots = car.axisFrom === 'pivots';
  const tanLess = (tan: number, less = 0): number => Math.tan(Math.atan(tan) - rad(less));
  const tanSigma0 = byPivots
    ? tanLess((get('upperIn_mm') - get('lowerIn_mm')) / rise, v['lessInclination_deg'])
    : Math.tan(rad(get('inclination_deg')));
  const tanTau0 = byPivots
    ? tanLess((get('lowerAhead_mm') - get('upperAhead_mm')) / rise, v['lessCaster_deg'])
    : Math.tan(rad(get('caster_deg')));

  const top = rad(change.camberAtUpperPivot_deg ?? 0);
  const bottom = rad(change.camberAtCarrier_deg ?? 0);
  const beside = top !== 0 || bottom !== 0 ? rad(get('camberSet_deg')) : 0;
  const turn = top + bottom + beside;
  const turnOfAxis = top === 0 ? 0 : top + beside;
  const sigma = Math.atan(tanSigma0) - turnOfAxis;
  // An axis that leans in the front view keeps its length in the side view: tan τ goes with the height it gains.
  const tanTau = (tanTau0 * Math.cos(Math.atan(tanSigma0))) / Math.cos(sigma);
  const camber = camber0 + turn;
  const about = ({ y, z }: { y: number; z: number }): { y: number; z: number } => ({
    y: lower.y + (y - lower.y) * Math.cos(turn) + (z - lower.z) * Math.sin(turn),
    z: lower.z - (y - lower.y) * Math.sin(turn) + (z - lower.z) * Math.cos(turn),
  });
  const turned = about(centre0);

  const tyre0 = sizeOf(car.tyre);
  const tyre = change.tyre === undefined ? tyre0 : sizeOf(change.tyre);
  const grown =
    change.tyre === undefined
      ? 1
      : (diameter(tyre) / diameter(tyre0)) * (1 + get('tyreMake_percent') / 100);
  const out =
    (change.spacer_mm ?? 0) -
    (change.inset_mm === undefined ? 0 : change.inset_mm + get('newInset_mm') - get('inset_mm'));
  const centre = { y: turned.y + out * Math.cos(camber), z: turned.z - out * Math.sin(camber) };
  const R = R0 * grown;
  const contact = { y: centre.y - R * Math.sin(camber), z: centre.z - R * Math.cos(camber) };
  const axisY = (z: number): number => lower.y - (z - lower.z) * Math.tan(sigma);
  const r = contact.y - axisY(contact.z);
  const q = centre.y - axisY(centre.z);
  const n = get('lowerAhead_mm') + (lower.z - contact.z) * tanTau;
  const upright = 1 / Math.sqrt(1 + Math.tan(sigma) ** 2 + tanTau ** 2);
  const load = get('wheelLoad_N');
  const rim_mm = 25.4 * (change.rimWidth_in ?? get('rimWidth_in'));
  const section = tyre.width + (5 / 12.7) * (rim_mm - measuringRim_mm(tyre));
  const driven = car.drive !== 'rear';
  const fixing = car.fixing;
  const reach =
    get('reach_mm') -
    (change.spacer_mm ?? 0) -
    (change.wheelThickness_mm === undefined
      ? 0
      : change.wheelThickness_mm - (fixing?.wheelThickness_mm ?? NaN));
  const held = fixing === undefined ? NaN : Math.max(0, Math.min(reach, fixing.depth_mm));
  return {
    out_mm: contact.y,
    toRack: toRackOf(car, v, { lower, about, sigma, tanTau, upright }),
    results: {
      scrubRadius: r,
      spindleOffset: q,
      trail: n,
      inclination: deg(sigma),
      caster: deg(Math.atan(tanTau)),
      camber: deg(camber),
      includedAngle: deg(sigma + camber),
      brakeMoment: (0.8 * load * r * upright) / 1000,
      driveMoment: driven ? (-0.4 * load * q * upright) / 1000 : NaN,
      recuperationMoment: driven ? (0.15 * load * q * upright) / 1000 : NaN,
      blowMoment: (load * q * upright) / 1000,
      ...planeBearing(car, v, out, R),
      outerEdge: centre.y + (rim_mm / 2) * Math.cos(camber),
      innerEdge: centre.y - (rim_mm / 2) * Math.cos(camber),
      outerSidewall: centre.y + (section / 2) * Math.cos(camber),
      innerSidewall: centre.y - (section / 2) * Math.cos(camber),
      loadedRadius: R,
      rollingCircumference: get('rollingRatio') * diameter(tyre0) * grown,
      trueSpeed: 100 * grown,
      loadShare: (100 * load) / (9.80665 * (LOAD_KG[tyre.index] ?? NaN)),
      engagement: held,
      engagementSpare: held - (fixing?.thread_mm ?? NaN),
    },
  };
}

interface Leaning {
  readonly lower: { readonly y: number; readonly z: number };
  readonly about: (point: { y: number; z: number }) => { y: number; z: number };
  readonly sigma: number;
  readonly tanTau: number;
  readonly upright: number;
}

/** How much force at the rack a newton metre about the axis makes, in 1/m: the determinant of axis, arm and rod. */
function toRackOf(
  { corner }: BenchDocument['car'],
  v: Numbers,
  { lower, about, sigma, tanTau, upright }: Leaning,
): number {
  if (!('lower_mm' in corner.axis) || corner.steering === undefined) return NaN;
  const { outer_mm, inner_mm } = corner.steering;
  const [, lowerY, lowerZ] = corner.axis.lower_mm;
  const ahead = v['rodAhead_mm'] ?? NaN;
  const outer = { y: lower.y + outer_mm[1] - lowerY, z: lower.z + outer_mm[2] - lowerZ };
  const inner = { y: outer.y + inner_mm[1] - outer_mm[1], z: outer.z + inner_mm[2] - outer_mm[2] };
  const moved = about(outer);
  const arm = [ahead, moved.y - lower.y, moved.z - lower.z] as const;
  const rod = [inner_mm[0] - outer_mm[0], inner.y - moved.y, inner.z - moved.z] as const;
  const axis = [-tanTau * upright, -Math.tan(sigma) * upright, upright] as const;
  const lever =
    axis[0] * (arm[1] * rod[2] - arm[2] * rod[1]) +
    axis[1] * (arm[2] * rod[0] - arm[0] * rod[2]) +
    axis[2] * (arm[0] * rod[1] - arm[1] * rod[0]);
  // Both lever and share across have the rod’s length in them, which goes out.
  return Math.abs(rod[1] / (lever / 1000));
}
