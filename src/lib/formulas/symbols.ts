import { QUANTITIES, type QuantityId, type QuantityKind } from '#core/quantities.ts';

/** A symbol on the formula sheet: a quantity of the course, or what else stands in its formulas. */
export type SheetSymbol =
  | { readonly quantity: QuantityId }
  | { readonly tex: string; readonly name: string; readonly unit?: string };

/** Symbols of the formula sheet, in the order in which they come. */
export const SYMBOLS = [
  { quantity: 'inclination' },
  { quantity: 'caster' },
  { quantity: 'camber' },
  { quantity: 'toe' },
  { quantity: 'scrubRadius' },
  { quantity: 'trail' },
  { quantity: 'spindleOffset' },
  { quantity: 'casterOffsetAtCentre' },
  { quantity: 'loadedRadius' },
  { quantity: 'steer' },
  { quantity: 'frontLift' },
  { quantity: 'rodForce' },
  { quantity: 'rackForce' },
  { quantity: 'handwheelTorque' },
  { quantity: 'rimForce' },
  { tex: 'y_L,\\ z_L', name: 'lower pivot, from the middle and above the road', unit: 'mm' },
  { tex: 'y_P,\\ y_G', name: 'contact centre, axis at the road, from the middle', unit: 'mm' },
  { tex: 'u_z', name: 'upright part of the axis, nearly one' },
  {
    tex: '\\gamma_\\text{in},\\ \\gamma_\\text{out}',
    name: 'camber with the wheel turned in, out',
  },
  { tex: '\\varphi', name: 'gauge across the wheel, front edge up positive' },
  { tex: 'F', name: 'force along the car', unit: 'N' },
  { tex: 'M', name: 'moment about the steering axis, wheel to the left positive', unit: 'N·m' },
  { tex: 'a', name: 'lever of the tie rod; spread of the pressure centres', unit: 'm' },
  { tex: 's', name: 'rack travel for one turn of the wheel', unit: 'm' },
  { tex: 'k', name: 'factor of the power steering' },
  { tex: 'R_h', name: 'radius of the steering wheel’s rim', unit: 'm' },
  { tex: 'F_l,\\ F_r', name: 'braking force of the left, the right wheel', unit: 'N' },
  { tex: 't', name: 'track; pneumatic trail; thickness of a spacer', unit: 'mm' },
  { tex: 'F_y', name: 'side force on the tyre, toward the car positive', unit: 'N' },
  { tex: 'F_z,\\ W', name: 'wheel load', unit: 'N' },
  { tex: '\\mu,\\ B', name: 'friction, width of the tyre’s print' },
  { tex: 'x', name: 'load line, outboard of the rows’ middle', unit: 'mm' },
  { tex: 'F_r,\\ F_a', name: 'of a row, its radial load and thrust', unit: 'N' },
  { tex: 'F_o,\\ F_i', name: 'radial load of the outboard, the inboard row', unit: 'N' },
  { tex: 'X,\\ Y,\\ e', name: 'factors of ISO 281 for the contact angle' },
  { tex: 'C,\\ P', name: 'load rating, equivalent load', unit: 'N' },
  { tex: 'q_i', name: 'share of the revolutions' },
  { tex: 'E', name: 'inset', unit: 'mm' },
] as const satisfies readonly SheetSymbol[];

/** How a kind of quantity is written on the sheet. */
const UNITS: Readonly<Record<QuantityKind, string>> = {
  length: 'mm',
  angle: '°',
  force: 'N',
  moment: 'N·m',
  speed: 'km/h',
  life: 'million revolutions',
  distance: 'km',
  share: '%',
};

/** A symbol with its words: what it is called, its unit, and what its positive side means. */
export interface ToldSymbol {
  readonly tex: string;
  readonly name: string;
  readonly unit: string;
  /** `the top of the axis leans inboard`; empty where there is no sign. */
  readonly positive: string;
}

export function toldSymbol(symbol: SheetSymbol): ToldSymbol {
  if (!('quantity' in symbol)) return { unit: '', ...symbol, positive: '' };
  const about: {
    readonly symbol: string;
    readonly name: string;
    readonly kind: QuantityKind;
    readonly subject?: string;
    readonly positive?: string;
  } = QUANTITIES[symbol.quantity];
  const { subject = '', positive = '' } = about;
  return {
    tex: about.symbol,
    name: about.name,
    unit: UNITS[about.kind],
    positive: positive === '' ? '' : `${subject} ${positive}`.trim(),
  };
}
