/** The plain maker: a rule that fits none of the others, and what all makers share. */
import type { Fact } from '../model/fact.ts';
import type { Level } from '../model/project.ts';
import type { Citation, RuleDefinition, RuleExamples, SuggestedClause } from '../model/rule.ts';
import type { Article, Element, Specification } from '../model/specification.ts';
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

/** "shelter walks, curb ramps and 3 more": as many names as a message has room for; nobody has to look for a single one. */
export function named(elements: readonly Element[], most: number = longest.named): string {
  const labels = [...new Set(elements.map(({ label }) => label))];
  if (labels.length === 0) return 'the work';
  if (labels.length <= most) return [labels.slice(0, -1).join(', '), ...labels.slice(-1)].filter(Boolean).join(' and ');
  const shown = 1 < most && labels.length - most === 1 ? most - 1 : most;
  return `${labels.slice(0, shown).join(', ')} and ${labels.length - shown} more`;
}

/** "2.03.B"; in a text without numbers the title over it, and under no title "this section". */
export function whereSaid({ place, article, spans: [{ path }] }: Fact, { documents }: Specification): string {
  const head = documents.find((document) => document.path === path)?.articles[article];
  return place && place !== head?.title ? place : headOf(head);
}

/** An article by its number, else by its title as written. */
export const headOf = (article: Article | undefined): string =>
  article?.number || (article?.title ? `"${quoted(article.title)}"` : 'this section');

/** Elements in the order of their evidence, the surest first: the finding stands on that one. */
export function surestFirst(views: readonly View[]): readonly View[] {
  return [...views].sort((a, b) => b.evidence.points - a.evidence.points);
}

/** The message with as many elements named as it has room for; what is still too long is cut at a word. */
export function fitted(elements: readonly Element[], message: (elements: string) => string): string {
  for (let most = longest.named; 1 <= most; most -= 1) {
    const full = message(named(elements, most));
    if (full.length <= longest.message) return opened(full);
  }
  return opened(shortened(message(named(elements, 1)), longest.message));
}

/** A message may begin with its place: "This section trowels …". */
const opened = (message: string): string => message.replace(/^this\b/, 'This');

/** Words as written, cut to a length that leaves room in a message. */
export const quoted = (words: string): string => shortened(words, longest.quote);

function shortened(text: string, most: number): string {
  if (text.length <= most) return text;
  const room = text.slice(0, most - 1);
  return `${room.slice(0, Math.max(room.lastIndexOf(' '), 1)).replace(/[,;:]$/, '')}…`;
}
