/** Invariant 4: reading never throws, no span leaves the text, and what was not understood is counted. */
import { expect, test } from 'vitest';
import { cuts, dense, examples, garbled, lineEnds, prefixesOf } from './cut.ts';
import { faultsOf } from './sound.ts';

test('reading is sound in 200 cuts of sections', () => {
  expect(cuts(200, 4).flatMap(faultsOf)).toEqual([]);
});

test('and in each example of CommonMark, in each line end', () => {
  const all = lineEnds.flatMap((end) => examples.map((example) => example.replaceAll('\n', end)));
  expect(all.flatMap(faultsOf)).toEqual([]);
});

test('and at every prefix of dense texts', () => {
  expect(dense.flatMap(prefixesOf).flatMap(faultsOf)).toEqual([]);
});

test('and in 66 garbled sections', () => {
  const faulty = garbled(66, 5).flatMap(([damage, text]) => faultsOf(text).map((fault) => `${damage}: ${fault}`));
  expect(faulty).toEqual([]);
});
