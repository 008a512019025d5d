import { changed, NO_CHANGE } from '#core/change.ts';
import { contactCentre, type Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { fromSI } from '#core/units/convert.ts';
import { kept, keptStep } from '../forms/kept.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerToCamber } from '../paper/cambered.ts';
import { deg, directed, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { cornerPictures } from '../pictures/corner-pictures.ts';
import { along, vector } from '#core/vector.ts';

interface Item {
  readonly inclination_deg: number;
  readonly camber_deg: number;
  readonly newCamber_deg: number;
  readonly lowerUp_mm: number;
  readonly radius_mm: number;
  readonly scrub_mm: number;
}

const inclination = ({ inclination_deg }: Item): number => si(inclination_deg, 'deg');
const camber = ({ camber_deg }: Item): number => si(camber_deg, 'deg');
const lowerUp = ({ lowerUp_mm }: Item): number => si(lowerUp_mm, 'mm');
const radius = ({ radius_mm }: Item): number => si(radius_mm, 'mm');
const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');

const corner = kept((item: Item): Corner =>
  cornerToCamber({
    inclination: inclination(item),
    camber: camber(item),
    scrubRadius: scrub(item),
    lowerUp: lowerUp(item),
    loadedRadius: radius(item),
  }),
);
const leaned = keptStep((item: Item, earlier: Earlier): Corner =>
  changed(corner(item), { ...NO_CHANGE, camberAtCarrier: step(earlier, 0) }),
);
const move = keptStep(
  (item: Item, earlier: Earlier): number =>
    contactCentre(leaned(item, earlier)).y - contactCentre(corner(item)).y,
);

/** The axis where it has this scrub radius with the wheel as it is wanted. */
const shifted = (wanted: Corner, value: number): Corner['axis'] => {
  const { point, direction } = wanted.axis;
  return { direction, point: along(point, measure(wanted).scrubRadius - value, vector(0, 1, 0)) };
};

/** Camber set at the carrier leaves the axis alone and swings the contact centre out or in below the lower pivot. */
export const camberAtCarrier: Kind<Item> = {
  id: 'camber-at-carrier',
  version: 1,
  title: 'Camber by a slotted bolt',
  lesson: 'tyres-and-camber',
  level: 3,
  draw: (random) => {
    const camber_deg = random.pick([-1, 1]) * random.grid(0.25, 1.25, 0.25);
    return {
      inclination_deg: random.grid(9, 15, 0.25),
      camber_deg,
      newCamber_deg: camber_deg + random.pick([-1, 1]) * random.grid(1.5, 3, 0.25),
      lowerUp_mm: random.integer(160, 240),
      radius_mm: random.integer(285, 345),
      scrub_mm: random.pick([-1, 1]) * random.integer(5, 30),
    };
  },
  // The scrub radius stays on its side, clear of nought.
  sound: ({ camber_deg, newCamber_deg, scrub_mm }) =>
    newCamber_deg !== 0 &&
    scrub_mm * (scrub_mm - 4.5 * (newCamber_deg - camber_deg)) > 0 &&
    Math.abs(scrub_mm - 4 * (newCamber_deg - camber_deg)) >= 3,
  pattern: ({ camber_deg, newCamber_deg, scrub_mm }) =>
    `${newCamber_deg < camber_deg ? 'top inboard' : 'top outboard'} ${scrub_mm < 0 ? 'outboard' : 'inboard'}`,
  question: (item) =>
    phrase`An alignment sheet shows an inclination of ${deg(item.inclination_deg)}, the top of the axis leaning inboard, and a camber of ${deg(item.camber_deg)}, the top of the wheel leaning ${sign(item.camber_deg, QUANTITIES.camber)}. A slotted bolt where strut and knuckle meet is set so that the camber becomes ${deg(item.newCamber_deg)}, the top leaning ${sign(item.newCamber_deg, QUANTITIES.camber)}. The lower pivot is ${mm(item.lowerUp_mm)} above the road, the loaded radius ${mm(item.radius_mm)}, the scrub radius ${directed(item.scrub_mm, 'mm', QUANTITIES.scrubRadius)}. Both pivots stay.`,
  ...cornerPictures<Item>({
    view: 'front',
    given: (item) => ({
      corner: corner(item),
      measures: [
        { of: 'inclination', says: deg(item.inclination_deg).figure },
        { of: 'camber', says: deg(item.camber_deg).figure },
        { of: 'loadedRadius', says: mm(item.radius_mm).figure },
      ],
    }),
    end: (item) => leaned(item, [si(item.newCamber_deg - item.camber_deg, 'deg')]),
    before: corner,
    parts: {
      change: {
        of: 'camber',
        says: 'camber',
        to: (item, value) => leaned(item, [value]),
        before: corner,
      },
      scrub: {
        of: 'scrubRadius',
        says: 'scrub radius',
        to: (item, value, earlier) => ({
          ...leaned(item, earlier),
          axis: shifted(leaned(item, earlier), value),
        }),
        before: corner,
      },
    },
  }),
  parts: [
    {
      id: 'change',
      quantity: OWN_QUANTITIES.camberChange,
      unit: 'deg',
      decimals: 2,
      label: 'Change of camber',
      value: (item) => si(item.newCamber_deg - item.camber_deg, 'deg'),
      sum: 'exact',
      hint: () => phrase`A change is the new value less the old one, each with its sign.`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'old and new',
          value: (item) => si(item.camber_deg - item.newCamber_deg, 'deg'),
          text: () =>
            phrase`That takes the new camber from the old, so old and new have changed places. It would undo the job.`,
        },
        {
          id: 'sign-lost',
          confuses: 'sign of the camber',
          value: (item) => si(item.newCamber_deg + item.camber_deg, 'deg'),
          text: () =>
            phrase`That adds the two values. It would be right if the old camber had the other sign. Take the old one away with the sign of the camber that stands on the sheet.`,
        },
        {
          id: 'new-alone',
          confuses: 'new camber',
          value: (item) => si(item.newCamber_deg, 'deg'),
          text: () =>
            phrase`That is the new camber, counted from an upright wheel. The wheel did not start upright: count from the camber on the first sheet.`,
        },
        {
          id: 'both-wheels',
          confuses: 'both wheels',
          value: (item) => si(2 * (item.newCamber_deg - item.camber_deg), 'deg'),
          text: () =>
            phrase`That counts both wheels together, as is done with total toe. Camber belongs to each wheel by itself.`,
        },
      ],
      solution: ({ camber_deg, newCamber_deg }, _earlier, value) =>
        phrase`New less old: ${deg(newCamber_deg)} − ${term(deg(camber_deg))} = ${rounded(value, 'deg', 2)}. The included angle changes by the same, since the axis stays.`,
    },
    {
      id: 'contact',
      quantity: OWN_QUANTITIES.contactMove,
      unit: 'mm',
      decimals: 1,
      label: 'Movement of the contact centre across the car',
      value: move,
      sum: 'rounded',
      hint: () =>
        phrase`The carrier turns about the lower pivot. The contact centre hangs below it by the height of the pivot: which way does it swing, and how far?`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'top and bottom',
          value: (item, earlier) => -move(item, earlier),
          text: () =>
            phrase`The size fits, but top and bottom have changed places. What lies below the pivot swings the other way than what lies above it.`,
        },
        {
          id: 'loaded-radius',
          confuses: 'loaded radius',
          value: (item, earlier) => -radius(item) * Math.sin(step(earlier, 0)),
          text: () =>
            phrase`That takes the loaded radius for the arm, as if the wheel leaned about its own centre. It turns about the lower pivot, and from there down to the road it is less far.`,
        },
        {
          id: 'radians',
          confuses: 'radians',
          value: (item, earlier) => -lowerUp(item) * Math.sin(fromSI(step(earlier, 0), 'deg')),
          text: () =>
            phrase`The formula is right, but the calculator took the degrees for radians. In mechanics that setting has its place; the change here is in degrees. Set it to DEG and take the sine again.`,
        },
        {
          id: 'cosine',
          confuses: 'cosine',
          value: (item, earlier) =>
            -Math.sign(step(earlier, 0)) * lowerUp(item) * Math.cos(step(earlier, 0)),
          text: () =>
            phrase`That takes the cosine, and comes to nearly the whole height. The cosine is what is left upright of an arm that leans; what it goes sideways is the sine.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`Below the pivot it swings the other way, by the sine of the change: ${mm(item.lowerUp_mm)} · sin ${rounded(Math.abs(step(earlier, 0)), 'deg', 2)} = ${rounded(lowerUp(item) * Math.sin(Math.abs(step(earlier, 0))), 'mm', 1)}, ${sign(value, OWN_QUANTITIES.contactMove)}.`,
    },
    {
      id: 'scrub',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 0,
      label: 'Scrub radius afterwards, to a whole millimetre',
      value: (item, earlier) =>
        measure(leaned(item, earlier)).scrubRadius + step(earlier, 1) - move(item, earlier),
      sum: 'rounded',
      hint: () =>
        phrase`The axis has not moved, so it meets the road where it did. The contact centre has come nearer to that place, or gone farther from it.`,
      slips: [
        {
          id: 'at-the-top',
          confuses: 'setting at the top',
          value: scrub,
          text: () =>
            phrase`That leaves the scrub radius as it was. A setting at the top does so, near enough, because axis and wheel lean together. Here the wheel has leaned alone.`,
        },
        {
          id: 'wrong-way',
          confuses: 'direction of the movement',
          value: (item, earlier) => scrub(item) - step(earlier, 1),
          text: () =>
            phrase`That has the direction of the movement turned round. A contact centre that goes outboard leaves the axis farther inboard of it: the scrub radius grows toward positive.`,
        },
        {
          id: 'other-side',
          confuses: 'side of the start',
          value: (item, earlier) => step(earlier, 1) - scrub(item),
          text: () =>
            phrase`That has the side of the start turned round. Inboard counts as positive and outboard as negative: put that sign to the first scrub radius, then add the movement.`,
        },
        {
          id: 'twice',
          confuses: 'twice the movement',
          value: (item, earlier) => scrub(item) + 2 * step(earlier, 1),
          text: () =>
            phrase`That counts twice the movement, as if the axis had gone the other way as well. The axis stays: the movement counts once.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`From ${directed(item.scrub_mm, 'mm', QUANTITIES.scrubRadius)} the contact centre has gone ${rounded(Math.abs(step(earlier, 1)), 'mm', 1)} ${sign(step(earlier, 1), OWN_QUANTITIES.contactMove)}, while the axis stays: about ${rounded(value, 'mm', 0)}. The road has come nearer or gone farther by a hair as well; a whole millimetre does not show it.`,
    },
  ],
};
