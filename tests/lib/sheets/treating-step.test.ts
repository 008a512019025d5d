import { expect, test } from 'vitest';
import { treatingStep, type LessonOutline } from '../../../src/lib/sheets/treating-step.ts';

const LESSON: LessonOutline = {
  slug: 'at-the-road',
  title: 'At the road',
  steps: [
    { title: 'Where it meets', measures: [], controls: [] },
    { title: 'Inboard is positive', measures: ['scrub radius'], controls: [] },
    { title: 'Push outward', measures: ['scrub radius'], controls: ['spacer'] },
    { title: 'Another inset', measures: ['scrub radius'], controls: ['inset'] },
    { title: 'Ahead', measures: ['mechanical trail'], controls: ['upperRearward'] },
  ],
};

const step = (asks: string, confuses: string, kind = 'some-kind') =>
  treatingStep(LESSON, { asks, confuses, kind });

test('a slip is treated where its quantity is first dimensioned', () => {
  expect(step('scrub radius', 'inboard and outboard')).toBe(2);
  expect(step('mechanical trail', 'sine and tangent')).toBe(5);
});

test('a slip is rather treated where the thing that is changed can be moved', () => {
  expect(step('scrub radius', 'half of the spacer')).toBe(3);
  expect(step('scrub radius', 'track', 'inset-scrub')).toBe(4);
});

test('a slip about something else sends to the beginning', () => {
  expect(step('rim force', 'assist')).toBe(1);
});
