import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changed, NO_CHANGE } from '#core/change.ts';
import { measure } from '#core/geometry.ts';
import { insetAnswers, lengthForScrub, radiusForOldScrub } from '#core/judgement/bench-answers.ts';
import { insetLikeOld, lengthsForScrub } from '#core/judgement/find-backwards.ts';
import { judge } from '#core/judgement/judge.ts';
import { rimEdges } from '#core/rim-edges.ts';
import { TRAINING_CARS } from '../../training-cars.ts';
import { garageSetup } from '../../garage-benches.ts';
import { expectClose } from '../near.ts';

const corners = fc
  .constantFrom(...TRAINING_CARS.flatMap(({ left, right }) => [left, right]))
  .map(({ corner }) => corner);
const mm = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((x) => x / 1000);

describe('looked for backwards', () => {
  test.each(['spacer', 'inset', 'loadedRadius'] as const)(
    'a %s takes the scrub radius to both ends of the band',
    (key) => {
      fc.assert(
        fc.property(corners, mm(-60, 60), mm(0, 40), mm(-15, 15), (corner, least, width, inset) => {
          const other = { ...NO_CHANGE, ...(key === 'inset' ? { spacer: inset } : { inset }) };
          const most = least + width;
          const found = lengthsForScrub(corner, key, { least, most }, other);
          if (found === undefined) throw new RangeError('nothing found');
          // A wheel smaller than nothing cannot be tried.
          fc.pre(key !== 'loadedRadius' || found.least > -corner.loadedRadius);
          const ends = [found.least, found.most]
            .map((length) => measure(changed(corner, { ...other, [key]: length })).scrubRadius)
            .sort((a, b) => a - b);
          expectClose(ends[0] ?? NaN, least, 1e-9);
          expectClose(ends[1] ?? NaN, most, 1e-9);
        }),
      );
    },
  );

  test('an inset keeps the centre, the outer edge or the inner edge of the old wheel', () => {
    fc.assert(
      fc.property(
        corners,
        mm(20, 60),
        mm(120, 250),
        mm(120, 280),
        mm(0, 20),
        (corner, inset, rimWidth, newWidth, spacer) => {
          const like = insetLikeOld({ inset, rimWidth }, newWidth, spacer);
          const old = rimEdges(corner, rimWidth);
          const withInset = (of: number) =>
            changed(corner, { ...NO_CHANGE, spacer, inset: of - inset });
          expectClose(rimEdges(withInset(like.sameOuter), newWidth).outer, old.outer, 1e-9);
          expectClose(rimEdges(withInset(like.sameInner), newWidth).inner, old.inner, 1e-9);
          expectClose(
            measure(withInset(like.sameCentre)).scrubRadius,
            measure(corner).scrubRadius,
            1e-9,
          );
        },
      ),
    );
  });
});

describe('on the bench', () => {
  const setup = garageSetup('taller-tyres');
  const [taller] = setup.variants;
  if (taller === undefined) throw new RangeError('a variant');
  const scrubAfter = (change: object): number => {
    const both = { ...taller.left, ...change };
    const [finding] = judge(setup, { left: both, right: both }).findings;
    return finding?.id === 'scrubRadius' ? finding.after.value : NaN;
  };

  test('a spacer keeps the scrub radius in the band, surely where the band has room for the doubt', () => {
    const band = { least: -0.014, most: 0 };
    const answer = lengthForScrub(setup, taller, 'left', 'spacer', band);
    if (answer?.sure === undefined) throw new RangeError('no sure answer');
    expectClose(scrubAfter({ spacer: answer.best.least }), band.least, 1e-9);
    expectClose(scrubAfter({ spacer: answer.best.most }), band.most, 1e-9);
    expect(answer.sure.least).toBeGreaterThan(answer.best.least);
    expect(answer.sure.most).toBeLessThan(answer.best.most);
    const both = { ...taller.left, spacer: answer.sure.most };
    const [finding] = judge(setup, { left: both, right: both }).findings;
    expectClose(finding?.after.most ?? NaN, band.most, 1e-6);
  });

  test('an inset is the wheel’s own, not a difference', () => {
    const band = { least: -0.005, most: 0.005 };
    const answer = lengthForScrub(setup, taller, 'left', 'inset', band);
    expectClose(scrubAfter({ inset: answer?.best.least }), band.most, 1e-9);
  });

  test('a narrow band has no sure answer, and no spacer is thinner than nothing', () => {
    expect(
      lengthForScrub(setup, taller, 'left', 'spacer', { least: -0.001, most: 0.001 })?.sure,
    ).toBeUndefined();
    expect(
      lengthForScrub(setup, taller, 'left', 'spacer', { least: -0.05, most: -0.03 }),
    ).toBeUndefined();
  });

  test('the old radius brings the old scrub radius back where only the tyre has changed', () => {
    const radius = radiusForOldScrub(setup, taller, 'left');
    expectClose(radius ?? NaN, setup.known.hubUp_mm.value / Math.cos(setup.known.camber_deg.value));
  });

  test('a wider wheel sits like the old one with the insets that follow', () => {
    const { sameCentre, sameOuter, sameInner } = insetAnswers(setup, 0.0254 * 8);
    expectClose(sameCentre, 0.045, 1e-9);
    expectClose(sameOuter, 0.045 + 0.0127, 1e-9);
    expectClose(sameInner, 0.045 - 0.0127, 1e-9);
  });
});
