import type { HubLoads } from '#core/bearing/hub.ts';
import type { WheelLoad } from '#core/bearing/rows.ts';
import { valueText } from '#core/display.ts';
import type { QuantityId } from '#core/quantities.ts';
import { bar, between, path } from '../corner/sketch.ts';
import { GUESS } from '../corner/measure-place.ts';
import type { Mark } from '../marks.ts';
import { textWidth } from '../paper/label-placement.ts';
import type { Point } from '../plane.ts';
import type { BearingLook } from './bearing-look.ts';
import { ROW_SIGNS, type BearingSizes, type Placing } from './bearing-sizes.ts';
import { UNLOADED } from './contact-lines.ts';

/** Units of paper for a newton. */
const SCALE = { straight: 0.0155, turn: 0.0055 } as const;

/** How far below the spin axis the wheel load begins where the road is off the paper, in millimetres. */
export const BELOW = 89;

const ROW_NAMES = { outboard: 'outboard row', inboard: 'inboard row' } as const;
const RADIAL = { outboard: 'outboardRadial', inboard: 'inboardRadial' } as const;
const THRUST = { outboard: 'outboardThrust', inboard: 'inboardThrust' } as const;

/** What it takes to draw the forces on hub and wheel. */
export interface Loaded {
  readonly sizes: BearingSizes;
  readonly load: WheelLoad;
  readonly loads: HubLoads;
  /** The rows' loads before the change, where there is one. */
  readonly before: HubLoads | undefined;
  readonly look: BearingLook;
  /** One unit of paper in millimetres. */
  readonly unit: number;
  readonly place: Placing;
}

/** The forces on what turns: the road's on the tyre, and what each row gives back to the hub at its pressure centre. */
export const loadArrows = (loaded: Loaded): Mark[] => [
  ...roadArrows(loaded),
  ...rowArrows(loaded),
  ...thrustArrows(loaded),
];

function roadArrows({ sizes, load, look, unit, place }: Loaded): Mark[] {
  const { loadLine, loadedRadius } = sizes;
  const scale = SCALE[look.duty] * unit;
  const up = look.view === 'wheel' ? -loadedRadius : -BELOW;
  const foot = place(loadLine, up);
  const marks: Mark[] = [];
  if (Math.abs(load.inward) > UNLOADED && look.view === 'wheel') {
    marks.push({
      ...bar(place(loadLine, 0), foot, 4 * unit, {
        key: 'side-lever',
        role: 'lever',
        line: 'none',
        filled: true,
      }),
      quantity: 'sideTilt',
    });
  }
  if (load.vertical > UNLOADED) {
    const head = place(loadLine, up + scale * load.vertical);
    const text = `wheel load ${force(load.vertical, look)}`;
    // Its head may meet a row's.
    const at = look.view === 'wheel' ? head : between(foot, head, 0.5);
    marks.push(...arrow('weight', foot, head, text, 'loadTilt', at));
  }
  if (Math.abs(load.inward) > UNLOADED) {
    const head = place(loadLine - scale * load.inward, up);
    const text = `side force ${force(Math.abs(load.inward), look)}`;
    const arrows = arrow('side', foot, head, text, 'sideTilt');
    // Below the road, on the side that it points to, words cover nothing.
    const beside = Math.sign(load.inward) * (textWidth(text) / 2 + 12) * unit;
    const at = place(loadLine - beside, up - 14 * unit);
    marks.push(...(look.view === 'wheel' ? arrows.map((mark) => seatedAt(mark, at)) : arrows));
  }
  return marks;
}

/** A row that is loaded at the top holds the hub down there; one that is loaded at the bottom holds it up. */
function rowArrows({ sizes, loads, before, look, unit, place }: Loaded): Mark[] {
  const scale = SCALE[look.duty] * unit;
  return (['outboard', 'inboard'] as const).flatMap((row): Mark[] => {
    const out = ROW_SIGNS[row] * sizes.halfSpread;
    const end = (radial: number): Point => place(out, -scale * radial);
    const id = RADIAL[row];
    const marks: Mark[] = [];
    const was = before?.radial[row] ?? 0;
    if (Math.abs(was) > UNLOADED) {
      marks.push({
        ...arrowMark(`row-${row}-before`, place(out, 0), end(was), id),
        before: true,
      });
    }
    const guess = look.guesses[id];
    if (guess !== undefined) marks.push(...guessed(row, place, out, -scale * guess, unit));
    const radial = loads.radial[row];
    if (Math.abs(radial) <= UNLOADED) return marks;
    const text = `${ROW_NAMES[row]} ${force(Math.abs(radial), look)}`;
    const [root, head] = [place(out, 0), end(radial)];
    const named = arrow(`row-${row}`, root, head, text, id, between(root, head, 0.5));
    if (row === 'outboard') return [...marks, ...named];
    // Inboard of it there is nothing that words could cover.
    const at = place(out - (textWidth(text) / 2 + 10) * unit, -scale * radial);
    return [...marks, ...named.map((mark) => seatedAt(mark, at))];
  });
}

/** Along the spin axis the outboard row holds a hub that is pushed inboard, the inboard row one that is pulled outboard. */
function thrustArrows({ sizes, loads, look, unit, place }: Loaded): Mark[] {
  if (look.measures.every((id) => id !== 'outboardThrust' && id !== 'inboardThrust')) return [];
  const scale = SCALE[look.duty] * unit;
  return (['outboard', 'inboard'] as const).flatMap((row): Mark[] => {
    const thrust = loads.thrust[row];
    if (thrust <= UNLOADED) return [];
    const sign = ROW_SIGNS[row];
    const from = sign * sizes.halfSpread;
    const text = `thrust ${force(thrust, look)}`;
    const head = place(from + sign * scale * thrust, 0);
    return arrow(`thrust-${row}`, place(from, 0), head, text, THRUST[row]);
  });
}

/** The guess stays beside the arrow, dashed. */
function guessed(row: string, place: Placing, out: number, up: number, unit: number): Mark[] {
  const aside = out + Math.sign(out) * 7 * unit;
  return [
    path([place(aside, 0), place(aside, up)], {
      key: `row-${row}-guess`,
      role: 'guide',
      line: 'hidden',
      closed: false,
    }),
    {
      kind: 'label',
      key: `row-${row}-guess-name`,
      role: 'guide',
      at: place(aside, up),
      text: GUESS,
    },
  ];
}

/** A label at the very place; other marks stay. */
const seatedAt = (mark: Mark, at: Point): Mark =>
  mark.kind === 'label' ? { ...mark, at, here: true } : mark;

const force = (newtons: number, { units }: BearingLook): string =>
  valueText(newtons, 'force', units);

const arrowMark = (key: string, from: Point, to: Point, quantity: QuantityId): Mark => ({
  kind: 'arrow',
  key,
  role: 'force',
  quantity,
  from,
  to,
});

const arrow = (
  key: string,
  from: Point,
  to: Point,
  text: string,
  quantity: QuantityId,
  at = to,
): Mark[] => [
  arrowMark(key, from, to, quantity),
  { kind: 'label', key: `${key}-name`, role: 'force', quantity, at, text },
];
