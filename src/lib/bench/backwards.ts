import type { Sides } from '#core/axle.ts';
import { numberText, unitText, type UnitSystem } from '#core/display.ts';
import {
  insetAnswers,
  lengthForScrub,
  radiusForOldScrub,
  type AskedLength,
} from '#core/judgement/bench-answers.ts';
import type { CarSetup } from '#core/judgement/bench-setup.ts';
import type { Band } from '#core/judgement/find-backwards.ts';
import type { WheelChange } from '#core/judgement/fitted-car.ts';

/** What is asked: which length keeps the scrub radius within a band. */
export interface ScrubQuestion {
  readonly asked: AskedLength;
  /** In metres, least first. */
  readonly band: Band;
  readonly side: 'left' | 'right';
}

const NAMES: Readonly<Record<AskedLength, string>> = {
  spacer: 'spacers',
  inset: 'wheels with an inset',
  loadedRadius: 'a loaded radius',
};

/** Answers to a question about the scrub radius, in sentences. */
export function scrubAnswer(
  setup: CarSetup,
  changes: Sides<WheelChange>,
  { asked, band, side }: ScrubQuestion,
  system: UnitSystem,
): readonly string[] {
  const answer = lengthForScrub(setup, changes, side, asked, band);
  const name = NAMES[asked];
  if (answer === undefined)
    return [`No ${asked === 'spacer' ? 'spacer' : name} brings the scrub radius there.`];
  const best = `By the best estimates: ${name} of ${bandText(answer.best, system)}.`;
  if (answer.sure)
    return [best, `As sure as your measurements are: ${name} of ${bandText(answer.sure, system)}.`];
  return [
    best,
    'What is known of the scrub radius is wider than this band: no choice keeps it inside for sure.',
  ];
}

/** With which inset a wheel of another width stands like the car’s own, in sentences. */
export function insetSentences(
  setup: CarSetup,
  rimWidth: number,
  spacer: number,
  system: UnitSystem,
): readonly string[] {
  const { sameCentre, sameOuter, sameInner } = insetAnswers(setup, rimWidth, spacer);
  return [
    `${length(sameCentre, system)}: the middle of the tyre stays, and with it scrub radius and bearing loads.`,
    `${length(sameOuter, system)}: the outer edge of the rim stays, and with it the room to the arch.`,
    `${length(sameInner, system)}: the inner edge of the rim stays, and with it the room to strut and brake.`,
  ];
}

/** Which loaded radius brings the old scrub radius back. */
export function radiusSentence(
  setup: CarSetup,
  changes: Sides<WheelChange>,
  side: 'left' | 'right',
  system: UnitSystem,
): string {
  const radius = radiusForOldScrub(setup, changes, side);
  const now = setup.known.hubUp_mm.value;
  if (radius === undefined || !(radius > 0)) return 'No tyre brings the old scrub radius back.';
  return `A loaded radius of ${length(radius, system)} would bring the old scrub radius back; the wheel centre now stands ${length(now, system)} above the road.`;
}

const bandText = ({ least, most }: Band, system: UnitSystem): string =>
  `${numberText(least, 'length', system)} to ${length(most, system)}`;

const length = (metres: number, system: UnitSystem): string =>
  numberText(metres, 'length', system) + unitText('length', system);
