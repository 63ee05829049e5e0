/** The maker for kinds of fact that are something done: the words that must meet in one statement, and those that make it another trade's. */
import type { Force } from '../../../rules/model/clause.ts';
import type { Act, ActFact, ActKind } from '../../../rules/model/fact.ts';
import { Phrases } from '../phrases.ts';
import { holds, type Statement, said, trimmed } from '../statement.ts';

export type Words = Phrases<true>;

/** A word list to look for. */
export const words = (...ways: readonly string[]): Words => new Phrases<true>([[true, ways]]);

export interface ActPattern {
  readonly kind: ActKind;
  /** All of these must occur in the statement. */
  readonly meets: readonly Words[];
  /** None of these may. */
  readonly unless?: Words;
  readonly act: (statement: Statement) => Act | undefined;
  readonly force?: (statement: Statement) => Force;
}

export function act(pattern: ActPattern): (statement: Statement) => ActFact[] {
  return (statement) => {
    if (!pattern.meets.every((each) => holds(each, statement))) return [];
    if (pattern.unless && holds(pattern.unless, statement)) return [];
    const made = pattern.act(statement);
    return made ? [actFact(pattern.kind, made, statement, pattern.force?.(statement))] : [];
  };
}

export function actFact(kind: ActKind, made: Act, statement: Statement, force?: Force): ActFact {
  return { kind, ...said(statement, trimmed(statement.tokens, statement.predication), force), act: made };
}

/** The statement's own words without its conditions, in small letters, for patterns on word order. */
export function mainWords({ tokens, predication }: Statement): string {
  const aside = [
    ...predication.conditions,
    ...(predication.exception ? [predication.exception] : []),
    ...predication.replaced,
  ];
  const kept = [];
  for (let at = predication.from; at < predication.to; at++) {
    if (!aside.some(({ from, to }) => from <= at && at < to)) kept.push(tokens[at]?.text ?? '');
  }
  return kept.join(' ');
}

export const allWords = ({ tokens, predication }: Statement): string =>
  joined(tokens, predication.from, predication.to);
export const sentenceWords = ({ tokens, sentence }: Statement): string => joined(tokens, sentence.from, sentence.to);
export const conditionWords = ({ tokens, predication }: Statement): string =>
  predication.conditions.map(({ from, to }) => joined(tokens, from, to)).join(' | ');

function joined(tokens: Statement['tokens'], from: number, to: number): string {
  let out = '';
  for (let at = from; at < to; at++) out += `${tokens[at]?.text ?? ''} `;
  return out.trimEnd();
}
