/** New paragraphs and articles in each numbering: the next label, the line ends kept, and read again where they were meant. */
import { describe, expect, test } from 'vitest';
import { lineEnds, sections } from './cut.ts';
import { withArticle, withParagraph } from './inserted.ts';
import { numberings } from './numberings.ts';
import { outlined } from './outlined.ts';

const list = (...lines: readonly string[]): string =>
  `3.04 CURING\n\n${lines.join('\n')}\n\n3.05 COLD WEATHER\n\nNone.\n`;

/** The article, what goes before a further clause, and the place at which that is cited. */
const next: readonly (readonly [name: string, text: string, before: string, place: string])[] = [
  ['letters', list('A. Wet.', 'B. Dry.'), '\nC. ', '3.04.C'],
  ['letters with blank lines', list('A. Wet.', '', 'B. Dry.'), '\n\nC. ', '3.04.C'],
  ['letters beyond Z', list('Y. Wet.', 'Z. Dry.'), '\nAA. ', '3.04.AA'],
  ['and beyond AA', list('Z. Wet.', 'AA. Dry.'), '\nBB. ', '3.04.BB'],
  ['the outer list, not the inner', list('A. Wet:', '1. Burlap.', '2. Sheet.'), '\nB. ', '3.04.B'],
  ['figures', list('9. Wet.', '10. Dry.'), '\n11. ', '3.04.11'],
  ['small letters, i among them', list('h. Wet.', 'i. Dry.'), '\nj. ', '3.04.j'],
  ['roman figures', list('i. Wet.', 'ii. Dry.', 'iii. Air.'), '\niv. ', '3.04.iv'],
  ['a roman list of one', list('i. Wet.'), '\n\nii. ', '3.04.ii'],
  ['large roman figures', list('I. Wet.', 'II. Dry.'), '\nIII. ', '3.04.III'],
  ['brackets', list('(a) Wet.', '(b) Dry.'), '\n(c) ', '3.04(c)'],
  ['half brackets', list('1) Wet.', '2) Dry.'), '\n3) ', '3.04.3)'],
  ['Canadian points', list('.1 Wet.', '.2 Dry.'), '\n.3 ', '3.04.3'],
  ['points that are indented', list('  .1 Wet.', '  .2 Dry.'), '\n  .3 ', '3.04.3'],
  ['decimals', list('3.04.1 Wet the walk.', '3.04.2 Dry the ramp.'), '\n3.04.3 ', '3.04.3'],
  ['bold labels', list('**A.** Wet.', '', '**B.** Dry.'), '\n\n**C.** ', '3.04.C'],
  ['bold titles, which the clause has not', list('**A. Wet:** keep.', '', '**B. Dry:** keep.'), '\n\nC. ', '3.04.C'],
  ['escaped labels', list('1\\. Wet.', '2\\. Dry.'), '\n3\\. ', '3.04.3'],
  ['bullets before labels', list('- A. Wet.', '- B. Dry.'), '\n- C. ', '3.04.C'],
  ['bullets alone', list('- Wet.', '- Dry.'), '\n- ', '3.04'],
  ['labels inside a line', list('A. Wet. B. Dry. C. Air.'), '\n\nD. ', '3.04.D'],
  ['brackets inside a line', list('(a) Wet. (b) Dry. (c) Air.'), '\n\n(d) ', '3.04(d)'],
  ['a paragraph without a label', list('Wet the walk.'), '\n\n', '3.04'],
  ['a table at the end', list('A. Wet:', '', '| Walk | Days |', '| --- | --- |', '| Ramp | 7 |'), '\n\nB. ', '3.04.B'],
  ['a title alone', '3.04 CURING\n\n3.05 COLD WEATHER\n\nA. None.\n', '\n\nA. ', '3.04.A'],
  ['a title that carries text', '3.04 CURING: A. Wet. B. Dry.\n', '\nC. ', '3.04.C'],
  [
    'choices, of which the clause is none',
    list('Cure by one of the following:', '', 'A. Wet.', 'B. Dry.'),
    '\n\n',
    '3.04',
  ],
  ['choices right below the title', '3.04 CURING\nCure by one of these:\nA. Wet.\nB. Dry.\n', '\n\n', '3.04.B'],
  ['a comment behind the last', list('A. Wet.', 'B. Dry. <!-- or not -->'), '\nC. ', '3.04.C'],
];

