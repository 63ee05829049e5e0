/** Exposure classes of four systems, told apart from fly-ash classes, floor numbers, strengths and standards; and freezing in words. */
import type { NamedFact } from '../../../rules/model/fact.ts';
import { localSubject } from '../local-scope.ts';
import { type Statement, said, trimmed } from '../statement.ts';
import { allWords, sentenceWords } from './act.ts';

type System = 'aci' | 'csa' | 'en' | 'rf';

interface Read {
  readonly value: string;
  readonly system: System;
  readonly from: number;
  readonly to: number;
}

export function exposureClasses(statement: Statement): NamedFact[] {
  if (statement.region === 'references' || statement.region === 'related') return [];
  const read = tokensRead(statement);
  const context = /\b(?:exposure|class(?:es)?|exposed|freez\w*)\b/.test(
    `${sentenceWords(statement)} ${statement.header} ${statement.heading}`,
  );
  const certain = read.some(({ value, system }) => system !== 'aci' || /^F[0-3]$/.test(value));
  if (read.length === 0 || (!context && !certain && read.length < 2)) return [];
  const sulfateOnly =
    read.every(({ value }) => /^S\d|^C\d|^W\d/.test(value)) &&
    !/\b(?:exposure|class(?:es)?)\b/.test(`${sentenceWords(statement)} ${statement.header}`);
  if (sulfateOnly) return [];
  return read.map((each) => ({
    kind: 'exposure-class',
    ...said(statement, each, classForce(statement)),
    subject: localSubject(statement, each, read),
    value: each.value,
    of: each.system,
  }));
}

const classForce = ({ predication }: Statement) =>
  predication.force === 'ban' || predication.force === 'waive' ? predication.force : 'require';

function tokensRead({ tokens, predication }: Statement): Read[] {
  const found: Read[] = [];
  for (let at = predication.from; at < predication.to; at++) {
    const read = european(tokens, at) ?? american(tokens, at) ?? canadian(tokens, at);
    if (!read) continue;
    found.push(read);
    at = read.to - 1;
  }
  return found;
}

type Tokens = Statement['tokens'];

const capitalText = (tokens: Tokens, at: number): string => (tokens[at]?.capital ? (tokens[at]?.text ?? '') : '');
const digitAt = (tokens: Tokens, at: number, highest: number): number | undefined => {
  const token = tokens[at];
  return token?.kind === 'number' && /^\d$/.test(token.text) && !token.spaced && token.value <= highest
    ? token.value
    : undefined;
};
const endsThere = (tokens: Tokens, at: number): boolean => {
  const next = tokens[at];
  return !next || next.spaced || /^[,;:.)/\]|+"-]$/.test(next.text) || next.text === '–' || next.text === '&';
};

/** "F3", "C2": a capital and a digit; "C2" before a slash and a number is a strength. */
function american(tokens: Tokens, at: number): Read | undefined {
  const letter = capitalText(tokens, at);
  if (
    !/^(?:f|w|s|c|rf)$/.test(letter) ||
    (tokens[at - 1] && !tokens[at]?.spaced && !/^[(,/[+|"–-]$/.test(tokens[at - 1]?.text ?? ''))
  )
    return undefined;
  const digit = digitAt(tokens, at + 1, letter === 'rf' ? 4 : letter === 'f' || letter === 's' ? 3 : 2);
  if (
    digit === undefined ||
    !endsThere(tokens, at + 2) ||
    (tokens[at + 2]?.text === '/' && tokens[at + 3]?.kind === 'number')
  )
    return undefined;
  return { value: `${letter.toUpperCase()}${digit}`, system: letter === 'rf' ? 'rf' : 'aci', from: at, to: at + 2 };
}

/** "C-2", "F-1", "C-XL": the hyphen makes it Canadian. */
function canadian(tokens: Tokens, at: number): Read | undefined {
  const letter = capitalText(tokens, at);
  if (!/^(?:c|f|a|s|n)$/.test(letter) || tokens[at + 1]?.text !== '-' || tokens[at + 1]?.spaced) return undefined;
  if (letter === 'n' && tokens[at + 2]?.text === 'cf') return { value: 'N-CF', system: 'csa', from: at, to: at + 3 };
  if (letter === 'c' && tokens[at + 2]?.text === 'xl') return { value: 'C-XL', system: 'csa', from: at, to: at + 3 };
  const digit = digitAt(tokens, at + 2, 4);
  if (digit === undefined || digit === 0 || !endsThere(tokens, at + 3) || letter === 'n') return undefined;
  const nearby = tokens
    .slice(Math.max(0, at - 4), at)
    .map(({ text }) => text)
    .join(' ');
  // "Finish T-1", "Sheet S-1" and drawing numbers look alike: a class is called one, or is C or F.
  if (!/class|exposure|csa/.test(nearby) && !/^[cf]$/.test(letter)) return undefined;
  return { value: `${letter.toUpperCase()}-${digit}`, system: 'csa', from: at, to: at + 3 };
}

function european(tokens: Tokens, at: number): Read | undefined {
  const letters = capitalText(tokens, at);
  if (!/^(?:xf|xd|xs|xc|xa|x)$/.test(letters)) return undefined;
  const digit = digitAt(tokens, at + 1, 4);
  if (digit === undefined || (letters === 'x' && digit !== 0)) return undefined;
  return { value: `${letters.toUpperCase()}${digit}`, system: 'en', from: at, to: at + 2 };
}

const freezing = /\b(?:freez\w*|frost|freeze ?\/ ?thaw|freeze ?- ?thaw)\b/;
const notClimate =
  /\b(?:frozen (?:base|subgrade|materials|ground)|frost (?:line|depth|wall)|freezer|protect\w* from (?:frost|freezing)|until|antifreeze|freezing weather|prevent)\b/;

/** "exposed to freezing and thawing": the text itself says that it freezes, and perhaps that it is wet and salted. */
export function freezingWords(statement: Statement): NamedFact[] {
  if (statement.region === 'references' || statement.region === 'related') return [];
  const all = allWords(statement);
  if (
    !freezing.test(all) ||
    notClimate.test(all) ||
    !/\b(?:expos\w*|subject\w*|cycles?|class|thaw\w*|freeze|will freeze|freezes)\b/.test(all)
  )
    return [];
  if (/\b(?:not (?:be )?expos|no freez|protected from|away from)\b/.test(all) || /test|astm/.test(all)) return [];
  const run = trimmed(statement.tokens, statement.predication);
  const fact: NamedFact = { kind: 'freezing', ...said(statement, run, 'state'), value: 'yes' };
  const sentence = sentenceWords(statement);
  const decided =
    /\b(?:wet|moist\w*|water|saturat\w*)\b/.test(sentence) &&
    /\b(?:de ?-? ?ic\w*|salt\w*|brine)\b/.test(sentence) &&
    !/\bno de|without de|not (?:be )?salt/.test(all);
  return decided
    ? [fact, { kind: 'exposure-class', ...said(statement, run, 'require'), value: 'F3', of: 'words' }]
    : [fact];
}
