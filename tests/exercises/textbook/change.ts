import {
  arctan,
  cos,
  lean,
  moreInset,
  n,
  type Numbers,
  rearward,
  sin,
  type Step,
  tan,
  upright,
  was,
} from './sums.ts';

const rimGain = (item: Numbers): number => 25.4 * (n(item, 'newWidth_in') - n(item, 'oldWidth_in'));

/** A beam on two supports, `spread_mm` apart, with the load that far outboard of their middle. */
const onOutboardRow = (item: Numbers, offset: number): number =>
  n(item, 'load_N') / 2 + (n(item, 'load_N') * offset) / n(item, 'spread_mm');

const outerDiameter = (width: number, aspect: number, rim: number): number =>
  25.4 * rim + (2 * width * aspect) / 100;

/** The contact centre lies so far outboard of the lower pivot before the camber is changed. */
const besideLower = (item: Numbers): number =>
  n(item, 'scrub_mm') + n(item, 'lowerUp_mm') * tan(n(item, 'inclination_deg'));

/** Where it has swung about the lower pivot: outboard of it, and below it. */
const swung = (item: Numbers, change: number): { readonly out: number; readonly down: number } => {
  const [b, h] = [besideLower(item), n(item, 'lowerUp_mm')];
  return { out: b * cos(change) - h * sin(change), down: h * cos(change) + b * sin(change) };
};

const lengthLess = (item: Numbers): number => n(item, 'length_mm') - n(item, 'wheel_mm');

const lowerFactor = (item: Numbers): number => n(item, 'lowerFactor') / 100;

const upperFactor = (item: Numbers): number => n(item, 'upperFactor') / 100;

/**
 * Changing a car: triangles, levers and the beam of the parts before, tyre sizes, T = K d F, and the root of summed
 * squares.
 *
 * Source: Reimpell, Stoll and Betzler, The Automotive Chassis, section 3.8; plane statics, the torque of a fastener
 * and the sum of uncertainties (relations from memory).
 */
