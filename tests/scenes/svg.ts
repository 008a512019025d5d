import type { Drawing } from '#scenes/paper/drawn.ts';
import type { Grip, Shape } from '#scenes/paper/shapes.ts';

/** As much of the site's manner of drawing as it takes to see what is meant. */
const STYLE = `<style>
path, circle { fill: none; stroke: currentcolor; stroke-width: 1.6 }
.axis { color: #ab0edd } .wheel { color: #334766 } .force { color: #b04c16 }
.lever { color: #117f60 } .bearing { color: #3f3014 }
.thin, .chain, .hidden { stroke-width: 0.9 } .heavy-chain { stroke-width: 2.4 }
.chain { stroke-dasharray: 16 4 2 4 } .heavy-chain { stroke-dasharray: 22 5 3 5 }
.hidden { stroke-dasharray: 5 3 }
.filled { fill: currentcolor; fill-opacity: 0.1 } .none { stroke: none; fill-opacity: 1 }
.before { opacity: 0.6 }
text { font: 13px sans-serif; fill: currentcolor; text-anchor: middle; dominant-baseline: central }
.strong { font-weight: 700 }
</style>`;

/** A drawing as a picture file that browsers show, one line for each shape. */
export function svgOf({ title, description, frame, shapes, grips }: Drawing): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${frame.width} ${frame.height}">`,
    `<title>${title}</title>`,
    `<desc>${description}</desc>`,
    STYLE,
    ...shapes.map(element),
    ...grips.map(circle),
    '</svg>',
    '',
  ].join('\n');
}

function element(shape: Shape): string {
  const { kind, key, role, before } = shape;
  const classes = [
    role,
    ...(kind === 'path' ? [shape.line, ...(shape.filled ? ['filled'] : [])] : []),
    ...(kind === 'text' && shape.strong ? ['strong'] : []),
    ...(before ? ['before'] : []),
  ].join(' ');
  return kind === 'path'
    ? `<path id="${key}" class="${classes}" d="${shape.d}"/>`
    : `<text id="${key}" class="${classes}" x="${shape.x}" y="${shape.y}">${shape.text}</text>`;
}

const circle = ({ key, x, y }: Grip): string =>
  `<circle id="${key}" class="grip" cx="${x}" cy="${y}" r="12"/>`;
