import { choosing, chosen } from './forms/choosing.ts';
import { shuffled } from './forms/shuffled.ts';
import { step, type Earlier, type Kind } from './kind.ts';
import {
  MARKED_IDS,
  markedLengths,
  type MarkedId,
  type MarkedItem,
  type MarkedView,
} from './paper/marked-view.ts';
import { deg, directed, mm, phrase, rounded, si, term } from './phrase.ts';
import { markedChoices } from './slips/marked-choices.ts';

/** A kind that asks which of five lettered lengths is meant, and then how long it is. */
export function markedLength(about: MarkedView): Kind<MarkedItem> {
  const { view, wanted, given, wantedAt } = about;
  const { offset, radius, atOther, lean, long, picture, drawnAlone } = markedLengths(about);
  const meant = ({ asks }: MarkedItem): MarkedId => (asks === 'offset' ? 'wanted' : 'lean');
  const choices = markedChoices(about, (id) => (item) => ({
    ...drawnAlone(meant(item))(item),
    wrong: { measures: drawnAlone(id)(item).measures ?? [] },
  }));
  const name = ({ asks }: MarkedItem): string =>
    asks === 'offset' ? wanted.name : `way that the axis goes ${about.leans}`;
  const number = (item: MarkedItem, earlier: Earlier): number =>
    long(item, chosen(choices, item.listed, step(earlier, 0)));

  return {
    id: about.id,
    version: 1,
    title: about.title,
    lesson: about.lesson,
    level: 1,
    draw: (random) => ({
      asks: random.pick(['offset', 'lean']),
      offset_mm: random.pick([-1, 1]) * random.integer(...about.offsets),
      lean_deg: 0.5 * random.integer(2 * about.leans_deg[0], 2 * about.leans_deg[1]),
      radius_mm: random.integer(270, 350),
      listed: shuffled(random, MARKED_IDS.length),
    }),
    sound: (item) => atOther(item) > 0.008 && atOther(item) < 0.0995,
    pattern: ({ asks, offset_mm }) => `${asks} ${offset_mm < 0 ? 'from beyond' : 'from this side'}`,
    question: (item) =>
      phrase`In the drawing of a left front wheel, seen from the ${view}, five lengths have letters. The ${given.name} is ${directed(item.offset_mm, 'mm', given)}, the axis leans ${deg(item.lean_deg)} ${about.leans} and the loaded radius is ${mm(item.radius_mm)}; the wheel stands upright. Find the ${name(item)}${item.asks === 'lean' ? ' between the road and the height of the wheel centre' : ''}: which letter is it, and how long?`,
    picture,
    solved: (item) => drawnAlone(meant(item))(item),
    parts: [
      choosing<MarkedItem>({
        id: 'letter',
        name: 'marked length',
        label: 'Its letter in the drawing',
        form: 'mark',
        choices,
        listed: ({ listed }) => listed,
        right: meant,
        hint: () =>
          phrase`Say first where both ends must lie: on the axis and on the wheel, or both on the axis? Then at which height.`,
        solution: (item) =>
          item.asks === 'offset'
            ? phrase`The ${wanted.name} is measured ${wantedAt}, level, from the axis to the middle of the wheel.`
            : phrase`The axis leans on its way up. Between the road and the height of the wheel centre that makes a level step from axis to axis.`,
      }),
      {
        id: 'length',
        quantity: { name: 'marked length', symbol: 'l', kind: 'length' },
        unit: 'mm',
        decimals: 1,
        label: 'Its length',
        value: number,
        sum: 'rounded',
        possible: (value) => value > 0,
        hint: () =>
          phrase`The lean and the loaded radius make a right-angled triangle: what does the axis gain on its way up? Then mind which side it starts from.`,
        slips: [
          {
            id: 'other-one',
            confuses: 'start of the axis',
            value: (item) => (item.asks === 'offset' ? lean(item) : atOther(item)),
            text: (item) =>
              item.asks === 'offset'
                ? phrase`That is the lean alone, as if the start of the axis were right at the middle of the wheel. The ${given.name} is there already and counts with its sign.`
                : phrase`That has the start of the axis in it: it is the ${wanted.name}. Here the gain on the way between the heights is asked for, wherever the axis starts.`,
          },
          {
            id: 'sign-of-start',
            confuses: 'sides of the start',
            value: (item) => lean(item) - offset(item),
            text: (item) =>
              phrase`That has the sides of the start turned round: it takes ${directed(item.offset_mm, 'mm', given)} the other way. ${item.asks === 'offset' ? 'Add it with its sign.' : 'Leave it out: only the gain between the heights is asked for.'}`,
          },
          {
            id: 'diameter',
            confuses: 'diameter',
            value: (item) => 2 * lean(item) + (item.asks === 'offset' ? offset(item) : 0),
            text: () =>
              phrase`That climbs by a whole diameter, to the top of the tyre. From the road to the wheel centre it is one loaded radius.`,
          },
          {
            id: 'cosine',
            confuses: 'cosine',
            value: (item) =>
              radius(item) * Math.cos(si(item.lean_deg, 'deg')) +
              (item.asks === 'offset' ? offset(item) : 0),
            text: () =>
              phrase`That takes the cosine, which hardly shortens the loaded radius at all. The level step is the side across from the lean: the tangent belongs there.`,
          },
        ],
        solution: (item, earlier, value) => {
          const climbed = phrase`${mm(item.radius_mm)} · tan ${deg(item.lean_deg)} = ${rounded(lean(item), 'mm', 1)}`;
          const id = chosen(choices, item.listed, step(earlier, 0));
          return id === 'wanted'
            ? phrase`On its way up a loaded radius the axis gains ${climbed}. With the start: ${rounded(lean(item), 'mm', 1)} + ${term(mm(item.offset_mm))} = ${rounded(value, 'mm', 1)}.`
            : phrase`On its way up a loaded radius the axis gains ${climbed}, wherever it starts.`;
        },
      },
    ],
  };
}
