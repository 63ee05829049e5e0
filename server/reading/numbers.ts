/** Numbers as specifications write them: figures, fractions, mixed fractions, words, and words doubled by figures. */
import type { Token } from './tokens.ts';

export interface NumberRead {
  readonly value: number;
  /** Index of the token after the number. */
  readonly to: number;
  readonly doubt?: string;
  /** Written as a fraction, in figures or words. */
  readonly fraction?: true;
}

/** The number that begins at token `at`, or undefined. */
export function numberAt(tokens: readonly Token[], at: number): NumberRead | undefined {
  const token = tokens[at];
  if (!token) return undefined;
  if (token.kind === 'number') return figures(tokens, at, token);
  if (isOneWeek(tokens, at)) return { value: 1, to: at + 1 };
  return token.kind === 'word' ? doubled(tokens, inWords(tokens, at)) : undefined;
}

/** "for a week"; "twice a week" counts something else. */
const isOneWeek = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === 'a' &&
  tokens[at + 1]?.text === 'week' &&
  /^(?:for|least|about|of|within)$/.test(tokens[at - 1]?.text ?? '');

function figures(tokens: readonly Token[], at: number, token: Token): NumberRead {
  const simple = fraction(tokens, at);
  if (simple) return simple;
  const next = tokens[at + 1];
  const afterDash = next && isDash(next) ? at + 2 : at + 1;
  const part = fraction(tokens, afterDash) ?? glyph(tokens, afterDash);
  const joined = afterDash === at + 2 || tokens[afterDash]?.spaced !== undefined;
  if (part && joined && Number.isInteger(token.value)) return { ...part, value: token.value + part.value };
  return { value: token.value, to: at + 1, doubt: token.doubt };
}

const isDash = ({ text }: Token): boolean => text === '-' || text === '–';
const denominators = new Set([2, 3, 4, 8, 16, 32]);

/** "3/4", and the word joined to it by a scan ("1/4inch") is the unit's business. */
function fraction(tokens: readonly Token[], at: number): NumberRead | undefined {
  const [over, slash, under] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  if (over?.kind !== 'number' || slash?.text !== '/' || under?.kind !== 'number') return undefined;
  if (!denominators.has(under.value) || under.value <= over.value || !Number.isInteger(over.value)) return undefined;
  return { value: over.value / under.value, to: at + 3, fraction: true };
}

function glyph(tokens: readonly Token[], at: number): NumberRead | undefined {
  const token = tokens[at];
  return token?.kind === 'number' && token.value < 1 && token.text.length === 1 && !/\d/.test(token.text)
    ? { value: token.value, to: at + 1, fraction: true }
    : undefined;
}

const ones = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
];
const tens = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];
const parts: Readonly<Record<string, number>> = {
  half: 1 / 2,
  third: 1 / 3,
  quarter: 1 / 4,
  fourth: 1 / 4,
  eighth: 1 / 8,
};

/** "twenty-eight", "thirty-two hundred", "four thousand five hundred", "five and one-half", "three quarters". */
function inWords(tokens: readonly Token[], from: number): NumberRead | undefined {
  let at = from;
  let total = 0;
  let group = 0;
  let seen = false;
  for (; at < tokens.length; at++) {
    const { text } = tokens[at] as Token;
    const unit = ones.indexOf(text);
    const ten = tens.indexOf(text);
    if (seen && text === '-') continue;
    if (0 <= unit) group += unit;
    else if (0 < ten) group += ten * 10;
    else if (seen && text === 'hundred') group *= 100;
    else if (seen && text === 'thousand') [total, group] = [total + group * 1000, 0];
    else break;
    seen = true;
  }
  if (!seen) return undefined;
  while (tokens[at - 1]?.text === '-') at--;
  const whole = total + group;
  return inParts(tokens, from, at, whole) ?? { value: whole, to: at };
}

/** "one-half", "three quarters", "five and one-half". */
function inParts(tokens: readonly Token[], from: number, to: number, whole: number): NumberRead | undefined {
  const denominator = (at: number): number | undefined => parts[(tokens[at]?.text ?? '').replace(/s$/, '')];
  const next = tokens[to]?.text === '-' ? to + 1 : to;
  const own = denominator(next);
  if (own !== undefined && to === from + 1) return { value: whole * own, to: next + 1, fraction: true };
  if (tokens[to]?.text !== 'and') return undefined;
  const rest = inWords(tokens, to + 1);
  return rest?.fraction ? { value: whole + rest.value, to: rest.to, fraction: true } : undefined;
}

/** "seven (7)": the figures stand for the words; where they differ, neither can be trusted. */
function doubled(tokens: readonly Token[], words: NumberRead | undefined): NumberRead | undefined {
  if (!words || tokens[words.to]?.text !== '(') return words;
  const inner = tokens[words.to + 1];
  const figure = inner?.kind === 'number' ? figures(tokens, words.to + 1, inner) : undefined;
  if (!figure || tokens[figure.to]?.text !== ')') return words;
  const same = Math.abs(figure.value - words.value) < 1e-9;
  return { ...words, to: figure.to + 1, ...(same ? {} : { doubt: 'words and figures differ' }) };
}
