/** How an element is to be cured: the ways that the text leaves open, each with its methods and how long it lasts. */
import type { CuringDuty, CuringManner } from '../model/acts.ts';
import type { ActFact, Fact, ValueFact } from '../model/fact.ts';
import { asOf, lowest } from '../model/measure.ts';
import type { CuringMinimum } from '../model/requirement.ts';
import { inReadingOrder } from '../model/source.ts';
import { curingMinimum } from '../tables/curing.ts';
import { asked } from './asked.ts';
import type { View } from './view.ts';

/** One way that the contractor may choose; a text without alternatives leaves one. */
export interface Way {
  /** Acts that name how: wet cover, sheet, compound; "approved means" name nothing and are not here. */
  readonly methods: readonly ActFact[];
  readonly durations: readonly ValueFact[];
  /** A share of f'c or a strength at which curing may end, or a CSA type that carries its days. */
  readonly ends: readonly Fact[];
  /** Everything that was said of this way. */
  readonly facts: readonly Fact[];
  /** The statement that sets it: its own duty to cure, else the first that is said of it. */
  readonly statement: Fact;
}

/** Empty where nothing is said about curing the element. */
export function curingWays(view: View): readonly Way[] {
  const facts = curingFacts(view);
  const shared = facts.filter(({ among }) => among === undefined);
  const alternatives = alternativesIn(facts);
  if (alternatives.length === 0) return isSome(shared) ? [wayOf(shared, [])] : [];
  return alternatives.map((own) => wayOf(own, shared));
}

/**
 * The days a way lasts at least: stages written in one paragraph are added, statements apart are not. What holds only
 * under a condition lifts nothing for the rest; alone, the least of it is what may be given.
 */
export function daysOf({ durations }: Way): number {
  const staged = new Map<string, number>();
  for (const fact of durations.filter(isUnconditional)) {
    staged.set(fact.place, (staged.get(fact.place) ?? 0) + daysIn(fact));
  }
  return 0 < staged.size ? Math.max(...staged.values()) : Math.min(...durations.map(daysIn));
}

/** The statement on which the days of a way hang. */
export function decisive({ durations }: Way): ValueFact | undefined {
  const ascending = [...durations].sort((a, b) => daysIn(a) - daysIn(b));
  return ascending.findLast(isUnconditional) ?? ascending[0];
}

const isUnconditional = ({ when }: ValueFact): boolean => when === undefined;

/** The least number of days that a statement accepts. */
export function daysIn({ value }: ValueFact): number {
  const duration = asOf(value, 'duration');
  return (duration && lowest(duration, 'd')) ?? 0;
}

/** What the code in force asks, or ACI 318 where it asks nothing. */
export function curingAsked(view: View): CuringMinimum {
  return asked(view, ({ curing }) => curing)[0]?.value ?? curingMinimum['aci-318-19'];
}

/** Days asked of the concrete at hand: fewer where the whole element is of high early strength. */
export function daysAsked(view: View): number {
  const { days, highEarlyDays } = curingAsked(view);
  return view.has('high-early') ? highEarlyDays : days;
}

const curingFacts = (view: View): readonly Fact[] =>
  [
    ...view.acts('curing'),
    ...view.acts('curing-method'),
    ...view.values('curing-duration'),
    ...view.values('curing-strength'),
  ]
    .filter(({ force }) => force !== 'ban' && force !== 'waive')
    .sort((a, b) => inReadingOrder(a.spans[0], b.spans[0]));

type Some = readonly [Fact, ...Fact[]];
const isSome = (facts: readonly Fact[]): facts is Some => facts.length > 0;

/** Members of one list share an id; facts under one label of it, and under the labels below that, are one alternative. */
function alternativesIn(facts: readonly Fact[]): readonly Some[] {
  const alternatives = new Map<string, [Fact, ...Fact[]]>();
  for (const fact of facts) {
    if (fact.among === undefined) continue;
    const members = facts.filter(({ among }) => among === fact.among);
    const key = `${fact.among}\n${rootOf(fact.place, members)}`;
    const known = alternatives.get(key);
    if (known) known.push(fact);
    else alternatives.set(key, [fact]);
  }
  return [...alternatives.values()];
}

/** "3.07.A.1" belongs to "3.07.A" where the list has that one. */
function rootOf(place: string, members: readonly Fact[]): string {
  const roots = members.map((member) => member.place).filter((root) => place === root || place.startsWith(`${root}.`));
  return roots.reduce((shortest, root) => (root.length < shortest.length ? root : shortest), place);
}

const namesNothing: ReadonlySet<string> = new Set<CuringManner>(['approved']);
const hasDays: ReadonlySet<string> = new Set<CuringDuty>(['basic', 'additional', 'extended wet']);

function wayOf(own: Some, shared: readonly Fact[]): Way {
  const facts = [...own, ...shared];
  const acts = facts.filter((fact): fact is ActFact => 'act' in fact);
  const isMethod = ({ kind, act }: ActFact) => kind === 'curing-method' && !namesNothing.has(act.manner ?? '');
  const isTyped = ({ kind, act }: ActFact) => kind === 'curing' && hasDays.has(act.manner ?? '');
  return {
    methods: acts.filter(isMethod),
    durations: facts.filter((fact): fact is ValueFact => fact.kind === 'curing-duration'),
    ends: [...facts.filter(({ kind }) => kind === 'curing-strength'), ...acts.filter(isTyped)],
    facts,
    statement: own.find(({ kind }) => kind === 'curing') ?? own[0],
  };
}
