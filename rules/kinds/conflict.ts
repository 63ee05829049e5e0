/** The maker for statements that cannot both stand: two facts about one element, or a fact against the evidence. */
import type { Fact } from '../model/fact.ts';
import type { Severity } from '../model/project.ts';
import type { Because, Context, RuleDefinition, RuleFinding } from '../model/rule.ts';
import { defineRule, fitted, type Stated, surestFirst, unitless, whereSaid } from './define.ts';
import { type View, viewsOf } from './view.ts';

/** The statement to change and what it stands against. */
export interface Clash {
  readonly fact: Fact;
  readonly found: string;
  readonly required?: string;
  /** Words that would stand in place of the fact's own; the rule's clause where none are given. */
  readonly instead?: string;
  readonly against: readonly Because[];
  readonly severity?: Severity;
}

export interface Conflict extends Stated {
  readonly when: (view: View) => boolean;
  readonly clash: (view: View) => Iterable<Clash>;
  readonly message: (about: { readonly clash: Clash; readonly elements: string; readonly where: string }) => string;
  readonly detail?: (clash: Clash) => string;
}

/** One finding for each statement that clashes, with the elements for which it does. */
export function conflict(rule: Conflict): RuleDefinition {
  return defineRule({ ...rule, gate: 'freezing', check: (context) => clashes(rule, context) });
}

function* clashes(rule: Conflict, context: Context): Iterable<RuleFinding> {
  const byFact = new Map<Fact, { readonly clash: Clash; readonly views: View[] }>();
  for (const view of surestFirst(viewsOf(context).filter(rule.when))) {
    for (const clash of rule.clash(view)) {
      const known = byFact.get(clash.fact);
      if (known) known.views.push(view);
      else byFact.set(clash.fact, { clash, views: [view] });
    }
  }
  for (const { clash, views } of byFact.values()) yield finding(rule, clash, views, context);
}

function finding(rule: Conflict, clash: Clash, views: readonly View[], { specification }: Context): RuleFinding {
  const where = whereSaid(clash.fact, specification);
  const elements = views.map(({ element }) => element);
  return {
    at: clash.fact.spans[0],
    message: fitted(elements, (names) => rule.message({ clash, elements: names, where })),
    detail: rule.detail?.(clash),
    found: clash.found,
    required: clash.required,
    elements,
    because: clash.against,
    severity: clash.severity,
    remedy: {
      kind: 'replace',
      span: clash.fact.spans[0],
      clause: clash.instead === undefined ? rule.clause : unitless(clash.instead),
    },
  };
}
