/** Sentences and predications: where one statement ends and the next begins, and the force of each. */
import type { Addressee, Force } from '../../rules/model/clause.ts';
import { Phrases } from './phrases.ts';
import type { Token } from './tokens.ts';
import {
  addressees,
  boundedExceptions,
  comparators,
  forceCues,
  openExceptions,
  type Turn,
  turns,
} from './words/cues.ts';
import { imperatives } from './words/verbs.ts';

/** A run of tokens, half-open. */
export interface Run {
  readonly from: number;
  readonly to: number;
}

/** One statement: an act or a value with its force, its conditions and exceptions. */
export interface Predication extends Run {
  readonly force: Force;
  readonly addressee: Addressee;
  readonly conditions: readonly Run[];
  readonly exception?: Run & { readonly open: boolean };
  /** What another thing is put in place of ("instead of curing"). */
  readonly replaced: readonly Run[];
  /** The text gave the force by a word of its own. */
  readonly cued: boolean;
}

export interface Sentence extends Run {
  readonly predications: readonly Predication[];
}

const cues = new Phrases<Force | 'without'>(forceCues);
const bounds = new Phrases<true>([[true, comparators]]);
const turning = new Phrases<Turn>(turns);
const people = new Phrases<Addressee>(addressees);

export function sentencesOf(tokens: readonly Token[]): Sentence[] {
  const sentences: Sentence[] = [];
  let from = 0;
  for (let at = 0; at < tokens.length; at++) {
    if (!endsSentence(tokens, at) && at < tokens.length - 1) continue;
    if (from <= at) sentences.push({ from, to: at + 1, predications: predicationsOf(tokens, from, at + 1) });
    from = at + 1;
  }
  return sentences;
}

const abbreviations = new Set([
  'no',
  'nos',
  'sec',
  'art',
  'fig',
  'eq',
  'approx',
  'vs',
  'e',
  'g',
  'i',
  'dept',
  'st',
  'spec',
  'par',
  'para',
  'ref',
  'avg',
  'temp',
  'u',
  's',
  'p',
  'cu',
  'sq',
  'etc',
  'mr',
  'div',
  'vol',
  'dwg',
  'dwgs',
  'incl',
]);
const unitAbbreviations = new Set(['in', 'ft', 'lb', 'lbs', 'max', 'min', 'gal', 'yd', 'hr', 'hrs', 'oz', 'dia', 'mm']);

