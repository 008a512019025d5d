import { describe, expect, test } from 'vitest';
import { piecesOf, wordsFrom } from '../../../src/cli/pages/html.ts';
import { linkedPage, linkFaults } from '../../../src/cli/pages/links.ts';
import { pageFaults } from '../../../src/cli/pages/page-faults.ts';

const HEAD =
  '<head><title>Two points</title><meta name="description" content="What two points say of an axis." /></head>';
const page = (body: string, head = HEAD): string =>
  `<!doctype html><html lang="en">${head}<body>${body}</body></html>`;

describe('a page in pieces', () => {
  test('has tags with their attributes, and plain text', () => {
    expect(piecesOf('<a href="x?a=1&amp;b=2" hidden>r &lt; q</a><br />')).toEqual([
      { kind: 'open', name: 'a', attributes: { href: 'x?a=1&b=2', hidden: '' } },
      { kind: 'text', text: 'r < q' },
      { kind: 'close', name: 'a' },
      { kind: 'open', name: 'br', attributes: {} },
      { kind: 'close', name: 'br' },
    ]);
  });

  test('keeps scripts and comments out of its words', () => {
    const pieces = piecesOf(
      '<p>One<!-- two --><script>if (a < b) "</p>"</script><b>three</b></p>four',
    );
    expect(wordsFrom(pieces, 0)).toBe('Onethree');
  });
});

test('a sound page has no fault', () => {
  const body =
    '<h1>A</h1><p>Costs nothing.</p><h2>B</h2><h3>C</h3><h2>D</h2><svg aria-hidden="true"></svg>' +
    '<figure><svg><title>T</title><desc>D</desc><path d="M0 0" /></svg></figure>' +
    '<math><semantics><mi>r</mi><annotation encoding="application/x-tex">\\frac12</annotation></semantics></math>';
  expect(pageFaults(page(body))).toEqual([]);
});

test.each([
  ['without a title', page('<h1>A</h1>', '<head></head>'), 'titles'],
  ['without a description', page('<h1>A</h1>', '<head><title>A</title></head>'), 'description'],
  ['without a heading', page('<p>A</p>'), 'has 0 headings of the first level'],
  ['with two first headings', page('<h1>A</h1><h1>B</h1>'), 'has 2 headings'],
  ['whose headings jump', page('<h1>A</h1><h3>B</h3>'), 'jumps from level 1 to 3 at “B”'],
  ['with an empty heading', page('<h1>A</h1><h2> </h2>'), 'empty heading'],
  ['with TeX left in it', page('<h1>A</h1><p>So $r = q$.</p>'), 'not set'],
  ['with a command of TeX in it', page('<h1>A</h1><p>\\tan\\sigma</p>'), 'not set'],
  ['with a drawing that says nothing', page('<h1>A</h1><svg></svg>'), 'a drawing without'],
  ['with a picture that says nothing', page('<h1>A</h1><img src="a.png">'), 'a picture without'],
  ['with a figure that says nothing', page('<h1>A</h1><figure></figure>'), 'a figure without'],
])('a page %s is found', (_, html, fault) => {
  expect(pageFaults(html)).toContainEqual(expect.stringContaining(fault));
});

describe('links', () => {
  const files = new Set(['index.html', 'a/index.html', 'a/b/index.html', 'icon.svg']);
  const faultsOf = (file: string, html: string): readonly string[] =>
    linkFaults([linkedPage(file, html), linkedPage('a/index.html', `<p id="here">A</p>`)], files);

  test.each([
    ['index.html', 'a/'],
    ['index.html', './a'],
    ['index.html', 'a/#here'],
    ['index.html', 'icon.svg'],
    ['a/b/index.html', '../../'],
    ['a/b/index.html', '..#here'],
    ['index.html', 'https://example.org/x'],
    ['index.html', 'data:,x'],
  ])('from %s to %s lead somewhere', (file, address) => {
    expect(faultsOf(file, `<a href="${address}">x</a>`)).toEqual([]);
  });

  test.each([
    ['index.html', 'c/', 'leads to no page'],
    ['index.html', 'a/#there', 'leads to no place'],
    ['a/b/index.html', '../b/c', 'leads to no page'],
    ['a/b/index.html', '#nowhere', 'leads to no place'],
  ])('from %s to %s are faults', (file, address, fault) => {
    expect(faultsOf(file, `<a href="${address}">x</a>`)).toEqual([expect.stringContaining(fault)]);
  });
});
