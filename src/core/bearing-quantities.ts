import type { Quantity } from './quantities.ts';

const ALONG_THE_SPIN_AXIS = {
  kind: 'length',
  positive: 'outboard',
  negative: 'inboard',
  place: 'the rows’ mid-plane',
} as const;

/** The wheel load goes up through the tyre: the hub presses on the balls above it, unless it is turned round. */
const ROW_LOAD = {
  kind: 'force',
  positive: 'at the top',
  negative: 'at the bottom',
  subject: 'the row is loaded',
} as const;

/** Which way a moment tips the wheel on its bearing, about a line along the car. */
const TILT = {
  kind: 'moment',
  positive: 'top inboard',
  negative: 'top outboard',
  subject: 'it tips the wheel',
} as const;

/** What the two rows of a wheel bearing stand on and what they carry. */
export const BEARING_QUANTITIES = {
  contactAngle: { name: 'contact angle', symbol: '\\alpha', kind: 'angle' },
  rowPitch: { name: 'row spacing', symbol: 'b', kind: 'length' },
  pitchDiameter: { name: 'pitch diameter', symbol: 'd_m', kind: 'length' },
  pressureCentreSpread: { name: 'pressure-centre spread', symbol: 'a', kind: 'length' },
  loadLineOffset: {
    name: 'load-line offset',
    symbol: 'x',
    ...ALONG_THE_SPIN_AXIS,
    subject: 'the load line lies',
  },
  loadCrossing: {
    name: 'crossing of the tyre force',
    symbol: 'x_F',
    ...ALONG_THE_SPIN_AXIS,
    subject: 'the tyre force crosses the spin axis',
  },
  outboardRadial: { name: 'radial load of the outboard row', symbol: 'F_o', ...ROW_LOAD },
  inboardRadial: { name: 'radial load of the inboard row', symbol: 'F_i', ...ROW_LOAD },
  sideForce: {
    name: 'side force',
    symbol: 'F_y',
    kind: 'force',
    positive: 'toward the car',
    negative: 'away from the car',
    subject: 'the road pushes the tyre',
  },
  loadTilt: { name: 'tilting moment of the wheel load', symbol: 'K_z', ...TILT },
  sideTilt: { name: 'tilting moment of the side force', symbol: 'K_y', ...TILT },
  tilt: { name: 'tilting moment on the bearing', symbol: 'K', ...TILT },
  outboardInduced: {
    name: 'induced thrust of the outboard row',
    symbol: 'S_o',
    kind: 'force',
  },
  inboardInduced: { name: 'induced thrust of the inboard row', symbol: 'S_i', kind: 'force' },
  outboardThrust: { name: 'thrust through the outboard row', symbol: 'A_o', kind: 'force' },
  inboardThrust: { name: 'thrust through the inboard row', symbol: 'A_i', kind: 'force' },
} as const satisfies Record<string, Quantity>;

export type BearingQuantity = keyof typeof BEARING_QUANTITIES;

/** Whether a word names a quantity of the wheel bearing. */
export const isBearingQuantity = (id: string): id is BearingQuantity =>
  Object.hasOwn(BEARING_QUANTITIES, id);
