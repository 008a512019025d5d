import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { JOBS } from '../../../src/lib/trails/jobs.ts';
import { hoursText, trailTime } from '../../../src/lib/trails/trail-time.ts';
import { TRAILS, type Stop, type Trail } from '../../../src/lib/trails/trails.ts';
import { LESSON_FILES } from '../../lessons/lesson-files.ts';

const COURSE = LESSON_FILES.map(({ path }) => /\d+-(.+)\.md$/.exec(path)?.[1] ?? '');
const DERIVATIONS = readdirSync(new URL('../../../derivations/', import.meta.url)).map((file) =>
  file.replace(/^\d+-(.+)\.md$/, '$1'),
);
const lessonsOf = (stops: readonly Stop[]): readonly string[] =>
  stops.flatMap((stop) => (stop.kind === 'lesson' ? [stop.slug] : []));

describe.each<Trail>(TRAILS)('$name', ({ stops, goal, able }) => {
  const lessons = lessonsOf(stops);

  test('stops at no place twice', () => {
    const places = stops.map((stop) => JSON.stringify(stop));
    expect(new Set(places).size).toBe(places.length);
    expect(new Set(lessons).size).toBe(lessons.length);
  });

  test('takes lessons in the order of the course', () => {
    const known = lessons.filter((slug) => COURSE.includes(slug));
    expect(known).toEqual(COURSE.filter((slug) => known.includes(slug)));
    expect(known.length).toBeGreaterThan(0);
  });

  test('names only lessons that there are, once the course is whole', () => {
    if (COURSE.includes('capstone'))
      expect(lessons.filter((slug) => !COURSE.includes(slug))).toEqual([]);
    expect(lessons.length).toBeGreaterThan(8);
  });

  test('names derivations that there are', () => {
    const named = stops.flatMap((stop) => (stop.kind === 'derivation' ? [stop.slug] : []));
    expect(named.filter((slug) => !DERIVATIONS.includes(slug))).toEqual([]);
  });

  test('says what one can do at its end, and stops at its goal', () => {
    expect(able.length).toBeGreaterThan(2);
    if (goal !== undefined) expect(lessons).toContain(goal);
  });
});

test('the student’s trail has every lesson and every derivation', () => {
  const { stops } = TRAILS[1];
  expect(lessonsOf(stops)).toEqual(expect.arrayContaining(COURSE));
  const derived = stops.flatMap((stop) => (stop.kind === 'derivation' ? [stop.slug] : []));
  expect([...derived].sort()).toEqual([...DERIVATIONS].sort());
});

test('the technician’s trail has every job', () => {
  const jobs = TRAILS[0].stops.flatMap((stop) => (stop.kind === 'job' ? [stop.id] : []));
  expect(jobs).toEqual(JOBS.map(({ id }) => id));
});

test.each(JOBS)('the job $id says how, what to write down, and what can hurt', (one) => {
  expect(one.steps.length).toBeGreaterThan(2);
  expect(one.record).toMatch(/\.$/);
  expect(one.caution).toMatch(/\.$/);
});

test('the time of a trail is that of its lessons and derivations, each kind once more and again, and its jobs', () => {
  const stops: readonly Stop[] = [
    { kind: 'lesson', slug: 'one', why: '' },
    { kind: 'derivation', slug: 'two' },
    { kind: 'job', id: 'swing' },
    { kind: 'lesson', slug: 'not-written-yet', why: '' },
  ];
  const time = trailTime(
    stops,
    [{ slug: 'one', minutes: 30, practice: ['a', 'b'] }],
    [{ slug: 'two', minutes: 5 }],
  );
  const { minutes } = JOBS.find(({ id }) => id === 'swing') ?? { minutes: NaN };
  expect(time).toEqual({ read: 35, secure: 16, atCar: minutes });
});

test.each([
  [3, '15 minutes'],
  [40, '45 minutes'],
  [58, '1 hour'],
  [75, '1¼ hours'],
  [405, '6¾ hours'],
])('%i minutes are said as %s', (minutes, words) => {
  expect(hoursText(minutes)).toBe(words);
});
