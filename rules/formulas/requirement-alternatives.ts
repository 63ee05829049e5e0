/** What would be required if something that is not given were so: questions to put, never findings. */
import type { Alternative, Limits } from '../model/requirement.ts';
import type { Row } from '../model/table.ts';
import { type AirTarget, airTargets, largestUsualAggregate } from '../tables/air.ts';
import { sulfateWithoutPozzolan } from '../tables/cementitious.ts';
import { mixtureLimits } from '../tables/mixture-limits.ts';
import { aciLimits, airOf, knownClasses, type Situation } from './aci-limits.ts';
import type { RequirementInput, Scope } from './requirement-input.ts';
import { garageFloor } from './residential-limits.ts';
import { bothUnits } from './unit-twins.ts';

export interface Judged {
  readonly input: RequirementInput;
  readonly situation: Situation;
  readonly scope: Scope;
  readonly lawful: Limits;
}

export function alternativesTo(judged: Judged): readonly Alternative[] {
  return [ifStructural(judged), ifReinforced(judged), ifWithoutPozzolan(judged), ifGarageFloor(judged)]
    .filter((alternative) => alternative !== undefined)
    .concat(byAggregate(judged));
}

function ifStructural({ input, situation, scope }: Judged): Alternative | undefined {
  if (scope !== 'ground' || input.structural !== 'unknown' || knownClasses(situation).length === 0) return undefined;
  const reinforced = input.reinforced === 'no' ? 'no' : 'yes';
  return {
    about: 'structural',
    given: `part of the structure${reinforced === 'yes' ? ' and reinforced' : ''}`,
    limits: aciLimits({ ...situation, reinforced }).value,
  };
}

/** Only Class F3 asks less of plain concrete; where C2 stands beside it in a structure nothing hangs on the steel. */
function ifReinforced({ input, situation, scope, lawful }: Judged): Alternative | undefined {
  if (scope === 'residence' || input.prestressed === 'yes' || !situation.classes.includes('F3')) return undefined;
  const isJudged = scope === 'structure' || input.declared === 'yes';
  if (input.reinforced === 'no' || (isJudged && input.reinforced === 'yes')) return undefined;
  const { value: limits } = aciLimits({ ...situation, reinforced: 'yes' });
  if (scope === 'structure' && limits.wcm?.value.amount === lawful.wcm?.value.amount) return undefined;
  return { about: 'reinforced', given: 'reinforced with at least the minimum steel', limits };
}

/** Class S3 of 318-19 may be met by a denser mixture instead of pozzolan or slag. */
function ifWithoutPozzolan({ situation, scope, lawful }: Judged): Alternative | undefined {
  const option = mixtureLimits[situation.edition].find((row) => row.option === 'without pozzolan or slag');
  if (scope !== 'structure' || !option?.wcm || !situation.classes.includes(option.class)) return undefined;
  const { wcm, strength, origin } = option;
  return {
    about: 'binder',
    given: 'made without pozzolan or slag',
    limits: {
      ...lawful,
      wcm: { value: wcm, origin },
      strength: { value: strength, origin },
      cementitious: [sulfateWithoutPozzolan, ...lawful.cementitious.slice(1)],
    },
  };
}

function ifGarageFloor({ input, scope, lawful }: Judged): Alternative | undefined {
  return scope === 'residence' && input.lie !== 'upright' ? garageFloor(lawful) : undefined;
}

/** The air of each usual size where none is given. */
function byAggregate({ input, situation, scope, lawful }: Judged): readonly Alternative[] {
  if (input.aggregate || scope === 'residence' || !lawful.air) return [];
  return airTargets[situation.edition].filter(isUsual).map(({ size }) => ({
    about: 'aggregate',
    given: `made with ${bothUnits(size)} aggregate`,
    limits: { ...lawful, air: airAt(size, situation, lawful) },
  }));
}

const isUsual = ({ size }: Row<AirTarget>): boolean => size.amount <= largestUsualAggregate.value.amount;

function airAt(aggregate: AirTarget['size'], situation: Situation, { strength }: Limits): Limits['air'] {
  const given = { ...situation, aggregate, strength: situation.strength ?? strength?.value.inchPound };
  return airOf(given, knownClasses(situation))?.value;
}
