import { faultLine } from '#core/fault.ts';
import { isQuantityId, type QuantityId } from '#core/quantities.ts';
import { BODIES_CASE_IDS, isBodiesCase, type BodiesCase } from '#scenes/bodies/cases.ts';
import {
  BEARING_DUTIES,
  type BearingDuty,
  type BearingView,
} from '#scenes/bearing/bearing-look.ts';
import { PART_NAMES, type PartName } from '#scenes/corner/corner-scene.ts';
import { TRACE_NAMES, type TraceName } from '#scenes/corner/trace-marks.ts';
import { CLOSENESS_NAMES, type Closeness } from '#scenes/corner/windows.ts';
import { isLifeOver, LIFE_OVER, type LifeOver } from '#scenes/life/life-over.ts';
import { isParameterId, type ParameterId } from '#scenes/parameters.ts';
import { VIEWS, type View } from '#scenes/plane.ts';
import { readSettingText } from '#scenes/setting-text.ts';
import type { Setting } from '#scenes/setting.ts';
import { SWING_GAUGES, type SwingGauge } from '#scenes/swing/swing-gauges.ts';

/** What the figure of a corner shows in a step: which views, how close, which measures and names, what can be moved. */
export interface Look {
  readonly views: readonly View[];
  readonly closeness: Closeness;
  readonly measures: readonly QuantityId[];
  readonly names: readonly PartName[];
  /** Points whose way from lock to lock is drawn. */
  readonly traces?: readonly TraceName[];
  readonly controls: readonly ParameterId[];
  /** A chart of a quantity over the range of a parameter. */
  readonly chart?: { readonly of: QuantityId; readonly over: ParameterId };
  /** Turn plates and gauges: which angle is read while the wheel is turned in and out. */
  readonly swing?: SwingGauge;
  /** What stands in the place of the corner's views or above them. */
  readonly figure?: FigureName;
  /** Wheel and carrier drawn apart: which case, and how they are shown at first. */
  readonly bodies?: BodiesStart;
  /** A wheel bearing: under which loads, and how it is shown at first. */
  readonly bearing?: BearingStart;
  /** What the rating life is charted over. */
  readonly over?: LifeOver;
  /** Where the figure begins, where that is not the car as it stands without a load. */
  readonly start?: Setting;
}

/** How wheel and carrier are shown at first: which case, and how far the reader has taken them. */
export interface BodiesStart {
  readonly which: BodiesCase;
  readonly as: 'together' | 'apart' | 'carried';
}

/** How a wheel bearing is shown at first: the bearing or the whole wheel, with a force to follow through it or not. */
export interface BearingStart {
  readonly duty: BearingDuty;
  readonly view: BearingView;
  readonly followed: boolean;
  readonly named: boolean;
}

/** Figures besides the corner’s own. */
export const FIGURES = [
  'sheet',
  'bodies',
  'bearing',
  'life',
  'duty',
  'axle',
  'parking',
  'thread',
  'measure',
] as const;

export type FigureName = (typeof FIGURES)[number];

/**
 * Reads the attributes of a `<Look />` tag: `views="front side" at="road" measures="scrubRadius"
 * names="ground contact" controls="spacer" chart="camber over steer" from="brake: 2500"`; or wheel and carrier
 * apart: `figure="bodies" case="brake" as="together" from="brake: 2500"`; or a wheel bearing:
 * `figure="bearing" case="straight" as="section" from="weight: 4000"`; or rating lives: `figure="life" over="load-line"`;
 * or both wheels from above: `figure="axle" measures="leftMoment rightMoment netRackForce" controls="leftBrake spacer"`.
 *
 * @throws Error that names the unknown word and what is allowed: a lesson with a slip of the pen must not build
 */
export function readLook(written: Readonly<Record<string, string>>): Look {
  for (const key of Object.keys(written)) {
    if (!KEYS.includes(key)) {
      throw new Error(`<Look ${key}=…>: allowed are ${KEYS.join(', ')}`);
    }
  }
  const words = (key: string): string[] => (written[key] ?? '').split(/[\s,]+/).filter(Boolean);
  const views = checked(words('views'), 'views', isView, VIEWS);
  const [closeness = 'whole'] = checked(
    words('at'),
    'at',
    isCloseness,
    Object.keys(CLOSENESS_NAMES),
  );
  return {
    // Turn plates, sheets, and wheel and carrier can stand alone.
    views: views.length > 0 || written['swing'] || written['figure'] ? views : ['front'],
    closeness,
    measures: checked(words('measures'), 'measures', isQuantityId, ['a quantity of the course']),
    names: checked(words('names'), 'names', isPartName, Object.keys(PART_NAMES)),
    controls: checked(words('controls'), 'controls', isParameterId, ['a parameter of the corner']),
    ...chartOf(written['chart']),
    ...tracesOf(words('traces')),
    ...swingOf(words('swing')),
    ...figureOf(words('figure')),
    ...bodiesOf(written),
    ...bearingOf(written),
    ...overOf(written),
    ...startOf(written['from']),
  };
}

