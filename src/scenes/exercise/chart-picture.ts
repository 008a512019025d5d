import { writeShortest } from '#core/write-number.ts';
import type { ChartDrawing } from '../chart/chart-drawing.ts';
import { CHART_WIDTH, linePath, path, text } from '../chart/chart-ink.ts';
import { scale } from '../chart/scale.ts';
import { rounded, type Place } from '../paper/frame.ts';
import { textWidth } from '../paper/label-placement.ts';
import type { Shape } from '../paper/shapes.ts';

export interface ChartAxis {
  readonly name: string;
  readonly least: number;
  readonly most: number;
  readonly numbered: number;
  readonly division: number;
}

/** A chart to read from: curves over a grid whose lines can be counted. */
export interface ChartPicture {
  readonly across: ChartAxis;
  readonly up: ChartAxis;
  readonly curves: readonly {
    readonly says: string;
    readonly points: readonly (readonly [number, number])[];
  }[];
}

const HEIGHT = 380;
const BOX = { left: 48, right: CHART_WIDTH - 14, top: 30, bottom: HEIGHT - 46 };

/** How far along its curve a name stands, as a share. */
const NAMED_AT = [0.45, 0.42];
/** Where the name stands beside its curve, in units of paper: the first one below it, the others above. */
const BELOW = { x: -24, y: 12 };
const ABOVE = { x: 50, y: -8 };
/** How much of a name's height is on either side of its middle. */
const HALF_LINE = 8;

export function chartPicture({ across, up, curves }: ChartPicture): ChartDrawing {
  const x = scale([across.least, across.most], [BOX.left, BOX.right]);
  const y = scale([up.least, up.most], [BOX.bottom, BOX.top]);
  const upright = (at: number): string => `M${rounded(x(at))} ${BOX.top}V${BOX.bottom}`;
  const level = (at: number): string => `M${BOX.left} ${rounded(y(at))}H${BOX.right}`;
  const lines = (step: 'division' | 'numbered'): string =>
    ticks(across, across[step]).map(upright).join('') + ticks(up, up[step]).map(level).join('');
  const drawn = curves.map(({ points }) => points.map(([px, py]) => ({ x: x(px), y: y(py) })));
  const shapes: Shape[] = [
    path('grid', 'guide', 'faint', lines('division')),
    path('numbered', 'guide', 'thin', lines('numbered')),
    ...ticks(across, across.numbered).map((at) =>
      text(`x-${at}`, writeShortest(at), x(at), BOX.bottom + 14, false),
    ),
    ...ticks(up, up.numbered).map((at) =>
      text(`y-${at}`, writeShortest(at), BOX.left - 20, y(at), false),
    ),
    text('x-name', across.name, (BOX.left + BOX.right) / 2, HEIGHT - 12, false),
    text('y-name', up.name, BOX.left + 96, 13, false),
    ...curves.flatMap(({ says, points }, i): Shape[] => {
      const spots = points.map(([px, py]) => ({ x: px, y: py }));
      const name = seatOf(says, i, drawn);
      return [
        {
          ...path(`curve-${i}`, i === 0 ? 'bearing' : 'wheel', 'outline', linePath(spots, x, y)),
          line: i === 0 ? 'outline' : 'hidden',
        },
        ...(name ? [text(`name-${i}`, says, name.x, name.y, true)] : []),
      ];
    }),
  ];
  return {
    title: `${up.name} over ${across.name}`,
    description: words({ across, up, curves }),
    frame: { width: CHART_WIDTH, height: HEIGHT },
    shapes,
  };
}

/** Where a curve's name stands: beside it, or above the grid where it would hide what is to be read. */
function seatOf(
  says: string,
  index: number,
  drawn: readonly (readonly Place[])[],
): Place | undefined {
  const own = drawn[index] ?? [];
  const named = own[Math.round((NAMED_AT[index] ?? 0.6) * (own.length - 1))];
  if (!named) return undefined;
  const seat = index === 0 ? BELOW : ABOVE;
  const half = textWidth(says) / 2;
  // As far as the paper goes, see `text`.
  const beside = { x: Math.min(named.x + seat.x, CHART_WIDTH - half), y: named.y + seat.y };
  const hidden = (one: Place, i: number, curve: readonly Place[]): boolean => {
    const next = curve[i + 1] ?? one;
    const [low, high] = one.y < next.y ? [one.y, next.y] : [next.y, one.y];
    return (
      Math.max(one.x, next.x) > beside.x - half &&
      Math.min(one.x, next.x) < beside.x + half &&
      high > beside.y - HALF_LINE &&
      low < beside.y + HALF_LINE
    );
  };
  const others = drawn.filter((_curve, i) => i !== index);
  return others.some((curve) => curve.some(hidden))
    ? { x: BOX.right - half, y: BOX.top - 17 }
    : beside;
}

const ticks = ({ least, most }: ChartAxis, step: number): readonly number[] =>
  Array.from(
    { length: Math.floor((most - least) / step + 1e-9) + 1 },
    (_, i) => Math.round((least + i * step) * 1e6) / 1e6,
  );

/** The chart as a list of readings, to half a division, at each line across: what a reader would see. */
function words({ across, up, curves }: ChartPicture): string {
  const half = up.division / 2;
  const lists = curves.map(({ says, points }) => {
    const readings = ticks(across, across.division).flatMap((at) => {
      const reading = between(points, at);
      return reading === undefined
        ? []
        : [`${writeShortest(at)}: ${writeShortest(Math.round(reading / half) * half)}`];
    });
    return `${says}: at ${readings.join(', ')}.`;
  });
  return `Read to half a division, from the left: ${across.name} and then ${up.name}. ${lists.join(' ')}`;
}

function between(points: readonly (readonly [number, number])[], at: number): number | undefined {
  for (const [i, [x, y]] of points.entries()) {
    const next = points[i + 1];
    if (Math.abs(x - at) < 1e-9) return y;
    if (next && x < at && next[0] > at) return y + ((next[1] - y) * (at - x)) / (next[0] - x);
  }
  return undefined;
}
