/** Customary pairs of the two unit systems, and how other values are rounded when they are converted. */
import type { Unit } from '../model/quantity.ts';
import { defineTable } from '../model/table.ts';
import { aci306guide, aci318of19, practice } from './documents.ts';

export interface UnitPair {
  readonly inchPound: number;
  readonly metric: number;
}

export interface PairedUnits {
  readonly inchPound: Unit;
  readonly metric: Unit;
  readonly pairs: readonly UnitPair[];
}

const pairs = (numbers: readonly (readonly [number, number])[]): readonly UnitPair[] =>
  numbers.map(([inchPound, metric]) => ({ inchPound, metric }));

/** 40 °F is printed as 5 °C by ACI and as 4 °C by others: the first is written, both are understood. */
export const customaryPairs = defineTable<PairedUnits>({
  origin: practice('customary unit pairs'),
  rows: [
    {
      inchPound: 'psi',
      metric: 'MPa',
      pairs: pairs([
        [500, 3.5],
        [2500, 17],
        [3000, 21],
        [3500, 24],
        [4000, 28],
        [4500, 31],
        [5000, 35],
        [6000, 41],
      ]),
      origin: aci318of19('Table 19.3.2.1 and its metric edition'),
    },
    {
      inchPound: 'in',
      metric: 'mm',
      pairs: pairs([
        [3 / 8, 9.5],
        [1 / 2, 12.5],
        [3 / 4, 19],
        [1, 25],
        [1.5, 37.5],
        [2, 50],
        [3, 75],
      ]),
      origin: aci318of19('Table 19.3.3.1 and its metric edition'),
    },
    {
      inchPound: 'degF',
      metric: 'degC',
      pairs: pairs([
        [32, 0],
        [40, 5],
        [40, 4],
        [45, 7],
        [50, 10],
        [55, 13],
        [90, 32],
        [95, 35],
      ]),
      origin: aci306guide('Table 5.1'),
    },
    { inchPound: 'lb/ft2/h', metric: 'kg/m2/h', pairs: pairs([[0.2, 1]]) },
    {
      inchPound: 'ft2/gal',
      metric: 'm2/L',
      pairs: pairs([
        [200, 5],
        [300, 7.4],
      ]),
    },
    {
      inchPound: 'lb/yd3',
      metric: 'kg/m3',
      pairs: pairs([
        [517, 307],
        [564, 335],
      ]),
    },
    { inchPound: 'gal/yd3', metric: 'L/m3', pairs: [] },
    { inchPound: 'ft', metric: 'm', pairs: [] },
    { inchPound: 'lb', metric: 'kg', pairs: [] },
    { inchPound: 'gal', metric: 'L', pairs: [] },
    { inchPound: 'mph', metric: 'km/h', pairs: [] },
  ],
});

export interface Rounding {
  readonly unit: Unit;
  /** Amounts below `under`, and not below that of the step before, are rounded to `to`. */
  readonly steps: readonly { readonly under: number; readonly to: number }[];
}

/** Lengths are soft: the trade counts 25 mm to the inch and 0.3 m to the foot once they are not fractions. */
export const softLengths = defineTable<{ readonly inchPound: Unit; readonly factor: number; readonly from: number }>({
  origin: practice('soft conversion of lengths'),
  rows: [
    { inchPound: 'in', factor: 25, from: 1 },
    { inchPound: 'ft', factor: 0.3, from: 1 },
  ],
});

const steps = (numbers: readonly (readonly [number, number])[]): Rounding['steps'] =>
  numbers.map(([under, to]) => ({ under, to }));

export const roundings = defineTable<Rounding>({
  origin: practice('rounding of converted values'),
  rows: [
    {
      unit: 'psi',
      steps: steps([
        [1000, 10],
        [Number.POSITIVE_INFINITY, 50],
      ]),
    },
    {
      unit: 'MPa',
      steps: steps([
        [10, 0.1],
        [Number.POSITIVE_INFINITY, 1],
      ]),
    },
    {
      unit: 'in',
      steps: steps([
        [1 / 4, 1 / 16],
        [1, 1 / 8],
        [Number.POSITIVE_INFINITY, 1 / 4],
      ]),
    },
    {
      unit: 'mm',
      steps: steps([
        [25, 1],
        [Number.POSITIVE_INFINITY, 5],
      ]),
    },
    {
      unit: 'ft',
      steps: steps([
        [10, 0.5],
        [Number.POSITIVE_INFINITY, 1],
      ]),
    },
    {
      unit: 'm',
      steps: steps([
        [10, 0.1],
        [Number.POSITIVE_INFINITY, 0.5],
      ]),
    },
    { unit: 'degF', steps: steps([[Number.POSITIVE_INFINITY, 1]]) },
    { unit: 'degC', steps: steps([[Number.POSITIVE_INFINITY, 1]]) },
    {
      unit: 'lb/yd3',
      steps: steps([
        [100, 1],
        [Number.POSITIVE_INFINITY, 5],
      ]),
    },
    {
      unit: 'kg/m3',
      steps: steps([
        [100, 1],
        [Number.POSITIVE_INFINITY, 5],
      ]),
    },
    {
      unit: 'gal/yd3',
      steps: steps([
        [5, 0.1],
        [Number.POSITIVE_INFINITY, 1],
      ]),
    },
    {
      unit: 'L/m3',
      steps: steps([
        [5, 0.5],
        [Number.POSITIVE_INFINITY, 1],
      ]),
    },
    {
      unit: 'lb/ft2/h',
      steps: steps([
        [1, 0.01],
        [Number.POSITIVE_INFINITY, 0.1],
      ]),
    },
    {
      unit: 'kg/m2/h',
      steps: steps([
        [1, 0.05],
        [Number.POSITIVE_INFINITY, 0.1],
      ]),
    },
    {
      unit: 'ft2/gal',
      steps: steps([
        [100, 5],
        [Number.POSITIVE_INFINITY, 10],
      ]),
    },
    {
      unit: 'm2/L',
      steps: steps([
        [10, 0.1],
        [Number.POSITIVE_INFINITY, 1],
      ]),
    },
    {
      unit: 'lb',
      steps: steps([
        [10, 0.1],
        [Number.POSITIVE_INFINITY, 1],
      ]),
    },
    {
      unit: 'kg',
      steps: steps([
        [10, 0.1],
        [Number.POSITIVE_INFINITY, 1],
      ]),
    },
    {
      unit: 'gal',
      steps: steps([
        [10, 0.1],
        [Number.POSITIVE_INFINITY, 1],
      ]),
    },
    {
      unit: 'L',
      steps: steps([
        [10, 0.1],
        [Number.POSITIVE_INFINITY, 1],
      ]),
    },
    { unit: 'mph', steps: steps([[Number.POSITIVE_INFINITY, 1]]) },
    { unit: 'km/h', steps: steps([[Number.POSITIVE_INFINITY, 1]]) },
  ],
});
