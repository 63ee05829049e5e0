/** The unit behind a number, told apart from the words that look like one. */
import type { Unit } from '../../rules/model/quantity.ts';
import type { NumberRead } from './numbers.ts';
import { Phrases } from './phrases.ts';
import type { Token } from './tokens.ts';
import { type UnitWord, unitWords } from './words/units.ts';

export interface UnitRead {
  readonly unit: Unit;
  readonly times: number;
  readonly to: number;
}

const phrases = new Phrases<UnitWord>(unitWords);

/** The number before a unit decides doubtful cases: "5,000-pound concrete" is a strength, "94-pound sack" a mass. */
type Before = Pick<NumberRead, 'value' | 'fraction'>;

export function unitAt(tokens: readonly Token[], at: number, before: Before): UnitRead | undefined {
  const from = tokens[at]?.text === '-' && !tokens[at + 1]?.spaced ? at + 1 : at;
  const found = phrases.at(tokens, from);
  if (!found || isOtherWord(tokens, from, found.to, before)) return undefined;
  const { unit, times } = found.meaning;
  if (unit === 'lb' && 1500 <= before.value && isStrengthNoun(tokens[found.to]))
    return { unit: 'psi', times: 1, to: found.to };
  return { unit, times, to: found.to };
}

const isStrengthNoun = (token: Token | undefined): boolean =>
  token !== undefined && /^(?:concret|mix|test|class|strength|psi|compressiv)$/.test(token.stem);

const singles = new Set(['c', 'f', 'd', 'h', 'm', 'l', 'in', 'ft']);

/** "0.45 in flatwork" is no inch, "6 F3" no degree, "Type 2 C" no temperature. */
function isOtherWord(tokens: readonly Token[], from: number, to: number, before: Before): boolean {
  const token = tokens[from] as Token;
  const next = tokens[to];
  if (to !== from + 1 || !singles.has(token.text)) return false;
  if (next && !next.spaced && (next.kind === 'number' || (next.text === '-' && token.capital))) return true;
  if (token.text === 'c' || token.text === 'f') return !token.capital;
  if (token.text !== 'in' || before.fraction || !token.spaced) return false;
  return next?.kind === 'word' && !inchNouns.has(next.stem);
}

const inchNouns = new Set([
  'nominal',
  'maximum',
  'max',
  'aggregat',
  'ston',
  'thick',
  'slab',
  'deep',
  'slump',
  'per',
  'min',
  'minimum',
  'diameter',
  'wide',
  'or',
  'to',
  'from',
  'and',
  'apart',
  'on',
  'high',
  'long',
  'square',
  'coars',
  'siz',
  'below',
  'above',
  'behind',
  'radius',
  'larg',
  'clear',
  'thicknes',
  'thickness',
  'nmas',
  'top',
  'with',
  'at',
  'for',
  'minus',
  'plus',
]);
