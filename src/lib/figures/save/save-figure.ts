import { handOver } from '$lib/ui/hand-over';
import { pictureOf, type Picture } from './picture';

/** Dots of a PNG for each unit of the drawing: sharp on paper. */
const DENSITY = 3;

/**
 * Saves a figure as a file, as it is shown.
 *
 * @param figure the element with its drawings
 * @param name of the file, without ending
 * @param caption what it is of, set below
 * @throws Error where the browser cannot make the picture
 */
export async function saveFigure(
  figure: HTMLElement,
  form: 'svg' | 'png',
  name: string,
  caption: string,
): Promise<void> {
  const picture = await pictureOf(figure, caption);
  const file =
    form === 'png' ? await painted(picture) : new Blob([picture.text], { type: 'image/svg+xml' });
  handOver(file, `${name}.${form}`);
}

async function painted({ text, width, height }: Picture): Promise<Blob> {
  const image = new Image();
  // As an address of its own: what is read from memory would be held to the page’s policy, which lets no style in.
  image.src = `data:image/svg+xml,${encodeURIComponent(text)}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = DENSITY * width;
  canvas.height = DENSITY * height;
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  const blob = await new Promise<Blob | null>((resolve) => {
    canvas.toBlob(resolve, 'image/png');
  });
  if (!blob) throw new Error('the picture could not be painted');
  return blob;
}
