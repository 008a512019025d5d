import { otherSide, type Side } from '#core/corner.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { fromSI } from '#core/units/convert.ts';
import { writeShortest } from '#core/write-number.ts';
import { choosing, chosen } from '../forms/choosing.ts';
import { kept } from '../forms/kept.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import {
  CAUSES,
  includedOf,
  nowOn,
  readings,
  sideOf,
  type Cause,
  type Knocked,
} from '../paper/knock.ts';
import { onSheet_deg, sheetAngle_deg } from '../paper/sheet.ts';
import { deg, phrase, rounded, si, term } from '../phrase.ts';
import type { SheetPicture } from '../pictures/picture.ts';
import { hasDone, KNOCK_CHOICES, wouldLeave } from '../slips/knock-choices.ts';

const written = (value_deg: number): string => `${writeShortest(value_deg)}°`;

const listed = CAUSES.map((_cause, i) => i);

const picture = (item: Knocked): SheetPicture => {
  const row = (name: string, was: number, left: number, right: number) => ({
    name,
    cells: [was, left, was, right].map(written),
  });
  return {
    scene: 'sheet',
    title: 'Alignment sheet, front wheels',
    columns: ['Left before', 'Left now', 'Right before', 'Right now'],
    rows: [
      row(
        'Inclination',
        item.inclinationWas_deg,
        item.leftInclination_deg,
        item.rightInclination_deg,
      ),
      row('Camber', item.camberWas_deg, item.leftCamber_deg, item.rightCamber_deg),
      row('Caster', item.casterWas_deg, item.leftCaster_deg, item.rightCaster_deg),
    ],
  };
};

const chosenSide = (earlier: Earlier): Side | undefined => {
  const cause = chosen(KNOCK_CHOICES, listed, step(earlier, 0));
  return cause === undefined ? undefined : sideOf(cause);
};

function camberChange(item: Knocked, side: Side | undefined): number {
  return side === undefined ? NaN : si(nowOn(item, side).camber_deg - item.camberWas_deg, 'deg');
}

/** Camber on the side of the cause, before and now. */
const cambers = kept((item: Knocked) => ({
  was: si(item.camberWas_deg, 'deg'),
  now: si(nowOn(item, sideOf(item.cause)).camber_deg, 'deg'),
}));

