import type { BenchDocument } from '#core/judgement/bench-document.ts';

export type Numbers = Readonly<Record<string, number>>;

export const rad = (deg: number): number => (deg * Math.PI) / 180;
export const deg = (angle: number): number => (angle * 180) / Math.PI;

interface Size {
  readonly width: number;
  readonly aspect: number;
  readonly rim: number;
  readonly index: number;
}

export function sizeOf(text: string): Size {
  const [, width, aspect, rim, index] =
    /^(\d+)\/(\d+) R(\d+)C?(?: (\d+))?/.exec(text)?.map(Number) ?? [];
  return { width: width ?? NaN, aspect: aspect ?? NaN, rim: rim ?? NaN, index: index ?? NaN };
}

export const diameter = ({ width, aspect, rim }: Size): number =>
  25.4 * rim + (2 * width * aspect) / 100;

/** ISO 4000-1 (from memory): rim width over section width by aspect ratio, to the next half inch. */
export function measuringRim_mm({ width, aspect }: Size): number {
  const share =
    aspect >= 75 ? 0.7 : aspect >= 60 ? 0.75 : aspect >= 50 ? 0.8 : aspect >= 45 ? 0.85 : 0.9;
  return 12.7 * Math.round((share * width) / 12.7);
}

/** UN Regulation 30, annex 4 (from memory): the load indices of the scenarios, in kilograms. */
export const LOAD_KG: Readonly<Record<number, number>> = {
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
