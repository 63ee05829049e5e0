/** Passes over the surface: limited, or asked for again and again. */
import type { ActFact } from '../../../rules/model/fact.ts';
import type { Statement } from '../statement.ts';
import { actFact, allWords } from './act.ts';

const limiting =
  /\b(?:overwork\w*|over ?-? ?(?:finish|trowel|float)\w*|excessive(?:ly)? (?:work|finish|float|manipulat)\w*|limit (?:the )?(?:surface )?(?:working|passes|manipulation|finishing)|as (?:little|few (?:passes|strokes)?)\b.*\bas\b|fewest|minimum (?:number )?of (?:passes|strokes|manipulation|working|finishing)|minimum of working|no more than (?:is )?(?:needed|necessary)|minimi[sz]e (?:working|finishing|floating|manipulation)|(?:more|further) passes than|only (?:as much|enough)|few passes|bull-? ?float once|one pass|no more passes)\b/;
const repeating =
  /\b(?:(?:two|three|four|five|several|repeated|additional|successive|multiple) (?:passes|trowel\w*|float\w*|times)|repeat(?:edly)?|until (?:dense|glossy|slick|hard|polished))\b/;
const surface =
  /\b(?:surface|float\w*|trowel\w*|finish\w*|work\w*|slab|concrete|pass(?:es)?|screed\w*|broom\w*|strokes)\b/;

export function overFinishing(statement: Statement): ActFact[] {
  const all = allWords(statement);
  if (!surface.test(all) || /\b(?:compound|coats?|sealer|spray|roller)\b/.test(all)) return [];
  if (limiting.test(all)) return [actFact('over-finishing', { verb: 'limit' }, statement)];
  return repeating.test(all) && /\b(?:trowel|float|pass)/.test(all)
    ? [actFact('over-finishing', { verb: 'repeat' }, statement)]
    : [];
}
