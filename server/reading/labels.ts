/** Paragraph labels of every numbering that specifications use, read off the start of a line. */

/** Kinds in the order in which they usually nest; the stack decides, not the order. */
export type LabelKind =
  | 'A.'
  | '1.'
  | 'a.'
  | 'A)'
  | '1)'
  | 'a)'
  | 'i.'
  | 'i)'
  | '(A)'
  | '(1)'
  | '(a)'
  | '(i)'
  | '.1'
  | '1.1.1'
  | 'bullet';

export interface Label {
  readonly kind: LabelKind;
  /** As cited: "B", "1", "a", "1)", "(a)". */
  readonly name: string;
  /** Its number in the running sequence, 1 for A. */
  readonly ordinal: number;
  /** Characters from the start of the line to the first word after the label. */
  readonly width: number;
  /** For "3.2.1.4": the numbers before the last. */
  readonly stem?: string;
}

const bullets = /^[-+*•▪◦·–]\s+/;
const decimal = /^((?:\d{1,2}\.){2,5}\d{1,3}|\d{1,2}(?:\.\d{1,2}){2,5})\.?\s+(?=[^\d\s])/;
const canadian = /^\.(\d{1,2})\s+(?=\S)/;
const simple = /^(\(?)([A-Z]{1,2}|[a-z]{1,4}|\d{1,3})([.)])(?:\s+|(?=[A-Z][a-z]))(?=\S)/;

/** The label at the start of `line` (no leading blanks), or undefined. `previous` is the label last seen at each kind. */
export function labelAt(line: string, previous: ReadonlyMap<LabelKind, number>): Label | undefined {
  const bullet = bullets.exec(line);
  if (bullet) {
    const inner = labelAt(line.slice(bullet[0].length), previous);
    return inner
      ? { ...inner, width: inner.width + bullet[0].length }
      : { kind: 'bullet', name: '', ordinal: 0, width: bullet[0].length };
  }
  const numbers = decimal.exec(line);
  if (numbers) return dotted(numbers[1] as string, numbers[0].length);
  const point = canadian.exec(line);
  if (point) return { kind: '.1', name: point[1] as string, ordinal: Number(point[1]), width: point[0].length };
  const match = simple.exec(line);
  return match ? simpleLabel(match, previous) : undefined;
}

function dotted(text: string, width: number): Label {
  const parts = text.replace(/\.$/, '').split('.');
  return { kind: '1.1.1', name: text, ordinal: Number(parts.at(-1)), width, stem: parts.slice(0, -1).join('.') };
}

function simpleLabel(match: RegExpExecArray, previous: ReadonlyMap<LabelKind, number>): Label | undefined {
  const [all, open, body, close] = match as unknown as [string, string, string, '.' | ')'];
  if (open && close === '.') return undefined;
  const shape = (sample: string): LabelKind => (open ? `(${sample})` : `${sample}${close}`) as LabelKind;
  const name = open ? `(${body})` : close === ')' ? `${body})` : body;
  const made = (sample: string, ordinal: number): Label => ({ kind: shape(sample), name, ordinal, width: all.length });
  if (/^\d/.test(body)) return made('1', Number(body));
  const roman = romanValue(body.toLowerCase());
  const letter = letterValue(body.toLowerCase());
  const upper = body === body.toUpperCase();
  if (upper) return letter === undefined ? undefined : made('A', letter);
  if (roman !== undefined && isRoman(roman, letter, previous.get(shape('i')), previous.get(shape('a'))))
    return made('i', roman);
  return letter === undefined || 1 < body.length ? undefined : made('a', letter);
}

/** "i." after "h." is a letter; after anything else it opens or continues a roman list. */
function isRoman(
  roman: number,
  letter: number | undefined,
  lastRoman: number | undefined,
  lastLetter: number | undefined,
): boolean {
  if (letter === undefined) return true;
  if (lastRoman === roman - 1 && 1 < roman) return true;
  if (lastLetter === letter - 1) return false;
  return roman === 1;
}

function letterValue(text: string): number | undefined {
  if (text.length === 1) return text.charCodeAt(0) - 96;
  return text.length === 2 && text[0] === text[1] ? text.charCodeAt(0) - 70 : undefined;
}

const romans = ['i', 'ii', 'iii', 'iv', 'v', 'vi', 'vii', 'viii', 'ix', 'x', 'xi', 'xii', 'xiii', 'xiv', 'xv', 'xvi'];

function romanValue(text: string): number | undefined {
  const at = romans.indexOf(text);
  return at < 0 ? undefined : at + 1;
}
