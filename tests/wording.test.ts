/** What a finding says of its place in a text without numbers, and how a suggested clause gives both unit systems. */
import { expect, test } from 'vitest';
import { rules } from '../rules/index.ts';
import { check, type Finding } from '../server/checking.ts';
import { assemble } from '../server/reading/assemble.ts';
import { read } from '../server/reading/read.ts';
import { inUnits } from '../server/suggesting.ts';
import { project } from './rules/made.ts';

const findingsIn = (text: string): readonly Finding[] =>
  check(assemble([read({ path: 'walks.md', text })]), project, rules).findings;

const bullets = `- Walks are Exposure Class F3, plain. 4500 psi, w/cm 0.45, 3/4 in. stone, air 2 percent.
- Add no water to the surface; steel-trowel the walks.
- Cure under wet burlap.
`;

test.each([
  ['under a title', `# Sidewalks\n\n${bullets}`],
  ['under titles of its own', `# Sidewalks\n\n## Concrete\n\n${bullets}`],
  ['under no title', bullets],
])('a text without numbers reads well: %s', (_, text) => {
  const findings = findingsIn(text);
  expect(findings.map(({ rule }) => rule)).toEqual(
    expect.arrayContaining(['air-content-low', 'hard-trowel-outdoors', 'curing-duration-missing']),
  );
  for (const { message, place } of findings) {
    expect(place).not.toBe('');
    expect(message).not.toMatch(/ {2}|\bin (?:can|has|is|for|;|$)|^[a-z]/);
  }
});

test('an article without a number is named by its title', () => {
  const [low] = findingsIn(`# Sidewalks\n\n## Concrete\n\n${bullets}`).filter(({ rule }) => rule === 'air-content-low');
  expect(low?.message).toContain('in "Concrete" can be too low');
});

test.each([
  ['with [3/4 in.] stone.', 'with [19 mm] stone.', 'with [3/4 in. (19 mm)] stone.'],
  ['of [4500] psi.', 'of [31] MPa.', 'of [4500] psi ([31] MPa).'],
  ['at 50 °F.', 'at 10 °C.', 'at 50 °F (10 °C).'],
  ['within [2] hours', 'within [2] hours', 'within [2] hours'],
])('both unit systems in one clause: %s', (inchPound, metric, both) => {
  expect(inUnits({ inchPound, metric }, 'both')).toBe(both);
});

test('no clause of a rule has a bracket that opens inside another', () => {
  for (const { clause } of rules) expect(inUnits(clause, 'both')).not.toMatch(/\(\[[^\]]*\)|\[[^\]]*\[/);
});
