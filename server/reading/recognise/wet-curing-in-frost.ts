/** Wetting that is to go on into frost. */
import type { ActFact } from '../../../rules/model/fact.ts';
import type { Statement } from '../statement.ts';
import { actFact, allWords, conditionWords, sentenceWords } from './act.ts';

const wetting = /\b(?:wet|saturat\w*|flood\w*|sprinkl\w*|soak\w*|moist\w*|water)\b/;
const frost = /\b(?:freez\w*|frost\w*|frozen|below freezing|first freeze|winter nights?)\b/;
const stopping =
  /\b(?:stop\w*|cease\w*|do not|discontinue|no water|never|avoid|unless|before it freezes|remove|protect\w*|prevent\w*|above)\b/;

/** "Keep burlap saturated until the first freeze", "flood at night in frosty weather". */
export function wetCuringInFrost(statement: Statement): ActFact[] {
  const all = allWords(statement);
  const isInto =
    /\b(?:until (?:the )?first (?:freeze|frost)|at all temperatures|frosty (?:nights?|weather)|in (?:freezing|frosty)|(?:nights?|days?) included|regardless of (?:frost|temperature)|during (?:frost|freezing)|right up to|through (?:frost|freezing)|until it freezes|even (?:in|during|when))\b/;
  const sentence = sentenceWords(statement);
  if (
    !wetting.test(all) ||
    !frost.test(sentence) ||
    !isInto.test(sentence) ||
    stopping.test(all) ||
    conditionWords(statement).includes('subgrade')
  )
    return [];
  if (
    !/cur(?:e|ing)|burlap|slab|mats|surface|cover|walk|plaza|apron|steps|concrete/.test(
      `${sentence} ${statement.heading}`,
    )
  )
    return [];
  return [actFact('wet-curing-in-frost', { verb: 'wet', manner: 'wet' }, statement)];
}