function endsSentence(tokens: readonly Token[], at: number): boolean {
  const { text } = tokens[at] as Token;
  if (text === '?' || text === '!') return true;
  if (text !== '.') return false;
  const [previous, next] = [tokens[at - 1], tokens[at + 1]];
  if (!next) return true;
  if (!next.spaced || !previous) return false;
  if (previous.kind === 'word' && abbreviations.has(previous.text)) return false;
  if (previous.kind === 'word' && previous.text.length === 1 && next.kind === 'word' && !next.capital) return false;
  if (previous.kind === 'word' && unitAbbreviations.has(previous.text)) return next.capital || next.kind === 'number';
  return (
    next.capital ||
    next.kind === 'number' ||
    /^["'([]$/.test(next.text) ||
    previous.kind !== 'word' ||
    3 < previous.text.length
  );
}

function predicationsOf(tokens: readonly Token[], from: number, to: number): Predication[] {
  const cuts = cutsIn(tokens, from, to);
  const predications: Predication[] = [];
  cuts.forEach((start, index) => {
    const end = cuts[index + 1] ?? to;
    if (start < end) predications.push(predication(tokens, start, end, predications.at(-1)));
  });
  return predications;
}

/** Starts of predications: at `;` `:`, after `then` and `but`, and where a comma or "and" brings a verb or modal of its own. */
function cutsIn(tokens: readonly Token[], from: number, to: number): number[] {
  const cuts = [from];
  let closing = closingComma(tokens, from, to);
  const cut = (at: number): void => {
    cuts.push(at);
    closing = closingComma(tokens, at, to);
  };
  for (let at = from; at < to; at++) {
    const { text, spaced } = tokens[at] as Token;
    if (isExceptThat(tokens, at)) cut(at);
    else if (text === ';' || (text === ':' && tokens[at + 1]?.spaced !== false) || (text === '—' && spaced))
      cut(at + 1);
    else if (text === ',' && at !== closing && opensAfterComma(tokens, at + 1, to)) cut(at + 1);
    else if (tokens[at - 1]?.text === ',') continue;
    else if (text === 'but' || text === 'then') cut(at);
    else if (text === 'and' && (opensModal(tokens, at + 1) || opensVerb(tokens, at + 1))) cut(at);
  }
  return cuts;
}

/** "cover at once", "bull-float once" are no conditions; "once the sheen has gone" is one. */
const isAdverb = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === 'once' &&
  !/^(?:the|no|a|an|it|concrete|bleed|bleeding|all|texture|set)$/.test(tokens[at + 1]?.text ?? '');

/** "except that the curing period is 72 hours" states something of its own. */
const isExceptThat = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === 'except' && tokens[at + 1]?.text === 'that';

/** ", and shall …", ", then broom", ", broom the surface": a modal behind a joining word, or a verb. */
function opensAfterComma(tokens: readonly Token[], next: number, to: number): boolean {
  if (to <= next) return false;
  if (tokens[next]?.text === 'but') return true;
  const joined = /^(?:and|or|then|nor)$/.test(tokens[next]?.text ?? '') ? next + 1 : next;
  const verb = tokens[joined]?.text === 'then' ? joined + 1 : joined;
  return opensVerb(tokens, verb) || (joined !== next && opensModal(tokens, joined));
}

/** "If bleed water persists, continue": the comma that closes an opening condition parts nothing. */
function closingComma(tokens: readonly Token[], from: number, to: number): number {
  const opening = turning.at(tokens, from, to);
  return opening?.meaning === 'when' ? tokens.findIndex(({ text }, at) => from < at && at < to && text === ',') : -1;
}

const opensVerb = (tokens: readonly Token[], at: number): boolean => {
  const token = tokens[at];
  const previous = tokens[at - 1];
  if (token?.kind !== 'word') return false;
  if (token.text === 'do' || token.text === 'never') return true;
  // A noun that follows an adjective or a noun is no imperative: "float, broom finish".
  return (
    imperatives.has(token.stem) &&
    token.text !== 'cured' &&
    !/ed$|ing$/.test(token.text) &&
    !/^(?:finish|trowel|broom|float|water|salt)$/.test(token.text + (tokens[at + 1]?.text === 'finish' ? '' : '-')) &&
    previous?.kind !== 'number' &&
    tokens[at + 1]?.text !== 'finish'
  );
};

/** "… and shall", "… and the surface may": a modal within a few words. */
function opensModal(tokens: readonly Token[], at: number): boolean {
  for (let look = at; look < at + 5; look++) {
    const text = tokens[look]?.text ?? '';
    if (/^(?:shall|must|may|should|will|can)$/.test(text)) return !isMonth(tokens, look);
    if (/^[,;.]$/.test(text) || text === '') return false;
  }
  return false;
}

export const isMonth = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === 'may' &&
  (tokens[at]?.capital ?? false) &&
  (tokens[at - 1]?.kind === 'number' ||
    tokens[at + 1]?.kind === 'number' ||
    /^(?:in|of|by|to|through|until|from|before|after|and|every|each)$/.test(tokens[at - 1]?.text ?? ''));

function predication(tokens: readonly Token[], from: number, to: number, before: Predication | undefined): Predication {
  const turned = turnsIn(tokens, from, to);
  const conditions = turned.filter(({ turn }) => turn === 'when');
  const replaced = turned.filter(({ turn }) => turn === 'replace');
  const except = turned.find(({ turn }) => turn === 'except');
  const inside = (at: number): boolean => turned.some((run) => run.from <= at && at < run.to);
  const own = ownForce(tokens, from, to, inside);
  const force = own ?? inherited(tokens, from, to, before, inside);
  const waits = force === 'ban' && conditions.some((run) => /^(?:until|before)$/.test(tokens[run.from]?.text ?? ''));
  return {
    from,
    to,
    force: waits && !isLasting(tokens, from, to) ? 'require' : force,
    addressee: addresseeOf(tokens, from, to) ?? before?.addressee ?? 'contractor',
    conditions,
    replaced,
    exception: except && { from: except.from, to: except.to, open: isOpen(tokens, except) },
    cued: own !== undefined,
  };
}

/** "Keep de-icers off until …" stays a ban for its time; "do not float until the sheen has gone" orders the waiting. */
const isLasting = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens
    .slice(from, to)
    .some(({ stem }) => /^(?:deicer|icer|icing|deicing|salt|chemical|brine|load|traffic)$/.test(stem));

interface Turned extends Run {
  readonly turn: Turn;
}

/** Conditions and exceptions, each from its word to the next comma or turn; one at the very start ends at its comma. */
function turnsIn(tokens: readonly Token[], from: number, to: number): Turned[] {
  const found = turning
    .in(tokens, from, to)
    .filter(({ from: at }) => !isComparing(tokens, at) && !isExceptThat(tokens, at));
  return found.map(({ meaning, from: start, to: behind }, index) => {
    const limit = found[index + 1]?.from ?? to;
    let end = behind;
    while (end < limit && tokens[end]?.text !== ',' && tokens[end]?.text !== ';') end++;
    return {
      turn: meaning,
      from: start,
      to: meaning === 'when' && start - from <= 2 ? mainClause(tokens, behind, end) : end,
    };
  });
}

/** "when stiff the surface shall be troweled": a condition without a comma ends where the subject of the modal begins. */
function mainClause(tokens: readonly Token[], from: number, end: number): number {
  const modal = tokens.findIndex(({ text }, at) => from < at && at < end && /^(?:shall|must|may|should)$/.test(text));
  if (modal < 0 || tokens[end]?.text === ',') return end;
  for (let at = modal - 1; from <= at && modal - at <= 5; at--) {
    if (/^(?:the|a|an|it|they|all|each|no)$/.test(tokens[at]?.text ?? '')) return at;
  }
  return Math.max(from, modal - 2);
}

/** "less than … before" and "rather" aside: "no later than 20 minutes after" keeps its time out of the conditions. */
const isComparing = (tokens: readonly Token[], at: number): boolean =>
  isAdverb(tokens, at) || (tokens[at]?.text === 'before' && /^(?:than|and)$/.test(tokens[at - 1]?.text ?? ''));

const precedence: readonly Force[] = ['waive', 'ban', 'permit', 'recommend', 'require'];

function ownForce(
  tokens: readonly Token[],
  from: number,
  to: number,
  inside: (at: number) => boolean,
): Force | undefined {
  const compared = new Set(bounds.in(tokens, from, to).flatMap((run) => range(run.from, run.to)));
  const found = cues
    .in(tokens, from, to)
    .filter(
      (cue) =>
        !inside(cue.from) &&
        !range(cue.from, cue.to).some((at) => compared.has(at)) &&
        !isMonth(tokens, cue.from) &&
        !isRelative(tokens, cue.from),
    );
  const forces = new Set(found.map(({ meaning }) => meaning));
  // "No walks shall be placed without curing": two negations order what stands behind the second.
  if (forces.has('without'))
    return forces.has('ban') ? 'require' : (precedence.find((force) => forces.has(force)) ?? 'ban');
  return precedence.find((force) => forces.has(force));
}

/** "damage that may be caused by frost": the modal of a relative clause gives the statement no force. */
const isRelative = (tokens: readonly Token[], at: number): boolean =>
  /^(?:that|which|who)$/.test(tokens[at - 1]?.text ?? '') &&
  /^(?:may|might|can|could|should|will|would|shall|must|is|are)$/.test(tokens[at]?.text ?? '');

const range = (from: number, to: number): number[] => Array.from({ length: to - from }, (_, at) => from + at);

/** A bare noun phrase or imperative requires; a verb of being describes; a list goes on with the force before it. */
function inherited(
  tokens: readonly Token[],
  from: number,
  to: number,
  before: Predication | undefined,
  inside: (at: number) => boolean,
): Force {
  const first = tokens[from];
  const listed = before !== undefined && first !== undefined && /^(?:or|nor|,)$/.test(first.text);
  if (listed) return before.force;
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
    if (imperatives.has(stem) && seen++ < 2) return false;
    if (describing.has(text)) return true;
    seen++;
  }
  return false;
}

function addresseeOf(tokens: readonly Token[], from: number, to: number): Addressee | undefined {
  const first = tokens[from];
  if (first?.text === 'specify' && first.capital) return 'designer';
  const modal = tokens
    .slice(from, to)
    .findIndex(({ text }) => /^(?:shall|must|may|should|will|is|are|can)$/.test(text));
  if (modal < 0 || 8 < modal) return undefined;
  return people.in(tokens, from, from + modal).at(0)?.meaning;
}

function isOpen(tokens: readonly Token[], run: Run): boolean {
  const words = tokens
    .slice(run.from, run.to)
    .map(({ text }) => text)
    .join(' ');
  return openExceptions.test(words) && !(boundedExceptions.test(words) && !/finisher|driver|supplier/.test(words));
}
