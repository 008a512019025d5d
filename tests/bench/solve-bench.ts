import type { Corner } from '#core/corner.ts';
import { readCornerDocument } from '#core/document/read-corner-document.ts';
import { setUp, type CornerSetup } from '#core/document/set-up.ts';
import { solve } from '#core/document/solve.ts';
import { along, UP } from '#core/vector.ts';
import { GOOD_DOCUMENT } from '../core/document/good-document.ts';
import { coreNumbers, type CornerCalculation } from '../references/corner-numbers.ts';
import { mathjsNumbers } from '../references/mathjs-numbers.ts';
import { threeNumbers } from '../references/three-numbers.ts';
import { pairedRatio, type BenchRow, type Work } from './paired-ratio.ts';

/** Corners that differ, so that no engine can compute one of them once and for all. */
const CORNERS = 64;

/**
 * The core against the same calculation with general-purpose libraries, on corners that are ready in SI:
 * geometry straight ahead and steered, steer, lift and six moments. And the way from a parsed document to its
 * result against parsing it.
 */
export function benchSolve(): readonly BenchRow[] {
  const setup = readySetup();
  const corners = Array.from({ length: CORNERS }, (_, index) => raised(setup.corner, index));
  const loads = setup.loads ?? [];
  const round =
    (calculate: CornerCalculation): Work =>
    () => {
      let sum = 0;
      for (const corner of corners) {
        const { geometry, steered, moments } = calculate(corner, setup.rotation, loads);
        sum += geometry.trail + steered.lift + (moments[0] ?? NaN);
      }
      return sum;
    };
  const core = round(coreNumbers);
  return [
    {
      what: 'one corner with the core : with the vectors of three.js',
      ...pairedRatio(core, round(threeNumbers)),
    },
    {
      what: 'one corner with the core : with the matrices of mathjs',
      ...pairedRatio(core, round(mathjsNumbers)),
    },
    { what: 'solving a parsed document : parsing it', aim: 5, ...documentRatio() },
  ];
}

function readySetup(): CornerSetup {
  const setup = setUp(GOOD_DOCUMENT);
  if (!setup.ok) throw new Error('the document of the bench has a fault');
  return setup.value;
}

const raised = (corner: Corner, millimetres: number): Corner => ({
  ...corner,
  wheelCentre: along(corner.wheelCentre, millimetres / 1000, UP),
});

function documentRatio() {
  const text = JSON.stringify(GOOD_DOCUMENT);
  const parsed: unknown = JSON.parse(text);
  const readAndSolve = () => {
    const document = readCornerDocument(parsed);
    const result = document.ok ? solve(document.value) : document;
    return result.ok ? result.value.geometry.trail_mm : NaN;
  };
  const parse = () => Object.keys(JSON.parse(text) as object).length;
  return pairedRatio(readAndSolve, parse);
}