const KEYS = [
  'views',
  'at',
  'measures',
  'names',
  'traces',
  'controls',
  'chart',
  'swing',
  'figure',
  'case',
  'as',
  'over',
  'from',
];

/** How wheel and carrier may be shown at first. */
const BODIES_AS = ['together', 'apart', 'carried'] as const;

/** How a wheel bearing may be shown at first. */
const BEARING_AS = ['section', 'named', 'wheel', 'followed'] as const;

function chartOf(written: string | undefined): Pick<Look, 'chart'> {
  if (written === undefined) return {};
  const [of = '', over = ''] = written.split(' over ').map((word) => word.trim());
  if (isQuantityId(of) && isParameterId(over)) return { chart: { of, over } };
  throw new Error(`<Look chart="${written}">: allowed is a quantity over a parameter`);
}

function tracesOf(written: readonly string[]): Pick<Look, 'traces'> {
  const traces = checked(written, 'traces', isTraceName, Object.keys(TRACE_NAMES));
  return traces.length > 0 ? { traces } : {};
}

function swingOf(written: readonly string[]): Pick<Look, 'swing'> {
  const [swing] = checked(written, 'swing', isSwingGauge, SWING_GAUGES);
  return swing ? { swing } : {};
}

function figureOf(written: readonly string[]): Pick<Look, 'figure'> {
  const [figure] = checked(written, 'figure', isFigure, FIGURES);
  return figure ? { figure } : {};
}

function bodiesOf(written: Readonly<Record<string, string>>): Pick<Look, 'bodies'> {
  const { figure, case: which = '', as } = written;
  if (figure !== 'bodies') {
    if (figure === 'bearing' || (which === '' && as === undefined)) return {};
    throw new Error('<Look case=… as=…>: only with figure="bodies" or figure="bearing"');
  }
  const [known] = checked([which], 'case', isBodiesCase, BODIES_CASE_IDS);
  const [start] = checked([as ?? 'apart'], 'as', isBodiesAs, BODIES_AS);
  return known && start ? { bodies: { which: known, as: start } } : {};
}

function bearingOf({
  figure,
  case: duty = 'straight',
  as = 'section',
}: Readonly<Record<string, string>>): Pick<Look, 'bearing'> {
  if (figure !== 'bearing') return {};
  const [known] = checked([duty], 'case', isBearingDuty, BEARING_DUTIES);
  const [shown] = checked([as], 'as', isBearingAs, BEARING_AS);
  if (!known || !shown) return {};
  const view = shown === 'wheel' ? 'wheel' : 'section';
  const followed = shown === 'followed';
  return { bearing: { duty: known, view, followed, named: shown === 'named' || followed } };
}

function overOf({ figure, over }: Readonly<Record<string, string>>): Pick<Look, 'over'> {
  if (over === undefined) return {};
  if (figure !== 'life') throw new Error('<Look over=…>: only with figure="life"');
  const [known] = checked([over], 'over', isLifeOver, Object.keys(LIFE_OVER));
  return known ? { over: known } : {};
}

function startOf(written: string | undefined): Pick<Look, 'start'> {
  if (written === undefined) return {};
  const read = readSettingText(written);
  if (read.ok) return { start: read.value };
  throw new Error(`<Look from="${written}">: ${read.faults.map(faultLine).join('; ')}`);
}

function checked<Word extends string>(
  words: readonly string[],
  key: string,
  known: (word: string) => word is Word,
  allowed: readonly string[],
): Word[] {
  return words.map((word) => {
    if (known(word)) return word;
    throw new Error(`<Look ${key}="${word}">: allowed are ${allowed.join(', ')}`);
  });
}

const isBodiesAs = (word: string): word is BodiesStart['as'] =>
  (BODIES_AS as readonly string[]).includes(word);
const isBearingDuty = (word: string): word is BearingDuty =>
  (BEARING_DUTIES as readonly string[]).includes(word);
const isBearingAs = (word: string): word is (typeof BEARING_AS)[number] =>
  (BEARING_AS as readonly string[]).includes(word);
const isView = (word: string): word is View => (VIEWS as readonly string[]).includes(word);
const isCloseness = (word: string): word is Closeness => Object.hasOwn(CLOSENESS_NAMES, word);
const isTraceName = (word: string): word is TraceName => Object.hasOwn(TRACE_NAMES, word);
const isSwingGauge = (word: string): word is SwingGauge =>
  (SWING_GAUGES as readonly string[]).includes(word);
const isFigure = (word: string): word is FigureName =>
  (FIGURES as readonly string[]).includes(word);
const isPartName = (word: string): word is PartName => Object.hasOwn(PART_NAMES, word);
