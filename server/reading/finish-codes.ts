/** Finish codes of a schedule resolved by their legend: "T-1" is what "T-1 = steel trowel" says. */
import type { ActFact, Fact } from '../../rules/model/fact.ts';

export function withFinishCodes(facts: readonly Fact[]): readonly Fact[] {
  const legends = new Map<string, readonly string[]>();
  for (const fact of facts) {
    const name = codeOf(fact, 'legend');
    if (name && isFinish(fact) && fact.act.steps) legends.set(name, fact.act.steps);
  }
  return facts.flatMap((fact): Fact[] => {
    if (codeOf(fact, 'legend')) return [];
    const name = codeOf(fact, 'code');
    if (!name || !isFinish(fact)) return [fact];
    const steps = legends.get(name);
    return steps ? [{ ...fact, act: { ...fact.act, steps } }] : [];
  });
}

const isFinish = (fact: Fact): fact is ActFact => fact.kind === 'finish';

function codeOf(fact: Fact, way: 'legend' | 'code'): string | undefined {
  const manner = isFinish(fact) ? fact.act.manner : undefined;
  return manner?.startsWith(`${way} `) ? manner.slice(way.length + 1) : undefined;
}
