/** Evaporation retarder: between operations it protects, as a finishing aid it is added water. */
import type { RetarderManner } from '../../../rules/model/acts.ts';
import type { ActFact } from '../../../rules/model/fact.ts';
import { holds, type Statement } from '../statement.ts';
import { actFact, allWords, sentenceWords, words } from './act.ts';

const retarder = words(
  'evaporation retarder',
  'evaporation retardant',
  'evaporation reducer',
  'evaporation control',
  'monomolecular film',
  'mono molecular film',
  'monomolecular',
  'finishing aid',
  'evaporation film',
  'evaporation retarding film',
);
const aid =
  /\b(?:finishing aid|(?:aid|ease|assist|help|facilitate)\w* (?:in |with |the |final )*(?:finish|trowel|float|broom|work|clos)\w*|restore workability|rewet|re-? ?wet|ahead of the (?:broom|float|trowel)|to help it|work(?:ed)? (?:it )?in(?:to)?|finish(?:ed)? in(?:to)?|during (?:float|trowel|finish)\w*|while (?:float|trowel|finish)\w*|glide|lubricat\w*|tight areas|close the surface)\b/;
const between =
  /\b(?:between (?:operations|screed|strik|finish|float|later)|after (?:screed|strik|each)|before (?:float|finish)|not (?:be )?(?:work|finish)|until|following screed)/;

export function evaporationRetarder(statement: Statement): ActFact[] {
  const sentence = sentenceWords(statement);
  const named =
    holds(retarder, statement) || (/\bretarder\b/.test(allWords(statement)) && /spray|film|evaporat/.test(sentence));
  // "Water as a finishing aid" names the aid: it is no retarder.
  const isWater = /\bwater (?:\w+ ){0,3}(?:as|for) (?:a |an )?finishing aid\b/.test(allWords(statement));
  if (!named || isWater || /\bvapou?r retarder|set retarder|retarder or water reducer|astm/.test(allWords(statement)))
    return [];
  const manner: RetarderManner = aid.test(allWords(statement))
    ? 'finishing aid'
    : between.test(sentence)
      ? 'between operations'
      : 'plain';
  return [actFact('evaporation-retarder', { verb: 'apply', material: 'evaporation retarder', manner }, statement)];
}

const fog = words('fog', 'fogging', 'fog spray', 'fog above', 'mist above', 'fogging equipment', 'fog nozzles');

export function fogging(statement: Statement): ActFact[] {
  if (!holds(fog, statement) || /cur(?:e|ing)|forms|reinforc|subgrade|embed/.test(allWords(statement))) return [];
  return [
    actFact(
      'fogging',
      { verb: 'fog', object: /\b(?:above|air|humid|over)\b/.test(allWords(statement)) ? 'air' : 'surface' },
      statement,
    ),
  ];
}
