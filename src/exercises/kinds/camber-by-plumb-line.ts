import { degrees } from '#core/angle.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerWithPivots } from '../paper/corner.ts';
import { bare, deg, directed, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { seenBeside } from '../pictures/corner-pictures.ts';

interface Item {
  readonly upper_mm: number;
  readonly lower_mm: number;
  readonly span_mm: number;
  readonly floor_deg: number;
}

const gap = ({ upper_mm, lower_mm }: Item): number => si(lower_mm - upper_mm, 'mm');
const span = ({ span_mm }: Item): number => si(span_mm, 'mm');
const floor = ({ floor_deg }: Item): number => si(floor_deg, 'deg');
const toPlumb = (item: Item, difference: number): number => Math.atan(difference / span(item));

/** No rim leans by more than this, in metres. */
const LARGEST_GAP = 0.06;

/** Camber from two gaps beside a plumb line, and from a floor that is not level. */
export const camberByPlumbLine: Kind<Item> = {
  id: 'camber-by-plumb-line',
  version: 1,
  title: 'Camber by plumb line',
  lesson: 'measuring-your-own-car',
  level: 2,
  draw: (random) => {
    const upper_mm = random.integer(38, 60);
    return {
      upper_mm,
      lower_mm: upper_mm + random.pick([-1, 1]) * random.integer(7, 28),
      span_mm: random.integer(360, 470),
      floor_deg: random.pick([-1, 1]) * random.grid(0.5, 1.5, 0.1),
    };
  },
  sound: (item) => {
    const camber = degrees(toPlumb(item, gap(item)));
    const kept = camber - item.floor_deg;
    return Math.abs(camber) <= 4 && Math.abs(kept) >= 0.45 && camber * kept > 0;
  },
  question: (item) =>
    phrase`A plumb line hangs in front of a wheel, clear of the tyre. From the line to the upper edge of the rim there are ${mm(item.upper_mm)}, to the lower edge ${mm(item.lower_mm)}, and the two edges are ${mm(item.span_mm)} apart. A spirit level on the garage floor says that across the car it falls by ${directed(item.floor_deg, 'deg', OWN_QUANTITIES.floorFall)}, and the car stands on it with both wheels. What camber would the wheel have on a level road?`,
  solved: (item) => {
    const lean = toPlumb(item, gap(item)) - floor(item);
    return {
      ...{ scene: 'corner', view: 'front' },
      corner: cornerWithPivots(0, lean),
      axis: 'none',
      measures: [{ of: 'camber', says: `camber ${rounded(lean, 'deg', 2).figure}` }],
    };
  },
  wrong: (_item, road) => {
    if (road.part === 'gap') return undefined;
    const seen = seenBeside({ of: 'camber', says: 'lean', view: 'front' }, road, (value) =>
      cornerWithPivots(0, value),
    );
    return seen && { ...seen, axis: 'none' };
  },
  parts: [
    {
      id: 'gap',
      quantity: OWN_QUANTITIES.rimLean,
      unit: 'mm',
      decimals: 0,
      label: 'How much farther out the upper edge stands than the lower one',
      value: gap,
      sum: 'exact',
      possible: (value) => Math.abs(value) <= LARGEST_GAP,
      hint: () =>
        phrase`The line hangs outboard of the wheel. Which edge is nearer to it, and so farther outboard?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'gap and place',
          value: (item) => -gap(item),
          text: () =>
            phrase`The size fits, but gap and place have changed roles: the edge with the larger gap is farther from the line, and the line is outboard.`,
        },
        {
          id: 'sum',
          confuses: 'sum of the gaps',
          value: (item) => si(item.upper_mm + item.lower_mm, 'mm'),
          text: () =>
            phrase`That is the sum of the gaps. It would matter if the line hung between the edges. It hangs outboard of both, so their difference is what the rim leans.`,
        },
        {
          id: 'half',
          confuses: 'middle of the rim',
          value: (item) => gap(item) / 2,
          text: () =>
            phrase`That counts from the middle of the rim to one edge. The gaps are at both edges, and the lean asked for is from edge to edge.`,
        },
        {
          id: 'upper-gap',
          confuses: 'upper gap',
          value: ({ upper_mm }) => si(upper_mm, 'mm'),
          text: () =>
            phrase`That is the upper gap alone. It says where the line hangs as much as how the wheel leans. Only against the lower gap does it say anything of the wheel.`,
        },
      ],
      solution: ({ upper_mm, lower_mm }, _earlier, value) =>
        phrase`Lower gap less upper gap: ${mm(lower_mm)} − ${mm(upper_mm)} = ${rounded(value, 'mm', 0)}, ${sign(value, OWN_QUANTITIES.rimLean)}.`,
    },
    {
      id: 'to-plumb',
      quantity: OWN_QUANTITIES.camberToPlumb,
      unit: 'deg',
      decimals: 2,
      label: 'Lean of the wheel against the plumb line',
      value: (item, earlier) => toPlumb(item, step(earlier, 0)),
      hint: () =>
        phrase`A step across, over the height in which it happens: which function of the angle is that?`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item, earlier) => -toPlumb(item, step(earlier, 0)),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places since the step before. An upper edge that stands farther outboard is a wheel that leans outboard.`,
        },
        {
          id: 'per-cent',
          confuses: 'per cent',
          value: (item, earlier) => si((100 * step(earlier, 0)) / span(item), 'deg'),
          text: () =>
            phrase`That is a slope in per cent, read as degrees. A road sign would have it so. For degrees the arctangent has to be taken.`,
        },
        {
          id: 'twice-the-span',
          confuses: 'distance counted twice',
          value: (item, earlier) => Math.atan(step(earlier, 0) / span(item) / 2),
          text: () =>
            phrase`That has the distance counted twice, once for each edge. The step is from one edge to the other, and so is the distance: it counts once.`,
        },
        {
          id: 'radians',
          confuses: 'radians',
          value: (item, earlier) => si(toPlumb(item, step(earlier, 0)), 'deg'),
          text: () =>
            phrase`The formula is right, but the calculator gave radians. Mechanics works in them; a protractor and this question have degrees. Set it to DEG and take the arctangent again.`,
        },
      ],
      solution: ({ span_mm }, earlier, value) =>
        phrase`Step over distance: ${term(rounded(step(earlier, 0), 'mm', 0))} ÷ ${mm(span_mm)} = ${bare(step(earlier, 0) / si(span_mm, 'mm'), 5)}, and that is the tangent of ${rounded(value, 'deg', 2)}.`,
    },
    {
      id: 'camber',
      quantity: QUANTITIES.camber,
      unit: 'deg',
      decimals: 2,
      label: 'Camber on a level road',
      value: (item, earlier) => step(earlier, 1) - floor(item),
      sum: 'rounded',
      hint: () =>
        phrase`A floor that falls outboard leans the whole car outboard on this side, wheel and all. How would the wheel stand if the car were level?`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'direction of the fall',
          value: (item, earlier) => step(earlier, 1) + floor(item),
          text: () =>
            phrase`That has the direction of the fall turned round. A floor that falls outboard tips the car outboard, and the plumb line sees more lean outboard than the wheel has against its road.`,
        },
        {
          id: 'level',
          confuses: 'level floor',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That takes it for a level floor. The plumb line does not know the floor; the camber does, since it is counted from square to the road.`,
        },
        {
          id: 'twice',
          confuses: 'both wheels',
          value: (item, earlier) => step(earlier, 1) - 2 * floor(item),
          text: () =>
            phrase`That takes the fall off twice, as for both wheels: left and right differ by twice the fall. One wheel takes it once.`,
        },
        {
          id: 'from-the-floor',
          confuses: 'order of the difference',
          value: (item, earlier) => floor(item) - step(earlier, 1),
          text: () =>
            phrase`That has the order of the difference turned round: it is the lean of the floor against the wheel. Asked for is the wheel against the floor.`,
        },
      ],
      solution: ({ floor_deg }, earlier, value) =>
        phrase`Lean of the wheel less fall of the floor, each with its sign: ${term(rounded(step(earlier, 1), 'deg', 2))} − ${term(deg(floor_deg))} = ${rounded(value, 'deg', 2)}, ${sign(value, QUANTITIES.camber)}.`,
    },
  ],
};
