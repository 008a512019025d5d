import { changed, NO_CHANGE, wheelShift } from '#core/change.ts';
import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { ordering, wellSpaced } from '../forms/choosing.ts';
import { kept } from '../forms/kept.ts';
import { letterOf, orderOf } from '../forms/rank.ts';
import { shuffled } from '../forms/shuffled.ts';
import { step, type Kind } from '../kind.ts';
import { cornerAtRoad } from '../paper/corner.ts';
import { directed, mm, phrase, rounded, si, sign, term, type Phrase } from '../phrase.ts';
import { movedScrub } from '../pictures/corner-pictures.ts';
import type { Rim } from '../pictures/part-pictures.ts';
import { toldMark } from '../pictures/wheel-pictures.ts';

interface Item {
  readonly scrub_mm: number;
  readonly inset_mm: number;
  readonly spacer_mm: number;
  readonly otherInset_mm: number;
  readonly bothSpacer_mm: number;
  readonly bothInset_mm: number;
  readonly track_mm: number;
  readonly listed: readonly number[];
}

interface Offer {
  readonly id: string;
  readonly words: (item: Item) => Phrase;
  readonly spacer: (item: Item) => number;
  readonly inset: (item: Item) => number;
}

const OFFERS: readonly Offer[] = [
  {
    id: 'spacer',
    words: ({ spacer_mm }) => phrase`the wheel as it is, on a spacer ${mm(spacer_mm)} thick`,
    spacer: ({ spacer_mm }) => spacer_mm,
    inset: ({ inset_mm }) => inset_mm,
  },
  {
    id: 'wheel',
    words: ({ otherInset_mm }) => phrase`another wheel, with an inset of ${mm(otherInset_mm)}`,
    spacer: () => 0,
    inset: ({ otherInset_mm }) => otherInset_mm,
  },
  {
    id: 'both',
    words: ({ bothSpacer_mm, bothInset_mm }) =>
      phrase`a wheel with an inset of ${mm(bothInset_mm)} on a spacer ${mm(bothSpacer_mm)} thick`,
    spacer: ({ bothSpacer_mm }) => bothSpacer_mm,
    inset: ({ bothInset_mm }) => bothInset_mm,
  },
  {
    id: 'track',
    words: ({ track_mm }) =>
      phrase`the wheel as it is, on spacers that make the track ${mm(track_mm)} wider`,
    spacer: ({ track_mm }) => track_mm / 2,
    inset: ({ inset_mm }) => inset_mm,
  },
];

/** How far an offer takes the wheel outboard, in metres. */
const moved = (item: Item, { spacer, inset }: Offer, sense = 1): number =>
  wheelShift({
    spacer: si(spacer(item), 'mm'),
    inset: sense * si(inset(item) - item.inset_mm, 'mm'),
  });

const sizes = (item: Item, of: (offer: Offer) => number): readonly number[] =>
  item.listed.map((place) => {
    const offer = OFFERS[place];
    return offer ? of(offer) : NaN;
  });
const moves = kept((item: Item) => sizes(item, (offer) => moved(item, offer)));
const scrub = ({ scrub_mm }: Item): number => si(scrub_mm, 'mm');
const most = (item: Item): number => Math.max(...moves(item));
const offerAt = (item: Item, index = -1): Offer | undefined => OFFERS[item.listed[index] ?? -1];
const asTrack = (item: Item, offer: Offer): number =>
  offer.id === 'track' ? si(item.track_mm, 'mm') : moved(item, offer);

/** Some rim: nobody asks how wide it is. */
const rimAt = (middle_mm: number): Rim => ({ middle_mm, width_mm: 178 });

