/** What has been done on a page, one state after the other, to go back and forth in. */
export interface History<State> {
  readonly past: readonly State[];
  readonly present: State;
  readonly future: readonly State[];
  /** What the last step belongs to: steps of one gesture (a drag, a number being typed) are one step back. */
  readonly gesture?: string | undefined;
}

/** What may happen to it. */
export type HistoryStep<State> =
  | { readonly kind: 'do'; readonly state: State; readonly gesture?: string | undefined }
  | { readonly kind: 'undo' }
  | { readonly kind: 'redo' }
  /** The gesture has ended: the next step is one of its own. */
  | { readonly kind: 'settle' };

/** As many steps back are kept. */
const MOST_STEPS = 200;

export const historyOf = <State>(present: State): History<State> => ({
  past: [],
  present,
  future: [],
});

export const canUndo = ({ past }: History<unknown>): boolean => past.length > 0;
export const canRedo = ({ future }: History<unknown>): boolean => future.length > 0;

/** The history after a step. Undo and redo at their ends change nothing; doing something forgets what was undone. */
export function stepped<State>(history: History<State>, step: HistoryStep<State>): History<State> {
  const { past, present, future, gesture } = history;
  switch (step.kind) {
    case 'do': {
      if (step.state === present) return history;
      const goesOn = step.gesture !== undefined && step.gesture === gesture;
      return {
        past: goesOn ? past : [...past, present].slice(-MOST_STEPS),
        present: step.state,
        future: [],
        gesture: step.gesture,
      };
    }
    case 'undo': {
      const before = past.at(-1);
      if (before === undefined) return history;
      return { past: past.slice(0, -1), present: before, future: [present, ...future] };
    }
    case 'redo': {
      const [after, ...rest] = future;
      if (after === undefined) return history;
      return { past: [...past, present], present: after, future: rest };
    }
    case 'settle':
      return { past, present, future };
  }
}
