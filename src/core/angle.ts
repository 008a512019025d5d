const RADIANS_PER_DEGREE = Math.PI / 180;

export const radians = (degrees: number): number => degrees * RADIANS_PER_DEGREE;

export const degrees = (radians: number): number => radians / RADIANS_PER_DEGREE;
