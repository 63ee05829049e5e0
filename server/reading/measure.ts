/** The one grammar of values: bounds, ranges, tolerances, unit twins, lost signs and open choices; the only place that knows them. */
import type { Measure } from '../../rules/model/measure.ts';
import { type Dimension, type Unit, units } from '../../rules/model/quantity.ts';
import {
  after,
  applyBound,
  applyBoundAfter,
  asBounded,
  boundBefore,
  boundEnds,
  type Draft,
  sameDimension,
  secondBound,
} from './bounding.ts';
import { numberAt } from './numbers.ts';
import { single } from './single.ts';
import type { Token } from './tokens.ts';
import { lost, toleranceAlone, toleranced, withLateTolerances } from './tolerances.ts';
import { unitAt } from './unit-at.ts';
import { imperialUnits, metricUnits } from './words/units.ts';

/** A value in a clause, with the tokens it takes. */
export interface MeasureRead {
  readonly measure: Measure;
  readonly from: number;
  readonly to: number;
  readonly doubt?: string;
  /** The text said itself whether it is a floor or a ceiling. */
  readonly bounded: boolean;
}

/** All values of a clause. Tokens in `taken` are numbers of something else (standards, sections, dates). */
export function measuresIn(text: string, tokens: readonly Token[], taken: ReadonlySet<number>): MeasureRead[] {
  const bounds = boundEnds(tokens);
  const found: MeasureRead[] = [];
  for (let at = 0; at < tokens.length; ) {
    const read = taken.has(at) || isPartOfName(tokens, at) ? undefined : measureAt(text, tokens, at, bounds, taken);
    if (read) found.push(read);
    at = read ? Math.max(read.to, at + 1) : at + 1;
  }
  return withLateTolerances(found);
}

/** "C94", "A615", "F3", "#57": digits glued behind a letter or a number sign name something. */
function isPartOfName(tokens: readonly Token[], at: number): boolean {
  const [previous, token] = [tokens[at - 1], tokens[at]];
  if (!previous || !token || token.kind !== 'number' || token.spaced) return false;
  // "is7%": a scan lost the blank behind a small word.
  if (/^(?:is|of|at|to|than|be|least|and|about|with)$/.test(previous.text)) return false;
  return previous.kind === 'word' || previous.text === '#' || previous.text === '.';
}

function measureAt(
  text: string,
  tokens: readonly Token[],
  at: number,
  bounds: ReturnType<typeof boundEnds>,
  taken: ReadonlySet<number>,
): MeasureRead | undefined {
  const draft = choice(tokens, at) ?? toleranceAlone(tokens, at) ?? valueAt(tokens, at, taken);
  if (!draft) return undefined;
  const bound = boundBefore(tokens, at, bounds);
  const bounded = bound !== undefined ? applyBound(draft, bound) : applyBoundAfter(tokens, draft);
  if (bounded) secondBound(tokens, draft, single);
  const written = (to: number): string =>
    text.slice((tokens[at] as Token).start, (tokens[to - 1] as Token).end).replace(/\s+/g, ' ');
  const main = finished(draft, written(draft.to));
  if (!main) return undefined;
  const twin = twinAt(text, tokens, draft.to, main, taken);
  if (!twin) return { measure: main, from: at, to: draft.to, doubt: draft.doubt, bounded };
  const late = bounded ? undefined : after.at(tokens, twin.to);
  if (late) applyBound(draft, late.meaning);
  const both = bounded || late ? asBounded(twin.measure, bound ?? late?.meaning ?? 'max') : twin.measure;
  const measure = { ...(finished(draft, written(late?.to ?? twin.to)) as Measure), also: [both] } as Measure;
  return {
    measure,
    from: at,
    to: late?.to ?? twin.to,
    doubt: draft.doubt ?? twin.doubt,
    bounded: bounded || late !== undefined,
  };
}

