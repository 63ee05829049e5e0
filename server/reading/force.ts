/** What a statement does (requires, permits, bans, …) and to whom it speaks. */
import type { Addressee, Force } from '../../rules/model/clause.ts';
import { isMonth } from './cuts.ts';
import { type Found, Phrases } from './phrases.ts';
import type { Token } from './tokens.ts';
import { isApproval } from './turns.ts';
import { addressees, comparators, forceCues } from './words/cues.ts';
import { imperatives } from './words/verbs.ts';

const cues = new Phrases<Force | 'without'>(forceCues);
const bounds = new Phrases<true>([[true, comparators]]);
const people = new Phrases<Addressee>(addressees);

/** Where several words of force meet, the first of these that is among them counts. */
const precedence: readonly Force[] = ['waive', 'ban', 'permit', 'recommend', 'require'];

export function ownForce(
  tokens: readonly Token[],
  from: number,
  to: number,
  inside: (at: number) => boolean,
): Force | undefined {
  // "Not be used under any circumstances" compares nothing.
  const limits = bounds.in(tokens, from, to).filter((run) => tokens[run.to]?.text !== 'any');
  const compared = new Set(limits.flatMap((run) => range(run.from, run.to)));
  const found = cues
    .in(tokens, from, to)
    .filter(
      (cue) =>
        !inside(cue.from) &&
        !range(cue.from, cue.to).some((at) => compared.has(at)) &&
        !isMonth(tokens, cue.from) &&
        !isRelative(tokens, cue.from) &&
        !isApproval(tokens, cue.from) &&
        !isManner(tokens, cue),
    );
  const forces = new Set(found.map(({ meaning }) => meaning));
  if (forces.has('waive') && forces.has('ban') && found.findIndex(isWaiver) < found.findIndex(isBan)) return 'permit';
  if (needsNone(tokens, found)) return 'waive';
  // "No walks shall be placed without curing": two negations order what stands behind the second.
  if (forces.has('without'))
    return forces.has('ban') ? 'require' : (precedence.find((force) => forces.has(force)) ?? 'ban');
  return precedence.find((force) => forces.has(force));
}

type Cue = Found<Force | 'without'>;

/** "need not be kept free of water": a ban that is waived lets the thing be done. */
const isWaiver = ({ meaning }: Cue): boolean => meaning === 'waive';
const isBan = ({ meaning }: Cue): boolean => meaning === 'ban';

/** "No cold-weather protection is required": what is not asked for is not forbidden. */
function needsNone(tokens: readonly Token[], found: readonly Cue[]): boolean {
  const [ban, verdict] = found;
  return (
    ban !== undefined &&
    isBan(ban) &&
    tokens[ban.from]?.text === 'no' &&
    verdict?.meaning === 'require' &&
    /^(?:required|needed|necessary)$/.test(tokens[verdict.to - 1]?.text ?? '') &&
    /^(?:is|are|be)$/.test(tokens[verdict.to - 2]?.text ?? '')
  );
}

/** "without interruption", "free of gaps": how a thing is done; "without air", "free of chlorides" deny something of ours. */
const isManner = (tokens: readonly Token[], { from, to }: Cue): boolean =>
  /^(?:without|free)$/.test(tokens[from]?.text ?? '') &&
  !tokens.slice(to, to + 5).some(({ text }) => ourMatters.test(text));

const ourMatters =
  /^(?:water|air|entrain\w*|chlor\w*|calcium|salts?|de-?ic\w*|cement|cur(?:e|ed|ing)|trowel\w*|float\w*|broom\w*|admixtures?|ash|fly|slag|steel|sealers?|compound|cover\w*|protect\w*|adding|finish\w*)$/;

/** "damage that may be caused by frost": the modal of a relative clause gives the statement no force. */
const isRelative = (tokens: readonly Token[], at: number): boolean =>
  /^(?:that|which|who)$/.test(tokens[at - 1]?.text ?? '') &&
  /^(?:may|might|can|could|should|will|would|shall|must|is|are)$/.test(tokens[at]?.text ?? '');

const range = (from: number, to: number): number[] => Array.from({ length: to - from }, (_, at) => from + at);

/** A bare noun phrase or imperative requires; a verb of being describes; a list goes on with the force before it. */
export function inherited(
  tokens: readonly Token[],
  from: number,
  to: number,
  before: Force | undefined,
  inside: (at: number) => boolean,
): Force {
  const first = tokens[from];
  const listed = before !== undefined && first !== undefined && /^(?:or|nor|,)$/.test(first.text);
  if (listed) return before;
  return describes(tokens, from, to, inside) ? 'state' : 'require';
}

const describing = new Set([
  'is',
  'are',
  'was',
  'were',
  'has',
  'have',
  'means',
  'includes',
  'include',
  'covers',
  'will',
  'receives',
  'occurs',
  'becomes',
  'results',
]);

function describes(tokens: readonly Token[], from: number, to: number, inside: (at: number) => boolean): boolean {
  let seen = 0;
  for (let at = from; at < to; at++) {
    const { text, kind, stem } = tokens[at] as Token;
    if (kind !== 'word' || inside(at)) continue;
    // "have the plant add …"
    if (seen === 0 && text === 'have') return false;
    if (imperatives.has(stem) && seen++ < 2) return false;
    if (describing.has(text)) return true;
    seen++;
  }
  return false;
}

/** "The walks of the north lot, with 3 percent air, scaled": what happened to other work orders nothing for this one. */
export function tellsOfPast(
  tokens: readonly Token[],
  from: number,
  to: number,
  inside: (at: number) => boolean,
): boolean {
  const opening = tokens[from];
  const orders = opening?.capital && imperatives.has(opening.stem) && !pastVerb.test(tokens[from + 1]?.text ?? '');
  if (orders) return false;
  for (let at = from + 1; at < to; at++) {
    const { text } = tokens[at] as Token;
    if (inside(at) || /^(?:that|which|who|as|it)$/.test(tokens[at - 1]?.text ?? '')) continue;
    if (pastVerb.test(text)) return true;
    if (failing.test(text) && (at + 1 === to || ending.test(tokens[at + 1]?.text ?? ''))) return true;
  }
  return false;
}

const pastVerb = /^(?:was|were|had)$/;
const failing = /^(?:scaled|peeled|spalled|flaked|delaminated|failed|crumbled)$/;
const ending = /^(?:[,;.:]|in|after|within|during|and|badly|the)$/;

export function addresseeOf(tokens: readonly Token[], from: number, to: number): Addressee | undefined {
  const first = tokens[from];
  if (first?.text === 'specify' && first.capital) return 'designer';
  const modal = tokens
    .slice(from, to)
    .findIndex(({ text }) => /^(?:shall|must|may|should|will|is|are|can)$/.test(text));
  if (modal < 0 || 8 < modal) return undefined;
  return people.in(tokens, from, from + modal).at(0)?.meaning;
}
