import { cumsum } from 'd3';
import { DRIVING_KINDS, type DrivingKind } from '#core/bearing/driven-duty.ts';
import type { CornerModel } from '#core/car/car.ts';
import { valueText } from '#core/display.ts';
import { CHART_WIDTH, path, text } from '../chart/chart-ink.ts';
import { fatigueOf, rolling } from '../corner/rolling.ts';
import { rounded } from '../paper/frame.ts';
import { textWidth } from '../paper/label-placement.ts';
import type { PathShape, Shape } from '../paper/shapes.ts';
import type { Setting } from '../setting.ts';

/** Bars on paper: where the distance goes, and where the fatigue of each row comes from. */
export interface DutyDrawing {
  readonly title: string;
  readonly description: string;
  readonly frame: { readonly width: number; readonly height: number };
  readonly shapes: readonly Shape[];
}

interface Bar {
  readonly id: string;
  readonly name: string;
  /** In the order of the kinds of driving; they add up to 1. */
  readonly shares: readonly number[];
}

const LEFT = 8;
const RIGHT = CHART_WIDTH - 8;
const FIRST = 68;
const STEP = 62;
const THICK = 30;

/** How each kind of driving is filled: lighter the gentler it is. */
const FILLS: Readonly<Record<DrivingKind, Pick<PathShape, 'role' | 'line' | 'filled'>>> = {
  straight: { role: 'guide', line: 'thin', filled: false },
  rough: { role: 'guide', line: 'thin', filled: true },
  inner: { role: 'lever', line: 'none', filled: true },
  outer: { role: 'force', line: 'none', filled: true },
};

const NAMES: Readonly<Record<DrivingKind, string>> = {
  straight: 'straight',
  rough: 'rough',
  inner: 'wheel inside',
  outer: 'wheel outside',
};

/**
 * Draws the duty cycle of a bearing as bars.
 *
 * @param hidden without the rows' fatigue, while a prediction about it is still to be made
 */
export function dutyDrawing(model: CornerModel, setting: Setting, hidden: boolean): DutyDrawing {
  const now = rolling(model, setting);
  const way: Bar = {
    id: 'way',
    name: 'of the distance',
    shares: now.duty.map(({ share }) => share),
  };
  const fatigue: Bar[] = (['outboard', 'inboard'] as const).map((row) => ({
    id: row,
    name: `of the fatigue of the ${row} row`,
    shares: fatigueOf(now, row),
  }));
  const bars = hidden ? [way] : [way, ...fatigue];
  return {
    title: 'what the bearing is driven with',
    description: bars.map(describe).join(' '),
    frame: { width: CHART_WIDTH, height: FIRST + STEP * 3 - 14 },
    shapes: [
      ...heads(way),
      ...bars.slice(1).map((bar, i) => links(bars[i] ?? way, bar, i)),
      ...bars.flatMap(drawnBar),
    ],
  };
}

const top = (index: number): number => FIRST + STEP * index;
const across = (share: number): number => LEFT + (RIGHT - LEFT) * share;

/** Where each part of a bar ends, from 0 to 1. */
const ends = ({ shares }: Bar): readonly number[] => Array.from(cumsum(shares));

/** The names of the kinds of driving in a row of their own, each with a line down to its part of the distance. */
function heads(way: Bar): Shape[] {
  const stops = ends(way);
  return DRIVING_KINDS.flatMap((kind, i) => {
    const seat = HEADS[i] ?? 0;
    const share = way.shares[i] ?? 0;
    const middle = across((stops[i] ?? 0) - share / 2);
    return [
      text(`head-${kind}`, NAMES[kind], seat, 12, false),
      text(`head-${kind}-share`, percent(share), seat, 29, true),
      ...(share > 0
        ? [path(`lead-${kind}`, 'guide', 'thin', `M${seat} 39L${rounded(middle)} ${top(0) - 4}`)]
        : []),
    ];
  });
}

const HEADS: readonly number[] = [42, 128, 226, 344];

/** Faint lines from the ends of one bar's parts to the next one's: the eye sees them wander. */
function links(from: Bar, to: Bar, index: number): Shape {
  const [a, b] = [ends(from), ends(to)];
  const d = a
    .slice(0, -1)
    .map((end, i) => [across(end), across(b[i] ?? 0)] as const)
    // At the very ends of the bars there is nothing to wander.
    .filter(([start, stop]) => start < RIGHT - 0.5 || stop < RIGHT - 0.5)
    .map(
      ([start, stop]) =>
        `M${rounded(start)} ${top(index) + THICK}L${rounded(stop)} ${top(index + 1)}`,
    )
    .join('');
  return path(`links-${to.id}`, 'guide', 'hidden', d);
}

function drawnBar(bar: Bar, index: number): Shape[] {
  const stops = ends(bar);
  const parts = DRIVING_KINDS.flatMap((kind, i): Shape[] => {
    const share = bar.shares[i] ?? 0;
    const [from, to] = [across((stops[i] ?? 0) - share), across(stops[i] ?? 0)];
    const words = percent(share);
    return [
      {
        ...path(
          `${bar.id}-${kind}`,
          'guide',
          'none',
          `M${rounded(from)} ${top(index)}H${rounded(to)}v${THICK}H${rounded(from)}Z`,
        ),
        ...FILLS[kind],
      },
      ...(index > 0 && to - from > textWidth(words)
        ? [text(`${bar.id}-${kind}-share`, words, (from + to) / 2, top(index) + THICK / 2, true)]
        : []),
    ];
  });
  const frame = `M${LEFT} ${top(index)}H${RIGHT}v${THICK}H${LEFT}Z`;
  return [
    ...parts,
    path(`${bar.id}-frame`, 'guide', 'thin', frame),
    text(`${bar.id}-name`, bar.name, CHART_WIDTH / 2, top(index) + THICK + 11, false),
  ];
}

const percent = (share: number): string => valueText(share, 'share');

const describe = ({ name, shares }: Bar): string =>
  `${name.replace('of the', 'Of the')}: ${DRIVING_KINDS.map((kind, i) => `${NAMES[kind]} ${percent(shares[i] ?? 0)}`).join(', ')}.`;