/** An alignment sheet from before and after a knock: what is bent, what has moved? */
export const findWhatMoved: Kind<Knocked> = {
  id: 'find-what-moved',
  version: 1,
  title: 'Find what the kerb did',
  lesson: 'alignment-sheet',
  level: 3,
  draw: (random) => {
    const inclinationWas_deg = sheetAngle_deg(random, 10, 15);
    const camberWas_deg = sheetAngle_deg(random, -1.2, -0.3);
    const cause = random.pick<Cause>(CAUSES as [Cause, ...Cause[]]);
    const by_deg = random.pick([-1, 1]) * sheetAngle_deg(random, 0.7, 2.2);
    const { left, right } = readings(
      { inclination_deg: inclinationWas_deg, camber_deg: camberWas_deg },
      cause,
      by_deg,
    );
    const casterWas_deg = sheetAngle_deg(random, 3, 7);
    const scatter = (): number => onSheet_deg(casterWas_deg + sheetAngle_deg(random, -0.1, 0.1));
    return {
      cause,
      inclinationWas_deg,
      camberWas_deg,
      casterWas_deg,
      leftInclination_deg: left.inclination_deg,
      leftCamber_deg: left.camber_deg,
      leftCaster_deg: scatter(),
      rightInclination_deg: right.inclination_deg,
      rightCamber_deg: right.camber_deg,
      rightCaster_deg: scatter(),
    };
  },
  sound: ({ leftCamber_deg, rightCamber_deg }) =>
    Math.abs(leftCamber_deg) >= 0.4 && Math.abs(rightCamber_deg) >= 0.4,
  pattern: ({ cause }) => cause,
  question: () =>
    phrase`The sheet has what was read on the front wheels of a car last year, and what is read now, after it has slid against a kerb. Inclination is positive where the top of the axis leans inboard, camber where the top of the wheel leans outboard. What has the kerb done? For a bent part, state the included angle that gives it away; for anything moved, the one that clears the parts.`,
  picture,
  parts: [
    choosing<Knocked>({
      id: 'cause',
      name: 'what is bent or moved',
      label: 'What the sheet says',
      choices: KNOCK_CHOICES,
      listed: () => listed,
      right: ({ cause }) => cause,
      hint: () =>
        phrase`On which side has anything changed? Then add inclination and camber on each side, before and now: a sum that stays says that nothing is bent between axis and wheel.`,
      solution: ({ cause }) =>
        phrase`${wouldLeave(cause)}. That is what stands here: ${hasDone(cause)}. Whatever is bent is replaced, not straightened, and a shop with the maker’s data says what.`,
    }),
    {
      id: 'camber-change',
      quantity: OWN_QUANTITIES.camberChange,
      unit: 'deg',
      decimals: 2,
      label: 'Change of camber there (left or right as in your answer)',
      value: (item, earlier) => camberChange(item, chosenSide(earlier)),
      sum: 'exact',
      hint: () => phrase`Camber of that side now, less the camber before, each with its sign.`,
      slips: [
        {
          id: 'turned-round',
          confuses: 'now and before',
          value: (item) => -camberChange(item, sideOf(item.cause)),
          text: () =>
            phrase`The size fits, but now and before have changed places, or inboard and outboard. Take what was read before from what is read now.`,
        },
        {
          id: 'added',
          confuses: 'sum of both readings',
          value: (item) => cambers(item).now + cambers(item).was,
          text: () =>
            phrase`That is the sum of both readings, before and now. A change is what has been gained: the one less the other.`,
        },
        {
          id: 'now-alone',
          confuses: 'camber as it is now',
          value: (item) => cambers(item).now,
          text: () =>
            phrase`That is the camber as it is now. It would be the change if the wheel had stood upright before.`,
        },
        {
          id: 'halved',
          confuses: 'both sides',
          value: (item) => camberChange(item, sideOf(item.cause)) / 2,
          text: () =>
            phrase`That shares the change out to both sides. The sheet has a column for each side: what one wheel has gained stands there by itself.`,
        },
      ],
      solution: (item, earlier, value) => {
        const side = chosenSide(earlier) ?? 'left';
        return phrase`On the ${side}: ${deg(nowOn(item, side).camber_deg)} − ${term(deg(item.camberWas_deg))} = ${rounded(value, 'deg', 2)}.`;
      },
    },
    {
      id: 'included',
      quantity: QUANTITIES.includedAngle,
      unit: 'deg',
      decimals: 2,
      label: 'Included angle there now',
      value: (item, earlier) => {
        const side = chosenSide(earlier);
        if (side === undefined) return NaN;
        // The camber before and its change make the camber now.
        const camber_deg = item.camberWas_deg + fromSI(step(earlier, 1), 'deg');
        return includedOf({ ...nowOn(item, side), camber_deg });
      },
      sum: 'exact',
      hint: () =>
        phrase`Inclination and camber of that side as they are now, each with its sign: add them.`,
      slips: [
        {
          id: 'taken-away',
          confuses: 'sign of the camber',
          value: (item) => {
            const { inclination_deg, camber_deg } = nowOn(item, sideOf(item.cause));
            return si(inclination_deg - camber_deg, 'deg');
          },
          text: () =>
            phrase`That takes the camber away: the sign of the camber is turned round. The included angle is the sum, with each sign as it stands on the sheet.`,
        },
        {
          id: 'inclination-alone',
          confuses: 'inclination alone',
          value: (item) => si(nowOn(item, sideOf(item.cause)).inclination_deg, 'deg'),
          text: () =>
            phrase`That is the inclination alone, from upright to the axis. The camber goes on from upright to the wheel and belongs to the sum.`,
        },
        {
          id: 'caster',
          confuses: 'caster',
          value: (item) => {
            const side = sideOf(item.cause);
            const caster_deg = side === 'left' ? item.leftCaster_deg : item.rightCaster_deg;
            return si(nowOn(item, side).inclination_deg + caster_deg, 'deg');
          },
          text: () =>
            phrase`That adds the caster, which is seen from the side. Inclination and camber are both seen from the front, and they make the included angle.`,
        },
        {
          id: 'other-camber',
          confuses: 'camber of the other side',
          value: (item) => {
            const side = sideOf(item.cause);
            return si(
              nowOn(item, side).inclination_deg + nowOn(item, otherSide(side)).camber_deg,
              'deg',
            );
          },
          text: () =>
            phrase`That has the camber of the other side in it. An included angle belongs to one carrier: take both numbers from the same side.`,
        },
      ],
      solution: (item, earlier, value) => {
        const side = chosenSide(earlier) ?? 'left';
        const { inclination_deg, camber_deg } = nowOn(item, side);
        const { inclinationWas_deg, camberWas_deg } = item;
        const was = includedOf({ inclination_deg: inclinationWas_deg, camber_deg: camberWas_deg });
        return phrase`On the ${side} now: ${deg(inclination_deg)} + ${term(deg(camber_deg))} = ${rounded(value, 'deg', 2)}. Before: ${deg(inclinationWas_deg)} + ${term(deg(camberWas_deg))} = ${rounded(was, 'deg', 2)}. ${Math.abs(value - was) < 1e-6 ? 'The sum has stayed.' : 'The sum has changed.'}`;
      },
    },
  ],
};
