import { describe, expect, test } from 'vitest';
import { LESSON_FILES } from './lesson-files.ts';
import { proseFaults } from './prose.ts';

describe.each(LESSON_FILES)('the prose of $path', (file) => {
  test('holds no number that should be computed, and nothing that would be taken for markup', () => {
    expect(proseFaults(file)).toEqual([]);
  });
});

const faultsOf = (body: string): readonly string[] =>
  proseFaults({ path: 'lessons/x.md', text: `---\nminutes: 25\n---\n\n${body}\n` });

describe('a fault is found, with its line,', () => {
  test.each([
    ['a number', 'The spacer is\n20 mm thick.', 'lessons/x.md:6: “20” is a bare number'],
    ['a decimal number', 'A lever of 8.2 mm.', 'lessons/x.md:5: “8.2” is a bare number'],
    ['a decimal comma', 'A lever of 8,2 mm.', 'lessons/x.md:5: “8,2” is a bare number'],
    ['a fraction', 'A lever of ½ inch.', 'lessons/x.md:5: “½” is a bare number'],
    ['a number in a table', '| car | r |\n| --- | --- |\n| Linnet | −8 |', 'x.md:7: “8”'],
    ['a number in a heading', '## Push it 20 out', 'x.md:5: “20”'],
    ['a number in words', 'It moves twenty millimetres.', 'x.md:5: “twenty millimetres”'],
    ['a hyphened one', 'A twenty-five millimetre spacer.', 'x.md:5: “twenty-five millimetre”'],
    ['one with an article', 'By half a degree.', 'x.md:5: “half a degree”'],
    ['a ratio in words', 'It is three times as long.', 'x.md:5: “three times as”'],
    ['a percentage', 'About ten per cent more.', 'x.md:5: “ten per cent”'],
    ['a number beside a tag', '<Value of="camber" /> and 3 more.', 'x.md:5: “3”'],
    ['a number beside a formula', '$r = 3$ makes 4.', 'x.md:5: “4”'],
    ['a less-than sign', 'Where r < q holds.', 'x.md:5: “<” is taken for markup'],
    ['a brace', 'The set {a, b}.', 'x.md:5: “{” is taken for markup'],
    ['a brace in disguise', 'The set &#123;a.', 'x.md:5: “&#123;” is taken for markup'],
    ['a tag that nobody made', 'Look at <Figure of="camber" />.', 'x.md:5: “<Figure” is taken'],
    ['a tag of HTML', 'A <br> here.', 'x.md:5: “<br” is taken for markup'],
  ])('%s', (_, body, expected) => {
    expect(faultsOf(body)).toContainEqual(expect.stringContaining(expected));
  });
});

test.each([
  ['in an attribute', '<Value of="spacer" set="spacer: 20" />'],
  [
    'in a tag over several lines',
    '<Predict\n  of="camber"\n  set="steer: 30"\n  slips="">\n\nSo?\n\n</Predict>',
  ],
  ['in a formula', 'Here $q = r + 20$ and\n\n$$\nr_{1} < 10\n$$'],
  ['of a standard', 'As in ISO 8855:2011 and ISO 281, or SAE J670.'],
  ['of a tyre', 'The marking 205/55 R16 91V says it.'],
  ['of a thread', 'An M12 bolt.'],
  ['of a list', '1. First\n2. Second'],
  ['in the address of a link', 'See [the glossary](/glossary#part-2).'],
  ['that is none', 'Two points make one axis, and both feet stand on it.'],
])('a number %s is no fault', (_, body) => {
  expect(faultsOf(body)).toEqual([]);
});
