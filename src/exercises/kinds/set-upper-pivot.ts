import type { Corner } from '#core/corner.ts';
import { casterOf } from '#core/geometry.ts';
import { atHeight } from '#core/line.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { kept } from '../forms/kept.ts';
import { setting } from '../forms/setting.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { axisThrough, cornerAtCentre, cornerAtRoad } from '../paper/corner.ts';
import { bare, deg, directed, mm, phrase, rounded, si, term, type Phrase } from '../phrase.ts';
import { seenBeside } from '../pictures/corner-pictures.ts';
import type { CornerPicture } from '../pictures/picture.ts';

interface Item {
  readonly rearward_mm: number;
  readonly rise_mm: number;
  /** How much caster is to come on top; negative where some is to go. */
  readonly more_deg: number;
}

const now = ({ rearward_mm }: Item): number => si(rearward_mm, 'mm');
const rise = ({ rise_mm }: Item): number => si(rise_mm, 'mm');
const more = ({ more_deg }: Item): number => si(more_deg, 'deg');
const casterWith = (item: Item, rearward: number): number =>
  casterOf(axisThrough({}, { ahead: -rearward, up: rise(item) }));
const before = kept((item: Item): number => casterWith(item, now(item)));
const after = (item: Item, move: number): number => casterWith(item, now(item) + move);

const moreThanNow = ({ more_deg }: Item): Phrase =>
  phrase`${deg(Math.abs(more_deg))} ${more_deg > 0 ? 'more' : 'less'} than it is now`;

/** The axis of an upright wheel in the side view, its lower pivot a little ahead of the wheel centre. */
const cornerAfter = (item: Item, move: number): Corner =>
  cornerAtCentre({ caster: after(item, move), casterOffset: 0.006 });

const picture = (item: Item, move: number): CornerPicture => ({
  scene: 'corner',
  view: 'side',
  corner: cornerAfter(item, move),
  ...(move !== 0 && { before: cornerAfter(item, 0) }),
  points: [{ at: 'axis', says: 'steering axis' }],
});

