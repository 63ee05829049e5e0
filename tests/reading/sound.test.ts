/** Invariant 4: reading never throws, no span leaves the text, and what was not understood is counted. */
import { expect, test } from 'vitest';
import { cuts, dense, examples, garbled, lineEnds, prefixesOf, sections } from './cut.ts';
import { numberings } from './numberings.ts';
import { faultsOf } from './sound.ts';

const patience = 30_000;

test('reading is sound in whole sections and 200 cuts of them', { timeout: patience }, () => {
  const whole = [...sections, ...numberings.map(({ text }) => text)];
  expect([...whole, ...cuts(200, 4)].flatMap(faultsOf)).toEqual([]);
});

test('and in each example of CommonMark', { timeout: patience }, () => {
  expect(examples).toHaveLength(652);
  expect(examples.flatMap(faultsOf)).toEqual([]);
});

test.each(lineEnds)('and in dense texts as they are typed, in lines ending in %j', { timeout: patience }, (end) => {
  const typed = dense.flatMap((text) => prefixesOf(text.replaceAll('\n', end)).filter((_, at) => at % 13 === 0));
  expect(typed.flatMap(faultsOf)).toEqual([]);
});

test('and in 66 garbled sections', { timeout: patience }, () => {
  const faulty = garbled(66, 5).flatMap(([damage, text]) => faultsOf(text).map((fault) => `${damage}: ${fault}`));
  expect(faulty).toEqual([]);
});
