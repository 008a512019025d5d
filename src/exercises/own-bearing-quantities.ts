import type { Quantity } from '#core/quantities.ts';

/** Steps on the way to what a wheel bearing carries and how long it lasts. */
export const OWN_BEARING_QUANTITIES = {
  contactReach: {
    name: 'reach of the contact lines',
    symbol: 'v',
    kind: 'length',
  },
  leverAboutInboard: {
    name: 'lever about the inboard pressure centre',
    symbol: 'l',
    kind: 'length',
  },
  coupleForce: {
    name: 'force of the couple',
    symbol: 'F_k',
    kind: 'force',
    positive: 'on the outboard row',
    negative: 'on the inboard row',
    subject: 'it comes on top',
  },
  sideForce: {
    name: 'side force at the road',
    symbol: 'F_y',
    kind: 'force',
    positive: 'toward the car',
    negative: 'away from the car',
    subject: 'the road pushes the tyre',
  },
  momentToHold: {
    name: 'moment of the wheel load about the pressure centre',
    symbol: 'M',
    kind: 'moment',
  },
  inducedAway: {
    name: 'induced thrust of the row that is turned away',
    symbol: 'S',
    kind: 'force',
  },
  thrustFacing: {
    name: 'thrust through the row that faces the side force',
    symbol: 'A_1',
    kind: 'force',
  },
  thrustAway: {
    name: 'thrust through the row that is turned away',
    symbol: 'A_2',
    kind: 'force',
  },
  loadRatio: { name: 'load rating over load', symbol: 'C/P', kind: 'share' },
  loadFactor: { name: 'new load over old load', symbol: 'P/P_0', kind: 'share' },
  lifeLeft: { name: 'relative rating life', symbol: 'L/L_0', kind: 'share' },
  rowLife: { name: 'rating life of a row', symbol: 'L_{10}', kind: 'life' },
  otherRowLife: { name: 'rating life of the other row', symbol: 'L_i', kind: 'life' },
  pairLife: { name: 'rating life of both rows', symbol: 'L', kind: 'life' },
  lifeWay: { name: 'rating life as a distance', symbol: 's', kind: 'distance' },
  equivalentLoad: { name: 'equivalent load', symbol: 'P', kind: 'force' },
  meanLoad: { name: 'mean equivalent load', symbol: 'P_m', kind: 'force' },
  mostLoad: { name: 'highest equivalent load', symbol: 'P', kind: 'force' },
  rowLoad: { name: 'radial load of the outboard row', symbol: 'F_o', kind: 'force' },
  loadLine: {
    name: 'load-line offset',
    symbol: 'x',
    kind: 'length',
    positive: 'outboard',
    negative: 'inboard',
    subject: 'the load line lies',
    place: 'the middle of the rows',
  },
  mostRowLoad: {
    name: 'most radial load of the row',
    symbol: 'P',
    kind: 'force',
  },
  lifeOfRow: {
    name: 'rating life of the row, of what it was',
    symbol: 'L/L_0',
    kind: 'share',
  },
} as const satisfies Record<string, Quantity>;
