/** Total air: targets by aggregate size, tolerance, the permitted reduction, and the limit for trowelled floors. */
import { inches, millimetres, type Quantity } from '../model/quantity.ts';
import type { Sourced } from '../model/requirement.ts';
import { defineTable, type Row } from '../model/table.ts';
import { aci302guide, aci318of14, aci318of19, astmC94, practice } from './documents.ts';
import type { AciEdition } from './exposure.ts';
import { figure } from './figure.ts';
import { type StrengthPair, strengthPair } from './strength-pair.ts';

/** Percent of total air as delivered, for one nominal maximum size of aggregate. */
export interface AirTarget {
  readonly size: Quantity<'length'>;
  readonly metric: Quantity<'length'>;
  readonly F1: number;
  readonly F2: number;
  readonly F3: number;
}

const targets: readonly AirTarget[] = [
  { size: inches(3 / 8), metric: millimetres(9.5), F1: 6, F2: 7.5, F3: 7.5 },
  { size: inches(1 / 2), metric: millimetres(12.5), F1: 5.5, F2: 7, F3: 7 },
  { size: inches(3 / 4), metric: millimetres(19), F1: 5, F2: 6, F3: 6 },
  { size: inches(1), metric: millimetres(25), F1: 4.5, F2: 6, F3: 6 },
  { size: inches(1.5), metric: millimetres(37.5), F1: 4.5, F2: 5.5, F3: 5.5 },
  { size: inches(2), metric: millimetres(50), F1: 4, F2: 5, F3: 5 },
  { size: inches(3), metric: millimetres(75), F1: 3.5, F2: 4.5, F3: 4.5 },
];

export const airTargets: Readonly<Record<AciEdition, readonly Row<AirTarget>[]>> = {
  'aci-318-19': defineTable({ origin: aci318of19('19.3.3.1, Table 19.3.3.1'), rows: targets }),
  'aci-318-14': defineTable({ origin: aci318of14('19.3.3.1, Table 19.3.3.1'), rows: targets }),
};

/** Percentage points either way, at the point of delivery. */
export const airTolerance = figure(1.5, astmC94('section on air content'));

/** Points by which the target may be lower; permitted, not required. */
export interface AirReduction {
  readonly points: number;
  readonly strength: StrengthPair;
  readonly from: 'at or above' | 'above';
}

const reduction = { points: 1, strength: strengthPair(5000, 35) };

export const airReduction: Readonly<Record<AciEdition, Sourced<AirReduction>>> = {
  'aci-318-19': figure({ ...reduction, from: 'at or above' }, aci318of19('19.3.3.6')),
  'aci-318-14': figure({ ...reduction, from: 'above' }, aci318of14('19.3.3.3', 'from memory')),
};

/** Most total air in an interior floor that gets a hard trowel, percent; no air-entraining admixture. */
export const floorAir = figure(3, aci302guide('air in floors to be trowelled'));

/** Where no size is given, only what holds for every size up to this one is judged. */
export const largestUsualAggregate = figure(inches(1.5), practice('largest aggregate of flatwork'));

/** What is offered, in brackets, where no size is given. */
export const commonestAggregate = figure(inches(3 / 4), practice('commonest aggregate of flatwork'));
