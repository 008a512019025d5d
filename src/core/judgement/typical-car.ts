import { degrees, radians } from '../angle.ts';
import type { CornerDocument, HubDocument, SteeringDocument } from '../document/corner-document.ts';
import { loadedRadius } from '../tyre/loaded-radius.ts';
import { rollingRadius } from '../tyre/rolling.ts';
import type { Tyre } from '../tyre/tyre.ts';
import { TYPICAL_RANGES } from '../typical-ranges.ts';
import { fromSI } from '../units/convert.ts';
import type { BenchCarDocument } from './bench-document.ts';

/** What a typical corner is made for: all that a driver knows without a tool. */
export interface CarKind extends Pick<BenchCarDocument, 'suspension'> {
  readonly tyre: Tyre;
}

/** Shares of the standing wheel load in a duty of straight road and bends. Source: common practice, no source. */
const DUTY = [
  { share: 0.9, vertical: 1, inward: 0 },
  { share: 0.05, vertical: 1.35, inward: 0.6 },
  { share: 0.05, vertical: 0.65, inward: -0.22 },
] as const;

const WHEEL_LOAD_N = 4500;
export const TYPICAL_TRACK_mm = 1520;
export const TYPICAL_INSET_mm = 42;
const CAMBER_deg = -0.5;

/** The lower pivot below the wheel centre, and ahead of it. Source: common practice, no source. */
export const LOWER_BELOW_mm = 110;
const LOWER_AHEAD_mm = 5;

/** The upper pivot above the wheel centre: a strut’s top bearing, or a ball joint over or in the rim. */
export const UPPER_ABOVE_mm = { strut: 520, 'double-arm': 170 } as const;

/** The tie rod’s outer end ahead of the lower pivot: struts mostly have their rack behind, double arms ahead. */
const ROD_AHEAD_mm = { strut: -128, 'double-arm': 128 } as const;

/**
 * A corner as it is usual for such a car, to stand in for what nobody has measured: the axis meets the road at the
 * contact centre, with the middles of the usual ranges of inclination and caster. Every number of it has a wide ±
 * (`USUAL_PLUS_MINUS`).
 */
export function typicalCorner({ suspension, tyre }: CarKind): CornerDocument {
  const radius_mm = shown(fromSI(loadedRadius(tyre).value, 'mm'));
  const inclination = radians(TYPICAL_INCLINATION_deg);
  const caster = radians(TYPICAL_CASTER_deg);
  const lowerUp = radius_mm - LOWER_BELOW_mm;
  const rise = LOWER_BELOW_mm + UPPER_ABOVE_mm[suspension];
  const y = TYPICAL_TRACK_mm / 2 - lowerUp * Math.tan(inclination);
  const lower = [LOWER_AHEAD_mm, shown(y), lowerUp] as const;
  const upper = [
    shown(LOWER_AHEAD_mm - rise * Math.tan(caster)),
    shown(y - rise * Math.tan(inclination)),
    lowerUp + rise,
  ] as const;
  const lean_mm = radius_mm * Math.sin(radians(CAMBER_deg));
  return {
    side: 'left',
    axis: { lower_mm: lower, upper_mm: upper },
    wheel: {
      centre_mm: [0, shown(TYPICAL_TRACK_mm / 2 + lean_mm), radius_mm],
      camber_deg: CAMBER_deg,
      toe_deg: 0.1,
      loadedRadius_mm: radius_mm,
      rollingRadius_mm: shown(fromSI(rollingRadius(tyre).value, 'mm')),
    },
    steering: typicalSteering(suspension, lower),
    hub: TYPICAL_HUB,
  };
}

const middle = (id: 'inclination' | 'caster', otherwise: number): number => {
  const range = TYPICAL_RANGES[id];
  return range === undefined ? otherwise : degrees((range.least + range.most) / 2);
};

const TYPICAL_INCLINATION_deg = middle('inclination', 13);
const TYPICAL_CASTER_deg = middle('caster', 5);

export const typicalSteering = (
  suspension: CarKind['suspension'],
  [x, y, z]: readonly [number, number, number],
): SteeringDocument => ({
  outer_mm: [x + ROD_AHEAD_mm[suspension], y - 20, z + 15],
  inner_mm: [x + ROD_AHEAD_mm[suspension], y - 365, z + 35],
  travelPerTurn_mm: 48,
  rimDiameter_mm: 370,
  assist: 5,
});

/** A hub with two rows of balls. Source: common practice, no source. */
export const TYPICAL_HUB: HubDocument = {
  loadLineOffset_mm: 5,
  spread_mm: 65,
  outboard: { kind: 'ball', C_N: 30_000, contactAngle_deg: 35 },
  inboard: { kind: 'ball', C_N: 30_000, contactAngle_deg: 35 },
  duty: DUTY.map(({ share, vertical, inward }) => ({
    share,
    vertical_N: vertical * WHEEL_LOAD_N,
    inward_N: inward * WHEEL_LOAD_N,
  })),
};

/** To a tenth of a millimetre: more digits would pretend. */
const shown = (mm: number): number => Math.round(10 * mm) / 10;
