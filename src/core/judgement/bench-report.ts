import { SHOWN } from '../display.ts';
import { unsigned0 } from '../document/edge-units.ts';
import { success, type Outcome } from '../fault.ts';
import { fromSI } from '../units/convert.ts';
import type { BenchDocument } from './bench-document.ts';
import { setUpBench, type BenchSetup } from './bench-setup.ts';
import { leftOut, notJudged, toHaveChecked } from './cautions.ts';
import type { Finding, Judgement, Sure, Weight } from './finding.ts';
import { INPUT_IDS, inputAbout, type InputId } from './inputs.ts';
import { judge } from './judge.ts';
import { judgedQuantity, type JudgedId, type ResultPlace } from './judged-quantities.ts';
import { SOURCES, type Source } from './known-value.ts';
import { STANDARD_LOADS, type StandardLoad } from './standard-loads.ts';
import { besideUsual, tellingOf, type BesideUsual, type Telling } from './telling.ts';

/** A whole judgement as plain data, in the units in which it is shown: what reports print and commands write. */
export interface BenchReport {
  readonly car: string;
  readonly inputs: readonly InputLine[];
  readonly loads: Readonly<Record<string, StandardLoad>>;
  readonly variants: readonly VariantReport[];
}

/** A number that the judgement rests on, with where it comes from. */
export interface InputLine {
  readonly id: InputId;
  readonly name: string;
  readonly value: number;
  readonly plusMinus: number;
  readonly unit: string;
  readonly source: Source;
  /** What the source means, in words. */
  readonly about: string;
}

export interface VariantReport extends Telling {
  readonly name: string;
  readonly by: Judgement['by'];
  readonly scrub: Judgement['scrub'];
  readonly results: readonly ResultLine[];
  readonly notJudged: readonly string[];
  readonly leftOut: readonly string[];
  readonly toHaveChecked: readonly string[];
}

/** A result with its intervals; `unit` is that of all four but the ratio. */
export interface ResultLine {
  readonly id: JudgedId;
  readonly place: ResultPlace;
  readonly name: string;
  readonly under?: string;
  readonly unit: string;
  readonly before: Interval;
  readonly after: Interval;
  readonly difference: Interval;
  readonly ratio?: Interval;
  /** Where the result after the change lies beside what is usual on cars. */
  readonly besideUsual?: BesideUsual;
  readonly weights: readonly Weight[];
}

export interface Interval {
  readonly value: number;
  readonly least: number;
  readonly most: number;
}

/**
 * Judges every variant of a bench.
 *
 * @param judged by which way: along the slope unless said
 * @returns the faults of `setUpBench`
 */
export function benchReport(
  document: BenchDocument,
  judged: (setup: BenchSetup, variant: number) => Judgement = bySlope,
): Outcome<BenchReport> {
  const setup = setUpBench(document);
  if (!setup.ok) return setup;
  return success({
    car: document.car.name,
    inputs: inputLines(setup.value),
    loads: STANDARD_LOADS,
    variants: document.variants.map(({ name }, i) =>
      variantReport(name, setup.value, i, judged(setup.value, i)),
    ),
  });
}

/** Every input of a car that a result may hang on, in the order of `INPUT_IDS`. */
const inputLines = ({ known, inputs }: BenchSetup): readonly InputLine[] =>
  INPUT_IDS.slice(0, inputs.length).map((id) => {
    const { name, unit } = inputAbout(id);
    const { value, plusMinus, source } = known[id];
    return {
      id,
      name,
      value: fromSI(value, unit),
      plusMinus: fromSI(plusMinus, unit),
      unit,
      source,
      about: SOURCES[source].about,
    };
  });

function bySlope(setup: BenchSetup, variant: number): Judgement {
  return judge(setup, changesAt(setup, variant));
}

function changesAt({ variants }: BenchSetup, variant: number) {
  const changes = variants[variant];
  if (changes === undefined) throw new RangeError(`no variant ${variant}`);
  return changes;
}

function variantReport(
  name: string,
  setup: BenchSetup,
  variant: number,
  judgement: Judgement,
): VariantReport {
  const changes = changesAt(setup, variant);
  return {
    name,
    by: judgement.by,
    scrub: judgement.scrub,
    results: judgement.findings.map(resultLine),
    ...tellingOf(judgement),
    notJudged: notJudged(setup.car, changes),
    leftOut: leftOut(setup.car, changes),
    toHaveChecked: toHaveChecked(setup.car, changes),
  };
}

function resultLine(finding: Finding): ResultLine {
  const { id, place, before, after, difference, ratio, weights } = finding;
  const { name, kind, under } = judgedQuantity(id);
  const { unit } = SHOWN.metric[kind];
  const shown = ({ value, least, most }: Sure): Interval => ({
    value: unsigned0(fromSI(value, unit)),
    least: unsigned0(fromSI(least, unit)),
    most: unsigned0(fromSI(most, unit)),
  });
  const usual = besideUsual(finding);
  return {
    id,
    place,
    name,
    ...(under !== undefined && { under }),
    unit,
    before: shown(before),
    after: shown(after),
    difference: shown(difference),
    ...(ratio && { ratio: { value: ratio.value, least: ratio.least, most: ratio.most } }),
    ...(usual && { besideUsual: usual.lies }),
    weights,
  };
}
