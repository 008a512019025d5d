import { arctan, cos, lean, moreInset, n, type Numbers, sin, type Step, tan, was } from './sums.ts';

const rise = (item: Numbers): number => n(item, 'upperUp_mm') - n(item, 'lowerUp_mm');

const across = (item: Numbers): number => n(item, 'lowerOut_mm') - n(item, 'upperOut_mm');

const along = (item: Numbers): number => n(item, 'lowerAhead_mm') - n(item, 'upperAhead_mm');

const outLessIn = (item: Numbers): number => n(item, 'turnedOut_deg') - n(item, 'turnedIn_deg');

const overTwiceTheSine: Step = (item, before) => was(before, 0) / (2 * sin(n(item, 'turn_deg')));

/** +1 turned out, −1 turned in. */
const way = (item: Numbers): number => ((item['way'] as unknown) === 'out' ? 1 : -1);

/**
 * The steering axis: its front and its side view as right-angled triangles, q = r + R tan σ for an upright wheel, a
 * rigid carrier that tilts as a whole, and the swing of camber over a turned wheel.
 *
 * Source: Reimpell, Stoll and Betzler, The Automotive Chassis, section 3.8; Barton and Fieldhouse, Automotive
 * Chassis Engineering, sections 3.1.5.3 and 3.1.5.4.
 */
export const AXIS: Readonly<Record<string, readonly Step[]>> = {
  'inclination-from-pivots': [across, (item, before) => arctan(was(before, 0) / rise(item))],
  'caster-from-pivots': [along, (item, before) => arctan(was(before, 0) / rise(item))],
  'camber-at-upper-pivot': [
    (item) => n(item, 'wanted_deg') - n(item, 'camber_deg'),
    (item, before) => n(item, 'inclination_deg') - was(before, 0),
    (item, before) => was(before, 1) + n(item, 'wanted_deg'),
  ],
  'upper-pivot-move': [
    (item) => n(item, 'rise_mm') * tan(n(item, 'caster_deg')),
    (item, before) => was(before, 0) - n(item, 'rearward_mm'),
  ],
  'bent-carrier': [
    (item) => n(item, 'leftInclination_deg') + n(item, 'leftCamber_deg'),
    (item) => n(item, 'rightInclination_deg') + n(item, 'rightCamber_deg'),
    (_item, before) => was(before, 0) - was(before, 1),
  ],
  'spacer-scrub': [
    (item) => n(item, 'contact_mm') - n(item, 'axis_mm'),
    (item, before) => was(before, 0) + n(item, 'spacer_mm'),
  ],
  'inset-scrub': [
    (item) => -moreInset(item),
    (item, before) => n(item, 'scrub_mm') + was(before, 0),
  ],
  'scrub-from-pivots': [
    (item) => arctan(across(item) / rise(item)),
    (item, before) => n(item, 'lowerUp_mm') * tan(was(before, 0)),
    (item, before) => n(item, 'contact_mm') - n(item, 'lowerOut_mm') - was(before, 1),
  ],
  'trail-from-pivots': [
    (item) => arctan(along(item) / rise(item)),
    (item, before) => n(item, 'lowerUp_mm') * tan(was(before, 0)),
    (item, before) => n(item, 'lowerAhead_mm') + was(before, 1),
  ],
  'spacer-for-scrub': [
    (item) => n(item, 'scrub_mm') - moreInset(item),
    (item, before) => n(item, 'wanted_mm') - was(before, 0),
  ],
  'spindle-offset-from-scrub': [
    (item) => lean(item),
    (item, before) => n(item, 'scrub_mm') + was(before, 0),
  ],
  'spindle-offset-spacer': [
    (item) => n(item, 'spindle_mm') + n(item, 'spacer_mm'),
    (item, before) => was(before, 0) - lean(item),
  ],
  'scrub-other-tyre': [
    (item) => n(item, 'scrub_mm') + lean(item),
    (item, before) => was(before, 0) - lean(item, 'newRadius_mm'),
  ],
  'inclination-from-offsets': [
    (item) => n(item, 'spindle_mm') - n(item, 'scrub_mm'),
    (item, before) => arctan(was(before, 0) / n(item, 'radius_mm')),
  ],
  'caster-from-swing': [
    outLessIn,
    overTwiceTheSine,
    (item, before) => was(before, 1) - n(item, 'right_deg'),
  ],
  'front-on-lock': [
    (item) => n(item, 'left_mm') - n(item, 'right_mm'),
    (item) => (n(item, 'left_mm') + n(item, 'right_mm')) / 2,
  ],
  'camber-on-lock': [
    (item) => n(item, 'inclination_deg') * (1 - cos(n(item, 'turn_deg'))),
    (item) => way(item) * n(item, 'caster_deg') * sin(n(item, 'turn_deg')),
    (item, before) => n(item, 'camber_deg') + was(before, 0) + was(before, 1),
  ],
  'inclination-from-swing': [
    outLessIn,
    overTwiceTheSine,
    (item, before) => was(before, 1) + n(item, 'camber_deg'),
  ],
  'camber-at-full-lock': [
    (item) => outLessIn(item) / 2,
    (item) => (n(item, 'turnedOut_deg') + n(item, 'turnedIn_deg')) / 2 - n(item, 'ahead_deg'),
    (item, before) =>
      n(item, 'ahead_deg') +
      (was(before, 1) * (1 - cos(n(item, 'lock_deg')))) / (1 - cos(n(item, 'turn_deg'))) +
      (way(item) * was(before, 0) * sin(n(item, 'lock_deg'))) / sin(n(item, 'turn_deg')),
  ],
  'camber-if-straight': [
    (item) => n(item, 'includedAngle_deg') - n(item, 'inclination_deg'),
    (item, before) => n(item, 'camber_deg') - was(before, 0),
  ],
  'cross-camber': [
    (item) => n(item, 'leftCamber_deg') - n(item, 'rightCamber_deg'),
    (item, before) => n(item, 'wanted_deg') - was(before, 0),
    (item, before) =>
      n(item, 'rise_mm') *
      (tan(n(item, 'leftInclination_deg') - was(before, 1)) - tan(n(item, 'leftInclination_deg'))),
  ],
  'cross-caster': [
    (item) => n(item, 'leftCaster_deg') - n(item, 'rightCaster_deg'),
    (item, before) =>
      n(item, 'rise_mm') *
      (tan(n(item, 'leftCaster_deg') - was(before, 0)) - tan(n(item, 'leftCaster_deg'))),
  ],
  'bent-and-moved': [
    (item) =>
      n(item, 'inclination_deg') +
      n(item, 'camber_deg') -
      (n(item, 'setInclination_deg') + n(item, 'setCamber_deg')),
    (item, before) => n(item, 'camber_deg') - n(item, 'setCamber_deg') - was(before, 0),
    (item, before) => n(item, 'camber_deg') - was(before, 1),
  ],
  'subframe-shift': [
    (item) => n(item, 'leftInclination_deg') - n(item, 'rightInclination_deg'),
    (item, before) =>
      (n(item, 'rise_mm') *
        (tan(n(item, 'leftInclination_deg')) -
          tan(n(item, 'leftInclination_deg') - was(before, 0)))) /
      2,
    (item, before) =>
      n(item, 'leftInclination_deg') +
      n(item, 'leftCamber_deg') -
      arctan(tan(n(item, 'leftInclination_deg')) - was(before, 1) / n(item, 'rise_mm')),
  ],
};
