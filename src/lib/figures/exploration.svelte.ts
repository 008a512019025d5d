import type { CornerModel } from '#core/car/car.ts';
import type { Guesses } from '#scenes/corner/measure-place.ts';
import { standing } from '#scenes/corner/standing.ts';
import type { ParameterId } from '#scenes/parameters.ts';
import {
  adjusted,
  AS_IT_STANDS,
  between,
  isChanged,
  partOf,
  sameCar,
  sameSetting,
  unchanged,
  type Setting,
} from '#scenes/setting.ts';

const GLIDE_MS = 700;

/**
 * One corner being explored: the setting that figure, prose and table share, with undo. Made for each page,
 * so that nothing outlives a visit or reaches another reader on the server.
 */
export class Exploration {
  readonly model: CornerModel;
  setting = $state.raw<Setting>(AS_IT_STANDS);
  /** Parameters that wait for a prediction. */
  locked = $state.raw<readonly ParameterId[]>([]);
  /** What the reader predicted on this step: stays in the figure beside what came out. */
  guesses = $state.raw<Guesses>({});
  readonly now = $derived.by(() => standing(this.model, this.setting));
  readonly before = $derived.by(() => standing(this.model, unchanged(this.setting)));
  readonly changed = $derived(isChanged(this.setting));
  /** A change of which only a part is shown, beside the part that was shown last. */
  #part = $state.raw<{
    readonly whole: Setting;
    readonly shown: Setting;
    readonly share: number;
  }>();
  readonly #shownPart = $derived(
    this.#part && sameCar(this.#part.shown, this.setting) ? this.#part : undefined,
  );
  /** How much of the change is shown, from 0, the car as it stands, to 1: all of it. */
  readonly share = $derived(this.#shownPart?.share ?? 1);
  /** Whether there is a before and an after, whichever of them is shown. */
  readonly compared = $derived(this.changed || this.#shownPart !== undefined);
  #past = $state.raw<readonly Setting[]>([]);
  readonly canUndo = $derived(this.#past.length > 0);
  /** What a glide in progress shows, and the frame that it waits for. */
  #gliding: { readonly show: (way: number) => void; frame: number } | undefined;

  constructor(model: CornerModel) {
    this.model = model;
  }

  /** Marks the present setting as one to come back to; a drag or a run of key presses calls it once. */
  remember(): void {
    this.#finishGlide();
    if (this.#past.at(-1) !== this.setting) this.#past = [...this.#past.slice(-99), this.setting];
  }

  /** Ends a run of changes: where nothing is different there is nothing to come back from. */
  settle(): void {
    const last = this.#past.at(-1);
    if (last && sameSetting(last, this.setting)) this.#past = this.#past.slice(0, -1);
  }

  /** Changes parameters; locked ones stay. */
  adjust(changes: Partial<Setting>): void {
    this.#finishGlide();
    const allowed = Object.fromEntries(
      Object.entries(changes).filter(([id]) => !this.locked.includes(id as ParameterId)),
    );
    const next = adjusted(this.setting, allowed);
    // A finger that rests on a step moves nothing, and nothing is to be drawn again for it.
    if (!sameSetting(next, this.setting)) this.setting = next;
  }

  /** One change that can be undone by itself. */
  change(changes: Partial<Setting>): void {
    this.remember();
    this.adjust(changes);
    this.settle();
  }

  undo(): void {
    this.#finishGlide();
    const last = this.#past.at(-1);
    if (!last) return;
    this.#past = this.#past.slice(0, -1);
    this.setting = withLocked(last, this.setting, this.locked);
  }

  /** Back to where the figure began: the car as it stands unless said. */
  reset(start = AS_IT_STANDS): void {
    this.remember();
    this.#part = undefined;
    this.setting = withLocked(start, this.setting, this.locked);
    this.settle();
  }

  /** Shows a share of the change, on a car steered and loaded as the reader has it. Whatever else is changed begins a whole of its own. */
  showPart(share: number): void {
    this.#finishGlide();
    this.#showPart(this.#shownPart?.whole ?? this.setting, share);
  }

  /** From after to before, or back: in view, or at once where motion is not wanted. */
  flip(still: boolean): void {
    this.remember();
    const whole = this.#shownPart?.whole ?? this.setting;
    const from = this.share;
    const to = from > 0.5 ? 0 : 1;
    this.#run(still, (way) => {
      this.#showPart(whole, from + way * (to - from));
    });
  }

  /** Goes to a setting at once, past every lock: a step's beginning. */
  place(setting: Setting): void {
    this.#finishGlide();
    this.#part = undefined;
    this.setting = setting;
  }

  /** Moves to a setting in view, or jumps there where motion is not wanted. */
  glide(to: Setting, still: boolean): void {
    this.remember();
    const from = this.setting;
    this.#run(still, (way) => {
      this.setting = way === 1 ? to : between(from, to, way);
    });
  }

  #showPart(whole: Setting, share: number): void {
    const shown = partOf(whole, this.setting, share);
    this.#part = { whole, shown, share };
    this.setting = shown;
  }

  /** Shows a way from 0 to 1: all of it, gently at both ends, or its end at once. */
  #run(still: boolean, show: (way: number) => void): void {
    if (still) {
      show(1);
      return;
    }
    const start = performance.now();
    const glide = { show, frame: 0 };
    const step = (time: number): void => {
      const share = Math.min(1, Math.max(0, (time - start) / GLIDE_MS));
      if (share === 1) {
        this.#finishGlide();
        return;
      }
      show(share * share * (3 - 2 * share));
      glide.frame = requestAnimationFrame(step);
    };
    glide.frame = requestAnimationFrame(step);
    this.#gliding = glide;
  }

  /** Whoever takes hold of something while the figure glides begins where the glide would have ended. */
  #finishGlide(): void {
    const glide = this.#gliding;
    if (!glide) return;
    cancelAnimationFrame(glide.frame);
    this.#gliding = undefined;
    glide.show(1);
  }
}

const withLocked = (wanted: Setting, present: Setting, locked: readonly ParameterId[]): Setting =>
  adjusted(wanted, Object.fromEntries(locked.map((id) => [id, present[id]])));