/** One value with its range or tolerance, without bounds and twins. */
function valueAt(tokens: readonly Token[], at: number, taken: ReadonlySet<number>): Draft | undefined {
  const first = single(tokens, at);
  if (!first) return undefined;
  const range = rangeFrom(tokens, at, first, taken);
  if (range) return range;
  return toleranced(tokens, first);
}

const lostSigns = new Set(['\u00ad', '\ufffd']);

function rangeFrom(tokens: readonly Token[], at: number, first: Draft, taken: ReadonlySet<number>): Draft | undefined {
  const sign = tokens[first.to];
  if (!sign) return undefined;
  const isLost = lostSigns.has(sign.text);
  const between = tokens[at - 1]?.text === 'between' && sign.text === 'and';
  if (!isLost && !between && !/^(?:to|-|–|—|through|thru)$/.test(sign.text)) return undefined;
  const next = first.to + 1;
  if (taken.has(next)) return undefined;
  const second = single(tokens, next);
  if (!second || (first.unit !== undefined && second.unit !== undefined && !sameDimension(first.unit, second.unit)))
    return undefined;
  const unit = second.unit ?? first.unit;
  const [a, b] = [first.target as number, second.target as number];
  const doubt = first.doubt ?? second.doubt ?? (isLost ? lost : undefined);
  if (isLost && b < a) return { target: a, plus: b, minus: b, unit, to: second.to, doubt, fraction: false };
  // A bare range is one only where nothing else stands in its cell: "4.5 to 7.5".
  const isWhole = at === 0 && second.to === tokens.length;
  if (b < a || (unit === undefined && 1 < b && !isWhole)) return undefined;
  const scale =
    first.unit === undefined || unit === undefined || first.unit === unit
      ? 1
      : units[first.unit].factor / units[unit].factor;
  return { min: a * scale, max: b, unit, to: second.to, doubt, fraction: false };
}

/** "[4] [6] percent": the writer has not chosen yet. */
function choice(tokens: readonly Token[], at: number): Draft | undefined {
  let next = at;
  let value: number | undefined;
  while (tokens[next]?.text === '[') {
    const number = numberAt(tokens, next + 1);
    if (!number || tokens[number.to]?.text !== ']') return undefined;
    value ??= number.value;
    next = number.to + 1;
  }
  if (value === undefined) return undefined;
  const unit = unitAt(tokens, next, { value });
  return toleranced(tokens, {
    target: value,
    unit: unit?.unit,
    to: unit?.to ?? next,
    doubt: 'a choice is open',
    fraction: false,
  });
}

/** The same value in the other unit system, in parentheses or beside it. */
function twinAt(
  text: string,
  tokens: readonly Token[],
  at: number,
  main: Measure,
  taken: ReadonlySet<number>,
): MeasureRead | undefined {
  const sign = tokens[at]?.text ?? '';
  const open = sign === '(' || sign === '/' || sign === '[' ? at + 1 : at;
  if (taken.has(open)) return undefined;
  const draft = valueAt(tokens, open, taken);
  if (!draft?.unit || !isOtherSystem(main.unit as Unit, draft.unit)) return undefined;
  const closed = sign === '(' || sign === '[';
  const end = closed && /^[)\]]$/.test(tokens[draft.to]?.text ?? '') ? draft.to + 1 : draft.to;
  const measure = finished(draft, text.slice((tokens[open] as Token).start, (tokens[draft.to - 1] as Token).end));
  return measure ? { measure, from: open, to: end, doubt: draft.doubt, bounded: false } : undefined;
}

const isOtherSystem = (a: Unit, b: Unit): boolean =>
  sameDimension(a, b) && ((metricUnits.has(a) && imperialUnits.has(b)) || (imperialUnits.has(a) && metricUnits.has(b)));

function finished(draft: Draft, asWritten: string): Measure | undefined {
  const { min, max, target, plus, minus } = draft;
  const unit = draft.unit ?? '';
  const dimension: Dimension = units[unit].dimension;
  const numbers = Object.fromEntries(
    Object.entries({ min, max, target, plus, minus }).filter(([, value]) => value !== undefined),
  );
  return { dimension, unit, ...numbers, asWritten } as Measure;
}
