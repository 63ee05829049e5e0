/** Customary unit pairs against values typed here, against the exact factors, and against the tables that print pairs. */
import { describe, expect, test } from 'vitest';
import { convert, convertDifference, units } from '../../rules/model/quantity.ts';
import { airTargets } from '../../rules/tables/air.ts';
import { mixtureLimits } from '../../rules/tables/mixture-limits.ts';
import { customaryPairs, roundings, softLengths } from '../../rules/tables/unit-pairs.ts';

const pairsOf = (unit: string) =>
  customaryPairs.find(({ inchPound }) => inchPound === unit)?.pairs.map(({ inchPound, metric }) => [inchPound, metric]);

describe('customary pairs', () => {
  // ACI 318 and 318M, Table 19.3.2.1
  test('strength', () => {
    expect(pairsOf('psi')).toEqual([
      [500, 3.5],
      [2500, 17],
      [3000, 21],
      [3500, 24],
      [4000, 28],
      [4500, 31],
      [5000, 35],
      [6000, 41],
    ]);
  });

  // ACI 318 and 318M, Table 19.3.3.1
  test('aggregate size', () => {
    expect(pairsOf('in')).toEqual([
      [0.375, 9.5],
      [0.5, 12.5],
      [0.75, 19],
      [1, 25],
      [1.5, 37.5],
      [2, 50],
      [3, 75],
    ]);
  });

  // ACI 306R and 305R; 40 °F is printed as 5 °C and as 4 °C
  test('temperature', () => {
    expect(pairsOf('degF')).toEqual([
      [32, 0],
      [40, 5],
      [40, 4],
      [45, 7],
      [50, 10],
      [55, 13],
      [90, 32],
      [95, 35],
    ]);
  });

  // Various: evaporation, coverage, cement content
  test('the rest', () => {
    expect(pairsOf('lb/ft2/h')).toEqual([[0.2, 1]]);
    expect(pairsOf('ft2/gal')).toEqual([
      [200, 5],
      [300, 7.4],
    ]);
    expect(pairsOf('lb/yd3')).toEqual([
      [517, 307],
      [564, 335],
    ]);
  });

  test('a soft pair is close to the exact conversion', () => {
    for (const { inchPound, metric, pairs } of customaryPairs) {
      for (const pair of pairs) {
        const exact = convert(pair.inchPound, inchPound, metric);
        const slack = inchPound === 'degF' ? 0.6 : 0.025 * Math.abs(exact);
        expect(Math.abs(exact - pair.metric), `${pair.inchPound} ${inchPound}`).toBeLessThanOrEqual(slack);
      }
    }
  });

  test('the tables of the codes print the same pairs', () => {
    const strengths = Object.values(mixtureLimits).flat();
    for (const { strength } of strengths) {
      expect(pairsOf('psi')).toContainEqual([strength.inchPound.amount, strength.metric.amount]);
    }
    for (const row of airTargets['aci-318-19'])
      expect(pairsOf('in')).toContainEqual([row.size.amount, row.metric.amount]);
  });

  test('both units of a pair are rounded somehow, and soft lengths are pairs', () => {
    for (const { inchPound, metric } of customaryPairs) {
      for (const unit of [inchPound, metric]) expect(roundings.map((row) => row.unit)).toContain(unit);
    }
    for (const { inchPound } of softLengths) expect(pairsOf(inchPound)).toBeDefined();
  });
});

// Common practice
test('what is converted otherwise is rounded to these steps', () => {
  const table = roundings.map(({ unit, steps }) => [unit, ...steps.flatMap(({ under, to }) => [under, to])]);
  const without = Number.POSITIVE_INFINITY;
  expect(table).toEqual([
    ['psi', 1000, 10, without, 50],
    ['MPa', 10, 0.1, without, 1],
    ['in', 0.25, 0.0625, 1, 0.125, without, 0.25],
    ['mm', 25, 1, without, 5],
    ['ft', 10, 0.5, without, 1],
    ['m', 10, 0.1, without, 0.5],
    ['degF', without, 1],
    ['degC', without, 1],
    ['lb/yd3', 100, 1, without, 5],
    ['kg/m3', 100, 1, without, 5],
    ['gal/yd3', 5, 0.1, without, 1],
    ['L/m3', 5, 0.5, without, 1],
    ['lb/ft2/h', 1, 0.01, without, 0.1],
    ['kg/m2/h', 1, 0.05, without, 0.1],
    ['ft2/gal', 100, 5, without, 10],
    ['m2/L', 10, 0.1, without, 1],
    ['lb', 10, 0.1, without, 1],
    ['kg', 10, 0.1, without, 1],
    ['gal', 10, 0.1, without, 1],
    ['L', 10, 0.1, without, 1],
    ['mph', without, 1],
    ['km/h', without, 1],
  ]);
  expect(softLengths.map(({ inchPound, factor, from }) => [inchPound, factor, from])).toEqual([
    ['in', 25, 1],
    ['ft', 0.3, 1],
  ]);
});

describe('factors', () => {
  // NIST SP 811 (2008), Appendix B
  test.each([
    ['psi', 'MPa', 0.006894757],
    ['in', 'mm', 25.4],
    ['ft', 'm', 0.3048],
    ['lb/yd3', 'kg/m3', 0.5932764],
    ['lb/ft2/h', 'kg/m2/h', 4.882428],
    ['gal/yd3', 'L/m3', 4.951132],
    ['ft2/gal', 'm2/L', 0.02454239],
    ['lb', 'kg', 0.4535924],
    ['gal', 'L', 3.785412],
    ['mph', 'km/h', 1.609344],
  ] as const)('1 %s is %s × %f', (from, to, factor) => {
    expect(convert(1, from, to) / factor).toBeCloseTo(1, 5);
  });

  // NIST SP 811 (2008), Appendix B: t/°C = (t/°F - 32)/1.8; an interval is divided by 1.8 only
  test('a reading and a difference of temperature', () => {
    expect(convert(50, 'degF', 'degC')).toBeCloseTo(10, 9);
    expect(convert(-40, 'degC', 'degF')).toBeCloseTo(-40, 9);
    expect(convertDifference(50, 'degF', 'degC')).toBeCloseTo(50 / 1.8, 9);
  });

  test('there and back again', () => {
    for (const { inchPound, metric } of customaryPairs) {
      expect(convert(convert(7, inchPound, metric), metric, inchPound)).toBeCloseTo(7, 9);
    }
  });

  test('a unit of another dimension is refused', () => {
    expect(() => convert(7, 'd', 'psi')).toThrow(RangeError);
    expect(Object.keys(units)).toContain('gal/sack');
  });
});
