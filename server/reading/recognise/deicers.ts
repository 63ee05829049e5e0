/** De-icers: whether they will be used, what may be spread, and how long they stay off. */
import type { DeicerMaterial } from '../../../rules/model/acts.ts';
import type { ActFact, NamedFact, ValueFact } from '../../../rules/model/fact.ts';
import { Phrases } from '../phrases.ts';
import { holds, isAside, type Statement, said, trimmed } from '../statement.ts';
import { actFact, allWords, mainWords, sentenceWords, words } from './act.ts';
import { valueFact } from './property.ts';
import { winterCare } from './winter-care.ts';

const materials = new Phrases<DeicerMaterial>([
  [
    'de-icer',
    [
      'de-icer',
      'deicer',
      'de-icing chemical',
      'deicing chemical',
      'de-icing salt',
      'deicing salt',
      'de-icing agent',
      'deicing agent',
      'ice melter',
      'ice melting chemical',
      'melting agent',
      'salt',
      'road salt',
      'rock salt',
      'brine',
      'de-icing',
      'deicing',
      'snow melting chemical',
      'ice control chemical',
      'winter salt',
      'de-icing product',
      'salting',
      'salt brine',
      'melting chemical',
      'de-icing material',
      'snow melt chemical',
    ],
  ],
  ['sodium chloride', ['sodium chloride']],
  ['calcium chloride', ['calcium chloride']],
  ['magnesium chloride', ['magnesium chloride']],
  ['ammonium sulfate', ['ammonium sulfate', 'ammonium sulphate']],
  ['ammonium nitrate', ['ammonium nitrate', 'ammonium compounds', 'ammonium']],
  ['fertilizer', ['fertilizer', 'fertiliser', 'garden fertilizer', 'lawn fertilizer']],
  ['acid', ['acidic de-icer', 'acid based de-icer', 'acid product']],
  ['urea', ['urea']],
]);

const notDeicing = words(
  'salt finish',
  'rock salt finish',
  'rock-salt finish',
  'salt shed',
  'salt-shed',
  'salt resistant',
  'salt-resistant',
  'salt texture',
  'salt glazed',
  'salt barn',
  'salt storage',
  'free of salt',
  'salt water',
  'sea salt',
  'salts of',
  'soluble salts',
  'salt content',
  'efflorescence',
  'admixture',
  'admixtures',
  'accelerator',
  'accelerating',
  'antifreeze',
  'planting',
  'turf',
  'lawn',
  'seeding',
  'topsoil',
  'dust control',
  'dust on',
  'salt treatment',
  'rock salt texture',
  'warehouse',
  'storage room',
  'salts from',
  'hygroscopic',
  'mixing water',
  'mixed with',
  'hardener',
  'in the mix',
  'eaten',
  'old steps',
  'mix with',
  'in concrete',
);
const spreading =
  /\b(?:appl\w*|us(?:e|ed|ing)|spread\w*|put|allow\w*|permit\w*|keep|kept|withhold|salt(?:ed|ing)|treat\w*|melt\w*|sprinkl\w*|expos\w*|hold|place|begin|start|works|serve|accept\w*|off)\b/;
const young =
  /\b(?:first winter|until|before|for the first|during the first|day|month|season|psi|mpa|new concrete|young|year|winter after|following winter)\b/;

export function deicers(statement: Statement): (ActFact | NamedFact | ValueFact)[] {
  if (['references', 'related', 'definitions'].includes(statement.region)) return [];
  return [
    ...exposure(statement),
    ...uses(statement),
    ...withheldUnderHead(statement),
    ...holdOff(statement),
    ...winterCare(statement),
  ];
}

/** Materials that the statement itself is about; what only times it ("before salt is spread") is not here. */
const found = (statement: Statement): DeicerMaterial[] => {
  const { tokens, predication } = statement;
  return materials
    .in(tokens, predication.from, predication.to)
    .filter(({ from }) => !isAside(statement, from))
    .map(({ meaning }) => meaning);
};

