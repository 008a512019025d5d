import { describe, expect, test } from 'vitest';
import { readCornerDocument } from '#core/document/read-corner-document.ts';
import { faultLine, faultsOf, type Fault } from '#core/fault.ts';
import { edited } from './edit.ts';
import { BARE_DOCUMENT, GOOD_DOCUMENT } from './good-document.ts';
import { valueOf } from '../example-corner.ts';

/** The faults of the good document with some values replaced, each named by its path. */
const faultsWith = (edits: Readonly<Record<string, unknown>>): readonly Fault[] =>
  faultsOf(readCornerDocument(edited(GOOD_DOCUMENT, edits)));

const lines = (faults: readonly Fault[]): string => faults.map(faultLine).join('\n');

describe('a good document', () => {
  test('is read as it is', () => {
    expect(valueOf(readCornerDocument(GOOD_DOCUMENT))).toEqual(GOOD_DOCUMENT);
    expect(valueOf(readCornerDocument(BARE_DOCUMENT))).toEqual(BARE_DOCUMENT);
  });

  test('keeps absent what is absent', () => {
    expect(Object.keys(valueOf(readCornerDocument(BARE_DOCUMENT)))).toEqual([
      'side',
      'axis',
      'wheel',
    ]);
  });

  test('may call a tapered row tapered', () => {
    const tapered = edited(GOOD_DOCUMENT, {
      'hub.outboard.kind': 'tapered',
      'hub.inboard.kind': 'roller',
    });
    const { hub } = valueOf(readCornerDocument(tapered));
    expect(hub?.outboard.kind).toBe('roller');
    expect(hub?.inboard.kind).toBe('roller');
  });

  test('may have any origin, so a left wheel may lie to the right of it', () => {
    const shifted = {
      side: 'left',
      axis: { lower_mm: [0, -80, -110], upper_mm: [-30, -145, 260] },
      wheel: { centre_mm: [0, 0, 0], loadedRadius_mm: 300 },
    };
    expect(readCornerDocument(shifted).ok).toBe(true);
  });

  test('may leave out any part of a change', () => {
    expect(faultsWith({ change: { spacer_mm: 15 } })).toEqual([]);
    expect(faultsWith({ change: {} })).toEqual([]);
  });

  test('may have no forces in its list', () => {
    expect(faultsWith({ forces: [] })).toEqual([]);
  });
});

describe('what is no document', () => {
  test.each([[null], ['left'], [3], [[]], [undefined]])(
    '%j is one fault about the whole',
    (value) => {
      const faults = faultsOf(readCornerDocument(value));
      expect(faults.map(({ path }) => path)).toEqual(['']);
      expect(lines(faults)).toMatch(
        /^the whole document: is .*; allowed: an object with the keys side/,
      );
    },
  );

  test('is an empty object: everything that must be there is missing', () => {
    expect(lines(faultsOf(readCornerDocument({})))).toMatch(
      /^side: is missing; .*\naxis: is missing; .*\nwheel: is missing; [^\n]*$/,
    );
  });
});

