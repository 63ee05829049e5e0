/** The maker for what is done: an act that the text requires or allows and that harms the surface. */
import { reaches } from '../model/binding.ts';
import type { Force } from '../model/clause.ts';
import { type ActFact, type ActKind, comesTo, isAct } from '../model/fact.ts';
import type { Severity } from '../model/project.ts';
import type { Context, RuleDefinition, RuleFinding } from '../model/rule.ts';
import { defineRule, fitted, quoted, type Stated, surestFirst, whereSaid } from './define.ts';
import { type View, viewsOf } from './view.ts';

export interface Practice extends Stated {
  readonly kind: ActKind;
  readonly gate: RuleDefinition['gate'];
  /** Forces at which the act is the fault; by default it is required, permitted or recommended. */
  readonly forces?: readonly Force[];
  /** Is this act the harmful one? */
  readonly harmful: (fact: ActFact) => boolean;
  /** Which elements it harms. */
  readonly when: (view: View, fact: ActFact) => boolean;
  readonly message: (about: {
    readonly where: string;
    readonly elements: string;
    readonly words: string;
    readonly fact: ActFact;
  }) => string;
  readonly detail?: (fact: ActFact, views: readonly View[]) => string | undefined;
  readonly level?: (fact: ActFact, views: readonly View[]) => Severity | undefined;
}

/** One finding for each harmful act, with the elements it reaches. A ban of a practice is the cure, never the fault. */
export function practice(rule: Practice): RuleDefinition {
  return defineRule({ ...rule, check: (context) => harmfulActs(rule, context) });
}

function* harmfulActs(rule: Practice, context: Context): Iterable<RuleFinding> {
  for (const document of context.specification.documents) {
    for (const fact of document.facts) {
      if (!isAct(fact) || fact.kind !== rule.kind || !isOpen(rule, fact) || !rule.harmful(fact)) continue;
      const harmed = viewsOf(context).filter(
        (view) => reaches(fact.subject, view.element, document) && rule.when(view, fact) && !isSpared(view, fact),
      );
      if (harmed.length > 0) yield finding(rule, fact, surestFirst(harmed), context);
    }
  }
}

const allowing: readonly Force[] = ['require', 'permit', 'recommend'];

const isOpen = ({ forces = allowing }: Practice, fact: ActFact): boolean =>
  fact.doubt === undefined && (forces.includes(fact.force) || forces.includes(comesTo(fact)));

/** A clause of its own that bans the act spares the element from what is allowed in general. */
function isSpared(view: View, fact: ActFact): boolean {
  const closest = view.acts(fact.kind);
  return !closest.includes(fact) && closest.some((each) => comesTo(each) === 'ban');
}

/** The exception that makes a ban none, for quoting. */
const undoing = (fact: ActFact): string | undefined =>
  fact.force !== comesTo(fact) ? fact.except?.words.replace(/[.,;]$/, '') : undefined;

function finding(rule: Practice, fact: ActFact, views: readonly View[], { specification }: Context): RuleFinding {
  const elements = views.map(({ element }) => element);
  const words = quoted(undoing(fact) ?? fact.words);
  const where = whereSaid(fact, specification);
  return {
    at: fact.spans[0],
    message: fitted(elements, (names) => rule.message({ where, elements: names, words, fact })),
    detail: [undoing(fact) && 'The exception undoes the ban.', rule.detail?.(fact, views)].filter(Boolean).join(' '),
    found: words,
    elements,
    severity: rule.level?.(fact, views),
    remedy: { kind: 'replace', span: fact.spans[0], clause: rule.clause },
  };
}
