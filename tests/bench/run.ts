// npm run bench: times our own work beside something that does the same, in ratios.

import { benchExercises, exercisesPerSecond } from './exercises-bench.ts';
import type { BenchRow } from './paired-ratio.ts';
import { benchSolve } from './solve-bench.ts';

const BENCHES: Readonly<Record<string, () => readonly BenchRow[]>> = {
  solve: benchSolve,
  exercises: benchExercises,
};

for (const [name, bench] of Object.entries(BENCHES)) {
  console.log(`\n${name}: median ratio of pairs in the order A B B A, with its 95 % interval`);
  console.table(Object.fromEntries(bench().map((row) => [row.what, shown(row)])));
}

console.log(
  `\nexercises drawn and graded a second on one core: ${Math.round(exercisesPerSecond())}`,
);

// Loaded last: V8 lets plain objects whose keys begin alike share a layout, so what a browser driver keeps under x or
// force would slow our vectors and actions in the benches above, and not the classes of three.js beside them.
const { benchPage } = await import('./page-bench.ts');
const page = await benchPage();
console.log('\npage: one lesson in a real browser, on this machine');
if (page) console.table(Object.fromEntries(page.map(({ what, ...row }) => [what, row])));
else console.log('left out: it needs the built site (npm run build) and an installed Chromium');

function shown({ ratio, low, high, pairs, aim }: BenchRow) {
  return {
    ratio: digits(ratio),
    interval: `${digits(low)} to ${digits(high)}`,
    pairs,
    verdict: aim === undefined ? comparison(low, high) : judgement(low, high, aim),
  };
}

function digits(x: number): string {
  return x.toPrecision(3);
}

/** Within 5 % of 1 the machine's own noise decides. */
function comparison(low: number, high: number): string {
  if (high < 0.95) return 'faster';
  return low > 1.05 ? 'slower' : 'no difference shown';
}

function judgement(low: number, high: number, aim: number): string {
  if (high <= aim) return `meets the aim of ${aim}`;
  return low > aim ? `misses the aim of ${aim}` : `aim of ${aim} neither met nor missed`;
}
