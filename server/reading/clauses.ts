/** Sentences and their statements, each with its force, its conditions and exceptions. */
import type { Addressee, Force } from '../../rules/model/clause.ts';
import { cutsIn } from './cuts.ts';
import { addresseeOf, inherited, ownForce, tellsOfPast } from './force.ts';
import type { Run } from './run.ts';
import type { Token } from './tokens.ts';
import { isExceptThat, isOpen, turnsIn } from './turns.ts';
import { abbreviations, unitAbbreviations } from './words/abbreviations.ts';
import { toolFrame, waterTools } from './words/wetting.ts';

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
  /** The permission of the same sentence that takes a ban back: "except that a wet brush may be used". */
  readonly takenBack?: Run;
  /** Tells what happened, and orders nothing. */
  readonly past: boolean;
}

export interface Sentence extends Run {
  readonly predications: readonly Predication[];
}

export function sentencesOf(tokens: readonly Token[]): Sentence[] {
  const sentences: Sentence[] = [];
  let from = 0;
  for (let at = 0; at < tokens.length; at++) {
    if (!endsSentence(tokens, at) && !isOverlong(tokens, at, at - from) && at < tokens.length - 1) continue;
    sentences.push({ from, to: at + 1, predications: predicationsOf(tokens, from, at + 1) });
    from = at + 1;
  }
  return sentences;
}

/** The longest real sentences, of city ordinances, have some 150 words; garbled text is cut so that it costs no more than its length. */
const longSentence = 200;
const longestSentence = 300;

const isOverlong = (tokens: readonly Token[], at: number, length: number): boolean =>
  longestSentence <= length || (longSentence <= length && /^[;:,]$/.test(tokens[at]?.text ?? ''));

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
  return predications.map((each, index) => ({ ...each, takenBack: takenBack(tokens, each, predications[index + 1]) }));
}

function takenBack(tokens: readonly Token[], ban: Predication, next: Predication | undefined): Run | undefined {
  if (ban.force !== 'ban' || next?.force !== 'permit') return undefined;
  const isException = isExceptThat(tokens, next.from) && isOpen(tokens, next);
  const isByTool = tokens.slice(ban.from, ban.to).some(({ text }) => waterTools.has(text));
  return isException || (isByTool && isOtherTool(tokens, next)) ? { from: next.from, to: next.to } : undefined;
}

/** "by hose; a bucket and brush may be used": what may be used is a tool for what was forbidden, and nothing else. */
function isOtherTool(tokens: readonly Token[], { from, to }: Run): boolean {
  const named = tokens.slice(from, to).filter(({ kind, text }) => kind === 'word' && !toolFrame.has(text));
  return 0 < named.length && named.every(({ text }) => waterTools.has(text));
}

function predication(tokens: readonly Token[], from: number, to: number, before: Predication | undefined): Predication {
  const turned = turnsIn(tokens, from, to);
  const conditions = turned.filter(({ turn }) => turn === 'when');
  const replaced = turned.filter(({ turn }) => turn === 'replace');
  const except = turned.find(({ turn }) => turn === 'except');
  const inside = (at: number): boolean => turned.some((run) => run.from <= at && at < run.to);
  const own = ownForce(tokens, from, to, inside);
  const force = own ?? inherited(tokens, from, to, before?.force, inside);
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
    past: own === undefined && tellsOfPast(tokens, from, to, inside),
  };
}

/** "Keep de-icers off until …" stays a ban for its time; "do not float until the sheen has gone" orders the waiting. */
const isLasting = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens
    .slice(from, to)
    .some(({ stem }) => /^(?:deicer|icer|icing|deicing|salt|chemical|brine|load|traffic)$/.test(stem));
