/** Accelerators by their chlorides, and air entrainment as something ordered, allowed or left open. */
import type { AcceleratorMaterial, AirEntrainmentManner } from '../../../rules/model/acts.ts';
import type { Force } from '../../../rules/model/clause.ts';
import type { ActFact } from '../../../rules/model/fact.ts';
import { holds, isAside, type Statement } from '../statement.ts';
import { actFact, allWords, mainWords, sentenceWords, words } from './act.ts';

const calcium = words('calcium chloride', 'cacl2', 'CaCl2');
const accelerators = words(
  'accelerator',
  'accelerating admixture',
  'accelerators',
  'accelerating',
  'accelerate set',
  'set accelerator',
);
const free = words(
  'non chloride',
  'nonchloride',
  'non-chloride',
  'chloride free',
  'chloride-free',
  'nitrate',
  'nitrite',
  'formate',
  'thiocyanate',
  'without chlorides',
  'no chlorides',
  'free of chlorides',
  'not containing chlorides',
  'containing no chlorides',
  'non chloride accelerator',
);
const chloride = words(
  'chloride accelerator',
  'chloride bearing',
  'chloride-bearing',
  'containing chloride',
  'containing chlorides',
  'chlorides',
  'chloride based',
  'chloride-based',
  'chloride salts',
);
const notAdmixture = words(
  'dust',
  'haul road',
  'de-icing',
  'deicing',
  'deicer',
  'de-icer',
  'melt',
  'ice',
  'snow',
  'brine',
  'subgrade',
  'base course',
  'walks after',
  'chloride ion',
  'water soluble',
  'chloride content',
  'spread',
);

export function accelerator(statement: Statement): ActFact[] {
  if (['references', 'related', 'definitions'].includes(statement.region) || holds(notAdmixture, statement)) return [];
  const material = materialOf(statement);
  return material ? [actFact('accelerator', { verb: 'add', material }, statement)] : [];
}

function materialOf(statement: Statement): AcceleratorMaterial | undefined {
  const isCalcium = holds(calcium, statement);
  const isAccelerator =
    holds(accelerators, statement) ||
    (/\btype [ce]\b/.test(allWords(statement)) && /\bc494|accelerat|admixture/.test(sentenceWords(statement)));
  if (
    !isCalcium &&
    !isAccelerator &&
    !(holds(chloride, statement) && /\badmixture|admixtures\b/.test(allWords(statement)))
  )
    return undefined;
  if (isCalcium) return 'calcium chloride';
  if (/\bneed not be (?:free of|non ?-? ?chlorides?|chloride ?-? ?free)\b/.test(allWords(statement))) return 'chloride';
  // "accelerators: Type C or E, non-chloride" may say so anywhere in its sentence.
  if (holds(free, statement, statement.sentence)) return 'non-chloride';
  return holds(chloride, statement) ? 'chloride' : 'unspecified';
}

