/** Whose one of several values or operations is: "0.40 for decks, 0.45 for sidewalks", "broom on ramps and trowel indoors". */
import type { Subject } from '../../rules/model/fact.ts';
import type { MentionRead } from './mentions.ts';
import type { Run } from './run.ts';
import type { Statement } from './statement.ts';
import type { Token } from './tokens.ts';

/** The subject of `run` among `peers` (runs of the same sort in the same statement, itself included). */
export function localSubject(statement: Statement, run: Run, peers: readonly Run[]): Subject {
  const { named, predication, subject } = statement;
  if (named.elements.length < 2 || peers.length < 2 || subject.by !== 'words') return subject;
  const next = peers.find(({ from }) => run.to <= from)?.from ?? predication.to;
  const before = peers.findLast(({ to }) => to <= run.from)?.to ?? predication.from;
  const own = behind(statement, run.to, next) ?? ahead(named.elements, before, run.from);
  if (!own || own.length === named.elements.length) return subject;
  return { ...subject, elements: own.map(({ mention }) => mention), exterior: exteriorOf(own) };
}

/** "… for sidewalks and ramps": a preposition brings the elements behind a value. */
function behind({ named, tokens }: Statement, from: number, to: number): readonly MentionRead[] | undefined {
  const inside = named.elements.filter((each) => from <= each.from && each.to <= to);
  const first = inside.find((each) => bringsIn.test(tokens[each.from - 1]?.text ?? '') || isArticle(tokens, each.from));
  return first && inside.filter((each) => first.from <= each.from);
}

const bringsIn = /^(?:for|on|in|at|of|to)$/;
const isArticle = (tokens: readonly Token[], at: number): boolean =>
  /^(?:the|all|each|any)$/.test(tokens[at - 1]?.text ?? '') && bringsIn.test(tokens[at - 2]?.text ?? '');

/** "walks 0.45, decks 0.40": the elements stand before their value. */
function ahead(elements: readonly MentionRead[], from: number, to: number): readonly MentionRead[] | undefined {
  const inside = elements.filter((each) => from <= each.from && each.to <= to);
  return 0 < inside.length ? inside : undefined;
}

function exteriorOf(own: readonly MentionRead[]): Subject['exterior'] {
  const said = new Set(own.map(({ exterior }) => exterior));
  return said.size === 1 ? (own[0] as MentionRead).exterior : 'unknown';
}
