/** A verdict behind its subject: "calcium chloride: none", a row "calcium chloride | No", "… will result in rejection". */
import type { Force } from '../../../rules/model/clause.ts';
import type { Statement } from '../statement.ts';
import { tokensOf } from '../tokens.ts';
import { allWords, mainWords } from './act.ts';

/** The force of each statement with the verdict that its sentence or its row passes on it. */
export function withVerdicts(statements: readonly Statement[]): readonly Statement[] {
  return statements.map((statement, at) => {
    const force = verdictBehind(statement, statements[at + 1]) ?? verdictOfRow(statement);
    return force ? withForce(statement, force) : statement;
  });
}

/** What leads to rejection is forbidden. Only for things done: "loads below 4 percent will be rejected" gives a bound. */
export function withConsequences(statement: Statement): Statement {
  if (statement.predication.force === 'ban') return statement;
  if (isRejected(statement)) return withForce(statement, 'ban');
  return isHarm(statement) ? withForce(statement, 'state') : statement;
}

/** "Adding water will weaken the surface", "steel trowels may damage the air voids" teach; they neither order nor allow. */
export const isHarm = (statement: Statement): boolean => {
  const main = allWords(statement);
  return harm.test(main) && !/\b(?:shall|must|is to|are to|required|permitted|allowed)\b/.test(main);
};

const harm =
  /\b(?:(?:will|may|can|could|would|might|does|do|likely to|tends? to) (?:\w+ ){0,2}(?:weaken|damage|reduce|impair|harm|lower|ruin|destroy|increase|cause|result|lead)\b|(?:weakens|damages|reduces|impairs|harms|lowers|ruins|destroys|causes)\b|(?:results?|leads?) (?:in|to) (?:\w+ ){0,3}(?:loss|low\w*|weak\w*|poor|scal\w*|dust\w*|craz\w*|damage|delam\w*))/;

const withForce = (statement: Statement, force: Force): Statement => ({
  ...statement,
  predication: { ...statement.predication, force, cued: true },
});

/** A verdict is a few words and at most a time or a place, so that it has no subject but the one before it. */
const verdicts: readonly (readonly [Force, RegExp])[] = [
  [
    'ban',
    /^(?:(?:is|are|shall be|will be|be) )?(?:strictly )?(?:no|none|nil|never|not?(?: be)? (?:permitted|allowed|accepted|acceptable|used|admitted)|do not use|prohibited|forbidden|banned|excluded|unacceptable|rejected|inadmissible)(?: (?:the first|in|during|for|until|before|at|on|as|because|since)\b.*)?$/,
  ],
  ['waive', /^(?:(?:is|are) )?(?:not (?:required|necessary|needed))$/],
  ['permit', /^(?:(?:is|are) )?(?:yes|permitted|allowed|acceptable|ok)$/],
];

const longestVerdict = 12;

const verdictIn = (text: string): Force | undefined => verdicts.find(([, say]) => say.test(text))?.[0];

/** The words behind a colon, where they are a verdict and end the sentence. */
function verdictBehind({ tokens, sentence, predication }: Statement, next: Statement | undefined): Force | undefined {
  if (!next || next.sentence !== sentence || next.tokens !== tokens) return undefined;
  const { from, to } = next.predication;
  if (!/^[:—]$/.test(tokens[predication.to - 1]?.text ?? '') || longestVerdict < to - from) return undefined;
  return verdictIn(spoken(tokens.slice(from, to)));
}

/** The first cell of a row names a thing; where one verdict stands in the others, it is that thing's. */
function verdictOfRow({ block, text, tokens }: Statement): Force | undefined {
  const [first, ...others] = block.kind === 'row' ? (block.cells ?? []) : [];
  const start = tokens[0]?.start ?? -1;
  if (!first || start < first.start || first.end <= start) return undefined;
  const found = others
    .filter(({ start: from, end }) => end - from <= longestCell)
    .map(({ start: from, end }) => verdictIn(spoken(tokensOf(text, from, end))));
  const forces = new Set(found.filter((force) => force !== undefined));
  return forces.size === 1 ? [...forces][0] : undefined;
}

const longestCell = 40;

const spoken = (tokens: Statement['tokens']): string =>
  tokens
    .map(({ text }) => text)
    .filter((text) => !/^[.,;]$/.test(text))
    .join(' ');

/** Nouns say so wherever they stand; verbs only outside conditions ("if the load is rejected"). */
const grounds =
  /\b(?:(?:grounds|cause|reason|basis) (?:for|of|enough for) (?:\w+ ){0,2}(?:reject\w*|remov\w*|replac\w*|refus\w*)|(?:results?|lead|leads|end|ends) (?:in|to) (?:the )?(?:rejection|removal|refusal))\b/;
const refused = /\b(?:will|shall|must|is|are|to) be (?:rejected|refused|condemned)\b|\b(?:is|are) rejected\b/;
/** The work itself is torn out, not something that lies on it. */
const tornOut =
  /\b(?:panel|slab|concrete|work|walk|sidewalk|area|surface|section|finish|pavement)s? (?:(?:which|that|where|so) (?:\w+ ){1,6})?(?:will|shall|must|is to|are to) be (?:removed|replaced|torn out|broken out)\b/;
const liesOnIt =
  /\b(?:water|ice|snow|frost|dirt|debris|laitance|covers?|forms?|burlap|sheen|mortar)\b (?:\w+ ){0,3}(?:on|from|over|at|of)\b/;

function isRejected(statement: Statement): boolean {
  const main = mainWords(statement);
  return grounds.test(allWords(statement)) || refused.test(main) || (tornOut.test(main) && !liesOnIt.test(main));
}
