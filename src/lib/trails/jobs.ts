/** Something to do at a car between two lessons. */
export interface Job {
  readonly id: string;
  readonly title: string;
  readonly minutes: number;
  readonly tools: string;
  readonly steps: readonly string[];
  /** What to write down, and what to hold it against. */
  readonly record: string;
  readonly caution: string;
}

/** Stands with every job that has a car lifted. */
const LIFTED =
  'A jack lifts, it does not hold. Level ground, the other wheels chocked, lift at the maker’s points, stands under the body or the subframe before anybody reaches under the car, and nobody in it.';

/** The jobs of the technician's trail, under supervision of whoever answers for the workshop. */
export const JOBS = [
  {
    id: 'marks-on-the-floor',
    title: 'Mark the axis on the floor',
    minutes: 40,
    tools: 'chalk, plumb line, straight edge, tape measure, a level floor',
    steps: [
      'Set the steering straight. With the car on its wheels, find the centre of the lower ball joint and the centre of the upper pivot: the upper ball joint, or the middle of the strut’s top bearing.',
      'Drop a plumb line from each to the floor and mark both places. Measure both heights.',
      'Mark the middle of the tyre’s print across the car.',
      'On paper, extend the line through both points down to the floor, seen from the front and seen from the side.',
      'Mark where it meets the floor, and measure from there to the middle of the print.',
    ],
    record:
      'Inclination, caster, scrub radius and trail, each with its sign in words. Do it twice, hours apart: what the two differ by is how sure you are.',
    caution:
      'Nobody works under a car that stands on its jack. Reach the joints from the side or over a pit made for it. A spring or strut under load is not opened for a measurement.',
  },
  {
    id: 'two-heights',
    title: 'Measure at two heights',
    minutes: 25,
    tools: 'tape measure, square, the notes of the job before',
    steps: [
      'Measure the height of the wheel centre over the floor: the loaded radius.',
      'On your drawing, find the axis at that height, and measure from it to the middle of the wheel.',
      'Take loaded radius times the tangent of the inclination from it and hold the rest against the scrub radius that you marked.',
    ],
    record:
      'Spindle offset, measured and computed. Where they differ, say which measurement you trust less.',
    caution: 'Wheels chocked, handbrake on, key out.',
  },
  {
    id: 'swing',
    title: 'Swing for caster and inclination',
    minutes: 60,
    tools:
      'turn plates with scales, camber gauge, brake pedal depressor, slip plates under the rear or equal height',
    steps: [
      'Tyre pressures right, car unladen and settled, plates level with the rear wheels and unlocked at nought.',
      'Caster: brake free. Turn the wheel out by twenty degrees on the scale, read the camber; turn it in by as much, read again.',
      'Inclination: set and hold the brake, put the gauge across the wheel’s face, and read at the same two places.',
      'Do both sides, then the first side once more.',
    ],
    record:
      'Camber at both ends, caster by formula and by the gauge’s own scale, inclination. Compare with the maker’s sheet, left with right, and first with second reading.',
    caution:
      'A car on plates rolls at a touch: chock the wheels that are not on them, and let nobody stand before or behind it.',
  },
  {
    id: 'sheet',
    title: 'Read a sheet from your own workshop',
    minutes: 30,
    tools: 'a printed alignment sheet, before adjustment, with its bands',
    steps: [
      'Cover the column with the colours or arrows. Mark yourself what lies outside its band.',
      'Write included angle, cross camber and cross caster beside it.',
      'Say for each front wheel: in order, moved, or bent. Say which way the car would pull.',
      'Uncover. Ask a licensed colleague where you disagree with the print.',
    ],
    record: 'Your verdict in one sentence, and what you would look at on the car to prove it.',
    caution: 'A bent part of suspension or steering is replaced, never straightened.',
  },
  {
    id: 'pull',
    title: 'Find out why a car pulls',
    minutes: 60,
    tools: 'tyre gauge, a level straight road or test track, somebody licensed to drive',
    steps: [
      'Pressures, tyre sizes and wear, left against right. Feel the hubs for a dragging brake after a short drive.',
      'Read the sheet. Say in writing which way the car should pull, before it is driven.',
      'Have it driven, both ways along the same road, so that the camber of the road shows itself.',
      'Have the front wheels changed over from left to right, if the tyres allow it. If the pull changes sides, it was the tyres.',
    ],
    record: 'What you predicted, what came out, and what that rules out.',
    caution:
      'A test drive only on a car whose brakes and steering are in order, by a licensed driver, with both hands on the wheel, and never to make it pull harder.',
  },
  {
    id: 'load-line',
    title: 'Find the load line',
    minutes: 45,
    tools:
      'depth gauge or square, tape measure, the bearing’s drawing or data sheet, the wheel off the car',
    steps: [
      'Measure from the hub’s mounting face to the middle of the bearing, or take it from the drawing.',
      'Read the wheel’s inset off its back, and measure it: from the mounting face to the middle between the flanges.',
      'Put both on one line, outboard positive, and add the thickness of a spacer, if there is one.',
    ],
    record:
      'How far the middle of the wheel stands outboard of the middle of the bearing, and how sure that is.',
    caution: LIFTED,
  },
  {
    id: 'wheel-on',
    title: 'Put a wheel on as it should be',
    minutes: 30,
    tools: 'torque wrench with a valid test date, wire brush, the maker’s torque and pattern',
    steps: [
      'Look at both faces, the hub’s centring, bolts or studs, nuts and their seats: clean, dry or as the maker says, and the right kind for this wheel.',
      'Count the turns that each bolt or nut goes by hand. Hold that against what the maker asks for.',
      'Tighten in the maker’s order, in two rounds, the second with the wheel on the ground.',
      'Check again after the distance that the maker gives.',
    ],
    record: 'Turns by hand, torque, and at what distance it was checked again.',
    caution:
      'No impact wrench for the last round, no grease where the maker has none, and nothing between hub and wheel that the maker or your road authority does not allow. ' +
      LIFTED,
  },
  {
    id: 'whole-car',
    title: 'One car from end to end',
    minutes: 120,
    tools: 'everything above',
    steps: [
      'Take all measurements of one car in one go, and repeat those that were least sure.',
      'Enter them, and compare caster and inclination by swing with those from the pivots.',
      'Choose one change that a customer might ask for. Predict on paper, then compute.',
      'Write down what you would have checked, and by whom.',
    ],
    record: 'One page: measured, computed, how sure, and the verdict on the change.',
    caution:
      'Whether a change may be driven is decided by a licensed workshop or inspector and by the rules of your place, not by this page.',
  },
] as const satisfies readonly Job[];

export type JobId = (typeof JOBS)[number]['id'];

/** The job of that name. */
export const job = (id: JobId): Job => {
  const found = JOBS.find((one) => one.id === id);
  if (!found) throw new RangeError(`no job is called ${id}`);
  return found;
};
