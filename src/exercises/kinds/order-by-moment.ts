import { largestFirst, ordering, wellSpaced } from '../forms/choosing.ts';
import { kept } from '../forms/kept.ts';
import { letterOf, orderOf } from '../forms/rank.ts';
import { shuffled } from '../forms/shuffled.ts';
import { step, type Kind } from '../kind.ts';
import { momentWithLever, type Along } from '../paper/along.ts';
import { cornerWithLevers } from '../paper/corner.ts';
import { given, mm, phrase, rounded, si, type Phrase } from '../phrase.ts';
import { forcePictures, type SeenForce } from '../pictures/force-pictures.ts';

interface Item {
  readonly roadLever_mm: number;
  readonly hubLever_mm: number;
  readonly caliper_N: number;
  readonly inboard_N: number;
  readonly drive_N: number;
  readonly edge_N: number;
  readonly listed: readonly number[];
}

type Force = 'caliper_N' | 'inboard_N' | 'drive_N' | 'edge_N';

interface Load {
  readonly force: Force;
  readonly by: Along['by'];
  readonly words: (force: Phrase) => Phrase;
  readonly why: string;
}

const LOADS: readonly Load[] = [
  {
    force: 'caliper_N',
    by: 'brake',
    words: (force) => phrase`a caliper on the carrier brakes the wheel with ${force}`,
    why: 'counts at the road, since the caliper hands the torque to the carrier',
  },
  {
    force: 'inboard_N',
    by: 'shaft',
    words: (force) => phrase`a brake beside the gearbox holds the wheel back with ${force}`,
    why: 'counts at the wheel centre, since the torque goes through the shaft',
  },
  {
    force: 'drive_N',
    by: 'shaft',
    words: (force) => phrase`the engine drives the wheel forward with ${force}`,
    why: 'counts at the wheel centre, since the torque comes through the shaft',
  },
  {
    force: 'edge_N',
    by: 'edge',
    words: (force) => phrase`an edge pushes the freely rolling wheel rearward with ${force}`,
    why: 'counts at the wheel centre, since a wheel that rolls freely takes no torque',
  },
];

const road = ({ roadLever_mm }: Item): number => si(roadLever_mm, 'mm');
const hub = ({ hubLever_mm }: Item): number => si(hubLever_mm, 'mm');
const loadAt = (place: number | undefined): Load | undefined =>
  place === undefined ? undefined : LOADS[place];

/** The size of a load's moment about the axis, with the lever of its height or with another one. */
const size = (item: Item, { by, force }: Load, lever = by === 'brake' ? road(item) : hub(item)) =>
  Math.abs(momentWithLever(lever, 'left', { by, force: item[force] }));

const sizes = (item: Item, of: (load: Load) => number): readonly number[] =>
  item.listed.map((place) => {
    const load = LOADS[place];
    return load ? of(load) : NaN;
  });

const moments = kept((item: Item) => sizes(item, (load) => size(item, load)));

/** The load with the largest moment, where it counts. */
const seen = (item: Item): SeenForce => {
  const load = firstOf(item);
  const force = load ? item[load.force] : 0;
  return {
    at: load?.by === 'brake' ? 'road' : 'centre',
    force: load?.force === 'drive_N' ? force : -force,
    says: given(force, 'N').figure,
  };
};

