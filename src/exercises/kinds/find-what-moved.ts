import { changed, NO_CHANGE } from '#core/change.ts';
import { measure } from '#core/geometry.ts';
import { QUANTITIES } from '#core/quantities.ts';
import { fromSI } from '#core/units/convert.ts';
import { writeShortest } from '#core/write-number.ts';
import { choosing, chosen, type Choice } from '../forms/choosing.ts';
import { step, type Earlier, type Kind } from '../kind.ts';
import { OWN_QUANTITIES } from '../own-quantities.ts';
import { cornerWithPivots } from '../paper/corner.ts';
import { onSheet_deg, sheetAngle_deg } from '../paper/sheet.ts';
import { deg, phrase, rounded, si, term } from '../phrase.ts';
import type { SheetPicture } from '../pictures/picture.ts';

type Side = 'left' | 'right';
type What = 'carrier' | 'top' | 'subframe';
type Cause = `${What}-${Side}`;

interface Item {
  readonly cause: Cause;
  readonly inclinationWas_deg: number;
  readonly camberWas_deg: number;
  readonly casterWas_deg: number;
  readonly leftInclination_deg: number;
  readonly leftCamber_deg: number;
  readonly leftCaster_deg: number;
  readonly rightInclination_deg: number;
  readonly rightCamber_deg: number;
  readonly rightCaster_deg: number;
}

interface Reading {
  readonly inclination_deg: number;
  readonly camber_deg: number;
}

const nowOn = (item: Item, side: Side): Reading =>
  side === 'left'
    ? { inclination_deg: item.leftInclination_deg, camber_deg: item.leftCamber_deg }
    : { inclination_deg: item.rightInclination_deg, camber_deg: item.rightCamber_deg };

const other = (side: Side): Side => (side === 'left' ? 'right' : 'left');
const sideOf = (cause: string): Side => (cause.endsWith('left') ? 'left' : 'right');
const whatOf = (cause: string): What => cause.slice(0, cause.indexOf('-')) as What;

/** What a corner reads after a change of camber, at the carrier or with the axis along. */
function after(was: Reading, by: 'camberAtCarrier' | 'camberAtUpperPivot', camber_deg: number) {
  const corner = cornerWithPivots(si(was.inclination_deg, 'deg'), si(was.camber_deg, 'deg'));
  const now = measure(changed(corner, { ...NO_CHANGE, [by]: si(camber_deg, 'deg') }));
  return {
    inclination_deg: onSheet_deg(fromSI(now.inclination, 'deg')),
    camber_deg: onSheet_deg(fromSI(now.camber, 'deg')),
  };
}

/** Both sides of the sheet, with something bent or moved by so much camber. */
function readings(was: Reading, cause: Cause, by_deg: number): Readonly<Record<Side, Reading>> {
  const side = sideOf(cause);
  switch (whatOf(cause)) {
    case 'carrier':
      return { left: was, right: was, [side]: after(was, 'camberAtCarrier', by_deg) };
    case 'top':
      return { left: was, right: was, [side]: after(was, 'camberAtUpperPivot', by_deg) };
    case 'subframe': {
      // The lower pivots go to that side: there the foot of the axis goes outboard, and the wheel’s top inboard.
      const size = Math.abs(by_deg);
      const out = after(was, 'camberAtUpperPivot', -size);
      const inward = after(was, 'camberAtUpperPivot', size);
      return side === 'left' ? { left: out, right: inward } : { left: inward, right: out };
    }
  }
}

const includedOf = ({ inclination_deg, camber_deg }: Reading): number =>
  measure(cornerWithPivots(si(inclination_deg, 'deg'), si(camber_deg, 'deg'))).includedAngle;

const written = (value_deg: number): string => `${writeShortest(value_deg)}°`;

const SAYS: Readonly<Record<What, (side: Side) => string>> = {
  carrier: (side) => `on the ${side} something in carrier or strut is bent`,
  top: (side) => `on the ${side} the upper pivot sits elsewhere`,
  subframe: (side) => `the subframe with both lower pivots has gone to the ${side}`,
};

/** What each of them would leave on a sheet. */
const WOULD: Readonly<Record<What, string>> = {
  carrier:
    'A bent carrier or strut changes the camber and leaves the inclination, so the included angle is another one',
  top: 'An upper pivot that sits elsewhere turns axis and wheel together, so camber and inclination change against each other and the included angle stays',
  subframe:
    'A subframe that has gone aside changes both wheels, one the other way about than the other, and both included angles stay',
};

const CONFUSES: Readonly<Record<What, string>> = {
  carrier: 'bent carrier',
  top: 'upper pivot',
  subframe: 'subframe',
};

/** What the sheet does show, for somebody who chose another cause. */
function shows(item: Item, taken: string): string {
  const what = whatOf(item.cause);
  const side = sideOf(item.cause);
  if (whatOf(taken) === what)
    return what === 'subframe'
      ? `Here it is the ${side} camber that has gone inboard at the top: there the foot of the axis has gone outboard`
      : `That would be right for the other side: on the ${other(side)} nothing has changed here`;
  if (what === 'subframe') return 'Here both sides have changed, by the same and opposite ways';
  return what === 'carrier'
    ? `Here the ${side} camber alone has changed, and its inclination has not`
    : `Here only the ${side} has changed, camber and inclination by the same and opposite ways`;
}

const CAUSES: readonly Cause[] = [
  'carrier-left',
  'carrier-right',
  'top-left',
  'top-right',
  'subframe-left',
  'subframe-right',
];

const CHOICES: readonly Choice<Item>[] = CAUSES.map((cause) => ({
  id: cause,
  words: () => [SAYS[whatOf(cause)](sideOf(cause))],
  confuses: CONFUSES[whatOf(cause)],
  text: (item) => phrase`${WOULD[whatOf(cause)]}. ${shows(item, cause)}.`,
}));

const listed = CAUSES.map((_cause, i) => i);

const picture = (item: Item): SheetPicture => {
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
  const cause = chosen(CHOICES, listed, step(earlier, 0));
  return cause === undefined ? undefined : sideOf(cause);
};

function camberChange(item: Item, side: Side | undefined): number {
  return side === undefined ? NaN : si(nowOn(item, side).camber_deg - item.camberWas_deg, 'deg');
}

/** Camber on the side of the cause, before and now. */
const cambers = (item: Item) => ({
  was: si(item.camberWas_deg, 'deg'),
  now: si(nowOn(item, sideOf(item.cause)).camber_deg, 'deg'),
});

/** An alignment sheet from before and after a knock: what is bent, what has moved? */
export const findWhatMoved: Kind<Item> = {
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
    choosing<Item>({
      id: 'cause',
      name: 'what is bent or moved',
      label: 'What the sheet says',
      choices: CHOICES,
      listed: () => listed,
      right: ({ cause }) => cause,
      hint: () =>
        phrase`On which side has anything changed? Then add inclination and camber on each side, before and now: a sum that stays says that nothing is bent between axis and wheel.`,
      solution: ({ cause }) =>
        phrase`${WOULD[whatOf(cause)]}. That is what stands here: ${SAYS[whatOf(cause)](sideOf(cause))}. Whatever is bent is replaced, not straightened, and a shop with the maker’s data says what.`,
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
              nowOn(item, side).inclination_deg + nowOn(item, other(side)).camber_deg,
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
