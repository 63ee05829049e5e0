/** Invariant 13: time grows with the length of the text, no faster, whatever the text; only times of one run are compared. */
import { describe, expect, test } from 'vitest';
import { read } from '../../server/reading/read.ts';
import { type Hostile, markup, numbers, paragraphs, traps, words } from './hostile.ts';
import { outlined } from './outlined.ts';

/** How much longer the long text is, and how many times its share of the time it may take: the square would take four. */
const times = 4;
const slack = 3;
const attempts = 3;

type Work = (text: string) => void;
/** What a piece of work costs. */
type Meter = (work: () => void) => number;

/** Microseconds of the processor: what other programs take is not in them. */
function spent(work: () => void): number {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return user + system;
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
function measured(hostile: Hostile, short: number, work: Work, meter: Meter, runs: number): Measured {
  const [brief, long] = [hostile.text(short), hostile.text(short * times)];
  work(brief);
  const each = Array.from({ length: runs }, () => [meter(() => work(brief)), meter(() => work(long))] as const);
  const time = middle(each.map(([, last]) => last));
  return { hostile, time, growth: time / middle(each.map(([first]) => first)) };
}

/** Texts that grow too fast and take longer than most of their length; each is measured again, more carefully. */
function tooFast(all: readonly Hostile[], short: number, work: Work, meter: Meter): readonly string[] {
  const first = all.map((hostile) => measured(hostile, short, work, meter, 1));
  const usual = middle(first.map(({ time }) => time));
  let left = first.filter(({ time, growth }) => usual < time && times * slack < growth);
  for (let attempt = 1; attempt < attempts; attempt++)
    left = left
      .map(({ hostile }) => measured(hostile, short, work, meter, 1 + 2 * attempt))
      .filter(({ growth }) => times * slack < growth);
  return left.map(({ hostile, growth }) => `${hostile.name}: ${growth.toFixed(1)} times the time`);
}

const wholly = (text: string): void => {
  read({ path: 'a.md', text });
};

const untilOutline = (text: string): void => {
  outlined(text);
};

describe.each([
  ['the whole reader', [...words, ...paragraphs], 600, wholly],
  ['parser, mask, lines and outline', [...markup, ...paragraphs, ...numbers], 800, untilOutline],
  ['the same, where the parser alone would hang', traps, 4000, untilOutline],
])('%s', (_, hostile, short, work) => {
  test('is about linear in every hostile text', { timeout: 60_000 }, () => {
    expect(tooFast(hostile, short, work, spent)).toEqual([]);
  });
});

test('of works that cost a line, a square and a cube of the length, the line alone is fair', () => {
  let cost = 0;
  const meter: Meter = (work) => {
    cost = 0;
    work();
    return cost;
  };
  const texts = ['1', '2', '3', '1', '1'].map((name) => ({ name, text: (length: number) => name.repeat(length) }));
  const work: Work = (text) => {
    cost = text.length ** Number(text[0]);
  };
  expect(tooFast(texts, 10, work, meter)).toEqual(['2: 16.0 times the time', '3: 64.0 times the time']);
});
