import { describe, expect, test } from 'vitest';
import { degrees } from '#core/angle.ts';
import { adjusted, AS_IT_STANDS, type Setting } from '#scenes/setting.ts';
import { sheetReadings, type Readings } from '#scenes/sheet/readings.ts';
import { trainingCar } from '../../training-cars.ts';

/** Which way an angle has gone: up, down, or not at all. */
type Way = '+' | '−' | '·';

interface Row {
  readonly what: string;
  readonly set: Partial<Setting>;
  /** Camber, inclination, included angle. */
  readonly left: readonly [Way, Way, Way];
  readonly right: readonly [Way, Way, Way];
  readonly source: string;
}

const CHART =
  'diagnosis by camber, inclination and included angle as workshops teach it for struts (from memory)';

/** What has happened to a car on struts, and how its sheet tells. */
const ROWS: readonly Row[] = [
  {
    what: 'strut tower pushed inboard',
    set: { camberAtTop: -1.5 },
    left: ['−', '+', '·'],
    right: ['·', '·', '·'],
    source: CHART,
  },
  {
    what: 'strut tower pulled outboard, or lower arm shortened by a bend',
    set: { camberAtTop: 1.5 },
    left: ['+', '−', '·'],
    right: ['·', '·', '·'],
    source: CHART,
  },
  {
    what: 'carrier or strut bent, wheel top outboard',
    set: { camberAtCarrier: 1.5 },
    left: ['+', '·', '+'],
    right: ['·', '·', '·'],
    source: CHART,
  },
  {
    what: 'carrier or strut bent, wheel top inboard',
    set: { camberAtCarrier: -1.5 },
    left: ['−', '·', '−'],
    right: ['·', '·', '·'],
    source: CHART,
  },
  {
    what: 'subframe shifted to the left',
    set: { subframe: 12 },
    left: ['−', '+', '·'],
    right: ['+', '−', '·'],
    source: CHART,
  },
  {
    what: 'strut tower pushed inboard and the camber brought back at the carrier',
    set: { camberAtTop: -1.5, camberAtCarrier: 1.5 },
    left: ['·', '+', '+'],
    right: ['·', '·', '·'],
    source: CHART,
  },
];

/** Below this an angle counts as unchanged: toe lets a little of a lean out of the camber. */
const UNCHANGED_DEG = 0.01;

const car = trainingCar('linnet');
const before = sheetReadings(car, AS_IT_STANDS);

const ways = (now: Readings, was: Readings): readonly Way[] =>
  (['camber', 'inclination', 'includedAngle'] as const).map((id) => {
    const change = degrees(now[id] - was[id]);
    return Math.abs(change) < UNCHANGED_DEG ? '·' : change > 0 ? '+' : '−';
  });

describe.each(ROWS)('$what', ({ set, left, right }) => {
  const now = sheetReadings(car, adjusted(AS_IT_STANDS, set));

  test('shows on the sheet as the chart has it', () => {
    expect([ways(now.left, before.left), ways(now.right, before.right)]).toEqual([left, right]);
  });
});
