import { greatest, max } from 'd3';
import type { CornerModel } from '#core/car/car.ts';
import { SHOWN, unitText, valueText, type UnitSystem } from '#core/display.ts';
import { fromSI } from '#core/units/convert.ts';
import { axes, CHART_WIDTH, linePath, path, text, type Box } from '../chart/chart-ink.ts';
import { scale, type Scale } from '../chart/scale.ts';
import type { Drawing } from '../paper/drawn.ts';
import { rounded } from '../paper/frame.ts';
import { circlePath, type Shape } from '../paper/shapes.ts';
import { point } from '../plane.ts';
import type { Setting } from '../setting.ts';
import { LIFE_OVER, type LifeOver } from './life-over.ts';
import { livesAt, livesOver, type Lives } from './lives.ts';

/** What is shown besides the corner as it is set. */
export interface LifeLook {
  readonly over: LifeOver;
  readonly units: UnitSystem;
  /** Without its curves, while a prediction about them is still to be made. */
  readonly hidden: boolean;
  /** The share of life that the reader has predicted. */
  readonly guess?: number | undefined;
}

const HEIGHT = 250;
const BOX: Box = { left: 46, right: CHART_WIDTH - 72, top: 26, bottom: HEIGHT - 42 };

/** From the axis to where the curves begin: the marker must not cover the numbers. */
const INSET = 26;

/** The three curves; what lasts as long as its weaker member is drawn heavy. */
const CURVES = [
  { id: 'outboard', name: 'outboard', line: 'outline' },
  { id: 'inboard', name: 'inboard', line: 'hidden' },
  { id: 'both', name: 'both rows', line: 'heavy' },
] as const;

/** Words on the paper need so much height each. */
const LINE_HEIGHT = 16;

/** Draws the rating life of each row and of both together, over spacer or load-line offset. */
export function lifeDrawing(model: CornerModel, setting: Setting, look: LifeLook): Drawing {
  const { over, units, hidden, guess } = look;
  const curve = livesOver(model, setting, over);
  const here = livesAt(model, setting, over);
  const shown = (at: number): number => fromSI(at, SHOWN[units].length.unit);
  const seen = hidden ? [here] : [...curve, here];
  const [first, last] = [curve[0]?.at ?? 0, curve.at(-1)?.at ?? 1];
  const x = scale([shown(first), shown(last)], [BOX.left + INSET, BOX.right]);
  const y = scale([0, ceiling(seen, guess)], [BOX.bottom, BOX.top]);
  const at = (lives: Lives, id: (typeof CURVES)[number]['id']) => ({
    x: shown(lives.at),
    y: 100 * lives[id],
  });
  const marker = { x: x(shown(here.at)), y: y(100 * here.both) };
  const name = over === 'spacer' ? 'spacer' : 'load-line offset';
  const outboard = over === 'spacer' ? '' : ' (+ is outboard)';
  return {
    title: `rating life against ${name}`,
    description: describe(curve, here, look),
    frame: {
      width: CHART_WIDTH,
      height: HEIGHT,
      scale: (BOX.right - BOX.left - INSET) / (1000 * (last - first)),
      centre: point(0, 0),
    },
    shapes: [
      ...axes(x, y, BOX),
      path('whole', 'guide', 'chain', `M${BOX.left} ${rounded(y(100))}H${BOX.right}`),
      ...(hidden
        ? []
        : CURVES.map(({ id, line }) =>
            path(
              `curve-${id}`,
              id === 'both' ? 'bearing' : 'wheel',
              line,
              linePath(
                curve.map((lives) => at(lives, id)),
                x,
                y,
              ),
            ),
          )),
      path('guide', 'guide', 'hidden', `M${rounded(marker.x)} ${BOX.bottom}V${BOX.top}`),
      ...CURVES.map(({ id }) => {
        const place = { x: marker.x, y: y(at(here, id).y) };
        const dot = path(`here-${id}`, 'axis', 'none', circlePath(place, id === 'both' ? 4.5 : 3));
        return { ...dot, filled: true };
      }),
      ...guessed(guess, marker.x, y),
      ...names(hidden ? here : (curve.at(-1) ?? here), y),
      text('y-name', 'rating life, % of both rows before the change', 150, 12, false),
      text(
        'x-name',
        `${name}, ${unitText('length', units).trim()}${outboard}`,
        (BOX.left + BOX.right) / 2,
        HEIGHT - 8,
        false,
      ),
    ],
    grips: [
      {
        key: `grip-${over}`,
        x: rounded(marker.x),
        y: rounded(marker.y),
        handle: {
          kind: 'handle',
          key: `handle-${over}`,
          role: 'guide',
          parameter: LIFE_OVER[over],
          at: point(0, 0),
          moves: 'across',
          // More inset takes the load line inboard, to the left.
          share: over === 'spacer' ? 1 : -1,
        },
      },
    ],
  };
}

/** The top of the chart, in per cent: above all that is drawn, with some air. */
const ceiling = (seen: readonly Lives[], guess = 0): number =>
  1.12 *
  100 *
  Math.max(1, guess, max(seen, (lives) => Math.max(lives.outboard, lives.inboard)) ?? 1);

/** What the reader thought it would be: a ring beside what it came to. */
function guessed(guess: number | undefined, x: number, y: Scale): Shape[] {
  if (guess === undefined || !(guess >= 0)) return [];
  const place = { x, y: y(100 * guess) };
  return [
    path('guess', 'guide', 'hidden', circlePath(place, 7)),
    text('guess-name', 'your guess', x + (x > 200 ? -66 : 66), place.y, false),
  ];
}

/** The curves' names at their right ends, moved apart where they would lie on each other. */
function names(end: Lives, y: Scale): Shape[] {
  const wanted = CURVES.map(({ id, name }) => ({ id, name, y: y(100 * end[id]) })).sort(
    (a, b) => a.y - b.y,
  );
  let free = BOX.top - 6;
  const placed = wanted.map((one) => {
    const seat = Math.max(one.y, free);
    free = seat + LINE_HEIGHT;
    return { ...one, y: seat };
  });
  const over = Math.max(0, free - LINE_HEIGHT - (BOX.bottom - 4));
  return placed.map(({ id, name, y: seat }) =>
    text(`name-${id}`, name, BOX.right + 38, seat - over, id === 'both'),
  );
}

function describe(curve: readonly Lives[], here: Lives, { over, units, hidden }: LifeLook): string {
  const percent = (share: number): string => valueText(share, 'share', units);
  const length = (at: number): string => valueText(at, 'length', units);
  const name = over === 'spacer' ? 'a spacer' : 'a load-line offset';
  const now =
    `With ${name} of ${length(here.at)} the outboard row has ${percent(here.outboard)}, the inboard row ` +
    `${percent(here.inboard)} and both together ${percent(here.both)} of the rating life that both rows have before the change.`;
  const best = greatest(curve, (lives) => lives.both);
  const [first, last] = [curve[0], curve.at(-1)];
  if (hidden || !best || !first || !last) return now;
  return `${now} Both together go from ${percent(first.both)} at ${length(first.at)} to ${percent(last.both)} at ${length(last.at)}, with the most, ${percent(best.both)}, at ${length(best.at)}.`;
}
