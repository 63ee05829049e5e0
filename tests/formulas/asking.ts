/** What the tests of requirements share: an element to ask about, and the numbers of a set of limits at a glance. */
import { computeRequirement } from '../../rules/formulas/requirement.ts';
import type { RequirementInput } from '../../rules/formulas/requirement-input.ts';
import type { Limits, Requirement } from '../../rules/model/requirement.ts';

export const given = { structural: 'no', reinforced: 'no', prestressed: 'no' } as const;
export const structure = { structural: 'yes', reinforced: 'yes', prestressed: 'no', code: 'aci-318-19' } as const;

export function required(input: RequirementInput): Requirement {
  const requirement = computeRequirement(input);
  if (!requirement) throw new Error(`${input.code} is not computed`);
  return requirement;
}

export const mixture = (limits: Limits | undefined) => [
  limits?.wcm?.value.amount,
  limits?.strength?.value.inchPound.amount,
  limits?.strength?.value.metric.amount,
];
export const air = (limits: Limits | undefined) =>
  limits?.air && [limits.air.target, limits.air.low, limits.air.high, limits.air.reducedTarget];
/** Caps of Class F3 in the order of the table. */
export const caps = [25, 50, 10, 35, 50];
