/** What a drawing's looks are made of, with what a viewer takes for granted. */
const PROPERTIES = {
  fill: 'rgb(0, 0, 0)',
  stroke: 'none',
  'stroke-width': '1px',
  'stroke-dasharray': 'none',
  'stroke-linejoin': 'miter',
  'stroke-linecap': 'butt',
  opacity: '1',
  'paint-order': 'normal',
} as const;

const OF_TEXT = {
  'font-family': '',
  'font-size': '',
  'font-weight': '400',
  'text-anchor': 'start',
} as const;

/** Middles words on their place in viewers that know no other way. */
const HALF_OF_LETTERS = '0.35em';

/**
 * Copies the looks that an element has on the page to its copy, as attributes that every viewer of SVG knows: no
 * style sheet, no variables, no mixed colours.
 */
export function plainStyle(element: SVGElement, copy: SVGElement): void {
  const style = getComputedStyle(element);
  const isText = element instanceof SVGTextElement;
  for (const [name, usual] of Object.entries(isText ? { ...PROPERTIES, ...OF_TEXT } : PROPERTIES)) {
    const value = style.getPropertyValue(name);
    if (value === usual) continue;
    const { colour, opacity } = plainColour(value);
    copy.setAttribute(name, colour);
    if (opacity !== '1') copy.setAttribute(`${name}-opacity`, opacity);
  }
  if (isText && style.dominantBaseline === 'central') copy.setAttribute('dy', HALF_OF_LETTERS);
  for (const name of copy.getAttributeNames())
    if (name === 'class' || name.startsWith('data-')) copy.removeAttribute(name);
}

/**
 * A colour as every viewer reads it, and how far it covers: `color(srgb 1 0 0 / 0.5)` becomes `rgb(255, 0, 0)` and
 * 0.5. Whatever is no colour stays as it is.
 */
export function plainColour(value: string): { readonly colour: string; readonly opacity: string } {
  const mixed = /^color\(srgb ([\d.e-]+) ([\d.e-]+) ([\d.e-]+)(?: \/ ([\d.e-]+))?\)$/.exec(value);
  if (mixed) {
    const [, r = '', g = '', b = '', opacity = '1'] = mixed;
    return { colour: `rgb(${[r, g, b].map(byte).join(', ')})`, opacity };
  }
  const clear = /^rgba\((\d+, \d+, \d+), ([\d.]+)\)$/.exec(value);
  if (clear) return { colour: `rgb(${clear[1] ?? ''})`, opacity: clear[2] ?? '1' };
  return { colour: value, opacity: '1' };
}

const byte = (share: string): number => Math.round(255 * Math.min(1, Math.max(0, Number(share))));
