/**
 * Pressure centre of a single-row bearing: where the contact lines meet the bearing's axis,
 * a = B/2 + (d_m/2) tan α, in metres from the side face that they lean toward.
 *
 * @param width B in metres, more than 0
 * @param pitchDiameter d_m in metres, more than 0; the mean of bore and outside diameter is near enough
 * @param contactAngle α in radians, 0 to below π/2
 *
 * Source: geometry; catalogues print the result as dimension a.
 */
export const pressureCentre = (
  width: number,
  pitchDiameter: number,
  contactAngle: number,
): number => width / 2 + (pitchDiameter / 2) * Math.tan(contactAngle);

/**
 * Pressure-centre spread of two rows back to back, row pitch + d_m tan α, in metres: the contact lines
 * lean apart, so the hub stands wider than its rows.
 *
 * @param rowPitch from the middle of one row to the middle of the other, in metres, more than 0
 * @param pitchDiameter d_m in metres, more than 0
 * @param contactAngle α in radians, 0 to below π/2
 */
export const pressureCentreSpread = (
  rowPitch: number,
  pitchDiameter: number,
  contactAngle: number,
): number => rowPitch + pitchDiameter * Math.tan(contactAngle);

/**
 * Row pitch of two rows back to back whose spread is known, spread − d_m tan α, in metres: the inverse of
 * `pressureCentreSpread`.
 *
 * @param spread a in metres, more than d_m tan α
 * @param pitchDiameter d_m in metres, more than 0
 * @param contactAngle α in radians, 0 to below π/2
 */
export const rowPitch = (spread: number, pitchDiameter: number, contactAngle: number): number =>
  spread - pitchDiameter * Math.tan(contactAngle);
