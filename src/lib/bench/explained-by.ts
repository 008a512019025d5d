import { JUDGED_IDS, type JudgedId } from '#core/judgement/judged-quantities.ts';
import type { QuantityId } from '#core/quantities.ts';
import type { LessonFacts } from '$lib/lesson/lesson';

/** A step of a lesson that explains a result. */
export interface ExplainingStep {
  readonly slug: string;
  readonly lesson: string;
  /** From 1. */
  readonly step: number;
}

/** Where a result is explained: the lesson, and the quantity in whose first step there it is, or words of that step’s heading. */
type Taught = readonly [
  slug: string,
  by: { readonly shows: QuantityId } | { readonly says: string },
];

const SPLIT: Taught = ['left-against-right', { shows: 'axleRimForce' }];
const LIVES: Taught = ['rating-life', { shows: 'hubLife' }];
const EDGES: Taught = ['spacers-and-inset', { shows: 'outerEdge' }];
const ROWS: Taught = ['load-line-and-rows', { shows: 'outboardRadial' }];
const TYRES: Taught = ['tyres-and-camber', { says: 'One tyre, three radii' }];
const BLOW_IN_HANDS: Taught = ['from-axis-to-hands', { shows: 'blowMoment' }];
const SHAFT: Taught = ['what-the-carrier-feels', { says: 'the shaft turns' }];

const TAUGHT: Readonly<Record<JudgedId, Taught>> = {
  scrubRadius: ['at-the-road', { shows: 'scrubRadius' }],
  spindleOffset: ['at-the-wheel-centre', { shows: 'spindleOffset' }],
  trail: ['at-the-road', { shows: 'trail' }],
  inclination: ['two-points', { shows: 'inclination' }],
  caster: ['two-points', { shows: 'caster' }],
  camber: ['alignment-sheet', { shows: 'camber' }],
  includedAngle: ['tyres-and-camber', { shows: 'includedAngle' }],
  brakeMoment: ['braking-at-the-ground', { shows: 'brakeMoment' }],
  driveMoment: SHAFT,
  recuperationMoment: SHAFT,
  blowMoment: ['what-the-carrier-feels', { says: 'A blow counts' }],
  outboardRadial: ROWS,
  inboardRadial: ROWS,
  outboardMeanLoad: ['rating-life', { shows: 'outboardMeanLoad' }],
  inboardMeanLoad: ['rating-life', { shows: 'outboardMeanLoad' }],
  outboardLife: LIVES,
  inboardLife: LIVES,
  hubLife: LIVES,
  outerEdge: EDGES,
  innerEdge: EDGES,
  outerSidewall: EDGES,
  innerSidewall: EDGES,
  loadedRadius: TYRES,
  rollingCircumference: TYRES,
  trueSpeed: ['tyres-and-camber', { says: 'What the speedometer' }],
  loadShare: ['tyres-and-camber', { says: 'Three numbers' }],
  engagement: ['holding-the-wheel-on', { shows: 'engagement' }],
  engagementSpare: ['holding-the-wheel-on', { shows: 'engagement' }],
  track: ['spacers-and-inset', { shows: 'track' }],
  brakingRimForce: SPLIT,
  splitRimForce: SPLIT,
  splitRimForceUnassisted: SPLIT,
  splitSteering: ['left-against-right', { shows: 'steeringMoment' }],
  splitYaw: ['left-against-right', { shows: 'yawMoment' }],
  blowRimForce: BLOW_IN_HANDS,
  blowRimForceUnassisted: BLOW_IN_HANDS,
};

/** The step that explains each result. A result whose lesson is not there, or no longer shows it so, has none: a test looks. */
export const explainingSteps = (
  lessons: readonly Pick<LessonFacts, 'slug' | 'title' | 'steps'>[],
): Partial<Readonly<Record<JudgedId, ExplainingStep>>> =>
  Object.fromEntries(
    JUDGED_IDS.flatMap((id) => {
      const [slug, by] = TAUGHT[id];
      const lesson = lessons.find((one) => one.slug === slug);
      const step = lesson?.steps.findIndex(({ title, look }) =>
        'shows' in by ? look.measures.includes(by.shows) : title.includes(by.says),
      );
      if (lesson === undefined || step === undefined || step < 0) return [];
      return [[id, { slug, lesson: lesson.title, step: step + 1 }]];
    }),
  );
