import { path } from '../corner/sketch.ts';
import type { Mark, Scene } from '../marks.ts';
import { point } from '../plane.ts';

interface AxleForce {
  readonly says: string;
  /** Positive forward. */
  readonly ahead: number;
}

/** Both front wheels from above with a force at each. */
export interface AxlePicture {
  /** How far each axis meets the road inboard of its wheel's middle; negative outboard. */
  readonly scrub_mm: number;
  readonly left: AxleForce;
  readonly right: AxleForce;
}

const HALF_TRACK = 205;
const HALF_LENGTH = 120;
const HALF_WIDTH = 42;
/** The longest arrow, in millimetres of the drawing, and how much the scrub radius is stretched to be seen. */
const LONGEST = 150;
const STRETCH = 2;

/** The car's front is at the top, as the driver looks ahead: left is at the left. */
export function axlePicture({ scrub_mm, left, right }: AxlePicture): Scene {
  const most = Math.max(Math.abs(left.ahead), Math.abs(right.ahead));
  const wheel = (key: string, out: 1 | -1, { says, ahead }: AxleForce): readonly Mark[] => {
    const across = out * HALF_TRACK;
    const axis = point(across - out * STRETCH * scrub_mm, 0);
    const tip = point(across, (LONGEST * ahead) / most);
    return [
      path(
        [
          point(across - HALF_WIDTH, HALF_LENGTH),
          point(across + HALF_WIDTH, HALF_LENGTH),
          point(across + HALF_WIDTH, -HALF_LENGTH),
          point(across - HALF_WIDTH, -HALF_LENGTH),
        ],
        { key, role: 'wheel', filled: true },
      ),
      { kind: 'spot', key: `${key}-axis`, role: 'axis', at: axis, ringed: true },
      { kind: 'label', key: `${key}-axis-name`, role: 'axis', at: axis, text: 'axis' },
      { kind: 'arrow', key: `${key}-force`, role: 'force', from: point(across, 0), to: tip },
      { kind: 'label', key: `${key}-says`, role: 'force', at: tip, text: says },
    ];
  };
  return {
    title: 'Both front wheels from above',
    description: `The front of the car is at the top. Each steering axis meets the road ${scrub_mm > 0 ? 'inboard' : 'outboard'} of the middle of its tyre. The road pushes the left tyre ${way(left)} with ${left.says} and the right one ${way(right)} with ${right.says}. Forces are true to scale to one another, the distance of the axes is not.`,
    window: { centre: point(0, -20), height: 430 },
    marks: [
      { kind: 'label', key: 'front', role: 'guide', at: point(0, 165), text: 'front of the car' },
      path([point(-HALF_TRACK, 0), point(HALF_TRACK, 0)], {
        key: 'axle',
        role: 'part',
        line: 'thin',
        closed: false,
      }),
      ...wheel('left', -1, left),
      ...wheel('right', 1, right),
    ],
  };
}

const way = ({ ahead }: AxleForce): string => (ahead < 0 ? 'rearward' : 'forward');