describe('the next paragraph', () => {
  test.each(next)('%s', (_, text, before, place) => {
    const made = withParagraph(text, 0);
    expect({ before: made.before, place: made.place, lost: made.lost }).toEqual({ before, place, lost: [] });
  });

  test('a letter, which numbers nothing', () => {
    expect(withParagraph('Please broom the walk.\n\nThank you.', 0)).toMatchObject({
      before: '\n\n',
      place: 'paragraph 3',
    });
  });

  test('an article whose next number is taken by another', () => {
    const text = '## 4 Concrete\n\n4.1 Walks shall be of concrete.\n\n4.2 Curing\n\n4.2.1 Walks shall be kept wet.\n';
    expect(withParagraph(text, 0)).toMatchObject({ before: '\n\n', place: '4.1', lost: [] });
  });
});

describe('a new article', () => {
  const part = (body: string): string => `PART 3 - EXECUTION\n\n${body}\n\nEND OF SECTION\n`;

  test.each([
    ['in capitals', part('3.08 CURING\n\nA. Wet.'), ['article 3.09 ZINC ANODES', '3.09.A']],
    ['with a tenth', part('3.09 Curing\n1. Wet.'), ['article 3.10 Zinc anodes', '3.10.1']],
    ['one figure behind the point', part('3.9 CURING\n\n.1 Wet.'), ['article 3.10 ZINC ANODES', '3.10.1']],
    ['below Markdown headings', part('### 3.01 Curing\n\n- A. Wet.'), ['article 3.02 Zinc anodes', '3.02.A']],
    ['in bold', part('**3.01 CURING**\n\n**A.** Wet.'), ['article 3.02 ZINC ANODES', '3.02.A']],
    [
      'where the next number is there already',
      part('3.02 CURING\n\nA. Wet.\n\n3.01 PLACING\n\nA. Dry.'),
      ['article 3.03 ZINC ANODES', '3.03.A'],
    ],
    ['where nothing has a label', part('3.01 CURING\n\nWet the walk.'), ['article 3.02 ZINC ANODES', '3.02']],
    ['where nothing is written yet', part('3.01 CURING'), ['article 3.02 ZINC ANODES', '3.02.A']],
  ])('%s', (_, text, opened) => {
    expect(withArticle(text, 3)).toMatchObject({ opened, lost: [], place: opened[1] });
  });

  test('none where articles are not numbered by part', () => {
    expect(withArticle('§ 12.345 Curing. Walks are kept wet.\n', 3)).toBeUndefined();
  });
});

describe.each(lineEnds.map((end) => [JSON.stringify(end), end] as const))(
  'in all sections and numberings, in lines ending in %s',
  (_, end) => {
    const whole = end === '\r\n' ? sections.slice(0, 1) : [];
    const texts = [...whole, ...numberings.map(({ text }) => text)].map((text) => text.replaceAll('\n', end));
    const others = (text: string): string => text.replaceAll(end, '').replace(/[^\r\n]/g, '');

    test('a paragraph stands in its article, alone, and moves nothing', () => {
      for (const text of texts)
        for (const [index, { number, title }] of outlined(text).outline.articles.entries()) {
          const { opened, lost, article, text: after } = withParagraph(text, index);
          expect({ number, title, lost, article, opened: opened.length }).toEqual({
            number,
            title,
            lost: [],
            article: index,
            opened: 1,
          });
          expect(others(after)).toBe('');
        }
    });

    test('so does an article in its part', () => {
      for (const text of texts)
        for (const part of [1, 2, 3]) {
          const made = withArticle(text, part);
          if (!made) continue;
          expect({ lost: made.lost, opened: made.opened.length }).toEqual({ lost: [], opened: 2 });
          expect(outlined(made.text).outline.articles[made.article]?.part).toBe(part);
          expect(others(made.text)).toBe('');
        }
    });
  },
);
