/** Paragraph labels of every numbering that specifications use, read off the start of a line. */
import { isValue } from './headings.ts';

/** Kinds in the order in which they usually nest; the stack decides, not the order. */
export type LabelKind =
  | 'I.'
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
  | '1.1'
  | 'bullet';

export interface Label {
  readonly kind: LabelKind;
  /** As cited: "B", "1", "a", "1)", "(a)". */
  readonly name: string;
  /** Its number in the running sequence, 1 for A. */
  readonly ordinal: number;
  /** Characters from the start of the line to the first word after the label. */
  readonly width: number;
}

const bullets = /^[-+*•▪◦·–]\s+/;
/** "2.1", "3.6.1.2", "12 . 6 . 3": the whole number, so that it is cited as it stands. */
const decimal = /^(\d{1,4}(?:(?:\.\d{1,3}){1,5}|(?:\s\.\s\d{1,3}){1,5}))\.?\s+(?=[^\d\s])/;
const canadian = /^\.(\d{1,2})\s+(?=\S)/;
const simple = /^(\(?)([A-Z]{1,4}|[a-z]{1,4}|\d{1,3})([.)])(?:\s+(?=\S)|(?=[A-Z][a-z])|\s*$)/;

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
  if (numbers) return dotted(numbers[1] as string, line.slice(numbers[0].length), numbers[0].length);
  const point = canadian.exec(line);
  if (point) return { kind: '.1', name: point[1] as string, ordinal: Number(point[1]), width: point[0].length };
  const match = simple.exec(line);
  const label = match ? simpleLabel(match, previous) : undefined;
  // A label without words is one that is being typed, and comes next in its list; "40 degrees / F." is not.
  return label && label.width === line.length && label.ordinal !== (previous.get(label.kind) ?? 0) + 1
    ? undefined
    : label;
}

/** The same off a line as the author wrote it; `width` counts its characters. */
export function labelOfLine(raw: string, previous: ReadonlyMap<LabelKind, number>): Label | undefined {
  // Emphasis, heading signs, tags and escapes around a label are not part of it: read a lean copy, map its width back.
  const kept: number[] = [];
  let lean = '';
  let at = 0;
  while (at < Math.min(raw.length, mostMarkup) && kept.length < longest) {
    const blank = lengthAt(blankByName, raw, at);
    const skipped = blank === 0 ? decoration(raw, at) : 0;
    if (skipped === 0) {
      kept.push(at);
      lean += blank === 0 ? raw[at] : ' ';
    }
    at += Math.max(1, blank, skipped);
  }
  const indent = lean.length - lean.trimStart().length;
  const label = labelAt(lean.trimStart(), previous);
  return label && { ...label, width: kept[indent + label.width] ?? Math.min(at, raw.length) };
}

/** Characters of a line in which its label is looked for, without and with the markup around it. */
const longest = 60;
const mostMarkup = 240;

const skippedWhole = /<!--.*?-->|<\/?(?:b|strong|i|em|u|p|span|font|a)\b[^<>]{0,80}>/iy;
const blankByName = /&(?:nbsp|#160|#xa0);/iy;

/** Characters of markup at `at`: a star or dash before a blank is a bullet and stays. */
function decoration(raw: string, at: number): number {
  const character = raw[at] as string;
  if (character === '<') return lengthAt(skippedWhole, raw, at);
  if (character === '#') return /^\s{0,3}#*$/.test(raw.slice(0, at)) ? 1 : 0;
  if (character === '\\' || character === '`') return 1;
  if (character !== '*' && character !== '_') return 0;
  return raw[at + 1] !== ' ' || raw[at - 1] === character || /\w|[.)]/.test(raw[at - 1] ?? '') ? 1 : 0;
}

function lengthAt(sticky: RegExp, raw: string, at: number): number {
  sticky.lastIndex = at;
  return sticky.exec(raw)?.[0].length ?? 0;
}

/** Two numbers are a label before a sentence only: "4.5 MPa" and "2.5 to 3 in." are values. */
function dotted(written: string, words: string, width: number): Label | undefined {
  const name = written.replace(/\s/g, '');
  const parts = name.split('.');
  if (parts.length === 2 && isValue(name, words)) return undefined;
  return { kind: '1.1', name, ordinal: Number(parts.at(-1)), width };
}

function simpleLabel(match: RegExpExecArray, previous: ReadonlyMap<LabelKind, number>): Label | undefined {
  const [all, open, body, close] = match as unknown as [string, string, string, '.' | ')'];
  if (open && close === '.') return undefined;
  const shape = (sample: string): LabelKind => (open ? `(${sample})` : `${sample}${close}`) as LabelKind;
  const name = open ? `(${body})` : close === ')' ? `${body})` : body;
  const made = (sample: string, ordinal: number): Label => ({ kind: shape(sample), name, ordinal, width: all.length });
  if (/^\d/.test(body)) return made('1', Number(body));
  const roman = romanValue(body.toLowerCase());
  const letter = roman !== undefined && 1 < body.length ? undefined : letterValue(body.toLowerCase());
  const last = (sample: string): number | undefined => previous.get(shape(sample));
  if (body === body.toUpperCase()) {
    const opens = close === '.' && (letter === undefined || last('A') === undefined || last('I') !== undefined);
    if (roman !== undefined && opens && isRoman(roman, letter, last('I'), last('A'))) return made('I', roman);
    return letter === undefined ? undefined : made('A', letter);
  }
  if (roman !== undefined && isRoman(roman, letter, last('i'), last('a'))) return made('i', roman);
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

export function romanValue(text: string): number | undefined {
  const at = romans.indexOf(text);
  return at < 0 ? undefined : at + 1;
}

export const romanOf = (value: number): string => romans[value - 1] ?? String(value);
