/** Water put on the fresh surface, ordered, allowed or forbidden; water for anything else is not ours. */
import type { Force } from '../../../rules/model/clause.ts';
import type { ActFact } from '../../../rules/model/fact.ts';
import { Phrases } from '../phrases.ts';
import { holds, type Statement } from '../statement.ts';
import * as wettingWords from '../words/wetting.ts';
import { actFact, allWords, mainWords, sentenceWords, words } from './act.ts';

const water = words(...wettingWords.water);
const putting = words(...wettingWords.putting);
const surfaces = words(...wettingWords.surfaces);
const elsewhere = new Phrases<boolean>([
  [true, wettingWords.elsewhere],
  [false, wettingWords.notElsewhere],
]);
const otherLiquid = words(...wettingWords.otherLiquid);
const forCuring = words(...wettingWords.forCuring);
const intoAir = words(...wettingWords.intoAir);
const forFinishing = words(...wettingWords.forFinishing);
/** Verbs that need no water beside them: "sprinkle the walk", "you may dampen the slab". */
const wetting =
  /(?:^|[,;] |\b(?:may|shall|must|can|should|will|to|be|not|never|and|or|you|then|no|nor|is|are|lightly|finishers) )(?:lightly |be )?(?:sprinkl(?:e|ed|ing)|spray(?:ed|ing)?|(?<!\b(?:be|is|are) )wet(?!ted)|wett(?:ed|ing)|dampen(?:ed|ing)?|moisten(?:ed|ing)?|mist(?:ed|ing)?|re ?-? ?wet(?:ted|ting)?|lubricate[d]?)\b(?! (?:burlap|mat|cover|cure|curing|screed|sheet|sand|coverings|covering|weather|broom|brush|spell|sawing|saw|earth))/;

const later =
  /\b(?:finishing (?:is|has been) (?:over|done|complete)|after (?:final set|finishing|brooming|hardening)|has (?:set|hardened)|hard enough|set hard|when hard)\b/;

const onSurface = { verb: 'wet', object: 'surface', material: 'water' } as const;

export function surfaceWater(statement: Statement): ActFact[] {
  if (holds(otherLiquid, statement) && !/\bwater\b/.test(allWords(statement))) return [];
  const isBan = statement.predication.force === 'ban';
  if (/\bkeep\b.{0,24}\bwater\b.{0,12}\boff\b/.test(mainWords(statement)) && !isElsewhere(statement))
    return [actFact('surface-water', onSurface, statement, 'ban')];
  const broom = wettedBroom(statement);
  if (broom) return [broom];
  if (isSpray(statement)) return [actFact('surface-water', onSurface, statement, choiceOf(statement))];
  if (!touchesSurface(statement)) return [];
  if (isElsewhere(statement) || (!isBan && isHarmless(statement))) return [];
  return [actFact('surface-water', onSurface, statement)];
}

/** "A fine mist ahead of the float", "fog-spray until the surface glistens": a spray that is worked in, whatever it is called. */
function isSpray(statement: Statement): boolean {
  const main = allWords(statement);
  if (!spray.test(main) || holds(otherLiquid, statement) || holds(forCuring, statement) || holds(intoAir, statement))
    return false;
  return aheadOfTool.test(main) || glistening.test(main);
}

const spray =
  /\b(?:fine|light|water|quick|slight) (?:mist|spray|dash|sprinkl\w*|fog)\b|^(?:\W*(?:then|and) )?(?:fog|mist|spray)\b(?: ?- ?spray)?/;
const aheadOfTool =
  /\b(?:ahead of|in front of|between|to ease|to help|to aid|behind) (?:the |each )?(?:last |final |next )?(?:\w+ )?(?:float|trowel|broom|finish|pass)\w*\b/;
const glistening = /\b(?:glisten|shin(?:es|y)|sheen)\w*\b/;

/** "Is the finisher's choice" allows; a description of what is done orders it. */
const choiceOf = ({ predication }: Statement): Force => (predication.force === 'state' ? 'permit' : predication.force);

