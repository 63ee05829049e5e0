/** A rule that fails is named, and costs the others nothing. */
import { expect, test } from 'vitest';
import { rules } from '../rules/index.ts';
import type { Rule } from '../rules/model/rule.ts';
import { check } from '../server/checking.ts';
import { assemble } from '../server/reading/assemble.ts';
import { read } from '../server/reading/read.ts';
import { demo, exchange } from './sections/manual.ts';

const manual = assemble([read(demo('03-30-00-cast-in-place-concrete.md'))]);

/** Breaks after its first finding, as a rule would on a text nobody thought of. */
const broken: Rule = {
  ...(rules[0] as Rule),
  id: 'broken-on-purpose',
  outranks: [],
  *check() {
    yield { at: { path: 'a.md', start: 0, end: 1 }, message: 'one finding before the fault', elements: [] };
    throw new RangeError('no such table row');
  },
};

test.each([0, 10, rules.length])('a rule that fails at place %i of the list', (place) => {
  const { findings, failures } = check(manual, exchange, rules.toSpliced(place, 0, broken));
  expect(failures).toEqual([{ rule: 'broken-on-purpose', error: 'no such table row' }]);
  const others = findings.filter(({ rule }) => rule !== 'broken-on-purpose');
  expect(others.length).toBeGreaterThan(5);
  expect(others).toEqual(check(manual, exchange, rules).findings);
});
