/** Invariant 5: what was not understood is counted, by reason, with its words and its place. */
import { expect, test } from 'vitest';
import { read } from '../../server/reading/read.ts';

const section = (...clauses: readonly string[]): string =>
  `SECTION 32 13 13 - CONCRETE PAVING\n\n3.01 CONCRETE WORK\n\n${clauses.join('\n')}\n`;

const reasons = {
  'Provide air of more than \ufffd percent.': 'a sign or number was lost',
  'Set the screens at 40 percent.': 'a value that nobody owns',
  'Air shall be 95 percent.': 'a value that gave no fact',
  'The water-cementitious ratio shall suit the work.': 'words of ours that gave no fact',
};

test.each(Object.entries(reasons))('"%s": %s', (words, reason) => {
  const text = section('A. Broom the walk.', `B. ${words}`);
  const { unread, clauses } = read({ path: 'a.md', text });
  const start = text.indexOf(words);
  expect(unread).toEqual([
    { span: { path: 'a.md', start, end: start + words.length }, place: '3.01.B', words, reason },
  ]);
  expect(clauses).toBe(2);
});

test.each(['Broom the walk.', 'Air: 6 percent.', 'Keep vehicles away from the gate.'])(
  'nothing is left of "%s"',
  (words) => {
    expect(read({ path: 'a.md', text: section(`A. ${words}`) }).unread).toEqual([]);
  },
);

test('each clause is counted by itself, and lists of documents are not asked', () => {
  const all = Object.keys(reasons).map((words, at) => `${at + 1}. ${words}`);
  const { unread, clauses } = read({ path: 'a.md', text: section(...all, ...all) });
  expect(unread.map(({ reason }) => reason)).toEqual([...Object.values(reasons), ...Object.values(reasons)]);
  expect(clauses).toBe(8);
  const references = section(...all).replace('CONCRETE WORK', 'REFERENCES');
  expect(read({ path: 'a.md', text: references }).unread).toEqual([]);
});
