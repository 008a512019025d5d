import { spokenValue, valueText, type UnitSystem } from '#core/display.ts';
import { clampRange } from '#core/fastening/clamp-load.ts';
import { USUAL } from '#core/fastening/usual.ts';
import { quantity } from '#core/quantities.ts';
import { fasteningValue } from '../corner/fastening-values.ts';
import type { Standing } from '../corner/standing.ts';
import { scale } from '../chart/scale.ts';
import { rounded } from '../paper/frame.ts';
import { plainPath, plainText } from '../paper/plain-shapes.ts';
import { textWidth } from '../paper/label-placement.ts';
import type { Shape } from '../paper/shapes.ts';

/** Clamp loads drawn on one scale: what tightening leaves behind, and what the faces need. */
export interface ClampDrawing {
  readonly title: string;
  readonly description: string;
  readonly frame: { readonly width: number; readonly height: number };
  readonly shapes: readonly Shape[];
}

const FRAME = { width: 400, height: 186 } as const;
const LEFT = 12;
const RIGHT = FRAME.width - 34;

/** The end of the scale in newtons: past what any of the training cars’ fasteners is tightened to. */
const MOST = 100_000;

const BASE = 140;
const TICKS = [0, 25_000, 50_000, 75_000, MOST] as const;

const across = scale([0, MOST], [LEFT, RIGHT]);

const BARS = [
  { key: 'wrench', name: 'torque wrench', factor: USUAL.tighteningByWrench.value, y: 40 },
  { key: 'impact', name: 'impact wrench', factor: USUAL.tighteningByImpact.value, y: 84 },
] as const;

/** For every fastener: from the least to the most clamp load that a torque leaves, beside what is needed. */
export function clampDrawing(now: Standing, units: UnitSystem): ClampDrawing {
  const middle = fasteningValue('clampLoad', now);
  const needed = fasteningValue('clampNeeded', now);
  const soiled = fasteningValue('clampNeededSoiled', now);
  return {
    title: 'Clamp load of each fastener: what it has, and what it needs',
    description: describe(now, units),
    frame: FRAME,
    shapes: [
      plainPath('base', 'guide', 'thin', `M${LEFT} ${BASE}H${RIGHT}`),
      ...TICKS.flatMap((tick) => tickShapes(tick, units)),
      ...BARS.flatMap((bar) => barShapes(bar, middle, needed, units)),
      ...(needed > 0
        ? [
            ...limitShapes('needed', 'needed, clean', needed, 'heavy', 13, units),
            ...limitShapes('soiled', 'soiled', soiled, 'hidden', 174, units),
          ]
        : []),
    ],
  };
}

function tickShapes(tick: number, units: UnitSystem): Shape[] {
  const x = rounded(across(tick));
  const words = valueText(tick, 'force', units);
  const half = textWidth(words) / 2;
  return [
    plainPath(`tick-${tick}`, 'guide', 'thin', `M${x} ${BASE}v5`),
    plainText(
      `tick-${tick}-text`,
      words,
      Math.min(FRAME.width - half, Math.max(half, across(tick))),
      BASE + 13,
    ),
  ];
}

function barShapes(
  { key, name, factor, y }: (typeof BARS)[number],
  middle: number,
  needed: number,
  units: UnitSystem,
): Shape[] {
  const { least, most } = clampRange(middle, factor);
  const [from, to] = [across(least), Math.min(RIGHT, across(most))].map(rounded) as [
    number,
    number,
  ];
  const short = needed > 0 && least < needed;
  const range = `${name}: ${valueText(least, 'force', units)} to ${valueText(most, 'force', units)}`;
  const words = short ? `${range}, the weakest is short` : range;
  const half = textWidth(words) / 2;
  return [
    plainPath(key, 'lever', 'outline', `M${from} ${y}H${to}v14H${from}Z`, true),
    plainPath(`${key}-middle`, 'lever', 'thin', `M${rounded(across(middle))} ${y}v14`),
    ...(short
      ? [
          plainPath(
            `${key}-short`,
            'force',
            'hidden',
            `M${from} ${y - 1}H${rounded(Math.min(to, across(needed)))}v16H${from}Z`,
          ),
        ]
      : []),
    plainText(
      `${key}-text`,
      words,
      Math.min(FRAME.width - half - 2, Math.max(half + 2, (from + to) / 2)),
      y + 25,
      true,
    ),
  ];
}

function limitShapes(
  key: string,
  name: string,
  value: number,
  line: 'heavy' | 'hidden',
  at: number,
  units: UnitSystem,
): Shape[] {
  const beyond = value > MOST;
  // With gaps where the bars’ words stand.
  const x = rounded(Math.min(RIGHT, across(value)));
  const words = `${name} ${valueText(value, 'force', units)}${beyond ? ', off the scale' : ''}`;
  const half = textWidth(words) / 2;
  return [
    ...(beyond ? [] : [plainPath(key, 'force', line, `M${x} 22V56M${x} 76V100M${x} 120V${BASE}`)]),
    plainText(
      `${key}-text`,
      words,
      Math.min(FRAME.width - half - 2, Math.max(half + 2, x)),
      at,
      true,
    ),
  ];
}

function describe(now: Standing, units: UnitSystem): string {
  const said = (id: Parameters<typeof fasteningValue>[0]): string =>
    spokenValue(fasteningValue(id, now), quantity(id), units);
  const has = [said('clampLoad'), said('clampLeast'), said('clampLeastByImpact')].join(', ');
  const needed = fasteningValue('clampNeeded', now);
  if (needed === 0) return `Of each fastener: ${has}. No load on the wheel.`;
  const short = fasteningValue('clampLeast', now) < needed;
  const needs = [said('clampNeeded'), said('clampNeededSoiled')].join(', ');
  return `Of each fastener: ${has}. ${needs}. ${short ? 'The weakest fastener is short of what is needed.' : 'The weakest fastener has more than clean faces need.'}`;
}
