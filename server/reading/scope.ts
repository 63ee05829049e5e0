/** Whose fact it is: own words, row, stem, heading, article, section, all; two statements stay two. */
import type { Subject } from '../../rules/model/fact.ts';
import type { MentionRead, Named } from './mentions.ts';
import type { Run } from './run.ts';
import type { Token } from './tokens.ts';

/** One place that may say whom a statement is about, nearest first. */
export interface ScopeLevel {
  readonly by: Subject['by'];
  readonly named: Named;
  /** Words before a colon in the same sentence: they head what follows however plain they are. */
  readonly heads?: true;
}

/** The first level that names an element gives the elements; the first that says in or out of doors gives that. */
export function subjectFrom(levels: readonly ScopeLevel[]): Subject {
  const naming = levels.filter(({ named }) => 0 < named.elements.length || 0 < named.mixtures.length);
  const chosen =
    naming.find(({ named, heads }) => heads || !isVague(named)) ??
    naming.find(({ named }) => named.elements.every(({ label }) => label.endsWith('s')));
  const exterior = levels.find(({ named }) => named.exterior !== 'unknown')?.named.exterior ?? 'unknown';
  return {
    elements: chosen?.named.elements.map(({ mention }) => mention) ?? [],
    mixtures: chosen?.named.mixtures ?? [],
    exterior,
    by: chosen?.by ?? 'all',
  };
}

/** "the slab" only stands for what the heading names, or for all the work; "slabs" at the head of a list are a group. */
const isVague = ({ elements, mixtures, exterior }: Named): boolean =>
  mixtures.length === 0 &&
  exterior === 'unknown' &&
  elements.every(({ mention }) => mention.bare && vague.has(mention.kind));

const vague = new Set(['slab', 'concrete', 'pavement', 'flatwork', 'floor', 'deck']);

/** The named things of a run without those that stand in an exception or are only put aside. */
export function without(named: Named, asides: readonly Run[]): Named {
  const kept = named.elements.filter(
    (each: MentionRead) => !asides.some((run) => run.from <= each.from && each.from < run.to),
  );
  return kept.length === named.elements.length ? named : { ...named, elements: kept };
}

/** "Where exposed to weather 4500 psi; elsewhere 3000 psi": the second value is for the rest. */
export const isElsewhere = (tokens: readonly Token[], { from }: Run): boolean =>
  tokens
    .slice(from, from + 4)
    .some(
      ({ text }, at) =>
        text === 'elsewhere' || (text === 'all' && /^(?:other|others)$/.test(tokens[from + at + 1]?.text ?? '')),
    );

/** What is not in the group just named: indoors where that was outdoors, and no element by name. */
export function turned(subject: Subject): Subject {
  const exterior = subject.exterior === 'yes' ? 'no' : subject.exterior === 'no' ? 'yes' : 'unknown';
  return { ...subject, elements: [], exterior };
}
