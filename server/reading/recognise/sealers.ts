/** Sealers: as something added, and as something put in the place of air, curing or the hold-off. */
import type { SealerInsteadOf } from '../../../rules/model/acts.ts';
import type { ActFact } from '../../../rules/model/fact.ts';
import { holds, type Statement } from '../statement.ts';
import { actFact, allWords, sentenceWords, words } from './act.ts';

const sealer = words(
  'sealer',
  'sealed',
  'seal',
  'silane',
  'siloxane',
  'linseed oil',
  'penetrating sealer',
  'water repellent',
  'surface sealer',
  'surface treatment',
  'sealing',
  'sealed walk',
  'surface sealing',
  'anti-scaling treatment',
);
const sealant = words(
  'joint sealant',
  'sealant',
  'joint sealer',
  'sealing compound',
  'cure and seal',
  'curing and sealing compound',
  'seal coat',
  'sealed drawings',
  'sealed by',
  'seal joints',
  'hot poured',
  'backer rod',
  'seal of',
);

export function sealers(statement: Statement): ActFact[] {
  if (['references', 'related', 'submittals'].includes(statement.region)) return [];
  if (!holds(sealer, statement, statement.sentence) || holds(sealant, statement)) return [];
  const speaks = holds(sealer, statement) || /\b(?:in lieu|instead|in place)\b/.test(allWords(statement));
  const instead = speaks ? insteadOf(statement) : undefined;
  const facts: ActFact[] = [];
  if (instead)
    facts.push(actFact('sealer-instead', { verb: 'replace', material: 'sealer', manner: instead }, statement));
  if (
    holds(sealer, statement) &&
    /\b(?:apply|seal|use|treat|spray|sealed|applied|treatment)\w*\b/.test(allWords(statement))
  )
    facts.push(actFact('sealer', { verb: 'apply', material: 'sealer' }, statement));
  return facts;
}

const subjects: readonly (readonly [SealerInsteadOf, RegExp])[] = [
  ['air', /\bair(?: ?-? ?entrain\w*)?\b|\bentrain\w*\b/],
  ['curing', /\bcur(?:e|ing)\b/],
  ['hold-off', /\b(?:salted|salt|de ?-? ?ic\w*|hold ?-? ?off|first winter)\b/],
];

function insteadOf(statement: Statement): SealerInsteadOf | undefined {
  const sentence = sentenceWords(statement);
  if (/\b(?:does not|do not|not (?:waive|replace|excuse)|in addition|also required|never|no sealer)\b/.test(sentence))
    return undefined;
  const replaced =
    /\b(?:in lieu of|instead of|in place of|as (?:an )?(?:alternative|alternate|substitute) (?:to|for)|stand in for|omitted|omit|waived?|not (?:needed|required)|(?:be|is) left out|leave out|replaces?|substitute\w*|makes? up for)\b/.exec(
      sentence,
    );
  if (replaced) {
    const near = sentence.slice(Math.max(0, replaced.index - 40), replaced.index + 60);
    return subjects.find(([, say]) => say.test(near))?.[0];
  }
  // "A sealed walk may be salted in its first winter."
  const salts =
    statement.predication.force === 'permit' &&
    /\bseal\w*\b/.test(sentence) &&
    /\b(?:salted|de ?-? ?ic\w*|salts)\b/.test(sentence);
  return salts ? 'hold-off' : undefined;
}
