import { isAxleQuantity, type AxleQuantityId } from '#core/axle-quantities.ts';
import { isBearingQuantity, type BearingQuantity } from '#core/bearing-quantities.ts';
import {
  isFasteningQuantity,
  type FasteningQuantity,
} from '#core/fastening/fastening-quantities.ts';
import { isLifeQuantity, type LifeQuantity } from '#core/life-quantities.ts';
import { isSwingQuantity, type SwingQuantity } from '#core/swing-quantities.ts';
import type { Standing } from '../corner/standing.ts';

/**
 * Quantities whose arithmetic not every page needs. Each family is a module of this folder, named after it, which
 * provides it when it is imported: a lesson imports those whose quantities its file names, a figure or a scene those
 * that it draws.
 */
interface Families {
  readonly axle: Family<AxleQuantityId>;
  readonly bearing: Family<BearingQuantity, BearingRatio>;
  readonly fastening: Family<FasteningQuantity, FasteningRatio>;
  readonly life: Family<LifeQuantity>;
  readonly swing: Family<SwingQuantity>;
}

interface Family<Id extends string, Ratio extends string = never> {
  /** A quantity of a standing corner, in SI. */
  readonly value: (id: Id, now: Standing) => number;
  /** Bare numbers that belong to it. */
  readonly ratios: Readonly<Record<Ratio, (now: Standing) => number>>;
}

export type FamilyName = keyof Families;

type FamilyQuantity =
  AxleQuantityId | BearingQuantity | FasteningQuantity | LifeQuantity | SwingQuantity;

const BEARING_RATIOS = ['inboardOverLoad', 'outboardOverLoad', 'thrustFactor'] as const;

type BearingRatio = (typeof BEARING_RATIOS)[number];

const FASTENING_RATIOS = [
  'engagedTurns',
  'engagedDiameters',
  'stretchPercent',
  'clampMargin',
  'clampMarginByImpact',
  'clampMarginSoiled',
] as const;

type FasteningRatio = (typeof FASTENING_RATIOS)[number];

export type FamilyRatio = BearingRatio | FasteningRatio;

/** Arithmetic alone, so that everybody whom a server serves may share it. */
const here: { -readonly [Name in FamilyName]?: Families[Name] } = {};

/** Makes the values of a family known to whoever asks for them. */
export function provideFamily<Name extends FamilyName>(name: Name, family: Families[Name]): void {
  here[name] = family;
}

/** The value of a quantity that belongs to a family. */
export function familyValue(id: FamilyQuantity, now: Standing): number {
  if (isBearingQuantity(id)) return family('bearing').value(id, now);
  if (isLifeQuantity(id)) return family('life').value(id, now);
  if (isAxleQuantity(id)) return family('axle').value(id, now);
  if (isFasteningQuantity(id)) return family('fastening').value(id, now);
  return family('swing').value(id, now);
}

export const isFamilyQuantity = (id: string): id is FamilyQuantity =>
  isBearingQuantity(id) ||
  isLifeQuantity(id) ||
  isAxleQuantity(id) ||
  isFasteningQuantity(id) ||
  isSwingQuantity(id);

/** A bare number that belongs to a family. */
export const familyRatio = (id: FamilyRatio, now: Standing): number =>
  isBearingRatio(id) ? family('bearing').ratios[id](now) : family('fastening').ratios[id](now);

export const isFamilyRatio = (id: string): id is FamilyRatio =>
  isBearingRatio(id) || isFasteningRatio(id);

/** Which family a quantity or a bare number belongs to, if to any. */
export function familyOf(id: string): FamilyName | undefined {
  if (isBearingQuantity(id) || isBearingRatio(id)) return 'bearing';
  if (isLifeQuantity(id)) return 'life';
  if (isAxleQuantity(id)) return 'axle';
  if (isFasteningQuantity(id) || isFasteningRatio(id)) return 'fastening';
  if (isSwingQuantity(id)) return 'swing';
  return undefined;
}

/** @throws Error where nobody has imported the family: only whoever writes pages can forget it */
function family<Name extends FamilyName>(name: Name): Families[Name] {
  const found: Families[Name] | undefined = here[name];
  if (!found) throw new Error(`these values need an import of scenes/values/${name}.ts`);
  return found;
}

const isBearingRatio = (id: string): id is BearingRatio =>
  (BEARING_RATIOS as readonly string[]).includes(id);

const isFasteningRatio = (id: string): id is FasteningRatio =>
  (FASTENING_RATIOS as readonly string[]).includes(id);
