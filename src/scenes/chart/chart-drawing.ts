import { extent } from 'd3';
import type { CornerModel } from '#core/car/car.ts';
import { numberText, spokenValue, unitText, type UnitSystem } from '#core/display.ts';
import { quantity, type QuantityId } from '#core/quantities.ts';
import { TYPICAL_RANGES } from '#core/typical-ranges.ts';
import { writeShortest } from '#core/write-number.ts';
import { standing, valueOf } from '../corner/standing.ts';
import { rounded } from '../paper/frame.ts';
import { circlePath, type Shape, type TextShape } from '../paper/shapes.ts';
import { parameterText } from '../parameter-text.ts';
import { PARAMETERS } from '../parameters.ts';
import type { Setting } from '../setting.ts';
import { axes, CHART_WIDTH as WIDTH, linePath, path, text } from './chart-ink.ts';
import { pointAt, shownQuantity, type Curve } from './curve.ts';
import { scale, type Scale } from './scale.ts';

/** A chart on paper. */
export interface ChartDrawing {
  readonly title: string;
  readonly description: string;
  readonly frame: { readonly width: number; readonly height: number };
  readonly shapes: readonly Shape[];
}

const HEIGHT = 220;
const MARGIN = { top: 26, right: 16, bottom: 42, left: 46 };
const BOX = {
  left: MARGIN.left,
  right: WIDTH - MARGIN.right,
  top: MARGIN.top,
  bottom: HEIGHT - MARGIN.bottom,
};

/** Draws a curve with its axes, its usual band, and the point where the corner stands. */
export function chartDrawing(curve: Curve, model: CornerModel, setting: Setting): ChartDrawing {
  const { of, over, units, points } = curve;
  const about = quantity(of);
  const now = valueOf(of, standing(model, setting));
  const here = pointAt(model, setting, of, over, units);
  const [low = 0, high = 1] = extent([...points.map(({ y }) => y), here.y]);
  const x = scale([points[0]?.x ?? 0, points.at(-1)?.x ?? 1], [MARGIN.left, WIDTH - MARGIN.right]);
  const y = scale(roomy(low, high), [HEIGHT - MARGIN.bottom, MARGIN.top]);
  const parameter = PARAMETERS[over];
  return {
    title: `${about.name} against ${parameter.name.toLowerCase()}`,
    description: describe(
      curve,
      spokenValue(now, about, units),
      parameterText(over, setting[over], units),
    ),
    frame: { width: WIDTH, height: HEIGHT },
    shapes: [
      ...band(of, units, y),
      ...axes(x, y, BOX),
      path('curve', 'wheel', 'outline', linePath(points, x, y)),
      path('guide', 'guide', 'hidden', crossHair(x(here.x), y(here.y))),
      {
        ...path('here', 'axis', 'none', circlePath({ x: x(here.x), y: y(here.y) }, 4.5)),
        filled: true,
      },
      text(
        'y-name',
        `${about.name}, ${unitText(about.kind, units).trim()}`,
        MARGIN.left + 92,
        12,
        false,
      ),
      text(
        'x-name',
        `${parameter.name.toLowerCase()}, ${unitText(parameter.kind, units).trim()}${parameter.least < 0 ? ` (+ is ${parameter.positive})` : ''}`,
        (WIDTH + MARGIN.left) / 2,
        HEIGHT - 8,
        false,
      ),
      valueLabel(numberText(now, about.kind, units), x(here.x), y(here.y)),
    ],
  };
}

/** A range with air above and below, and never so thin that rounding noise would look like a mountain. */
function roomy(low: number, high: number): [number, number] {
  const air = Math.max(0.08 * (high - low), 0.5);
  return [low - air, high + air];
}

/** What is usual, as a tinted band between its ends, as far as the chart reaches. */
function band(of: QuantityId, units: UnitSystem, y: Scale): Shape[] {
  const usual = TYPICAL_RANGES[of];
  if (!usual) return [];
  const [low, high] = y.domain;
  const least = Math.max(low, shownQuantity(of, usual.least, units));
  const most = Math.min(high, shownQuantity(of, usual.most, units));
  if (!(most > least)) return [];
  const d = `M${MARGIN.left} ${rounded(y(least))}H${WIDTH - MARGIN.right}V${rounded(y(most))}H${MARGIN.left}Z`;
  return [
    { ...path('band', 'lever', 'none', d), filled: true },
    text('band-name', 'usual', WIDTH - MARGIN.right - 20, y(most) + 10, false),
  ];
}

const crossHair = (x: number, y: number): string =>
  `M${rounded(x)} ${HEIGHT - MARGIN.bottom}V${rounded(y)}H${MARGIN.left}`;

/** The value beside the point, on the side where there is room. */
const valueLabel = (value: string, x: number, y: number): TextShape =>
  text(
    'here-value',
    value,
    x + (x > WIDTH - 70 ? -26 : 26),
    Math.max(MARGIN.top + 8, y - 12),
    true,
  );

function describe({ of, over, units, points }: Curve, now: string, at: string): string {
  const unit = unitText(quantity(of).kind, units);
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return '';
  const say = (value: number): string => writeShortest(Math.round(value * 10) / 10) + unit;
  const name = PARAMETERS[over].name.toLowerCase();
  const ends = `from ${say(first.y)} at ${writeShortest(first.x)} to ${say(last.y)} at ${writeShortest(last.x)}`;
  return `Over the range of ${name} it goes ${ends}. With ${name} ${at}: ${now}.`;
}
