import { describe, expect, test } from 'vitest';
import { BURDENS } from '#core/judgement/burdens.ts';
import { leftOut, notJudged, toHaveChecked } from '#core/judgement/cautions.ts';
import { judge } from '#core/judgement/judge.ts';
import { judgedQuantity } from '#core/judgement/judged-quantities.ts';
import { besideUsual, tellingOf, type Telling } from '#core/judgement/telling.ts';
import { GARAGE_FILES, garageSetup } from '../../garage-benches.ts';

const told = (id: string, variant = 0): Telling => {
  const setup = garageSetup(id);
  const changes = setup.variants[variant];
  if (changes === undefined) throw new RangeError('no variant');
  return tellingOf(judge(setup, changes));
};

const texts = (points: Telling[keyof Telling]): string => points.map(({ text }) => text).join(' ');

describe('a summary', () => {
  test('of thick spacers says that the scrub radius turns round, that threads are short, that the arch is nearer', () => {
    const { worse, better } = told('hatchback-spacers');
    expect(texts(worse)).toContain('turns from negative to positive');
    expect(texts(worse)).toContain('less than one diameter');
    expect(texts(worse)).toContain('less room to the arch');
    expect(texts(better)).toContain('more room to strut');
  });

  test('of a car of which nothing is measured says that the sign is not known', () => {
    expect(texts(told('nothing-measured').unknown)).toContain('scrub radius');
  });

  test('of taller tyres says that the car is faster than its speedometer shows', () => {
    expect(texts(told('taller-tyres').worse)).toContain('faster than its speedometer');
  });

  test('of a spacer on one side says that braking pulls', () => {
    expect(texts(told('one-spacer').worse)).toContain('Braking alike on both sides pulls');
  });

  test('of nothing done has nothing to say but what was not known before', () => {
    const setup = garageSetup('pickup-wide-wheels');
    const [{ left } = { left: undefined }] = setup.variants;
    if (left === undefined) throw new RangeError('no variant');
    const nothing = { spacer: 0, camberAtUpperPivot: 0, camberAtCarrier: 0 };
    const { better, worse } = tellingOf(judge(setup, { left: nothing, right: nothing }));
    expect([better, worse]).toEqual([[], []]);
  });

  test('never says that a change is safe, allowed or harmless', () => {
    const burdens = Object.values(BURDENS).flatMap(({ onWorse, onBetter, onUnknown }) => [
      onWorse,
      onBetter,
      onUnknown,
    ]);
    const all = Array.from(GARAGE_FILES.keys()).flatMap((id) => {
      const setup = garageSetup(id);
      return setup.variants.flatMap((changes, i) => [
        ...[told(id, i)].flatMap(({ better, worse, unknown }) =>
          [better, worse, unknown].map(texts),
        ),
        ...leftOut(setup.car, changes),
        ...toHaveChecked(setup.car, changes),
        ...notJudged(setup.car, changes),
      ]);
    });
    expect(all.length).toBeGreaterThan(100);
    for (const text of [...burdens, ...all])
      expect(text).not.toMatch(/\b(safe|safely|harmless|fine|no problem|ok(ay)?)\b/i);
  });
});

describe('every burden', () => {
  test.each(Object.entries(BURDENS))(
    '%s has whole sentences and a way to get worse',
    (id, burden) => {
      for (const text of [burden.onBetter, burden.onWorse, burden.onUnknown])
        expect(text).toMatch(/^[A-Z].*\.$/);
      // What has no sign cannot grow in size other than by going up.
      if (judgedQuantity(id as keyof typeof BURDENS).positive === undefined)
        expect(['up', 'down', 'more']).toContain(burden.worse);
    },
  );
});

describe('beside what is usual', () => {
  const after = (least: number, most: number) =>
    besideUsual({ id: 'scrubRadius', after: { value: 0, standard: 0, least, most } })?.lies;

  test('a result lies inside, outside, or nobody knows', () => {
    expect(after(-0.005, 0.005)).toBe('inside');
    expect(after(0.02, 0.03)).toBe('outside');
    expect(after(0.01, 0.03)).toBe('unknown');
  });

  test('what has no usual range has no place beside it', () => {
    expect(
      besideUsual({ id: 'hubLife', after: { value: 0, standard: 0, least: 0, most: 0 } }),
    ).toBeUndefined();
  });
});

describe('what is left out and what to have checked', () => {
  const setup = garageSetup('all-at-once');
  const [all, , camber, apart] = setup.variants;
  if (!all || !camber || !apart) throw new RangeError('variants');

  test('follow from the work', () => {
    expect(toHaveChecked(setup.car, camber).join(' ')).toContain('Alignment');
    expect(toHaveChecked(setup.car, camber).join(' ')).not.toContain('fasteners');
    expect(toHaveChecked(setup.car, all).join(' ')).toContain('fasteners');
    expect(toHaveChecked(setup.car, apart).join(' ')).toContain('left and right');
    expect(leftOut(setup.car, camber).length).toBeLessThan(leftOut(setup.car, all).length);
  });

  test('always begin with the law and the shop', () => {
    for (const changes of [all, camber, apart]) {
      expect(toHaveChecked(setup.car, changes)[0]).toContain('Local codes come first');
      expect(toHaveChecked(setup.car, changes)[1]).toContain('licensed shop');
    }
  });
});
