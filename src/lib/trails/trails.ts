import type { JobId } from './jobs';

export const TRAIL_IDS = ['technician', 'student', 'enthusiast'] as const;

export type TrailId = (typeof TRAIL_IDS)[number];

export const isTrailId = (id: string): id is TrailId =>
  (TRAIL_IDS as readonly string[]).includes(id);

/** A place that a trail stops at: a lesson, a derivation, or a job at a car. */
export type Stop =
  | { readonly kind: 'lesson'; readonly slug: string; readonly why: string }
  | { readonly kind: 'derivation'; readonly slug: string }
  | { readonly kind: 'job'; readonly id: JobId };

/** A way through the course for one sort of reader. */
export interface Trail {
  readonly id: TrailId;
  readonly name: string;
  /** In one sentence, for lists. */
  readonly summary: string;
  /** What one can do at its end. */
  readonly able: readonly string[];
  readonly stops: readonly Stop[];
  /** The lesson that one is headed for, where the rest of the trail is what may come after it. */
  readonly goal?: string;
}

const lesson = (slug: string, why: string): Stop => ({ kind: 'lesson', slug, why });
const derivation = (slug: string): Stop => ({ kind: 'derivation', slug });
const job = (id: JobId): Stop => ({ kind: 'job', id });

/** The trails through the course. Lessons are named by their addresses, in the order of the course. */
export const TRAILS = [
  {
    id: 'technician',
    name: 'The technician’s trail',
    summary:
      'Read a sheet, measure at a car, say what pulls and why. With jobs to do at a car between the lessons.',
    able: [
      'read an alignment sheet and say what has moved and what is bent',
      'measure caster and inclination by swinging the wheels',
      'find scrub radius, spindle offset and load line on a car in the workshop',
      'say which way a car will pull, and why',
      'say before a change what it will do, and what has to be checked after it',
    ],
    stops: [
      lesson('two-points', 'The axis that every angle on a sheet is about.'),
      lesson('at-the-road', 'The scrub radius, and what a spacer does to it.'),
      job('marks-on-the-floor'),
      lesson('at-the-wheel-centre', 'The other lever, for drive and kerbs.'),
      job('two-heights'),
      lesson('the-wheel-turns', 'What a swing measures, and why the brake is held for half of it.'),
      job('swing'),
      lesson('alignment-sheet', 'Five lines, two wheels: bent, moved, or worn.'),
      job('sheet'),
      lesson('what-the-carrier-feels', 'Who pushes whom when a wheel meets a kerb.'),
      lesson('braking-at-the-ground', 'Why braking has a lever of its own.'),
      lesson('from-axis-to-hands', 'From the tyre to the rim of the steering wheel.'),
      lesson('left-against-right', 'What two different sides do to the steering.'),
      job('pull'),
      lesson('load-line-and-rows', 'Where the wheel stands over its bearing.'),
      job('load-line'),
      lesson('spacers-and-inset', 'The commonest change, with all that it moves.'),
      lesson('tyres-and-camber', 'The other changes that customers bring.'),
      lesson('holding-the-wheel-on', 'What keeps a wheel on its hub.'),
      job('wheel-on'),
      lesson('measuring-your-own-car', 'All measurements in one round, with how sure they are.'),
      job('whole-car'),
      lesson('capstone', 'Three cases to judge, the technician’s first.'),
    ],
  },
  {
    id: 'student',
    name: 'The student’s trail',
    summary:
      'The whole course in order, with a derivation in vectors behind every formula that has one.',
    able: [
      'derive every formula of the course, and say what was left out on the way',
      'compute moments about a leaning axis in vectors, and check them in the plane',
      'follow a load from the road through axis, rod and rack to the hands, and into both rows of the bearing',
      'work out a rating life for a duty, and say when that number means nothing',
      'judge a change part by part, with the method shown and the signs in words',
    ],
    stops: [
      lesson('two-points', 'Two angles from two points.'),
      lesson('at-the-road', 'A line meets a plane.'),
      derivation('where-the-axis-meets-the-road'),
      lesson('at-the-wheel-centre', 'The same line, one loaded radius up.'),
      derivation('scrub-radius-and-spindle-offset'),
      lesson('the-wheel-turns', 'Rotation about a leaning axis.'),
      derivation('turning-about-an-axis'),
      derivation('caster-by-swing'),
      derivation('lift-as-work'),
      lesson('alignment-sheet', 'Differences and sums that tell causes apart.'),
      lesson('what-the-carrier-feels', 'Free bodies, and what a bearing passes.'),
      derivation('moment-about-an-axis'),
      lesson('braking-at-the-ground', 'Force and couple.'),
      derivation('moving-a-force'),
      lesson('from-axis-to-hands', 'Balance, and equal work.'),
      derivation('rod-rack-and-rim'),
      lesson('left-against-right', 'Two corners on one rack.'),
      lesson('side-weight-parking', 'The forces that are not along the car.'),
      lesson('load-line-and-rows', 'A beam on two supports.'),
      derivation('two-rows-of-a-bearing'),
      lesson('cornering', 'The largest moment that a hub gets.'),
      lesson('rating-life', 'From load to life.'),
      derivation('life-of-a-pair'),
      lesson('spacers-and-inset', 'One change, followed through everything.'),
      lesson('tyres-and-camber', 'Changes that move more than one thing.'),
      lesson('holding-the-wheel-on', 'Clamping force and friction.'),
      lesson('measuring-your-own-car', 'Measurements with their uncertainty.'),
      lesson('capstone', 'Three cases to judge, with the method shown.'),
    ],
  },
  {
    id: 'enthusiast',
    name: 'The enthusiast’s trail',
    summary:
      'The shortest road to what spacers and another inset do, with nothing left out that it stands on.',
    able: [
      'say what a spacer or another inset does to scrub radius, spindle offset, steering forces and bearing',
      'say it with a number, a direction and how sure the number is',
      'measure your own car well enough for that',
      'know what to ask a licensed workshop or an inspector before the wrench comes out',
    ],
    goal: 'spacers-and-inset',
    stops: [
      lesson('two-points', 'The axis that the wheel turns about.'),
      lesson('at-the-road', 'The scrub radius, and the first spacer.'),
      lesson('at-the-wheel-centre', 'The spindle offset: a spacer changes both.'),
      lesson('what-the-carrier-feels', 'Why a kerb has the longer lever.'),
      lesson('braking-at-the-ground', 'Why braking has the shorter one.'),
      lesson('from-axis-to-hands', 'What arrives at the steering wheel, and what does not.'),
      lesson('load-line-and-rows', 'What an offset does to the two rows of the bearing.'),
      lesson('cornering', 'What a bend does to them, beside that.'),
      lesson('rating-life', 'What is left of the bearing’s life.'),
      lesson('spacers-and-inset', 'Your question, with all that it moves.'),
      lesson('tyres-and-camber', 'If the tyre or the camber changes too.'),
      lesson('holding-the-wheel-on', 'What keeps the wheel on: read it before anything is fitted.'),
      lesson('measuring-your-own-car', 'Your own numbers in place of a training car’s.'),
      lesson('capstone', 'Three cases to judge, the enthusiast’s last.'),
    ],
  },
] as const satisfies readonly Trail[];

/** The trail of that name. */
export const trail = (id: TrailId): Trail => {
  const found = TRAILS.find((one) => one.id === id);
  if (!found) throw new RangeError(`no trail is called ${id}`);
  return found;
};