describe('a fault in a document says', () => {
  test('where it is, what is wrong and what is allowed', () => {
    expect(lines(faultsWith({ 'wheel.loadedRadius_mm': 0 }))).toBe(
      'wheel.loadedRadius_mm: is 0; allowed: a number from 50 to 2000 mm',
    );
  });

  test('that metres were given for millimetres', () => {
    expect(lines(faultsWith({ 'wheel.loadedRadius_mm': 0.3 }))).toBe(
      'wheel.loadedRadius_mm: is 0.3, which looks like metres; allowed: a number from 50 to 2000 mm',
    );
    const metres = { lower_mm: [0.008, 0.64, 0.19], upper_mm: [-0.022, 0.575, 0.56] };
    expect(lines(faultsWith({ axis: metres }))).toMatch(
      /^axis\.upper_mm: is 0\.37\S* mm from lower_mm, which looks like metres; /,
    );
    expect(lines(faultsWith({ 'wheel.centre_mm': [0, 0.72, 0.3] }))).toMatch(
      /^wheel\.centre_mm: lies \d+ mm from the steering axis; allowed: .* in millimetres/,
    );
    const rod = { ...GOOD_DOCUMENT.steering, outer_mm: [-0.12, 0.61, 0.215] };
    const shortRod = { ...rod, inner_mm: [-0.105, 0.33, 0.235] };
    expect(lines(faultsWith({ steering: shortRod }))).toMatch(/^steering\.inner_mm: .* metres/);
    expect(lines(faultsWith({ steering: rod }))).toMatch(/^steering\.outer_mm: /);
    expect(lines(faultsWith({ 'steering.travelPerTurn_mm': 0.048 }))).toMatch(/looks like metres/);
    expect(lines(faultsWith({ 'hub.spread_mm': 0.062 }))).toMatch(/looks like metres/);
  });

  test('that kilonewtons were given for newtons', () => {
    expect(lines(faultsWith({ 'hub.inboard.C_N': 27 }))).toMatch(
      /^hub\.inboard\.C_N: is 27, which looks like kilonewtons; /,
    );
  });

  test('which key a mistyped one was meant for', () => {
    const wheel = { ...GOOD_DOCUMENT.wheel, chamber_deg: 1 };
    expect(lines(faultsWith({ wheel }))).toMatch(
      /^wheel\.chamber_deg: is not known here; did you mean camber_deg\?; allowed: centre_mm, /,
    );
  });

  test('which keys there are where nothing is near', () => {
    const document = { ...GOOD_DOCUMENT, colour: 'red' };
    expect(lines(faultsOf(readCornerDocument(document)))).toMatch(
      /^colour: is not known here; allowed: side, axis, wheel, /,
    );
  });

  test('odd keys and texts on one line', () => {
    const document = { ...GOOD_DOCUMENT, 'two\nlines': 1, side: 'left\nor right' };
    expect(lines(faultsOf(readCornerDocument(document))).split('\n')).toEqual([
      expect.stringMatching(/^\["two\\nlines"\]: is not known here; /),
      'side: is the text "left\\nor right"; allowed: "left", "right"',
    ]);
  });

  test('nothing about the members of what is no object', () => {
    expect(lines(faultsWith({ wheel: 300 }))).toMatch(/^wheel: is 300; [^\n]*$/);
  });

  test('everything at once', () => {
    const faults = faultsWith({
      side: 'middle',
      'wheel.toe_deg': 'in',
      'forces[3].vector_N[1]': null,
      'hub.duty[0].share': 1.5,
    });
    expect(faults.map(({ path }) => path)).toEqual([
      'side',
      'wheel.toe_deg',
      'forces[3].vector_N[1]',
      'hub.duty[0].share',
    ]);
  });
});

describe('keys that JSON.parse makes members of and JavaScript does not', () => {
  test('are unknown like any other', () => {
    const text = JSON.stringify(GOOD_DOCUMENT).replace('{', '{"__proto__": {"side": "right"}, ');
    expect(lines(faultsOf(readCornerDocument(JSON.parse(text))))).toMatch(
      /^__proto__: is not known/,
    );
  });

  test('do not stand in for missing ones', () => {
    const { side: _side, ...rest } = GOOD_DOCUMENT;
    const heir: unknown = Object.assign(Object.create({ side: 'left' }) as object, rest);
    expect(lines(faultsOf(readCornerDocument(heir)))).toMatch(/^side: is missing/);
  });
});

