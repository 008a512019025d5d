import type { Scene } from '../marks.ts';
import { aboveInput } from './above-input.ts';
import { axleInput } from './axle-input.ts';
import { bearingInput } from './bearing-input.ts';
import { cornerInput } from './corner-input.ts';
import { crossInput } from './cross-input.ts';
import { fastenerInput } from './fastener-input.ts';
import { askedOf, FROM_WHERE, type PicturedInput } from './from-where.ts';
import { handwheelInput } from './handwheel-input.ts';
import type { InputDrawing, InputLook } from './input-drawing.ts';
import { rollingInput, tapedTyresInput } from './tyre-input.ts';
import { lyingWheelInput } from './wheel-input.ts';

/** A picture of what is to be measured for an input: from where to where, and with what, on the car as it is entered. */
export function inputScene(id: PicturedInput, look: InputLook): Scene {
  const { seen, window, marks } = drawingOf(id, look);
  const { name, tool } = askedOf(id);
  return {
    title: `What to measure: ${name}`,
    description: `${seen} Shown: ${name}, ${FROM_WHERE[id]}: ${look.text} as it is now. Found out with: ${tool}.`,
    window,
    marks,
  };
}

function drawingOf(id: PicturedInput, look: InputLook): InputDrawing {
  switch (id) {
    case 'track_mm':
    case 'wheelLoad_N':
      return axleInput(id, look);
    case 'crossCamber_deg':
    case 'crossCaster_deg':
    case 'crossInclination_deg':
      return crossInput(id, look);
    case 'toe_deg':
    case 'rodAhead_mm':
    case 'travelPerTurn_mm':
      return aboveInput(id, look);
    case 'rimDiameter_mm':
    case 'assist':
      return handwheelInput(id, look);
    case 'rollingRatio':
      return rollingInput(look);
    case 'tyreMake_percent':
      return tapedTyresInput(look);
    case 'newInset_mm':
      return lyingWheelInput(look);
    case 'loadLineOffset_mm':
    case 'spread_mm':
    case 'rowRating_N':
    case 'contactAngle_deg':
      return bearingInput(id, look);
    case 'reach_mm':
    case 'thread_mm':
    case 'pitch_mm':
    case 'depth_mm':
    case 'wheelThickness_mm':
      return fastenerInput(id, look);
    default:
      return cornerInput(id, look);
  }
}
