import type { Sides } from '../axle.ts';
import { writeShortest } from '../write-number.ts';
import type { FittedCar, WheelChange } from './fitted-car.ts';

/** What kind of work a change is. */
export type Work = 'spacer' | 'wheel' | 'tyre' | 'camber' | 'sides';

/** Whether left and right are alike as the car stands: what matters for one of the two is said of that one only. */
type Standing = 'alike' | 'apart';

/** A sentence, and what has to be done to a car for it to matter; always, where nothing is named. */
interface Said {
  readonly text: string;
  readonly for?: readonly (Work | Standing)[];
}

/** What the model leaves out. */
const LEFT_OUT: readonly Said[] = [
  {
    text: 'Both front wheels are taken as mirror images of each other as the car stands, since nothing is entered that they differ by.',
    for: ['alike'],
  },
  {
    text: 'As the car stands, the front wheels are taken as mirror images of each other but for what is entered that they differ by: toe, tape readings, load and bearing are those of the left one.',
    for: ['apart'],
  },
  {
    text: 'Which way camber and caster that differ draw a rolling car is left out: moments are those of brakes, driving and blows.',
    for: ['apart'],
  },
  {
    text: 'The tyre is a thin disc on a level road: how its print grows, leans and creeps under load is left out.',
  },
  {
    text: 'Rubber joints are taken as stiff, and the body stays level: no roll, no dive, no travel.',
  },
  {
    text: 'Moments are those of one force at a time, straight ahead, with the shaft along the spin axis.',
  },
  {
    text: 'Life is fatigue alone, under the stated duty: water, dirt, blows, play and bad fitting are not in it.',
  },
  {
    text: 'How heavy wheel and tyre are is left out, and with it what springs and dampers make of them.',
    for: ['wheel', 'tyre', 'spacer'],
  },
  {
    text: 'Room is counted at the wheel straight ahead: on lock and in travel it is another.',
    for: ['spacer', 'wheel', 'tyre', 'camber'],
  },
  {
    text: 'Another make’s tyre of the same size may be wider, taller and softer than its marking says.',
    for: ['tyre'],
  },
  {
    text: 'Strength of wheel, spacer, studs and bolts is left out: only the length of thread that holds is counted.',
    for: ['spacer', 'wheel'],
  },
  {
    text: 'How toe goes along with camber is left out: it is taken to be set again.',
    for: ['camber'],
  },
  {
    text: 'What unequal wheels do in bends, in crosswind and on cambered roads is left out.',
    for: ['sides', 'apart'],
  },
];

/** What to have checked on the car before it goes on a road. */
const CHECKS: readonly Said[] = [
  {
    text: 'Ask your road authority or inspector whether the change is allowed on this car, and what has to be certified. Local codes come first.',
  },
  {
    text: 'Have the work done or looked over by a licensed shop: wheels, brakes and steering hold lives.',
  },
  {
    text: 'Length, thread and seat of the fasteners: the thread must hold over the length that the maker asks for, and the seat must be of the wheel’s own shape.',
    for: ['spacer', 'wheel'],
  },
  {
    text: 'Faces clean, dry and flat, the wheel centred on its spigot; tightened by torque wrench in a star, and again after 50 to 100 km.',
    for: ['spacer', 'wheel'],
  },
  {
    text: 'Room at full lock both ways and at full travel both ways: arch, strut, arm, brake hose, caliper, tie rod.',
    for: ['spacer', 'wheel', 'tyre', 'camber'],
  },
  {
    text: 'Load rating of the wheel itself, against the axle load.',
    for: ['wheel'],
  },
  {
    text: 'Load index and speed symbol of the tyre against the car’s papers, and its pressure.',
    for: ['tyre'],
  },
  {
    text: 'Speedometer, and what counts turns of the wheel: anti-lock brakes, stability control, gearbox.',
    for: ['tyre'],
  },
  {
    text: 'Alignment of all wheels, toe last, with the steering wheel straight; then the steering-angle sensor.',
    for: ['camber', 'wheel', 'spacer', 'tyre'],
  },
  {
    text: 'That the tread stays covered by the arch, as rules of the road ask almost everywhere.',
    for: ['spacer', 'wheel', 'tyre'],
  },
  {
    text: 'A first drive on a free road: brake gently, then harder, hands light on the wheel. Stop if it pulls.',
  },
  {
    text: 'Play and noise of the wheel bearings now, and again after some thousand kilometres.',
    for: ['spacer', 'wheel'],
  },
  {
    text: 'Why left and right should differ at all: a car that is not the same on both sides pulls.',
    for: ['sides'],
  },
  {
    text: 'Why left and right differ as the car stands: something may be bent or have moved. What is bent is replaced, not set right by a change.',
    for: ['apart'],
  },
];

/** Which kinds of work a change is. */
function worksOf({ left, right }: Sides<WheelChange>): ReadonlySet<Work> {
  const works = new Set<Work>();
  for (const change of [left, right]) {
    if (change.spacer > 0) works.add('spacer');
    if ((change.inset ?? change.rimWidth ?? change.wheelThickness) !== undefined)
      works.add('wheel');
    if (change.tyre !== undefined) works.add('tyre');
    if (change.camberAtUpperPivot !== 0 || change.camberAtCarrier !== 0) works.add('camber');
  }
  if (left !== right) works.add('sides');
  return works;
}

/** What the model leaves out that matters for a car and a change. */
export const leftOut = (
  car: Pick<FittedCar, 'apart'>,
  changes: Sides<WheelChange>,
): readonly string[] => saidFor(LEFT_OUT, car, changes);

/** What to have checked after a change. */
export const toHaveChecked = (
  car: Pick<FittedCar, 'apart'>,
  changes: Sides<WheelChange>,
): readonly string[] => saidFor(CHECKS, car, changes);

/** What about this car could not be judged, for want of something that its document does not say. */
export function notJudged(
  { fixing, tyre, driven }: FittedCar,
  { left, right }: Sides<WheelChange>,
): readonly string[] {
  const said: string[] = [];
  if (fixing === undefined)
    said.push('How far the threads hold: what holds the wheels has not been entered.');
  if ([left, right].some((change) => (change.tyre ?? tyre).loadIndex === undefined))
    said.push('Whether the tyres may carry the load: a load index is missing behind the size.');
  const rims = [left, right].flatMap(({ tyre: other, inset }) =>
    other !== undefined && inset === undefined && other.rimCode !== tyre.rimCode
      ? [other.rimCode]
      : [],
  );
  if (rims[0] !== undefined)
    said.push(
      `The other wheel that a tyre for rims of ${writeShortest(rims[0])} inches needs: its inset has not been entered, and is taken as that of the wheel now.`,
    );
  if (!driven) said.push('Driving through the front wheels: this car drives its rear ones.');
  return said;
}

function saidFor(
  all: readonly Said[],
  { apart }: Pick<FittedCar, 'apart'>,
  changes: Sides<WheelChange>,
): readonly string[] {
  const matters = new Set<Work | Standing>([...worksOf(changes), apart ? 'apart' : 'alike']);
  return all
    .filter((said) => said.for === undefined || said.for.some((one) => matters.has(one)))
    .map(({ text }) => text);
}
