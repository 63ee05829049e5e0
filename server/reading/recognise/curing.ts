/** Curing as something done: the duty to cure, and the methods. */
import type { CuringManner } from '../../../rules/model/acts.ts';
import type { ActFact } from '../../../rules/model/fact.ts';
import { Phrases } from '../phrases.ts';
import { holds, type Statement, said } from '../statement.ts';
import { curingMethodWords } from '../words/curing-methods.ts';
import { actFact, allWords, mainWords, sentenceWords, words } from './act.ts';

const methods = new Phrases(curingMethodWords);

const otherTrades = words(
  'sealant',
  'sealants',
  'epoxy',
  'mortar',
  'grout',
  'paint',
  'adhesive',
  'caulk',
  'membrane waterproofing',
  'asphalt',
  'specimens',
  'cylinders',
  'cylinder',
  'sealer',
  'patch',
  'coating',
  'test specimens',
  'cure box',
  'bonding agent',
  'resin',
  'field cured',
  'laboratory cured',
  'joint filler',
  'beams',
  'densifier',
  'hardener',
);
const vague =
  /\b(?:adequate\w*|properly|proper|suitabl\w*|sufficient\w*|as (?:required|needed|necessary|directed)|as long as|required time|for the curing period|good practice|well|satisfactor\w*|until hard\w*|until sufficiently)\b/;
const laidOn = words(
  'cover',
  'apply',
  'spray',
  'lay',
  'use',
  'keep',
  'kept',
  'place',
  'cure',
  'curing',
  'wrap',
  'maintain',
  'spread',
  'leave',
  'with',
  'saturate',
  'moist cure',
  'wet cure',
  'moist-cure',
);
const silent = new Set([
  'submittals',
  'references',
  'related',
  'definitions',
  'repair',
  'joints',
  'delivery',
  'quality',
]);

export function curing(statement: Statement): ActFact[] {
  if (
    silent.has(statement.region) ||
    isOther(statement) ||
    (holds(elsewhere, statement) && !/\bcur(?:e|ed|ing)\b/.test(allWords(statement)))
  )
    return [];
  const main = allWords(statement);
  // "No compound between November and April" forbids it for a season.
  if (statement.predication.force === 'ban' && months.test(main)) return [];
  // Products in Part 2 cure nothing until Part 3 orders it.
  if (statement.region === 'materials' && !/\bcure\b/.test(main)) return [];
  const facts: ActFact[] = [];
  if (isDuty(statement))
    facts.push(actFact('curing', { verb: 'cure', manner: dutyOf(statement), ...startOf(statement) }, statement));
  facts.push(...methodsOf(statement, main));
  return facts;
}

const isOther = (statement: Statement): boolean =>
  holds(otherTrades, statement) &&
  !/\b(?:slab|walk|concrete|pavement|flatwork|surface|curing compound)\b/.test(mainWords(statement));

/** "Cure …", "keep moist …", "cover with wet burlap …"; "after curing" and "has been cured" only time something else. */
function isDuty(statement: Statement): boolean {
  const main = mainWords(statement);
  if (timing.test(main)) return false;
  if (/\bcur(?:e|ed|es|ing)\b/.test(main))
    return (
      !/\b(?:submit|test|record|payment|traffic|open)\w*\b/.test(main) ||
      /\bcures?\b|\bcuring (?:shall|of|for)\b/.test(main)
    );
  return (
    /\b(?:keep|kept|cover\w*|maintain\w*)\b/.test(main) &&
    (/\b(?:moist|damp|wet|burlap|polyethylene|plastic)\b/.test(main) ||
      (statement.region === 'curing' && !/\bcover (?:joints|drains|opening|plates?)\b/.test(main)))
  );
}

const timing =
  /\b(?:has been|have been|is|are|field|laboratory|lab|standard)(?: |-|- | -)*cured\b|\b(?:until|after|during) (?:the )?cur|\bdays? of cur|\bremov\w* (?:the )?cur/;

