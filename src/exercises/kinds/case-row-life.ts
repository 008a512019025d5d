import { lifeExponent } from '#core/bearing/life.ts';
import { radialLoads } from '#core/bearing/rows.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { between } from '../paper/plausible.ts';
import { bare, directed, given, mm, phrase, rounded, si, sign, term } from '../phrase.ts';
import { bearingPictures, LINE_WITH_SPACER } from '../pictures/bearing-pictures.ts';

interface Item {
  readonly rating_kN: number;
  readonly life_Mrev: number;
  readonly load_N: number;
  readonly spread_mm: number;
  readonly offset_mm: number;
}

const rating = ({ rating_kN }: Item): number => si(rating_kN, 'kN');
const spread = ({ spread_mm }: Item): number => si(spread_mm, 'mm');
const offset = ({ offset_mm }: Item): number => si(offset_mm, 'mm');
const most = (item: Item): number => rating(item) / item.life_Mrev ** (1 / lifeExponent('ball'));
/** Radial load of the outboard row with the load line that far outboard, straight ahead. */
const outboard = (item: Item, loadLineOffset: number): number =>
  radialLoads({ loadLineOffset, spread: spread(item) }, { vertical: item.load_N, inward: 0 }, 0.3)
    .outboard;
/** The load line that gives the outboard row so much: the load is a straight line over it. */
const lineFor = (item: Item, load: number): number =>
  (load - outboard(item, 0)) / (outboard(item, 1) - outboard(item, 0));

