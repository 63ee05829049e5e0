/** Where a statement turns: conditions, exceptions, and what another thing is put in place of. */
import { Phrases } from './phrases.ts';
import type { Run } from './run.ts';
import type { Token } from './tokens.ts';
import { boundedExceptions, excessWords, openExceptions, siteExceptions, type Turn, turns } from './words/cues.ts';
import { imperatives } from './words/verbs.ts';

const turning = new Phrases<Turn>(turns);

export interface Turned extends Run {
  readonly turn: Turn;
}

/** Conditions and exceptions, each from its word to the next comma or turn; one at the very start ends at its comma. */
export function turnsIn(tokens: readonly Token[], from: number, to: number): Turned[] {
  const found = turning
    .in(tokens, from, to)
    .filter(
      ({ from: at }) =>
        !isComparing(tokens, at) && !isExceptThat(tokens, at) && !isRefusing(tokens, at) && !isLack(tokens, at),
    );
  return found.map(({ meaning, from: start, to: behind }, index) => {
    const limit = found[index + 1]?.from ?? to;
    let end = behind;
    const isRelative = tokens[start]?.text === 'which';
    while (end < limit && !/^[,;]$/.test(tokens[end]?.text ?? '') && !(isRelative && resumes(tokens, end, behind)))
      end++;
    return {
      turn: meaning,
      from: start,
      to: meaning === 'when' && start - from <= 2 ? mainClause(tokens, behind, end) : end,
    };
  });
}

/** "when stiff the surface shall be troweled": a condition without a comma ends where the subject of the modal begins. */
function mainClause(tokens: readonly Token[], from: number, end: number): number {
  const order = orderBehind(tokens, from, end);
  if (order !== undefined) return order;
  let modal = from + 1;
  while (modal < end && !/^(?:shall|must|may|should)$/.test(tokens[modal]?.text ?? '')) modal++;
  if (end <= modal || tokens[end]?.text === ',') return end;
  for (let at = modal - 1; from <= at && modal - at <= 5; at--) {
    if (/^(?:the|a|an|it|they|all|each|no)$/.test(tokens[at]?.text ?? '')) return at;
  }
  return Math.max(from, modal - 2);
}

/** "After washing cover with burlap", "until a winter has passed use sand": an order behind the verb that ends the condition. */
function orderBehind(tokens: readonly Token[], from: number, end: number): number | undefined {
  for (let at = from + 1; at < end; at++) {
    const ends = /(?:ing|ed|gone|left)$/.test(tokens[at - 1]?.text ?? '');
    const { stem, text } = tokens[at] as Token;
    if (ends && imperatives.has(stem) && !/(?:ing|ed)$/.test(text) && opensObject.test(tokens[at + 1]?.text ?? ''))
      return at;
  }
  return undefined;
}

const opensObject =
  /^(?:the|a|an|all|each|any|no|only|it|them|with|under|sand|wet|water|concrete|walks|slabs|surfaces?)$/;

/** "less than … before" and "rather" aside: "no later than 20 minutes after" keeps its time out of the conditions. */
const isComparing = (tokens: readonly Token[], at: number): boolean =>
  isAdverb(tokens, at) || (tokens[at]?.text === 'before' && /^(?:than|and)$/.test(tokens[at - 1]?.text ?? ''));

/** "cover at once", "bull-float once" are no conditions; "once the sheen has gone" is one. */
const isAdverb = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === 'once' &&
  !/^(?:the|no|a|an|it|concrete|bleed|bleeding|all|texture|set)$/.test(tokens[at + 1]?.text ?? '');

/** "accelerators which contain calcium chloride are excluded": the second verb is the sentence's own. */
const resumes = (tokens: readonly Token[], at: number, behind: number): boolean =>
  behind < at && /^(?:shall|must|may|should|will|is|are)$/.test(tokens[at]?.text ?? '');

/** "are excluded" is a verdict; "excluding" and "excludes" set something aside. */
const isRefusing = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === 'excluded' && /^(?:is|are|be|being|:)$/.test(tokens[at - 1]?.text ?? '');

/** "except that the curing period is 72 hours" states something of its own. */
export const isExceptThat = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === 'except' && tokens[at + 1]?.text === 'that';

/** "without written approval" is an exception to a ban; "without curing" names what is lacking. */
const isLack = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === 'without' && !isApproval(tokens, at);

export const isApproval = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === 'without' &&
  tokens
    .slice(at + 1, at + 6)
    .some(({ stem }) =>
      /^(?:approval|approv|agreement|supervisor|leav|order|written|permission|authoriz|authorization|consent|engineer|architect|owner)/.test(
        stem,
      ),
    );

/** "If bleed water persists, continue": the comma that closes an opening condition parts nothing; -1 where none opens. */
export function closingComma(tokens: readonly Token[], from: number, to: number): number {
  if (turning.at(tokens, from, to)?.meaning !== 'when') return -1;
  let at = from + 1;
  while (at < to && tokens[at]?.text !== ',') at++;
  return at < to ? at : -1;
}

/** "in excess", "in excess of 2 percent", "above 2 percent", "more than needed": what is forbidden is the excess, the rest may be. */
export function excessIn(tokens: readonly Token[], from: number, to: number): Run | undefined {
  for (const { from: start, to: behind } of excess.in(tokens, from, to)) {
    const isNumber = tokens[behind]?.kind === 'number';
    const isShare = /^(?:percent|%|per|pct)$/.test(tokens[behind + 1]?.text ?? '');
    const isWithin = /^(?:with|contain(?:s|ing)?|having|of)$/.test(tokens[start - 1]?.text ?? '');
    if (comparing.test(tokens[start]?.text ?? '') && (isWithin || !(isNumber && isShare))) continue;
    const end = closingAt(tokens, behind, to);
    const words = textOf(tokens, start, end);
    if (!boundedExceptions.test(words) && !limiting.test(words)) return { from: start, to: end };
  }
  return undefined;
}

const excess = new Phrases<true>([[true, excessWords]]);

/** Beyond a limit that another clause sets, all is forbidden that should be. */
const limiting =
  /\b(?:maximum|limit\w*|mix\w*|recommend\w*|manufacturer\w*|allowable|(?:permitted|allowed) by|approved)\b/;

/** Before a number of percent only: "above the slab", "over the burlap" are places. */
const comparing = /^(?:above|over|more|beyond)$/;

function closingAt(tokens: readonly Token[], from: number, to: number): number {
  let end = from;
  while (end < to && !/^(?:[,;.]|is|are|shall|will|must)$/.test(tokens[end]?.text ?? '')) end++;
  return end;
}

/** An exception of need, of weather or of somebody on the site swallows the rule; what the engineer binds does not. */
export function isOpen(tokens: readonly Token[], { from, to }: Run): boolean {
  const words = textOf(tokens, from, to);
  return siteExceptions.test(words) || (openExceptions.test(words) && !boundedExceptions.test(words));
}

const textOf = (tokens: readonly Token[], from: number, to: number): string =>
  tokens
    .slice(from, to)
    .map(({ text }) => text)
    .join(' ');
