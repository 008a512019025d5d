import loadMujoco, { type MainModule, type MjData, type MjModel } from 'mujoco-js';
import { minus, vector, type Vector } from '#core/vector.ts';

/** A rigid carrier on one hinge in MuJoCo, a general-purpose engine for rigid bodies. */
export interface HingedCarrier {
  /** Turns the carrier to an angle from its first position, in radians. */
  turnTo(angle: number): void;
  /** Generalised force on the hinge of a force at a point in space and a couple, in N·m. */
  moment(force: Vector, point: Vector, couple: Vector): number;
  /** Where a point named when the carrier was made is now. */
  place(name: string): Vector;
  /** Direction of an arrow that turns with the carrier, given as it was at first. */
  arrow(direction: Vector): Vector;
  /** d(length)/d(angle) of a rope from a named point to a fixed one, in metres. */
  ropeLever(name: string): number;
}

/** Given for each point of the carrier; `rope` is the fixed end of a rope from it. */
export interface CarrierPoint {
  readonly at: Vector;
  readonly rope?: Vector;
}

export type Points = Readonly<Record<string, CarrierPoint>>;

const FOLDER = '/models';
/** Where a model's text is written for the engine to read. */
export const MODEL_FILE = `${FOLDER}/model.xml`;

let engine: Promise<MainModule> | undefined;

/** The engine, loaded once for a test file, with a folder in its memory for models. */
export const mujocoEngine = (): Promise<MainModule> =>
  (engine ??= loadMujoco().then(withMemoryFolder));

/** A carrier that turns about the line from `lower` toward `upper`. */
export async function hingedCarrier(
  lower: Vector,
  upper: Vector,
  points: Points,
): Promise<HingedCarrier> {
  const mujoco = await mujocoEngine();
  mujoco.FS.writeFile(MODEL_FILE, modelText(lower, upper, points));
  const model = mujoco.MjModel.loadFromXML(MODEL_FILE);
  const data = new mujoco.MjData(model);
  mujoco.mj_forward(model, data);
  return carrierOf(mujoco, model, data, points);
}

function withMemoryFolder(mujoco: MainModule): MainModule {
  mujoco.FS.mkdir(FOLDER);
  mujoco.FS.mount(mujoco.MEMFS, { root: '.' }, FOLDER);
  return mujoco;
}

function carrierOf(
  mujoco: MainModule,
  model: MjModel,
  data: MjData,
  points: Points,
): HingedCarrier {
  const names = Object.keys(points);
  const roped = names.filter((name) => points[name]?.rope);
  const body = 1;
  const numbers = (field: unknown) => field as Float64Array;
  const vectorAt = (field: unknown, index: number) => {
    const [x = NaN, y = NaN, z = NaN] = numbers(field).slice(3 * index, 3 * index + 3);
    return vector(x, y, z);
  };
  return {
    turnTo(angle) {
      numbers(data.qpos)[0] = angle;
      mujoco.mj_forward(model, data);
    },
    moment(force, point, couple) {
      // The engine adds to the buffer, and to a plain array it adds nothing at all.
      const buffer = new mujoco.DoubleBuffer(1);
      mujoco.mj_applyFT(model, data, list(force), list(couple), list(point), body, buffer);
      const moment = numbers(buffer.GetView())[0] ?? NaN;
      buffer.delete();
      return moment;
    },
    // The ropes' fixed ends come first: they are sites of the world.
    place: (name) => vectorAt(data.site_xpos, roped.length + names.indexOf(name)),
    arrow(direction) {
      const [a, b, c] = [0, 1, 2].map((row) => vectorAt(data.xmat, 3 * body + row));
      const { x, y, z } = direction;
      const along = (v: Vector | undefined) => (v ? v.x * x + v.y * y + v.z * z : NaN);
      return vector(along(a), along(b), along(c));
    },
    ropeLever: (name) => numbers(data.ten_J)[roped.indexOf(name)] ?? NaN,
  };
}

function modelText(lower: Vector, upper: Vector, points: Points): string {
  const entries = Object.entries(points);
  const text = ({ x, y, z }: Vector) => `${x} ${y} ${z}`;
  const sites = entries.map(([name, { at }]) => `<site name="${name}" pos="${text(at)}"/>`);
  const fixed = entries.map(([name, { rope }]) =>
    rope ? `<site name="${name}-fixed" pos="${text(rope)}"/>` : '',
  );
  const ropes = entries.map(([name, { rope }]) =>
    rope ? `<spatial><site site="${name}"/><site site="${name}-fixed"/></spatial>` : '',
  );
  return `<mujoco>
    <compiler angle="radian"/>
    <option gravity="0 0 0"/>
    <worldbody>
      ${fixed.join('')}
      <body>
        <joint type="hinge" pos="${text(lower)}" axis="${text(minus(upper, lower))}"/>
        <inertial pos="0 0 0" mass="1" diaginertia="1 1 1"/>
        ${sites.join('')}
      </body>
    </worldbody>
    <tendon>${ropes.join('')}</tendon>
  </mujoco>`;
}

const list = ({ x, y, z }: Vector): number[] => [x, y, z];
