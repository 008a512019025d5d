import type { FixingDocument } from '#core/judgement/bench-document.ts';
import { INPUTS, type InputId } from '#core/judgement/inputs.ts';

/** What is measured on a bolt or stud besides its reach. */
export type FastenerInput = keyof Pick<
  FixingDocument,
  'thread_mm' | 'pitch_mm' | 'depth_mm' | 'wheelThickness_mm'
>;

/** Everything that the bench asks to be measured, and has a picture of. */
export type PicturedInput = InputId | FastenerInput;

/** How a thing to be measured is called, and what it is read with. */
interface Asked {
  readonly name: string;
  readonly tool: string;
}

const FASTENER: Readonly<Record<FastenerInput, Asked>> = {
  thread_mm: { name: 'thread diameter', tool: 'calliper, or the number after the M on its head' },
  pitch_mm: { name: 'thread pitch', tool: 'rule along ten turns, or a thread gauge' },
  depth_mm: {
    name: 'length of the counterpart’s thread',
    tool: 'calliper, or a wire with a mark on it',
  },
  wheelThickness_mm: {
    name: 'wheel between seat and hub face',
    tool: 'calliper through the hole, the wheel off',
  },
};

const isFastenerInput = (id: PicturedInput): id is FastenerInput => Object.hasOwn(FASTENER, id);

export const askedOf = (id: PicturedInput): Asked =>
  isFastenerInput(id) ? FASTENER[id] : INPUTS[id];

/** From where to where each is measured, as it goes on after its name. */
export const FROM_WHERE: Readonly<Record<PicturedInput, string>> = {
  hubUp_mm: 'from the floor up to the middle of the hub',
  halfRim_mm:
    'from the middle of the rim to a straightedge against its outer edge: half of what is measured over both edges',
  rimWidth_in: 'from the inside of one flange to the inside of the other, where the beads sit',
  inset_mm: 'from the middle of the rim to the face that lies against the hub',
  track_mm: 'from the middle of one front tread, along the floor, to the middle of the other',
  rollingRatio:
    'from a mark on the tyre where it touches the floor to where it touches again, one turn on, over the tyre’s outer diameter',
  camber_deg: 'from upright to the plane of the wheel, seen from the front',
  toe_deg: 'from straight ahead to the plane of the wheel, seen from above',
  caster_deg: 'from upright to the steering axis, seen from the side',
  inclination_deg: 'from upright to the steering axis, seen from the front',
  lowerIn_mm: 'from below the rim’s outer edge, along the floor, to below the lower pivot',
  lowerUp_mm: 'from the floor up to the lower pivot',
  lowerAhead_mm: 'from below the wheel centre, along the floor, to below the lower pivot',
  upperIn_mm: 'from below the rim’s outer edge, along the floor, to below the upper pivot',
  upperUp_mm: 'from the floor up to the upper pivot',
  upperAhead_mm: 'from below the wheel centre, along the floor, to below the upper pivot',
  rodAhead_mm: 'from the lower pivot, along the car, to the joint at the tie rod’s outer end',
  travelPerTurn_mm:
    'from where the rack’s end stands to where it stands after one whole turn of the steering wheel',
  rimDiameter_mm: 'across the steering wheel, from outside to outside',
  assist:
    'the pull at the steering wheel’s rim that turns it with the engine off, over that with the engine running',
  wheelLoad_N: 'what the scale under one front wheel shows, the other wheels as high as this one',
  loadLineOffset_mm:
    'from the middle between the two rows to the wheel’s centre plane, the load line',
  spread_mm: 'from where one row’s contact lines meet the spin axis to where those of the other do',
  rowRating_N: 'the load C that the catalogue names for one row of the two',
  contactAngle_deg: 'from square to the spin axis to a row’s contact line',
  reach_mm:
    'from the wheel’s hub face for a bolt, from its seat for a stud, to the end of the thread',
  tyreMake_percent: 'a tape around the tread of each tyre, both at their pressure and without load',
  newInset_mm:
    'from a straightedge over the inner flange down to the hub face, less half of the width over both flanges, less the inset that is marked',
  camberSet_deg: 'from the camber that was to be set to the camber on the sheet after the work',
  crossCamber_deg:
    'from upright to the plane of each wheel, seen from the front: the left angle less the right one',
  crossCaster_deg:
    'from upright to the steering axis of each wheel, seen from the side: the left angle less the right one',
  crossInclination_deg:
    'from upright to the steering axis of each wheel, seen from the front: the left angle less the right one',
  thread_mm: 'across the crests of the thread',
  pitch_mm: 'from one crest to the next: along ten turns, then divided by ten',
  depth_mm: 'from one end of the thread in the hub or in the nut to the other',
  wheelThickness_mm: 'from the seat of the fastener to the face that lies against the hub',
};
