/** Nominal maximum size of aggregate: a length that aggregate owns, or a size number of ASTM C33. */
import type { ValueFact } from '../../../rules/model/fact.ts';
import type { Measure } from '../../../rules/model/measure.ts';
import { convert, type Unit } from '../../../rules/model/quantity.ts';
import { aggregateSizes } from '../../../rules/tables/aggregate-size.ts';
import { type Owned, type Statement, said, wordsOf } from '../statement.ts';
import { sentenceWords } from './act.ts';
import { property, top } from './property.ts';

const plausible = (value: Owned): boolean => {
  const mm = convert(top(value), value.measure.unit as Unit, 'mm');
  return 4 < mm && mm <= 160;
};

const measured = property({
  kind: 'aggregate-size',
  meaning: 'aggregate',
  dimension: 'length',
  plausible,
  byPlace: (value, { block, sentenceValues }) =>
    block.kind === 'row' &&
    plausible(value) &&
    sentenceValues.length === 1 &&
    convert(top(value), value.measure.unit as Unit, 'mm') <= 50,
});

export function aggregateSize(statement: Statement): ValueFact[] {
  // Slip-resistive grit and surface grading are not the mixture's aggregate.
  if (/abrasive|slip|nonslip|sieve|exposed aggregate/.test(statement.heading)) return [];
  if (/\basphalt|\bbitum/.test(sentenceWords(statement))) return [];
  return [...measured(statement).filter((fact) => !isDepth(fact, statement)), ...numbered(statement)];
}

/** "six inches of stone" is a layer. */
function isDepth({ spans: [{ end }] }: ValueFact, { text }: Statement): boolean {
  return /^\s*(?:\([^)]*\)\s*)?(?:(?:of )(?:compacted |crushed |clean )*(?:stone|gravel|aggregate|rock|base)|(?:thick |deep |of )*(?:\w+ ){0,3}(?:sub)?(?:base|bed|layer|cushion)\b)/i.test(
    text.slice(end, end + 50),
  );
}

function numbered(statement: Statement): ValueFact[] {
  const { tokens, predication } = statement;
  const isAbout =
    statement.meanings.some(({ meaning }) => meaning.id === 'aggregate') ||
    /aggregate|stone|size/.test(statement.header);
  if (!isAbout) return [];
  const facts: ValueFact[] = [];
  for (let at = predication.from; at < predication.to; at++) {
    const size = aggregateSizes.find(({ number }) => number === tokens[at]?.text);
    if (!size || !/^(?:#|no|\.|size|number)$/.test(tokens[at - 1]?.text ?? '')) continue;
    const run = { from: at, to: at + 1 };
    const { amount, unit } = size.nominalMaximum;
    const value = {
      dimension: 'length',
      unit,
      max: amount,
      asWritten: wordsOf(statement, { from: at - 1, to: at + 1 }),
    } as Measure;
    facts.push({
      kind: 'aggregate-size',
      ...said(statement, run),
      value,
      working: [`size number ${size.number} has a nominal maximum size of ${amount} ${unit}`],
    });
  }
  return facts;
}
