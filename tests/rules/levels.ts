/** What one rule finds in a specification made by hand, and at which levels. */
import { rules } from '../../rules/index.ts';
import type { Severity } from '../../rules/model/project.ts';
import type { Rule, RuleFinding } from '../../rules/model/rule.ts';
import { context, type Made } from './made.ts';

export const found = (id: string, made: Made): readonly RuleFinding[] => [...ruleOf(id).check(context(made))];

/** The level of each finding: what the rule gives for this case, else its own. */
export const levels = (id: string, made: Made): readonly (Severity | 'off')[] =>
  found(id, made).map(({ severity }) => severity ?? ruleOf(id).severity);

function ruleOf(id: string): Rule {
  const rule = rules.find((each) => each.id === id);
  if (!rule) throw new Error(`no rule ${id}`);
  return rule;
}
