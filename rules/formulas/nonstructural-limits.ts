/** What IBC 1904.2 asks of concrete that carries no structure: a strength by freezing class, and the air of ACI 318. */
import type { Limits } from '../model/requirement.ts';
import type { Row } from '../model/table.ts';
import type { Worked } from '../model/worked.ts';
import { type NonstructuralStrength, nonstructuralStrengths } from '../tables/nonstructural.ts';
import { airOf, freezingClass, knownClasses, type Situation } from './aci-limits.ts';
import { bothUnits, pairOf } from './unit-twins.ts';

export function nonstructuralLimits(situation: Situation): Worked<Limits> {
  const classes = knownClasses(situation);
  const freezing = freezingClass(classes);
  const row = nonstructuralStrengths.find((each) => each.class === freezing?.name);
  if (!row) return { value: { scm: [], cementitious: [] }, steps: [] };
  const air = airOf({ ...situation, strength: situation.strength ?? row.strength.inchPound }, classes);
  const strength = { value: pairOf(row.strength.inchPound), origin: row.origin };
  return {
    value: { strength, air: air?.value, scm: [], cementitious: [] },
    steps: [strengthStep(row), ...(air?.steps ?? [])],
  };
}

const strengthStep = (row: Row<NonstructuralStrength>) => ({
  text: `Class ${row.class}, nonstructural: f'c ${bothUnits(row.strength.inchPound)}, no limit on w/cm`,
  origin: row.origin,
});
