import { describe, expect, test } from 'vitest';
import { degrees } from '#core/angle.ts';
import { cornerModels, USUAL_FIXING } from '#core/judgement/corner-model.ts';
import { INPUT_IDS, inputAbout, type InputId } from '#core/judgement/inputs.ts';
import { FROM_WHERE, type PicturedInput } from '#scenes/bench/from-where.ts';
import { inputScene } from '#scenes/bench/input-scene.ts';
import type { Angle, Dimension, Scene } from '#scenes/marks.ts';
import { drawn } from '#scenes/paper/drawn.ts';
import { GARAGE_FILES, garageBench, garageSetup } from '../../garage-benches.ts';

const PICTURED = Object.keys(FROM_WHERE) as readonly PicturedInput[];

/** Stands for the value as it is written: what is looked for on the paper. */
const TEXT = 'so much';

function sceneOf(bench: string, id: PicturedInput): { scene: Scene; value: number } {
  const setup = garageSetup(bench);
  const { car } = garageBench(bench);
  const { left: model, right: other } = cornerModels(setup, car);
  const value = isInputId(id) ? setup.known[id].value : (car.fixing ?? USUAL_FIXING)[id] / 1000;
  return { scene: inputScene(id, { model, other, value, text: TEXT, units: 'metric' }), value };
}

const isInputId = (id: PicturedInput): id is InputId => INPUT_IDS.some((one) => one === id);

const found = <Kind extends 'dimension' | 'angle'>(scene: Scene, kind: Kind, key = 'input') => {
  const mark = scene.marks.find((one) => one.kind === kind && one.key === key);
  if (!mark) throw new Error(`no ${kind} ${key} in “${scene.title}”`);
  return mark as Extract<Scene['marks'][number], { kind: Kind }>;
};

/** Between the places that a dimension is taken at, along its line: metres. */
const length = ({ fromFoot, toFoot }: Dimension): number =>
  Math.hypot(toFoot.across - fromFoot.across, toFoot.up - fromFoot.up) / 1000;

/** From upright to where an angle’s ray points: degrees, never negative. */
const opening = ({ vertex, towards }: Angle): number =>
  Math.abs(degrees(Math.atan2(towards.across - vertex.across, Math.abs(towards.up - vertex.up))));

test('everything that the bench asks about the car has a picture that says from where to where', () => {
  expect(PICTURED).toEqual(expect.arrayContaining([...INPUT_IDS]));
});

describe.each([...GARAGE_FILES.keys()])('on the car of %s', (bench) => {
  test.each(PICTURED)(
    'the picture of %s shows the value, and says in words what it shows',
    (id) => {
      const { scene } = sceneOf(bench, id);
      expect(scene.description).toContain(FROM_WHERE[id]);
      expect(scene.description).toContain(TEXT);
      const keys = scene.marks.map(({ key }) => key);
      expect(new Set(keys).size, keys.filter((key, i) => keys.indexOf(key) !== i).join()).toBe(
        keys.length,
      );
      const { shapes, frame } = drawn(scene);
      const texts = shapes.flatMap((shape) => (shape.kind === 'text' ? [shape] : []));
      // Lengths and angles that a figure of the course dimensions are written by it, to its own decimals.
      expect(texts.some(({ text, strong }) => strong || text.includes(TEXT))).toBe(true);
      for (const { x, y, text } of texts) {
        expect(x, text).toBeGreaterThan(0);
        expect(x, text).toBeLessThan(frame.width);
        expect(y, text).toBeGreaterThan(0);
        expect(y, text).toBeLessThan(frame.height);
      }
    },
  );

  test.each([
    'track_mm',
    'hubUp_mm',
    'inset_mm',
    'rimWidth_in',
    'lowerIn_mm',
    'lowerUp_mm',
    'lowerAhead_mm',
    'rodAhead_mm',
    'travelPerTurn_mm',
    'rimDiameter_mm',
    'thread_mm',
    'depth_mm',
    'wheelThickness_mm',
  ] as const)('%s is drawn as long as it is entered', (id) => {
    const { scene, value } = sceneOf(bench, id);
    expect(length(found(scene, 'dimension'))).toBeCloseTo(Math.abs(value), 9);
  });

  test('ten turns of a thread are ten pitches long', () => {
    const { scene, value } = sceneOf(bench, 'pitch_mm');
    expect(length(found(scene, 'dimension'))).toBeCloseTo(10 * value, 9);
  });

  test('one turn of a tyre is as long as its diameter times the ratio that is entered', () => {
    const { scene, value } = sceneOf(bench, 'rollingRatio');
    // Worked by hand: section width times aspect, twice, and the rim’s diameter at 25.4 mm an inch.
    const [, width = 0, aspect = 0, rim = 0] =
      /(\d+)\/(\d+) ?Z?R ?(\d+)/.exec(garageBench(bench).car.tyre)?.map(Number) ?? [];
    const diameter = (2 * width * aspect) / 100 + 25.4 * rim;
    expect(1000 * length(found(scene, 'dimension'))).toBeCloseTo(value * diameter, 6);
  });

  test('spread, load line, contact angle and toe are drawn as they are entered', () => {
    const spread = sceneOf(bench, 'spread_mm');
    expect(length(found(spread.scene, 'dimension', 'measure-pressureCentreSpread'))).toBeCloseTo(
      spread.value,
      9,
    );
    const line = sceneOf(bench, 'loadLineOffset_mm');
    expect(length(found(line.scene, 'dimension', 'measure-loadLineOffset'))).toBeCloseTo(
      Math.abs(line.value),
      9,
    );
    const toe = sceneOf(bench, 'toe_deg');
    expect(opening(found(toe.scene, 'angle'))).toBeCloseTo(Math.abs(degrees(toe.value)), 3);
    const contact = sceneOf(bench, 'contactAngle_deg');
    expect(opening(found(contact.scene, 'angle'))).toBeCloseTo(degrees(contact.value), 6);
  });
});

test('names what it is found out with, as its field does', () => {
  for (const id of INPUT_IDS) {
    expect(sceneOf('hatchback-spacers', id).scene.description).toContain(inputAbout(id).tool);
  }
});
