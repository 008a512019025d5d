import type { Quantity } from '#core/quantities.ts';

/** Steps on the way to where a wheel and its tyre stand. */
export const OWN_WHEEL_QUANTITIES = {
  wheelMove: {
    name: 'movement of the wheel',
    symbol: 'v',
    kind: 'length',
    positive: 'outboard',
    negative: 'inboard',
    subject: 'the wheel moves',
  },
  spacer: {
    name: 'spacer thickness',
    symbol: 't',
    kind: 'length',
  },
  innerEdgeMove: {
    name: 'movement of the inner edge',
    symbol: 'v_i',
    kind: 'length',
    positive: 'outboard',
    negative: 'inboard',
    subject: 'the inner edge of the rim moves',
  },
  contactOut: {
    name: 'distance of the contact centre from the middle of the car',
    symbol: 'y',
    kind: 'length',
  },
  insetChange: {
    name: 'change of the inset',
    symbol: '\\Delta E',
    kind: 'length',
    positive: 'more inset',
    negative: 'less inset',
    subject: 'it takes',
  },
  clearance: {
    name: 'clearance inside the wheel',
    symbol: 'c',
    kind: 'length',
  },
  inset: {
    name: 'inset of the wheel',
    symbol: 'E',
    kind: 'length',
  },
  outerDiameter: {
    name: 'outer diameter of the tyre',
    symbol: 'D',
    kind: 'length',
  },
  sectionHeight: {
    name: 'section height of the tyre',
    symbol: 'H',
    kind: 'length',
  },
  trueSpeed: {
    name: 'true speed',
    symbol: 'v',
    kind: 'speed',
  },
  dialAhead: {
    name: 'share by which the dial shows too much',
    symbol: 'p',
    kind: 'share',
  },
  radiusChange: {
    name: 'change of the loaded radius',
    symbol: '\\Delta R',
    kind: 'length',
    positive: 'larger',
    negative: 'smaller',
    subject: 'the loaded radius becomes',
  },
  contactMove: {
    name: 'movement of the contact centre',
    symbol: 'v',
    kind: 'length',
    positive: 'outboard',
    negative: 'inboard',
    subject: 'the contact centre moves',
  },
  spacerToNought: {
    name: 'spacer that brings the scrub radius to nought',
    symbol: 't_0',
    kind: 'length',
  },
} as const satisfies Record<string, Quantity>;
