import { degrees } from '#core/angle.ts';
import type { CornerModel } from '#core/car/car.ts';
import { outboardSign, type Side } from '#core/corner.ts';
import { numberText, sizeText, valueText, type UnitSystem } from '#core/display.ts';
import { quantity, type Quantity } from '#core/quantities.ts';
import type { Swing } from '#core/swing.ts';
import { writeFixed } from '#core/write-number.ts';
import { standing } from '../corner/standing.ts';
import { bySwing, SWING_FACTOR, SWING_TURN, swingOf } from '../corner/swing-values.ts';
import { plainPath, plainText } from '../paper/plain-shapes.ts';
import { at, circlePath, headPath, type Shape } from '../paper/shapes.ts';
import type { Setting } from '../setting.ts';
import type { SwingGauge } from './swing-gauges.ts';

/** A swing on paper: three positions of one wheel, what the gauge shows in each, and what comes out. */
export interface SwingDrawing {
  readonly title: string;
  readonly description: string;
  readonly frame: { readonly width: number; readonly height: number };
  readonly shapes: readonly Shape[];
}

const WIDTH = 400;
const HEIGHT = 246;
const COLUMNS = { turnedIn: 70, ahead: 200, turnedOut: 330 } as const;
const PLATE = { y: 64, radius: 36 } as const;
const ROAD = 178;

/** Leans of a few degrees are drawn larger, or nobody would see them, and the drawing says so. */
const LARGER = 4;
const NOTE = 'leans drawn four times as large';

type Position = keyof typeof COLUMNS;

const POSITIONS = ['turnedIn', 'ahead', 'turnedOut'] as const satisfies readonly Position[];

/** What each gauge is about. A pitch is no quantity of the course: it is only read. */
const GAUGES = {
  camber: { read: quantity('camber'), found: 'casterBySwing', name: 'caster' },
  pitch: {
    read: {
      name: 'pitch',
      symbol: '\\varphi',
      kind: 'angle',
      positive: 'up',
      negative: 'down',
      subject: 'the front of the bar has gone',
    } satisfies Quantity,
    found: 'inclinationBySwing',
    name: 'inclination',
  },
} as const;

/** Draws the swing of a corner: from above on its plate, from the front or the side with its gauge. */
export function swingDrawing(
  model: CornerModel,
  setting: Setting,
  gauge: SwingGauge,
  units: UnitSystem = 'metric',
): SwingDrawing {
  const { ahead } = standing(model, setting);
  const { side } = model.corner;
  const swing = swingOf(ahead);
  const { read, found, name } = GAUGES[gauge];
  const value = bySwing(found, ahead);
  const reading = (position: Position): string => sizeText(swing[position][gauge], read, units);
  const number = (position: Position): string => {
    const written = `${numberText(swing[position][gauge], 'angle', units)}°`;
    return written.startsWith('−') ? `(${written})` : written;
  };
  const sum = `(${number('turnedOut')} − ${number('turnedIn')}) · ${writeFixed(SWING_FACTOR, 3)}`;
  return {
    title: `The swing of the ${side} front wheel, read for its ${read.name}`,
    description: describe(reading, sizeText(value, quantity(found), units), name),
    frame: { width: WIDTH, height: HEIGHT },
    shapes: [
      ...POSITIONS.flatMap((position) => [
        plainText(`${position}-name`, nameOf(position, units), COLUMNS[position], 14),
        ...plate(position, swing, side),
        ...(gauge === 'camber' ? upright : face)(position, swing, side),
        plainText(`${position}-reading`, reading(position), COLUMNS[position], ROAD + 18, true),
      ]),
      plainText('sum', `${name} ≈ ${sum} = ${valueText(value, 'angle', units)}`, 200, 220, true),
      ...fronts(gauge, side),
      plainText('note', NOTE, 200, 238),
    ],
  };
}

const nameOf = (position: Position, units: UnitSystem): string =>
  position === 'ahead'
    ? 'straight ahead'
    : `turned ${position === 'turnedIn' ? 'in' : 'out'} ${valueText(SWING_TURN, 'angle', units)}`;

