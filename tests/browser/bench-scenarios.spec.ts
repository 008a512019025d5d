import { expect, test, type Page } from '@playwright/test';
import { SHOWN } from '#core/display.ts';
import { benchFragment } from '#core/judgement/bench-link.ts';
import { JUDGED_IDS, judgedQuantity, type JudgedId } from '#core/judgement/judged-quantities.ts';
import { onRight } from '../core/judgement/plane-bench.ts';
import { planePair, planeTrials, type PlanePair } from '../core/judgement/plane-table.ts';
import { seeded } from '../core/uncertainty/seeded.ts';
import { GARAGE_FILES, garageBench } from '../garage-benches.ts';
import { WIDE } from './site.ts';
import { visit } from './visit.ts';

test.use({ viewport: WIDE });

/** How near the plane’s numbers are, as in tests/core/judgement/garage.reference.test.ts, in the units shown. */
const NEAR: Readonly<Record<string, (size: number) => number>> = {
  length: () => 0.15,
  angle: () => 0.02,
  moment: (size) => 0.3 + 0.006 * size,
  force: (size) => 0.8 + 0.006 * size,
  life: (size) => 1e-6 * size,
  share: (size) => 1e-9 * size,
};

const TRIALS = 1500;

interface Cell {
  readonly value: number;
  /** Ends of the interval; missing where the number is shown as exact. */
  readonly ends: readonly number[];
}

interface Row {
  readonly key: string;
  readonly before: Cell;
  /** Missing where the table says that nothing changes. */
  readonly after?: Cell;
}

for (const id of GARAGE_FILES.keys()) {
  test(`${id}: opened by its link, the bench shows the numbers and intervals of plane trigonometry`, async ({
    page,
  }) => {
    const document = garageBench(id);
    await visit(page, `/bench#${benchFragment(document)}`);
    for (const [i, { name }] of document.variants.entries()) {
      await page.getByRole('button', { name, exact: true }).first().click();
      await expect(page.getByText('by 10000 trials')).toBeVisible();
      const plane = planePair(id, i);
      const tried = planeTrials(id, i, TRIALS, seeded(77 + i));
      const rows = await shownRows(page);
      expect(rows.length).toBeGreaterThan(24);
      const off = rows.flatMap((row) => [
        ...cellOff(row, 'before', row.before, plane, tried),
        ...cellOff(row, 'after', row.after ?? row.before, plane, tried),
      ]);
      expect(off, name).toEqual([]);
    }
  });
}

/** What is wrong with a number on the page or with its interval, beside the plane’s. */
function cellOff(
  { key }: Row,
  when: 'before' | 'after',
  cell: Cell,
  plane: PlanePair,
  tried: readonly PlanePair[],
): readonly object[] {
  const id = idOf(key);
  const { kind } = judgedQuantity(id);
  const name = key.endsWith(' right') ? onRight(id) : id;
  const theirs = plane[when][name] ?? NaN;
  // Half of the last digit that is shown.
  const digit = 0.5 * 10 ** -SHOWN.metric[kind].decimals;
  const near = (NEAR[kind]?.(Math.abs(theirs)) ?? NaN) + digit;
  const faults: object[] = [];
  if (!(Math.abs(cell.value - theirs) <= near))
    faults.push({ key, when, shown: cell.value, theirs });
  const column = tried.map((one) => one[when][name] ?? NaN).sort((a, b) => a - b);
  const ends = [0.025, 0.975].map((share) => column[Math.round(share * (TRIALS - 1))] ?? NaN);
  const width = (ends[1] ?? NaN) - (ends[0] ?? NaN);
  const tail = (id.endsWith('Life') ? 0.25 : 0.1) * width;
  for (const [j, end] of ends.entries()) {
    const shown = cell.ends[j] ?? cell.value;
    if (!(Math.abs(shown - end) <= near + tail)) faults.push({ key, when, shown, end });
  }
  return faults;
}

function idOf(key: string): JudgedId {
  const [word = ''] = key.split(' ');
  const id = JUDGED_IDS.find((one) => one === word);
  if (id !== undefined) return id;
  throw new Error(`${key} is no result`);
}

/** Every row of the tables, whether or not its group is open. */
async function shownRows(page: Page): Promise<readonly Row[]> {
  const read = await page.locator('tbody[data-result]').evaluateAll((bodies) =>
    bodies.map((body) => ({
      key: body.getAttribute('data-result') ?? '',
      cells: [...body.querySelectorAll('td:not(.none)')].map((cell) => ({
        size: cell.querySelector('.size')?.textContent ?? '',
        word: cell.querySelector('.word')?.textContent ?? '',
        interval: cell.querySelector('.interval')?.textContent ?? '',
      })),
    })),
  );
  return read.map(({ key, cells }) => {
    const { negative } = judgedQuantity(idOf(key));
    const [before, after] = cells.map(({ size, word, interval }) => ({
      value: (word !== '' && word === negative ? -1 : 1) * numberIn(size),
      ends: interval === '' ? [] : interval.split(' to ').map(numberIn),
    }));
    if (before === undefined) throw new Error(`${key} shows no number`);
    // A lone first cell is a result that stays as it is.
    return after === undefined ? { key, before } : { key, before, after };
  });
}

const numberIn = (text: string): number =>
  Number(/-?[\d.]+/.exec(text.replaceAll('−', '-').replaceAll('\u202f', ''))?.[0] ?? NaN);