/** "will receive de-icing salts", "salted daily from November", "no de-icers will be used here". */
function exposure(statement: Statement): NamedFact[] {
  if (holds(notDeicing, statement)) return [];
  const all = allWords(statement);
  const chemicals = found(statement).filter((material) => material === 'de-icer' || material.endsWith('chloride'));
  const salted =
    /\b(?:salted|de ?-? ?iced|under salts?|salts? (?:are|is|will be) (?:spread|applied|used)|salt (?:splash|spray)|carried in|tracked|we (?:will )?(?:start )?salt(?:ing)?|salt (?:them|it|these))\b/.test(
      all,
    );
  if (chemicals.length === 0 && !salted) return [];
  const { force } = statement.predication;
  const never =
    /\b(?:no|not|never|without|neither|won't)\b/.test(all) &&
    /\b(?:de ?-? ?ic\w*|salt\w*|brine|chemicals?)\b/.test(all);
  if (young.test(sentenceWords(statement)) && (force === 'ban' || never)) return [];
  const exposed =
    /\b(?:expos\w*|receiv\w*|salted|subject\w*|reach\w*|under|spread\w*|appl\w*|will (?:not )?(?:be )?us\w*|won't (?:be )?us\w*|treated|splash|spray|carried|brine|in contact|direct application)\b/.test(
      all,
    );
  const describes =
    force === 'state' ||
    salted ||
    /\b(?:receiv\w*|expos\w*|subject\w*)\b/.test(all) ||
    ((statement.predication.addressee === 'owner' || /\bowner won't\b/.test(all)) && exposed) ||
    0 < statement.named.elements.length;
  if (!exposed || !describes) return [];
  const value = never ? 'no' : 'yes';
  return [{ kind: 'deicers', ...said(statement, trimmed(statement.tokens, statement.predication), 'state'), value }];
}

/** What is spread, or forbidden. */
function uses(statement: Statement): ActFact[] {
  const all = allWords(statement);
  const harmful = found(statement).filter((material) => /ammonium|fertilizer|acid/.test(material));
  if (holds(notDeicing, statement) || (!spreading.test(all) && statement.predication.force !== 'ban')) return [];
  const kinds = new Set(found(statement));
  if (0 < harmful.length && !isIceControl(statement)) return [];
  const time = /\bfirst winter|first season|winter after\b/.test(all)
    ? 'first winter'
    : young.test(all)
      ? all.slice(0, 80)
      : undefined;
  return [...kinds]
    .filter((material) => material !== 'calcium chloride' || isIceControl(statement))
    .map((material) =>
      actFact('deicer-use', { verb: 'spread', material, ...(time && { time }) }, statement, useForce(statement)),
    );
}

/** "Keep salts off" forbids; a noun phrase in a list ("sodium chloride the only de-icer") permits. */
const useForce = (statement: Statement) =>
  /\b(?:keep|kept|hold)\b.{0,40}\boff\b|\boff\b.{0,30}\buntil\b|withhold/.test(allWords(statement))
    ? ('ban' as const)
    : statement.predication.force === 'state'
      ? ('permit' as const)
      : statement.predication.force;

const isIceControl = (statement: Statement): boolean =>
  /\b(?:ice|snow|melt\w*|de ?-? ?ic\w*|salt|winter|slip\w*|walk|steps|frost|freez\w*|entrance|°|plaza|apron|platform|ramp|run out)\b/.test(
    `${sentenceWords(statement)} ${statement.heading}`,
  ) &&
  !/\b(?:plant\w*|lawn|seed\w*|turf|sod|soil|tree\w*|shrub\w*)\b/.test(
    `${sentenceWords(statement)} ${statement.heading}`,
  );

/** Under "De-icers", "none until spring" and "keep off for the first winter" speak of what the heading names. */
function withheldUnderHead(statement: Statement): ActFact[] {
  const main = mainWords(statement);
  const { tokens, sentence } = statement;
  const isNamed = 0 < materials.in(tokens, sentence.from, sentence.to).length;
  if (!headed.test(statement.heading) || isNamed || !pronouns.test(main)) return [];
  if (statement.predication.force !== 'ban' && !/\bnone\b/.test(main)) return [];
  const time = young.test(sentenceWords(statement)) ? 'first winter' : undefined;
  return [actFact('deicer-use', { verb: 'spread', material: 'de-icer', ...(time && { time }) }, statement, 'ban')];
}

const headed = /\b(?:de ?-? ?icers?|de ?-? ?icing|salts?|salting|ice control|melting agents?)\b/;
const pronouns =
  /\bnone\b|\b(?:apply|use|spread|put|applied|used) (?:any|them|it|these|such)\b|\b(?:keep|kept|hold)\b(?: \w+)? off\b|\b(?:they|it|them|these)\b/;

/** A ban of de-icers for a stated time, strength or drying. */
function holdOff(statement: Statement): ValueFact[] {
  const { predication } = statement;
  const sentence = sentenceWords(statement);
  if (
    holds(notDeicing, statement, statement.sentence) ||
    !/\b(?:de ?-? ?ic\w*|salts?|brine|melting|chlorides?)\b/.test(sentence)
  )
    return [];
  const keeps = /\b(?:no|not|never|off|until|before|withhold|hold|after|wait|delay|avoid|when)\b/.test(sentence);
  if (!keeps || predication.from !== (statement.sentence.predications[0]?.from ?? 0)) return [];
  return statement.sentenceValues
    .filter(
      ({ measure, owner }) =>
        (measure.dimension === 'duration' && owner?.id !== 'curing' && owner?.id !== 'drying') ||
        measure.dimension === 'stress',
    )
    .map((value) => valueFact('deicer-hold-off', value, statement));
}
