import type { Component } from 'svelte';
import type { Picture, SheetPicture } from '#exercises/pictures/picture.ts';

interface Props {
  readonly picture: Exclude<Picture, SheetPicture>;
  across_mm?: number | undefined;
}

export type PictureDrawing = Component<Props, object, 'across_mm'>;

/** Once it has been fetched: code alone, so that everybody whom a server serves may share it. */
let here: PictureDrawing | undefined;

/** What draws the pictures of exercises, where it has been fetched before. */
export const drawingAtHand = (): PictureDrawing | undefined => here;

/** Fetches what draws pictures: pages without pictures do without. */
export async function fetchDrawing(): Promise<PictureDrawing> {
  here = (await import('./PictureDrawing.svelte')).default;
  return here;
}