/** The upper pivot slides until the axis has the caster that is wanted. */
export const setUpperPivot: Kind<Item> = {
  id: 'set-upper-pivot',
  version: 1,
  title: 'Slide the upper pivot',
  lesson: 'two-points',
  level: 2,
  draw: (random) => ({
    rearward_mm: random.integer(12, 84),
    rise_mm: random.integer(420, 640),
    more_deg: random.pick([-1, 1]) * random.grid(1.5, 5, 0.5),
  }),
  sound: (item) => before(item) + more(item) >= si(1.5, 'deg'),
  pattern: ({ more_deg }) => (more_deg > 0 ? 'more caster' : 'less caster'),
  question: (item) =>
    phrase`In the drawing a left front wheel is seen from the side. The upper pivot sits ${directed(item.rearward_mm, 'mm', OWN_QUANTITIES.upperAlong)} of the lower one and ${mm(item.rise_mm)} above it. Slide it along the car until the caster is ${moreThanNow(item)}.`,
  picture: (item) => picture(item, 0),
  wrong: (item, road) => {
    const isMove = road.part === 'slide';
    const ends = [road.value, road.answer].map((end) => (isMove ? after(item, end) : end));
    const [taken = 0, right = 0] = ends;
    return seenBeside(
      { of: 'caster', says: 'caster', view: 'side' },
      { ...road, value: taken, answer: right },
      (lean) => cornerAtCentre({ caster: lean, casterOffset: 0.006 }),
    );
  },
  parts: [
    {
      id: 'caster-now',
      quantity: QUANTITIES.caster,
      unit: 'deg',
      decimals: 1,
      label: 'Caster as it stands',
      value: before,
      hint: () =>
        phrase`The step along the car over the step up is the tangent of the caster. Which end of the axis lies farther back?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'rearward and forward',
          value: (item) => -before(item),
          text: () =>
            phrase`The size fits, but rearward and forward have changed places. The caster is named after where the top leans, and the upper pivot sits behind the lower one.`,
        },
        {
          id: 'from-level',
          confuses: 'angle to the road',
          value: (item) => Math.PI / 2 - before(item),
          text: () =>
            phrase`That is the angle to the road. A tape measure might give it; the caster is counted from upright, which is what is left to a right angle.`,
        },
        {
          id: 'doubled',
          confuses: 'both wheels',
          value: (item) => 2 * before(item),
          text: () =>
            phrase`That is twice the caster, as if both wheels had it together. Each wheel has its own axis, with its own two pivots.`,
        },
        {
          id: 'wanted-one',
          confuses: 'caster that is wanted',
          value: (item) => before(item) + more(item),
          text: () =>
            phrase`That is the caster that is wanted in the end. First the caster as the two pivots give it now, before anything is moved.`,
        },
      ],
      solution: ({ rearward_mm, rise_mm }, _earlier, value) =>
        phrase`${mm(rearward_mm)} ÷ ${mm(rise_mm)} = ${bare(rearward_mm / rise_mm, 4)}, the tangent of ${rounded(value, 'deg', 1)}.`,
    },
    setting<Item>({
      id: 'slide',
      quantity: OWN_QUANTITIES.upperMove,
      unit: 'mm',
      label: 'Slide of the upper pivot',
      form: {
        scale: () => ({ least: -150, most: 150, step: 1, start: 0 }),
        aim: { quantity: QUANTITIES.caster, unit: 'deg', decimals: 2, near: si(0.2, 'deg') },
        target: (item, earlier) => step(earlier, 0) + more(item),
        wanted: moreThanNow,
        reached: after,
        picture,
      },
      hint: () =>
        phrase`Add up the caster that is wanted. Where must the upper pivot be for it, behind the lower one, and where is it now? Rearward slides add caster.`,
      slips: [
        {
          id: 'whole-step',
          confuses: 'place of the upper pivot',
          value: (item) => wantedPlace(item),
          text: () =>
            phrase`That slides the pivot by the whole way from the lower one: the place of the upper pivot, and not the way to it. It sits part of the way back already.`,
        },
        {
          id: 'wrong-way',
          confuses: 'rearward and forward',
          value: (item) => -slideFor(item),
          text: () =>
            phrase`The way is as long as it has to be, but rearward and forward have changed places: the caster has gone away from what is wanted by as much as was missing.`,
        },
        {
          id: 'altogether',
          confuses: 'change of the caster',
          value: (item) => placeFor(item, more(item)) - now(item),
          text: () =>
            phrase`That takes the change of the caster for the caster itself: the axis now leans by the change alone. What is asked for comes on top of what is there, or goes from it.`,
        },
        {
          id: 'twice',
          confuses: 'both sides of the car',
          value: (item) => 2 * slideFor(item),
          text: () =>
            phrase`That is twice the way, as if this slide had to serve both sides of the car. Each axis is set by itself; here the left one alone is asked for.`,
        },
      ],
      solution: (item, earlier, value) =>
        phrase`The caster is to be ${rounded(step(earlier, 0) + more(item), 'deg', 1)}. For that the upper pivot has to sit ${rounded(placeFor(item, step(earlier, 0) + more(item)), 'mm', 1)} behind the lower one, the step up times the tangent. It sits there by ${mm(item.rearward_mm)}: ${rounded(placeFor(item, step(earlier, 0) + more(item)), 'mm', 1)} − ${term(mm(item.rearward_mm))} = ${rounded(value, 'mm', 1)}, ${value > 0 ? 'rearward' : 'forward'}.`,
    }),
  ],
};

/** How far behind the lower pivot the upper one sits with a caster, in metres. */
const placeFor = (item: Item, caster: number): number =>
  -atHeight(cornerAtRoad({ caster }).axis, rise(item)).x;

const wantedPlace = kept((item: Item): number => placeFor(item, before(item) + more(item)));
const slideFor = (item: Item): number => wantedPlace(item) - now(item);
