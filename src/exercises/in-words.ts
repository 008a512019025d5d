import { signPhrase } from '#core/quantities.ts';
import { fromSI } from '#core/units/convert.ts';
import { DIMENSIONS } from '#core/units/dimension.ts';
import { UNITS } from '#core/units/units.ts';
import type { DrawnPart } from './exercise.ts';
import { isList, type DrawnSet, type ListForm } from './forms/form.ts';
import { letterOf, lettersOf, orderOf } from './forms/rank.ts';
import { askedOfList } from './forms/read-list-entry.ts';
import { phrase, rounded, type Figure, type Phrase } from './phrase.ts';

/** A value of a part as it is asked for: `−8.2 mm`; letters where one is chosen. */
export const shown = (
  { definition: { unit, decimals, form } }: DrawnPart,
  value: number,
): Figure => (isList(form) ? { figure: written(form, value) } : rounded(value, unit, decimals));

/** The letters of a value: `C`, or `C A D B`. */
const written = ({ kind, count }: ListForm, value: number): string =>
  kind === 'order' ? lettersOf(orderOf(value, count)) : letterOf(value - 1);

/** How near a value has to be, as it is printed, in two digits that count; undefined for letters. */
export function nearEnough({ definition, tolerance }: DrawnPart): Figure | undefined {
  const { form, unit, decimals } = definition;
  if (isList(form)) return undefined;
  if (form) return rounded(form.aim.near, form.aim.unit, form.aim.decimals);
  const twoDigits = 1 - Math.floor(Math.log10(fromSI(tolerance, unit)));
  return rounded(tolerance, unit, Math.max(0, Math.min(decimals + 1, twoDigits)));
}

/** A value with its direction as a sentence: `8.2 mm, the axis meets the road outboard of the contact centre.` */
export function inWords(part: DrawnPart, value: number): Phrase {
  const { form } = part.definition;
  if (isList(form)) return listInWords(form, value);
  if (form) return phrase`${settingInWords(part, value)}. ${reachedInWords(form, value)}`;
  const clause = directionOf(part, value);
  return clause === ''
    ? phrase`${shown(part, value)}, the ${part.definition.quantity.name}.`
    : phrase`${shown(part, Math.abs(value))}, and ${clause}.`;
}

function listInWords(form: ListForm, value: number): Phrase {
  const letters = { figure: written(form, value) };
  if (form.kind === 'order') return phrase`${letters}, the ${form.first} first.`;
  const words = form.options[value - 1]?.words;
  return words ? phrase`${letters}, ${words}.` : phrase`${letters}.`;
}

/** A setting with its direction in a word: `12.0 mm outboard`. */
function settingInWords(part: DrawnPart, value: number): Phrase {
  const { positive, negative } = part.definition.quantity;
  const word = value < 0 ? negative : positive;
  return word === undefined
    ? [shown(part, value)]
    : phrase`${shown(part, Math.abs(value))} ${word}`;
}

/** What a setting comes to: `The scrub radius is then 8.0 mm outboard.` */
export function reachedInWords({ aim, reached }: DrawnSet, setting: number): Phrase {
  return phrase`The ${aim.quantity.name} is then ${aimed(aim, reached(setting))}.`;
}

/** What is wanted and how near: `8.0 mm outboard, give or take 1.0 mm`. */
export const wantedInWords = ({ aim, goal, wanted }: DrawnSet): Phrase =>
  phrase`${wanted ?? aimed(aim, goal)}, give or take ${rounded(aim.near, aim.unit, aim.decimals)}`;

function aimed({ quantity, unit, decimals }: DrawnSet['aim'], value: number): Phrase {
  const word = value < 0 ? quantity.negative : quantity.positive;
  return word === undefined
    ? [rounded(value, unit, decimals)]
    : phrase`${rounded(Math.abs(value), unit, decimals)} ${word}`;
}

/** What the sign of a value says: `the axis meets the road inboard of the contact centre`. Empty where it says nothing. */
export function directionOf({ definition }: DrawnPart, value: number): string {
  const { quantity, unit, decimals } = definition;
  const isNought = Math.abs(fromSI(value, unit)) < 0.5 * 10 ** -decimals;
  const said = signPhrase(quantity, value > 0 ? 'positive' : 'negative');
  return isNought || said === '' || quantity.subject === undefined
    ? ''
    : `${quantity.subject} ${said}`;
}

/** What is to be entered: `a length in mm with 1 decimal, and its direction`. */
export function asked({ definition: { quantity, unit, decimals, form } }: DrawnPart): string {
  if (isList(form)) return askedOfList(form);
  const { dimension, symbol } = UNITS[unit];
  const places = decimals === 1 ? '1 decimal' : `${decimals} decimals`;
  const digits = decimals === 0 ? 'as a whole number' : `with ${places}`;
  const named = symbol === '°' ? 'degrees' : symbol;
  const direction = quantity.positive === undefined ? '' : ', and its direction';
  return `${DIMENSIONS[dimension].noun} in ${named} ${digits}${direction}`;
}

export const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
