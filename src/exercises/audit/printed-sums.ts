/** A term of a printed sum: `12.5 mm`, `(−3°)`, `tan 4°`, `0.2056`, `2500 N`, `730.0 N·m`. */
const UNIT = 'mm|m|°|N·m|kN|N';
const TERM = String.raw`(?:(?:tan|sin|cos) )?\(?−?[\d.]+(?:\u202f?(?:${UNIT})(?![\w·]))?\)?`;
const SUM = new RegExp(`${TERM}(?: [+−·÷] ${TERM})+ = ${TERM}`, 'g');

/** A printed sum, what stands left of its sign of equality worked out, and what stands right of it. */
interface PrintedSum {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  /** One unit of the last decimal right of it: terms and result may each have been rounded. Nothing for whole numbers. */
  readonly unit: number;
}

/** Every sum in a text, worked out from the numbers as they are printed. */
export const printedSums = (text: string): readonly PrintedSum[] =>
  [...text.matchAll(SUM)].map(([sum]) => {
    const [left = '', right = ''] = sum.split(' = ');
    const decimals = /\.(\d+)/.exec(right)?.[1]?.length;
    const unit = decimals === undefined ? 0 : 10 ** -decimals;
    return { text: sum, left: total(left), right: total(right), unit };
  });

/** Of an angle in degrees. */
const FUNCTIONS: Readonly<Record<string, (angle: number) => number>> = {
  'tan ': Math.tan,
  'sin ': Math.sin,
  'cos ': Math.cos,
};

/** Products first, then what is added and taken away. */
function total(expression: string): number {
  const [first = '', ...more] = expression.split(/ ([+−]) /);
  let sum = product(first);
  for (let i = 0; i < more.length; i += 2) {
    sum += (more[i] === '−' ? -1 : 1) * product(more[i + 1] ?? '');
  }
  return sum;
}

function product(factors: string): number {
  const [first = '', ...more] = factors.split(/ ([·÷]) /);
  let result = value(first);
  for (let i = 0; i < more.length; i += 2) {
    const factor = value(more[i + 1] ?? '');
    result = more[i] === '÷' ? result / factor : result * factor;
  }
  return result;
}

function value(term: string): number {
  const number = Number(term.replace('−', '-').replace(/[^\d.-]/g, ''));
  const named = FUNCTIONS[term.slice(0, 4)];
  return named ? named((number * Math.PI) / 180) : number;
}
