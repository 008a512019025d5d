import type { HubLoads } from '#core/bearing/hub.ts';
import { path } from '../corner/sketch.ts';
import type { Mark } from '../marks.ts';
import type { Point } from '../plane.ts';
import {
  contactDirection,
  elementCentre,
  loadedHalf,
  ROW_SIGNS,
  type BearingSizes,
  type Placing,
} from './bearing-sizes.ts';
import { UNLOADED } from './contact-lines.ts';
import { BELOW } from './load-arrows.ts';

/** A place in the section, (out, up), and a part of the way between two stations. */
type Place = readonly [number, number];
type Leg = readonly Place[];

/** Who hands the force on to whom, in order. */
export const WAY_STATIONS = [
  { name: 'road on tyre', words: 'The road pushes the tyre up.' },
  { name: 'wheel on hub', words: 'Rim and disc hand it on: the wheel pushes the hub.' },
  {
    name: 'hub on inner rings',
    words: 'The hub lifts the inner rings of both rows. From here there are two ways.',
  },
  {
    name: 'inner rings on balls',
    words: 'Each inner ring presses on the balls that stand above it.',
  },
  {
    name: 'balls on outer ring',
    words: 'The balls press the outer ring, slantwise, along their contact lines.',
  },
  { name: 'outer ring on carrier', words: 'The outer ring sits in the carrier and lifts it.' },
] as const;

/** The last station. */
export const WAY_END = WAY_STATIONS.length - 1;

/** The station that a way has reached. */
export const stationAt = (way: number): (typeof WAY_STATIONS)[number] =>
  WAY_STATIONS[Math.min(WAY_END, Math.max(0, Math.floor(way + 1e-6)))] ?? WAY_STATIONS[0];

/** How the force goes from the road to the carrier, as far as it has come: one line, and two from the hub on. */
export const forceWay = (
  sizes: BearingSizes,
  { radial }: HubLoads,
  way: number,
  place: Placing,
): Mark[] =>
  (['outboard', 'inboard'] as const)
    .filter((row) => Math.abs(radial[row]) > UNLOADED)
    .flatMap((row): Mark[] => {
      const legs = [...throughWheel(sizes), ...throughRow(sizes, row, loadedHalf(radial[row]))];
      const gone = walked(legs, way).map(([out, up]) => place(out, up));
      const head = gone.at(-1);
      return [
        path(gone, { key: `way-${row}`, role: 'force', line: 'heavy', closed: false }),
        ...(head ? [spot(`way-${row}-head`, head)] : []),
      ];
    });

/** Up through the disc to where it is bolted on, and through the flange into the shaft. Tyre and rim are below the paper. */
function throughWheel({ loadLine, loadLineBefore, face }: BearingSizes): readonly Leg[] {
  // A spacer takes the disc out; another inset leaves it where it is.
  const disc = face + 5 + Math.max(0, loadLine - loadLineBefore);
  return [
    [
      [disc + 8, -BELOW],
      [disc + 5, -78],
      [disc, -66],
      [disc, -50],
    ],
    [[disc, -50], [face - 5, -44], [face - 5, -8], inShaft(face)],
  ];
}

function throughRow(
  sizes: BearingSizes,
  row: keyof typeof ROW_SIGNS,
  half: 1 | -1,
): readonly Leg[] {
  const { face, halfSpread, element, outerRadius } = sizes;
  const sign = ROW_SIGNS[row];
  const [out, up] = elementCentre(sizes, sign, half);
  const [stepOut, stepUp] = contactDirection(sizes, sign, half);
  const on = (by: number): Place => [out + by * stepOut, up + by * stepUp];
  const end = on(element + 8);
  return [
    [inShaft(face), [sign * halfSpread, 0], on(-element)],
    [on(-element), on(element)],
    [on(element), end, [end[0], half * (outerRadius + 10)]],
  ];
}

const inShaft = (face: number): Place => [face - 14, 0];

const spot = (key: string, at: Point): Mark => ({ kind: 'spot', key, role: 'force', at });

/** The points passed after so many legs, a part of a leg by its length. */
function walked(legs: readonly Leg[], way: number): Leg {
  const points: Place[] = [];
  const start = legs[0]?.[0];
  if (start) points.push(start);
  for (const [index, leg] of legs.entries()) {
    const share = Math.min(1, Math.max(0, way - index));
    if (share === 0) break;
    points.push(...partOf(leg, share));
  }
  return points;
}

function partOf(leg: Leg, share: number): Leg {
  const steps = leg.slice(1).map((to, i) => {
    const from = leg[i] ?? to;
    return { from, to, run: Math.hypot(to[0] - from[0], to[1] - from[1]) };
  });
  let left = share * steps.reduce((sum, { run }) => sum + run, 0);
  const points: Place[] = [];
  for (const { from, to, run } of steps) {
    if (left <= 0) break;
    const part = run === 0 ? 1 : Math.min(1, left / run);
    points.push([from[0] + part * (to[0] - from[0]), from[1] + part * (to[1] - from[1])]);
    left -= run;
  }
  return points;
}
