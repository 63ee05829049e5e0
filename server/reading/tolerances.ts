/** Tolerances: behind their value, apart from it, and those whose sign a scan lost. */
import type { Measure } from '../../rules/model/measure.ts';
import { type Draft, sameDimension } from './bounding.ts';
import { Phrases } from './phrases.ts';
import type { Run } from './run.ts';
import { single } from './single.ts';
import type { Token } from './tokens.ts';
import { unitAt } from './unit-at.ts';
import { deviations, plusOrMinus, toleranceWords } from './words/bounds.ts';

const both = new Phrases<true>([[true, plusOrMinus]]);
const apart = new Phrases<true>([[true, deviations]]);
const tolerance = new Phrases<'both' | 'plus' | 'minus'>(toleranceWords);

export const lost = 'a sign was lost between the numbers';

/** "± 1.5", "plus 2 or minus 1", "(± 1.5)", and a plus sign that was a plus-minus before it was scanned. */
export function toleranced(tokens: readonly Token[], first: Draft): Draft {
  const open = /^[(,;:]$/.test(tokens[first.to]?.text ?? '') ? first.to + 1 : first.to;
  const way = tolerance.at(tokens, open);
  const amount = way ? single(tokens, way.to) : undefined;
  if (!way || !amount || !isTolerance(first, amount)) return first;
  const value = amount.target as number;
  const close = open !== first.to && tokens[amount.to]?.text === ')' ? amount.to + 1 : amount.to;
  const late = first.unit ?? amount.unit ?? unitAt(tokens, close, { value })?.unit;
  const to = first.unit || amount.unit ? close : (unitAt(tokens, close, { value })?.to ?? close);
  const made = { ...first, unit: late, to, doubt: first.doubt ?? amount.doubt };
  if (way.meaning === 'both') return { ...made, plus: value, minus: value };
  if (way.meaning === 'minus') return { ...made, minus: value };
  if (tokens[way.from]?.text === '+')
    return otherSide(tokens, { ...made, plus: value }) ?? { ...made, plus: value, minus: value, doubt: lost };
  return otherSide(tokens, { ...made, plus: value }) ?? { ...made, plus: value };
}

/** The second half of "plus 2 percent, minus 1 percent". */
function otherSide(tokens: readonly Token[], draft: Draft): Draft | undefined {
  let at = draft.to;
  while (/^(?:,|or|and|\/|;)$/.test(tokens[at]?.text ?? '')) at++;
  if (!/^(?:minus|-|–)$/.test(tokens[at]?.text ?? '')) return undefined;
  const amount = single(tokens, at + 1);
  return amount && isTolerance(draft, amount) ? { ...draft, minus: amount.target, to: amount.to } : undefined;
}

const isTolerance = (value: Draft, amount: Draft): boolean =>
  (amount.unit === undefined || value.unit === undefined || sameDimension(amount.unit, value.unit)) &&
  (amount.target as number) < Math.max(Math.abs(value.target ?? value.max ?? 0), 1e-9);

/** "a tolerance of plus or minus 1.5 percent", said apart from the value that it is for. */
export function toleranceAlone(tokens: readonly Token[], at: number): Draft | undefined {
  const stands = (words: Phrases<true>): boolean =>
    [1, 2, 3, 4, 5].some((back) => back <= at && words.at(tokens, at - back, at)?.to === at);
  const isDeviation = stands(apart);
  const draft = stands(both) || isDeviation ? single(tokens, at) : undefined;
  // "within 1.5 percent" is a tolerance, "within 24 hours" is not.
  if (isDeviation && draft?.unit !== 'percent') return undefined;
  return draft?.unit ? { ...draft, target: undefined, plus: draft.target, minus: draft.target } : undefined;
}

/** "6 percent of entrained air, plus or minus 1.5 percent": the tolerance behind the noun is the value's. */
export function withLateTolerances<Read extends Run & { readonly measure: Measure }>(found: readonly Read[]): Read[] {
  const out: Read[] = [];
  for (const each of found) {
    const before = out.at(-1);
    if (
      before &&
      isBareTolerance(each.measure) &&
      isBareTarget(before.measure) &&
      each.measure.unit === before.measure.unit &&
      each.from - before.to <= farthestTolerance
    ) {
      const { plus, minus, asWritten } = each.measure;
      const measure = { ...before.measure, plus, minus, asWritten: `${before.measure.asWritten} … ${asWritten}` };
      out[out.length - 1] = { ...before, measure };
    } else out.push(each);
  }
  return out;
}

const farthestTolerance = 10;
const isBareTolerance = ({ target, plus }: Measure): boolean => target === undefined && plus !== undefined;
const isBareTarget = ({ target, plus, minus }: Measure): boolean =>
  target !== undefined && plus === undefined && minus === undefined;
