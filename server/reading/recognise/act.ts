/** The maker for kinds of fact that are something done: the words that must meet in one statement, and those that make it another trade's. */
import type { Force } from '../../../rules/model/clause.ts';
import type { Act, ActFact, ActKind } from '../../../rules/model/fact.ts';
import { Phrases } from '../phrases.ts';
import { holds, type Statement, said, spanOf, trimmed, wordsOf } from '../statement.ts';
import { excessIn } from '../turns.ts';

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
  const told = isTold(statement) ? 'state' : force;
  const base = said(statement, trimmed(statement.tokens, statement.predication), told);
  return { kind, ...base, ...(base.except || base.force !== 'ban' ? {} : lifted(statement)), act: made };
}

/** A ban of the excess alone, or one that the same sentence takes back, says so where an exception would. */
function lifted(statement: Statement): Pick<ActFact, 'except'> {
  const { tokens, predication } = statement;
  const run = excessIn(tokens, predication.from, predication.to) ?? predication.takenBack;
  return run ? { except: { words: wordsOf(statement, run), span: spanOf(statement, run), open: true } } : {};
}

/** A definition says what a word means, and "submit a plan where water was sprinkled" speaks of what happened: neither orders the act. */
function isTold(statement: Statement): boolean {
  const { region, predication } = statement;
  if (predication.force === 'ban') return false;
  if (region === 'definitions') return true;
  return reporting.test(mainWords(statement)) && /\b(?:was|were)\b/.test(conditionWords(statement));
}

const reporting = /^(?:submit|report|record|repair|replace|mark|list|map|photograph|survey|grind|patch|notify)\b/;

/** A statement as small-letter text for patterns on word order; made once, because every recogniser asks. */
interface Spoken {
  readonly main: string;
  readonly all: string;
  readonly sentence: string;
  readonly conditions: string;
}

const spoken = new WeakMap<Statement, Spoken>();

function spokenBy(statement: Statement): Spoken {
  const known = spoken.get(statement);
  if (known) return known;
  const { tokens, predication, sentence } = statement;
  const made: Spoken = {
    main: withoutAsides(statement),
    all: joined(tokens, predication.from, predication.to),
    sentence: sentenceText(tokens, sentence),
    conditions: predication.conditions.map(({ from, to }) => joined(tokens, from, to)).join(' | '),
  };
  spoken.set(statement, made);
  return made;
}

const sentenceTexts = new WeakMap<object, string>();

function sentenceText(tokens: Statement['tokens'], sentence: Statement['sentence']): string {
  const known = sentenceTexts.get(sentence);
  if (known !== undefined) return known;
  const made = joined(tokens, sentence.from, sentence.to);
  sentenceTexts.set(sentence, made);
  return made;
}

/** The statement's own words without its conditions, exceptions and what it replaces. */
export const mainWords = (statement: Statement): string => spokenBy(statement).main;
export const allWords = (statement: Statement): string => spokenBy(statement).all;
export const sentenceWords = (statement: Statement): string => spokenBy(statement).sentence;
export const conditionWords = (statement: Statement): string => spokenBy(statement).conditions;

function withoutAsides({ tokens, predication }: Statement): string {
  const aside = [
    ...predication.conditions,
    ...(predication.exception ? [predication.exception] : []),
    ...predication.replaced,
  ];
  const kept: string[] = [];
  for (let at = predication.from; at < predication.to; at++) {
    if (!aside.some(({ from, to }) => from <= at && at < to)) kept.push(tokens[at]?.text ?? '');
  }
  return kept.join(' ');
}

function joined(tokens: Statement['tokens'], from: number, to: number): string {
  let out = '';
  for (let at = from; at < to; at++) out += `${tokens[at]?.text ?? ''} `;
  return out.trimEnd();
}
