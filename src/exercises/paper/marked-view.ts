import type { Corner } from '#core/corner.ts';
import { measure } from '#core/geometry.ts';
import type { Quantity } from '#core/quantities.ts';
import { kept } from '../forms/kept.ts';
import { letterOf } from '../forms/rank.ts';
import { si } from '../phrase.ts';
import type { CornerMeasure, CornerPicture } from '../pictures/picture.ts';

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

/** The lengths that have letters, in the order in which an item counts them. */
export const MARKED_IDS = ['wanted', 'given', 'lean', 'radius', 'shortest'] as const;
export type MarkedId = (typeof MARKED_IDS)[number];

/** What the lengths of a view come to, in metres, and how they are drawn. */
export function markedLengths(about: MarkedView) {
  const { view } = about;
  const corner = ({ offset_mm, lean_deg, radius_mm }: MarkedItem): Corner =>
    about.corner(si(offset_mm, 'mm'), si(lean_deg, 'deg'), si(radius_mm, 'mm'));
  const offset = ({ offset_mm }: MarkedItem): number => si(offset_mm, 'mm');
  const radius = ({ radius_mm }: MarkedItem): number => si(radius_mm, 'mm');
  const atOther = kept((item: MarkedItem): number => {
    const geometry = measure(corner(item));
    return view === 'front' ? geometry.spindleOffset : geometry.trail;
  });
  const lean = (item: MarkedItem): number => atOther(item) - offset(item);

  /** How long a marked length is. */
  const long = (item: MarkedItem, id: string | undefined): number => {
    switch (id as MarkedId | undefined) {
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

  const measureOf: Readonly<Record<MarkedId, CornerMeasure>> = {
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
      of: measureOf[MARKED_IDS[place] ?? 'wanted'],
      says: letterOf(i),
    })),
  });
  const drawnAlone =
    (id: MarkedId) =>
    (item: MarkedItem): CornerPicture => ({
      ...picture(item),
      measures: [
        { of: measureOf[id], says: letterOf(item.listed.indexOf(MARKED_IDS.indexOf(id))) },
      ],
    });

  return { offset, radius, atOther, lean, long, picture, drawnAlone };
}
