/** One fault, one voice: what outranks speaks, what it outranks stays silent on the same words or elements. */
import type { RuleFinding } from '../rules/model/rule.ts';
import { overlap } from '../rules/model/source.ts';
import type { Judged } from './checking.ts';

export function oneVoice(judged: readonly Judged[]): readonly Judged[] {
  const distinct = judged.filter((each, at) => judged.findIndex((other) => isSame(each, other)) === at);
  const silenced = new Set<Judged>();
  for (const loud of distinct) {
    const below = new Set([...loud.rule.outranks, ...(loud.said.outranks ?? [])]);
    if (below.size === 0) continue;
    for (const each of distinct) {
      if (each !== loud && below.has(each.rule.id) && isAboutSame(loud.said, each.said)) silenced.add(each);
    }
  }
  return distinct.filter((each) => !silenced.has(each));
}

const isSame = (a: Judged, b: Judged): boolean =>
  a.rule === b.rule &&
  a.said.at.path === b.said.at.path &&
  a.said.at.start === b.said.at.start &&
  a.said.message === b.said.message;

/** The same words; or, where one of the two is a silence, an element in common. */
function isAboutSame(a: RuleFinding, b: RuleFinding): boolean {
  if (overlap(a.at, b.at)) return true;
  if (a.remedy?.kind !== 'insert' && b.remedy?.kind !== 'insert') return false;
  return a.elements.some((element) => b.elements.includes(element));
}
