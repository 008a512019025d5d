import { capital } from '#core/capital.ts';
import { sizeText } from '#core/display.ts';
import { quantity, type QuantityId } from '#core/quantities.ts';
import type { Standing } from '../corner/standing.ts';
import { rounded } from '../paper/frame.ts';
import { textWidth } from '../paper/label-placement.ts';
import type { Shape } from '../paper/shapes.ts';
import type { Setting } from '../setting.ts';
import type { ParkingLook } from './parking-look.ts';
import { ESTIMATE_IDS, parkingNumbers } from './parking-numbers.ts';

/** Bars on paper. */
export interface EstimatesDrawing {
  readonly title: string;
  readonly description: string;
  readonly frame: { readonly width: number; readonly height: number };
  readonly shapes: readonly Shape[];
}

const WIDTH = 400;
const LEFT = 12;
const ROW = 40;
const BAR = 12;

/** Where the bars may end, in N·m: the paper goes over to the longer scale when a bar needs it. */
const SCALES = [300, 600, 1200] as const;
const LONGEST = WIDTH - LEFT - 110;

const NAMES: Readonly<Record<(typeof ESTIMATE_IDS)[number], string>> = {
  parkingByGyration: 'by the disc’s radius of gyration',
  parkingByThirds: 'by thirds of the print',
  parkingByPressure: 'by load and pressure alone',
};

/** The three estimates as bars on one scale, each with its name and its value. */
export function estimatesDrawing(
  now: Standing,
  setting: Setting,
  look: ParkingLook,
): EstimatesDrawing {
  const numbers = parkingNumbers(now, setting, look);
  const most = Math.max(...ESTIMATE_IDS.map((id) => numbers[id]));
  const end = SCALES.find((scale) => most <= scale) ?? most;
  const said = ESTIMATE_IDS.map((id) => ({
    id,
    length: (LONGEST * numbers[id]) / end,
    text: sizeText(numbers[id], quantity(id), look.units),
  }));
  return {
    title: 'Three estimates of the moment that turns the standing wheel',
    description: `${said.map(({ id, text }) => `${capital(NAMES[id])}: ${text}`).join('. ')}. They differ, and none is exact.`,
    frame: { width: WIDTH, height: 3 * ROW + 10 },
    shapes: said.flatMap(({ id, length, text }, row) => bar(id, length, text, row)),
  };
}

function bar(
  id: (typeof ESTIMATE_IDS)[number],
  length: number,
  text: string,
  row: number,
): readonly Shape[] {
  const top = row * ROW + 26;
  const ink = { role: 'lever', quantity: id as QuantityId, before: false } as const;
  const name = NAMES[id];
  return [
    {
      ...ink,
      kind: 'path',
      key: `bar-${id}`,
      pair: undefined,
      line: 'outline',
      filled: true,
      d: `M${LEFT} ${top}h${rounded(Math.max(1, length))}v${BAR}h${rounded(-Math.max(1, length))}Z`,
    },
    {
      ...ink,
      kind: 'text',
      key: `name-${id}`,
      role: 'guide',
      pair: undefined,
      text: name,
      strong: false,
      x: rounded(LEFT + nameWidth(name) / 2),
      y: top - 10,
    },
    {
      ...ink,
      kind: 'text',
      key: `value-${id}`,
      role: 'guide',
      pair: undefined,
      text,
      strong: true,
      x: rounded(LEFT + length + 12 + textWidth(text) / 2),
      y: top + BAR / 2,
    },
  ];
}

/** Names stand in line with their bars, so it matters which letters they are made of. */
const nameWidth = (text: string): number =>
  Array.from(text).reduce((sum, letter) => sum + (/[ ’fijlrt]/.test(letter) ? 3.8 : 6.5), 0);
