/** Greatest w/cm and least f'c of each exposure class: ACI 318 Table 19.3.2.1, with its footnote on plain concrete. */
import { type Quantity, ratio } from '../model/quantity.ts';
import { defineTable, type Row } from '../model/table.ts';
import { aci318of14, aci318of19 } from './documents.ts';
import type { AciEdition } from './exposure.ts';
import { type StrengthPair, strengthPair } from './strength-pair.ts';

export interface MixtureLimit {
  readonly class: string;
  /** Absent where the class sets no limit. */
  readonly wcm?: Quantity<'ratio'>;
  readonly strength: StrengthPair;
  /** Two ways to meet the class; the first is the usual one. */
  readonly option?: 'with pozzolan or slag' | 'without pozzolan or slag';
}

const noLimit = { strength: strengthPair(2500, 17) };
const at055 = { wcm: ratio(0.55), strength: strengthPair(3500, 24) };
const at050 = { wcm: ratio(0.5), strength: strengthPair(4000, 28) };
const at045 = { wcm: ratio(0.45), strength: strengthPair(4500, 31) };
const at040 = { wcm: ratio(0.4), strength: strengthPair(5000, 35) };

const footnote = 'Table 19.3.2.1, footnote on plain concrete';
const from14Memory = aci318of14('Table 19.3.2.1', 'from memory');

export const mixtureLimits: Readonly<Record<AciEdition, readonly Row<MixtureLimit>[]>> = {
  'aci-318-19': defineTable<MixtureLimit>({
    origin: aci318of19('Table 19.3.2.1'),
    rows: [
      { class: 'F0', ...noLimit },
      { class: 'F1', ...at055 },
      { class: 'F2', ...at045 },
      { class: 'F3', ...at040 },
      { class: 'S0', ...noLimit },
      { class: 'S1', ...at050 },
      { class: 'S2', ...at045 },
      { class: 'S3', ...at045, option: 'with pozzolan or slag' },
      { class: 'S3', ...at040, option: 'without pozzolan or slag' },
      { class: 'W0', ...noLimit },
      { class: 'W1', ...noLimit },
      { class: 'W2', ...at050 },
      { class: 'C0', ...noLimit },
      { class: 'C1', ...noLimit },
      { class: 'C2', ...at040 },
    ],
  }),
  'aci-318-14': defineTable<MixtureLimit>({
    origin: aci318of14('Table 19.3.2.1'),
    rows: [
      { class: 'F0', ...noLimit },
      { class: 'F1', ...at055 },
      { class: 'F2', ...at045 },
      { class: 'F3', ...at040 },
      { class: 'S0', ...noLimit, origin: from14Memory },
      { class: 'S1', ...at050, origin: from14Memory },
      { class: 'S2', ...at045, origin: from14Memory },
      { class: 'S3', ...at045, origin: from14Memory },
      { class: 'W0', ...noLimit, origin: from14Memory },
      { class: 'W1', ...at050, origin: from14Memory },
      { class: 'C0', ...noLimit, origin: from14Memory },
      { class: 'C1', ...noLimit, origin: from14Memory },
      { class: 'C2', ...at040, origin: from14Memory },
    ],
  }),
};

/** Class F3 without steel, or with less than the minimum. */
export const plainConcreteInF3: Readonly<Record<AciEdition, Row<MixtureLimit>>> = {
  'aci-318-19': { class: 'F3', ...at045, origin: aci318of19(footnote) },
  'aci-318-14': { class: 'F3', ...at045, origin: aci318of14(footnote) },
};
