/** Holds the facts read in one passage against those expected: what is missing, wrong, not said, or forbidden. */
import type { Fact, FactKind } from '../../../rules/model/fact.ts';
import { type Claim, claimsExpected, claimsRead, content, show } from './claims.ts';
import { closedKinds, type Forbidden, type Passage, type Value } from './passage.ts';

export type Fault = 'missing' | 'value' | 'force' | 'subject' | 'order' | 'not said' | 'forbidden';

export interface Miss {
  readonly kind: FactKind;
  readonly fault: Fault;
  readonly expected: string;
  readonly got: string;
}

export interface Judged {
  readonly misses: readonly Miss[];
  /** One entry a claim expected: was it read with its value, force and subject? */
  readonly expected: readonly { readonly kind: FactKind; readonly good: boolean }[];
  /** One entry a claim read that the passage decides about: was it right? */
  readonly read: readonly { readonly kind: FactKind; readonly good: boolean }[];
  /** One entry a silence asked for: was it kept? */
  readonly silences: readonly { readonly kind: FactKind; readonly good: boolean }[];
}

export function judge(passage: Passage, facts: readonly Fact[]): Judged {
  const read = claimsRead(facts).filter(speaks);
  const pairs = inOrder(pair(claimsExpected(passage.facts), read), read);
  const right = pairs.filter(({ fault }) => !fault).flatMap(({ got }) => got ?? []);
  const open = read.filter((claim) => !right.some((one) => one === claim || saidTwice(one, claim)));
  const broken = passage.none.map((silence) => open.filter((claim) => forbids(silence, claim)));
  const paired = new Set(pairs.map(({ got }) => got));
  const forbidden = new Set(broken.flat());
  const notSaid = open.filter((claim) => !paired.has(claim) && !forbidden.has(claim) && decides(passage, claim.kind));
  const alsoRead = [...forbidden].filter((claim) => !paired.has(claim)).concat(notSaid);
  return {
    misses: [
      ...pairs.flatMap(({ wanted, got, fault }) => (fault ? [miss(fault, wanted, got)] : [])),
      ...[...forbidden].map((claim) => miss('forbidden', undefined, claim)),
      ...notSaid.map((claim) => miss('not said', undefined, claim)),
    ],
    expected: pairs.map(({ wanted, fault }) => ({ kind: wanted.kind, good: !fault })),
    read: [
      ...pairs.flatMap(({ got, fault }) => (got ? [{ kind: got.kind, good: !fault }] : [])),
      ...alsoRead.map(({ kind }) => ({ kind, good: false })),
    ],
    silences: passage.none.map((silence, at) => ({ kind: kindOf(silence), good: broken[at]?.length === 0 })),
  };
}

interface Pair {
  readonly wanted: Claim;
  readonly got?: Claim;
  readonly fault?: Fault;
}

/** Best fits first, so that a wrong reading never takes the place of a right one. */
function pair(wanted: readonly Claim[], read: readonly Claim[]): readonly Pair[] {
  const fits = wanted
    .flatMap((each) => read.filter(({ kind }) => kind === each.kind).map((got) => ({ wanted: each, got })))
    .map((fit) => ({ ...fit, fault: faultOf(fit.wanted, fit.got) }))
    .sort((a, b) => weight(a.fault) - weight(b.fault));
  const taken = new Map<Claim, Pair>();
  for (const fit of fits) {
    const used = [...taken.values()].some(({ got }) => got === fit.got);
    if (!taken.has(fit.wanted) && !used) taken.set(fit.wanted, fit);
  }
  return wanted.map((each) => taken.get(each) ?? { wanted: each, fault: 'missing' });
}

const weights: readonly (Fault | undefined)[] = [undefined, 'subject', 'force', 'value'];
const weight = (fault: Fault | undefined): number => weights.indexOf(fault);

function faultOf(wanted: Claim, got: Claim): Fault | undefined {
  if (!sameContent(wanted, got)) return 'value';
  if (wanted.forces && !wanted.forces.some((force) => got.forces?.includes(force))) return 'force';
  const names = wanted.subject === undefined || sameNames(wanted.subject, got.subject ?? []);
  const where = [wanted.exterior ?? got.exterior, wanted.addressee ?? got.addressee];
  return names && where[0] === got.exterior && where[1] === got.addressee ? undefined : 'subject';
}

function sameContent(wanted: Claim, got: Claim): boolean {
  const slots = Object.entries(wanted.slots).every(([slot, each]) => each === undefined || each === got.slots[slot]);
  if (!wanted.value) return slots;
  return slots && got.value !== undefined && sameValue(plain(wanted), plain(got));
}

/** In "maximum size of aggregate 3/4 inch" the maximum is part of the property's name, not a bound. */
function plain({ kind, value }: Claim): Value {
  const { max, target, ...rest } = value ?? { unit: '' };
  return kind === 'aggregate-size' ? { ...rest, target: target ?? max } : { ...rest, max, target };
}

/** Half a percent is left for a ratio worked out of gallons and sacks. */
function sameValue(a: Value, b: Value): boolean {
  const near = (x = Number.NaN, y = Number.NaN) => Object.is(x, y) || Math.abs(x - y) <= 0.005 * Math.abs(x);
  const bounds = near(a.min, b.min) && near(a.max, b.max) && near(a.target, b.target);
  return a.unit === b.unit && bounds && near(a.plus ?? 0, b.plus ?? 0) && near(a.minus ?? 0, b.minus ?? 0);
}

const sameNames = (a: readonly string[], b: readonly string[]): boolean =>
  [...new Set(a)].sort().join() === [...new Set(b)].sort().join();

/** Operations of one finish must have been read in the order written. */
function inOrder(pairs: readonly Pair[], read: readonly Claim[]): readonly Pair[] {
  return pairs.map((each, at) => {
    const before = pairs[at - 1];
    if (!before?.got || !each.got || before.wanted.from !== each.wanted.from || each.fault) return each;
    return read.indexOf(before.got) < read.indexOf(each.got) ? each : { ...each, fault: 'order' };
  });
}

/** A value without a number says nothing yet: a blank, a fraction that cannot be read. */
const speaks = ({ value }: Claim): boolean =>
  !value || [value.min, value.max, value.target, value.plus].some((number) => number !== undefined);

/** The same thing read again, once more for another name or place, is no error of reading. */
const saidTwice = (a: Claim, b: Claim): boolean =>
  a.kind === b.kind && a.forces?.join() === b.forces?.join() && content(a) === content(b);

function forbids(silence: Forbidden, claim: Claim): boolean {
  if (typeof silence === 'string') return silence === claim.kind;
  if (silence.kind !== claim.kind) return false;
  const says = silence.saying === undefined || content(claim).includes(silence.saying);
  return says && (silence.force === undefined || silence.force.some((force) => claim.forces?.includes(force)));
}

const kindOf = (silence: Forbidden): FactKind => (typeof silence === 'string' ? silence : silence.kind);

const decides = ({ free = [] }: Passage, kind: FactKind): boolean => closedKinds.includes(kind) && !free.includes(kind);

const miss = (fault: Fault, wanted: Claim | undefined, got: Claim | undefined): Miss => ({
  kind: (wanted ?? got)?.kind ?? 'choice',
  fault,
  expected: wanted ? show(wanted) : 'nothing',
  got: got ? show(got) : 'nothing',
});
