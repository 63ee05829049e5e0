/** Strength: f'c with its age, European classes, flexural strength; never the strength that ends a wait. */
import type { ValueFact } from '../../../rules/model/fact.ts';
import type { Measure } from '../../../rules/model/measure.ts';
import { convert, type Unit } from '../../../rules/model/quantity.ts';
import { type Owned, type Statement, said, wordsOf } from '../statement.ts';
import { bottom, property } from './property.ts';

const leastPsi = 1000;
const mostPsi = 20_000;

const plausible = (value: Owned): boolean => {
  const psi = convert(bottom(value), value.measure.unit as Unit, 'psi');
  return leastPsi <= psi && psi <= mostPsi;
};

const stated = property({
  kind: 'strength',
  meaning: 'strength',
  dimension: 'stress',
  plausible: (value) => plausible(value) || value.owner?.of === 'flexural',
  byPlace: (value, statement) => plausible(value) && mayBeStrength(statement),
  more: (value, statement) => {
    const age = ageOf(value, statement);
    return age === undefined ? {} : { age };
  },
});

/** "Walks: 4500 psi": a bare pressure is a strength where mixtures, materials or elements are described. */
function mayBeStrength({ region, block, named, subject, sentenceValues }: Statement): boolean {
  if (block.kind === 'row' || isMixture(sentenceValues)) return true;
  if (region === 'weather' || region === 'curing' || region === 'closeout' || region === 'field-quality') return false;
  return region === 'mixtures' || region === 'materials' || 0 < named.elements.length || 0 < subject.elements.length;
}

/** A sentence that also gives air or w/cm describes a mixture. */
const isMixture = (values: readonly Owned[]): boolean =>
  values.some(({ owner }) => owner?.id === 'air' || owner?.id === 'w-cm');

export function strength(statement: Statement): ValueFact[] {
  if (isWait(statement)) return [];
  return [...stated(statement), ...europeanClasses(statement)];
}

/** "until field-cured cylinders reach 3500 psi", "no salts below 4500 psi": the number ends a wait, it is not specified. */
const isWait = ({ tokens, predication }: Statement): boolean =>
  tokens
    .slice(predication.from, predication.to)
    .some(({ stem }) =>
      /^(?:reach|attain|attained|salt|deicer|icing|icer|freez|thaw|frost|insulat|strip|shor)$/.test(stem),
    ) &&
  !tokens
    .slice(predication.from, predication.to)
    .some(({ text }) => /^(?:mix|mixture|exposed|exposure|class|strength)$/.test(text));

/** "4500 psi at 28 days", "28-day strength": days that stand right by the value. */
function ageOf(value: Owned, { sentenceValues, tokens, header }: Statement): number | undefined {
  const near = sentenceValues.find(
    ({ measure, from, to }) =>
      measure.dimension === 'duration' && Math.min(Math.abs(from - value.to), Math.abs(value.from - to)) <= 8,
  );
  const dayWord = tokens.slice(Math.max(0, value.from - 10), value.from).findLastIndex(({ text }) => text === 'day');
  if (!near) return ageInHead(header);
  const { target, min, max, unit } = near.measure;
  const amount = target ?? min ?? max;
  return amount === undefined || (dayWord < 0 && near.to <= value.from && 6 < value.from - near.to)
    ? undefined
    : convert(amount, unit as Unit, 'd');
}

/** "Minimum 28-day strength, psi" over a column. */
function ageInHead(header: string): number | undefined {
  const days = /\b(\d{1,2})[\s-]?days?\b/.exec(header)?.[1];
  return days === undefined ? undefined : Number(days);
}

/** "C30/37": cylinder strength first, cube strength behind. */
function europeanClasses(statement: Statement): ValueFact[] {
  const { tokens, predication } = statement;
  const facts: ValueFact[] = [];
  for (let at = predication.from; at + 3 < predication.to; at++) {
    const [letters, cylinder, slash, cube] = [tokens[at], tokens[at + 1], tokens[at + 2], tokens[at + 3]];
    if (
      !/^l?c$/.test(letters?.text ?? '') ||
      cylinder?.kind !== 'number' ||
      slash?.text !== '/' ||
      cube?.kind !== 'number'
    )
      continue;
    if (cube.value <= cylinder.value || cylinder.spaced) continue;
    const run = { from: at, to: at + 4 };
    const value = {
      dimension: 'stress',
      unit: 'MPa',
      min: cylinder.value,
      asWritten: wordsOf(statement, run),
    } as Measure;
    facts.push({ kind: 'strength', ...said(statement, run), value });
  }
  return facts;
}