function dutyOf(statement: Statement): string {
  const sentence = sentenceWords(statement);
  if (/\bbasic curing|curing type 1\b/.test(sentence)) return 'basic';
  if (/\badditional curing|curing type 2\b/.test(sentence)) return 'additional';
  if (/\bextended wet|curing type 3\b/.test(sentence)) return 'extended wet';
  return vague.test(sentence) ? 'vague' : 'plain';
}

const starts =
  /\b(?:as soon as|immediately|begin\w*|start\w*|right after|within \d|once (?:no|the)|when the (?:sheen|texture|surface)|after (?:finishing|brooming|texturing|final))\b/;

const startOf = (statement: Statement): { time?: string } => {
  const sentence = sentenceWords(statement);
  const found = starts.exec(sentence);
  return found ? { time: sentence.slice(found.index, found.index + 60) } : {};
};

function methodsOf(statement: Statement, main: string): ActFact[] {
  if (/\b(?:remov\w*|drag\w*|soak (?:it|them) up|blot\w*|dry burlap)\b/.test(mainWords(statement))) return [];
  const { tokens, predication } = statement;
  const found = methods
    .in(tokens, predication.from, predication.to)
    .filter(
      (each) => !isTaken(statement, each.from, each.meaning) && !/^(?:sacks?)$/.test(tokens[each.from]?.text ?? ''),
    );
  return found.flatMap((each): ActFact[] => {
    if (!isLaid(statement, each.meaning, main)) return [];
    const manner = each.meaning;
    return [{ kind: 'curing-method', ...said(statement, each), act: { verb: 'cure', manner, ...startOf(statement) } }];
  });
}

const months = /\b(?:january|february|march|april|june|july|august|september|october|november|december)\b/;

const isAboutCuring = (statement: Statement): boolean =>
  statement.region === 'curing' ||
  /\bcur(?:e|ing)\b/.test(statement.heading) ||
  /\bcur(?:e|ed|ing)\b/.test(sentenceWords(statement));

/** Bare "water" and "compound" are methods only as an item of a list of methods. */
function isLaid(statement: Statement, manner: CuringManner, main: string): boolean {
  const inCuring = isAboutCuring(statement);
  const only = statement.tokens.length <= 8;
  const listItem = only && inCuring;
  if (manner === 'fog' && /\babove the slab|\bin(?:to)? the air\b|\bthe air above\b/.test(main)) return false;
  if (manner === 'listed') return /\bcur(?:e|ed|ing)\b/.test(main);
  if (manner === 'approved') return /\bcur(?:e|ed|ing)\b/.test(sentenceWords(statement));
  if (/^water$|^compound$/.test(main.trim())) return inCuring;
  if (manner === 'water' && !/\bpond (?:the|water)|\b(?:moist\w*|wet|damp|ponding|sprinkl\w*|soaker)\b/.test(main))
    return listItem && inCuring && statement.block.parent !== undefined;
  if (manner === 'insulated cover') return inCuring || /\bcur/.test(sentenceWords(statement));
  if (manner === 'compound' && statement.region === 'materials') return true;
  return listItem || holds(laidOn, statement) || inCuring;
}

/** "before the compound", "compaction compound", "joint compound": not a method of this statement. */
const elsewhere = words(
  'subgrade',
  'base',
  'subbase',
  'forms',
  'fill',
  'ground',
  'soil',
  'reinforcement',
  'stockpile',
  'mixing water',
  'sod',
  'turf',
  'lawn',
  'seed',
  'topsoil',
  'shrubs',
  'mulch',
  'plants',
  'subgrades',
  'aggregates',
  'bed',
);

const isTaken = ({ tokens }: Statement, at: number, manner: CuringManner): boolean =>
  (manner === 'compound' &&
    /^(?:joint|patching|ammonium|chemical|organic|nitrogen|glazing|release|bituminous|levelling|leveling|caulking)$/.test(
      tokens[at - 1]?.text ?? '',
    )) ||
  (manner === 'fog' && /^(?:forms|reinforcement|above|into)$/.test(tokens[at + 1]?.text ?? ''));
