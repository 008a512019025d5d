/** A place in a parsed document: `['forces', 2, 'force_N']`. */
export type Place = readonly (string | number)[];

/**
 * The places of all values in a document that are no objects or lists of objects, by the names that guides use:
 * `wheel.camber_deg`, `forces[].case`. A list of numbers is one value.
 */
export function placesIn(value: unknown): ReadonlyMap<string, Place> {
  const places = new Map<string, Place>();
  visit(value, '', [], (key, place) => {
    if (!places.has(key)) places.set(key, place);
  });
  return places;
}

/** A copy of a document with another value at a place; with undefined the place is gone. */
export function withValue(document: unknown, place: Place, value: unknown): unknown {
  const [step, ...rest] = place;
  if (step === undefined) return value;
  if (Array.isArray(document))
    return document.map((member: unknown, i) =>
      i === step ? withValue(member, rest, value) : member,
    );
  const record = document as Readonly<Record<string, unknown>>;
  const { [step]: old, ...others } = record;
  const next = withValue(old, rest, value);
  return next === undefined ? others : { ...record, [step]: next };
}

/** A place as faults name it: `forces[2].force_N`. */
export const pathOf = (place: Place): string =>
  place
    .map((step) => (typeof step === 'number' ? `[${step}]` : `.${step}`))
    .join('')
    .slice(1);

function visit(
  value: unknown,
  key: string,
  place: Place,
  found: (key: string, place: Place) => void,
): void {
  if (Array.isArray(value) && value.every((member) => typeof member === 'object')) {
    value.forEach((member, i) => {
      visit(member, `${key}[]`, [...place, i], found);
    });
  } else if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
    for (const [name, member] of Object.entries(value))
      visit(member, key === '' ? name : `${key}.${name}`, [...place, name], found);
  } else {
    found(key, place);
  }
}
