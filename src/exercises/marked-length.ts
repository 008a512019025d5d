import type { Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import type { Quantity } from '#core/quantities.ts';
import { choosing, chosen, type Choice } from './forms/choosing.ts';
import { letterOf } from './forms/rank.ts';
import { shuffled } from './forms/shuffled.ts';
import { step, type Earlier, type Kind } from './kind.ts';
import { deg, directed, mm, phrase, rounded, si, term } from './phrase.ts';
import type { CornerMeasure, CornerPicture } from './pictures/picture.ts';

/** A corner seen from one side: an offset at one height, and a lean that makes another at the other height. */
export interface MarkedItem {
  /** Which length is asked for: the offset at the other height, or what the lean makes of it. */
  readonly asks: 'offset' | 'lean';
  readonly offset_mm: number;
  readonly lean_deg: number;
  readonly radius_mm: number;
  /** The places of the five lengths, in the order of the letters. */
  readonly listed: readonly number[];
}

/** What tells the front view from the side view. */
export interface MarkedView {
  readonly id: string;
  readonly title: string;
  readonly lesson: string;
  readonly view: 'front' | 'side';
  /** The offset that is given, and the one that is asked for. */
  readonly given: Quantity;
  readonly wanted: Quantity;
  readonly givenMeasure: CornerMeasure;
  readonly wantedMeasure: CornerMeasure;
  /** In words: `at the road`, `at the height of the wheel centre`. */
  readonly givenAt: string;
  readonly wantedAt: string;
  /** Which way the axis leans: `inboard`. */
  readonly leans: string;
  readonly corner: (offset: number, lean: number, radius: number) => Corner;
  readonly offsets: readonly [least: number, most: number];
  readonly leans_deg: readonly [least: number, most: number];
}

const ids = ['wanted', 'given', 'lean', 'radius', 'shortest'] as const;
type Id = (typeof ids)[number];

/** A kind that asks which of five lettered lengths is meant, and then how long it is. */
export function markedLength(about: MarkedView): Kind<MarkedItem> {
  const { view, wanted, given, givenAt, wantedAt } = about;
  const corner = ({ offset_mm, lean_deg, radius_mm }: MarkedItem): Corner =>
    about.corner(si(offset_mm, 'mm'), si(lean_deg, 'deg'), si(radius_mm, 'mm'));
  const offset = ({ offset_mm }: MarkedItem): number => si(offset_mm, 'mm');
  const radius = ({ radius_mm }: MarkedItem): number => si(radius_mm, 'mm');
  const atOther = (item: MarkedItem): number => {
    const geometry = measure(corner(item));
    return view === 'front' ? geometry.spindleOffset : geometry.trail;
  };
  const lean = (item: MarkedItem): number => atOther(item) - offset(item);
  const meant = ({ asks }: MarkedItem): Id => (asks === 'offset' ? 'wanted' : 'lean');
  const name = ({ asks }: MarkedItem): string =>
    asks === 'offset' ? wanted.name : `way that the axis goes ${about.leans}`;

  /** How long a marked length is. */
  const long = (item: MarkedItem, id: string | undefined): number => {
    switch (id as Id | undefined) {
      case 'wanted':
        return Math.abs(atOther(item));
      case 'given':
        return Math.abs(offset(item));
      case 'lean':
        return lean(item);
      case 'radius':
        return radius(item);
      case 'shortest': {
        const across = view === 'front' ? atOther(item) : offset(item);
        return Math.abs(across) * Math.cos(si(item.lean_deg, 'deg'));
      }
      default:
        return NaN;
    }
  };

  const measureOf: Readonly<Record<Id, CornerMeasure>> = {
    wanted: about.wantedMeasure,
    given: about.givenMeasure,
    lean: 'lean',
    radius: 'loadedRadius',
    shortest: 'shortest',
  };
  const picture = (item: MarkedItem): CornerPicture => ({
    scene: 'corner',
    view,
    corner: corner(item),
    measures: item.listed.map((place, i) => ({
      of: measureOf[ids[place] ?? 'wanted'],
      says: letterOf(i),
    })),
  });
  const drawnAlone =
    (id: Id) =>
    (item: MarkedItem): CornerPicture => ({
      ...picture(item),
      measures: [{ of: measureOf[id], says: letterOf(item.listed.indexOf(ids.indexOf(id))) }],
    });

  const wrong = (id: Id, words: string, confuses: string, text: string): Choice<MarkedItem> => ({
    id,
    words: () => [words],
    confuses,
    text: () => [text],
    picture: drawnAlone(id),
  });
  const choices: readonly Choice<MarkedItem>[] = [
    {
      ...wrong(
        'wanted',
        `level, ${wantedAt}, from the axis to the middle of the wheel`,
        'lean',
        '',
      ),
      text: () =>
        phrase`That runs from the axis to the wheel: the ${wanted.name}. It holds more than the lean, namely what lay between them ${givenAt} already. The lean lies along the axis, from one height to the other.`,
    },
    {
      ...wrong(
        'given',
        `level, ${givenAt}, from the axis to the middle of the wheel`,
        'height',
        '',
      ),
      text: (item) =>
        phrase`That is the ${given.name}: the right two things, at the other height. ${item.asks === 'offset' ? `The ${wanted.name} is measured ${wantedAt}` : 'What the axis does on its way between the two heights is asked for'}.`,
    },
    {
      ...wrong(
        'lean',
        'level, from the axis at the road to the axis at the height of the wheel centre',
        'two points of the axis',
        '',
      ),
      text: () =>
        phrase`That lies between two points of the axis and has no end at the wheel. It is what the lean makes between the two heights; the ${wanted.name} goes from the axis to the wheel.`,
    },
    wrong(
      'radius',
      'upright, from the road to the wheel centre',
      'loaded radius',
      'That is the loaded radius, which is upright. Every offset of the axis is level: it says how far beside the wheel the axis passes, not how high.',
    ),
    wrong(
      'shortest',
      'from the wheel centre square to the axis',
      'shortest distance',
      `That is the shortest distance from the wheel centre, square to the axis. It would be the lever of a force straight across this view. The length that is asked for is measured level, as on a workshop floor.`,
    ),
  ];

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
      listed: shuffled(random, ids.length),
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
