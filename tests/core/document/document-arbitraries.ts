import fc from 'fast-check';
import type {
  AnglesDocument,
  ChangeDocument,
  CornerDocument,
  DutyDocument,
  ForceDocument,
  HubDocument,
  PivotsDocument,
  RowDocument,
  SteeringDocument,
  Triple,
  WheelDocument,
} from '#core/document/corner-document.ts';
import { anyShares, between } from '../bearing/arbitraries.ts';

/** A document without negative zeros, which JSON does not have. */
const number = (least: number, most: number): fc.Arbitrary<number> =>
  between(least, most).map((x) => x + 0);

type Point = readonly [number, number, number];

const triple = ([x, y, z]: Point, spread: number): fc.Arbitrary<Triple> =>
  fc.tuple(
    number(x - spread, x + spread),
    number(y - spread, y + spread),
    number(z - spread, z + spread),
  );

const pivots: fc.Arbitrary<PivotsDocument> = fc.record({
  lower_mm: triple([0, 650, 190], 50),
  upper_mm: triple([-20, 600, 580], 90),
});

const angles: fc.Arbitrary<AnglesDocument> = fc.record({
  inclination_deg: number(0, 20),
  caster_deg: number(-3, 12),
  scrubRadius_mm: number(-40, 90),
  trail_mm: number(-10, 50),
});

const wheel: fc.Arbitrary<WheelDocument> = fc.record(
  {
    centre_mm: triple([0, 750, 300], 30),
    camber_deg: number(-5, 5),
    toe_deg: number(-2, 2),
    loadedRadius_mm: number(220, 400),
    rollingRadius_mm: number(220, 400),
  },
  { requiredKeys: ['centre_mm', 'loadedRadius_mm'] },
);

const newtons = number(-6000, 6000);

const force: fc.Arbitrary<ForceDocument> = fc.oneof(
  fc.record({ case: fc.constant('brake-on-carrier' as const), force_N: newtons }),
  fc.record(
    {
      case: fc.constant('shaft' as const),
      force_N: newtons,
      shaftDirection: fc.tuple(number(-0.3, 0.3), number(0.5, 1.5), number(-0.3, 0.3)),
    },
    { requiredKeys: ['case', 'force_N'] },
  ),
  fc.record({ case: fc.constant('impact' as const), vector_N: triple([0, 0, 0], 6000) }),
  fc.record({
    case: fc.constant('lateral' as const),
    force_N: newtons,
    pneumaticTrail_mm: number(-20, 60),
  }),
  fc.record({ case: fc.constant('vertical' as const), force_N: number(0, 9000) }),
);

const steering: fc.Arbitrary<SteeringDocument> = fc.record(
  {
    outer_mm: triple([-120, 650, 210], 20),
    inner_mm: triple([-110, 330, 230], 20),
    travelPerTurn_mm: number(30, 80),
    rimDiameter_mm: number(300, 450),
    assist: number(1, 8),
  },
  { requiredKeys: ['outer_mm', 'inner_mm', 'travelPerTurn_mm', 'rimDiameter_mm'] },
);

const row: fc.Arbitrary<RowDocument> = fc.record({
  kind: fc.constantFrom('ball', 'roller'),
  C_N: number(5000, 90_000),
  contactAngle_deg: number(20, 45),
});

const duty: fc.Arbitrary<readonly DutyDocument[]> = anyShares.chain((shares) =>
  fc
    .array(fc.record({ vertical_N: number(500, 9000), inward_N: number(-3000, 5000) }), {
      minLength: shares.length,
      maxLength: shares.length,
    })
    .map((loads) => loads.map((load, index) => ({ share: shares[index] ?? 0, ...load }))),
);

const hub: fc.Arbitrary<HubDocument> = fc.record({
  loadLineOffset_mm: number(-30, 40),
  spread_mm: number(40, 150),
  outboard: row,
  inboard: row,
  duty,
});

const camberChange = number(-4, 4);

const change = (withCamber: boolean): fc.Arbitrary<ChangeDocument> =>
  fc.record(
    {
      spacer_mm: number(0, 50),
      inset_mm: number(-40, 40),
      loadedRadius_mm: number(-40, 60),
      ...(withCamber && {
        camberAtUpperPivot_deg: camberChange,
        camberAtCarrier_deg: camberChange,
      }),
    },
    { requiredKeys: [] },
  );

const rest = (withCamber: boolean) => ({
  wheel,
  rotation_deg: number(-35, 35),
  forces: fc.array(force, { maxLength: 4 }),
  steering,
  hub,
  change: change(withCamber),
});

/** Any left corner of a car-like size, with any of what may be left out left out. */
export const anyDocument: fc.Arbitrary<CornerDocument> = fc.oneof(
  fc.record(
    { side: fc.constant('left' as const), axis: pivots, ...rest(true) },
    { requiredKeys: ['side', 'axis', 'wheel'] },
  ),
  fc.record(
    { side: fc.constant('left' as const), axis: angles, ...rest(false) },
    { requiredKeys: ['side', 'axis', 'wheel'] },
  ),
);
