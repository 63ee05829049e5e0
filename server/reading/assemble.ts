/** Many sections, one specification: documents, elements with their evidence, and which mixture serves which element. */
import type { Fact } from '../../rules/model/fact.ts';
import type { SectionDocument, Specification } from '../../rules/model/specification.ts';
import { elementsOf } from './elements.ts';
import { withFinishCodes } from './finish-codes.ts';
import type { Reading } from './reading.ts';

export function assemble(readings: readonly Reading[]): Specification {
  const ordered = [...readings].sort((a, b) => (a.source.path < b.source.path ? -1 : 1));
  const documents = ordered.map(documentOf);
  return {
    documents,
    elements: elementsOf(ordered, documents),
    facts: documents.flatMap(({ facts }) => facts),
  };
}

/** Enough orders to the designer, and the file is an owner's design standard: then what it leaves out is not missing. */
const designOrders = 2;

function documentOf(reading: Reading): SectionDocument {
  const facts = withFinishCodes(reading.facts);
  return {
    path: reading.source.path,
    section: reading.section,
    title: reading.title,
    articles: reading.articles,
    newArticles: reading.newArticles,
    facts,
    unread: reading.unread,
    signs: reading.signs,
    clauses: reading.clauses,
    designStandard: designOrders <= reading.toDesigner,
    handsTo: handsTo(facts, reading.section),
  };
}

/** Sections to which this one hands its concrete as a whole. */
function handsTo(facts: readonly Fact[], own: string | undefined): string[] {
  const targets = facts.flatMap((fact) =>
    fact.kind === 'elsewhere' && fact.value === 'everything' && fact.of ? [fact.of] : [],
  );
  return [...new Set(targets)].filter((number) => number !== own && /^\d/.test(number));
}
