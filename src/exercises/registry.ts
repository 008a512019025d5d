import { evenKind } from './even.ts';
import { drawExercise, type Exercise } from './exercise.ts';
import type { Kind } from './kind.ts';

/** An exercise kind as the rest of the house sees it: what its items are made of is its own business. */
export interface ExerciseKind {
  readonly id: string;
  readonly version: number;
  readonly title: string;
  readonly lesson: string;
  readonly level: 1 | 2 | 3;
  /** Names of the quantities asked for, in order. */
  readonly asks: readonly string[];
  /** Ids and labels of the parts, in order. */
  readonly partIds: readonly string[];
  readonly labels: readonly string[];
  readonly exercise: (seed: string) => Exercise;
}

/** How to fetch each kind: a page loads those it shows and no others. In the order of the lessons. */
const LOADERS = {
  'inclination-from-pivots': () =>
    import('./kinds/inclination-from-pivots.ts').then((m) => sealed(m.inclinationFromPivots)),
  'caster-from-pivots': () =>
    import('./kinds/caster-from-pivots.ts').then((m) => sealed(m.casterFromPivots)),
  'camber-at-upper-pivot': () =>
    import('./kinds/camber-at-upper-pivot.ts').then((m) => sealed(m.camberAtUpperPivot)),
  'upper-pivot-move': () =>
    import('./kinds/upper-pivot-move.ts').then((m) => sealed(m.upperPivotMove)),
  'set-upper-pivot': () =>
    import('./kinds/set-upper-pivot.ts').then((m) => sealed(m.setUpperPivot)),
  'bent-carrier': () => import('./kinds/bent-carrier.ts').then((m) => sealed(m.bentCarrier)),
  'spacer-scrub': () => import('./kinds/spacer-scrub.ts').then((m) => sealed(m.spacerScrub)),
  'inset-scrub': () => import('./kinds/inset-scrub.ts').then((m) => sealed(m.insetScrub)),
  'scrub-from-pivots': () =>
    import('./kinds/scrub-from-pivots.ts').then((m) => sealed(m.scrubFromPivots)),
  'trail-from-pivots': () =>
    import('./kinds/trail-from-pivots.ts').then((m) => sealed(m.trailFromPivots)),
  'marked-along': () => import('./kinds/marked-along.ts').then((m) => sealed(m.markedAlong)),
  'spacer-for-scrub': () =>
    import('./kinds/spacer-for-scrub.ts').then((m) => sealed(m.spacerForScrub)),
  'set-wheel-for-scrub': () =>
    import('./kinds/set-wheel-for-scrub.ts').then((m) => sealed(m.setWheelForScrub)),
  'spindle-offset-from-scrub': () =>
    import('./kinds/spindle-offset-from-scrub.ts').then((m) => sealed(m.spindleOffsetFromScrub)),
  'marked-across': () => import('./kinds/marked-across.ts').then((m) => sealed(m.markedAcross)),
  'spindle-offset-spacer': () =>
    import('./kinds/spindle-offset-spacer.ts').then((m) => sealed(m.spindleOffsetSpacer)),
  'scrub-other-tyre': () =>
    import('./kinds/scrub-other-tyre.ts').then((m) => sealed(m.scrubOtherTyre)),
  'inclination-from-offsets': () =>
    import('./kinds/inclination-from-offsets.ts').then((m) => sealed(m.inclinationFromOffsets)),
  'caster-from-swing': () =>
    import('./kinds/caster-from-swing.ts').then((m) => sealed(m.casterFromSwing)),
  'front-on-lock': () => import('./kinds/front-on-lock.ts').then((m) => sealed(m.frontOnLock)),
  'camber-on-lock': () => import('./kinds/camber-on-lock.ts').then((m) => sealed(m.camberOnLock)),
  'inclination-from-swing': () =>
    import('./kinds/inclination-from-swing.ts').then((m) => sealed(m.inclinationFromSwing)),
  'camber-at-full-lock': () =>
    import('./kinds/camber-at-full-lock.ts').then((m) => sealed(m.camberAtFullLock)),
  'camber-if-straight': () =>
    import('./kinds/camber-if-straight.ts').then((m) => sealed(m.camberIfStraight)),
  'cross-camber': () => import('./kinds/cross-camber.ts').then((m) => sealed(m.crossCamber)),
  'cross-caster': () => import('./kinds/cross-caster.ts').then((m) => sealed(m.crossCaster)),
  'bent-and-moved': () => import('./kinds/bent-and-moved.ts').then((m) => sealed(m.bentAndMoved)),
  'find-what-moved': () =>
    import('./kinds/find-what-moved.ts').then((m) => sealed(m.findWhatMoved)),
  'subframe-shift': () => import('./kinds/subframe-shift.ts').then((m) => sealed(m.subframeShift)),
  'drive-moment': () => import('./kinds/drive-moment.ts').then((m) => sealed(m.driveMoment)),
  'kerb-moment': () => import('./kinds/kerb-moment.ts').then((m) => sealed(m.kerbMoment)),
  'shaft-torque': () => import('./kinds/shaft-torque.ts').then((m) => sealed(m.shaftTorque)),
  'lever-by-case': () => import('./kinds/lever-by-case.ts').then((m) => sealed(m.leverByCase)),
  'brake-moment': () => import('./kinds/brake-moment.ts').then((m) => sealed(m.brakeMoment)),
  'brake-force-moved': () =>
    import('./kinds/brake-force-moved.ts').then((m) => sealed(m.brakeForceMoved)),
  'marked-point': () => import('./kinds/marked-point.ts').then((m) => sealed(m.markedPoint)),
  'order-by-moment': () =>
    import('./kinds/order-by-moment.ts').then((m) => sealed(m.orderByMoment)),
  'one-pedal': () => import('./kinds/one-pedal.ts').then((m) => sealed(m.onePedal)),
  'rod-force-from-brake': () =>
    import('./kinds/rod-force-from-brake.ts').then((m) => sealed(m.rodForceFromBrake)),
  'rim-force-from-rod': () =>
    import('./kinds/rim-force-from-rod.ts').then((m) => sealed(m.rimForceFromRod)),
  'scrub-for-rim-force': () =>
    import('./kinds/scrub-for-rim-force.ts').then((m) => sealed(m.scrubForRimForce)),
  'net-rack-from-brakes': () =>
    import('./kinds/net-rack-from-brakes.ts').then((m) => sealed(m.netRackFromBrakes)),
  'yaw-and-steering': () =>
    import('./kinds/yaw-and-steering.ts').then((m) => sealed(m.yawAndSteering)),
  'sense-of-two-brakes': () =>
    import('./kinds/sense-of-two-brakes.ts').then((m) => sealed(m.senseOfTwoBrakes)),
  'spacer-that-flips': () =>
    import('./kinds/spacer-that-flips.ts').then((m) => sealed(m.spacerThatFlips)),
  'unequal-shafts': () => import('./kinds/unequal-shafts.ts').then((m) => sealed(m.unequalShafts)),
  'brake-difference-from-rim': () =>
    import('./kinds/brake-difference-from-rim.ts').then((m) => sealed(m.brakeDifferenceFromRim)),
  'side-force-moment': () =>
    import('./kinds/side-force-moment.ts').then((m) => sealed(m.sideForceMoment)),
  'trail-from-moments': () =>
    import('./kinds/trail-from-moments.ts').then((m) => sealed(m.trailFromMoments)),
  'load-left-right': () =>
    import('./kinds/load-left-right.ts').then((m) => sealed(m.loadLeftRight)),
  'self-return-on-lock': () =>
    import('./kinds/self-return-on-lock.ts').then((m) => sealed(m.selfReturnOnLock)),
  'parking-at-the-rim': () =>
    import('./kinds/parking-at-the-rim.ts').then((m) => sealed(m.parkingAtTheRim)),
  'pressure-centre-spread': () =>
    import('./kinds/pressure-centre-spread.ts').then((m) => sealed(m.pressureCentreSpread)),
  'row-loads': () => import('./kinds/row-loads.ts').then((m) => sealed(m.rowLoads)),
  'spacer-row-loads': () =>
    import('./kinds/spacer-row-loads.ts').then((m) => sealed(m.spacerRowLoads)),
  'spacer-for-row-load': () =>
    import('./kinds/spacer-for-row-load.ts').then((m) => sealed(m.spacerForRowLoad)),
  'set-load-line': () => import('./kinds/set-load-line.ts').then((m) => sealed(m.setLoadLine)),
  'tilt-in-a-turn': () => import('./kinds/tilt-in-a-turn.ts').then((m) => sealed(m.tiltInATurn)),
  'row-loads-in-a-turn': () =>
    import('./kinds/row-loads-in-a-turn.ts').then((m) => sealed(m.rowLoadsInATurn)),
  'order-row-loads': () =>
    import('./kinds/order-row-loads.ts').then((m) => sealed(m.orderRowLoads)),
  'thrust-through-rows': () =>
    import('./kinds/thrust-through-rows.ts').then((m) => sealed(m.thrustThroughRows)),
  'side-force-that-empties': () =>
    import('./kinds/side-force-that-empties.ts').then((m) => sealed(m.sideForceThatEmpties)),
  'life-from-load': () => import('./kinds/life-from-load.ts').then((m) => sealed(m.lifeFromLoad)),
  'life-left': () => import('./kinds/life-left.ts').then((m) => sealed(m.lifeLeft)),
  'read-life-chart': () =>
    import('./kinds/read-life-chart.ts').then((m) => sealed(m.readLifeChart)),
  'duty-cycle-life': () =>
    import('./kinds/duty-cycle-life.ts').then((m) => sealed(m.dutyCycleLife)),
  'two-rows-life': () => import('./kinds/two-rows-life.ts').then((m) => sealed(m.twoRowsLife)),
  'spacer-row-life': () =>
    import('./kinds/spacer-row-life.ts').then((m) => sealed(m.spacerRowLife)),
  'load-for-life': () => import('./kinds/load-for-life.ts').then((m) => sealed(m.loadForLife)),
  'spacer-and-inset': () =>
    import('./kinds/spacer-and-inset.ts').then((m) => sealed(m.spacerAndInset)),
  'order-changes': () => import('./kinds/order-changes.ts').then((m) => sealed(m.orderChanges)),
  'wider-rim': () => import('./kinds/wider-rim.ts').then((m) => sealed(m.widerRim)),
  'spacer-moments': () => import('./kinds/spacer-moments.ts').then((m) => sealed(m.spacerMoments)),
  'spacer-rows': () => import('./kinds/spacer-rows.ts').then((m) => sealed(m.spacerRows)),
  'inset-for-clearance': () =>
    import('./kinds/inset-for-clearance.ts').then((m) => sealed(m.insetForClearance)),
  'speed-on-other-tyre': () =>
    import('./kinds/speed-on-other-tyre.ts').then((m) => sealed(m.speedOnOtherTyre)),
  'taller-tyre': () => import('./kinds/taller-tyre.ts').then((m) => sealed(m.tallerTyre)),
  'camber-at-carrier': () =>
    import('./kinds/camber-at-carrier.ts').then((m) => sealed(m.camberAtCarrier)),
  'diameter-for-dial': () =>
    import('./kinds/diameter-for-dial.ts').then((m) => sealed(m.diameterForDial)),
  'thread-behind-spacer': () =>
    import('./kinds/thread-behind-spacer.ts').then((m) => sealed(m.threadBehindSpacer)),
  'turns-of-a-nut': () => import('./kinds/turns-of-a-nut.ts').then((m) => sealed(m.turnsOfANut)),
  'clamp-from-torque': () =>
    import('./kinds/clamp-from-torque.ts').then((m) => sealed(m.clampFromTorque)),
  'clamp-for-a-stop': () =>
    import('./kinds/clamp-for-a-stop.ts').then((m) => sealed(m.clampForAStop)),
  'torque-for-least-clamp': () =>
    import('./kinds/torque-for-least-clamp.ts').then((m) => sealed(m.torqueForLeastClamp)),
  'camber-by-plumb-line': () =>
    import('./kinds/camber-by-plumb-line.ts').then((m) => sealed(m.camberByPlumbLine)),
  'inset-by-straightedge': () =>
    import('./kinds/inset-by-straightedge.ts').then((m) => sealed(m.insetByStraightedge)),
  'scrub-from-readings': () =>
    import('./kinds/scrub-from-readings.ts').then((m) => sealed(m.scrubFromReadings)),
  'doubt-of-scrub': () => import('./kinds/doubt-of-scrub.ts').then((m) => sealed(m.doubtOfScrub)),
  'reading-for-a-known-sign': () =>
    import('./kinds/reading-for-a-known-sign.ts').then((m) => sealed(m.readingForAKnownSign)),
  'case-van-tie-rod': () =>
    import('./kinds/case-van-tie-rod.ts').then((m) => sealed(m.caseVanTieRod)),
  'case-row-life': () => import('./kinds/case-row-life.ts').then((m) => sealed(m.caseRowLife)),
  'case-kerb-spacer': () =>
    import('./kinds/case-kerb-spacer.ts').then((m) => sealed(m.caseKerbSpacer)),
} as const satisfies Record<string, () => Promise<ExerciseKind>>;

export type KindId = keyof typeof LOADERS;

export const KIND_IDS = Object.keys(LOADERS) as readonly KindId[];

export const isKindId = (id: string): id is KindId => Object.hasOwn(LOADERS, id);

export const loadKind = (id: KindId): Promise<ExerciseKind> => LOADERS[id]();

export const loadKinds = (ids: readonly KindId[] = KIND_IDS): Promise<readonly ExerciseKind[]> =>
  Promise.all(ids.map(loadKind));

function sealed<Item extends object>(written: Kind<Item>): ExerciseKind {
  const kind = evenKind(written);
  const { id, version, title, lesson, level } = kind;
  return {
    id,
    version,
    title,
    lesson,
    level,
    asks: kind.parts.map((part) => part.quantity.name),
    partIds: kind.parts.map((part) => part.id),
    labels: kind.parts.map((part) => part.label),
    exercise: (seed) => drawExercise(kind, seed),
  };
}
