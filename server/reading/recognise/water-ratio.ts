/** w/cm: as a ratio, or worked out from gallons of water per sack of cement. */
import { wcmOfGallonsPerSack } from '../../../rules/formulas/water-per-sack.ts';
import type { ValueFact } from '../../../rules/model/fact.ts';
import type { Measure } from '../../../rules/model/measure.ts';
import { type Owned, type Statement, wordsOf } from '../statement.ts';
import { sentenceWords } from './act.ts';
import { bottom, property, top, valueFact } from './property.ts';

/** A ratio is written with its decimals; "air category 1" beside it is none. */
const isRatio = (value: Owned): boolean =>
  0.2 <= bottom(value) && top(value) <= 1 && /[.,]\d/.test(value.measure.asWritten);

const asRatio = property({
  kind: 'w-cm',
  meaning: 'w-cm',
  dimension: 'ratio',
  plausible: isRatio,
  // A bare 0.45 in a mixture row can be nothing else.
  byPlace: (value, { block }) => block.kind === 'row' && isRatio(value) && /^0?[.,]\d\d$/.test(value.measure.asWritten),
});

export function waterRatio(statement: Statement): ValueFact[] {
  return [...asRatio(statement), ...statement.values.flatMap((value) => fromGallons(value, statement))];
}

/** The limit as written, and the same as w/cm with its working. */
function fromGallons(value: Owned, statement: Statement): ValueFact[] {
  const perSack = value.measure.unit === 'gal/sack' || (value.measure.unit === 'gal' && isPerSack(value, statement));
  if (!perSack || value.conditional) return [];
  const { value: gallons, steps } = converted(value.measure);
  const working = steps;
  return [valueFact('w-cm', value, statement, { value: gallons, working })];
}

/** "6.25 gal. (max.) per bag": the bound stands inside the unit. */
const isPerSack = (value: Owned, statement: Statement): boolean =>
  (/\b(?:one|a|each) (?:94 ?-? ?(?:pound|lb\.?) )?(?:sack|bag)\b/.test(sentenceWords(statement)) &&
    /\bwater\b/.test(sentenceWords(statement))) ||
  /^[\s).]*(?:of (?:mixing )?water )?(?:\(?max(?:imum)?\.?\)? )?(?:per|to (?:the|each|one)|for each) (?:\d+[\s-]*(?:lb|pound)\.? )?(?:sack|bag)/i.test(
    wordsOf(statement, { from: value.to, to: value.to + 9 }),
  );

function converted(measure: Measure): { value: Measure; steps: string[] } {
  const steps: string[] = [];
  const each = (amount: number | undefined): number | undefined => {
    if (amount === undefined) return undefined;
    const worked = wcmOfGallonsPerSack(amount);
    for (const { text } of worked.steps) steps.push(text);
    return worked.value.amount;
  };
  const { min, max, target, asWritten } = measure;
  const numbers = { min: each(min), max: each(max), target: each(target) };
  const kept = Object.fromEntries(Object.entries(numbers).filter(([, amount]) => amount !== undefined));
  return { value: { dimension: 'ratio', unit: '', ...kept, asWritten } as Measure, steps };
}
