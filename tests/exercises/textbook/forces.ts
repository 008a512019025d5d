import {
  cos,
  lean,
  n,
  type Numbers,
  out,
  rearward,
  sin,
  type Step,
  tan,
  upright,
  was,
} from './sums.ts';

/** Newton metres in the hands for a newton on the rack: the pinion's radius over the power steering. */
const pinion = (item: Numbers): number =>
  n(item, 'travel_mm') / 1000 / (2 * Math.PI) / n(item, 'assist');

const braked = (item: Numbers): boolean => (item['which'] as unknown) === 'caliper';

const forward = (item: Numbers): number => ((item['which'] as unknown) === 'drive' ? -1 : 1);

/** +1 where the shafts' outer ends stand higher than the inner ones, −1 where lower. */
const outerEnd = (item: Numbers): number => ((item['outer'] as unknown) === 'higher' ? 1 : -1);

/**
 * Forces and levers: force times lever, a leaning axis taking the cosine of a level lever and the sine of a level
 * couple; a pinion that rolls on its rack.
 *
 * Source: plane statics (relations from memory); for the leaning axis, Reimpell, Stoll and Betzler, The Automotive
 * Chassis, section 3.8.
 */
export const FORCES: Readonly<Record<string, readonly Step[]>> = {
  'drive-moment': [
    (item) => n(item, 'spindle_mm') * upright(item),
    (item, before) => rearward(item, -n(item, 'force_N'), was(before, 0)),
  ],
  'kerb-moment': [
    (item) => n(item, 'scrub_mm') + lean(item),
    (item, before) => was(before, 0) * upright(item),
    (item, before) => rearward(item, 1000 * n(item, 'blow_kN'), was(before, 1)),
  ],
  'shaft-torque': [
    (item) => (1000 * n(item, 'torque_Nm')) / n(item, 'radius_mm'),
    (item, before) => rearward(item, -was(before, 0), n(item, 'leverAtCentre_mm')),
  ],
  'lever-by-case': [
    (item) => Math.abs(n(item, braked(item) ? 'scrub_mm' : 'spindle_mm')) * upright(item),
    (item, before) =>
      rearward(
        item,
        forward(item) * n(item, 'force_N'),
        (braked(item) ? Math.sign(n(item, 'scrub_mm')) : 1) * was(before, 0),
      ),
  ],
  'brake-moment': [
    (item) => n(item, 'spindle_mm') - lean(item),
    (item, before) => rearward(item, n(item, 'force_N'), was(before, 0) * upright(item)),
  ],
  'brake-force-moved': [
    (item) => (n(item, 'force_N') * n(item, 'radius_mm')) / 1000,
    (item) => rearward(item, n(item, 'force_N'), n(item, 'spindle_mm') * upright(item)),
    (item, before) => -out(item) * was(before, 0) * sin(n(item, 'inclination_deg')),
    (_item, before) => was(before, 1) + was(before, 2),
  ],
  'one-pedal': [
    (item) => rearward(item, n(item, 'motor_N'), n(item, 'leverAtCentre_mm')),
    (item) => rearward(item, n(item, 'friction_N'), n(item, 'leverAtRoad_mm')),
    (_item, before) => was(before, 0) + was(before, 1),
  ],
  'rod-force-from-brake': [
    (item) => (n(item, 'brake_N') * n(item, 'scrub_mm')) / 1000,
    (item, before) => (n(item, 'forward') * was(before, 0)) / (n(item, 'lever_mm') / 1000),
  ],
  'rim-force-from-rod': [
    (item) => n(item, 'rod_N') * cos(n(item, 'angle_deg')),
    (item, before) => n(item, 'forward') * was(before, 0) * pinion(item),
    (item, before) => was(before, 1) / (n(item, 'rim_mm') / 2000),
  ],
  'scrub-for-rim-force': [
    (item) => n(item, 'rim_N') * (n(item, 'rim_mm') / 2000),
    (item, before) => (n(item, 'forward') * was(before, 0)) / pinion(item),
    (item, before) =>
      (n(item, 'forward') * was(before, 1) * n(item, 'lever_mm')) / n(item, 'brake_N'),
  ],
  'net-rack-from-brakes': [
    (item) => ((n(item, 'left_N') - n(item, 'right_N')) * n(item, 'scrub_mm')) / 1000,
    (item, before) => (n(item, 'forward') * was(before, 0)) / (n(item, 'lever_mm') / 1000),
  ],
  'yaw-and-steering': [
    (item) => (out(item) * (n(item, 'dry_N') - n(item, 'ice_N')) * n(item, 'track_mm')) / 2000,
    (item, before) => (was(before, 0) / (n(item, 'track_mm') / 2)) * n(item, 'scrub_mm'),
  ],
  'spacer-that-flips': [
    (item) => n(item, 'spindle_mm') - lean(item),
    (_item, before) => -was(before, 0),
    (item, before) =>
      ((n(item, 'left_N') - n(item, 'right_N')) *
        (n(item, 'spacer_mm') - was(before, 1)) *
        upright(item)) /
      1000,
  ],
  'unequal-shafts': [
    (item) => outerEnd(item) * n(item, 'torque_Nm') * tan(n(item, 'left_deg') / 2),
    (item) => -outerEnd(item) * n(item, 'torque_Nm') * tan(n(item, 'right_deg') / 2),
    (_item, before) => was(before, 0) + was(before, 1),
  ],
  'brake-difference-from-rim': [
    (item) => (n(item, 'forward') * n(item, 'rim_N') * (n(item, 'rim_mm') / 2000)) / pinion(item),
    (item, before) => (n(item, 'forward') * was(before, 0) * n(item, 'lever_mm')) / 1000,
    (item, before) => was(before, 1) / (n(item, 'scrub_mm') / 1000),
  ],
  'side-force-moment': [
    (item) => n(item, 'trail_mm') + n(item, 'tyre_mm'),
    (item, before) =>
      (((item['bend'] as unknown) === 'left' ? -1 : 1) * n(item, 'force_N') * was(before, 0)) /
      1000,
  ],
  'trail-from-moments': [
    (item) => (1000 * n(item, 'limit_Nm')) / n(item, 'limit_N'),
    (item) => (1000 * n(item, 'gentle_Nm')) / n(item, 'gentle_N'),
    (_item, before) => was(before, 1) - was(before, 0),
  ],
  'load-left-right': [
    (item) => n(item, 'trail_mm') * sin(n(item, 'inclination_deg')),
    (item, before) => (-n(item, 'left_N') * was(before, 0)) / 1000,
    (item, before) => (n(item, 'right_N') * was(before, 0)) / 1000,
    (_item, before) => was(before, 1) + was(before, 2),
  ],
  'self-return-on-lock': [
    (item) =>
      n(item, 'scrub_mm') +
      (n(item, 'spindle_mm') - n(item, 'scrub_mm')) * cos(n(item, 'turn_deg')),
    (item, before) => was(before, 0) * sin(n(item, 'inclination_deg')) * sin(n(item, 'turn_deg')),
    (item, before) =>
      (((item['way'] as unknown) === 'left' ? -2 : 2) * n(item, 'load_N') * was(before, 1)) / 1000,
  ],
  'parking-at-the-rim': [
    (item) => Math.sqrt((n(item, 'width_mm') / 3) ** 2 + n(item, 'scrub_mm') ** 2),
    (item, before) => (n(item, 'friction') * n(item, 'load_N') * was(before, 0)) / 1000,
    (item, before) => (2 * was(before, 1)) / (n(item, 'arm_mm') / 1000),
    (item, before) =>
      (was(before, 2) * n(item, 'travel_mm')) / (2 * Math.PI) / (n(item, 'rim_mm') / 2),
  ],
};
