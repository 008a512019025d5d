import { describe, expect, test } from 'vitest';
import { lessonFacts } from '../../../src/lib/lesson/lesson.ts';

const PATH = '/lessons/a-axis/02-at-the-road.md';

const METADATA = {
  title: 'Where the axis meets the road',
  summary: 'Two marks on the road.',
  minutes: 30,
  car: 'siskin',
  objectives: ['find the scrub radius'],
  lookBack: ['inclination-from-pivots'],
  practice: { 'spacer-scrub': [1] },
  sources: ['ISO 8855:2011'],
  steps: [{ title: 'Two marks', look: { at: 'road' } }],
};

test('the address, the part and the number of a lesson come from its path', () => {
  expect(lessonFacts(PATH, METADATA)).toMatchObject({ slug: 'at-the-road', part: 'a', number: 2 });
});

test('a lesson says what it says', () => {
  const { title, minutes, steps } = lessonFacts(PATH, METADATA);
  expect([title, minutes]).toEqual([METADATA.title, 30]);
  expect(steps).toMatchObject([
    { title: 'Two marks', look: { closeness: 'road', views: ['front'] } },
  ]);
});

test('an objective knows the exercises that show it', () => {
  const { objectives, practice } = lessonFacts(PATH, {
    ...METADATA,
    objectives: ['find the scrub radius', 'say its sign', 'say who is right'],
    practice: { 'spacer-scrub': [1, 2], 'scrub-from-pivots': [1] },
  });
  expect(practice).toEqual(['spacer-scrub', 'scrub-from-pivots']);
  expect(objectives.map(({ shownBy }) => shownBy)).toEqual([practice, ['spacer-scrub'], []]);
});

describe('a lesson that does not build names its file:', () => {
  test.each([
    ['no title', { title: undefined }, 'title is undefined; allowed: some text'],
    ['an empty summary', { summary: '' }, 'summary is ""; allowed: some text'],
    ['minutes in words', { minutes: 'thirty' }, 'minutes is "thirty"; allowed: a number'],
    ['no minutes at all', { minutes: 0 }, 'minutes is 0'],
    ['no car', { car: undefined }, 'car is undefined'],
    ['one text for a list', { objectives: 'find it' }, 'objectives is "find it"; allowed: a list'],
    ['a list of numbers', { sources: [1] }, 'sources is [1]; allowed: a list of texts'],
    [
      'exercises that show nothing',
      { practice: ['spacer-scrub'] },
      'allowed: exercise kinds, each',
    ],
    ['an objective that is not there', { practice: { 'spacer-scrub': [2] } }, 'allowed: exercise'],
    [
      'a look with a slip of the pen',
      { steps: [{ title: 'Two marks', look: { at: 'raod' } }] },
      'step “Two marks”: <Look at="raod">: allowed are whole, road, hub',
    ],
  ])('%s', (_, change, message) => {
    const read = () => lessonFacts(PATH, { ...METADATA, ...change });
    expect(read).toThrow(PATH);
    expect(read).toThrow(message);
  });

  test.each(['/lessons/a-axis/at-the-road.md', '/lessons/zz/01-x.md', '/lessons/q-axis/01-x.md'])(
    'a path %s',
    (path) => {
      expect(() => lessonFacts(path, METADATA)).toThrow('lessons are named like');
    },
  );
});
