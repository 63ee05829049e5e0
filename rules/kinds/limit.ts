/** The maker for values: a number in the text against a number that the documents require. */
import type { AnyQuantity } from '../formulas/unit-twins.ts';
import { reaches } from '../model/binding.ts';
import { isValue, type PropertyKind, type ValueFact } from '../model/fact.ts';
import type { Severity } from '../model/project.ts';
import type { Context, RuleDefinition, RuleFinding } from '../model/rule.ts';
import { defineRule, fitted, type Stated, surestFirst, whereSaid } from './define.ts';
import { type InWords, instead } from './instead.ts';
import { type View, viewsOf } from './view.ts';

/** What is wrong with a value for one element. */
export interface Shortfall {
  /** As the message prints it, "at most 0.45". */
  readonly required: string;
  /** What would stand in place of the value. */
  readonly instead: AnyQuantity | InWords;
  readonly severity: Severity;
  /** Why at this level: declared class, lawful minimum or recommendation. */
  readonly detail?: string;
}

export interface Limit extends Stated {
  readonly kind: PropertyKind;
  readonly when: (view: View) => boolean;
  /** Undefined where the value will do. */
  readonly short: (fact: ValueFact, view: View) => Shortfall | undefined;
  readonly message: (about: {
    readonly found: string;
    readonly where: string;
    readonly required: string;
    readonly elements: string;
    readonly view: View;
    readonly fact: ValueFact;
  }) => string;
}

/** One finding for each value that falls short and each thing required instead, with the elements concerned. */
export function limit(rule: Limit): RuleDefinition {
  return defineRule({ ...rule, gate: 'freezing', check: (context) => shortValues(rule, context) });
}

function* shortValues(rule: Limit, context: Context): Iterable<RuleFinding> {
  const views = viewsOf(context).filter(rule.when);
  for (const document of context.specification.documents) {
    for (const fact of document.facts) {
      if (!isValue(fact) || fact.kind !== rule.kind || fact.doubt !== undefined || !isAsked(fact)) continue;
      // A general value does not bind an element that has one of its own.
      const concerned = views.filter(
        (view) => reaches(fact.subject, view.element, document) && view.values(rule.kind).includes(fact),
      );
      for (const group of byRequired(rule, fact, concerned)) yield finding(rule, fact, group);
    }
  }
}

/** Values that are required, permitted or recommended count; what is banned or waived does not. */
const isAsked = ({ force }: ValueFact): boolean => force !== 'ban' && force !== 'waive';

interface Short {
  readonly view: View;
  readonly shortfall: Shortfall;
}

/** Elements of which the same is required make one finding, the surest first. */
function byRequired(rule: Limit, fact: ValueFact, concerned: readonly View[]): Iterable<readonly [Short, ...Short[]]> {
  const groups = new Map<string, [Short, ...Short[]]>();
  for (const view of surestFirst(concerned)) {
    const shortfall = rule.short(fact, view);
    if (!shortfall) continue;
    const known = groups.get(shortfall.required);
    if (known) known.push({ view, shortfall });
    else groups.set(shortfall.required, [{ view, shortfall }]);
  }
  return groups.values();
}

function finding(rule: Limit, fact: ValueFact, group: readonly [Short, ...Short[]]): RuleFinding {
  const [{ view, shortfall }] = group;
  const { required, severity, detail } = shortfall;
  const found = fact.value.asWritten;
  const where = whereSaid(fact, view.context.specification);
  const elements = group.map((each) => each.view.element);
  return {
    at: fact.spans[0],
    message: fitted(elements, (names) => rule.message({ found, where, required, elements: names, view, fact })),
    detail,
    found,
    required,
    elements,
    severity,
    steps: view.requirement?.steps,
    remedy: { kind: 'replace', span: fact.spans[0], clause: instead(fact.value, shortfall.instead) },
  };
}
