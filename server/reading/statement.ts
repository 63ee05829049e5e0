/** What a recogniser may look at: one statement with its values, its words and whose it is. */
import type { Said, Subject } from '../../rules/model/fact.ts';
import type { Span } from '../../rules/model/source.ts';
import type { Region } from '../../rules/model/specification.ts';
import type { Predication, Sentence } from './clauses.ts';
import type { MeasureRead } from './measure.ts';
import type { Named } from './mentions.ts';
import type { Block } from './outline.ts';
import type { MeaningRead } from './owners.ts';
import type { Phrases } from './phrases.ts';
import type { Run } from './run.ts';
import type { Token } from './tokens.ts';
import type { Meaning } from './words/meanings.ts';

/** A value of the sentence with the meaning that owns it. */
export interface Owned extends MeasureRead {
  readonly owner?: Meaning;
  /** The value stands in a condition or exception of its predication. */
  readonly conditional: boolean;
}

export interface Statement {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly block: Block;
  readonly region: Region;
  readonly sentence: Sentence;
  readonly predication: Predication;
  /** Elements and mixtures that the statement itself names. */
  readonly named: Named;
  readonly subject: Subject;
  /** Meanings in the sentence. */
  readonly meanings: readonly MeaningRead[];
  /** Values of this predication. */
  readonly values: readonly Owned[];
  /** Values of the whole sentence. */
  readonly sentenceValues: readonly Owned[];
  /** The head of the column over this cell, in small letters. */
  readonly header: string;
  /** Title words of the article and the paragraphs above, in small letters. */
  readonly heading: string;
  readonly article: number;
}

/** Where runs of tokens stand, relative to the article; the path is filled in when the article is lifted. */
export function spanOf(statement: Statement, run: Run): Span {
  const { tokens } = statement;
  const start = tokens[run.from]?.start ?? statement.block.start;
  const end = tokens[run.to - 1]?.end ?? start;
  return { path: '', start, end };
}

export function wordsOf(statement: Statement, run: Run): string {
  const { start, end } = spanOf(statement, run);
  return statement.text.slice(start, end).replace(/\s+/g, ' ').trim();
}

/** What a fact about `run` of the statement says besides its kind and value. */
export function said(statement: Statement, run: Run, force = statement.predication.force): Said {
  const { predication, subject, block, article } = statement;
  const [when] = predication.conditions;
  const { exception } = predication;
  return {
    spans: [spanOf(statement, run)],
    words: wordsOf(statement, trimmed(statement.tokens, predication)),
    place: block.place,
    article,
    force,
    addressee: predication.addressee,
    subject,
    ...(when && { when: { words: wordsOf(statement, when), span: spanOf(statement, when) } }),
    ...(exception && {
      except: { words: wordsOf(statement, exception), span: spanOf(statement, exception), open: exception.open },
    }),
  };
}

/** A run without the comma or stop at its ends. */
export function trimmed(tokens: readonly Token[], { from, to }: Run): Run {
  let [start, end] = [from, to];
  while (start < end && /^[,;:.—]$/.test(tokens[start]?.text ?? '')) start++;
  while (start < end && /^[,;:.]$/.test(tokens[end - 1]?.text ?? '')) end--;
  return { from: start, to: end };
}

/** Does the run hold one of the phrases? */
export const holds = <M>(phrases: Phrases<M>, statement: Statement, run: Run = statement.predication): boolean =>
  phrases.in(statement.tokens, run.from, run.to).length > 0;

/** Is the token inside a condition, an exception or what is replaced? */
export function isAside({ predication }: Statement, at: number): boolean {
  const inside = (run: Run): boolean => run.from <= at && at < run.to;
  return (
    predication.conditions.some(inside) ||
    predication.replaced.some(inside) ||
    (predication.exception !== undefined && inside(predication.exception))
  );
}
