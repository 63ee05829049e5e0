/** What was not understood, by reason: a checker that is quiet because it read nothing must not look like a clean bill. */
import type { Unread } from '../../rules/model/specification.ts';
import type { Recognised } from './recognise/index.ts';
import { type Owned, type Statement, spanOf, wordsOf } from './statement.ts';

export function unreadIn(statements: readonly Statement[], facts: readonly Recognised[]): Unread[] {
  const bySentence = new Map(statements.map((statement) => [statement.sentence, statement]));
  return [...bySentence.values()].flatMap((statement) => {
    const reason = reasonFor(statement, facts);
    const { sentence, block } = statement;
    return reason
      ? [
          {
            span: spanOf(statement, sentence),
            place: block.place,
            words: wordsOf(statement, sentence).slice(0, 160),
            reason,
          },
        ]
      : [];
  });
}

const silent = new Set(['references', 'related', 'definitions', 'submittals', 'quality']);

function reasonFor(statement: Statement, facts: readonly Recognised[]): string | undefined {
  if (silent.has(statement.region)) return undefined;
  const { start, end } = spanOf(statement, statement.sentence);
  const own = facts.filter(({ spans: [span] }) => start <= span.start && span.start < end);
  const lostSign =
    /[\ufffd\u00ad]|(?<![\w.])(?:inch|percent|psi|°)\b/.test(statement.text.slice(start, end)) &&
    statement.sentenceValues.every(({ doubt }) => doubt === undefined) &&
    /\ufffd/.test(statement.text.slice(start, end));
  if (lostSign) return 'a sign or number was lost';
  const loose = statement.sentenceValues.filter((value) => !isTaken(statement, value, own) && isWorthReading(value));
  if (loose.some(({ owner }) => owner?.ours)) return own.length === 0 ? 'a value that gave no fact' : undefined;
  if (loose.some(({ owner, measure }) => owner === undefined && measure.unit !== '')) return 'a value that nobody owns';
  const ours = statement.meanings.some(
    ({ meaning }) => meaning.ours && meaning.id !== 'coverage' && meaning.id !== 'weather temperature',
  );
  return ours && own.length === 0 && /\b(?:shall|must|may|should|do not)\b/i.test(statement.text.slice(start, end))
    ? 'words of ours that gave no fact'
    : undefined;
}

const isTaken = (statement: Statement, value: Owned, own: readonly Recognised[]): boolean => {
  const { start, end } = spanOf(statement, value);
  // "at 28 days" is the age of the strength beside it.
  const isAge =
    value.measure.dimension === 'duration' && own.some((fact) => fact.kind === 'strength' && fact.age !== undefined);
  return isAge || own.some(({ spans: [span] }) => span.start <= start && end <= span.end);
};

const isWorthReading = ({ measure }: Owned): boolean =>
  measure.dimension === 'share' ||
  measure.dimension === 'stress' ||
  measure.dimension === 'duration' ||
  measure.dimension === 'temperature' ||
  measure.dimension === 'content';
