/** Invariant 3: the mask has the length and the line ends of its source. */
import { expect, test } from 'vitest';
import { cuts, dense, examples, lineEnds, prefixesOf } from './cut.ts';
import { maskFault } from './sound.ts';

test.each(lineEnds.map((end) => [JSON.stringify(end), end] as const))(
  'the mask has its source’s length at every prefix, lines ending in %s',
  (_, end) => {
    const prefixes = dense.flatMap((text) => prefixesOf(text.slice(0, 400).replaceAll('\n', end)));
    expect(prefixes.flatMap((prefix) => maskFault(prefix) ?? [])).toEqual([]);
  },
);

test('and in 200 cuts of sections, and in each example of CommonMark', { timeout: 30_000 }, () => {
  expect(examples).toHaveLength(652);
  const all = [...cuts(200, 3), ...examples];
  expect(all.flatMap((text) => maskFault(text) ?? [])).toEqual([]);
});
