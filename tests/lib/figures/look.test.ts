import { describe, expect, test } from 'vitest';
import { readLook } from '../../../src/lib/figures/look.ts';

test('a look that says nothing is the whole corner from the front', () => {
  expect(readLook({})).toEqual({
    views: ['front'],
    closeness: 'whole',
    measures: [],
    names: [],
    controls: [],
  });
});

test('a look keeps its words in the order in which they are written', () => {
  expect(
    readLook({
      views: 'top front',
      at: 'road',
      measures: 'trail, scrubRadius',
      names: 'contact ground',
      controls: 'spacer  steer',
    }),
  ).toEqual({
    views: ['top', 'front'],
    closeness: 'road',
    measures: ['trail', 'scrubRadius'],
    names: ['contact', 'ground'],
    controls: ['spacer', 'steer'],
  });
});

test('a chart is a quantity over a parameter', () => {
  expect(readLook({ chart: 'camber over steer' }).chart).toEqual({ of: 'camber', over: 'steer' });
});

test('traces are points whose way is drawn', () => {
  expect(readLook({ traces: 'bar contact' }).traces).toEqual(['bar', 'contact']);
});

test('a swing has the gauge that is read, and can stand without a view of the corner', () => {
  expect(readLook({ swing: 'camber' })).toMatchObject({ swing: 'camber', views: [] });
  expect(readLook({ swing: 'pitch', views: 'side' }).views).toEqual(['side']);
});

test('a figure of its own stands above the views, or alone', () => {
  expect(readLook({ figure: 'sheet', views: 'front' })).toMatchObject({
    figure: 'sheet',
    views: ['front'],
  });
  expect(readLook({ figure: 'sheet' }).views).toEqual([]);
});

test('wheel and carrier are shown in a case, at first apart', () => {
  expect(readLook({ figure: 'bodies', case: 'brake' }).bodies).toEqual({
    which: 'brake',
    as: 'apart',
  });
  expect(readLook({ figure: 'bodies', case: 'edge', as: 'together' }).bodies?.as).toBe('together');
});

test('a wheel bearing is shown straight ahead and cut open, unless a step says otherwise', () => {
  expect(readLook({ figure: 'bearing' }).bearing).toEqual({
    duty: 'straight',
    view: 'section',
    followed: false,
    named: false,
  });
  expect(readLook({ figure: 'bearing', case: 'turn', as: 'wheel' }).bearing).toMatchObject({
    duty: 'turn',
    view: 'wheel',
  });
  expect(readLook({ figure: 'bearing', as: 'followed' }).bearing).toMatchObject({
    view: 'section',
    followed: true,
    named: true,
  });
});

test('both wheels of an axle can be shown, and stand alone', () => {
  const look = readLook({
    figure: 'axle',
    controls: 'leftBrake rightBrake',
    measures: 'yawMoment',
  });
  expect(look).toMatchObject({ figure: 'axle', views: [], controls: ['leftBrake', 'rightBrake'] });
});

test('a step may begin with a load or a change', () => {
  expect(readLook({ from: 'brake: 2500' }).start).toMatchObject({ brake: 2500, spacer: 0 });
});

describe('a slip of the pen does not build, and says what is allowed', () => {
  test.each([
    [{ view: 'front' }, '<Look view=…>: allowed are views, at, measures'],
    [{ views: 'back' }, '<Look views="back">: allowed are front, side, top'],
    [{ at: 'near' }, '<Look at="near">: allowed are whole, road, hub'],
    [{ measures: 'scrub' }, '<Look measures="scrub">: allowed are a quantity'],
    [{ names: 'kingpin' }, '<Look names="kingpin">: allowed are axis, upper, lower'],
    [{ controls: 'toString' }, '<Look controls="toString">: allowed are a parameter'],
    [{ chart: 'camber' }, '<Look chart="camber">: allowed is a quantity over a parameter'],
    [{ traces: 'valve' }, '<Look traces="valve">: allowed are bar, contact'],
    [{ figure: 'table' }, '<Look figure="table">: allowed are sheet'],
    [{ swing: 'caster' }, '<Look swing="caster">: allowed are camber, pitch'],
    [{ figure: 'body' }, '<Look figure="body">: allowed are sheet, bodies'],
    [{ case: 'brake' }, 'only with figure="bodies"'],
    [{ over: 'spacer' }, 'only with figure="life"'],
    [{ figure: 'life', over: 'steer' }, '<Look over="steer">: allowed are spacer, load-line'],
    [{ figure: 'bodies' }, 'allowed are brake, shaft, edge, rolling'],
    [{ figure: 'bodies', case: 'kerb' }, '<Look case="kerb">: allowed are brake, shaft'],
    [{ figure: 'bodies', case: 'edge', as: 'split' }, '<Look as="split">: allowed are together'],
    [{ figure: 'bearing', case: 'brake' }, '<Look case="brake">: allowed are straight, turn'],
    [{ figure: 'bearing', as: 'apart' }, '<Look as="apart">: allowed are section'],
    [{ from: 'brakes: 2500' }, '<Look from="brakes: 2500">: brakes'],
    [{ chart: 'camber over camber' }, 'allowed is a quantity over a parameter'],
  ])('%o', (written, message) => {
    expect(() => readLook(written)).toThrow(message);
  });
});
