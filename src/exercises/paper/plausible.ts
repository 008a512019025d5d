/** About how far an axis leans on its way up a loaded radius: near enough to tell a car from a monster. */
export const roughLean_mm = (radius_mm: number, inclination_deg: number): number =>
  (radius_mm * inclination_deg) / 57;

export const between = (value: number, least: number, most: number): boolean =>
  value >= least && value <= most;
