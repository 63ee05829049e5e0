/** Which of the things that a passage names this section builds: a kerb that is only protected needs no mixture of its own. */
import type { FactKind } from '../../rules/model/fact.ts';
import type { Region } from '../../rules/model/specification.ts';
import type { Lead } from './leads.ts';
import type { MentionRead } from './mentions.ts';
import type { Block } from './outline.ts';
import { sentenceWords } from './recognise/act.ts';
import type { Recognised } from './recognise/index.ts';
import type { Statement } from './statement.ts';

export interface Naming {
  readonly region: Region;
  readonly block: Block;
  readonly lead: Lead;
  readonly statements: readonly Statement[];
  readonly facts: readonly Recognised[];
}

export function isBuilt(each: MentionRead, naming: Naming): boolean {
  const { region, block, lead, statements, facts } = naming;
  const statement = statements.find(({ predication }) => predication.from <= each.from && each.from < predication.to);
  if (statement && (isOthers(statement, each) || leavesOut.test(sentenceWords(statement)))) return false;
  if (block.kind === 'row' || listing.has(region)) return true;
  const { name } = each.mention;
  if (lead.named.elements.some(({ mention }) => mention.name === name)) return true;
  if (statement && work.test(sentenceWords(statement))) return true;
  return facts.some((fact) => concerns(fact) && fact.subject.elements.some((own) => own.name === name));
}

const listing: ReadonlySet<Region> = new Set<Region>(['summary', 'mixtures']);

/** Salting a thing concerns it; sand kept in a bin on it does not. */
const concerns = (fact: Recognised): boolean =>
  fact.kind === 'deicer-use' ? fact.act.verb === 'spread' : !passing.has(fact.kind);

/** Facts that are told of things which stand there already. */
const passing: ReadonlySet<FactKind> = new Set<FactKind>([
  'deicers',
  'standard',
  'elsewhere',
  'test',
  'trait',
  'choice',
  'cold-protection',
]);

/** Words of making something. */
const work =
  /\b(?:construct|build|built|pour|cast|plac(?:e|ed|ing)\b|install|furnish|provide|replac|consist|thick\b|reinforc|concrete\b|expos|finish|broom|float|trowel|cur(?:e|ed|ing)\b|mixture|strength|class\b|joint(?:s|ing|ed)? (?:in|of|at)|slope)/;

/** "does not apply to exterior slabs", "walks are in Section 32 13 13". */
const leavesOut =
  /\b(?:does|do|shall|is|are) not (?:apply|cover|include|govern|part of|included|covered)\b|\bexclud(?:es|ed|ing)\b|\b(?:is|are|see|under|in|by) (?:\w+ )?section \d\d \d\d \d\d/;

/** "adjacent curbs", "the existing plaza". */
const isOthers = ({ tokens }: Statement, { from, to }: MentionRead): boolean =>
  tokens
    .slice(Math.max(0, from - 1), to)
    .some(({ text }) => /^(?:existing|adjacent|adjoining|abutting|neighbouring|neighboring)$/.test(text));
