/** Notes to editors are no wording of the contract, however they are set apart (common practice in master sections). */
import { expect, test } from 'vitest';
import { read } from '../../server/reading/read.ts';

const opening = 'SECTION 32 13 13 - CONCRETE PAVING\n\nPART 2 - PRODUCTS\n\n2.1 MIXTURES\n\n';

const airs = (text: string): readonly string[] =>
  read({ path: 'a.md', text: `${opening}${text}\n` }).facts.flatMap((fact) =>
    fact.kind === 'air-content' ? [fact.value.asWritten] : [],
  );

const stars = '*'.repeat(74);

test.each([
  ['rows of asterisks', `${stars}\nNOTE: The designer picks 7 percent air.\n\nDelete 8 percent air.\n${stars}`],
  ['a paragraph to the specifier', 'NOTE TO SPECIFIER: Use 9 percent air\nfor walls.'],
  ['italics', '*Note to specifier: use 8 percent air.*'],
  ['brackets', '[Specifier’s note: use 4 percent air.]'],
  ['asterisks about the head', '** NOTE TO SPECIFIER ** Delete 3 percent air if not needed.'],
  ['two notes end to end', `${stars}\nNOTE: 7 percent air.\n${stars}\n${stars}\nNOTE: 8 percent air.\n${stars}`],
])('%s', (_, note) => {
  expect(airs(`${note}\n\nA. Walks: 6 percent air.`)).toEqual(['6 percent']);
});

test.each([
  ['a note of the contract', 'A. Note: walks have 5 percent air.'],
  ['a row that is never closed', `${stars}\nA. Walks: 5 percent air.`],
  ['rows about wording', `${stars}\nA. Walks: 5 percent air.\n${stars}`],
])('%s is read', (_, text) => {
  expect(airs(text)).toEqual(['5 percent']);
});
