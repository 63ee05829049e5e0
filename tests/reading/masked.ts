/** What a mask should be, made without the reader: the source blank but for the words that are kept where they stand. */
import { parse } from '../../server/reading/markdown.ts';
import { mask } from '../../server/reading/mask.ts';

export const masked = (text: string): string => mask(text, parse(text)).text;

/** A decoded sign and the reference that it stands in place of. */
type Decoded = readonly [reference: string, sign: string];

/** The kept words in their order; each stands where the source has it next. */
export function keeping(source: string, kept: readonly (string | Decoded)[]): string {
  const out = [...source.replace(/[^\r\n]/g, ' ')];
  let from = 0;
  for (const each of kept) {
    const [found, put] = typeof each === 'string' ? [each, each] : each;
    const at = source.indexOf(found, from);
    if (at < 0) throw new Error(`not in the source behind ${from}: ${found}`);
    out.splice(at, put.length, ...put.split(''));
    from = at + found.length;
  }
  return out.join('');
}
