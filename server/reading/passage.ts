/** A passage (a paragraph or a table cell) as statements, each with its values, its words and whose it is. */
import type { Region } from '../../rules/model/specification.ts';
import { boundInWords, farBound, withBound } from './bounding.ts';
import type { Predication, Sentence } from './clauses.ts';
import { goesOn } from './leads.ts';
import type { MeasureRead } from './measure.ts';
import { type Named, namedIn } from './mentions.ts';
import type { Block } from './outline.ts';
import { type MeaningRead, meaningsIn, ownerOf } from './owners.ts';
import type { Run } from './run.ts';
import { isElsewhere, type ScopeLevel, subjectFrom, turned, without } from './scope.ts';
import type { Owned, Statement } from './statement.ts';
import type { Around } from './surroundings.ts';
import type { Token } from './tokens.ts';

export interface Passage {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly block: Block;
  readonly region: Region;
  /** Index of the article in its document. */
  readonly article: number;
  readonly header: string;
  readonly around: Around;
  /** Levels of scope over the sentence: row, heading, stems, article, section. */
  readonly over: readonly ScopeLevel[];
}

export function statementsOf(
  passage: Passage,
  sentences: readonly Sentence[],
  measures: readonly MeasureRead[],
): Statement[] {
  let before: Named | undefined;
  let next = 0;
  return sentences.flatMap((sentence) => {
    const from = next;
    while (next < measures.length && (measures[next] as MeasureRead).from < sentence.to) next++;
    const own = inherited(passage, sentence, before);
    before = 0 < own.elements.length ? own : before;
    const meanings = meaningsIn(passage.tokens, sentence);
    const values = measures.slice(from, next).map((value) => owned(passage, value, sentence, meanings));
    let lead: ScopeLevel[] = [{ by: 'words', named: own }];
    return sentence.predications
      .filter(({ past }) => !past)
      .map((predication) => {
        const made = statement(passage, sentence, predication, lead, meanings, values);
        if (isLead(passage, predication, made.named)) lead = [{ by: 'heading', named: made.named, heads: true }];
        return made;
      });
  });
}

function statement(
  { text, tokens, block, region, article, header, around, over }: Passage,
  sentence: Sentence,
  predication: Predication,
  lead: readonly ScopeLevel[],
  meanings: readonly MeaningRead[],
  values: readonly Owned[],
): Statement {
  const { exception, replaced } = predication;
  const named = without(namedIn(tokens, predication), [...replaced, ...(exception ? [exception] : [])]);
  const subject = subjectFrom([{ by: 'words', named }, ...lead, ...over]);
  return {
    text,
    tokens,
    block,
    region,
    sentence,
    predication,
    named,
    subject: isElsewhere(tokens, predication) ? turned(subject) : subject,
    meanings,
    values: values.filter(({ from }) => predication.from <= from && from < predication.to),
    sentenceValues: values,
    header: header.toLowerCase(),
    heading: around.words,
    article,
  };
}

/** "… ; Interior Slabs: concrete 3,500 psi, …": words before a colon inside a sentence head what follows them there. */
function isLead({ tokens }: Passage, { from, to }: Predication, named: Named): boolean {
  return (
    tokens[to - 1]?.text === ':' &&
    to - from <= longestLead &&
    (0 < named.elements.length || named.exterior !== 'unknown')
  );
}

const longestLead = 8;

/** "Cover the walks with burlap. Then apply compound and leave it on.": a sentence that goes on speaks of what came before. */
function inherited({ tokens, region }: Passage, sentence: Sentence, before: Named | undefined): Named {
  const own = without(namedIn(tokens, sentence), sentence.predications.flatMap(aside(tokens)));
  if (0 < own.elements.length || 0 < own.mixtures.length || !before || own.exterior !== 'unknown') return own;
  return goesOn(tokens, sentence) || mixtureRegions.has(region) ? before : own;
}

/** What is excepted, and what a "but" brings, is not what the rest of the sentence is about. */
const aside =
  (tokens: readonly Token[]) =>
  (predication: Predication): readonly Run[] => {
    if (/^(?:but|except)$/.test(tokens[predication.from]?.text ?? '')) return [predication];
    return predication.exception ? [predication.exception] : [];
  };

const mixtureRegions: ReadonlySet<Region> = new Set(['mixtures', 'summary']);

function owned(
  { tokens, around }: Passage,
  value: MeasureRead,
  sentence: Sentence,
  meanings: readonly MeaningRead[],
): Owned {
  const near = ownerOf(tokens, value, meanings);
  const over = near
    ? undefined
    : around.meanings.find(({ meaning }) => meaning.carries.includes(value.measure.dimension));
  const bound = near ? farBound(tokens, near, value) : boundInWords(around.words.split('|')[0] ?? '');
  const conditional = isConditional(value, sentence);
  return { ...value, measure: withBound(value.measure, bound), owner: near?.meaning ?? over?.meaning, conditional };
}

/** The value stands in a condition or exception, or in what is being replaced. */
function isConditional(value: Run, { predications }: Sentence): boolean {
  const inside = (run: Run): boolean => run.from <= value.from && value.from < run.to;
  const predication = predications.find(inside);
  if (!predication) return false;
  const { conditions, replaced, exception } = predication;
  return conditions.some(inside) || replaced.some(inside) || (exception !== undefined && inside(exception));
}
