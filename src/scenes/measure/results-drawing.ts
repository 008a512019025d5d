import { radians } from '#core/angle.ts';
import { numberText, sizeText, valueText, type UnitSystem } from '#core/display.ts';
import type { Finding } from '#core/own-car/findings.ts';
import { RESULT_IDS, type ResultId } from '#core/own-car/front-geometry.ts';
import { quantity } from '#core/quantities.ts';
import type { Spread } from '#core/uncertainty/spread.ts';
import { scale } from '../chart/scale.ts';
import type { Role } from '../marks.ts';
import { rounded } from '../paper/frame.ts';
import { textWidth } from '../paper/label-placement.ts';
import { plainPath, plainText } from '../paper/plain-shapes.ts';
import type { Shape } from '../paper/shapes.ts';

/** The results as bars on their scales. */
export interface ResultsDrawing {
  readonly title: string;
  readonly description: string;
  readonly frame: { readonly width: number; readonly height: number };
  readonly shapes: readonly Shape[];
}

/** What is known of each result: along the slope, and by trials. */
export type Found = Readonly<
  Record<ResultId, { readonly finding: Finding; readonly spread: Spread }>
>;

const ROW = 58;
const FRAME = { width: 400, height: ROW * RESULT_IDS.length + 10 } as const;
const [LEFT, RIGHT] = [14, FRAME.width - 14];

/** Half of each scale, and the grid that its middle lies on: metres and radians. */
const HALF: Readonly<Record<ResultId, number>> = {
  scrubRadius: 0.02,
  spindleOffset: 0.02,
  inclination: radians(4),
};

/** The ends of a scale about a value: on whole steps of a quarter of it, so that both can be written short. */
function endsAbout(id: ResultId, value: number): readonly [number, number] {
  const step = HALF[id] / 2;
  const middle = Math.round(value / step) * step;
  return [middle - HALF[id], middle + HALF[id]];
}

const ROLES: Readonly<Record<ResultId, Role>> = {
  scrubRadius: 'wheel',
  spindleOffset: 'wheel',
  inclination: 'axis',
};

/**
 * Every result with its ±U as a bar, and the interval of 95 in 100 trials as a line through it.
 *
 * @param about values that the scales lie about, so that they keep still while readings move
 */
export function resultsDrawing(
  found: Found,
  about: Readonly<Record<ResultId, number>>,
  units: UnitSystem,
): ResultsDrawing {
  return {
    title: 'What the readings come to, and how sure that is',
    description: RESULT_IDS.map((id) => describe(id, found[id], units)).join(' '),
    frame: FRAME,
    shapes: RESULT_IDS.flatMap((id, i) =>
      row(id, found[id], endsAbout(id, about[id]), 4 + i * ROW, units),
    ),
  };
}

function row(
  id: ResultId,
  { finding, spread }: Found[ResultId],
  ends: readonly [number, number],
  top: number,
  units: UnitSystem,
): Shape[] {
  const role = ROLES[id];
  const { name, kind } = quantity(id);
  const onPaper = scale(ends, [LEFT, RIGHT]);
  const x = (value: number): number => rounded(Math.min(RIGHT, Math.max(LEFT, onPaper(value))));
  const { value, plusMinus } = finding;
  const [from, to, y] = [x(value - plusMinus), x(value + plusMinus), top + 34];
  const words = `${name} ${numberText(value, kind, units)} ± ${valueText(plusMinus, kind, units)}`;
  const nought = x(0);
  const hasNought = ends[0] < 0 && ends[1] > 0;
  return [
    plainText(`${id}-text`, words, LEFT + textWidth(words) / 2 - 2, top + 12, true),
    plainPath(`${id}-line`, 'guide', 'thin', `M${LEFT} ${y}H${RIGHT}`),
    ...(hasNought
      ? [
          plainPath(`${id}-nought`, 'guide', 'outline', `M${nought} ${y - 12}v24`),
          plainText(`${id}-nought-text`, '0', nought, y + 19),
        ]
      : []),
    ...ends.map((end, i) => {
      const said = valueText(end, kind, units);
      const half = textWidth(said) / 2;
      return plainText(`${id}-end-${i}`, said, i === 0 ? LEFT + half - 2 : RIGHT - half, y + 17);
    }),
    plainPath(`${id}-bar`, role, 'outline', `M${from} ${y - 7}H${to}v14H${from}Z`, true),
    plainPath(
      `${id}-trials`,
      role,
      'heavy',
      `M${x(spread.least)} ${y}H${x(spread.most)}M${x(spread.least)} ${y - 4}v8M${x(spread.most)} ${y - 4}v8`,
    ),
    plainPath(`${id}-best`, role, 'none', circleAt(x(value), y), true),
  ];
}

const circleAt = (x: number, y: number): string =>
  `M${rounded(x - 4)} ${y}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0Z`;

function describe(id: ResultId, { finding, spread }: Found[ResultId], units: UnitSystem): string {
  const about = quantity(id);
  const said = (value: number): string => sizeText(value, about, units);
  return `${about.name}: ${said(finding.value)}, give or take ${valueText(finding.plusMinus, about.kind, units)}; in 95 of 100 trials from ${said(spread.least)} to ${said(spread.most)}.`;
}
