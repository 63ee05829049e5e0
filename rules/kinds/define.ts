/** The plain maker: a rule that fits none of the others, and what all makers share. */
import type { Level } from '../model/project.ts';
import type { Citation, RuleDefinition, RuleExamples, SuggestedClause } from '../model/rule.ts';
import type { Element } from '../model/specification.ts';
import type { Clauses } from '../tables/clauses.ts';
import { longest } from '../tables/messages.ts';
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
  const { title, severity, reason, citations, clause, gate, check, examples } = rule;
  return Object.freeze({
    title,
    severity,
    reason,
    citations,
    clause,
    gate,
    outranks: rule.outranks ?? [],
    check,
    examples,
  });
}

/** Citations of a rule whose own ground is a guide or common practice: that ground, then the clause the fault would undo. */
export function protecting(clauses: Clauses, ...grounds: readonly Citation[]): RuleDefinition['citations'] {
  const guarded = Object.entries(clauses).map(([code, own]) => [
    code,
    [...grounds, ...own.map((citation) => ({ ...citation, protects: true as const }))],
  ]);
  return Object.fromEntries(guarded);
}

/** A clause without units reads the same in both systems. */
export const unitless = (words: string): SuggestedClause => ({ inchPound: words, metric: words });

/** "shelter walks, curb ramps and 2 more": short enough for a message. */
export function named(elements: readonly Element[], most: number = longest.named): string {
  const labels = [...new Set(elements.map(({ label }) => label))];
  if (labels.length === 0) return 'the work';
  if (labels.length <= most) return [labels.slice(0, -1).join(', '), ...labels.slice(-1)].filter(Boolean).join(' and ');
  return `${labels.slice(0, most).join(', ')} and ${labels.length - most} more`;
}

/** Elements in the order of their evidence, the surest first: the finding stands on that one. */
export function surestFirst(views: readonly View[]): readonly View[] {
  return [...views].sort((a, b) => b.evidence.points - a.evidence.points);
}

/** The message with as many elements named as it has room for; what is still too long is cut at a word. */
export function fitted(elements: readonly Element[], message: (elements: string) => string): string {
  for (let most = longest.named; 1 <= most; most -= 1) {
    const full = message(named(elements, most));
    if (full.length <= longest.message) return full;
  }
  return shortened(message(named(elements, 1)), longest.message);
}

/** Words as written, cut to a length that leaves room in a message. */
export const quoted = (words: string): string => shortened(words, longest.quote);

function shortened(text: string, most: number): string {
  if (text.length <= most) return text;
  const room = text.slice(0, most - 1);
  return `${room.slice(0, Math.max(room.lastIndexOf(' '), 1)).replace(/[,;:]$/, '')}…`;
}
