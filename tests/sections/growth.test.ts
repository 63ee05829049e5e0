/** Invariant 13, behind the reader: binding and rules take time in proportion to what was read; times of one run are compared. */
import { expect, test } from 'vitest';
import { rules } from '../../rules/index.ts';
import { check } from '../../server/checking.ts';
import { assemble } from '../../server/reading/assemble.ts';
import { read } from '../../server/reading/read.ts';
import { exchange } from './manual.ts';

const short = 150;
const times = 4;
const slack = 2.5;
const attempts = 4;

const opening = 'SECTION 32 13 13 - CONCRETE PAVING\n\nPART 2 - PRODUCTS\n\n2.01 MIXTURES\n\n';

const manuals: Readonly<Record<string, (count: number) => string>> = {
  'one sentence over and over in a line': (count) =>
    `A. ${'Exterior walks shall have air content of 6 percent. '.repeat(count)}`,
  'paragraphs about one element': (count) =>
    Array.from({ length: count }, (_, at) => `${at + 1}. Cure exterior walks for 7 days; w/cm 0.50; broom.`).join(
      '\n\n',
    ),
  'as many finishes as paragraphs': (count) =>
    Array.from({ length: count }, (_, at) => `${at + 1}. Sprinkle walk ${at} with water and trowel it.`).join('\n\n'),
};

/** Microseconds of the processor for assembly and rules; reading goes before and does not count. */
function spent(text: string): number {
  const reading = read({ path: 'a.md', text: `${opening}${text}\n` });
  const start = process.cpuUsage();
  check(assemble([reading]), exchange, rules);
  const { user, system } = process.cpuUsage(start);
  return user + system;
}

test.each(Object.entries(manuals))('%s', { timeout: 120_000 }, (_, manual) => {
  spent(manual(short));
  const growths = Array.from({ length: attempts }, () => spent(manual(short * times)) / spent(manual(short)));
  expect(Math.min(...growths)).toBeLessThan(times * slack);
});
