/** Floors and ceilings: the words before and behind a value that make it one. */
import type { Measure } from '../../rules/model/measure.ts';
import { type Unit, units } from '../../rules/model/quantity.ts';
import { Phrases } from './phrases.ts';
import type { Run } from './run.ts';
import { type Token, tokensOf } from './tokens.ts';
import { type Bound, boundsAfter, boundsBefore, boundsByOwner } from './words/bounds.ts';

/** Numbers of one value before it becomes a measure; `unit` undefined until one is found. */
export interface Draft {
  min?: number;
  max?: number;
  target?: number;
  plus?: number;
  minus?: number;
  unit?: Unit;
  to: number;
  doubt?: string;
  fraction: boolean;
}

export const before = new Phrases<Bound>(boundsBefore);
export const after = new Phrases<Bound>(boundsAfter);
const far = new Phrases<Bound>(boundsByOwner);
export function boundEnds(tokens: readonly Token[]): ReadonlyMap<number, Bound> {
  return new Map(before.in(tokens).map(({ to, meaning }) => [to, meaning]));
}

const between = new Set([
  'a',
  'an',
  'the',
  'of',
  'about',
  'approximately',
  ':',
  '(',
  'total',
  'is',
  'be',
  'to',
  'shall',
  'some',
  'by',
  'period',
  'time',
  'duration',
  'content',
  'value',
  'limit',
  'than',
  'age',
  'and',
  'including',
]);
const farthestBound = 4;

export function boundBefore(
  tokens: readonly Token[],
  at: number,
  bounds: ReadonlyMap<number, Bound>,
): Bound | undefined {
  for (let back = at; 0 <= back && at - back <= farthestBound; back--) {
    const bound = bounds.get(back);
    if (bound) return bound;
    if (!between.has(tokens[back - 1]?.text ?? '')) return undefined;
  }
  return undefined;
}

export function applyBound(draft: Draft, bound: Bound): boolean {
  if (draft.target === undefined || draft.plus !== undefined || draft.minus !== undefined) return false;
  draft[bound] = draft.target;
  draft.target = undefined;
  return true;
}

export function applyBoundAfter(tokens: readonly Token[], draft: Draft): boolean {
  const opener = tokens[draft.to]?.text ?? '';
  const open = opener === '(' || opener === ',' ? draft.to + 1 : draft.to;
  const found = after.at(tokens, open);
  // "w/c 0.45, min cement 340 kg/m3": behind a comma the word belongs to what follows it, unless nothing does.
  if (!found || (opener === ',' && /^(?:word|number)$/.test(tokens[found.to]?.kind ?? ''))) return false;
  if (!applyBound(draft, found.meaning)) return false;
  draft.to = open !== draft.to && tokens[found.to]?.text === ')' ? found.to + 1 : found.to;
  return true;
}

/** "not less than 4.5% nor above 7.5%": the other end follows. */
export function secondBound(
  tokens: readonly Token[],
  draft: Draft,
  read: (tokens: readonly Token[], at: number) => Draft | undefined,
): void {
  let at = draft.to;
  while (/^(?:,|and|but|nor|or)$/.test(tokens[at]?.text ?? '')) at++;
  const found = (tokens[at - 1]?.text === 'nor' && before.at(tokens, at - 1)) || before.at(tokens, at);
  if (!found || draft[found.meaning] !== undefined) return;
  const other = read(tokens, found.to);
  if (!other || (draft.unit !== undefined && other.unit !== undefined && !sameDimension(draft.unit, other.unit)))
    return;
  draft[found.meaning] = other.target;
  draft.unit ??= other.unit;
  draft.to = other.to;
}

export const asBounded = (measure: Measure, bound: Bound): Measure =>
  measure.target === undefined || measure.plus !== undefined
    ? measure
    : ({ ...measure, target: undefined, [bound]: measure.target } as Measure);

export const sameDimension = (a: Unit, b: Unit): boolean => units[a].dimension === units[b].dimension;

/** "maximum water-cement ratio shall be 0.45", "do not exceed a w/cm of 0.45", a column head "Max. w/cm": the bound stands by the owner. */
export function farBound(tokens: readonly Token[], owner: Run, value: Run): Bound | undefined {
  const from = Math.max(0, owner.from - 4);
  const to = Math.max(owner.to, value.from);
  return far.in(tokens, Math.min(from, value.from), to).at(-1)?.meaning;
}

export function boundInWords(words: string): Bound | undefined {
  const tokens = tokensOf(words, 0, words.length);
  return far.in(tokens).at(-1)?.meaning;
}

/** A bare target with the bound that its owner carries. */
export function withBound(measure: Measure, bound: Bound | undefined): Measure {
  if (bound === undefined || measure.target === undefined || measure.plus !== undefined || measure.minus !== undefined)
    return measure;
  const also = measure.also?.map((twin) => asBounded(twin, bound));
  return { ...asBounded(measure, bound), ...(also && { also }) } as Measure;
}