const entrain = words(
  'air entrained',
  'air-entrained',
  'air entraining',
  'air-entraining',
  'air entrainment',
  'entrained air',
  'entrain air',
  'air entrainer',
  'air-entraining admixture',
  'air-entraining agent',
  'air entraining cement',
  'air entrain',
  'non air entrained',
  'non-air-entrained',
  'entrain',
  'type ia',
  'type iia',
  'type iiia',
  'air agent',
  'with air',
  'nonair entrained',
  'air may be omitted',
  'air may be left out',
  'air can be omitted',
  'air can be left out',
  'omit air',
  'omit the air',
  'leave out the air',
  'leave the air out',
  'air is optional',
  'air optional',
);
const option =
  /\b(?:if (?:desired|needed|wanted)|as (?:needed|desired|necessary)|at (?:the )?(?:contractor|supplier|producer)'?s? option|optional|where (?:desired|convenient)|option)\b/;
const byTable =
  /\b(?:where (?:required|specified|indicated|scheduled|called)|when (?:required|specified)|as (?:required|scheduled|indicated))\b(?! (?:by|in)\b)/;
const other =
  /\b(?:other than|except (?:those|one|an?)|conforming to|at the (?:site|truck)|without approval|adjust\w*|dosage|site once|bring air into range)\b/;

/** "Concrete with air below 4.5 percent is not acceptable" is no ban on air. */
const refusesTooLittle = ({ predication, values }: Statement): boolean =>
  predication.force === 'ban' && values.some(({ owner, bounded }) => owner?.id === 'air' && bounded);

export function airEntrainment(statement: Statement): ActFact[] {
  if (['references', 'related', 'definitions', 'submittals'].includes(statement.region)) return [];
  const { tokens, predication } = statement;
  const main = mainWords(statement);
  const where = tokens.findIndex(
    (token, at) =>
      predication.from <= at && at < predication.to && /^(?:entrain|air)$/.test(token.stem) && !isAside(statement, at),
  );
  // "NAE = non-air-entrained" explains a word; the row that uses it rules.
  if (legend.test(main)) return [];
  const underAir = statement.block.kind === 'row' && /\bair\b/.test(statement.header);
  if (underAir && option.test(main))
    return [actFact('air-entrainment', { verb: 'entrain', manner: 'as needed' }, statement, 'permit')];
  const cell = underAir && /^(?:none|no|non|nae)/.test(main);
  if (!cell && (!holds(entrain, statement) || where < 0)) return [];
  if (refusesTooLittle(statement)) return [];
  // "A trowel finish shall not be given to air-entrained concrete" forbids the trowel.
  if (
    predication.force === 'ban' &&
    /\b(?:trowel|finish|broom|sealer|water)\w*\b/.test(main) &&
    !/\b(?:no|not|without) (?:\w+ )?(?:air|entrain)/.test(main)
  )
    return [];
  const force = cell || isNegated(main) ? ruledOut(predication.force) : ordered(predication.force);
  const manner = mannerOf(statement);
  if (force !== 'waive') return [actFact('air-entrainment', { verb: 'entrain', manner }, statement, force)];
  // What need not be entrained is left to choice; what may be left out is, whatever number stands beside it.
  const verb = leftOut.test(main) && !notExposed.test(sentenceWords(statement)) ? 'omit' : 'entrain';
  return [actFact('air-entrainment', { verb, manner: manner === 'plain' ? 'as needed' : manner }, statement, 'permit')];
}

const isNegated = (main: string): boolean =>
  /\bnon ?-? ?air\b|\bnot (?:be )?air ?-? ?entrain|\bnonair\b/.test(main) ||
  /\bno (?:entrained air|air ?-? ?entrain\w*)/.test(main);

const ruledOut = (force: Force): Force => (force === 'permit' || force === 'waive' ? force : 'ban');
const ordered = (force: Force): Force => (force === 'state' ? 'require' : force);

const legend = /^\W*\w{1,5} (?:=|means|denotes|stands for) /;
const leftOut = /\b(?:omit\w*|left out|leave out|leave the air out)\b/;
const notExposed = /\b(?:interior|indoors?|inside|not exposed|f0|footings?|foundations?|heated|below grade)\b/;

function mannerOf(statement: Statement): AirEntrainmentManner {
  const sentence = sentenceWords(statement);
  if (other.test(sentence)) return /site|truck|adjust|approval|range/.test(sentence) ? 'site adjustment' : 'material';
  if (option.test(sentence)) return 'as needed';
  if (byTable.test(sentence)) return /class|table|schedule/.test(sentence) ? 'where required' : 'as needed';
  if (
    statement.region === 'materials' &&
    /\b(?:astm|c260|admixture|agent)\b/.test(sentence) &&
    !/\b(?:concrete|shall|provide|use|walk|slab)\b/.test(sentence)
  )
    return 'material';
  return 'plain';
}
