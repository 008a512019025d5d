import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { benchReport } from '#core/judgement/bench-report.ts';
import { edited } from '../core/document/edit.ts';
import { valueOf } from '../core/example-corner.ts';
import { planePair } from '../core/judgement/plane-table.ts';
import { GARAGE_FILES, garageBench } from '../garage-benches.ts';

const path = (name: string): string => fileURLToPath(new URL(`../../${name}`, import.meta.url));

const run = (words: readonly string[], input = '') => {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [path('src/cli/judge.ts'), ...words],
    // All scenarios at once are more than a megabyte.
    { input, encoding: 'utf8', maxBuffer: 2 ** 25 },
  );
  return { status, stdout, stderr };
};

describe('judge', () => {
  test('answers a bench with its report', () => {
    const { status, stdout, stderr } = run([path('seeds/garage/hatchback-spacers.json')]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(JSON.parse(stdout)).toEqual(valueOf(benchReport(garageBench('hatchback-spacers'))));
  });

  test('agrees with plane trigonometry on every scenario', () => {
    const ids = Array.from(GARAGE_FILES.keys());
    const { stdout } = run([], JSON.stringify(Array.from(GARAGE_FILES.values())));
    const reports = JSON.parse(stdout) as readonly ReturnType<typeof reportOf>[];
    expect(reports).toHaveLength(ids.length);
    for (const [k, report] of reports.entries()) {
      for (const [i, { results }] of report.variants.entries()) {
        const { before, after } = planePair(ids[k] ?? '', i);
        const scrub = results.find(({ id }) => id === 'scrubRadius');
        // Tolerance: the plane sees no toe; see garage.reference.test.ts.
        expect(
          Math.abs((scrub?.before.value ?? NaN) - (before['scrubRadius'] ?? NaN)),
        ).toBeLessThan(0.15);
        expect(Math.abs((scrub?.after.value ?? NaN) - (after['scrubRadius'] ?? NaN))).toBeLessThan(
          0.15,
        );
      }
    }
  });

  test('says where every number comes from, and what to have checked', () => {
    const { inputs, variants } = reportOf('hatchback-spacers');
    expect(inputs.find(({ id }) => id === 'lowerIn_mm')).toMatchObject({
      value: 122,
      plusMinus: 3,
      source: 'measured',
    });
    expect(inputs.find(({ id }) => id === 'spread_mm')).toMatchObject({ source: 'typical' });
    expect(variants[0]?.toHaveChecked[0]).toContain('Local codes come first');
  });

  test('refuses a wrong document with its place, and answers nothing', () => {
    const file = edited(GARAGE_FILES.get('by-eye'), { 'variants[0].both.spacer_mm': 'ten' });
    expect(run([], JSON.stringify(file))).toEqual({
      status: 2,
      stdout: '',
      stderr:
        'document 1: variants[0].both.spacer_mm: is the text "ten"; allowed: a number from 0 to 100 mm\n',
    });
  });

  test('says how it is used, and takes one file at a time', () => {
    expect(run(['--help']).stdout).toContain('seeds/garage/');
    expect(run(['a.json', 'b.json']).status).toBe(2);
  });
});

function reportOf(id: string) {
  return valueOf(benchReport(garageBench(id)));
}
