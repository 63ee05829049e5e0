/** Invariant 13: time grows with the length of the text, no faster, whatever the text; only times of one run are compared. */
import { describe, expect, test } from 'vitest';
import { read } from '../../server/reading/read.ts';
import { type Hostile, markup, numbers, words } from './hostile.ts';
import { outlined } from './outlined.ts';

/** How much longer the long text is, and how many times its share of the time it may take: the square would take four. */
const times = 4;
const slack = 2;
const attempts = 4;

type Work = (text: string) => void;

function spent(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

const middle = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] as number;

interface Measured {
  readonly hostile: Hostile;
  /** Time of the long text. */
  readonly time: number;
  /** By that of the short one. */
  readonly growth: number;
}

/** Medians of so many runs; one run of the short text goes before them and does not count. */
function measured(hostile: Hostile, short: number, work: Work, runs: number): Measured {
  const [brief, long] = [hostile.text(short), hostile.text(short * times)];
  work(brief);
  const each = Array.from({ length: runs }, () => [spent(() => work(brief)), spent(() => work(long))] as const);
  const time = middle(each.map(([, last]) => last));
  return { hostile, time, growth: time / middle(each.map(([first]) => first)) };
}

/** Texts that grow too fast and take longer than most of their length; each is measured again, more carefully. */
function tooFast(all: readonly Hostile[], short: number, work: Work): readonly (readonly [string, number])[] {
  const first = all.map((hostile) => measured(hostile, short, work, 1));
  const usual = middle(first.map(({ time }) => time));
  let left = first.filter(({ time, growth }) => usual < time && times * slack < growth);
  for (let attempt = 1; attempt < attempts; attempt++)
    left = left
      .map(({ hostile }) => measured(hostile, short, work, 1 + 2 * attempt))
      .filter(({ growth }) => times * slack < growth);
  return left.map(({ hostile, growth }) => [hostile.name, growth]);
}

const wholly = (text: string): void => {
  read({ path: 'a.md', text });
};

describe.each([
  ['the whole reader', [...words, ...numbers], 600, wholly],
  ['parser, mask, lines and outline', [...markup, ...numbers], 2000, (text: string): void => void outlined(text)],
])('%s', (_, hostile, short, work) => {
  test('is about linear in every hostile text', { timeout: 60_000 }, () => {
    expect(tooFast(hostile, short, work)).toEqual([]);
  });
});

test('a square would be told', () => {
  const square = (text: string): void => {
    let sum = 0;
    for (let at = 0; at < text.length; at++) for (let other = 0; other < text.length; other++) sum += other & at;
    expect(sum).toBeGreaterThanOrEqual(0);
  };
  const hostile = { name: 'a', text: (length: number) => 'a'.repeat(length) };
  const others = ['b', 'c'].map((name) => ({ name, text: () => name }));
  expect(tooFast([hostile, ...others], 1000, square).map(([name]) => name)).toEqual(['a']);
});
