/** The label that comes next in its list: "B" after "A", "AA" after "Z", "v" after "iv", "2.04" after "2.03". */
import { romanOf, romanValue } from './labels.ts';

/** `before` is the label in front of `label` in the same list: it tells "i" after "h" from the first of a roman list. */
export function nextLabel(label: string, before: string | undefined): string {
  const bare = label.replace(/[()]/g, '');
  return label.replace(bare, nextName(bare, before?.replace(/[()]/g, '')));
}

function nextName(bare: string, before: string | undefined): string {
  const [, stem, last] = /^(.*?)(\d+)$/.exec(bare) ?? [];
  if (last !== undefined) return `${stem}${String(Number(last) + 1).padStart(last.length, '0')}`;
  const roman = romanIn(bare, before);
  if (roman !== undefined) return cased(romanOf(roman + 1), bare);
  const letter = bare[0] as string;
  const next = /z/i.test(letter) ? cased('a', letter).repeat(bare.length + 1) : following(letter).repeat(bare.length);
  return next;
}

const following = (letter: string): string => String.fromCharCode(letter.charCodeAt(0) + 1);

const cased = (word: string, like: string): string => (like === like.toUpperCase() ? word.toUpperCase() : word);

function romanIn(bare: string, before: string | undefined): number | undefined {
  const value = romanValue(bare.toLowerCase());
  if (value === undefined || 1 < bare.length) return value;
  if (value === 1) return before?.toLowerCase() === 'h' ? undefined : value;
  return before !== undefined && romanValue(before.toLowerCase()) === value - 1 ? value : undefined;
}
