/** Water put on the fresh surface, ordered, allowed or forbidden; water for anything else is not ours. */
import type { ActFact } from '../../../rules/model/fact.ts';
import { holds, type Statement } from '../statement.ts';
import { actFact, allWords, mainWords, sentenceWords, words } from './act.ts';

const water = words('water', 'hose', 'wet', 'moisture');
const putting = words(
  'add',
  'addition',
  'apply',
  'application',
  'use',
  'put',
  'throw',
  'splash',
  'brush',
  'spray',
  'sprinkle',
  'mist',
  'fog',
  'flick',
  'dash',
  'pour',
  'introduce',
  'finish with',
  'lubricate',
  'bring',
  'finishing water',
  'work with',
  'place',
);
const surfaces = words(
  'surface',
  'slab',
  'face',
  'finish',
  'concrete',
  'slipped face',
  'tops',
  'flatwork',
  'paste',
  'walk',
  'sidewalk',
  'steps',
  'apron',
  'ramp',
  'pavement',
  'curb',
  'plaza',
  'treads',
  'finishing',
  'mortar',
  'top',
  'tight areas',
  'exterior slabs',
);
/** Verbs that need no water beside them: "sprinkle the walk", "you may dampen the slab". */
const wetting =
  /(?:^|[,;] |\b(?:may|shall|must|can|should|will|to|be|not|never|and|or|you|then|no|nor|is|are|lightly|finishers) )(?:lightly |be )?(?:sprinkl(?:e|ed|ing)|spray(?:ed|ing)?|(?<!\b(?:be|is|are) )wet(?!ted)|wett(?:ed|ing)|dampen(?:ed|ing)?|moisten(?:ed|ing)?|mist(?:ed|ing)?|re ?-? ?wet(?:ted|ting)?|lubricate[d]?)\b(?! (?:burlap|mat|cover|cure|curing|screed|sheet|sand|coverings|covering|weather|broom|brush|spell|sawing|saw|earth))/;

const elsewhere = words(
  'subgrade',
  'sub grade',
  'base',
  'subbase',
  'cinders',
  'fill',
  'bed',
  'sand bed',
  'ground',
  'soil',
  'forms',
  'formwork',
  'reinforcement',
  'rebar',
  'reinforcing',
  'embedments',
  'stockpile',
  'stone pile',
  'aggregates',
  'brick',
  'masonry',
  'joint',
  'joints',
  'mixer',
  'truck',
  'drum',
  'load',
  'batch',
  'plants',
  'lawn',
  'saw',
  'sawing',
  'blade',
  'slurry',
  'drain',
  'test',
  'existing concrete',
  'old concrete',
  'bonding',
  'patch',
  'repair',
  'dust control',
  'haul road',
  'mixing water',
  'ice',
  'slump',
  'stripped',
  'wall',
  'substrate',
  'hardened',
  'cold joint',
  'cement ratio',
  'mixing',
  'site to restore',
  'ready mix',
  'wheels',
  'concrete truck',
  'gallons',
  'discharge',
);
const otherLiquid = words(
  'compound',
  'sealer',
  'silane',
  'retarder',
  'retardant',
  'monomolecular',
  'solution',
  'release',
  'hardener',
  'densifier',
  'paint',
  'primer',
  'oil',
  'chemical',
  'chemicals',
  'brine',
  'salt',
  'cement',
  'sand',
  'color',
  'coating',
  'deicer',
  'fertilizer',
);
const forCuring = words(
  'cure',
  'curing',
  'burlap',
  'mats',
  'covers',
  'covering',
  'blankets',
  'cotton',
  'hay',
  'straw',
  'ponding',
  'soak',
  'soaker',
  'saturated',
  'continuously',
  'polyethylene',
  'after final set',
  'final set',
);
const intoAir = words(
  'above the slab',
  'into the air',
  'above the surface',
  'above the deck',
  'in the air',
  'over the slab',
  'air above',
  'humidity',
);
const forFinishing = words(
  'finishing',
  'float',
  'trowel',
  'broom',
  'ahead of',
  'ease',
  'aid',
  'assist',
  'workability',
  'close',
  'texture',
  'help',
  'finish',
  'slick',
  'smooth',
  'stiffens',
  'sets too fast',
  'set too fast',
  'fast',
);
const later =
  /\b(?:finishing (?:is|has been) (?:over|done|complete)|after (?:final set|finishing|brooming|hardening)|has (?:set|hardened)|hard enough|set hard|when hard)\b/;

export function surfaceWater(statement: Statement): ActFact[] {
  if (holds(otherLiquid, statement) && !/\bwater\b/.test(allWords(statement))) return [];
  const isBan = statement.predication.force === 'ban';
  const broom = wettedBroom(statement);
  if (broom) return [broom];
  if (!touchesSurface(statement)) return [];
  if (holds(elsewhere, statement) || (!isBan && isHarmless(statement))) return [];
  return [actFact('surface-water', { verb: 'wet', object: 'surface', material: 'water' }, statement)];
}

function touchesSurface(statement: Statement): boolean {
  const isBan = statement.predication.force === 'ban';
  const main = mainWords(statement);
  const hasSurface = holds(surfaces, statement) || 0 < statement.named.elements.length;
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
  return /\bkeep|\bkept|\bmaintain/.test(mainWords(statement)) && !finishing;
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

function wettedBroom(statement: Statement): ActFact | undefined {
  const main = mainWords(statement);
  const dipped =
    /\b(?:dip|wet|dampen|moisten|rinse)\w* (?:the |a |each |his |their )?(?:broom|brush)/.test(main) &&
    !/clean/.test(main);
  if (!dipped && !holds(brooms, statement)) return undefined;
  return actFact('surface-water', { verb: 'wet', object: 'broom', material: 'water', tool: 'broom' }, statement);
}
