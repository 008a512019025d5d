import type { QuantityId } from '#core/quantities.ts';
import type { LoadId } from '../parameters.ts';

/** Who holds or turns the wheel while a force acts on it along the car. */
export type BodiesCase = 'brake' | 'shaft' | 'edge' | 'rolling';

interface CaseFacts {
  /** What it is called where one chooses between cases. */
  readonly name: string;
  /** The same in full. */
  readonly title: string;
  /** The load that it is about, how much of it is usual in newtons, and the moment that it makes. */
  readonly load: LoadId;
  readonly usual: number;
  readonly moment: QuantityId;
}

export const BODIES_CASES = {
  brake: {
    name: 'Brake',
    title: 'Braking with a brake on the carrier',
    load: 'brake',
    usual: 2500,
    moment: 'brakeMoment',
  },
  shaft: {
    name: 'Shaft',
    title: 'Driving or braking through a shaft',
    load: 'drive',
    usual: 1500,
    moment: 'driveMoment',
  },
  edge: {
    name: 'Edge',
    title: 'A blow from an edge',
    load: 'blow',
    usual: 4000,
    moment: 'blowMoment',
  },
  rolling: {
    name: 'Rolling',
    title: 'Rolling freely',
    load: 'drag',
    usual: 80,
    moment: 'dragMoment',
  },
} as const satisfies Record<BodiesCase, CaseFacts>;

export const BODIES_CASE_IDS = Object.keys(BODIES_CASES) as readonly BodiesCase[];

export const isBodiesCase = (word: string): word is BodiesCase => Object.hasOwn(BODIES_CASES, word);
