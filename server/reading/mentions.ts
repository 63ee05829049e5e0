/** Elements, mixtures and the words in and out of doors, as a clause names them. */
import type { Mention } from '../../rules/model/fact.ts';
import { mixturesIn } from './mixture-names.ts';
import { Phrases } from './phrases.ts';
import type { Run } from './run.ts';
import type { Token } from './tokens.ts';
import {
  headNouns,
  indoorWords,
  modifierStops,
  notElements,
  outdoorWords,
  plainModifiers,
  traitWords,
} from './words/elements.ts';
import { imperatives } from './words/verbs.ts';

export interface MentionRead extends Run {
  readonly mention: Mention;
  /** Index of the head noun's first token. */
  readonly head: number;
  /** As written, for messages: "shelter walks". */
  readonly label: string;
  readonly traits: readonly string[];
  /** In or out of doors by the element's own words, or by one adjective before a list of elements. */
  readonly exterior: 'yes' | 'no' | 'unknown';
}

export interface Named {
  readonly elements: readonly MentionRead[];
  readonly mixtures: readonly string[];
  readonly exterior: 'yes' | 'no' | 'unknown';
}

const heads = new Phrases(headNouns);
const others = new Phrases<true>([[true, notElements]]);
const outdoors = new Phrases<true>([[true, outdoorWords]]);
const indoors = new Phrases<true>([[true, indoorWords]]);

export function namedIn(tokens: readonly Token[], { from, to }: Run): Named {
  const elements = mentionsIn(tokens, from, to);
  const exposed = outdoors.in(tokens, from, to);
  const denied = exposed.filter(({ from: at }) =>
    tokens.slice(Math.max(from, at - 2), at).some(({ text }) => text === 'not' || text === 'no'),
  );
  const outside = denied.length < exposed.length;
  const inside = 0 < denied.length || indoors.in(tokens, from, to).length > 0;
  return {
    elements,
    mixtures: mixturesIn(tokens, from, to),
    exterior: outside === inside ? 'unknown' : outside ? 'yes' : 'no',
  };
}

function mentionsIn(tokens: readonly Token[], from: number, to: number): MentionRead[] {
  const found: MentionRead[] = [];
  for (let at = from; at < to; at++) {
    const trap = others.at(tokens, at, to);
    const head = heads.at(tokens, at, to);
    if (trap && (!head || head.to < trap.to)) at = trap.to - 1;
    else if (head && !isVerb(tokens, at) && !isLandmark(tokens, at, found)) {
      found.push(mentionOf(tokens, from, head));
      at = head.to - 1;
    }
  }
  return placed(joined(found), tokens, from, to);
}

/** "exterior walks, stairs and ramps": the adjective holds for the whole list; "walks exposed to weather" for what stands before it. */
function placed(found: readonly MentionRead[], tokens: readonly Token[], from: number, to: number): MentionRead[] {
  const words = [
    ...outdoors.in(tokens, from, to).map((run) => ({ ...run, value: 'yes' as const })),
    ...indoors.in(tokens, from, to).map((run) => ({ ...run, value: 'no' as const })),
  ];
  return found.map((each) => {
    const own = words.find((word) => each.from <= word.from && word.to <= each.to);
    const shared = words.findLast((word) => word.to <= each.from && isList(tokens, word.to, each.from, found));
    const behind = words.find((word) => each.to <= word.from && isSaidBehind(tokens, each.to, word));
    return { ...each, exterior: (own ?? shared ?? behind)?.value ?? 'unknown' };
  });
}

/** Nothing but other elements, commas and joining words between. */
const isList = (tokens: readonly Token[], from: number, to: number, found: readonly MentionRead[]): boolean =>
  tokens
    .slice(from, to)
    .every(
      ({ text }, at) =>
        /^(?:,|and|or|the|concrete|-|&|new)$/.test(text) ||
        found.some((each) => each.from <= from + at && from + at < each.to),
    );

/** "walks exposed to weather", "stair pans, interior:". */
const isSaidBehind = (
  tokens: readonly Token[],
  end: number,
  { from, value }: Run & { value: 'yes' | 'no' },
): boolean => (value === 'yes' ? isExposure(tokens, from) : from - end <= farthestBehind);

const farthestBehind = 2;

const isExposure = (tokens: readonly Token[], at: number): boolean =>
  /^(?:exposed|subject|weather|open|outdoors)$/.test(tokens[at]?.text ?? '');

/** Heads side by side are one name: "plaza steps" are steps, a "bus apron slab" is an apron, "concrete paving walks" are walks. */
function joined(found: readonly MentionRead[]): MentionRead[] {
  const out: MentionRead[] = [];
  for (const each of found) {
    const before = out.at(-1);
    if (!before || before.to !== each.head) out.push(each);
    else if (each.mention.kind === 'slab')
      out[out.length - 1] = { ...before, to: each.to, traits: [...before.traits, ...each.traits] };
    else out[out.length - 1] = { ...each, traits: [...before.traits, ...each.traits] };
  }
  return out;
}

