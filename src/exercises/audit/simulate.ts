import type { Exercise } from '../exercise.ts';
import { grade, type Marks } from '../grade.ts';
import { randomOf } from '../random.ts';
import { asAsked, carefulEntries, entriesAfter, guessed } from './learners.ts';

/** What became of learners who went through many exercises of a kind. Shares from 0 to 1. */
export interface Simulated {
  /** What somebody earns who makes no mistake. */
  readonly perfect: number;
  /** For each slip, by part and name, how often it is called by its name. */
  readonly named: ReadonlyMap<string, number>;
  /** What somebody earns who slips in the first part and carries on, of what is left without that part. */
  readonly carriedOn: number;
  /** What somebody earns who guesses. */
  readonly guessed: number;
}

/** Of a hundred who take a known wrong road, so many are told so. */
const NAMED = 0.98;
/** Guessing has to earn less than this. */
const GUESSED = 0.03;

/** Sends learners through exercises of a kind: a perfect one, one for each slip, one who carries on, one who guesses. */
export function simulate(id: string, exercises: readonly Exercise[]): Simulated {
  const random = randomOf(`guesses for ${id}`);
  const perfect = tally();
  const guesses = tally();
  const carriedOn = tally();
  const named = new Map<string, ReturnType<typeof tally>>();
  for (const exercise of exercises) {
    perfect.add(grade(exercise, carefulEntries(exercise, asAsked)));
    guesses.add(
      grade(
        exercise,
        exercise.parts.map((part) => guessed(part, random)),
      ),
    );
    for (const [index, part] of exercise.parts.entries()) {
      for (const slip of part.slips()) {
        const marks = grade(exercise, entriesAfter(exercise, index, asAsked(part, slip.value)));
        const key = `${part.definition.id}/${slip.id}`;
        const own = named.get(key) ?? tally();
        named.set(key, own);
        own.add({ earned: marks.parts[index]?.slip?.id === slip.id ? 1 : 0, possible: 1 });
        if (index > 0) continue;
        const cost = part.definition.weight ?? 1;
        carriedOn.add({ earned: marks.earned, possible: marks.possible - cost });
      }
    }
  }
  return {
    perfect: perfect.share(),
    named: new Map([...named].map(([key, one]) => [key, one.share()])),
    carriedOn: carriedOn.share(),
    guessed: guesses.share(),
  };
}

/** What is wrong where learners end so. */
export function simulationFaults(simulated: Simulated): readonly string[] {
  const { perfect, named, carriedOn, guessed: byGuessing } = simulated;
  return [
    ...(perfect === 1 ? [] : [`gives ${percent(perfect)} to work without a mistake`]),
    ...(carriedOn === 1 ? [] : [`leaves ${percent(carriedOn)} to a slip that is carried on`]),
    ...(byGuessing < GUESSED ? [] : [`gives ${percent(byGuessing)} to guesses`]),
    ...[...named]
      .filter(([, share]) => share < NAMED)
      .map(([slip, share]) => `names ${slip} in ${percent(share)} of its cases`),
  ];
}

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

function tally() {
  let [earned, possible] = [0, 0];
  return {
    add: (marks: Pick<Marks, 'earned' | 'possible'>): void => {
      earned += marks.earned;
      possible += marks.possible;
    },
    share: (): number => (possible === 0 ? 1 : earned / possible),
  };
}
