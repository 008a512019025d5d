import type { Entry } from './entry';
import { COMMON } from './term-sources';

/** Terms of holding a wheel on and of measuring one’s own car. */
export const OWN_CAR_TERMS = [
  {
    id: 'clamp-load',
    term: 'Clamp load',
    aliases: ['preload', 'bolt tension', 'clamping force'],
    meaning:
      'How hard a tightened fastener squeezes the parts under it together. On a wheel it makes the friction that holds wheel and hub.',
    source: 'VDI 2230 (from memory)',
    quantity: 'clampLoad',
    lesson: 'holding-the-wheel-on',
  },
  {
    id: 'measurement-uncertainty',
    term: 'Measurement uncertainty',
    aliases: ['error bar', 'tolerance of a reading', 'doubt'],
    meaning:
      'How far the true value may be from a measured one. The standard uncertainty is its standard deviation; twice that holds the true value in about 95 cases of 100.',
    source: 'JCGM 100:2008, clause 2 (from memory)',
    lesson: 'measuring-your-own-car',
  },
  {
    id: 'plumb-line',
    term: 'Plumb line',
    aliases: ['plumb bob'],
    meaning:
      'A cord with a weight at its end. It hangs straight down, and so shows on the floor what lies above.',
    source: COMMON,
    lesson: 'measuring-your-own-car',
  },
  {
    id: 'seat',
    term: 'Seat',
    aliases: ['bolt seat', 'nut seat', 'lug seat'],
    meaning:
      'The face on which a wheel bolt or nut presses on the wheel: a cone, a ball, or a flat collar. Fastener and wheel have to have the same.',
    source: COMMON,
    lesson: 'holding-the-wheel-on',
  },
  {
    id: 'spigot',
    term: 'Spigot',
    aliases: ['hub-centric ring', 'centring collar', 'pilot'],
    meaning:
      'The collar on the hub, or on a spacer, that fits the wheel’s centre bore and holds the wheel in the middle while it is tightened.',
    source: COMMON,
    lesson: 'holding-the-wheel-on',
  },
  {
    id: 'thread-engagement',
    term: 'Thread engagement',
    aliases: ['engaged length', 'length of engagement'],
    meaning:
      'The length over which bolt and nut, or bolt and hub, hold each other by their threads. Over the pitch it makes the number of turns.',
    source: COMMON,
    quantity: 'engagement',
    lesson: 'holding-the-wheel-on',
  },
  {
    id: 'tightening-factor',
    term: 'Tightening factor',
    aliases: ['scatter of tightening'],
    meaning:
      'Largest clamp load over smallest, of fasteners tightened alike. About 1.6 for a torque wrench, 2.5 to 4 for an impact wrench.',
    source: 'VDI 2230 (from memory)',
    lesson: 'holding-the-wheel-on',
  },
  {
    id: 'tightening-torque',
    term: 'Tightening torque',
    aliases: ['wheel torque', 'torque setting'],
    meaning:
      'The torque with which a bolt or nut is tightened. Most of it is spent on friction; a small part stretches the bolt.',
    source: COMMON,
    quantity: 'tighteningTorque',
    lesson: 'holding-the-wheel-on',
  },
] as const satisfies readonly Entry[];
