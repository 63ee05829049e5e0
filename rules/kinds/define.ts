/** The plain maker: a rule that fits none of the others, and what all makers share. */

import type { Level } from '../model/project.ts';
import type { Citation, RuleDefinition, RuleExamples, SuggestedClause } from '../model/rule.ts';
import type { Element } from '../model/specification.ts';
import type { Known } from '../model/table.ts';
import type { View } from './view.ts';

/** What every rule states, whatever its maker. */
export interface Stated {
  readonly title: string;
  readonly severity: Level;
  readonly reason: string;
  readonly citations: RuleDefinition['citations'];
  readonly clause: SuggestedClause;
  readonly outranks?: readonly string[];
  readonly examples: RuleExamples;
}

export function defineRule(rule: Stated & Pick<RuleDefinition, 'gate' | 'check'>): RuleDefinition {
  return Object.freeze({ ...rule, outranks: rule.outranks ?? [] });
}

/** `cite('ACI 318', '19', '26.5.3.2', 'seen second hand')` */
export function cite(document: string, edition: string, clause: string, status: Known): Citation {
  return { document, edition, clause, status };
}

/** A clause that the fault would undo, where the card's own ground is common practice. */
export function protects(document: string, edition: string, clause: string, status: Known): Citation {
  return { document, edition, clause, status, protects: true };
}

export const commonPractice: Citation = {
  document: 'trade practice',
  edition: '',
  clause: '',
  status: 'common practice',
};

const mostNamed = 2;

/** "shelter walks, curb ramps and 2 more": short enough for a message. */
export function named(elements: readonly Element[]): string {
  const labels = elements.map(({ label }) => label);
  if (labels.length <= mostNamed) return labels.join(' and ') || 'the work';
  return `${labels.slice(0, mostNamed).join(', ')} and ${labels.length - mostNamed} more`;
}

/** Elements in the order of their evidence, the surest first: the finding stands on that one. */
export function surestFirst(views: readonly View[]): readonly View[] {
  return [...views].sort((a, b) => b.evidence.points - a.evidence.points);
}

const longestMessage = 120;

/** What does not fit a message goes to the detail: the first is cut at a word and closed with an ellipsis. */
export function fitted(message: string): string {
  if (message.length <= longestMessage) return message;
  const cut = message.slice(0, longestMessage - 1);
  return `${cut.slice(0, Math.max(cut.lastIndexOf(' '), 1)).replace(/[,;:]$/, '')}…`;
}
