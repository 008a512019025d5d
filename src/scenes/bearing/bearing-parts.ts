import type { Anatomy } from '#core/car/anatomy.ts';
import { path, type Pen } from '../corner/sketch.ts';
import { below, discSection, rimSection, squeezed, tyreSection } from '../corner/wheel-outlines.ts';
import type { PartPoint } from '../corner/part-axes.ts';
import type { Mark } from '../marks.ts';
import {
  contactDirection,
  elementCentre,
  ROW_SIGNS,
  type BearingSizes,
  type Placing,
  type RowSign,
} from './bearing-sizes.ts';

const HALVES = { above: 1, below: -1 } as const;

/** Radius of the hub's flange and of a spacer, thickness of the flange, and the pilot that centres the wheel. */
const FLANGE = 62;
const THICK = 9;
const PILOT = { radius: 29, length: 8 } as const;

/** How far the carrier reaches round the outer ring. */
const CARRIER = 17;

/** The carrier round the bearing, the outer ring in it, the hub with its inner rings, and the rows. */
export function bearingParts(sizes: BearingSizes, place: Placing): Mark[] {
  const { halfWidth: w, outerRadius: r } = sizes;
  return [
    ...bothHalves(
      'carrier',
      [
        [-w + 2, r],
        [w - 2, r],
        [w - 2, r + CARRIER],
        [-w + 2, r + CARRIER],
      ],
      { role: 'part', filled: true },
      place,
    ),
    drawn('hub', hub(sizes), { role: 'part', filled: true }, place),
    ...bothHalves('inner-rings', innerRings(sizes), { role: 'bearing', filled: true }, place),
    ...bothHalves('outer-ring', outerRing(sizes), { role: 'bearing', filled: true }, place),
    ...Object.entries(ROW_SIGNS).flatMap(([name, row]) =>
      Object.entries(HALVES).map(([side, half]) =>
        element(`${name}-${side}`, sizes, row, half, place),
      ),
    ),
  ];
}

/** The wheel's disc where it is bolted on; with tyre and rim where the whole wheel is shown. */
export function wheelParts(
  sizes: BearingSizes,
  anatomy: Anatomy,
  place: Placing,
  whole: boolean,
): Mark[] {
  const pen = { role: 'wheel', filled: true } as const;
  const moved = (points: readonly PartPoint[]): PartPoint[] =>
    points.map(([out, up]) => [out + sizes.loadLine, up]);
  const disc = moved(discSection(anatomy));
  const marks = bothHalves('disc', disc, pen, place);
  if (!whole) return marks;
  const tyre = squeezed(tyreSection(anatomy), anatomy, sizes.loadedRadius);
  const rim = moved(rimSection(anatomy));
  return [
    ...marks,
    drawn('tyre-above', moved(tyreSection(anatomy)), { ...pen, line: 'thin' }, place),
    drawn('tyre-below', below(moved(tyre)), { ...pen, line: 'thin' }, place),
    drawn('rim-above', rim, { role: 'wheel', closed: false }, place),
    drawn('rim-below', below(rim), { role: 'wheel', closed: false }, place),
  ];
}

/** What lies between flange and wheel. */
export const spacerPart = ({ face }: BearingSizes, thickness: number, place: Placing): Mark[] =>
  thickness < 0.05
    ? []
    : bothHalves(
        'spacer',
        [
          [face, PILOT.radius],
          [face + thickness, PILOT.radius],
          [face + thickness, FLANGE + 8],
          [face, FLANGE + 8],
        ],
        { role: 'part', line: 'heavy', filled: true },
        place,
      );

/** Hub: shaft through the inner rings, flange and pilot, closed. */
function hub({ halfWidth: w, bore, face }: BearingSizes): PartPoint[] {
  const upper: PartPoint[] = [
    [-w - 6, bore],
    [face - THICK - 4, bore],
    [face - THICK, bore + 6],
    [face - THICK, FLANGE],
    [face, FLANGE],
    [face, PILOT.radius],
    [face + PILOT.length, PILOT.radius],
  ];
  return [...upper, ...below(upper).reverse()];
}

/** Rows back to back: the outer ring's shoulders stand between the rows, those of the inner rings outside. */
function outerRing(sizes: BearingSizes): PartPoint[] {
  const { halfWidth: w, halfPitch: h, pitchRadius: p, element: e, outerRadius } = sizes;
  return [
    [-w, outerRadius],
    [w, outerRadius],
    [w, p + 0.85 * e],
    [h, p + 0.85 * e],
    [h, p + 0.3 * e],
    [-h, p + 0.3 * e],
    [-h, p + 0.85 * e],
    [-w, p + 0.85 * e],
  ];
}

function innerRings({
  halfWidth: w,
  halfPitch: h,
  pitchRadius: p,
  element: e,
  bore,
}: BearingSizes): PartPoint[] {
  return [
    [-w, bore],
    [w, bore],
    [w, p - 0.3 * e],
    [h, p - 0.3 * e],
    [h, p - 0.85 * e],
    [-h, p - 0.85 * e],
    [-h, p - 0.3 * e],
    [-w, p - 0.3 * e],
  ];
}

function element(
  key: string,
  sizes: BearingSizes,
  row: RowSign,
  half: 1 | -1,
  place: Placing,
): Mark {
  const [out, up] = elementCentre(sizes, row, half);
  if (sizes.kind === 'ball') {
    return {
      kind: 'circle',
      key: `element-${key}`,
      role: 'bearing',
      line: 'outline',
      filled: true,
      centre: place(out, up),
      radius: sizes.element,
    };
  }
  const [nOut, nUp] = contactDirection(sizes, row, half);
  const corner = (along: number, across: number): PartPoint => [
    out + along * sizes.halfLength * nUp + across * sizes.element * nOut,
    up - along * sizes.halfLength * nOut + across * sizes.element * nUp,
  ];
  return drawn(
    `element-${key}`,
    [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)],
    { role: 'bearing', filled: true },
    place,
  );
}

const drawn = (
  key: string,
  points: readonly PartPoint[],
  pen: Omit<Pen, 'key'>,
  place: Placing,
): Mark =>
  path(
    points.map(([out, up]) => place(out, up)),
    { key, ...pen },
  );

const bothHalves = (
  key: string,
  points: readonly PartPoint[],
  pen: Omit<Pen, 'key'>,
  place: Placing,
): Mark[] => [
  drawn(`${key}-above`, points, pen, place),
  drawn(`${key}-below`, below(points), pen, place),
];