/** A student's case, backwards: from the life that a row has to reach to what is left for a spacer. */
export const caseRowLife: Kind<Item> = {
  id: 'case-row-life',
  version: 1,
  title: 'Case: a bearing that has to last',
  lesson: 'capstone',
  level: 3,
  draw: (random) => {
    const load_N = random.grid(3600, 5200, 50);
    const rating_kN = random.grid(26, 34, 0.5);
    const ratio = (1000 * rating_kN) / (load_N * random.grid(0.62, 0.96, 0.02));
    return {
      rating_kN,
      life_Mrev: 5 * Math.round((ratio * ratio * ratio) / 5),
      load_N,
      spread_mm: random.grid(54, 78, 2),
      offset_mm: random.pick([-1, 1]) * random.integer(2, 8),
    };
  },
  sound: (item) =>
    between(item.life_Mrev, 100, 1500) &&
    between(1000 * (lineFor(item, most(item)) - offset(item)), 5, 36),
  question: ({ rating_kN, life_Mrev, load_N, spread_mm, offset_mm }) =>
    phrase`A class project: a hub on two rows of balls shall keep a rating life of ${given(life_Mrev, 'Mrev')} in its outboard row, running straight under a wheel load of ${given(load_N, 'N')}. Each row has a load rating of ${given(rating_kN, 'kN')}; its thrust is too small to count. The pressure centres are ${mm(spread_mm)} apart, and the load line now lies ${directed(offset_mm, 'mm', OWN_QUANTITIES.loadLine)} of their middle. Judge it: how thick may a spacer be?`,
  ...bearingPictures<Item>({
    given: (item) => item,
    end: (item) => ({ ...item, offset_mm: 1000 * lineFor(item, most(item)) }),
    parts: {
      load: { seen: 'row', row: 'outboard' },
      line: LINE_WITH_SPACER.line,
      spacer: LINE_WITH_SPACER.spacer,
    },
  }),
  parts: [
    {
      id: 'load',
      quantity: OWN_QUANTITIES.mostRowLoad,
      unit: 'N',
      decimals: 0,
      label: 'Most radial load of the outboard row',
      value: most,
      hint: () => phrase`The life is a power of rating over load. Which root takes you back?`,
      slips: [
        {
          id: 'rollers',
          confuses: 'rollers',
          value: (item) => rating(item) / item.life_Mrev ** (1 / lifeExponent('roller')),
          text: () =>
            phrase`That takes the exponent of rollers, ten thirds. It would be right for a tapered bearing; these rows have balls, and their exponent is three.`,
        },
        {
          id: 'no-root',
          confuses: 'life without its root',
          value: (item) => rating(item) / item.life_Mrev,
          text: () =>
            phrase`That divides the rating by the life without its root. It would be so if the life fell with the load and not with its third power. Take the cube root of the life first.`,
        },
        {
          id: 'square-root',
          confuses: 'square root',
          value: (item) => rating(item) / Math.sqrt(item.life_Mrev),
          text: () =>
            phrase`That takes the square root of the life. A square would be right for an area; the life of balls goes with the third power of the load.`,
        },
        {
          id: 'scope',
          confuses: 'limit of the formula',
          value: (item) => rating(item) / 2,
          text: () =>
            phrase`That is half of the rating: the limit of the formula. Above it there is no rating life at all; the life that is asked for here allows less.`,
        },
      ],
      solution: ({ rating_kN, life_Mrev }, _earlier, value) =>
        phrase`Rating over the cube root of the life: ${given(1000 * rating_kN, 'N')} ÷ ${bare(Math.cbrt(life_Mrev), 4)} = ${rounded(value, 'N', 1)}.`,
    },
    {
      id: 'line',
      quantity: OWN_QUANTITIES.loadLine,
      unit: 'mm',
      decimals: 1,
      label: 'Load line that gives it so much',
      value: (item, earlier) => lineFor(item, step(earlier, 0)),
      hint: () =>
        phrase`With the load line in the middle each row carries half. What the row carries above that, times the spread, is the wheel load times the offset.`,
      slips: [
        {
          id: 'from-inboard-centre',
          confuses: 'inboard pressure centre',
          value: (item, earlier) => (spread(item) * step(earlier, 0)) / item.load_N,
          text: () =>
            phrase`That is the distance from the inboard pressure centre. It is a fair lever to work with; but the load line is counted from the middle, half a spread farther out.`,
        },
        {
          id: 'difference',
          confuses: 'difference of the two rows',
          value: (item, earlier) => 2 * lineFor(item, step(earlier, 0)),
          text: () =>
            phrase`That takes the difference of the two rows for what one of them carries above its half. One goes up as the other goes down, so the difference is twice that.`,
        },
        {
          id: 'half-spread',
          confuses: 'half of the spread',
          value: (item, earlier) => lineFor(item, step(earlier, 0)) / 2,
          text: () =>
            phrase`That holds the row at half of the spread, as if the middle were a support. The other row is the support, and it is a whole spread away.`,
        },
        {
          id: 'turned-round',
          confuses: 'inboard and outboard',
          value: (item, earlier) => -lineFor(item, step(earlier, 0)),
          text: () =>
            phrase`The size fits, but inboard and outboard have changed places. It would be so for the inboard row. The outboard row carries more than half, so the load line is on its side.`,
        },
      ],
      solution: ({ load_N, spread_mm }, earlier, value) => {
        const more = step(earlier, 0) - load_N / 2;
        return phrase`Above half of the wheel load that is ${rounded(step(earlier, 0), 'N', 1)} − ${given(load_N / 2, 'N')} = ${rounded(more, 'N', 1)}. Times the spread, over the wheel load: ${rounded(more, 'N', 1)} · ${mm(spread_mm)} ÷ ${given(load_N, 'N')} = ${rounded(value, 'mm', 1)}, ${sign(value, OWN_QUANTITIES.loadLine)}.`;
      },
    },
    {
      id: 'spacer',
      quantity: OWN_QUANTITIES.spacer,
      unit: 'mm',
      decimals: 1,
      label: 'Thickest spacer',
      value: (item, earlier) => step(earlier, 1) - offset(item),
      sum: 'rounded',
      possible: (value) => value > 0,
      hint: () =>
        phrase`A spacer takes the load line outboard by its thickness. Where does it lie now?`,
      slips: [
        {
          id: 'added',
          confuses: 'sign of the load line',
          value: (item, earlier) => step(earlier, 1) + offset(item),
          text: () =>
            phrase`That takes the sign of the load line the other way round. It would be right with the load line on the other side of the middle. Go from where it lies to where it may lie.`,
        },
        {
          id: 'all-of-it',
          confuses: 'middle of the rows',
          value: (_item, earlier) => step(earlier, 1),
          text: () =>
            phrase`That starts from the middle of the rows. It would be right for a hub whose load line lies there; this one’s does not.`,
        },
        {
          id: 'half',
          confuses: 'both rows',
          value: (item, earlier) => (step(earlier, 1) - offset(item)) / 2,
          text: () =>
            phrase`That shares the way between both rows. A load may be shared; the load line is one, and goes outboard by the whole spacer.`,
        },
        {
          id: 'twice',
          confuses: 'both wheels',
          value: (item, earlier) => 2 * (step(earlier, 1) - offset(item)),
          text: () =>
            phrase`That counts the spacers of both wheels, as a track does. Each hub has its own spacer and its own load line.`,
        },
      ],
      solution: ({ offset_mm }, earlier, value) =>
        phrase`From where it lies to where it may lie: ${rounded(step(earlier, 1), 'mm', 1)} − ${term(mm(offset_mm))} = ${rounded(value, 'mm', 1)}. That is straight running alone: bends load the rows far more, and whether a spacer may be fitted is another question.`,
    },
  ],
};
