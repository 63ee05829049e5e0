/** Sections in other registers against what a careful engineer would say of them, by judgment, one to one. */
import { describe, expect, test } from 'vitest';
import type { Finding } from '../../server/checking.ts';
import { findings, register, sorted } from './manual.ts';
import { type Judged, registers } from './registers.ts';

describe.each(registers)('$path: $register', ({ path, expect: expected, silent, unnumbered }) => {
  const section = register(path);
  const found = findings(section);

  test('what should be said, and nothing more', () => {
    const line = unnumbered ? spoken : spokenAt;
    expect(sorted(found.map(line))).toEqual(sorted(expected.map(line)));
  });

  test.each(expected.filter(({ on }) => on !== undefined))('$rule stands on "$on"', ({ rule, on, why }) => {
    expect(
      found.filter((finding) => finding.rule === rule).some((finding) => touches(finding, section.text, on!)),
      why,
    ).toBe(true);
  });

  test.each(silent)('$rule is not tempted by "$trap"', ({ rule, why }) => {
    expect(
      found.filter((finding) => finding.rule === rule),
      why,
    ).toEqual([]);
  });
});

const spoken = ({ rule, severity }: Finding | Judged): string => `${severity} ${rule}`;

/** Numbers as people cite them vary in their signs: "§ 11.20.020", "1101.03(c)"; letters and digits do not. */
const spokenAt = (said: Finding | Judged): string => `${spoken(said)} ${said.place.replace(/[^0-9a-z]/gi, '')}`;

function touches({ span }: Finding, text: string, words: string): boolean {
  const start = text.indexOf(words);
  if (start < 0) throw new Error(`not in the section: ${words}`);
  return span.start < start + words.length && start < span.end;
}
