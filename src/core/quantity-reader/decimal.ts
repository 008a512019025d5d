interface Convention {
  readonly decimalSign: '.' | ',';
  readonly groupSign: ' ' | "'" | '.' | ',';
}

/** The ways in which the world writes 1234.5: 1 234,5 · 1'234,5 · 1.234,5 · 1 234.5 · 1'234.5 · 1,234.5 */
const CONVENTIONS: readonly Convention[] = [
  { decimalSign: ',', groupSign: ' ' },
  { decimalSign: ',', groupSign: "'" },
  { decimalSign: ',', groupSign: '.' },
  { decimalSign: '.', groupSign: ' ' },
  { decimalSign: '.', groupSign: "'" },
  { decimalSign: '.', groupSign: ',' },
];

const GROUPED: Readonly<Record<Convention['groupSign'], RegExp>> = {
  ' ': /^[1-9]\d{0,2}(?: \d{3})+$/,
  "'": /^[1-9]\d{0,2}(?:'\d{3})+$/,
  '.': /^[1-9]\d{0,2}(?:\.\d{3})+$/,
  ',': /^[1-9]\d{0,2}(?:,\d{3})+$/,
};

/**
 * Every number that unsigned digits with separators can mean, each written with a decimal point and
 * nothing else. None: not a number. Two: `1,234`, which is 1.234 to some and 1234 to others.
 *
 * A single point is taken for the decimal sign, as in all that the course itself prints; so `1.234`
 * has one meaning, and only the comma is in doubt.
 *
 * @param digits digits, `.`, `,`, `'` and single spaces, as `plainText` leaves them
 */
export function decimalMeanings(digits: string): readonly string[] {
  const meanings = CONVENTIONS.map((convention) => meaningUnder(convention, digits));
  return [...new Set(meanings)].filter((meaning) => meaning !== undefined);
}

function meaningUnder({ decimalSign, groupSign }: Convention, digits: string): string | undefined {
  const singlePoint = /^\d+\.\d+$/.test(digits);
  if (singlePoint && groupSign === '.') return undefined;
  const [whole = '', fraction = '', ...more] = digits.split(decimalSign);
  if (more.length > 0 || whole + fraction === '') return undefined;
  if (whole !== '' && !/^\d+$/.test(whole) && !GROUPED[groupSign].test(whole)) return undefined;
  // Behind the decimal sign only spaces part the groups (ISO 80000-1).
  if (!/^(?:\d*|(?:\d{3} )+\d{1,3})$/.test(fraction)) return undefined;
  const wholeDigits = whole.replaceAll(groupSign, '') || '0';
  const fractionDigits = fraction.replaceAll(' ', '');
  return fractionDigits === '' ? wholeDigits : `${wholeDigits}.${fractionDigits}`;
}
