import { faultsOf, type Fault } from '#core/fault.ts';
import type {
  BenchCarDocument,
  BenchDocument,
  ValueDocument,
  VariantDocument,
} from '#core/judgement/bench-document.ts';
import {
  canRedo,
  canUndo,
  historyOf,
  stepped,
  type History,
} from '#core/judgement/bench-history.ts';
import { setUpBench } from '#core/judgement/bench-setup.ts';
import type { Judgement } from '#core/judgement/finding.ts';
import type { InputId } from '#core/judgement/inputs.ts';
import { judge } from '#core/judgement/judge.ts';
import { isAlike, NOTHING_DONE } from '#core/judgement/model.ts';

/**
 * The car on the bench with its changes: the document, its past, what is typed but not read yet, and what comes of it all.
 * Each change is a step that can be undone; what is typed in one field in one go is one step.
 */
export class Bench {
  readonly id: string;
  #history: History<BenchDocument>;
  #typed = $state.raw<Readonly<Record<string, string>>>({});
  readonly #changed: () => void;
  readonly document = $derived.by(() => this.#history.present);
  readonly #outcome = $derived.by(() => setUpBench(this.document));
  /** What judgements work on; undefined where the numbers make no car. */
  readonly setup = $derived.by(() => (this.#outcome.ok ? this.#outcome.value : undefined));
  readonly faults: readonly Fault[] = $derived.by(() => faultsOf(this.#outcome));
  /** The variant that is looked at. */
  #chosen = $state(0);
  readonly chosen = $derived.by(() =>
    Math.min(this.#chosen, Math.max(0, this.document.variants.length - 1)),
  );
  /** Whether left and right are told apart in what is looked at: as the car stands, or in what is done to it. */
  readonly sided: boolean = $derived.by(() => {
    const { setup } = this;
    return setup !== undefined && !isAlike(setup.car, setup.variants[this.chosen] ?? NOTHING_DONE);
  });
  /** One judgement for each variant, along the slope; of the car as it stands where there is none. */
  readonly judgements: readonly Judgement[] = $derived.by(() => {
    const { setup } = this;
    if (setup === undefined) return [];
    const changes = setup.variants.length === 0 ? [NOTHING_DONE] : setup.variants;
    return changes.map((change) => judge(setup, change));
  });

  /**
   * @param changed is told whenever there is something new to be kept
   */
  constructor(
    id: string,
    document: BenchDocument,
    typed: Readonly<Record<string, string>>,
    changed: () => void,
  ) {
    this.id = id;
    this.#history = $state.raw(historyOf(document));
    this.#typed = typed;
    this.#changed = changed;
  }

  get typed(): Readonly<Record<string, string>> {
    return this.#typed;
  }

  get canUndo(): boolean {
    return canUndo(this.#history);
  }

  get canRedo(): boolean {
    return canRedo(this.#history);
  }

  choose(variant: number): void {
    this.#chosen = variant;
  }

  /** Keeps what stands in a field as it is; nothing is kept of a field that says what the document says. */
  type(place: string, text: string | undefined): void {
    const { [place]: _, ...others } = this.#typed;
    if (text === undefined && !(place in this.#typed)) return;
    this.#typed = text === undefined ? others : { ...others, [place]: text };
    this.#changed();
  }

  /**
   * Makes a change.
   *
   * @param run changes of one run, as letter by letter in one field, are undone together
   */
  change(made: (document: BenchDocument) => BenchDocument, run?: string): void {
    const state = made(this.document);
    this.#history = stepped(this.#history, { kind: 'do', state, gesture: run });
    this.#changed();
  }

  /** Takes over what stands elsewhere, as one step: undo brings back what has stood here. */
  takeOver({ document, typed }: Pick<Bench, 'document' | 'typed'>): void {
    this.#typed = typed;
    this.change(() => document);
  }

  changeCar(change: Partial<BenchCarDocument>, run?: string): void {
    this.change((document) => ({ ...document, car: { ...document.car, ...change } }), run);
  }

  setValue(id: InputId, value: ValueDocument | undefined, run?: string): void {
    const { [id]: _, ...others } = this.document.car.values;
    this.changeCar({ values: value === undefined ? others : { ...others, [id]: value } }, run);
  }

  setVariant(index: number, variant: VariantDocument, run?: string): void {
    this.change(
      (document) => ({
        ...document,
        variants: document.variants.map((one, i) => (i === index ? variant : one)),
      }),
      run,
    );
  }

  addVariant(variant: VariantDocument): void {
    this.change((document) => ({ ...document, variants: [...document.variants, variant] }));
    this.#chosen = this.document.variants.length - 1;
  }

  removeVariant(index: number): void {
    this.#forget('variants[');
    this.change((document) => ({
      ...document,
      variants: document.variants.filter((_, i) => i !== index),
    }));
  }

  undo(): void {
    this.#step('undo');
  }

  redo(): void {
    this.#step('redo');
  }

  /** Ends a run: the next change is a step of its own. */
  settle(): void {
    this.#history = stepped(this.#history, { kind: 'settle' });
  }

  #step(kind: 'undo' | 'redo'): void {
    this.#history = stepped(this.#history, { kind });
    // What stands unread in a field belongs to what has just been left.
    this.#typed = {};
    this.#changed();
  }

  /** Texts in fields that go away go with them. */
  #forget(place: string): void {
    this.#typed = Object.fromEntries(
      Object.entries(this.#typed).filter(([one]) => !one.startsWith(place)),
    );
  }
}
