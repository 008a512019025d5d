import { expect, test } from 'vitest';
import { parameterSI, parameterText, storedFromSI, storedSI } from '#scenes/parameter-text.ts';
import { PARAMETER_IDS, PARAMETERS, type ParameterId } from '#scenes/parameters.ts';

/** Before a unit stands a narrow space that does not break. */
const plain = (text: string): string => text.replace('\u202f', ' ');

test.each<[ParameterId, number, string, string]>([
  ['upperInboard', 20, '20.0 mm inboard', '0.79 in inboard'],
  ['upperInboard', -20, '20.0 mm outboard', '0.79 in outboard'],
  ['upperRearward', 5.5, '5.5 mm rearward', '0.22 in rearward'],
  ['spacer', 20, '20.0 mm thick', '0.79 in thick'],
  ['spacer', 0, 'no spacer', 'no spacer'],
  ['spacer', 0.01, 'no spacer', 'no spacer'],
  ['steer', -30, '30.0° to the right', '30.0° to the right'],
  ['camberAtTop', 0, 'the same camber', 'the same camber'],
])('%s of %d is said as “%s”, or “%s”', (id, value, metric, us) => {
  expect(plain(parameterText(id, value))).toBe(metric);
  expect(plain(parameterText(id, value, 'us'))).toBe(us);
});

test('every parameter is stored in the unit that people type, and is SI inside', () => {
  expect(parameterSI('spacer', 20)).toBeCloseTo(0.02, 15);
  expect(parameterSI('steer', 180)).toBeCloseTo(Math.PI, 12);
  expect(parameterSI('brake', 2500)).toBe(2500);
  for (const id of PARAMETER_IDS) {
    const { kind } = PARAMETERS[id];
    expect(storedSI(kind, 7)).toBe(parameterSI(id, 7));
    expect(storedFromSI(kind, storedSI(kind, 7))).toBeCloseTo(7, 9);
  }
});
