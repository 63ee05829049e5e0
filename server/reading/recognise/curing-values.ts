/** How long, how warm and to what strength concrete is cured, protected and dried. */
import type { ValueFact } from '../../../rules/model/fact.ts';
import { convert, type Unit } from '../../../rules/model/quantity.ts';
import { Phrases } from '../phrases.ts';
import type { Run } from '../run.ts';
import { holds, type Owned, type Statement } from '../statement.ts';
import { property, valueFact } from './property.ts';

const cureWords = new Phrases<true>([
  [
    true,
    [
      'cure',
      'curing',
      'keep moist',
      'keep wet',
      'keep damp',
      'kept moist',
      'kept wet',
      'kept damp',
      'wet burlap',
      'saturated burlap',
      'wet mats',
      'curing compound',
      'polyethylene',
      'curing cover',
      'moist',
      'sheeting',
      'impervious sheet',
      'wet cover',
      'continuously wet',
      'the film',
      'cover with',
      'burlap',
      'covers',
      'sacking',
      'paper',
      'pond',
    ],
  ],
]);
const takeOff = new Phrases<true>([
  [
    true,
    [
      'remove',
      'removal',
      'take off',
      'taken off',
      'lift',
      'strip',
      'leave in place',
      'end',
      'keep in place',
      'remain in place',
      'kept in place',
      'leave',
      'maintain',
      'keep',
    ],
  ],
]);
const covers = new Phrases<true>([
  [
    true,
    ['compound', 'paper', 'cover', 'burlap', 'sheet', 'sheeting', 'film', 'mats', 'curing', 'polyethylene', 'blanket'],
  ],
]);
const highEarly = new Phrases<true>([
  [true, ['high early', 'high early strength', 'type iii', 'high-early-strength', 'type hE']],
]);
const notCuring = new Phrases<true>([
  [
    true,
    [
      'traffic',
      'walk on',
      'walk upon',
      'pedestrians',
      'open to',
      'vehicles',
      'loads',
      'sealant',
      'sod',
      'turf',
      'lawn',
      'seed',
      'sealer',
      'epoxy',
      'mortar',
      'grout',
      'forms',
      'recoat',
      'rain',
      'sampling',
      'cylinder',
      'specimens',
      'caulk',
      'paint',
      'coating',
      'adhesive',
      'deicer',
      'de-icing',
      'salt',
      'salts',
      'form removal',
    ],
  ],
]);

/** Shorter times belong to starting, re-wetting and re-coating. */
const shortestDays = 0.5;

export function curingDuration(statement: Statement): ValueFact[] {
  const found = statement.values
    .filter(({ measure }) => measure.dimension === 'duration')
    .filter((value) => isCuringTime(value, statement));
  const duty = statement.predication.force === 'ban' ? ({ force: 'require' } as const) : {};
  return found.map((value) => valueFact('curing-duration', value, statement, { ...high(statement), ...duty }));
}

const high = (statement: Statement): Partial<ValueFact> => (holds(highEarly, statement) ? { of: 'high-early' } : {});

function isCuringTime(value: Owned, statement: Statement): boolean {
  const { measure } = value;
  const amount = measure.max ?? measure.target ?? measure.min ?? 0;
  if (convert(amount, measure.unit as Unit, 'd') < shortestDays || isLimitOfStart(value, statement)) return false;
  const before = { from: statement.predication.from, to: value.from };
  if (value.conditional) return isTakingOff(value, statement);
  // "do not allow them to dry for a week" is a week of curing.
  if (value.owner?.id === 'drying' && statement.predication.force === 'ban') return true;
  // Under the heading CURING stands too how long nobody walks on it.
  if (value.owner?.id === 'curing') return holds(cureWords, statement) || !holds(notCuring, statement, before);
  // "3 days wet, then compound to 7 days", "in the curing article: at least 7 days".
  const about =
    holds(cureWords, statement) ||
    (statement.region === 'curing' && holds(cureWords, statement, statement.sentence)) ||
    isCuringCell(statement);
  return (
    about &&
    !holds(notCuring, statement, before) &&
    (value.owner === undefined || value.owner.id === 'protection' || !value.owner.ours)
  );
}

const isCuringCell = ({ block, header }: Statement): boolean => block.kind === 'row' && /cur(?:e|ing)/.test(header);

/** "remove the compound after 72 hours" says how long it stays. */
const isTakingOff = (value: Owned, statement: Statement): boolean => {
  const run: Run = { from: statement.predication.from, to: value.from };
  const word = statement.tokens
    .slice(Math.max(run.from, value.from - 4), value.from)
    .some(({ text }) => text === 'after' || text === 'until');
  return (
    word &&
    holds(takeOff, statement, run) &&
    holds(covers, statement, run) &&
    (value.owner?.id === 'curing' ||
      statement.region === 'curing' ||
      holds(cureWords, statement, statement.sentence)) &&
    !holds(notCuring, statement, run) &&
    !/until|after/.test(statement.tokens[value.from - 2]?.text ?? '')
  );
};

/** "within 2 hours of texturing", "every 4 hours", "not later than 20 minutes after" time the start, not the length. */
const isLimitOfStart = (value: Owned, { tokens }: Statement): boolean => {
  const words = tokens
    .slice(Math.max(0, value.from - 3), value.from)
    .map(({ text }) => text)
    .join(' ');
  const behind = tokens
    .slice(value.to, value.to + 2)
    .map(({ text }) => text)
    .join(' ');
  return (
    (/(?:within|every|each|than|first|next|age of|at age|begin|start|at|in)(?: the| about)?$/.test(words) &&
      !/(?:less|fewer|more|shorter) than$/.test(words)) ||
    // "for 5 days after placing" is a length; "30 minutes after placing" a start.
    (!/(?:for|least|than|minimum|period of)(?: a)?$/.test(words) &&
      /^(?:after|before|of age|old|of placing|of finishing|prior|or before)/.test(behind))
  );
};

export const curingTemperature = property({
  kind: 'curing-temperature',
  meaning: 'curing',
  dimension: 'temperature',
  byPlace: (value, statement) =>
    !value.conditional &&
    statement.sentenceValues.some((each) => each.owner?.id === 'curing' && each.measure.dimension === 'duration'),
});

const ofStrength = new Phrases<true>([
  [
    true,
    [
      "of f'c",
      'of fc',
      "of the f'c",
      'of design strength',
      'of the design strength',
      'of specified strength',
      'of the specified strength',
      'of the specified compressive strength',
      'of specified compressive strength',
      'of strength',
      'of the 28 day strength',
      'of its strength',
      'of required strength',
      'strength',
    ],
  ],
]);

/** "until 70 percent of f'c is reached": curing ends by strength. */
export function curingStrength(statement: Statement): ValueFact[] {
  const about = holds(cureWords, statement, statement.sentence) || statement.region === 'curing';
  if (!about || holds(notCuring, statement)) return [];
  return statement.values
    .filter(
      (value) =>
        (value.measure.unit === 'percent' && ofStrength.at(statement.tokens, value.to) !== undefined) ||
        (value.measure.dimension === 'stress' && value.conditional),
    )
    .map((value) => valueFact('curing-strength', value, statement, high(statement)));
}

/** Days of drying in the air, before salts or a sealer. */
export function drying(statement: Statement): ValueFact[] {
  return statement.sentenceValues
    .filter(
      (value) =>
        statement.values.includes(value) &&
        value.measure.dimension === 'duration' &&
        value.owner?.id === 'drying' &&
        statement.predication.force !== 'ban',
    )
    .map((value) => valueFact('drying', value, statement));
}
