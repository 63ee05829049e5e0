/** What IRC Table R402.2 asks: strength by weathering and by lie, one range of air, and caps under de-icers. */
import { type Quantity, quantity } from '../model/quantity.ts';
import type { AirBand, Alternative, Limits } from '../model/requirement.ts';
import type { Step, Worked } from '../model/worked.ts';
import { scmCaps } from '../tables/cementitious.ts';
import {
  garageFloorAlternative,
  residentialAir,
  residentialStrengths,
  type Weathering,
  weatheringOfClass,
} from '../tables/residential.ts';
import { scmSteps } from './aci-limits.ts';
import { bothUnits, pairOf } from './unit-twins.ts';

/** Lying flat (slabs, steps, porches, garage floors) or upright (walls). */
export type Lie = 'flat' | 'upright';

export function residentialLimits(classes: readonly string[], lie: Lie): Worked<Limits> {
  const weathering = weatheringOf(classes);
  const row = residentialStrengths.find((each) => each.weathering === weathering);
  if (!row) return { value: { scm: [], cementitious: [] }, steps: [] };
  const strength: Quantity<'stress'> = row[lie];
  const air = row.weathering === 'negligible' ? undefined : airRange(residentialAir.value.low);
  const scm = lie === 'flat' && classes.includes('F3') ? scmCaps.irc : [];
  return {
    value: { strength: { value: pairOf(strength), origin: row.origin }, air, scm, cementitious: [] },
    steps: [
      { text: `${row.weathering} weathering, ${lie} work: f'c ${bothUnits(strength)}`, origin: row.origin },
      ...(air ? [airStep(air)] : []),
      ...scmSteps(scm),
    ],
  };
}

/** A steel-trowelled garage floor: less air, if the concrete is stronger. */
export function garageFloor(limits: Limits): Alternative | undefined {
  if (!limits.air) return undefined;
  const { value, origin } = garageFloorAlternative;
  const air = { ...airRange(value.low), origin };
  const strength = { value: pairOf(quantity(value.strength.amount, 'psi')), origin };
  return {
    about: 'finish',
    given: `a garage floor with a steel-trowelled finish: f'c ${bothUnits(value.strength)} and not less than ${value.low} percent air`,
    limits: { ...limits, air, strength },
  };
}

/** The worst weathering of the list: its own word, or the one that a freezing class comes closest to. */
function weatheringOf(classes: readonly string[]): Weathering | undefined {
  const named = classes.map((name) => weatheringOfClass.find((row) => row.class === name)?.weathering ?? name);
  return residentialStrengths.findLast(({ weathering }) => named.includes(weathering))?.weathering;
}

export const isWeathering = (name: string): boolean =>
  residentialStrengths.some(({ weathering }) => weathering === name);

/** The list with each word for the weathering replaced by the worst freezing class that it stands for. */
export const freezingClassesOf = (classes: readonly string[]): readonly string[] =>
  classes.map((name) => weatheringOfClass.findLast(({ weathering }) => weathering === name)?.class ?? name);

/** A range without a target: the middle stands for it. */
function airRange(low: number): AirBand {
  const { high } = residentialAir.value;
  return { target: (low + high) / 2, low, high, byRange: true, origin: residentialAir.origin };
}

const airStep = ({ low, high, origin }: AirBand): Step => ({ text: `total air ${low} to ${high} percent`, origin });
