import type { QuantityId } from '#core/quantities.ts';
import { bearingScene } from '../bearing/bearing-scene.ts';
import {
  bearingSizes,
  contactDirection,
  elementCentre,
  placingOn,
  ROW_SIGNS,
} from '../bearing/bearing-sizes.ts';
import { standing } from '../corner/standing.ts';
import type { Mark } from '../marks.ts';
import { AS_IT_STANDS } from '../setting.ts';
import { label, type InputDrawing, type InputLook } from './input-drawing.ts';

export type BearingInput = 'loadLineOffset_mm' | 'spread_mm' | 'rowRating_N' | 'contactAngle_deg';

const MEASURES: Readonly<Record<BearingInput, readonly QuantityId[]>> = {
  loadLineOffset_mm: ['loadLineOffset'],
  spread_mm: ['pressureCentreSpread'],
  rowRating_N: [],
  contactAngle_deg: [],
};

/** The wheel bearing cut open along its spin axis, seen from the front. */
export function bearingInput(id: BearingInput, look: InputLook): InputDrawing {
  const { model, units } = look;
  const { window, marks } = bearingScene(model, AS_IT_STANDS, {
    view: 'section',
    duty: 'straight',
    measures: MEASURES[id],
    named: false,
    handles: [],
    units,
    guesses: {},
  });
  return {
    seen: 'The wheel bearing cut open along its spin axis, seen from the front.',
    window,
    marks: [...marks, ...besides(id, look)],
  };
}

/** What the drawing of a bearing does not dimension itself. */
function besides(id: BearingInput, { model, text }: InputLook): Mark[] {
  const sizes = bearingSizes(standing(model, AS_IT_STANDS), model.anatomy);
  const place = placingOn(model.corner.side);
  const row = ROW_SIGNS.inboard;
  const [out, up] = elementCentre(sizes, row, 1);
  switch (id) {
    case 'contactAngle_deg': {
      const [stepOut, stepUp] = contactDirection(sizes, row, 1);
      return [
        {
          kind: 'angle',
          key: 'input',
          role: 'guide',
          vertex: place(row * sizes.halfSpread, 0),
          towards: place(out + 30 * stepOut, up + 30 * stepUp),
          text,
        },
      ];
    }
    case 'rowRating_N':
      return [label('input', place(out, up + 36), `one row: C = ${text}`, 'bearing')];
    default:
      return [];
  }
}
