/** One number with its unit, before bounds, ranges and tolerances. */
import type { Draft } from './bounding.ts';
import { numberAt } from './numbers.ts';
import type { Token } from './tokens.ts';
import { unitAt } from './unit-at.ts';

export function single(tokens: readonly Token[], at: number): Draft | undefined {
  const number = numberAt(tokens, at);
  if (!number || Number.isNaN(number.value)) return undefined;
  const unit = unitAt(tokens, number.to, number);
  const value = number.value * (unit?.times ?? 1);
  const draft: Draft = {
    target: value,
    unit: unit?.unit,
    to: unit?.to ?? number.to,
    doubt: number.doubt,
    fraction: number.fraction === true,
  };
  draft.to = pastRepeat(tokens, draft);
  return draft;
}

/** "seven percent (7%)", "fourteen days (14)": the same value again in figures. */
function pastRepeat(tokens: readonly Token[], draft: Draft): number {
  if (tokens[draft.to]?.text !== '(' || draft.unit === undefined) return draft.to;
  const number = numberAt(tokens, draft.to + 1);
  if (!number || number.value !== draft.target) return draft.to;
  const unit = unitAt(tokens, number.to, { value: number.value });
  const close = unit?.to ?? number.to;
  return (unit === undefined || unit.unit === draft.unit) && tokens[close]?.text === ')' ? close + 1 : draft.to;
}
