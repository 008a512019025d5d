import { bar, circle, path } from '../corner/sketch.ts';
import type { Mark } from '../marks.ts';
import { point } from '../plane.ts';
import { across, label, type InputDrawing, type InputLook } from './input-drawing.ts';

export type HandwheelInput = 'rimDiameter_mm' | 'assist';

/** Thickness of the rim and radius of the hub, in millimetres: drawn only. */
const RIM = 30;
const HUB = 62;

/** The steering wheel from the driver’s seat. */
export function handwheelInput(
  id: HandwheelInput,
  { model, text, units: _ }: InputLook,
): InputDrawing {
  const radius = 1000 * model.gear.rimRadius;
  const height = 2.75 * radius;
  const unit = height / 300;
  return {
    seen: 'The steering wheel from the driver’s seat.',
    window: { centre: point(id === 'assist' ? 0.35 * radius : 0, -0.12 * radius), height },
    marks: [
      ...face(radius),
      ...(id === 'assist'
        ? springBalance(radius, unit, text)
        : [
            path([point(-radius, 0), point(radius, 0)], {
              key: 'tape',
              role: 'guide',
              line: 'heavy',
              closed: false,
            }),
            label('tape', point(0, 0), 'tape'),
            across(point(-radius, 0), point(radius, 0), -radius - 24 * unit, text),
          ]),
    ],
  };
}

function face(radius: number): Mark[] {
  const inner = radius - RIM;
  const spoke = (key: string, angle: number): Mark =>
    bar(point(0, 0), point(inner * Math.cos(angle), inner * Math.sin(angle)), 14, {
      key,
      role: 'part',
      line: 'thin',
      filled: true,
    });
  return [
    circle(point(0, 0), radius, { key: 'rim', role: 'part', filled: true }),
    circle(point(0, 0), inner, { key: 'rim-inside', role: 'ground' }),
    spoke('spoke-right', 0.1),
    spoke('spoke-left', Math.PI - 0.1),
    spoke('spoke-low', -Math.PI / 2),
    circle(point(0, 0), HUB, { key: 'hub', role: 'part', filled: true }),
  ];
}

/** A spring balance hooked to the rim, pulled square to the spoke. */
function springBalance(radius: number, unit: number, text: string): Mark[] {
  const at = radius - RIM / 2;
  const box = { top: -22 * unit, bottom: -62 * unit };
  return [
    path([point(at, 0), point(at, box.top)], {
      key: 'hook',
      role: 'guide',
      line: 'thin',
      closed: false,
    }),
    path(
      [
        point(at - 7 * unit, box.top),
        point(at + 7 * unit, box.top),
        point(at + 7 * unit, box.bottom),
        point(at - 7 * unit, box.bottom),
      ],
      { key: 'balance', role: 'guide', filled: true },
    ),
    { kind: 'spot', key: 'hooked', role: 'guide', at: point(at, 0) },
    {
      kind: 'arrow',
      key: 'pull',
      role: 'force',
      from: point(at, box.bottom),
      to: point(at, box.bottom - 46 * unit),
    },
    label('balance', point(at + 10 * unit, box.top - 20 * unit), 'spring balance'),
    label('pull', point(at, box.bottom - 30 * unit), `engine off ÷ running: ${text}`, 'force'),
  ];
}