/** "steps up to the landing", "beside the curb": a place to go by, not what the clause is about. */
function isLandmark(tokens: readonly Token[], head: number, before: readonly MentionRead[]): boolean {
  if (0 < before.length && /^(?:at|where)$/.test(tokens[head - 1]?.text ?? '')) return true;
  const words = tokens
    .slice(Math.max(0, head - 4), head)
    .map(({ text }) => text)
    .join(' ');
  return /(?:\bup to|adjacent to|next to|beside|near|against|along|from) (?:the|a|an|existing|adjoining|adjacent)(?: \w+)?$/.test(
    words,
  );
}

/** "to walk on", "pumping drives it out": a head noun right behind "to" or before "it" is a verb. */
const isVerb = (tokens: readonly Token[], at: number): boolean =>
  (tokens[at - 1]?.text === 'to' && /^(?:walk|step|ramp)$/.test(tokens[at]?.text ?? '')) ||
  (/^(?:drives?|steps|walks|ramps)$/.test(tokens[at]?.text ?? '') &&
    /^(?:it|them|out|air)$/.test(tokens[at + 1]?.text ?? ''));

type Head = { readonly meaning: Mention['kind']; readonly from: number; readonly to: number };

function mentionOf(tokens: readonly Token[], from: number, head: Head): MentionRead {
  const start = startOfName(tokens, from, head);
  const run = tokens.slice(start, head.to);
  const last = run.at(-1);
  // "concrete exposed to weather" keeps all its words.
  const isWhole = run.some(({ text }, at) => text === 'exposed' && run[at + 1]?.text === 'to');
  const kept = run.filter(
    (token) => token.kind === 'word' && (isWhole || !plainModifiers.has(token.text) || token === last),
  );
  const hasModifiers = kept.some((token) => token.start < (tokens[head.from] as Token).start);
  const name = kept.map(({ text }) => text).join(' ');
  return {
    from: start,
    to: head.to,
    head: head.from,
    label: spelled(labelled(run)),
    mention: {
      name: singular(name),
      kind: head.meaning,
      bare: !hasModifiers && (kept.length === 1 || wholes.has(name)),
    },
    traits: traitsIn(run),
    exterior: 'unknown',
  };
}

/** Leftward over the words that belong to the name: "salt-shed apron", "second-floor office slab". */
function startOfName(tokens: readonly Token[], from: number, head: Head): number {
  // "all concrete" is a whole already; what stands before it is a verb.
  const most = tokens[head.from]?.text === 'all' ? 0 : mostModifiers;
  let start = head.from;
  for (let words = 0; from < start && words < most; ) {
    const previous = tokens[start - 1] as Token;
    const isHyphen = previous.text === '-' && from < start - 1;
    if (!isHyphen && endsName(tokens, start - 1, from)) break;
    if (!isHyphen) words++;
    start--;
  }
  while (tokens[start]?.text === '-') start++;
  return start;
}

const endsName = (tokens: readonly Token[], at: number, from: number): boolean => {
  const token = tokens[at] as Token;
  if (token.kind !== 'word' || modifierStops.has(token.text)) return true;
  return isImperative(token, tokens[at + 1]) || (at === from && isOrder(token));
};

const spelled = (run: readonly Token[]): string =>
  run.map(({ text, spaced }, at) => (spaced && 0 < at ? ` ${text}` : text)).join('');

/** What only tells how it is built is no part of what it is called. */
function labelled(run: readonly Token[]): readonly Token[] {
  const from = run.findIndex(
    ({ text }) =>
      !/^(?:structurally|structural|reinforced|unreinforced|plain|new|public|existing|completed|finished|-)$/.test(
        text,
      ),
  );
  return 0 < from ? run.slice(from) : run;
}

const mostModifiers = 4;

/** "covers shelter walks", "give plaza steps": a verb is no part of the name, but "salt-shed" and "waiting-hall" are. */
const isImperative = (previous: Token, next: Token | undefined): boolean =>
  imperatives.has(previous.stem) && next?.text !== '-';

/** Names of two words that stand for their whole kind. */
const wholes = new Set([
  'curb gutter',
  'curb and gutter',
  'slab on grade',
  'slab on ground',
  'slabs on grade',
  'slabs on ground',
  'parking lot',
  'parking area',
  'site work',
  'all concrete',
]);

/** The first word of a clause with a capital before a plural noun may be an order: "Broom walks". */
const isOrder = ({ text, capital }: Token): boolean =>
  capital &&
  /^(?:broom|place|cure|finish|protect|float|slope|salt|cover|seal|keep|wet|trowel|construct|provide|remove|sprinkle|apply|test|open|build|pour|clear|clean|edge|give|assign|use|reinforce|saw)$/.test(
    text,
  );

const traitsIn = (run: readonly Token[]): string[] =>
  traitWords.flatMap(([trait, words]) => (run.some(({ text }) => words.test(text)) ? [trait] : []));

export const singular = (name: string): string =>
  name
    .split(' ')
    .map((word, at, all) =>
      at === all.length - 1
        ? word
            .replace(/(?<=ch|sh|x)es$/, '')
            .replace(/(?<=[a-rt-z])s$/, '')
            .replace(/ie$/, 'y')
        : word,
    )
    .join(' ');