/** Four loads on one wheel, from the one that turns it most to the one that turns it least. */
export const orderByMoment: Kind<Item> = {
  id: 'order-by-moment',
  version: 1,
  title: 'Which turns the wheel most?',
  lesson: 'braking-at-the-ground',
  level: 3,
  draw: (random) => ({
    roadLever_mm: random.integer(12, 34),
    hubLever_mm: random.integer(48, 90),
    caliper_N: 50 * random.integer(60, 120),
    inboard_N: 50 * random.integer(16, 70),
    drive_N: 50 * random.integer(16, 70),
    edge_N: 50 * random.integer(16, 70),
    listed: shuffled(random, LOADS.length),
  }),
  sound: (item) => wellSpaced(moments(item), 0.06),
  question: ({ roadLever_mm, hubLever_mm }) =>
    phrase`A left front wheel meets four loads, one at a time. About its steering axis a force along the car has a lever of ${mm(roadLever_mm)} at the road and of ${mm(hubLever_mm)} at the height of the wheel centre. Put the loads in order by the size of the moment with which each of them turns the wheel about that axis.`,
  ...forcePictures<Item>({
    side: () => 'left',
    left: (item) => cornerWithLevers(road(item), hub(item)),
    given: (item) => ({
      measures: [
        { of: 'shortest', says: mm(item.hubLever_mm).figure },
        { of: 'leverAtRoad', says: mm(item.roadLever_mm).figure },
      ],
    }),
    forces: (item) => [seen(item)],
    parts: { largest: { seen: 'moment', force: seen } },
  }),
  parts: [
    ordering<Item>({
      id: 'order',
      name: 'order by moment',
      label: 'Loads, the one with the largest moment first',
      first: 'largest',
      last: 'smallest',
      options: (item) =>
        item.listed.flatMap((place) => {
          const load = LOADS[place];
          return load
            ? [{ id: load.force, words: load.words([given(item[load.force], 'N')]) }]
            : [];
        }),
      by: moments,
      hint: () =>
        phrase`Ask of each load who holds the torque. Where the carrier does, the lever at the road counts; everywhere else the one at the wheel centre. Then multiply.`,
      slips: [
        {
          id: 'by-force',
          confuses: 'size of the force',
          by: (item) => sizes(item, ({ force }) => item[force]),
          text: () =>
            phrase`That is the order by the size of the force. It would be right if all had the same lever; here one of them counts at another height than the rest.`,
        },
        {
          id: 'levers-swapped',
          confuses: 'two heights',
          by: (item) =>
            sizes(item, (load) => size(item, load, load.by === 'brake' ? hub(item) : road(item))),
          text: () =>
            phrase`That has the two heights swapped: the caliper at the wheel centre, the others at the road. The caliper brings its force down to the road, because it hands its torque to the carrier.`,
        },
        {
          id: 'all-brakes-at-the-road',
          confuses: 'every brake',
          by: (item) =>
            sizes(item, (load) =>
              size(item, load, load.force === 'inboard_N' ? road(item) : undefined),
            ),
          text: () =>
            phrase`That lets every brake count at the road. A brake beside the gearbox sends its torque through the shaft and past the carrier, so its force stays at the wheel centre.`,
        },
        {
          id: 'smallest-first',
          confuses: 'first and last',
          by: (item) => moments(item).map((moment) => -moment),
          text: () =>
            phrase`That is the very order with first and last exchanged: it begins with the smallest moment. The largest is to stand first.`,
        },
        {
          id: 'by-height',
          confuses: 'lever alone',
          by: (item) =>
            sizes(item, (load) => (load.by === 'brake' ? 0 : 1) + item[load.force] / 1e6),
          text: () =>
            phrase`That puts the load at the road last because its lever is the shorter one. The lever alone does not decide: a large force on a short lever can turn more than a small one on a long lever.`,
        },
      ],
      solution: (item, order) => {
        const rows = order.flatMap((at): Phrase[] => {
          const load = loadAt(item.listed[at]);
          return load
            ? [phrase`${letterOf(at)} ${load.why}: ${rounded(size(item, load), 'Nm', 1)}. `]
            : [];
        });
        return phrase`${rows.flat()}So the order is ${order.map(letterOf).join(' ')}.`;
      },
    }),
    {
      id: 'largest',
      quantity: { name: 'size of the largest moment', symbol: 'M', kind: 'moment' },
      unit: 'Nm',
      decimals: 1,
      label: 'Size of the moment that you put first',
      value: (item, earlier) => {
        const [first = -1] = orderOf(step(earlier, 0), LOADS.length);
        const load = loadAt(item.listed[first]);
        return load ? size(item, load) : NaN;
      },
      possible: (value) => value > 0,
      hint: () =>
        phrase`Force times lever, in newtons and metres: the lever of the height at which it counts.`,
      slips: [
        {
          id: 'other-lever',
          confuses: 'lever of the other height',
          value: (item) => {
            const load = firstOf(item);
            return load ? size(item, load, load.by === 'brake' ? hub(item) : road(item)) : NaN;
          },
          text: () =>
            phrase`That takes the lever of the other height. Ask again who holds the torque of this load: the carrier, or somebody beyond the shaft?`,
        },
        {
          id: 'millimetres',
          confuses: 'millimetres',
          value: (item) => 1000 * Math.max(...moments(item)),
          text: () =>
            phrase`That multiplies newtons by millimetres. In N·m the lever has to be in metres, a thousand times smaller a number.`,
        },
        {
          id: 'both-wheels',
          confuses: 'both wheels',
          value: (item) => 2 * Math.max(...moments(item)),
          text: () =>
            phrase`That counts both wheels together. The question is about one front wheel; the other one has an axis of its own.`,
        },
        {
          id: 'both-levers',
          confuses: 'both levers together',
          value: (item) => {
            const load = firstOf(item);
            return load ? size(item, load, road(item) + hub(item)) : NaN;
          },
          text: () =>
            phrase`That takes both levers together. It is one force, and it counts at one of the two heights.`,
        },
      ],
      solution: (item, earlier, value) => {
        const [first = -1] = orderOf(step(earlier, 0), LOADS.length);
        const load = loadAt(item.listed[first]);
        const force = load ? item[load.force] : 0;
        const lever = load?.by === 'brake' ? road(item) : hub(item);
        return phrase`${given(force, 'N')} · ${rounded(lever, 'm', 3)} = ${rounded(value, 'Nm', 1)}.`;
      },
    },
  ],
};

const firstOf = (item: Item): Load | undefined =>
  loadAt(item.listed[largestFirst(moments(item))[0] ?? -1]);
