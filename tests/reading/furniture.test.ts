/** Running heads, feet and page numbers that a conversion left between the lines: blank, counted, and no border of a sentence. */
import { expect, test } from 'vitest';
import { read } from '../../server/reading/read.ts';
import { outlined } from './outlined.ts';

/** Three pages; a sentence runs over each of their borders. */
const pages = (...between: readonly string[]): string =>
  [
    '3.03 FINISHING',
    '',
    'A. Broom shelter walks across the path of travel, and curb',
    between[0],
    'ramps across the slope. Rinse brooms away from the work, and',
    between[1],
    'shake them free of water. Edge the walk once and leave',
    between[2],
    'no tool marks.',
    '',
  ].join('\n');

const sentence =
  'Broom shelter walks across the path of travel, and curb ramps across the slope. Rinse brooms away from the work, ' +
  'and shake them free of water. Edge the walk once and leave no tool marks.';

function paragraphs(text: string): readonly string[] {
  const { outline, masked } = outlined(text);
  return outline.articles.flatMap(({ start, blocks }) =>
    blocks.map((block) =>
      masked
        .slice(start + block.start, start + block.end)
        .replace(/\s+/g, ' ')
        .trim(),
    ),
  );
}

const furniture = (text: string): number => read({ path: 'a.md', text }).furniture;

test.each([
  ['a foot with the section and its page', ['32 13 13 - 4', '32 13 13 - 5', '32 13 13 - 6'], 3],
  ['a head with the date', Array(3).fill('Tallow Ridge Transit Exchange   May 12, 2026'), 3],
  ['pages of so many', ['Page 4 of 12', 'Page 5 of 12', 'Page 6 of 12'], 3],
  ['blank lines about it', ['\n32 13 13 - 4\n', '\n32 13 13 - 5\n', '\n32 13 13 - 6\n'], 3],
  [
    'head and foot',
    ['32 13 13 - 4\nIssued 5/12/2026', '32 13 13 - 5\nIssued 5/12/2026', '32 13 13 - 6\nIssued 5/12/2026'],
    6,
  ],
  ['page numbers alone', ['11', '12', '13'], 3],
  ['page numbers between dashes', ['- 11 -', '- 12 -', '- 13 -'], 3],
])('%s', (_, between, count) => {
  const text = pages(...between);
  expect(paragraphs(text)).toEqual([sentence]);
  expect(furniture(text)).toBe(count);
});

test.each([
  ['what stands there twice only', pages('32 13 13 - 4', 'of Section', '32 13 13 - 5')],
  ['a line with a quantity', 'A. 5/12/2026: 6 percent\n'.repeat(3)],
  ['a line with a verb', 'The work of Section 03 30 00 is done first.\n'.repeat(3)],
  [
    'rows of a table',
    '| Part | Section |\n| --- | --- |\n| Walk | 32 13 13 |\n| Walk | 32 13 13 |\n| Walk | 32 13 13 |\n',
  ],
  ['a column of values', 'Air, percent:\n6\n6\n7\n'],
  ['a count that leaps', 'Stations:\n4\n8\n12\n'],
])('%s stays', (_, text) => {
  const { masked } = outlined(text);
  expect(furniture(text)).toBe(0);
  for (const [word] of text.matchAll(/[\d/]+/g)) expect(masked).toContain(word);
});

test('the section number of the running heads stands in for a title that is lost', () => {
  expect(read({ path: 'a.md', text: pages('32 13 13 - 4', '32 13 13 - 5', '32 13 13 - 6') }).section).toBe('32 13 13');
});
