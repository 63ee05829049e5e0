/** Air targets, tolerance, reduction and the limit of trowelled floors, against values typed here. */
import { describe, expect, test } from 'vitest';
import { inUnit } from '../../rules/model/quantity.ts';
import { airReduction, airTargets, airTolerance, floorAir, largestUsualAggregate } from '../../rules/tables/air.ts';
import { airTests } from '../../rules/tables/air-tests.ts';

describe.each(Object.entries(airTargets))('air targets of %s', (edition, rows) => {
  // ACI 318-14 and -19, Table 19.3.3.1 (ACI 211.1-91 Table 6.3.3 carries the same numbers)
  test('seven sizes, smallest first', () => {
    expect(rows.map(({ size, metric, F1, F2, F3 }) => [size.amount, metric.amount, F1, F2, F3])).toEqual([
      [0.375, 9.5, 6, 7.5, 7.5],
      [0.5, 12.5, 5.5, 7, 7],
      [0.75, 19, 5, 6, 6],
      [1, 25, 4.5, 6, 6],
      [1.5, 37.5, 4.5, 5.5, 5.5],
      [2, 50, 4, 5, 5],
      [3, 75, 3.5, 4.5, 4.5],
    ]);
  });

  test('larger stone never asks for more air, and F1 for less than F2', () => {
    rows.slice(1).forEach((row, index) => {
      for (const name of ['F1', 'F2', 'F3'] as const) expect(row[name]).toBeLessThanOrEqual(rows[index]?.[name] ?? 0);
    });
    for (const row of rows) expect(row.F1).toBeLessThan(row.F2);
  });

  test('both sizes of a row are the same sieve', () => {
    for (const { size, metric } of rows) expect(inUnit(size, 'mm') / metric.amount).toBeCloseTo(1, 1);
  });

  test('the origin names the edition', () => {
    for (const { origin } of rows) expect(`aci-318-${origin.edition}`).toBe(edition);
  });
});

describe('around the target', () => {
  // ASTM C94/C94M, section on air content
  test('1.5 points either way', () => expect(airTolerance.value).toBe(1.5));

  // ACI 318-19, 19.3.3.6: f'c of 5000 psi (35 MPa) and more
  test('2019: one point less at 5000 psi and above', () => {
    const { points, from, strength } = airReduction['aci-318-19'].value;
    expect([points, from, strength.inchPound.amount, strength.metric.amount]).toEqual([1, 'at or above', 5000, 35]);
    expect(airReduction['aci-318-19'].origin.known).toBe('seen second hand');
  });

  // ACI 318-14, 19.3.3.3: f'c exceeding 5000 psi
  test('2014: only above 5000 psi', () => {
    const { points, from, strength } = airReduction['aci-318-14'].value;
    expect([points, from, strength.inchPound.amount, strength.metric.amount]).toEqual([1, 'above', 5000, 35]);
    expect(airReduction['aci-318-14'].origin).toMatchObject({ clause: '19.3.3.3', known: 'from memory' });
  });

  // ACI 302.1R-15
  test('a hard-trowelled floor has 3 percent at most', () => {
    expect(floorAir.value).toBe(3);
    expect(floorAir.origin).toMatchObject({ document: 'ACI 302.1R', edition: '15' });
  });

  // RULES of the project: without a size only what holds up to 1-1/2 in. is judged
  test('the largest usual size is a row of the table', () => {
    expect(airTargets['aci-318-19'].map(({ size }) => size.amount)).toContain(largestUsualAggregate.value.amount);
  });
});

// Scopes of ASTM C231, C173; AASHTO T 152, T 196, T 395; CSA A23.2-4C; EN 12350-7
test('methods that measure fresh air', () => {
  expect(airTests.map(({ designation }) => designation)).toEqual([
    'ASTM C231',
    'ASTM C173',
    'AASHTO T 152',
    'AASHTO T 196',
    'AASHTO T 395',
    'CSA A23.2-4C',
    'EN 12350-7',
  ]);
});
