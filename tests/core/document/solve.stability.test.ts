import { expect, test } from 'vitest';
import { solve } from '#core/document/solve.ts';
import { valueOf } from '../example-corner.ts';
import { GOOD_DOCUMENT } from './good-document.ts';

test('the result of the full document is what it was (no proof that it is right)', () => {
  expect(rounded(valueOf(solve(GOOD_DOCUMENT)))).toMatchInlineSnapshot(`
    {
      "geometry": {
        "axisDistance_mm": 113.024493,
        "casterOffsetAtCentre_mm": -0.802730911,
        "caster_deg": 4.64272588,
        "contactCentre_mm": [
          0.033124331,
          738.497195,
          -3.42959415,
        ],
        "groundPoint_mm": [
          23.70816,
          675.723677,
          -3.42959415,
        ],
        "inclination_deg": 10.4638042,
        "includedAngle_deg": 9.71380457,
        "scrubRadius_mm": 62.7321001,
        "spindleOffset_mm": 114.935504,
        "trail_mm": 23.7845652,
      },
      "hub": {
        "L10_Mrev": 95.1435513,
        "L10_km": 185319.415,
        "duty": [
          {
            "inboardEquivalent_N": 1851.87097,
            "inboardRadial_N": 754.83871,
            "inboardThrust_N": 2382.69795,
            "outboardEquivalent_N": 3145.16129,
            "outboardRadial_N": 3145.16129,
            "outboardThrust_N": 2382.69795,
          },
          {
            "inboardEquivalent_N": 12774.1935,
            "inboardRadial_N": 12774.1935,
            "inboardThrust_N": 9677.41935,
            "outboardEquivalent_N": 10773.5484,
            "outboardRadial_N": -7574.19355,
            "outboardThrust_N": 12077.4194,
          },
          {
            "inboardEquivalent_N": 5295.41935,
            "inboardRadial_N": -3909.67742,
            "inboardThrust_N": 5831.5738,
            "outboardEquivalent_N": 6509.67742,
            "outboardRadial_N": 6509.67742,
            "outboardThrust_N": 4931.5738,
          },
        ],
        "inboardL10_Mrev": 167.707588,
        "outboardL10_Mrev": 188.683657,
        "withinScope": true,
      },
      "moments": [
        {
          "case": "brake-on-carrier",
          "handwheel_Nm": -5.03749051,
          "moment_Nm": 152.743128,
          "rack_N": -1318.81193,
          "rod_N": -1324.12626,
          "sense": "toe-out",
        },
        {
          "case": "shaft",
          "handwheel_Nm": 6.66480135,
          "moment_Nm": -202.085265,
          "rack_N": 1744.84091,
          "rod_N": 1751.87198,
          "sense": "toe-in",
        },
        {
          "case": "shaft",
          "handwheel_Nm": 5.93188302,
          "moment_Nm": -179.862248,
          "rack_N": 1552.96334,
          "rod_N": 1559.22122,
          "sense": "toe-in",
        },
        {
          "case": "impact",
          "handwheel_Nm": -13.8752854,
          "moment_Nm": 420.716324,
          "rack_N": -3632.54121,
          "rod_N": -3647.17903,
          "sense": "toe-out",
        },
        {
          "case": "lateral",
          "handwheel_Nm": 4.26364352,
          "moment_Nm": -129.279102,
          "rack_N": 1116.21926,
          "rod_N": 1120.71722,
          "sense": "toe-in",
        },
        {
          "case": "vertical",
          "handwheel_Nm": 1.64313144,
          "moment_Nm": -49.8218378,
          "rack_N": 430.170804,
          "rod_N": 431.904235,
          "sense": "toe-in",
        },
      ],
      "steered": {
        "camber_deg": 0.417451149,
        "contactCentre_mm": [
          -22.935509,
          730.124399,
          -5.75946932,
        ],
        "lift_mm": 2.32987516,
        "rackTravel_mm": -25.1716484,
        "scrubRadius_mm": 62.3282899,
        "spindleOffset_mm": 114.531694,
        "steer_deg": 11.7706513,
        "trail_mm": 34.9472388,
      },
    }
  `);
});

/** Nine digits: engines may differ in the last digit of a sine. */
const rounded = (value: unknown): unknown =>
  JSON.parse(
    JSON.stringify(value, (_, member: unknown) =>
      typeof member === 'number' ? Number(member.toPrecision(9)) : member,
    ),
  );
