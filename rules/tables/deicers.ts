/** De-icers: how long they are kept off young concrete, and which of them attack it at any age. */
import { days, fahrenheit } from '../model/quantity.ts';
import { defineTable } from '../model/table.ts';
import { aci201guide, aci201guideOld, mixtureHandbook, practice, scalingSheet } from './documents.ts';
import { figure } from './figure.ts';
import { strengthPair } from './strength-pair.ts';

/** Drying in the open after the end of curing, counted while the air stays above freezing. */
export const dryingBeforeSalts = figure(days(30), mixtureHandbook('chapter on freezing and de-icers'));

/** Older advice that is still accepted: this long in air warmer than this. */
export const dryingBeforeSaltsOlder = figure(
  { period: days(42), above: fahrenheit(40) },
  aci201guideOld('freezing and thawing chapter'),
);

/** Strength before the first salts; sources differ between 4000 and 4500 psi. */
export const strengthBeforeSalts = figure(
  strengthPair(4500, 31),
  aci201guide('freezing and thawing chapter', 'from memory'),
);

/** A hold-off counted from placing alone, 28 days, counts age and neither drying nor season. */
export const ageAlone = figure(days(28), practice('hold-off by age'));

export interface HarmfulDeicer {
  /** Lower case, singular. */
  readonly name: string;
  readonly why: string;
}

export const harmfulDeicers = defineTable<HarmfulDeicer>({
  origin: scalingSheet('de-icing chemicals'),
  rows: [
    { name: 'ammonium sulfate', why: 'attacks cement paste' },
    { name: 'ammonium nitrate', why: 'attacks cement paste' },
    { name: 'fertilizer', why: 'holds ammonium salts', origin: practice('harmful de-icers') },
    { name: 'acid', why: 'dissolves cement paste', origin: practice('harmful de-icers') },
  ],
});
