/** What the documents require of one element: structural or not first, lawful minimum and durable recommendation apart. */
import type { Limits, Requirement } from '../model/requirement.ts';
import type { Origin } from '../model/table.ts';
import type { Step, Worked } from '../model/worked.ts';
import { floorAir } from '../tables/air.ts';
import type { AciEdition } from '../tables/exposure.ts';
import { groundSlabsLeftOut } from '../tables/nonstructural.ts';
import { aciLimits, knownClasses, onGround, type Situation } from './aci-limits.ts';
import { nonstructuralLimits } from './nonstructural-limits.ts';
import { alternativesTo } from './requirement-alternatives.ts';
import {
  type ComputedCode,
  isComputed,
  type RequirementInput,
  type Scope,
  scopeOf,
  situationOf,
} from './requirement-input.ts';
import { freezingClassesOf, isWeathering, residentialLimits } from './residential-limits.ts';

/** Undefined for a code that this version does not compute. */
export function computeRequirement(input: RequirementInput & { readonly code: ComputedCode }): Requirement;
export function computeRequirement(input: RequirementInput): Requirement | undefined;
export function computeRequirement(input: RequirementInput): Requirement | undefined {
  if (!isComputed(input.code)) return undefined;
  const [situation, scope] = [situationOf(input), scopeOf(input)];
  const lawful = lawfulFor(input, situation, scope);
  const declared = isBoundByDeclaration(input, scope) ? aciLimits(onGround(situation)) : undefined;
  const recommended = recommendedFor(input, situation, scope, lawful.value);
  const first = [...strangers(situation, scope), ...opening(input, situation, scope), ...lawful.steps];
  const bound = added(first, 'declared by the project, so binding', declared);
  const steps = added(bound, 'recommended so that it lasts', recommended);
  return {
    code: input.code,
    classes: input.classes,
    aggregate: input.aggregate,
    lawful: lawful.value,
    declared: declared?.value,
    recommended: recommended?.value,
    alternatives: alternativesTo({ input, situation, scope, lawful: lawful.value }),
    steps,
    citations: citationsOf(steps),
  };
}

function lawfulFor(input: RequirementInput, situation: Situation, scope: Scope): Worked<Limits> {
  if (scope === 'residence') return residentialLimits(input.classes, input.lie ?? 'flat');
  return scope === 'ground' ? nonstructuralLimits(situation) : aciLimits(situation);
}

/** A class that the project states brings its limits, though the code alone would leave the slab out. */
const isBoundByDeclaration = ({ code, declared }: RequirementInput, scope: Scope): boolean =>
  scope === 'ground' && declared === 'yes' && code !== 'ibc';

/** Ground slabs that freeze: the values of ACI 318 for plain concrete. Trowelled floors: hardly any air. */
function recommendedFor(
  { finish }: RequirementInput,
  situation: Situation,
  scope: Scope,
  lawful: Limits,
): Worked<Limits> | undefined {
  const durable = scope === 'structure' ? undefined : durableFor(situation);
  if (finish === undefined) return durable;
  const text = `interior floor with a hard-trowel finish: no air entrainer, total air at most ${floorAir.value} percent`;
  return {
    value: { ...(durable?.value ?? lawful), airAtMost: floorAir },
    steps: [...(durable?.steps ?? []), { text, origin: floorAir.origin }],
  };
}

function durableFor(situation: Situation): Worked<Limits> | undefined {
  const classes = freezingClassesOf(situation.classes);
  const plain: Situation = { ...onGround({ ...situation, classes }), reinforced: 'no' };
  return knownClasses(plain).some(({ level }) => 0 < level) ? aciLimits(plain) : undefined;
}

const names: Readonly<Record<AciEdition, string>> = { 'aci-318-19': 'ACI 318-19', 'aci-318-14': 'ACI 318-14' };

/** Classes that the edition does not have. */
function strangers(situation: Situation, scope: Scope): readonly Step[] {
  const known = new Set(knownClasses(situation).map(({ name }) => name));
  return situation.classes
    .filter((name) => !known.has(name) && !(scope === 'residence' && isWeathering(name)))
    .map((name) => ({ text: `"${name}" is no class of ${names[situation.edition]}: nothing is taken from it` }));
}

function opening({ structural }: RequirementInput, { edition }: Situation, scope: Scope): readonly Step[] {
  if (scope === 'residence') return [{ text: 'residential concrete: the table of the residential code' }];
  if (scope === 'structure') return [{ text: `part of the structure: ${names[edition]} holds in full` }];
  const { value, origin } = groundSlabsLeftOut[edition];
  const taken =
    structural === 'no'
      ? 'on ground and no part of the structure'
      : 'not said to be structural, so judged as on ground';
  return [{ text: `${taken}; ${names[edition]}: ${value}, and IBC 1904.2 is the lawful minimum`, origin }];
}

/** What both rest on is told once. */
function added(told: readonly Step[], title: string, worked: Worked<Limits> | undefined): readonly Step[] {
  if (!worked) return told;
  const fresh = worked.steps.filter(({ text }) => told.every((step) => step.text !== text));
  return [...told, { text: fresh.length === 0 ? `${title}: the same` : `${title}:` }, ...fresh];
}

function citationsOf(steps: readonly Step[]): readonly Origin[] {
  const byWords = new Map<string, Origin>();
  for (const { origin } of steps) if (origin) byWords.set(Object.values(origin).join('\n'), origin);
  return [...byWords.values()];
}
