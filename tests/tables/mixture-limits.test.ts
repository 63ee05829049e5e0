/** Greatest w/cm and least strength by class, against values typed here. */
import { describe, expect, test } from 'vitest';
import { mixtureLimits, plainConcreteInF3 } from '../../rules/tables/mixture-limits.ts';

type Line = readonly [name: string, wcm: number | undefined, psi: number, megapascals: number];

const lines = (edition: keyof typeof mixtureLimits): readonly Line[] =>
  mixtureLimits[edition].map(({ class: name, wcm, strength }) => [
    name,
    wcm?.amount,
    strength.inchPound.amount,
    strength.metric.amount,
  ]);

describe('w/cm and strength by exposure class', () => {
  // ACI 318-19, Table 19.3.2.1
  test('2019', () => {
    expect(lines('aci-318-19')).toEqual([
      ['F0', undefined, 2500, 17],
      ['F1', 0.55, 3500, 24],
      ['F2', 0.45, 4500, 31],
      ['F3', 0.4, 5000, 35],
      ['S0', undefined, 2500, 17],
      ['S1', 0.5, 4000, 28],
      ['S2', 0.45, 4500, 31],
      ['S3', 0.45, 4500, 31],
      ['S3', 0.4, 5000, 35],
      ['W0', undefined, 2500, 17],
      ['W1', undefined, 2500, 17],
      ['W2', 0.5, 4000, 28],
      ['C0', undefined, 2500, 17],
      ['C1', undefined, 2500, 17],
      ['C2', 0.4, 5000, 35],
    ]);
  });

  // ACI 318-14, Table 19.3.2.1: W1 is its low-permeability class
  test('2014', () => {
    expect(lines('aci-318-14')).toEqual([
      ['F0', undefined, 2500, 17],
      ['F1', 0.55, 3500, 24],
      ['F2', 0.45, 4500, 31],
      ['F3', 0.4, 5000, 35],
      ['S0', undefined, 2500, 17],
      ['S1', 0.5, 4000, 28],
      ['S2', 0.45, 4500, 31],
      ['S3', 0.45, 4500, 31],
      ['W0', undefined, 2500, 17],
      ['W1', 0.5, 4000, 28],
      ['C0', undefined, 2500, 17],
      ['C1', undefined, 2500, 17],
      ['C2', 0.4, 5000, 35],
    ]);
  });

  // ACI 318-14 and -19, Table 19.3.2.1, footnote
  test.each(Object.entries(plainConcreteInF3))('%s: plain concrete in F3', (_, row) => {
    expect([row.wcm?.amount, row.strength.inchPound.amount, row.strength.metric.amount]).toEqual([0.45, 4500, 31]);
  });

  test('the numbers of the 2014 water, sulfate and corrosion rows are from memory, its freezing rows are not', () => {
    for (const { class: name, origin } of mixtureLimits['aci-318-14']) {
      expect(origin.known).toBe(name.startsWith('F') ? 'seen second hand' : 'from memory');
    }
  });

  test.each(Object.entries(mixtureLimits))(
    '%s: in a category w/cm falls and strength rises with the class',
    (_, rows) => {
      rows.slice(1).forEach((row, index) => {
        const before = rows[index];
        if (!before || before.class[0] !== row.class[0]) return;
        expect(before.strength.inchPound.amount).toBeLessThanOrEqual(row.strength.inchPound.amount);
        expect(row.wcm?.amount ?? 1).toBeLessThanOrEqual(before.wcm?.amount ?? 1);
      });
    },
  );

  test('one w/cm always goes with one strength', () => {
    const pairs = Object.values(mixtureLimits)
      .flat()
      .map(({ wcm, strength }) => `${wcm?.amount ?? 'none'} ${strength.inchPound.amount}`);
    expect([...new Set(pairs)].sort()).toEqual(['0.4 5000', '0.45 4500', '0.5 4000', '0.55 3500', 'none 2500']);
  });
});
