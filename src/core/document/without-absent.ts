/** A record whose members that may be undefined are optional instead. */
export type Present<Row> = {
  [Key in keyof Row as undefined extends Row[Key] ? never : Key]: Row[Key];
} & {
  [Key in keyof Row as undefined extends Row[Key] ? Key : never]?: Exclude<Row[Key], undefined>;
};

/** The record without its undefined members, so that what is absent is truly absent. Keeps the order of the rest. */
export function withoutAbsent<Row extends object>(record: Row): Present<Row> {
  const present: Partial<Row> = {};
  for (const key in record) if (record[key] !== undefined) present[key] = record[key];
  // Fewer members is the very thing that the type says.
  return present as object as Present<Row>;
}
