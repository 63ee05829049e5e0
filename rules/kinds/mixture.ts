/** What the text says of the concrete of an element: does it specify a mixture at all, its stone, its strength. */
import type { FactKind, ValueFact } from '../model/fact.ts';
import { lowest } from '../model/measure.ts';
import { inUnit, type Quantity, quantity } from '../model/quantity.ts';
import { tenderAge } from '../tables/judgment.ts';
import type { View } from './view.ts';

const mixtureFacts: readonly FactKind[] = [
  'air-content',
  'air-entrainment',
  'w-cm',
  'strength',
  'cement-content',
  'aggregate-size',
  'slump',
  'scm',
];

/** Does the manual specify the concrete of the element, or only how it is placed and finished? */
export function specifiesMixture(view: View): boolean {
  return view.hasArticle('mixtures', 'materials') || mixtureFacts.some((kind) => view.says(kind));
}

/** Strengths that are an f'c: no modulus of rupture, and no early strength on the way to it. */
export function specifiedStrengths(view: View): readonly ValueFact[] {
  return view.values('strength').filter(isSpecifiedStrength);
}

export function isSpecifiedStrength({ of, age }: ValueFact): boolean {
  return of !== 'flexural' && (age === undefined || inUnit(tenderAge.value, 'd') <= age);
}

/** The lowest f'c given, on which a permitted reduction of air depends. */
export function specifiedStrength(view: View): Quantity<'stress'> | undefined {
  const all = specifiedStrengths(view).map(stressOf);
  const known = all.filter((stress) => stress !== undefined);
  return known.sort((a, b) => inUnit(a, 'psi') - inUnit(b, 'psi'))[0];
}

/** The least strength that a statement accepts, in the unit that was written. */
export function stressOf({ value, doubt }: ValueFact): Quantity<'stress'> | undefined {
  const least = lowest(value);
  if (doubt !== undefined || least === undefined || value.dimension !== 'stress') return undefined;
  return quantity(least, value.unit) as Quantity<'stress'>;
}

/** Nominal maximum size of aggregate, the text's or the project's; undefined where the text names several. */
export function aggregateOf(view: View): Quantity<'length'> | undefined {
  const sizes = view.values('aggregate-size').flatMap(({ value, doubt }) => {
    const amount = value.max ?? value.target ?? value.min;
    const isSize = doubt === undefined && amount !== undefined && value.dimension === 'length';
    return isSize ? [quantity(amount, value.unit) as Quantity<'length'>] : [];
  });
  const different = new Set(sizes.map((size) => Math.round(inUnit(size, 'mm'))));
  if (different.size === 0) return view.project.aggregate;
  return different.size === 1 ? sizes[0] : undefined;
}

/** Neither air nor w/cm nor strength: a mixture in name only. */
export const saysNoNumber = (view: View): boolean => numbers.every((number) => !isGiven(view, number));

export const saysAllNumbers = (view: View): boolean => numbers.every((number) => isGiven(view, number));

const numbers = ['air', 'w-cm', 'strength'] as const;

/** Here, on the drawings, or in what is cited. */
const isGiven = (view: View, number: (typeof numbers)[number]): boolean =>
  view.says(number === 'air' ? 'air-content' : number) || view.supplied(number);
