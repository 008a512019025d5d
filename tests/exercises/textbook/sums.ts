// What the sums of several parts of the course have in common.

export type Numbers = Readonly<Record<string, number>>;

/** One part: from the item's numbers and the values of the parts before it. */
export type Step = (item: Numbers, before: readonly number[]) => number;

export const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

export const sin = (degrees: number): number => Math.sin((degrees * Math.PI) / 180);

export const cos = (degrees: number): number => Math.cos((degrees * Math.PI) / 180);

export const arctan = (tangent: number): number => (Math.atan(tangent) * 180) / Math.PI;

export const n = (item: Numbers, name: string): number => {
  const value = item[name];
  if (value === undefined) throw new Error(`no ${name} among ${Object.keys(item).join(', ')}`);
  return value;
};

export const was = (before: readonly number[], index: number): number => before[index] ?? NaN;

export const lean = (item: Numbers, radius = 'radius_mm'): number =>
  n(item, radius) * tan(n(item, 'inclination_deg'));

/** +1 on the left, −1 on the right: a rearward push outboard of the axis turns a left wheel to the left. */
export const out = (item: Numbers): number => ((item['side'] as unknown) === 'left' ? 1 : -1);

export const upright = (item: Numbers): number => cos(n(item, 'inclination_deg'));

/** Rearward force in newtons, lever in millimetres outboard of the axis: newton metres, to the left positive. */
export const rearward = (item: Numbers, force: number, lever: number): number =>
  (out(item) * force * lever) / 1000;

export const moreInset = (item: Numbers): number => n(item, 'newInset_mm') - n(item, 'oldInset_mm');
