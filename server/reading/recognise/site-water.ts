/** Water added to the load at the site: held to the design water and once before discharge, or not. */
import type { ActFact } from '../../../rules/model/fact.ts';
import { holds, type Statement } from '../statement.ts';
import { actFact, allWords, mainWords, sentenceWords, words } from './act.ts';

const place = words(
  'at the site',
  'at site',
  'site',
  'truck',
  'trucks',
  'mixer',
  'load',
  'loads',
  'jobsite',
  'job site',
  'slump',
  'drum',
  'discharge',
  'driver',
  'drivers',
  'point of placement',
  'after batching',
  'workability',
  'withheld',
  'on site',
  'in transit',
  'retemper',
  'retempering',
  'temper',
  'remixed',
  'plant',
  'field',
  'ticket',
  'delivery',
  'consistency',
  'pumping',
  'help pumping',
  'pumpability',
  'pumped',
);
const adding = words(
  'add',
  'added',
  'addition',
  'temper',
  'retemper',
  'retempering',
  'introduce',
  'tempering',
  'additional water',
  'adding',
);
const others = words(
  'surface',
  'slab surface',
  'subgrade',
  'forms',
  'curing',
  'admixture only',
  'record the',
  'fog',
  'grout',
  'mortar',
  'plants',
  'hardener',
  'face',
);
const limited =
  /\b(?:withheld|design water|maximum w|w ?\/ ?c|water ?- ?cement|not exceed|not beyond|within the|up to the|approved mix|specified w|no more than|design mix|mix design|mixture design|c94)\b/;
const once =
  /\b(?:once|one time|one-time|single|before discharge|prior to discharge|before any concrete is discharged|before unloading|one addition|only one|at the start|(?:as (?:provided|permitted|allowed) (?:in|by)|in accordance with) astm c ?-? ?94)\b/;

export function siteWater(statement: Statement): ActFact[] {
  if (['references', 'related', 'submittals'].includes(statement.region)) return [];
  const main = mainWords(statement);
  const tempers = /\b(?:re ?-? ?)?temper(?:ed|ing|s)?\b/.test(main);
  if (!tempers && (!/\bwater\b/.test(main) || !holds(adding, statement) || !holds(place, statement))) return [];
  if (holds(others, statement) && !/truck|mixer|load|slump|drum|site/.test(main)) return [];
  if (/\b(?:submit|ticket shows?|record)\w*\b/.test(main) && !/\badd water|may be added|be added\b/.test(main))
    return [];
  if (/\bwater reduc\w+|\bwater-reduc/.test(main) && !/\badd(?:ed)? water|water may\b/.test(main)) return [];
  if (/\b(?:ticket|slip|record|amount of water|quantity)\b/.test(main) && statement.predication.force !== 'permit')
    return [];
  const all = sentenceWords(statement);
  // A limit that counts the water added later is its control.
  if (
    /\b(?:counting|including|inclusive of|counts?|includes?) (?:\w+ ){0,4}water\b/.test(all) &&
    !/\badd water\b|\bmay be added\b/.test(all)
  )
    return [];
  const manner = limited.test(all) && once.test(all) ? 'controlled' : 'uncontrolled';
  return [
    actFact(
      'site-water',
      {
        verb: 'add',
        material: 'water',
        object: 'load',
        manner,
        time: /discharge/.test(allWords(statement)) ? 'before discharge' : undefined,
      },
      statement,
    ),
  ];
}
