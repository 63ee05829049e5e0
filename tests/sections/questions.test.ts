/** Where a public agency's standard specifications govern, silences become one question; values that are written are still judged. */
import { expect, test } from 'vitest';
import { rules } from '../../rules/index.ts';
import { check } from '../../server/checking.ts';
import { assemble } from '../../server/reading/assemble.ts';
import { read } from '../../server/reading/read.ts';
import { exchange } from './manual.ts';

const checked = (governed: string, more = '') =>
  check(
    assemble([
      read({
        path: 'walks.md',
        text: `SECTION 32 13 13 - CONCRETE PAVING

PART 1 - GENERAL

1.01 SUMMARY

A. Exterior walks and curb ramps of concrete on ground.
${governed}

PART 3 - EXECUTION

3.01 PLACING

A. Place concrete in one layer.${more}
`,
      }),
    ]),
    exchange,
    rules,
  );

const governing =
  'B. All work shall conform to the current Standard Specifications of the State Department of Transportation.';

test('one question, and none of the silences that the agency answers for', () => {
  const { findings, questions } = checked(governing);
  expect(questions.map(({ place }) => place)).toEqual(['1.01.B']);
  expect(questions[0]?.text).toContain('walks');
  expect(questions[0]?.text).toContain('de-icers');
  expect(findings).toEqual([]);
});

test('without it the silences speak, and nothing is asked', () => {
  const { findings, questions } = checked('');
  expect(questions).toEqual([]);
  expect(findings.map(({ rule }) => rule)).toContain('curing-missing');
});

test('what is written is judged all the same', () => {
  const { findings } = checked(governing, ' Sprinkle the surface of the walks with water to finish it.');
  expect(findings.map(({ rule }) => rule)).toEqual(['water-added-to-surface']);
});
