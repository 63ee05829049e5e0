/** The maker for values: a number in the text against a number that the documents require. */
import { reaches } from '../model/binding.ts';
import { isValue, type PropertyKind, type ValueFact } from '../model/fact.ts';
import type { Severity } from '../model/project.ts';
import type { Context, RuleDefinition, RuleFinding, SuggestedClause } from '../model/rule.ts';
import type { Step } from '../model/worked.ts';
import { defineRule, fitted, named, type Stated, surestFirst } from './define.ts';
import { type View, viewsOf } from './view.ts';

/** What is wrong with a value for one element. */
export interface Shortfall {
  readonly required: string;
  readonly severity: Severity;
  /** Why at this level: declared class, lawful minimum or recommendation. */
  readonly detail?: string;
  readonly steps?: readonly Step[];
}

export interface Limit extends Stated {
  readonly kind: PropertyKind;
  readonly when: (view: View) => boolean;
  /** Undefined where the value will do. */
  readonly short: (fact: ValueFact, view: View) => Shortfall | undefined;
  readonly message: (about: {
    readonly found: string;
    readonly required: string;
    readonly elements: string;
    readonly fact: ValueFact;
  }) => string;
  readonly replacement?: (fact: ValueFact, view: View) => SuggestedClause | undefined;
}

/** One finding for each value that falls short, with the elements it is too low or too high for. */
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
      yield* findings(rule, fact, concerned);
    }
  }
}

/** Values that are required, permitted or recommended count; what is banned, waived or only told does not. */
const isAsked = ({ force }: ValueFact): boolean => force !== 'ban' && force !== 'waive';

function* findings(rule: Limit, fact: ValueFact, concerned: readonly View[]): Iterable<RuleFinding> {
  const short = surestFirst(concerned).flatMap((view) => {
    const shortfall = rule.short(fact, view);
    return shortfall ? [{ view, shortfall }] : [];
  });
  const [worst] = short;
  if (!worst) return;
  const { required } = worst.shortfall;
  const elements = short.filter(({ shortfall }) => shortfall.required === required).map(({ view }) => view.element);
  const found = fact.value.asWritten;
  const replacement = rule.replacement?.(fact, worst.view);
  yield {
    at: fact.spans[0],
    message: fitted(rule.message({ found, required, elements: named(elements), fact })),
    detail: worst.shortfall.detail,
    found,
    required,
    elements,
    severity: worst.shortfall.severity,
    steps: worst.shortfall.steps ?? worst.view.requirement?.steps,
    ...(replacement && { remedy: { kind: 'replace', span: fact.spans[0], clause: replacement } }),
  };
}
