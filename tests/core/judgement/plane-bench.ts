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

export type Numbers = Readonly<Record<string, number>>;

const rad = (deg: number): number => (deg * Math.PI) / 180;
const deg = (angle: number): number => (angle * 180) / Math.PI;

interface Size {
  readonly width: number;
  readonly aspect: number;
  readonly rim: number;
  readonly index: number;
}

function sizeOf(text: string): Size {
  const [, width, aspect, rim, index] =
    /^(\d+)\/(\d+) R(\d+)C?(?: (\d+))?/.exec(text)?.map(Number) ?? [];
  return { width: width ?? NaN, aspect: aspect ?? NaN, rim: rim ?? NaN, index: index ?? NaN };
}

const diameter = ({ width, aspect, rim }: Size): number => 25.4 * rim + (2 * width * aspect) / 100;

/** ISO 4000-1 (from memory): rim width over section width by aspect ratio, to the next half inch. */
function measuringRim_mm({ width, aspect }: Size): number {
  const share =
    aspect >= 75 ? 0.7 : aspect >= 60 ? 0.75 : aspect >= 50 ? 0.8 : aspect >= 45 ? 0.85 : 0.9;
  return 12.7 * Math.round((share * width) / 12.7);
}

/** UN Regulation 30, annex 4 (from memory): the load indices of the scenarios, in kilograms. */
const LOAD_KG: Readonly<Record<number, number>> = {
  84: 500, 87: 545, 88: 560, 91: 615, 95: 690, 96: 710, 99: 775, 102: 850, 109: 1030, 111: 1090, 117: 1285,
}; // prettier-ignore

/** Best estimates of every number of the car: what the document says, else read off its corner. */
export function bestOf({ car }: BenchDocument): Numbers {
  const { corner, values } = car;
  if (!('lower_mm' in corner.axis) || corner.steering === undefined || corner.hub === undefined)
    throw new RangeError('a scenario without pivots, tie rod or hub');
  const { wheel, steering, hub } = corner;
  const tyre = sizeOf(car.tyre);
  const camber = wheel.camber_deg ?? 0;
  const [, y, z] = wheel.centre_mm;
  const hubUpOfCorner = wheel.loadedRadius_mm * Math.cos(rad(camber));
  const known = (id: string, otherwise: number): number =>
    (values as Record<string, { value: number } | undefined>)[id]?.value ?? otherwise;
  const rim_in = known('rimWidth_in', measuringRim_mm(tyre) / 25.4);
  const halfRim = known('halfRim_mm', (25.4 * rim_in + 25) / 2);
  const hubUp = known('hubUp_mm', hubUpOfCorner);
  const [lower, upper] = [corner.axis.lower_mm, corner.axis.upper_mm];
  const rise = upper[2] - lower[2];
  return {
    hubUp_mm: hubUp,
    halfRim_mm: halfRim,
    rimWidth_in: rim_in,
    inset_mm: known('inset_mm', 42),
    track_mm: known('track_mm', 2 * (y - wheel.loadedRadius_mm * Math.sin(rad(camber)))),
    rollingRatio: known(
      'rollingRatio',
      (2 * Math.PI * (wheel.rollingRadius_mm ?? NaN)) / diameter(tyre),
    ),
    camber_deg: known('camber_deg', camber),
    toe_deg: known('toe_deg', wheel.toe_deg ?? 0),
    caster_deg: known('caster_deg', deg(Math.atan((lower[0] - upper[0]) / rise))),
    inclination_deg: known('inclination_deg', deg(Math.atan((lower[1] - upper[1]) / rise))),
    lowerIn_mm: known('lowerIn_mm', halfRim + y - lower[1]),
    lowerUp_mm: known('lowerUp_mm', hubUp + lower[2] - z),
    lowerAhead_mm: known('lowerAhead_mm', lower[0]),
    upperIn_mm: known('upperIn_mm', halfRim + y - upper[1]),
    upperUp_mm: known('upperUp_mm', hubUp + upper[2] - z),
    upperAhead_mm: known('upperAhead_mm', upper[0]),
    rodAhead_mm: known('rodAhead_mm', steering.outer_mm[0] - lower[0]),
    travelPerTurn_mm: known('travelPerTurn_mm', steering.travelPerTurn_mm),
    rimDiameter_mm: known('rimDiameter_mm', steering.rimDiameter_mm),
    assist: known('assist', steering.assist ?? 1),
    wheelLoad_N: known('wheelLoad_N', hub.duty[0]?.vertical_N ?? NaN),
    loadLineOffset_mm: known('loadLineOffset_mm', hub.loadLineOffset_mm),
    spread_mm: known('spread_mm', hub.spread_mm),
    rowRating_N: known('rowRating_N', hub.outboard.C_N),
    contactAngle_deg: known('contactAngle_deg', hub.outboard.contactAngle_deg),
    reach_mm: known('reach_mm', car.fixing?.reach_mm ?? NaN),
    tyreMake_percent: 0,
    newInset_mm: 0,
    camberSet_deg: 0,
    crossCamber_deg: known('crossCamber_deg', 0),
    crossCaster_deg: known('crossCaster_deg', 0),
    crossInclination_deg: known('crossInclination_deg', 0),
  };
}

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

function planeBearing(
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
