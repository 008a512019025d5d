import type { Picture, SheetPicture } from '#exercises/pictures/picture.ts';
import { axlePicture } from '#scenes/exercise/axle-picture.ts';
import { barsPicture } from '#scenes/exercise/bars-picture.ts';
import { bearingPicture } from '#scenes/exercise/bearing-picture.ts';
import { boltPicture } from '#scenes/exercise/bolt-picture.ts';
import { chartPicture } from '#scenes/exercise/chart-picture.ts';
import { contactPicture } from '#scenes/exercise/contact-picture.ts';
import { cornerPicture } from '#scenes/exercise/corner-picture.ts';
import { tyrePicture } from '#scenes/exercise/tyre-picture.ts';
import { wheelPicture } from '#scenes/exercise/wheel-picture.ts';
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
    case 'contact':
      return drawn(contactPicture(picture));
    case 'wheel':
      return drawn(wheelPicture(picture));
    case 'bolt':
      return drawn(boltPicture(picture));
    case 'tyre':
      return drawn(tyrePicture(picture));
    case 'bars':
      return drawn(barsPicture(picture));
    case 'chart':
      return chartPicture(picture);
  }
}
