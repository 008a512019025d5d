import fc from 'fast-check';
import { radians } from '#core/angle.ts';
import type { RowKind } from '#core/bearing/factors.ts';
import type { DutyPhase, WheelRadii } from '#core/bearing/hub-rating.ts';
import type { Hub } from '#core/bearing/hub.ts';
import { bearingRow, type Row } from '#core/bearing/row.ts';
import type { RowSpacing, WheelLoad } from '#core/bearing/rows.ts';

/** Any number between two bounds. */
export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true });

export const anyKind: fc.Arbitrary<RowKind> = fc.constantFrom('ball', 'roller');

/** A row that is known to be possible; throws where a test asks for an impossible one. */
export function rowOf(kind: RowKind, dynamicRating: number, contactAngle_deg: number): Row {
  const row = bearingRow(kind, dynamicRating, radians(contactAngle_deg));
  if (!row.ok) throw new Error(row.faults.map(({ wrong }) => wrong).join());
  return row.value;
}

export const anyRow: fc.Arbitrary<Row> = anyKind.chain((kind) =>
  fc
    .tuple(between(5e3, 90e3), kind === 'ball' ? between(20, 45) : between(8, 30))
    .map(([rating, angle]) => rowOf(kind, rating, angle)),
);

export const anySpacing: fc.Arbitrary<RowSpacing> = fc.record({
  loadLineOffset: between(-0.03, 0.05),
  spread: between(0.03, 0.15),
});

export const anyHub: fc.Arbitrary<Hub> = fc
  .tuple(anySpacing, anyRow, anyRow)
  .map(([spacing, outboard, inboard]) => ({ ...spacing, outboard, inboard }));

export const anyLoad: fc.Arbitrary<WheelLoad> = fc.record({
  vertical: between(500, 12e3),
  inward: between(-6e3, 9e3),
});

export const anyRadius = between(0.2, 0.45);

export const anyRadii: fc.Arbitrary<WheelRadii> = fc.record({
  loadedRadius: anyRadius,
  rollingRadius: anyRadius,
});

/** One to five shares that add up to 1. */
export const anyShares: fc.Arbitrary<readonly number[]> = fc
  .array(between(0.01, 1), { minLength: 1, maxLength: 5 })
  .map((weights) => {
    const sum = weights.reduce((total, weight) => total + weight, 0);
    return weights.map((weight) => weight / sum);
  });

export const anyDuty: fc.Arbitrary<readonly DutyPhase[]> = anyShares.chain((shares) =>
  fc
    .array(anyLoad, { minLength: shares.length, maxLength: shares.length })
    .map((loads) => loads.map((load, i) => ({ ...load, share: shares[i] ?? 0 }))),
);
