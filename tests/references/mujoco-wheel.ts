import type { Corner } from '#core/corner.ts';
import { plus, type Vector } from '#core/vector.ts';
import { MODEL_FILE, mujocoEngine } from './mujoco.ts';

/** A wheel that spins in a carrier that steers: two bodies on two hinges in MuJoCo. */
export interface WheelInCarrier {
  /** Generalised forces of a force at a point and a couple, both on the wheel: about the steering axis and about the spin axis. */
  onWheel(force: Vector, point: Vector, couple: Vector): { steering: number; spinning: number };
  /** The same of a motor between carrier and wheel that gives the wheel a torque about its spin axis. */
  byMotorBetween(torque: number): { steering: number; spinning: number };
}

/** The corner's carrier on a hinge along the steering axis, and in it the wheel on a hinge along the spin axis. */
export async function wheelInCarrier({ axis, wheelCentre, spin }: Corner): Promise<WheelInCarrier> {
  const mujoco = await mujocoEngine();
  mujoco.FS.writeFile(
    MODEL_FILE,
    `<mujoco>
      <compiler angle="radian"/>
      <option gravity="0 0 0"/>
      <worldbody>
        <body>
          <joint name="steering" type="hinge" pos="${text(axis.point)}" axis="${text(axis.direction)}"/>
          <inertial pos="0 0 0" mass="1" diaginertia="1 1 1"/>
          <body>
            <joint name="spin" type="hinge" pos="${text(wheelCentre)}" axis="${text(spin)}"/>
            <inertial pos="${text(plus(wheelCentre, spin))}" mass="1" diaginertia="1 1 1"/>
          </body>
        </body>
      </worldbody>
      <actuator><motor joint="spin"/></actuator>
    </mujoco>`,
  );
  const model = mujoco.MjModel.loadFromXML(MODEL_FILE);
  const data = new mujoco.MjData(model);
  mujoco.mj_forward(model, data);
  const wheel = 2;
  return {
    onWheel(force, point, couple) {
      const buffer = new mujoco.DoubleBuffer(2);
      mujoco.mj_applyFT(model, data, list(force), list(couple), list(point), wheel, buffer);
      const found = both(buffer.GetView());
      buffer.delete();
      return found;
    },
    byMotorBetween(torque) {
      (data.ctrl as Float64Array)[0] = torque;
      mujoco.mj_forward(model, data);
      return both(data.qfrc_actuator);
    },
  };
}

function both(field: unknown): { steering: number; spinning: number } {
  const [steering = NaN, spinning = NaN] = field as Float64Array;
  return { steering, spinning };
}

const text = ({ x, y, z }: Vector): string => `${x} ${y} ${z}`;
const list = ({ x, y, z }: Vector): number[] => [x, y, z];
