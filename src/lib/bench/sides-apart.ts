import type { UnitSystem } from '#core/display.ts';
import type { Judgement } from '#core/judgement/finding.ts';
import { judgedQuantity, type JudgedId } from '#core/judgement/judged-quantities.ts';
import { told } from './result-words';

/** A result that left and right do not share after a change, as both are shown. */
export interface Apart {
  readonly id: JudgedId;
  readonly name: string;
  readonly left: string;
  readonly right: string;
}

/** What differs between the wheels after a change, as far as its digits are shown. */
export function sidesApart({ findings }: Judgement, system: UnitSystem): readonly Apart[] {
  return findings.flatMap(({ id, place, after }) => {
    if (place !== 'left') return [];
    const other = findings.find((one) => one.id === id && one.place === 'right');
    if (other === undefined) return [];
    const about = judgedQuantity(id);
    const said = (sure: typeof after): string => {
      const { size, word } = told(sure, about, system);
      return word === '' ? size : `${size} ${word}`;
    };
    const [left, right] = [said(after), said(other.after)];
    return left === right ? [] : [{ id, name: about.name, left, right }];
  });
}
