/** Bleed water: waited for, taken off, worked in, or finished over. */
import type { BleedWaterVerb } from '../../../rules/model/acts.ts';
import type { Force } from '../../../rules/model/clause.ts';
import type { ActFact } from '../../../rules/model/fact.ts';
import { holds, type Statement } from '../statement.ts';
import { actFact, allWords, conditionWords, mainWords, sentenceWords, words } from './act.ts';
import { isHarm } from './refusals.ts';

const bleeding = words(
  'bleed water',
  'bleeding',
  'bleed',
  'sheen',
  'water sheen',
  'free water',
  'free surface water',
  'standing water',
  'surface water',
  'visible water',
  'water is visible',
  'water on the surface',
  'excess water',
  'surface moisture',
  'water has left',
  'water shows',
  'water is present',
  'water stands',
  'wet areas',
  'water rises',
  'moisture rises',
  'cream rises',
  'water is on',
  'wet surface',
  'bled',
  'this moisture',
  'the moisture',
  'this water',
);
const working = words(
  'float',
  'floating',
  'trowel',
  'troweling',
  'finish',
  'finishing',
  'broom',
  'brooming',
  'screed',
  'texture',
  'bull float',
  'finishers',
  'finishing operations',
  'edging',
  'work',
  'edge',
);
const starting = /\b(?:start|begin|commence|initiate)\w*\b/;
const gone =
  /\b(?:gone|goes|disappear\w*|leaves|left|leave|evaporat\w*|ceas\w*|stopp?\w*|absorb\w*|ends?|ended|over|remov\w*|lost|dull|off the|dries|dried|no longer|no free water|no water|without sheen)\b/;
const present =
  /\b(?:present|visible|while|persists?|remains?|stands?|regardless|whether or not|on the surface|still|wet)\b/;
const inward =
  /\b(?:work|works|worked|working|trowel\w*|float\w*|finish\w*|rub\w*|press\w*|push\w*|tamp\w*)\b.{0,60}\b(?:into|in|back)\b/;

export function bleedWater(statement: Statement): ActFact[] {
  if (isHarm(statement)) return [];
  if (
    /joint|subgrade|base course|trench|excavation|drain|forms? of/.test(mainWords(statement)) &&
    !holds(working, statement)
  )
    return [];
  const verb = verbOf(statement);
  if (!verb) return [];
  return [actFact('bleed-water', { verb }, statement, forceOf(verb, statement))];
}

function verbOf(statement: Statement): BleedWaterVerb | undefined {
  const all = allWords(statement);
  if (!holds(bleeding, statement)) return startsByClock(statement) ? 'start by time' : undefined;
  const conditions = conditionWords(statement);
  const main = mainWords(statement);
  if (
    inward.test(main) &&
    /\b(?:bleed|water|sheen|moisture)\b/.test(all) &&
    !/\bin (?:rain|the|any|exterior)\b/.test(main.match(inward)?.[0] ?? '')
  )
    return 'work in';
  if (
    /\b(?:drag|squeegee|pull off|blot|take off|skim|vacuum)\w*\b|\bremov\w*\b/.test(main) &&
    !/\bdo not remov/.test(main)
  )
    return 'remove';
  const isStaying = /\b(?:not|never) (?:\w+ )?(?:leave|gone|go|disappear|evaporate|dry|left)\b/.test(all);
  const isGone =
    gone.test(conditions) || (gone.test(all) && /\b(?:wait|until|allow|let|after|when|once|till|before)\b/.test(all));
  if (
    isGone &&
    !isStaying &&
    (holds(working, statement) ||
      /\b(?:wait|allow|let|delay|not close|seal)\w*\b/.test(all) ||
      /finish/.test(statement.heading))
  )
    return 'wait';
  if (holds(working, statement) && (isStaying || present.test(all))) return 'finish over';
  return undefined;
}

/** "Start power floating 45 minutes after placing": the clock does not see the sheen. */
function startsByClock(statement: Statement): boolean {
  const sentence = sentenceWords(statement);
  if (!starting.test(mainWords(statement)) || !/\b(?:float|trowel|finish|broom)\w*\b/.test(mainWords(statement)))
    return false;
  if (/sheen|bleed|footprint|free water|water|stiff|set\b|bear/.test(sentence)) return false;
  return statement.sentenceValues.some(
    ({ measure, from, to }) =>
      measure.dimension === 'duration' &&
      statement.predication.from <= from &&
      to <= statement.predication.to &&
      /^after (?:placing|placement|pouring|screeding|strike)/.test(
        statement.tokens
          .slice(to, to + 2)
          .map(({ text }) => text)
          .join(' '),
      ),
  );
}

/** "Do not float until the sheen has gone" orders the wait; "do not finish while water is there" stays a ban of the harm. */
function forceOf(verb: BleedWaterVerb, { predication }: Statement): Force {
  return verb === 'wait' && predication.force === 'ban' ? 'require' : predication.force;
}
