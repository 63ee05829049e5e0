/** Words, numbers and signs of a clause, each with its place; the lexer runs once over a block. */
import { stem } from './stem.ts';

export interface Token {
  readonly kind: 'word' | 'number' | 'sign';
  /** Lower case as written. */
  readonly text: string;
  /** Word stem, so that one entry in a word list meets all its forms; equals `text` for numbers and signs. */
  readonly stem: string;
  readonly start: number;
  readonly end: number;
  /** A blank stands before it. */
  readonly spaced: boolean;
  /** Written with a capital. */
  readonly capital: boolean;
  /** Value of a number; NaN for letters read as digits that make no sense. */
  readonly value: number;
  /** Why the number is unsure. */
  readonly doubt?: string;
}

const pattern =
  /(\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d{1,3},\d{1,2}(?![\d,])(?=\s*(?:%|±|MPa|mm|kg|per\s?cent))|(?<![\d.,])0,\d{2}(?![\d,])|\d+\.\d+|(?<![\w.])[oO]\.\d{2}(?!\w)|(?<![\w.)])\.\d+|\d+)|([A-Za-z][A-Za-z'’]*)|([½¼¾⅓⅔⅛⅜⅝⅞])|(\+\/-|\+-|±|≤|≥|<=|>=|_{2,}|\.{3,}|[^\sA-Za-z0-9])/g;

const glyphs: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

/** Tokens of `text` from `from` to `to`; offsets are those of `text`. */
export function tokensOf(text: string, from: number, to: number): Token[] {
  const tokens: Token[] = [];
  const part = text.slice(from, to);
  pattern.lastIndex = 0;
  for (let match = pattern.exec(part); match; match = pattern.exec(part)) {
    const start = from + match.index;
    const written = match[0];
    const spaced = match.index === 0 || /\s/.test(part[match.index - 1] ?? '');
    const at = { start, end: start + written.length, spaced };
    if (match[1]) tokens.push({ ...at, ...figure(written) });
    else if (match[3]) tokens.push({ ...at, ...number(written, glyphs[written] as number) });
    else if (match[2]) tokens.push({ ...at, ...word(written) });
    else tokens.push({ ...at, kind: 'sign', text: written, stem: written, capital: false, value: Number.NaN });
  }
  return repaired(tokens, part, from);
}

/** Figures: a comma before three digits parts thousands, before fewer it is a decimal comma; a letter O is a doubtful nought. */
function figure(written: string): ReturnType<typeof number> & { readonly doubt?: string } {
  if (/^[oO]/.test(written))
    return { ...number(written, Number(`0${written.slice(1)}`)), doubt: 'a letter stands for a digit' };
  const isDecimal = /^\d+,\d{1,2}$/.test(written);
  return number(written, Number(isDecimal ? written.replace(',', '.') : written.replaceAll(',', '')));
}

const number = (written: string, value: number) =>
  ({ kind: 'number', text: written, stem: written, capital: false, value }) as const;

function word(written: string): Pick<Token, 'kind' | 'text' | 'stem' | 'capital' | 'value'> {
  const text = written.toLowerCase().replace('’', "'");
  return { kind: 'word', text, stem: stem(text), capital: /^[A-Z]/.test(written), value: Number.NaN };
}

/** Scans put letters for digits: "lO%", "6O0 psi". Only a run that ends in a digit or stands before a percent sign is mended, and doubted. */
function repaired(tokens: Token[], part: string, from: number): Token[] {
  if (!tokens.some((token) => token.kind === 'word' && isDigitLike(token))) return tokens;
  const out: Token[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const stop = endOfDigitRun(tokens, at);
    const [first, last] = [tokens[at] as Token, tokens[stop - 1] as Token];
    const mixed = at < stop && tokens.slice(at, stop).some(({ kind }) => kind === 'word');
    if (mixed && ((1 < stop - at && last.kind === 'number') || tokens[stop]?.text === '%')) {
      out.push(mended(first, last, part.slice(first.start - from, last.end - from)));
      at = stop - 1;
    } else out.push(first);
  }
  return out;
}

function mended(first: Token, last: Token, written: string): Token {
  const value = Number(written.replace(/[oO]/g, '0').replace(/[lIi]/g, '1').replaceAll(',', ''));
  return {
    ...first,
    kind: 'number',
    text: written,
    stem: written,
    end: last.end,
    value,
    doubt: 'a letter stands for a digit',
  };
}

function endOfDigitRun(tokens: readonly Token[], at: number): number {
  let stop = at;
  while (stop < tokens.length && isDigitLike(tokens[stop] as Token) && (stop === at || !(tokens[stop] as Token).spaced))
    stop++;
  return stop;
}

const isDigitLike = ({ kind, text }: Token): boolean =>
  kind === 'number' || (kind === 'word' && /^[lio]{1,3}$/.test(text));
