import { expect, test } from 'vitest';
import { JUDGED_IDS } from '#core/judgement/judged-quantities.ts';
import { explainingSteps } from '../../../src/lib/bench/explained-by.ts';
import { courseMap } from '../../../src/lib/lesson/lessons.ts';

test('every result leads to a step of a lesson that explains it', async () => {
  const steps = explainingSteps(await courseMap());
  expect(JUDGED_IDS.filter((id) => steps[id] === undefined)).toEqual([]);
});
