import type { Component, Snippet } from 'svelte';
import type { Car } from '#core/car/car.ts';
import { isChanged } from '#scenes/setting.ts';
import type { Exploration } from './exploration.svelte';
import type { Look } from './look';

/** What a fetched figure is given: the corner as the reader has set it, what the step shows, and the whole car. */
export interface FetchedFigureProps {
  readonly exploration: Exploration;
  readonly look: Look;
  /** The car that the exploration’s corner belongs to. */
  readonly car: Car;
  /** What stands right below the drawing, for a figure in the place of a view. */
  readonly choices?: Snippet;
  /** The view of the look that is drawn, for the corner’s views. */
  readonly index?: number;
}

export type FetchedFigure = Component<FetchedFigureProps>;

/** A page fetches the figures that its steps show, and no others. */
const FETCHED_FIGURES = {
  /** One of the corner’s views. */
  corner: () => import('./CornerFigure.svelte'),
  /** Turn plates and gauges. */
  swing: () => import('./SwingDisplay.svelte'),
  /** The alignment sheet. */
  sheet: () => import('./AlignmentSheet.svelte'),
  /** Wheel and carrier drawn apart. */
  bodies: () => import('./BodiesFigure.svelte'),
  /** A wheel bearing cut open. */
  bearing: () => import('./BearingFigure.svelte'),
  /** Rating life over spacer or load-line offset. */
  life: () => import('./LifeFigure.svelte'),
  /** The duty cycle of a bearing as bars. */
  duty: () => import('./DutyFigure.svelte'),
  /** Both front wheels from above. */
  axle: () => import('./AxleFigure.svelte'),
  /** The print of a standing wheel, and what it takes to turn it. */
  parking: () => import('./ParkingFigure.svelte'),
  /** The corner in space, in the place of a view. */
  space: () => import('./SpaceFigure.svelte'),
  /** A wheel’s fastener cut along its axis. */
  thread: () => import('./ThreadFigure.svelte'),
  /** What is measured on one’s own car, and how sure it is. */
  measure: () => import('./MeasureFigure.svelte'),
  /** Back and forth between the car as it stands and as it has been changed. */
  comparison: () => import('./BeforeAfter.svelte'),
  /** A quantity over a parameter. */
  chart: () => import('./CurveChart.svelte'),
} as const satisfies Record<string, () => Promise<{ readonly default: FetchedFigure }>>;

export type FetchedFigureId = keyof typeof FETCHED_FIGURES;

/** Figures that have been fetched: code alone, so that everybody whom a server serves may share it. */
const here = new Map<FetchedFigureId, FetchedFigure>();

/** A figure that has been fetched before. */
export const figureAtHand = (id: FetchedFigureId): FetchedFigure | undefined => here.get(id);

/** Which fetched figures stand above the corner’s views in a step. */
export const figuresAbove = (look: Look): readonly FetchedFigureId[] => [
  ...(look.swing ? (['swing'] as const) : []),
  ...(look.figure ? [look.figure] : []),
];

/** All fetched figures that a step begins with. */
const figuresIn = (look: Look): readonly FetchedFigureId[] => [
  ...figuresAbove(look),
  ...(look.views.length > 0 ? (['corner'] as const) : []),
  ...(look.start && isChanged(look.start) ? (['comparison'] as const) : []),
  ...(look.chart ? (['chart'] as const) : []),
];

export async function fetchFigure(id: FetchedFigureId): Promise<FetchedFigure> {
  const { default: figure } = await FETCHED_FIGURES[id]();
  here.set(id, figure);
  return figure;
}

/** Fetches all figures of a step, so that they are at hand when it is drawn. */
export async function fetchFigures(look: Look | undefined): Promise<void> {
  await Promise.all((look ? figuresIn(look) : []).map(fetchFigure));
}
