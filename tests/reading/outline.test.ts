/** The outline as an editor shows it: what holds what, under which number, and where its line stands. */
import { expect, test } from 'vitest';
import { read } from '../../server/reading/read.ts';
import type { OutlineItem } from '../../server/reading/reading.ts';

const outline = (text: string): readonly OutlineItem[] => read({ path: 'a.md', text }).outline;

/** One line an item, indented by what holds it. */
const drawn = (items: readonly OutlineItem[], indent = ''): readonly string[] =>
  items.flatMap(({ kind, place, title, children }) => [
    `${indent}${kind} ${place}: ${title}`,
    ...drawn(children, `${indent}  `),
  ]);

test('section, parts, articles and paragraphs, each in what holds it', () => {
  const text = [
    'TALLOW RIDGE TRANSIT EXCHANGE',
    '',
    'SECTION 32 13 13 - CONCRETE PAVING',
    'PART 2 - PRODUCTS',
    'A. Cement.',
    '2.02 MIXTURES',
    'A. Walks:',
    '1. Air: 6 percent.',
    'B. Ramps.',
    'PART 3 - EXECUTION',
    '3.01 CURING',
    'Cure by one of the following:',
    'A. Burlap.',
    '- for ramps',
    'B. Sheet.',
  ].join('\n');
  expect(drawn(outline(text))).toEqual([
    'article TALLOW RIDGE TRANSIT EXCHANGE: TALLOW RIDGE TRANSIT EXCHANGE',
    'section 32 13 13: 32 13 13 CONCRETE PAVING',
    '  part PART 2: PRODUCTS',
    '    article PRODUCTS: PRODUCTS',
    '      paragraph PART 2.A: Cement.',
    '    article 2.02: MIXTURES',
    '      paragraph 2.02.A: Walks:',
    '        paragraph 2.02.A.1: Air: 6 percent.',
    '      paragraph 2.02.B: Ramps.',
    '  part PART 3: EXECUTION',
    '    article 3.01: CURING',
    '      paragraph 3.01.A: Burlap.',
    '      paragraph 3.01.B: Sheet.',
  ]);
});

test('an item spans what it holds, and its title stands in its line', () => {
  const text = '3.01 CURING\n\nA. Walks:\n1. Wet\nburlap.\n2. Sheet.\n\nB. Ramps.\n';
  const [article] = outline(text);
  const [walks] = article?.children ?? [];
  const words = (item: OutlineItem | undefined): readonly string[] => [
    text.slice(item?.start, item?.end),
    text.slice(item?.titleStart, item?.titleEnd),
  ];
  expect(words(article)).toEqual([text, 'CURING']);
  expect(words(walks)).toEqual(['Walks:\n1. Wet\nburlap.\n2. Sheet.', 'Walks:']);
  expect(words(walks?.children[0])).toEqual(['Wet\nburlap.', 'Wet\nburlap.']);
});

test('long titles are cut between words, and in a word that has no end', () => {
  const [long, endless] =
    outline(`3.01 CURING\n\nA. ${'wet burlap '.repeat(9)}\nB. ${'x'.repeat(5000)}\n`)[0]?.children ?? [];
  expect(long?.title).toBe('wet burlap wet burlap wet burlap wet burlap wet burlap wet …');
  expect(endless?.title).toBe(`${'x'.repeat(60)} …`);
});

test('a part ends with its line in each line end', () => {
  for (const end of ['\n', '\r\n', '\r']) {
    const text = ['PART 3 - EXECUTION', '3.01 CURING', 'A. Burlap.'].join(end);
    const [part] = outline(text);
    expect(text.slice(part?.titleStart, part?.titleEnd)).toBe('PART 3 - EXECUTION');
  }
});
