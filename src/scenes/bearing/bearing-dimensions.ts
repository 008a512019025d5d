import { quantity, type QuantityId } from '#core/quantities.ts';
import { valueText } from '#core/display.ts';
import type { Standing } from '../corner/standing.ts';
import { valueOf } from '../corner/standing.ts';
import type { Mark } from '../marks.ts';
import type { BearingLook } from './bearing-look.ts';
import type { BearingSizes, Placing } from './bearing-sizes.ts';

/** Heights of the dimension lines above the spin axis in the section, in millimetres. */
const LEVELS = { rowPitch: -66, pressureCentreSpread: 70, loadLineOffset: 81 } as const;

/** How far beside the tyre the loaded radius stands, in millimetres. */
const BESIDE = 122;

/** The dimensions that a step asks for. */
export function bearingDimensions(
  sizes: BearingSizes,
  now: Standing,
  { measures, view, units }: BearingLook,
  place: Placing,
): Mark[] {
  const text = (id: QuantityId): string =>
    `${NAMES[id] ?? quantity(id).name} ${valueText(valueOf(id, now), quantity(id).kind, units)}`;
  const between = (
    id: keyof typeof LEVELS,
    ends: readonly [number, number],
    from: number,
  ): Mark => ({
    kind: 'dimension',
    key: `measure-${id}`,
    role: 'guide',
    quantity: id,
    from: place(ends[0], from),
    to: place(ends[1], from),
    fromFoot: place(ends[0], LEVELS[id]),
    toFoot: place(ends[1], LEVELS[id]),
    text: text(id),
  });
  const { halfPitch, halfSpread, pitchRadius, loadLine, loadedRadius } = sizes;
  const marks: Mark[] = [];
  if (view === 'section') {
    if (measures.includes('rowPitch'))
      marks.push(between('rowPitch', [-halfPitch, halfPitch], -pitchRadius));
    if (measures.includes('pressureCentreSpread'))
      marks.push(between('pressureCentreSpread', [-halfSpread, halfSpread], 0));
    if (measures.includes('loadLineOffset'))
      marks.push(between('loadLineOffset', [0, loadLine], 0));
  } else if (measures.includes('loadedRadius')) {
    marks.push({
      kind: 'dimension',
      key: 'measure-loadedRadius',
      role: 'guide',
      quantity: 'loadedRadius',
      from: place(loadLine, 0),
      to: place(loadLine, -loadedRadius),
      fromFoot: place(loadLine + BESIDE, 0),
      toFoot: place(loadLine + BESIDE, -loadedRadius),
      text: text('loadedRadius'),
    });
  }
  return marks;
}

/** Short names for the drawing. */
const NAMES: Partial<Record<QuantityId, string>> = { pressureCentreSpread: 'spread' };
