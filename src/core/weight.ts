/** Standard gravity, in m/s². Source: ISO 80000-3 (from memory). */
const GRAVITY = 9.80665;

/** The weight of a mass, in newtons: wheel scales and load indices read kilograms. */
export const weightOf = (mass_kg: number): number => GRAVITY * mass_kg;