export const CHANGE: Readonly<Record<string, readonly Step[]>> = {
  'spacer-and-inset': [
    (item) => n(item, 'spacer_mm') - moreInset(item),
    (item, before) => n(item, 'contact_mm') + was(before, 0),
  ],
  'wider-rim': [
    (item) => -moreInset(item),
    (item, before) => was(before, 0) - rimGain(item) / 2,
    (item, before) => n(item, 'clearance_mm') + was(before, 1),
  ],
  'spacer-moments': [
    (item) => rearward(item, n(item, 'brake_N'), n(item, 'scrub_mm') + n(item, 'spacer_mm')),
    (item) => rearward(item, n(item, 'blow_N'), n(item, 'spindle_mm') + n(item, 'spacer_mm')),
    (_item, before) => was(before, 0) + was(before, 1),
  ],
  'spacer-rows': [
    (item) => n(item, 'loadLine_mm') + n(item, 'spacer_mm'),
    (item, before) => n(item, 'load_N') - onOutboardRow(item, was(before, 0)),
    (item, before) => n(item, 'load_N') - was(before, 1),
    (item, before) => 100 * (onOutboardRow(item, n(item, 'loadLine_mm')) / was(before, 2)) ** 3,
  ],
  'inset-for-clearance': [
    (item) => rimGain(item) / 2 - n(item, 'clearance_mm') + n(item, 'wanted_mm'),
    (item, before) => n(item, 'inset_mm') - was(before, 0),
    (item, before) => n(item, 'scrub_mm') + n(item, 'inset_mm') - was(before, 1),
  ],
  'speed-on-other-tyre': [
    (item) => outerDiameter(n(item, 'oldWidth'), n(item, 'oldAspect'), n(item, 'oldRim')),
    (item) => outerDiameter(n(item, 'newWidth'), n(item, 'newAspect'), n(item, 'newRim')),
    (item, before) => (n(item, 'shown_km/h') * was(before, 1)) / was(before, 0),
  ],
  'taller-tyre': [
    (item) => n(item, 'newRadius_mm') - n(item, 'radius_mm'),
    (item, before) => n(item, 'scrub_mm') - was(before, 0) * tan(n(item, 'inclination_deg')),
    (item, before) => was(before, 1) - n(item, 'scrub_mm'),
  ],
  'camber-at-carrier': [
    (item) => n(item, 'newCamber_deg') - n(item, 'camber_deg'),
    (item, before) => swung(item, was(before, 0)).out - besideLower(item),
    (item, before) =>
      besideLower(item) +
      was(before, 1) -
      swung(item, was(before, 0)).down * tan(n(item, 'inclination_deg')),
  ],
  'diameter-for-dial': [
    (item) => 100 * (n(item, 'shown_km/h') / n(item, 'true_km/h') - 1),
    (item, before) => n(item, 'diameter_mm') * (1 + was(before, 0) / 100),
    (item, before) => (was(before, 1) - 25.4 * n(item, 'rim_in')) / 2,
  ],
  'thread-behind-spacer': [
    lengthLess,
    (item, before) => was(before, 0) - n(item, 'spacer_mm'),
    (item, before) => was(before, 1) - n(item, 'thread_mm'),
  ],
  'turns-of-a-nut': [
    (item) => n(item, 'turns') * n(item, 'pitch_mm'),
    (item, before) => was(before, 0) - n(item, 'wanted_mm'),
  ],
  'clamp-from-torque': [
    (item) => n(item, 'torque_Nm') / n(item, 'nutFactor') / n(item, 'thread_mm'),
    (item, before) => (2 * was(before, 0)) / (1 + n(item, 'scatter')),
    (item, before) => n(item, 'count') * was(before, 1),
  ],
  'clamp-for-a-stop': [
    (item) => (n(item, 'brake_N') * n(item, 'radius_mm')) / 1000,
    (item, before) => was(before, 0) / (n(item, 'circle_mm') / 2),
    (item, before) =>
      (was(before, 1) + n(item, 'brake_N') / 1000) / n(item, 'count') / n(item, 'friction'),
  ],
  'torque-for-least-clamp': [
    (item) => (n(item, 'least_kN') + n(item, 'least_kN') * n(item, 'scatter')) / 2,
    (item, before) => n(item, 'nutFactor') * n(item, 'thread_mm') * was(before, 0),
  ],
  'camber-by-plumb-line': [
    (item) => n(item, 'lower_mm') - n(item, 'upper_mm'),
    (item, before) => arctan(was(before, 0) / n(item, 'span_mm')),
    (item, before) => was(before, 1) - n(item, 'floor_deg'),
  ],
  'inset-by-straightedge': [
    (item) => n(item, 'width_mm') / 2,
    (item, before) => n(item, 'backSpacing_mm') - was(before, 0),
  ],
  'scrub-from-readings': [
    (item) =>
      (n(item, 'lowerUp_mm') * (n(item, 'upperIn_mm') - n(item, 'lowerIn_mm'))) /
      (n(item, 'upperUp_mm') - n(item, 'lowerUp_mm')),
    (item, before) => n(item, 'lowerIn_mm') - was(before, 0),
    (item, before) => was(before, 1) - n(item, 'middle_mm'),
  ],
  'doubt-of-scrub': [
    (item) => (lowerFactor(item) * n(item, 'lower_mm')) / Math.sqrt(3),
    (item) => (upperFactor(item) * n(item, 'upper_mm')) / Math.sqrt(3),
    (item, before) =>
      2 * Math.hypot(was(before, 0), was(before, 1), n(item, 'rim_mm') / Math.sqrt(3)),
  ],
  'reading-for-a-known-sign': [
    (item) => Math.abs(n(item, 'scrub_mm')) / 2,
    (item, before) => Math.sqrt(was(before, 0) ** 2 - n(item, 'others_mm') ** 2),
    (item, before) => (was(before, 1) * Math.sqrt(3)) / (n(item, 'factor') / 100),
  ],
  'case-van-tie-rod': [
    (item) => (n(item, 'rod_N') * n(item, 'lever_mm')) / 1000,
    (item, before) => (1000 * was(before, 0)) / n(item, 'brake_N'),
    (item, before) => was(before, 1) - n(item, 'scrub_mm'),
    (item, before) => was(before, 2) + moreInset(item),
  ],
  'case-row-life': [
    (item) => (1000 * n(item, 'rating_kN')) / Math.cbrt(n(item, 'life_Mrev')),
    (item, before) =>
      (n(item, 'spread_mm') * (was(before, 0) - n(item, 'load_N') / 2)) / n(item, 'load_N'),
    (item, before) => was(before, 1) - n(item, 'offset_mm'),
  ],
  'case-kerb-spacer': [
    (item) => n(item, 'most_Nm') / n(item, 'blow_kN'),
    (item, before) => was(before, 0) / upright(item),
    (item, before) => was(before, 1) - lean(item),
    (item, before) => was(before, 2) - n(item, 'scrub_mm'),
  ],
};
