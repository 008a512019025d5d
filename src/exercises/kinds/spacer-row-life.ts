import { ratingLife } from '#core/bearing/life.ts';
import { step, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { outboardRadial } from '../paper/rating.ts';
import { given, mm, phrase, rounded, si } from '../phrase.ts';
import { bearingPictures } from '../pictures/bearing-pictures.ts';

interface Item {
  readonly load_N: number;
  readonly offset_mm: number;
  readonly spread_mm: number;
  readonly spacer_mm: number;
}

const load = ({ load_N }: Item): number => si(load_N, 'N');
const offset = ({ offset_mm }: Item): number => si(offset_mm, 'mm');
const spread = ({ spread_mm }: Item): number => si(spread_mm, 'mm');
const spacer = ({ spacer_mm }: Item): number => si(spacer_mm, 'mm');
const radial = (item: Item, at: number): number => outboardRadial(load(item), at, spread(item));
const left = (before: number, after: number): number => ratingLife('ball', before, after);

/** A spacer on a car that goes straight ahead: what it leaves of the outboard row's life. */
export const spacerRowLife: Kind<Item> = {
  id: 'spacer-row-life',
  version: 1,
  title: 'A spacer on the motorway',
  lesson: 'rating-life',
  level: 3,
  draw: (random) => ({
    load_N: random.grid(3000, 5500, 50),
    offset_mm: random.integer(3, 14),
    spread_mm: random.integer(54, 78),
    spacer_mm: random.integer(10, 30),
  }),
  sound: ({ offset_mm, spacer_mm, spread_mm }) =>
    offset_mm + spacer_mm < spread_mm / 2 && offset_mm !== spacer_mm,
  question: ({ load_N, offset_mm, spread_mm, spacer_mm }) =>
    phrase`A friend drives to work on the motorway and wants wheel spacers of ${mm(spacer_mm)}. The wheel load is ${given(load_N, 'N')}. The load line lies ${mm(offset_mm)} outboard of the middle between the two ball rows, whose pressure centres are ${mm(spread_mm)} apart. Straight ahead, with the radial load as equivalent load: what happens to the outboard row?`,
  ...bearingPictures<Item>({
    given: (item) => item,
    end: (item) => ({ ...item, offset_mm: item.offset_mm + item.spacer_mm }),
    parts: {
      before: { seen: 'row', row: 'outboard', on: (item) => item },
      after: { seen: 'row', row: 'outboard' },
    },
  }),
  parts: [
    {
      id: 'before',
      quantity: OWN_QUANTITIES.rowLoad,
      unit: 'N',
      decimals: 0,
      label: 'Load of the outboard row without spacers',
      value: (item) => radial(item, offset(item)),
      possible: (value) => value > 0,
      hint: () =>
        phrase`Half of the wheel load, and on top what the offset shifts to this row: wheel load times offset over the distance between the pressure centres.`,
      slips: [
        {
          id: 'half',
          confuses: 'half of the wheel load',
          value: (item) => load(item) / 2,
          text: () =>
            phrase`That is half of the wheel load, as with the load line in the middle between the rows. It lies outboard of there, and the outboard row carries more.`,
        },
        {
          id: 'inboard-row',
          confuses: 'inboard row',
          value: (item) => radial(item, -offset(item)),
          text: () =>
            phrase`That is the inboard row. The load line lies nearer to the outboard one, which therefore carries more than half.`,
        },
        {
          id: 'all',
          confuses: 'all of the wheel load',
          value: (item) => (load(item) * offset(item)) / spread(item),
          text: () =>
            phrase`That is only what the offset shifts from row to row. First all of the wheel load is shared, half for each row, and the shift comes on top.`,
        },
        {
          id: 'half-spread',
          confuses: 'half of the distance',
          value: (item) => radial(item, 2 * offset(item)),
          text: () =>
            phrase`That divides by half of the distance between the rows. The two rows hold the shift as a couple, and its lever is the whole distance from one to the other.`,
        },
      ],
      solution: ({ load_N, offset_mm, spread_mm }, _earlier, value) =>
        phrase`Half and shift: ${given(load_N, 'N')} ÷ ${{ figure: '2' }} + ${given(load_N, 'N')} · ${mm(offset_mm)} ÷ ${mm(spread_mm)} = ${rounded(value, 'N', 1)}.`,
    },
    {
      id: 'after',
      quantity: OWN_QUANTITIES.rowLoad,
      unit: 'N',
      decimals: 0,
      label: 'Load of the outboard row with spacers',
      value: (item, earlier) =>
        step(earlier, 0) + radial(item, offset(item) + spacer(item)) - radial(item, offset(item)),
      possible: (value) => value > 0,
      hint: () =>
        phrase`The spacer moves the load line outboard by its thickness. What does that shift from the inboard row to this one?`,
      slips: [
        {
          id: 'unchanged',
          confuses: 'without spacers',
          value: (_item, earlier) => step(earlier, 0),
          text: () =>
            phrase`That is the load without spacers. The wheel load is the same, but its line has moved outboard, and so has the share of this row.`,
        },
        {
          id: 'wrong-way',
          confuses: 'inset',
          value: (item, earlier) =>
            2 * step(earlier, 0) - radial(item, offset(item) + spacer(item)),
          text: () =>
            phrase`That moves the load line inboard, as a wheel of more inset does. A spacer carries the wheel outboard: this row gets more.`,
        },
        {
          id: 'halved',
          confuses: 'half of the spacer',
          value: (item) => radial(item, offset(item) + spacer(item) / 2),
          text: () =>
            phrase`That counts half of the spacer. The whole wheel moves by its thickness, load line and all.`,
        },
        {
          id: 'both-spacers',
          confuses: 'two spacers',
          value: (item) => radial(item, offset(item) + 2 * spacer(item)),
          text: () =>
            phrase`That counts two spacers, as for the track of the axle. This hub carries one wheel with one spacer.`,
        },
        {
          id: 'spacer-alone',
          confuses: 'spacer alone',
          value: (item) => radial(item, spacer(item)),
          text: () =>
            phrase`That puts the spacer alone in the place of the offset. The load line lay outboard before; the spacer comes on top of that.`,
        },
      ],
      solution: ({ load_N, spread_mm, spacer_mm }, earlier, value) =>
        phrase`The spacer shifts ${given(load_N, 'N')} · ${mm(spacer_mm)} ÷ ${mm(spread_mm)} = ${rounded(value - step(earlier, 0), 'N', 1)} more to this row, so it carries ${rounded(value, 'N', 0)}.`,
    },
    {
      id: 'left',
      quantity: OWN_QUANTITIES.lifeLeft,
      unit: 'percent',
      decimals: 1,
      label: 'Rating life of the outboard row, of what it was',
      value: (_item, earlier) => left(step(earlier, 0), step(earlier, 1)),
      possible: (value) => value > 0,
      hint: () => phrase`Old load over new load, to the exponent for balls.`,
      slips: [
        {
          id: 'in-step',
          confuses: 'in step',
          value: (_item, earlier) => step(earlier, 0) / step(earlier, 1),
          text: () =>
            phrase`That lets life go in step with the load. Fatigue is steeper: raise the ratio to the third power, the exponent of balls.`,
        },
        {
          id: 'squared',
          confuses: 'square',
          value: (_item, earlier) => (step(earlier, 0) / step(earlier, 1)) ** 2,
          text: () =>
            phrase`That takes the square, which is right for energies and for stopping distances. For balls the exponent is three, so there is one factor more.`,
        },
        {
          id: 'upside-down',
          confuses: 'upside down',
          value: (_item, earlier) => left(step(earlier, 1), step(earlier, 0)),
          text: () =>
            phrase`That is upside down: the row would live longer under more load. The old load belongs on top, the new one below.`,
        },
        {
          id: 'lost',
          confuses: 'what is lost',
          value: (_item, earlier) => 1 - left(step(earlier, 0), step(earlier, 1)),
          text: () =>
            phrase`That is what is lost of the life. The question asks for what it comes to, of what it was: take that off the whole.`,
        },
      ],
      solution: (_item, earlier, value) =>
        phrase`Old over new, ${rounded(step(earlier, 0), 'N', 0)} over ${rounded(step(earlier, 1), 'N', 0)}, to the third power: ${rounded(value, 'percent', 1)} of what it was. That is this row, straight ahead. In bends other loads count, and none of it says that the spacers are safe.`,
    },
  ],
};