/** The wheel on its plate, from above: forward is down, as in the figure beside. */
function plate(position: Position, swing: Swing<{ readonly turn: number }>, side: Side): Shape[] {
  const x = COLUMNS[position];
  const { y, radius } = PLATE;
  // Clockwise on paper is to the right; a wheel turned out has its front, which is below, going outboard.
  const angle = -outboardSign(side) * swing[position].turn;
  const tip = { x, y: y + radius + 7 };
  return [
    plainPath(`${position}-plate`, 'part', 'thin', circlePath({ x, y }, radius), true),
    plainPath(`${position}-wheel-above`, 'wheel', 'outline', box({ x, y }, 15, 46, angle), true),
    plainPath(`${position}-ahead`, 'guide', 'hidden', `M${x} ${y - radius - 5}V${y + radius}`),
    plainPath(`${position}-forward`, 'guide', 'none', headPath(tip, Math.PI / 2), true),
  ];
}

/** Which end of the wheel is its front: below from above, and seen from outside to the left on a left wheel. */
const fronts = (gauge: SwingGauge, side: Side): Shape[] => [
  plainText('front-above', 'front', COLUMNS.ahead + 28, PLATE.y + PLATE.radius + 5),
  ...(gauge === 'pitch'
    ? [plainText('front-beside', 'front', COLUMNS.ahead - 62 * outboardSign(side), ROAD - 30)]
    : []),
];

/** The wheel from the front beside an upright line: its camber. */
function upright(
  position: Position,
  swing: Swing<{ readonly camber: number }>,
  side: Side,
): Shape[] {
  const x = COLUMNS[position];
  const lean = LARGER * outboardSign(side) * swing[position].camber;
  const centre = { x: x + 28 * Math.sin(lean), y: ROAD - 28 * Math.cos(lean) };
  return [
    plainPath(`${position}-road`, 'ground', 'outline', `M${x - 38} ${ROAD}h76`),
    plainPath(`${position}-wheel`, 'wheel', 'outline', box(centre, 16, 56, lean), true),
    plainPath(`${position}-upright`, 'guide', 'hidden', `M${x} ${ROAD}V${ROAD - 62}`),
  ];
}

/** The wheel from outside with a bar across its face: how far it has turned with the carrier. */
function face(position: Position, swing: Swing<{ readonly pitch: number }>, side: Side): Shape[] {
  const x = COLUMNS[position];
  const y = ROAD - 30;
  // A left wheel rolls to the left of the paper: its front edge going up turns it clockwise.
  const angle = LARGER * outboardSign(side) * swing[position].pitch;
  return [
    plainPath(`${position}-road`, 'ground', 'outline', `M${x - 38} ${ROAD}h76`),
    plainPath(`${position}-wheel`, 'wheel', 'outline', circlePath({ x, y }, 30), true),
    plainPath(`${position}-level`, 'guide', 'hidden', `M${x - 44} ${y}h88`),
    plainPath(`${position}-bar`, 'axis', 'outline', box({ x, y }, 62, 6, angle), true),
  ];
}

/** A rectangle turned about its middle, clockwise on paper. */
function box(
  centre: { readonly x: number; readonly y: number },
  width: number,
  height: number,
  angle: number,
): string {
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  const corner = (across: number, down: number): string =>
    at({
      x: centre.x + across * cosine - down * sine,
      y: centre.y + across * sine + down * cosine,
    });
  const [w, h] = [width / 2, height / 2];
  return `M${corner(-w, -h)}L${corner(w, -h)}L${corner(w, h)}L${corner(-w, h)}Z`;
}

const describe = (reading: (position: Position) => string, found: string, name: string): string =>
  `Turned in by ${Math.round(degrees(SWING_TURN))}° the gauge shows ${reading('turnedIn')}, ` +
  `straight ahead ${reading('ahead')}, turned out as far ${reading('turnedOut')}. ` +
  `By the swing the ${name} is ${found}.`;
