import type { AXIS_WAYS } from '#core/judgement/bench-document.ts';
import type { InputId } from '#core/judgement/inputs.ts';

export type AxisWay = (typeof AXIS_WAYS)[number];

/** One stop on the way around a car with tape and sheet. */
export interface InputStep {
  readonly id: string;
  readonly title: string;
  /** What to do at this stop, and what it is good for. */
  readonly about: string;
  readonly inputs: (way: AxisWay) => readonly InputId[];
}

const always =
  (...ids: readonly InputId[]) =>
  (): readonly InputId[] =>
    ids;

/** The way around the car: what is quickest to find and matters most comes first. */
export const INPUT_STEPS: readonly InputStep[] = [
  {
    id: 'wheel',
    title: 'Wheel',
    about:
      'Inset and width are cast into the wheel, mostly behind a spoke: 7.5J and ET 45 are a rim of 7.5 inches with an inset of 45 mm. The rest is tape work on level ground, at the pressure and load that you drive with.',
    inputs: always('inset_mm', 'rimWidth_in', 'hubUp_mm', 'track_mm'),
  },
  {
    id: 'alignment',
    title: 'Alignment sheet',
    about:
      'Take the left front wheel’s column, the car as it is now. Where a sheet has no inclination, leave it: what is usual then stands in, with its wide ±.',
    inputs: always('camber_deg', 'caster_deg', 'inclination_deg', 'toe_deg'),
  },
  {
    id: 'axis',
    title: 'Where the axis runs',
    about:
      'Straightedge under the rim’s outer edge, plumb line from the pivot, tape along the floor. The lower ball joint alone, with the sheet’s angles, already tells most; a strut’s top bearing or an upper ball joint tells the rest.',
    inputs: (way) =>
      way === 'pivots'
        ? [
            'lowerIn_mm',
            'lowerUp_mm',
            'upperIn_mm',
            'upperUp_mm',
            'halfRim_mm',
            'lowerAhead_mm',
            'upperAhead_mm',
          ]
        : ['lowerIn_mm', 'lowerUp_mm', 'halfRim_mm', 'lowerAhead_mm'],
  },
  {
    id: 'load',
    title: 'Wheel load',
    about:
      'Of one front wheel, the car standing as you drive it. Scales read kilograms: write the unit behind the number. Half the front axle load from the papers will do.',
    inputs: always('wheelLoad_N'),
  },
  {
    id: 'steering',
    title: 'Steering',
    about: 'For the forces in your hands. Leave it, and usual values stand in.',
    inputs: always('rodAhead_mm', 'travelPerTurn_mm', 'rimDiameter_mm', 'assist'),
  },
  {
    id: 'hub',
    title: 'Wheel bearing',
    about:
      'From a drawing of the hub and a bearing catalogue, which few have at hand. Ratios of lives hang on these far less than the lives themselves.',
    inputs: always('loadLineOffset_mm', 'spread_mm', 'rowRating_N', 'contactAngle_deg'),
  },
  {
    id: 'parts',
    title: 'How true the new parts are',
    about:
      'New wheels, tyres and settings are never quite what they are marked. Leave it, unless you have measured them.',
    inputs: always('newInset_mm', 'tyreMake_percent', 'camberSet_deg', 'rollingRatio'),
  },
];
