/** Copies the words of a text node to the offsets where they stand, whatever escapes, references and containers lie between. */

interface Texts {
  readonly source: string;
  /** The text as the parser saw it, without surplus delimiters. */
  readonly parsed: string;
  readonly out: string[];
}

/**
 * Walks source and node value together: copies what is equal, skips what is markup, puts a decoded character where its
 * reference began. What meets nothing in its line is left out, so that one surprise never shifts what follows.
 */
export function copyText({ source, parsed, out }: Texts, start: number, end: number, value: string): void {
  let from = start;
  for (let at = 0; at < value.length && from < end; ) {
    const [wanted, met] = [value[at] as string, parsed[from] as string];
    const reference = met === '&' ? referenceAt(parsed, from, value, at) : undefined;
    if (reference) {
      for (let unit = 0; unit < reference.units; unit++) out[from + unit] = inLine(value[at + unit]);
      from += reference.length;
      at += reference.units;
    } else if (isEscape(parsed, from)) {
      out[from + 1] = source[from + 1] as string;
      from += 2;
      at += 1;
    } else if (met === wanted || (met === '\0' && wanted === '\ufffd')) {
      out[from] = source[from] === met ? wanted : asWritten(source[from] as string);
      from += 1;
      at += 1;
    } else if (isLineEnd(met) && !isLineEnd(wanted)) at += 1;
    else from += 1;
  }
}

/** A line end by its number moves no line of the source. */
const inLine = (decoded = ' '): string => (isLineEnd(decoded) ? ' ' : decoded);

/** The parser was not shown a delimiter too many; brackets and blanks to fill in are wording all the same. */
const asWritten = (written: string): string => (/[[\]_<~]/.test(written) ? written : ' ');

/** Code keeps its words as they stand; only its ticks are markup. */
export function copyCode(source: string, out: string[], start: number, end: number): void {
  let ticks = 0;
  while (source[start + ticks] === '`') ticks++;
  for (let at = start + ticks; at < end - ticks; at++) out[at] = source[at] as string;
}

const isLineEnd = (character: string): boolean => character === '\n' || character === '\r';

const isEscape = (text: string, at: number): boolean => text[at] === '\\' && /[!-/:-@[-`{-~]/.test(text[at + 1] ?? '');

const reference = /&(?:#\d{1,7}|#x[\da-f]{1,6}|[a-z][a-z\d]{1,31});/iy;
/** Second halves of the few named characters that are written with two. */
const second = /[\u0338\u20d2\ufe00\u20e5\u0333\u200a]/;

/** The reference at `from` if it was decoded, with the characters of `value` that it gave. */
function referenceAt(
  source: string,
  from: number,
  value: string,
  at: number,
): { readonly length: number; readonly units: number } | undefined {
  reference.lastIndex = from;
  const written = reference.exec(source)?.[0];
  if (written === undefined) return undefined;
  const isAmpersand = /^&(?:amp|#0*38|#x0*26);$/i.test(written);
  if (!isAmpersand && value.startsWith(written, at)) return undefined;
  const [unit = '', next = ''] = [value[at], value[at + 1]];
  const isPair = /[\ud800-\udbff]/.test(unit) || /^&fjlig;$/.test(written);
  const isDouble = isPair || (second.test(next) && source[from + written.length] !== next);
  return { length: written.length, units: isDouble ? 2 : 1 };
}
