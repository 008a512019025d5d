import type { Picture, SheetPicture } from '#exercises/pictures/picture.ts';
import { axlePicture } from '#scenes/exercise/axle-picture.ts';
import { bearingPicture } from '#scenes/exercise/bearing-picture.ts';
import { chartPicture } from '#scenes/exercise/chart-picture.ts';
import { cornerPicture } from '#scenes/exercise/corner-picture.ts';
import { drawn, type Drawing } from '#scenes/paper/drawn.ts';

export type PictureDrawing = Pick<Drawing, 'title' | 'description' | 'shapes'> & {
  /** The scale is in units of the paper for each millimetre of the car. */
  readonly frame: { readonly width: number; readonly height: number; readonly scale?: number };
};

/** Joins what a kind names with the scene that draws it. A sheet is no drawing but a table. */
export function drawingOf(picture: Exclude<Picture, SheetPicture>): PictureDrawing {
  switch (picture.scene) {
    case 'corner':
      return drawn(cornerPicture(picture));
    case 'bearing':
      return drawn(bearingPicture(picture));
    case 'axle':
      return drawn(axlePicture(picture));
    case 'chart':
      return chartPicture(picture);
  }
}
