/** The levels at which one rule speaks about a specification made by hand. */
import { rules } from '../../rules/index.ts';
import type { Severity } from '../../rules/model/project.ts';
import { context, type Made } from './made.ts';

/** The level of each finding: what the rule gives for this case, else its own. */
export function levels(id: string, made: Made): readonly (Severity | 'off')[] {
  const rule = rules.find((each) => each.id === id);
  if (!rule) throw new Error(`no rule ${id}`);
  return [...rule.check(context(made))].map(({ severity }) => severity ?? rule.severity);
}
