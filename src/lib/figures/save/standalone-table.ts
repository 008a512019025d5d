import { capital } from '#core/capital.ts';
import { plainStyle } from './plain-style';
import type { PicturePart } from './standalone-drawing';

const SVG = 'http://www.w3.org/2000/svg';

/** A table of the page as a drawing: its words where they stand, its rules, and the scales within it. */
export function standaloneTable(table: HTMLTableElement): PicturePart {
  const { left, top, width, height } = table.getBoundingClientRect();
  const svg = document.createElementNS(SVG, 'svg');
  for (const row of table.querySelectorAll('tr')) {
    const { top: at } = row.getBoundingClientRect();
    const rule = made(svg, 'path', { d: `M0 ${rounded(at - top)}H${rounded(width)}` });
    rule.setAttribute('stroke', getComputedStyle(table).borderTopColor);
  }
  for (const scale of table.querySelectorAll('svg')) {
    const box = scale.getBoundingClientRect();
    if (box.width === 0) continue;
    const copy = scale.cloneNode(true) as SVGSVGElement;
    const copies = copy.querySelectorAll<SVGElement>('*');
    scale.querySelectorAll<SVGElement>('*').forEach((original, i) => {
      const one = copies[i];
      if (one) plainStyle(original, one);
    });
    for (const name of ['class', 'aria-hidden']) copy.removeAttribute(name);
    put(copy, { x: box.left - left, y: box.top - top, width: box.width, height: box.height });
    svg.append(copy);
  }
  for (const word of shownLines(table)) {
    const { parent, text, box } = word;
    const style = getComputedStyle(parent);
    const line = made(svg, 'text', {
      x: rounded(box.left - left),
      y: rounded((box.top + box.bottom) / 2 - top),
      dy: '0.35em',
      fill: style.color,
      'font-family': style.fontFamily,
      'font-size': style.fontSize,
      'font-weight': style.fontWeight,
    });
    line.textContent = text;
  }
  const caption = table.caption?.textContent.replaceAll(/\s+/g, ' ').trim() ?? '';
  return { svg, width, height, title: caption, description: wordsOf(table) };
}

/** Every line of words that is to be seen, with where it stands. */
function* shownLines(table: HTMLTableElement) {
  const walker = document.createTreeWalker(table, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const parent = node.parentElement;
    const text = (node.textContent ?? '').replaceAll(/\s+/g, ' ').trim();
    if (text === '' || !parent?.checkVisibility() || parent.closest('.unseen, svg')) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    const [box] = range.getClientRects();
    if (box) yield { parent, text: cased(text, parent), box };
  }
}

/** As a style may show it: with a capital. */
const cased = (text: string, parent: Element): string =>
  parent.matches('.name') ? capital(text) : text;

/** The table row by row, for who cannot see it. */
const wordsOf = (table: HTMLTableElement): string =>
  [...table.querySelectorAll('tbody tr')]
    .map((row) =>
      [...row.querySelectorAll('.name, td .unseen')]
        .map((cell) => cell.textContent.trim())
        .filter((text) => text !== '')
        .join(', '),
    )
    .join('. ');

function made(parent: Element, name: string, attributes: Readonly<Record<string, string>>) {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  parent.append(element);
  return element;
}

function put(element: Element, place: Readonly<Record<string, number>>): void {
  for (const [key, value] of Object.entries(place)) element.setAttribute(key, rounded(value));
}

const rounded = (value: number): string => String(Math.round(100 * value) / 100);
