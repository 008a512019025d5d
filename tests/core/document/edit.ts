/** A way into a document: keys and places in lists. */
export type Way = readonly (string | number)[];

/** A way as faults write it: `forces[2].shaftDirection[0]`. */
export const written = (way: Way): string =>
  way
    .map((step) => (typeof step === 'number' ? `[${step}]` : `.${step}`))
    .join('')
    .replace(/^\./, '');

/** The way that a fault has written. */
const wayOf = (path: string): Way =>
  (path.match(/[^.[\]]+/g) ?? []).map((step) => (/^\d+$/.test(step) ? Number(step) : step));

/** A copy with some values replaced, each named by its path. */
export const edited = (value: unknown, edits: Readonly<Record<string, unknown>>): unknown =>
  Object.entries(edits).reduce((soFar, [path, by]) => replaced(soFar, wayOf(path), by), value);

/** The ways to everything in a document, itself left out. */
export function waysInto(value: unknown, way: Way = []): readonly Way[] {
  const members = membersOf(value).flatMap(([step, member]) => waysInto(member, [...way, step]));
  return way.length === 0 ? members : [way, ...members];
}

export function valueAt(value: unknown, way: Way): unknown {
  const [step, ...rest] = way;
  if (step === undefined) return value;
  return valueAt(new Map(membersOf(value)).get(step), rest);
}

/** A copy with one value replaced; with undefined for it, a copy without the key. */
export function replaced(value: unknown, way: Way, by: unknown): unknown {
  const [step, ...rest] = way;
  if (step === undefined) return by;
  const members = membersOf(value)
    .map(([key, member]) => [key, key === step ? replaced(member, rest, by) : member] as const)
    .filter(([, member]) => member !== undefined);
  return Array.isArray(value) ? members.map(([, member]) => member) : Object.fromEntries(members);
}

/** A copy with one key called otherwise. */
export function renamed(value: unknown, way: Way, name: string): unknown {
  const parent = way.slice(0, -1);
  const last = way.at(-1);
  const members = membersOf(valueAt(value, parent)).map(
    ([key, member]) => [key === last ? name : key, member] as const,
  );
  return replaced(value, parent, Object.fromEntries(members));
}

function membersOf(value: unknown): readonly (readonly [string | number, unknown])[] {
  if (Array.isArray(value)) return value.map((member: unknown, index) => [index, member] as const);
  if (typeof value === 'object' && value !== null) return Object.entries(value);
  return [];
}
