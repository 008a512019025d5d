import { READINGS } from '../own-car/readings.ts';
import type { UnitName } from '../units/units.ts';
import { CROSS_INPUTS } from './cross-inputs.ts';

/** Where in the guided path an input is asked for. */
export type InputGroup = 'wheel' | 'alignment' | 'axis' | 'steering' | 'load' | 'hub' | 'change';

/** A number that a judgement rests on: how it is called, written down and found out. */
export interface InputAbout {
  readonly name: string;
  /** Unit in which documents write it; the end of its key says so. */
  readonly unit: Extract<UnitName, 'mm' | 'in' | 'deg' | 'N' | 'Nm' | 'percent' | 'ratio'>;
  readonly group: InputGroup;
  /** What it is read with, or where it stands. */
  readonly tool: string;
  /** What a positive value means, where the sign is not plain. */
  readonly positive?: string;
  /** Range that documents allow, in `unit`, both ends included. */
  readonly least: number;
  readonly most: number;
}

/**
 * Every number of the car that a judgement rests on, in the order in which models take them. Both front wheels
 * share them, as mirror images, but for the last few, which say what they differ by. Lengths across run inboard from the rim line (a
 * straightedge under the outer edge of the rim), heights from the floor, lengths along forward from the wheel centre.
 */
export const INPUTS = {
  hubUp_mm: {
    ...READINGS.hubUp,
    unit: 'mm',
    group: 'wheel',
    least: 50,
    most: 2000,
  },
  halfRim_mm: { ...READINGS.halfRim, unit: 'mm', group: 'wheel', least: 40, most: 250 },
  rimWidth_in: {
    name: 'rim width between the flanges',
    unit: 'in',
    group: 'wheel',
    tool: 'as cast into the wheel',
    least: 3,
    most: 16,
  },
  inset_mm: {
    name: 'inset of the wheel',
    unit: 'mm',
    group: 'wheel',
    tool: 'as cast into the wheel, or straightedge and tape',
    positive: 'the mounting face lies outboard of the middle of the rim',
    least: -150,
    most: 150,
  },
  track_mm: {
    name: 'track width',
    unit: 'mm',
    group: 'wheel',
    tool: 'tape between the middles of the treads',
    least: 600,
    most: 3000,
  },
  rollingRatio: {
    name: 'rolling circumference of a tyre, in outer diameters',
    unit: 'ratio',
    group: 'wheel',
    tool: 'one turn rolled along a tape',
    least: 2.8,
    most: 3.2,
  },
  camber_deg: {
    ...READINGS.camber,
    unit: 'deg',
    group: 'alignment',
    positive: 'the top of the wheel leans outboard',
    least: -30,
    most: 30,
  },
  toe_deg: {
    name: 'toe of one wheel',
    unit: 'deg',
    group: 'alignment',
    tool: 'alignment sheet',
    positive: 'toe-in',
    least: -30,
    most: 30,
  },
  caster_deg: {
    name: 'caster angle',
    unit: 'deg',
    group: 'alignment',
    tool: 'alignment sheet',
    positive: 'the top of the axis leans rearward',
    least: -30,
    most: 30,
  },
  inclination_deg: {
    name: 'steering-axis inclination',
    unit: 'deg',
    group: 'alignment',
    tool: 'alignment sheet',
    positive: 'the top of the axis leans inboard',
    least: -30,
    most: 45,
  },
  lowerIn_mm: { ...READINGS.lowerIn, unit: 'mm', group: 'axis', least: -400, most: 700 },
  lowerUp_mm: { ...READINGS.lowerUp, unit: 'mm', group: 'axis', least: 0, most: 2000 },
  lowerAhead_mm: {
    name: 'lower pivot ahead of the wheel centre',
    unit: 'mm',
    group: 'axis',
    tool: 'plumb line and tape',
    positive: 'ahead',
    least: -400,
    most: 400,
  },
  upperIn_mm: { ...READINGS.upperIn, unit: 'mm', group: 'axis', least: -400, most: 900 },
  upperUp_mm: { ...READINGS.upperUp, unit: 'mm', group: 'axis', least: 0, most: 4000 },
  upperAhead_mm: {
    name: 'upper pivot ahead of the wheel centre',
    unit: 'mm',
    group: 'axis',
    tool: 'plumb line and tape',
    positive: 'ahead',
    least: -600,
    most: 600,
  },
  rodAhead_mm: {
    name: 'tie rod’s outer end ahead of the lower pivot',
    unit: 'mm',
    group: 'steering',
    tool: 'tape',
    positive: 'ahead',
    least: -400,
    most: 400,
  },
  travelPerTurn_mm: {
    name: 'rack travel in one turn of the steering wheel',
    unit: 'mm',
    group: 'steering',
    tool: 'tape at the rack, one turn',
    least: 5,
    most: 500,
  },
  rimDiameter_mm: {
    name: 'diameter of the steering wheel',
    unit: 'mm',
    group: 'steering',
    tool: 'tape',
    least: 100,
    most: 1000,
  },
  assist: {
    name: 'by how much power steering divides the torque',
    unit: 'ratio',
    group: 'steering',
    tool: 'maker’s data, or a spring balance at the rim, standing, engine off and running',
    least: 0.1,
    most: 1000,
  },
  wheelLoad_N: {
    name: 'load of one front wheel, standing',
    unit: 'N',
    group: 'load',
    tool: 'wheel scales, or half the front axle load',
    least: 200,
    most: 100_000,
  },
  loadLineOffset_mm: {
    name: 'wheel’s centre plane outboard of the middle between the bearing’s pressure centres',
    unit: 'mm',
    group: 'hub',
    tool: 'maker’s drawing of the hub',
    positive: 'outboard',
    least: -300,
    most: 300,
  },
  spread_mm: {
    name: 'distance between the bearing’s pressure centres',
    unit: 'mm',
    group: 'hub',
    tool: 'maker’s drawing of the hub',
    least: 5,
    most: 1000,
  },
  rowRating_N: {
    name: 'dynamic load rating of one row',
    unit: 'N',
    group: 'hub',
    tool: 'bearing catalogue',
    least: 100,
    most: 1e7,
  },
  contactAngle_deg: {
    name: 'contact angle of the bearing’s rows',
    unit: 'deg',
    group: 'hub',
    tool: 'bearing catalogue',
    least: 5,
    most: 45,
  },
  reach_mm: {
    name: 'reach of the thread past the wheel, without a spacer',
    unit: 'mm',
    group: 'hub',
    tool: 'tape, on the bolt or stud with the wheel beside it',
    least: 1,
    most: 150,
  },
  tyreMake_percent: {
    name: 'by how much another make of the same size is larger',
    unit: 'percent',
    group: 'change',
    tool: 'tape around both tyres',
    least: -5,
    most: 5,
  },
  newInset_mm: {
    name: 'by how much the new wheel’s inset differs from what it is marked',
    unit: 'mm',
    group: 'change',
    tool: 'straightedge and tape on the new wheel',
    least: -10,
    most: 10,
  },
  camberSet_deg: {
    name: 'by how much the camber is set beside its mark',
    unit: 'deg',
    group: 'change',
    tool: 'alignment sheet after the work',
    least: -2,
    most: 2,
  },
  ...CROSS_INPUTS,
} as const satisfies Record<string, InputAbout>;

export type InputId = keyof typeof INPUTS;

export const INPUT_IDS = Object.keys(INPUTS) as readonly InputId[];

export const inputAbout = (id: InputId): InputAbout => INPUTS[id];
