import { QUANTITIES, type Quantity } from '../quantities.ts';

/** What a result belongs to: one of the front wheels, or both together. */
export type ResultPlace = 'left' | 'right' | 'axle';

/** Under which heading a result is told. */
export type ResultGroup =
  'steering geometry' | 'moments' | 'hands' | 'bearing' | 'room' | 'rolling' | 'fastening';

/** A quantity that a change is judged by. */
export interface JudgedQuantity extends Quantity {
  readonly group: ResultGroup;
  /** Of each front wheel, or of both together. */
  readonly of: 'wheel' | 'axle';
  /** Under which load, or by which convention: said beside the number. */
  readonly under?: string;
}

const WHEEL = { of: 'wheel' } as const;
const AXLE = { of: 'axle' } as const;

const FROM_MIDDLE = { kind: 'length', place: 'the middle of the car', ...WHEEL } as const;

const HANDS = {
  kind: 'force',
  positive: 'to the left',
  negative: 'to the right',
  subject: 'it turns the steering wheel',
  group: 'hands',
  ...AXLE,
} as const;

const GEOMETRY = { group: 'steering geometry', ...WHEEL } as const;
const MOMENT = { group: 'moments', ...WHEEL } as const;
const BEARING = { group: 'bearing', ...WHEEL } as const;

/** Every result of a judgement, in the order in which models give them and reports tell them. */
export const JUDGED = {
  scrubRadius: { ...QUANTITIES.scrubRadius, ...GEOMETRY },
  spindleOffset: { ...QUANTITIES.spindleOffset, ...GEOMETRY },
  trail: { ...QUANTITIES.trail, ...GEOMETRY },
  inclination: { ...QUANTITIES.inclination, ...GEOMETRY },
  caster: { ...QUANTITIES.caster, ...GEOMETRY },
  camber: { ...QUANTITIES.camber, ...GEOMETRY },
  includedAngle: { ...QUANTITIES.includedAngle, ...GEOMETRY },
  brakeMoment: { ...QUANTITIES.brakeMoment, ...MOMENT, under: 'hard braking' },
  driveMoment: { ...QUANTITIES.driveMoment, ...MOMENT, under: 'driving hard' },
  recuperationMoment: {
    ...QUANTITIES.driveMoment,
    name: 'moment of braking through the shaft',
    symbol: 'M_g',
    ...MOMENT,
    under: 'recuperation or engine braking',
  },
  blowMoment: { ...QUANTITIES.blowMoment, ...MOMENT, under: 'a blow rearward' },
  outboardRadial: { ...QUANTITIES.outboardRadial, ...BEARING, under: 'straight ahead' },
  inboardRadial: { ...QUANTITIES.inboardRadial, ...BEARING, under: 'straight ahead' },
  outboardMeanLoad: { ...QUANTITIES.outboardMeanLoad, ...BEARING, under: 'the stated duty' },
  inboardMeanLoad: { ...QUANTITIES.inboardMeanLoad, ...BEARING, under: 'the stated duty' },
  outboardLife: { ...QUANTITIES.outboardLife, ...BEARING, under: 'the stated duty' },
  inboardLife: { ...QUANTITIES.inboardLife, ...BEARING, under: 'the stated duty' },
  hubLife: { ...QUANTITIES.hubLife, ...BEARING, under: 'the stated duty' },
  outerEdge: { ...QUANTITIES.outerEdge, ...FROM_MIDDLE, group: 'room' },
  innerEdge: { ...QUANTITIES.innerEdge, ...FROM_MIDDLE, group: 'room' },
  outerSidewall: {
    name: 'outer sidewall of the tyre',
    symbol: 'y_p',
    ...FROM_MIDDLE,
    group: 'room',
  },
  innerSidewall: {
    name: 'inner sidewall of the tyre',
    symbol: 'y_q',
    ...FROM_MIDDLE,
    group: 'room',
  },
  loadedRadius: { ...QUANTITIES.loadedRadius, group: 'rolling', ...WHEEL },
  rollingCircumference: {
    name: 'rolling circumference',
    symbol: 'U',
    kind: 'length',
    group: 'rolling',
    ...WHEEL,
  },
  trueSpeed: {
    name: 'true speed, of the speed shown before',
    symbol: 'v/v_0',
    kind: 'share',
    group: 'rolling',
    ...WHEEL,
    under: 'a speedometer that was right before',
  },
  loadShare: {
    name: 'wheel load, of what the load index allows',
    symbol: 'F_z/F_L',
    kind: 'share',
    group: 'rolling',
    ...WHEEL,
    under: 'standing, as loaded when weighed',
  },
  engagement: { ...QUANTITIES.engagement, group: 'fastening', ...WHEEL },
  engagementSpare: {
    name: 'thread engagement beyond one diameter',
    symbol: 'h-d',
    kind: 'length',
    positive: 'to spare',
    negative: 'missing',
    group: 'fastening',
    ...WHEEL,
    under: 'the handbooks’ rule for steel',
  },
  track: { ...QUANTITIES.track, group: 'room', ...AXLE },
  brakingRimForce: {
    ...HANDS,
    name: 'force at the rim, braking alike on both sides',
    symbol: 'F_b',
    under: 'hard braking',
  },
  splitRimForce: {
    ...HANDS,
    name: 'force at the rim on split friction',
    symbol: 'F_h',
    under: 'hard braking, the right wheel on ice',
  },
  splitRimForceUnassisted: {
    ...HANDS,
    name: 'the same without power steering',
    symbol: 'F_0',
    under: 'hard braking, the right wheel on ice',
  },
  splitSteering: {
    name: 'steering moment of both wheels on split friction',
    symbol: 'M_t',
    kind: 'moment',
    positive: 'to the left',
    negative: 'to the right',
    subject: 'it turns the wheels',
    group: 'hands',
    ...AXLE,
    under: 'hard braking, the right wheel on ice',
  },
  splitYaw: { ...QUANTITIES.yawMoment, group: 'hands', ...AXLE, under: 'the same' },
  blowRimForce: {
    ...HANDS,
    name: 'force at the rim from a blow on the left wheel',
    symbol: 'F_s',
    under: 'a blow rearward',
  },
  blowRimForceUnassisted: {
    ...HANDS,
    name: 'force of that blow without power steering',
    symbol: 'F_1',
    under: 'a blow rearward',
  },
} as const satisfies Record<string, JudgedQuantity>;

export type JudgedId = keyof typeof JUDGED;

export const JUDGED_IDS = Object.keys(JUDGED) as readonly JudgedId[];

export const judgedQuantity = (id: JudgedId): JudgedQuantity => JUDGED[id];
