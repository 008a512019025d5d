import fontUrl from '$lib/ui/fonts/figures.woff2?url';
import { standaloneDrawing, type PicturePart } from './standalone-drawing';
import { standaloneTable } from './standalone-table';

const SVG = 'http://www.w3.org/2000/svg';
const WIDTH = 520;
const GAP = 10;
const LINE = 22;

/** A picture that stands by itself. */
export interface Picture {
  /** The whole file. */
  readonly text: string;
  readonly width: number;
  readonly height: number;
}

/**
 * All drawings of a figure in one SVG, one below another, with what they show in words and a line about what they are
 * of. It needs nothing from elsewhere: looks are attributes, and the typeface is in it, with others to fall back on.
 */
export async function pictureOf(figure: HTMLElement, caption: string): Promise<Picture> {
  const shown = [...figure.querySelectorAll('svg[role=group], table[data-figure]')];
  const parts = shown
    .filter((one) => one.getBoundingClientRect().width > 0)
    .map((one) =>
      one instanceof SVGSVGElement
        ? standaloneDrawing(one)
        : standaloneTable(one as HTMLTableElement),
    );
  const style = getComputedStyle(shown[0] ?? figure);
  const svg = document.createElementNS(SVG, 'svg');
  let height = GAP;
  const seats = parts.map((part) => {
    const own = (part.height * WIDTH) / part.width;
    const seat = { part, y: height, height: own };
    height += own + GAP;
    return seat;
  });
  height = Math.ceil(height + LINE);
  const width = WIDTH + 2 * GAP;
  for (const [name, value] of Object.entries({
    xmlns: SVG,
    width: String(width),
    height: String(height),
    viewBox: `0 0 ${width} ${height}`,
    role: 'img',
    'aria-labelledby': 'title words',
  }))
    svg.setAttribute(name, value);
  said(svg, 'title', 'title', parts.map(({ title }) => title).join('; '));
  said(svg, 'desc', 'words', [...parts.map(describing), caption].join(' '));
  said(svg, 'style', 'typeface', await typeface());
  const paper = document.createElementNS(SVG, 'rect');
  paper.setAttribute('width', String(width));
  paper.setAttribute('height', String(height));
  paper.setAttribute('fill', style.backgroundColor);
  svg.append(paper);
  for (const { part, y, height: own } of seats) {
    const seat = { x: GAP, y, width: WIDTH, height: own };
    for (const [name, value] of Object.entries(seat)) part.svg.setAttribute(name, String(value));
    part.svg.setAttribute('viewBox', `0 0 ${part.width} ${part.height}`);
    svg.append(part.svg);
  }
  const line = document.createElementNS(SVG, 'text');
  for (const [name, value] of Object.entries({
    x: String(GAP),
    y: String(height - 10),
    fill: getComputedStyle(figure).color,
    'font-family': getComputedStyle(figure).fontFamily,
    'font-size': '12px',
  }))
    line.setAttribute(name, value);
  line.textContent = caption;
  svg.append(line);
  return { text: new XMLSerializer().serializeToString(svg), width, height };
}

const describing = ({ description }: PicturePart): string => description;

function said(svg: SVGSVGElement, name: string, id: string, text: string): void {
  const element = document.createElementNS(SVG, name);
  element.id = id;
  element.textContent = text;
  svg.append(element);
}

/** The figures’ typeface as a style that carries it along; empty where it cannot be fetched, and others take its place. */
async function typeface(): Promise<string> {
  try {
    const font = await (await fetch(fontUrl)).blob();
    const url = await new Promise<string>((resolve, reject) => {
      const reader = new FileReader();
      reader.onload = () => {
        resolve(reader.result as string);
      };
      reader.onerror = reject;
      reader.readAsDataURL(font);
    });
    return `@font-face{font-family:'Knucklebook Figures';font-weight:400 700;src:url(${url}) format('woff2')}`;
  } catch {
    return '';
  }
}
