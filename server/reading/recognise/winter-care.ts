/** What keeps people safe on young concrete without salt: sand, clearing, the owner's sheet, and the look in spring. */
import type { DeicerUseVerb } from '../../../rules/model/acts.ts';
import type { Force } from '../../../rules/model/clause.ts';
import type { ActFact } from '../../../rules/model/fact.ts';
import type { Statement } from '../statement.ts';
import { actFact, allWords } from './act.ts';

const wintry = /\b(?:winter|ice|snow|slip\w*|traction|de ?-? ?ic\w*|salt\w*|grit)\b/;
const known = new WeakMap<Statement['block'], boolean>();

/** Does the whole paragraph speak of winter? Looked up once, not for each of its statements. */
function isWintry({ block, text }: Statement): boolean {
  const before = known.get(block);
  if (before !== undefined) return before;
  const made = wintry.test(text.slice(block.start, block.end).toLowerCase());
  known.set(block, made);
  return made;
}

export function winterCare(statement: Statement): ActFact[] {
  const all = allWords(statement);
  const made = (verb: DeicerUseVerb, material?: string, force?: Force): ActFact =>
    actFact('deicer-use', { verb, ...(material && { material }) }, statement, force);
  const facts: ActFact[] = [];
  const winter = wintry.test(statement.heading) || isWintry(statement);
  if (
    winter &&
    /\b(?:clean |washed |sharp |dry )?(?:sand|grit)\b/.test(all) &&
    /\b(?:use|spread|strewn|strew|apply|with|only|traction|footing|instead|safe|and)\b/.test(all) &&
    !/sandblast|aggregate|bed\b/.test(all)
  )
    facts.push(made('sand', 'sand', insteadOfSalt.test(all) ? 'require' : undefined));
  if (
    winter &&
    /\b(?:clear(?:s|ed|ing)?|shovel(?:s|ed|ing)?|plow(?:s|ed|ing)?|plough(?:s|ed|ing)?)\b(?! ?- ?shoe)/.test(all) &&
    !/\bclear (?:distance|space|cover)/.test(all)
  )
    facts.push(made('clear'));
  if (
    winter &&
    /\b(?:owner'?s? (?:sheet|instruction)|instruct\w*|sheet|letter|inform|notify|maintenance (?:instruction|manual))\b/.test(
      all,
    ) &&
    /\bowner|maintenance|snow contractor|tenant\b/.test(all)
  )
    facts.push(made('instruct'));
  if (
    /\binspect\w*|walk through|examine\b/.test(all) &&
    /\b(?:spring|in (?:may|april)|after the (?:first )?winter|first winter)\b/.test(all)
  )
    facts.push(made('inspect'));
  return facts;
}

/** "Use sand and no salt": the ban is of what stands behind it. */
const insteadOfSalt = /\bsand\b(?: \w+){0,2},? (?:and|but)? ?(?:no|not|never)\b/;