describe('what does not fit together', () => {
  const rows = [
    { what: 'pivots that coincide', edits: { 'axis.upper_mm': [8, 640, 190] } },
    { what: 'pivots that are level', edits: { 'axis.upper_mm': [8, 500, 190] } },
    { what: 'pivots upside down', edits: { 'axis.upper_mm': [8, 640, -190] } },
    { what: 'an axis that lies', edits: { 'axis.upper_mm': [8, 300, 200] } },
    { what: 'a wheel far from its axis', edits: { 'wheel.centre_mm': [0, 1720, 300] } },
    {
      what: 'a tie rod through the axis',
      edits: { 'steering.outer_mm': [8, 640, 190], 'steering.inner_mm': [0, 330, 200] },
    },
    { what: 'a tie rod that points outboard', edits: { 'steering.inner_mm': [-105, 890, 235] } },
    { what: 'a tie rod of no length', edits: { 'steering.inner_mm': [-120, 610, 215] } },
    { what: 'a shaft that points inboard', edits: { 'forces[2].shaftDirection': [0, -1, 0] } },
    { what: 'a shaft of no direction', edits: { 'forces[2].shaftDirection': [0, 0, 0] } },
    { what: 'a ball row too steep', edits: { 'hub.outboard.contactAngle_deg': 46 } },
    { what: 'a ball row too flat', edits: { 'hub.inboard.contactAngle_deg': 19.9 } },
    { what: 'no duty at all', edits: { 'hub.duty': [] } },
    {
      what: 'a duty without any load',
      edits: { 'hub.duty': [{ share: 1, vertical_N: 0, inward_N: 0 }] },
    },
    {
      what: 'a load in no share of the duty',
      edits: {
        'hub.duty': [
          { share: 1, vertical_N: 0, inward_N: 0 },
          { share: 0, vertical_N: 4000, inward_N: 0 },
        ],
      },
    },
    {
      what: 'a change that takes the whole loaded radius',
      edits: { 'change.loadedRadius_mm': -300 },
    },
    {
      what: 'a change that takes the whole rolling radius',
      edits: { 'change.loadedRadius_mm': -250, 'wheel.rollingRadius_mm': 250 },
    },
  ];

  test.each(rows)('$what: a fault at the first of its values', ({ edits }) => {
    const faults = faultsWith(edits);
    expect(faults.length).toBeGreaterThan(0);
    const [path] = Object.keys(edits);
    expect(new Set(faults.map((fault) => fault.path))).toEqual(new Set([path]));
  });

  test.each([0.89, 0.900001])('shares that add up to 0.1 + %d: a fault of the duty', (share) => {
    const faults = faultsWith({ 'hub.duty[0].share': share });
    expect(faults.map(({ path }) => path)).toEqual(['hub.duty']);
  });

  test('shares may miss 1 by what binary numbers lose', () => {
    const third = { share: 1 / 3, vertical_N: 4000, inward_N: 0 };
    expect(faultsWith({ 'hub.duty': [third, third, third] })).toEqual([]);
    const tenth = { ...third, share: 0.1 };
    expect(faultsWith({ 'hub.duty': Array.from({ length: 10 }, () => tenth) })).toEqual([]);
  });

  test('a camber change of an axis by angles: one fault for each of the two', () => {
    const axis = BARE_DOCUMENT.axis;
    const faults = faultsWith({ axis });
    expect(faults.map(({ path }) => path)).toEqual([
      'change.camberAtUpperPivot_deg',
      'change.camberAtCarrier_deg',
    ]);
    expect(
      faultsWith({ axis, 'change.camberAtUpperPivot_deg': 0, 'change.camberAtCarrier_deg': 0 }),
    ).toEqual([]);
  });

  test('an axis by pivots and by angles at once: the angles are unknown', () => {
    const axis = { ...GOOD_DOCUMENT.axis, caster_deg: 4 };
    expect(lines(faultsWith({ axis }))).toMatch(/^axis\.caster_deg: is not known here/);
  });

  test('an axis with half of its angles: the rest is missing', () => {
    const faults = faultsWith({ axis: { inclination_deg: 12, caster_deg: 4 } });
    expect(lines(faults)).toMatch(
      /^axis\.scrubRadius_mm: is missing.*\naxis\.trail_mm: is missing/,
    );
  });

  test('a key of another case: unknown there', () => {
    const force = { case: 'vertical', force_N: 3900, pneumaticTrail_mm: 25 };
    expect(lines(faultsWith({ 'forces[5]': force }))).toMatch(
      /^forces\[5\]\.pneumaticTrail_mm: is not known here; allowed: case, force_N$/,
    );
  });
});
