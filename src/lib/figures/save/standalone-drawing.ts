import { plainStyle } from './plain-style';

/** Part of a picture: an SVG of its own, as high as it is for the picture's width. */
export interface PicturePart {
  readonly svg: SVGSVGElement;
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly description: string;
}

/** A drawing of the page as it stands by itself: with its looks, without what can be grabbed. */
export function standaloneDrawing(drawing: SVGSVGElement): PicturePart {
  const { width, height } = drawing.viewBox.baseVal;
  const svg = drawing.cloneNode(true) as SVGSVGElement;
  const originals = drawing.querySelectorAll<SVGElement>('*');
  const copies = [...svg.querySelectorAll<SVGElement>('*')];
  originals.forEach((original, i) => {
    const copy = copies[i];
    if (copy && original.matches('path, text, circle, rect, line')) plainStyle(original, copy);
  });
  for (const left of svg.querySelectorAll('.grip, title, desc')) left.remove();
  for (const name of ['class', 'role', 'aria-labelledby', 'style']) svg.removeAttribute(name);
  for (const group of svg.querySelectorAll('[aria-hidden]')) group.removeAttribute('aria-hidden');
  return {
    svg,
    width,
    height,
    title: drawing.querySelector('title')?.textContent ?? '',
    description: drawing.querySelector('desc')?.textContent ?? '',
  };
}
