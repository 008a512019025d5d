/** Kinds that are taken for each other. Side by side, what tells them apart has to be looked for. */
const GROUPS: readonly (readonly string[])[] = [
  // The axis seen from the front, and from the side.
  ['inclination-from-pivots', 'caster-from-pivots'],
  ['camber-at-upper-pivot', 'camber-at-carrier'],
  // Scrub radius and spindle offset.
  ['scrub-from-pivots', 'spindle-offset-from-scrub'],
  ['spacer-scrub', 'spindle-offset-spacer'],
  // Inset and spacer.
  ['spacer-scrub', 'inset-scrub'],
  ['spacer-for-scrub', 'inset-for-clearance', 'set-wheel-for-scrub'],
  // What lies along the car, and what across it.
  ['marked-along', 'marked-across'],
  // A brake on the carrier, and a torque that comes in by the shaft.
  ['brake-moment', 'shaft-torque'],
  ['drive-moment', 'brake-force-moved'],
  ['lever-by-case', 'marked-point'],
  ['kerb-moment', 'brake-moment', 'order-by-moment'],
  ['net-rack-from-brakes', 'sense-of-two-brakes'],
  ['caster-from-swing', 'inclination-from-swing'],
  ['cross-camber', 'cross-caster'],
  ['camber-on-lock', 'camber-at-full-lock'],
  ['bent-and-moved', 'find-what-moved', 'subframe-shift'],
  ['row-loads', 'row-loads-in-a-turn', 'order-row-loads'],
  ['spacer-for-row-load', 'set-load-line'],
  ['life-from-load', 'load-for-life', 'read-life-chart'],
  ['clamp-from-torque', 'torque-for-least-clamp'],
];

/** Every kind that is named in a group. */
export const CONFUSABLE: readonly string[] = [...new Set(GROUPS.flat())];

/** The kinds that a kind is easily taken for. */
export const confusableWith = (kind: string): readonly string[] =>
  GROUPS.filter((group) => group.includes(kind)).flatMap((group) =>
    group.filter((other) => other !== kind),
  );
