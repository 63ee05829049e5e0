/** Which trowel a finish uses, and what comes after it. */
import type { FinishStep } from '../model/acts.ts';
import type { ActFact } from '../model/fact.ts';

const hard: ReadonlySet<string> = new Set<FinishStep>(['trowel', 'hard trowel', 'power trowel']);
const textures: ReadonlySet<string> = new Set<FinishStep>(['broom', 'burlap drag', 'tine']);

/** The trowel makes the surface: no texture follows it. A light pass to close tears counts whatever follows. */
export function isTrowelledAtTheEnd(fact: ActFact): boolean {
  return onlyLightly(fact) || (trowelled(fact) && !isTexturedAfter(fact));
}

/** The trowel goes first and a broom hides it. */
export const isTrowelledThenTextured = (fact: ActFact): boolean => trowelled(fact) && isTexturedAfter(fact);

export const onlyLightly = (fact: ActFact): boolean => stepsOf(fact).includes('light trowel') && !trowelled(fact);

const stepsOf = ({ act }: ActFact): readonly string[] => act.steps ?? [];

const trowelled = (fact: ActFact): boolean => stepsOf(fact).some((step) => hard.has(step));

function isTexturedAfter(fact: ActFact): boolean {
  const steps = stepsOf(fact);
  const first = steps.findIndex((step) => hard.has(step));
  return steps.slice(first).some((step) => textures.has(step));
}
