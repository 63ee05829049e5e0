/** The page of a rule: what it asks, why, on whose word, and examples on which it speaks and stays silent. */
import { rules } from '../../../rules/index.ts';
import { type RulePageParams, type RulePageResult, rulePageRequest } from '../protocol.ts';
import { ruleMarkdown } from '../rule-markdown.ts';
import type { Session } from '../session.ts';

export function offerRulePages({ connection }: Session): void {
  connection.onRequest(rulePageRequest, ({ rule: id }: RulePageParams): RulePageResult => {
    const rule = rules.find((rule) => rule.id === id);
    return rule ? ruleMarkdown(rule) : null;
  });
}
