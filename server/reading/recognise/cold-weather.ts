/** Cold weather: triggers, protection, heat, frozen base, cooling, plan and records; and protection as a value. */
import type { ColdWeatherVerb } from '../../../rules/model/acts.ts';
import type { ActFact, ValueFact } from '../../../rules/model/fact.ts';
import { convert, type Unit } from '../../../rules/model/quantity.ts';
import { holds, type Statement } from '../statement.ts';
import { actFact, allWords, sentenceWords, words } from './act.ts';
import { valueFact } from './property.ts';

const cold = words(
  'cold',
  'cold weather',
  'freezing',
  'freeze',
  'frost',
  'frozen',
  'snow',
  'ice',
  'winter',
  'frosty',
  'below freezing',
  'freezing weather',
  'low temperatures',
  'sleet',
);
const otherTrades = words(
  'mortar',
  'masonry',
  'asphalt',
  'sealant',
  'paint',
  'coating',
  'roofing',
  'brick',
  'grout',
  'landscape',
  'planting',
  'pipe',
  'adhesive',
  'membrane',
  'sod',
  'snow removal',
  'snow melt',
  'de-icing',
  'deicing',
  'deicer',
  'de-icer',
  'salt',
  'freeze-thaw',
  'freeze and thaw',
  'freezing and thawing',
  'freeze/thaw',
  'ice machine',
  'frost depth',
  'frost line',
  'thawing',
  'freezer',
  'snowplow',
  'chopped ice',
  'ice is',
  'fertilizer',
  'curing compound storage',
  'snow clearing',
);
const atMostWarm = 52;

export function coldWeather(statement: Statement): ActFact[] {
  if (statement.region === 'references' || statement.region === 'related' || statement.region === 'submittals')
    return [];
  if (holds(otherTrades, statement) && !/place|placing|concret\w+ (?:is|shall)/.test(allWords(statement))) return [];
  const verb = verbOf(statement);
  return verb ? [actFact('cold-weather', { verb, ...(trigger(statement) && { time: 'trigger' }) }, statement)] : [];
}

/** A temperature at which something is to happen, or a date. */
const trigger = (statement: Statement): boolean =>
  statement.sentenceValues.some(
    ({ measure }) =>
      measure.dimension === 'temperature' &&
      convert(measure.min ?? measure.max ?? measure.target ?? 0, measure.unit as Unit, 'degF') <= atMostWarm,
  );

function verbOf(statement: Statement): ColdWeatherVerb | undefined {
  const sentence = sentenceWords(statement);
  const all = allWords(statement);
  if (!isAboutCold(statement)) return undefined;
  if (statement.predication.force === 'ban' && noPlacing.test(all)) return 'place';
  if (
    /\b(?:frozen|frost|ice|snow)\b/.test(all) &&
    /\b(?:base|subgrade|ground|forms|subbase|surface|material|frozen|steel|reinforcement)\w*\b/.test(all) &&
    /\b(?:place|placing|free of|remove|on|thaw)\w*\b/.test(all)
  )
    return 'frozen base';
  if (/\b(?:plan)\b/.test(all) && /\b(?:submit|prepare|provide|cold|follow|keep|written)\w*\b/.test(all)) return 'plan';
  if (/\b(?:record|log|thermometer|measure|read)\w*\b/.test(all) && /temperature/.test(sentence)) return 'record';
  if (
    /\b(?:cool\w*|drop|gradual\w*)\b/.test(all) &&
    /\b(?:24|hour|rate|gradual|exceed|more than|within|degrees?)\b/.test(sentence) &&
    !/cold weather/.test(all)
  )
    return 'cool';
  if (
    /\b(?:protect\w*|insulat\w*|blankets?|enclos\w*|cover\w*|shelter\w*|keep from freezing|prevent\w* (?:from )?freez\w*|not freeze|from freezing)\b/.test(
      all,
    )
  )
    return 'protect';
  if (/\bheat\w*\b/.test(all)) return 'heat';
  if (/\b(?:suitable weather|cold days?|good weather|favou?rable weather|avoid)\b/.test(all) && !trigger(statement))
    return 'avoid';
  if (/\b(?:maintain|hold|keep|remain)\w*\b/.test(all) && trigger(statement)) return 'hold';
  if (
    /\b(?:place|placing|pour\w*|pav(?:e|ing)|placement|concreting|mix\w*|cast\w*|start|work)\b/.test(all) &&
    (trigger(statement) || /\bcold weather|freezing weather|306/.test(sentence))
  )
    return 'place';
  return undefined;
}

/** Named by the sentence, by the heading over it, or by a temperature that the air falls to. */
function isAboutCold(statement: Statement): boolean {
  const sentence = sentenceWords(statement);
  if (/\brain\b/.test(sentence) && !/\b(?:cold|freez\w*|frost|frozen)\b/.test(sentence)) return false;
  if (/\bhot\b/.test(statement.heading.split('|')[0] ?? '')) return false;
  return (
    holds(cold, statement, statement.sentence) ||
    (/cold|winter|freez|frost/.test(statement.heading) && statement.region === 'weather') ||
    (trigger(statement) && falling.test(sentence))
  );
}

const falling =
  /\b(?:below|falls?|drops?|descend\w*|reaches|under|forecast|less|lower|colder|above|rising|and rising)\b/;

/** "Do not place in freezing weather, on frozen ground or when frost is expected" is more than a word about the ground. */
const noPlacing =
  /\b(?:place|placed|placing|pour\w*|pav(?:e|ed|ing)|concreting)\b.*\b(?:freezing (?:weather|temperatures?)|frost is (?:expected|forecast|likely|predicted)|freezing is (?:expected|forecast|likely|predicted))\b/;

/** How long and how warm concrete is protected, and the strength that ends protection. */
export function coldProtection(statement: Statement): ValueFact[] {
  const sentence = sentenceWords(statement);
  if (!/\b(?:freez\w*|frost|protect\w*|cold|insulat\w*|enclosure)\b/.test(sentence) && statement.region !== 'weather')
    return [];
  if (
    /\b(?:de ?-? ?ic\w*|salt\w*|traffic|rain|sun|hot)\b/.test(sentence) ||
    /\bhot\b/.test(statement.heading.split('|')[0] ?? '')
  )
    return [];
  return statement.values
    .filter(
      ({ measure, owner }) =>
        (measure.dimension === 'duration' && owner?.id === 'protection') ||
        (measure.dimension === 'stress' &&
          /\b(?:until|reach\w*|attain\w*|before|gain\w*)\b/.test(sentence) &&
          /\b(?:freez\w*|frost|protect\w*|cold|insulat\w*)\b/.test(sentence)) ||
        (measure.dimension === 'temperature' && owner?.id === 'protection'),
    )
    .map((value) => valueFact('cold-protection', value, statement));
}
