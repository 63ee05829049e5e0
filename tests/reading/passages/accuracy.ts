/** Prints how well the passages are read: recall, precision and silence by kind of fact, then each miss. */
import { type Accuracy, accuracyOf, type MissAt, percentOf, type Share } from './counting.ts';
import { floors } from './floors.ts';
import { asRead } from './passage.ts';
import { registers } from './registers.ts';

console.log(report(accuracyOf(registers)));

function report({ passages, kinds, misses }: Accuracy): string {
  return [
    `${passages} passages, ${misses.length} misses`,
    '',
    '| kind | found | right | silent | floors |',
    '| --- | --- | --- | --- | --- |',
    ...kinds.map(({ kind, recall, precision, silence }) => {
      const { found = '', right = '', silent = '' } = floors[kind] ?? {};
      return `| ${kind} | ${cell(recall)} | ${cell(precision)} | ${cell(silence)} | ${found} / ${right} / ${silent} |`;
    }),
    '',
    ...misses.flatMap(entry),
  ].join('\n');
}

function cell(share: Share): string {
  return share.all === 0 ? '' : `${share.good} of ${share.all}, ${percentOf(share)}`;
}

function entry({ register, passage, fault, expected, got }: MissAt): readonly string[] {
  const fence = '```';
  return [
    `## ${register}: ${passage.name}`,
    '',
    fence,
    asRead(passage).trimEnd(),
    fence,
    '',
    `- ${fault}: expected ${expected}; got ${got}`,
    '',
  ];
}