/** Water for the subgrade, the mixer, a joint. */
const isElsewhere = ({ tokens, predication }: Statement): boolean =>
  elsewhere.in(tokens, predication.from, predication.to).some(({ meaning }) => meaning);

function touchesSurface(statement: Statement): boolean {
  if (/\b(?:absorb|take up|blot|soak up|dry up)\w*\b.{0,30}\bwater\b/.test(allWords(statement))) return false;
  const main = mainWords(statement);
  if (/\b(?:sea ?water|brackish|salt spray|spray zone)\b/.test(main)) return false;
  if (/\b(?:rins|shak|clean)\w* (?:\w+ ){0,3}(?:broom|brush|tool|trowel)/.test(main)) return false;
  const isBan = statement.predication.force === 'ban';
  const hasSurface = holds(surfaces, statement) || 0 < statement.named.elements.length || isOnIt(statement);
  if (wetting.test(main) && hasSurface && !holds(otherLiquid, statement)) return true;
  if (!/\bwater\b|\bhose\b/.test(main)) return false;
  if (/bleed|sheen|rain\b|mixing water|added water reducer/.test(main))
    return isBan && holds(putting, statement) && hasSurface && /\badd|appl/.test(main);
  if (isBan) return hasSurface || /finish/.test(statement.heading);
  return (
    holds(putting, statement) &&
    hasSurface &&
    holds(water, statement) &&
    !/\b(?:remove|drag|squeegee|drain|shed|keep out|protect|divert)/.test(main)
  );
}

/** "Pour the walk … don't let anybody sprinkle water on it": "it" is the walk, unless covers are spoken of. */
const isOnIt = (statement: Statement): boolean =>
  0 < statement.subject.elements.length &&
  /\b(?:on|onto|to|into|over) (?:it|them)\b/.test(mainWords(statement)) &&
  !/\b(?:burlap|cover\w*|mats?|sheet\w*|blankets?)\b/.test(sentenceWords(statement));

/** Curing after the finish, fog into the air, and covers that are kept wet. */
function isHarmless(statement: Statement): boolean {
  const finishing = holds(forFinishing, statement);
  if (later.test(allWords(statement)) || holds(intoAir, statement)) return true;
  if (holds(forCuring, statement)) return true;
  if (/rock.?salt|salt finish/.test(statement.heading) || /rock salt/.test(sentenceWords(statement))) return true;
  if (
    statement.region === 'curing' ||
    statement.region === 'repair' ||
    statement.region === 'preparation' ||
    statement.region === 'submittals'
  )
    return !finishing;
  // Keeping something wet is curing; wetting it to work on is not.
  return /\b(?:keep|kept|maintain\w*)\b(?! free)/.test(mainWords(statement)) && !finishing;
}

const brooms = words(
  'wet broom',
  'wetted broom',
  'dampened broom',
  'damp broom',
  'wet brush',
  'wetted brush',
  'damp brush',
  'dampened brush',
);

/** "dip the broom in water", "a wet broom", "nor the broom dipped": the broom is what is wetted. */
export function isWettingBroom(statement: Statement): boolean {
  const main = mainWords(statement);
  if (/clean|rinse/.test(main)) return false;
  return dipping.test(main) || dipped.test(main) || holds(brooms, statement);
}

const dipping = /\b(?:dip|wet|dampen|moisten)(?:ping|ting|ing|s)? (?:the |a |each |his |their )?(?:broom|brush)/;
const dipped = /\b(?:broom|brush)(?:es|s)? (?:\w+ ){0,3}(?:dipped|wetted|wet|dampened|moistened)\b/;

function wettedBroom(statement: Statement): ActFact | undefined {
  if (!isWettingBroom(statement)) return undefined;
  // What is flicked or shaken off the broom lands on the slab.
  if (flicked.test(mainWords(statement))) return actFact('surface-water', onSurface, statement);
  return actFact('surface-water', { verb: 'wet', object: 'broom', material: 'water', tool: 'broom' }, statement);
}

const flicked = /\b(?:flick|shak|splash|dash|sprinkl)\w*\b(?: \w+){0,2} (?:over|on|onto|across|upon)\b/;
