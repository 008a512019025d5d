import type { Tyre } from './tyre.ts';

/**
 * The size designation of a tyre as it is printed in tables: `205/55 R16 91V`, `LT265/70 R17 121/118S`,
 * `195/70 R15C 104/102R`, `31x10.50 R15 LT 109Q`. `parseTyre` reads it back as the same tyre.
 */
export function designation(tyre: Tyre): string {
  return [size(tyre), serviceDescription(tyre), tyre.extraLoad ? 'XL' : '']
    .filter((part) => part !== '')
    .join(' ');
}

function size(tyre: Tyre): string {
  const rim = `${constructionLetters(tyre)}${tyre.rimCode}`;
  if (tyre.kind === 'flotation') {
    return `${tyre.outerDiameter_in}x${tyre.sectionWidth_in.toFixed(2)} ${rim} LT`;
  }
  const { use, sectionWidth_mm, aspectRatio_percent } = tyre;
  const prefix = use === 'passenger' || use === 'C' ? '' : use;
  const suffix = use === 'C' ? 'C' : '';
  return `${prefix}${sectionWidth_mm}/${aspectRatio_percent} ${rim}${suffix}`;
}

function constructionLetters({ construction, forHighSpeed }: Tyre): string {
  if (construction === 'radial') return forHighSpeed ? 'ZR' : 'R';
  return construction === 'diagonal' ? 'D' : 'B';
}

function serviceDescription(tyre: Tyre): string {
  const { loadIndex, twinLoadIndex, speedSymbol, fasterThanSymbol } = tyre;
  const twin = twinLoadIndex === undefined ? '' : `/${twinLoadIndex}`;
  const text = `${loadIndex ?? ''}${twin}${speedSymbol ?? ''}`;
  return fasterThanSymbol && text !== '' ? `(${text})` : text;
}