/** Four offers of wheels and spacers, from the one that takes the wheel farthest outboard. */
export const orderChanges: Kind<Item> = {
  id: 'order-changes',
  version: 1,
  title: 'Which sits farthest out?',
  lesson: 'spacers-and-inset',
  level: 3,
  draw: (random) => {
    const inset_mm = random.integer(38, 55);
    return {
      scrub_mm: random.pick([-1, 1]) * random.integer(3, 24),
      inset_mm,
      spacer_mm: random.integer(5, 25),
      otherInset_mm: inset_mm - random.integer(4, 24),
      bothSpacer_mm: random.integer(8, 25),
      bothInset_mm: inset_mm + random.pick([-1, 1]) * random.integer(3, 12),
      track_mm: 2 * random.integer(6, 22),
      listed: shuffled(random, OFFERS.length),
    };
  },
  sound: (item) => wellSpaced(moves(item), 0.05),
  question: ({ inset_mm, scrub_mm }) =>
    phrase`A car stands on wheels with an inset of ${mm(inset_mm)}, and its scrub radius is ${directed(scrub_mm, 'mm', QUANTITIES.scrubRadius)}. A customer has seen four offers and wants to know which of them takes the middle of each front wheel farthest outboard. Put them in order. What comes of it for bearings, steering and bodywork is another question, and fixing a wheel on spacers is for those who may.`,
  picture: (item) => ({
    scene: 'wheel',
    wheel: rimAt(-item.inset_mm),
    measures: [{ of: 'inset', says: mm(item.inset_mm).figure }],
  }),
  solved: (item) => {
    const first = OFFERS.find((offer) => moved(item, offer) === most(item));
    const spacer_mm = first?.spacer(item) ?? 0;
    return {
      scene: 'wheel',
      before: rimAt(-item.inset_mm),
      wheel: rimAt(1000 * most(item) - item.inset_mm),
      spacer_mm,
      measures: [toldMark('move', 'movement', most(item))],
    };
  },
  wrong: (item, road) => (road.part === 'scrub' ? movedScrub(scrub(item), road) : undefined),
  parts: [
    ordering<Item>({
      id: 'order',
      name: 'order by way outboard',
      label: 'Offers, the one farthest outboard first',
      first: 'farthest outboard',
      last: 'farthest inboard',
      options: (item) =>
        item.listed.flatMap((place) => {
          const offer = OFFERS[place];
          return offer ? [{ id: offer.id, words: offer.words(item) }] : [];
        }),
      by: moves,
      hint: () =>
        phrase`Reckon each offer as a way of one wheel: a spacer takes it outboard by its thickness, more inset takes it inboard.`,
      slips: [
        {
          id: 'inset-turned-round',
          confuses: 'inset',
          by: (item) => sizes(item, (offer) => moved(item, offer, -1)),
          text: () =>
            phrase`That takes a wheel with more inset to sit farther out. It is the other way about: the inset says how far the mounting face lies outboard of the middle, so more of it draws the wheel in.`,
        },
        {
          id: 'inset-left-out',
          confuses: 'spacers alone',
          by: (item) => sizes(item, (offer) => moved(item, offer, 0)),
          text: () =>
            phrase`That compares the spacers alone. A wheel with another inset moves as well, and an inset that grows can take back what a spacer gives.`,
        },
        {
          id: 'track-whole',
          confuses: 'track',
          by: (item) => sizes(item, (offer) => asTrack(item, offer)),
          text: () =>
            phrase`That takes the whole change of the track for the way of one wheel. The track grows on both sides: each wheel has half of it.`,
        },
        {
          id: 'by-inset',
          confuses: 'inset alone',
          by: (item) => sizes(item, ({ inset, spacer }) => -inset(item) + spacer(item) / 1000),
          text: () =>
            phrase`That compares the inset alone, as if the spacers did nothing. A spacer behind the wheel moves it outboard just as an inset that is smaller by as much.`,
        },
        {
          id: 'inboard-first',
          confuses: 'first and last',
          by: (item) => moves(item).map((move) => -move),
          text: () =>
            phrase`That is the very order with first and last exchanged: it begins with the wheel that sits farthest in. The one farthest outboard is to stand first.`,
        },
      ],
      solution: (item, order) => {
        const rows = order.flatMap((at): Phrase[] => {
          const offer = offerAt(item, at);
          return offer ? [phrase`${letterOf(at)}: ${rounded(moved(item, offer), 'mm', 0)}. `] : [];
        });
        return phrase`Way outboard of each: ${rows.flat()}So the order is ${order.map(letterOf).join(' ')}.`;
      },
    }),
    {
      id: 'scrub',
      quantity: QUANTITIES.scrubRadius,
      unit: 'mm',
      decimals: 0,
      label: 'Scrub radius with the one that you put first',
      value: (item, earlier) => scrubWith(item, orderOf(step(earlier, 0), OFFERS.length)[0]),
      sum: 'exact',
      hint: () =>
        phrase`The axis stays. What the wheel goes outboard, the scrub radius grows by: the thickness of the spacer, less what the inset has grown.`,
      slips: [
        {
          id: 'wrong-way',
          confuses: 'axis for the wheel',
          value: (item) => scrub(item) - most(item),
          text: () =>
            phrase`That takes the axis for the wheel, as if the axis went outboard. The contact centre goes, and it goes away from the axis.`,
        },
        {
          id: 'move-alone',
          confuses: 'movement of the wheel',
          value: most,
          text: () =>
            phrase`That is the movement of the wheel alone. It would be the scrub radius if there had been none before; put the one that was there to it, with its sign.`,
        },
        {
          id: 'track',
          confuses: 'track',
          value: (item) => scrub(item) + 2 * most(item),
          text: () =>
            phrase`That adds what the track gains, both wheels together. The scrub radius belongs to one wheel, which moves by half of that.`,
        },
        {
          id: 'sign-of-start',
          confuses: 'sign of the scrub radius',
          value: (item) => most(item) - scrub(item),
          text: () =>
            phrase`That has the sign of the scrub radius turned round at the start. Inboard counts as positive, outboard as negative.`,
        },
      ],
      solution: (item, earlier, value) => {
        const offer = offerAt(item, orderOf(step(earlier, 0), OFFERS.length)[0]);
        const move = offer ? moved(item, offer) : NaN;
        return phrase`${term(mm(item.scrub_mm))} + ${term(rounded(move, 'mm', 0))} = ${rounded(value, 'mm', 0)}, ${sign(value, QUANTITIES.scrubRadius)}.`;
      },
    },
  ],
};

/** The scrub radius with an offer, by the core. */
function scrubWith(item: Item, first: number | undefined): number {
  const offer = offerAt(item, first);
  if (!offer) return NaN;
  const spacer = si(offer.spacer(item), 'mm');
  const inset = si(offer.inset(item) - item.inset_mm, 'mm');
  const corner = cornerAtRoad({ scrubRadius: scrub(item) });
  return measure(changed(corner, { ...NO_CHANGE, spacer, inset })).scrubRadius;
}
