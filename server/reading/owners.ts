/** One sweep: each value goes to the nearest meaning able to carry it, ours or another trade's. */
import type { Dimension } from '../../rules/model/quantity.ts';
import type { MeasureRead } from './measure.ts';
import { type Found, Phrases } from './phrases.ts';
import type { Run } from './run.ts';
import type { Token } from './tokens.ts';
import { type Meaning, meanings } from './words/meanings.ts';

/** A word may be of several meanings (a "joint" has a width and a delay): the value's dimension decides. */
const phrases = new Phrases<readonly Meaning[]>(byWords());

function byWords(): Iterable<readonly [readonly Meaning[], readonly string[]]> {
  const all = new Map<string, Meaning[]>();
  for (const [meaning, ways] of meanings) for (const way of ways) all.set(way, [...(all.get(way) ?? []), meaning]);
  return [...all].map(([way, several]) => [several, [way]] as const);
}

export type MeaningRead = Found<Meaning>;

export const meaningsIn = (tokens: readonly Token[], run: Run): MeaningRead[] =>
  phrases
    .in(tokens, run.from, run.to)
    .flatMap(({ meaning, from, to }) => meaning.map((each) => ({ meaning: each, from, to })));

/** The owner of a value among the meanings of its sentence: what stands before it counts as nearer than what stands behind. */
export function ownerOf(
  tokens: readonly Token[],
  value: MeasureRead,
  found: readonly MeaningRead[],
): MeaningRead | undefined {
  let best: MeaningRead | undefined;
  let nearest = farthest;
  for (const meaning of found) {
    if (!meaning.meaning.carries.includes(value.measure.dimension as Dimension) || overlaps(meaning, value)) continue;
    const distance = distanceBetween(tokens, value, meaning);
    if (distance < nearest) [best, nearest] = [meaning, distance];
  }
  return best;
}

const overlaps = (a: Run, b: Run): boolean => a.from < b.to && b.from < a.to;

/** Beyond this many steps a meaning has nothing to do with a value. */
const farthest = 40;
const behind = 1.4;
const past: ReadonlyMap<string, number> = new Map([
  [';', 12],
  [':', 1],
  [',', 3],
  ['.', 12],
  ['and', 2],
  ['(', 1],
  ['then', 8],
  ['or', 2],
]);

function distanceBetween(tokens: readonly Token[], value: Run, meaning: Run): number {
  const before = meaning.to <= value.from;
  const [from, to] = before ? [meaning.to, value.from] : [value.to, meaning.from];
  // Right behind the value ("6 percent air", "4500 psi concrete") a noun owns it before anything that came earlier.
  if (!before && (to === from || /^(?:of|total|entrained)$/.test(tokens[from]?.text ?? '')) && to - from <= 1)
    return to - from + 0.5;
  let steps = to - from + 1;
  if (farthest < steps) return steps;
  for (let at = from; at < to; at++) steps += past.get(tokens[at]?.text ?? '') ?? 0;
  return before ? steps : steps * behind + 1;
}
