/** How sure a source makes us, the surest first. */
export const SURENESS = {
  published: {
    name: 'Published, and looked up',
    says: 'A book, a standard, a data sheet or a page that was read for this course.',
  },
  computed: {
    name: 'Worked out another way',
    says: 'By hand, from first principles, or by programs that share nothing with ours.',
  },
  memory: {
    name: 'From memory',
    says: 'Written down from memory of a standard, a book or a textbook’s common stock. Look it up before you lean on it.',
  },
  practice: {
    name: 'Common practice',
    says: 'What the trade does and says, without a source to be named. Orders of size, never limits.',
  },
  assumed: {
    name: 'Chosen for this course',
    says: 'Invented where a course needs a number and no real car may stand for it.',
  },
} as const satisfies Record<string, { readonly name: string; readonly says: string }>;

export type Sureness = keyof typeof SURENESS;

/** The first that fits counts: what is said in the source itself decides. */
const SIGNS: readonly (readonly [Sureness, RegExp])[] = [
  ['memory', /from memory/i],
  ['practice', /common practice|common workshop use|rule of thumb|no source/i],
  ['assumed', /invented|assumed|chosen for/i],
  [
    'computed',
    /by hand|worked (?!example)|trigonometry|MuJoCo|three\.js|mathjs|statics|derivation|definition|rigid rotation|\(2 sin|recomputed|balance of|equal work|computed|plain count|product of|^sum of/i,
  ],
];

/** How sure a source is, from its own words. */
export const howSure = (source: string): Sureness =>
  SIGNS.find(([, sign]) => sign.test(source))?.[0] ?? 'published';
