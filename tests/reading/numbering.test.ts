/** Numberings of every kind against the places beside their lines: what opens, how it is cited, what it stands under. */
import { expect, test } from 'vitest';
import { lineEnds } from './cut.ts';
import { numberings } from './numberings.ts';
import { openings, openingsByLine, outlined } from './outlined.ts';

test.each(numberings)('$name', ({ text, lines }) => {
  expect(openingsByLine(text)).toEqual(lines);
});

test.each(lineEnds)('the same opens in lines ending in %j', (end) => {
  const opened = (text: string): readonly string[] => openings(outlined(text).outline).map(({ said }) => said);
  for (const { text } of numberings) expect(opened(text.replaceAll('\n', end))).toEqual(opened(text));
});
