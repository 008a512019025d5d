import type { Action } from '#core/action.ts';
import { contactCentre, type Corner } from '#core/corner.ts';
import { freeBodies, onCarrier, type FreeBodies } from '#core/free-bodies.ts';
import { movedTo, opposite } from '#core/moved-action.ts';
import { along, length, NOTHING, vector, type Vector } from '#core/vector.ts';
import { shaftLoad } from '../corner/loads.ts';
import type { Setting } from '../setting.ts';
import { BODIES_CASES, type BodiesCase } from './cases.ts';

/** What one body does to another, with the words that stand beside its arrow. */
export interface Deed {
  readonly key: string;
  readonly by: string;
  readonly on: string;
  /** The body that it is done to: in whose picture it is drawn. */
  readonly body: 'wheel' | 'carrier';
  readonly kind: 'force' | 'torque';
  readonly action: Action;
  /** The name that it shares with what comes back for it, where that is drawn too. */
  readonly pair?: 'bearing' | 'brake';
  /** Where it acts, as words after a size. A torque acts nowhere in particular. */
  readonly where: string;
}

/** How steeply an edge pushes, in radians above level: one about a third of the wheel's radius high. */
export const EDGE_ANGLE = 0.7;

const AT_ROAD = 'at the road';
const AT_CENTRE = 'at the wheel centre';

/** Everything that is done to wheel and carrier along the car, the wheel first. Nothing without a load. */
export function deedsOf(corner: Corner, setting: Setting, which: BodiesCase): readonly Deed[] {
  if (setting[BODIES_CASES[which].load] === 0) return [];
  const bodies = bodiesUnder(corner, setting, which);
  const { bearing, pads, shaft } = bodies;
  const inBrake = { kind: 'torque', pair: 'brake', where: '' } as const;
  const inBearing = { kind: 'force', pair: 'bearing', where: AT_CENTRE } as const;
  const onWheel = { body: 'wheel' } as const;
  const onCarrier = { body: 'carrier' } as const;
  const deeds: readonly (Deed | undefined)[] = [
    ...onTyre(corner, bodies, which),
    shaft && {
      key: 'shaft',
      by: 'shaft',
      on: 'hub',
      ...onWheel,
      kind: 'torque',
      action: shaft,
      where: '',
    },
    pads && { key: 'pads', by: 'pads', on: 'disc', ...onWheel, action: pads, ...inBrake },
    { key: 'held', by: 'carrier', on: 'wheel', ...onWheel, action: bearing, ...inBearing },
    {
      key: 'felt',
      by: 'wheel',
      on: 'carrier',
      ...onCarrier,
      action: opposite(bearing),
      ...inBearing,
    },
    pads && {
      key: 'dragged',
      by: 'disc',
      on: 'pads',
      ...onCarrier,
      action: opposite(pads),
      ...inBrake,
    },
  ];
  return deeds.filter((deed) => deed !== undefined);
}

/** What the carrier feels of a case, counted at the wheel centre. */
export const feltAtCentre = (corner: Corner, setting: Setting, which: BodiesCase): Action =>
  onCarrier(bodiesUnder(corner, setting, which));

function bodiesUnder(corner: Corner, setting: Setting, which: BodiesCase): FreeBodies {
  switch (which) {
    case 'brake':
      return freeBodies(corner, { kind: 'brake-on-carrier', force: setting.brake });
    case 'shaft':
      return freeBodies(corner, shaftLoad(setting, corner));
    case 'edge': {
      // The load is the level part of the push; an edge lower than the wheel centre pushes upward as well.
      const push = vector(-setting.blow, 0, setting.blow * Math.tan(EDGE_ANGLE));
      return freeBodies(corner, { kind: 'impact', force: push });
    }
    case 'rolling':
      return freeBodies(corner, { kind: 'impact', force: vector(-setting.drag, 0, 0) });
  }
}

/** The push of the road or of an edge; on a rolling wheel with the torque of a wheel load that sits ahead of the centre. */
function onTyre(corner: Corner, { tyre }: FreeBodies, which: BodiesCase): Deed[] {
  const push = { key: 'tyre', on: 'tyre', body: 'wheel', kind: 'force' } as const;
  switch (which) {
    case 'brake':
    case 'shaft':
      return [{ ...push, by: 'road', action: tyre, where: AT_ROAD }];
    case 'edge': {
      const action = { ...tyre, point: touching(corner, tyre.force) };
      return [{ ...push, by: 'edge', action, where: 'and upward as well' }];
    }
    case 'rolling': {
      const atRoad = movedTo(tyre, contactCentre(corner));
      return [
        { ...push, by: 'road', action: { ...atRoad, couple: NOTHING }, where: AT_ROAD },
        {
          key: 'load',
          by: 'load ahead',
          on: 'tyre',
          body: 'wheel',
          kind: 'torque',
          action: { ...atRoad, force: NOTHING },
          where: '',
        },
      ];
    }
  }
}

/** Where an edge touches the tyre: its push points from there to the wheel centre. */
const touching = ({ wheelCentre, loadedRadius }: Corner, push: Vector): Vector =>
  along(wheelCentre, -loadedRadius / length(push), push);
