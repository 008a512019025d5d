/** Where the meaning of a term stands, for those that many terms share. */
export const ISO_8855 = 'ISO 8855:2011, clause 7.2 (from memory)';
export const COMMON = 'common workshop use';
