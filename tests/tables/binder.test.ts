/** Aggregate sizes, caps on supplementary materials, sulfate binders and chloride limits, against values typed here. */
import { describe, expect, test } from 'vitest';
import { aggregateSizes } from '../../rules/tables/aggregate-size.ts';
import { airTargets } from '../../rules/tables/air.ts';
import { binderRules, scmCaps, slowMixture, sulfateWithoutPozzolan } from '../../rules/tables/cementitious.ts';
import { chlorideMaxima } from '../../rules/tables/chloride.ts';

describe('coarse aggregate', () => {
  // ASTM C33/C33M, grading table of coarse aggregate
  test('size numbers, smallest first', () => {
    expect(aggregateSizes.map(({ number, nominalMaximum }) => [number, nominalMaximum.amount])).toEqual([
      ['8', 0.375],
      ['7', 0.5],
      ['67', 0.75],
      ['57', 1],
      ['467', 1.5],
      ['357', 2],
    ]);
  });

  test('each is a size of the air table', () => {
    const sizes = airTargets['aci-318-19'].map(({ size }) => size.amount);
    for (const { nominalMaximum } of aggregateSizes) expect(sizes).toContain(nominalMaximum.amount);
  });
});

// ACI 318-14 and -19, Table 26.4.2.2(b); IRC R402.2 under de-icers
test.each(Object.entries(scmCaps))('caps of %s in F3', (_, rows) => {
  expect(rows.map(({ material, max }) => [material, max])).toEqual([
    ['fly ash', 25],
    ['slag cement', 50],
    ['silica fume', 10],
    ['fly ash + silica fume', 35],
    ['all three', 50],
  ]);
});

describe('sulfate', () => {
  // ACI 318-19, Table 19.3.2.1, cementitious materials and calcium chloride columns
  test.each(Object.entries(binderRules))('%s: types of cement, and calcium chloride banned from S2 on', (_, rows) => {
    expect(rows.map((row) => [row.class, /C150 Type (\w+)/.exec(row.text)?.[1], row.calciumChloride])).toEqual([
      ['S1', 'II', 'not addressed'],
      ['S2', 'V', 'banned'],
      ['S3', 'V', 'banned'],
    ]);
  });

  test('S3 asks for pozzolan or slag, its other option for none', () => {
    expect(binderRules['aci-318-19'][2]?.text).toContain('with pozzolan or slag');
    expect(sulfateWithoutPozzolan.value).not.toContain('pozzolan');
  });
});

// ACI 318-19, Table 19.3.2.1 (of cementitious materials); ACI 318-14 from memory (of cement)
test.each([
  ['aci-318-19', 'cementitious materials', 'seen second hand'],
  ['aci-318-14', 'cement', 'from memory'],
] as const)('chloride of %s', (edition, of, known) => {
  expect(chlorideMaxima[edition].map((row) => [row.class, row.nonprestressed, row.prestressed])).toEqual([
    ['C0', 1, 0.06],
    ['C1', 0.3, 0.06],
    ['C2', 0.15, 0.06],
  ]);
  for (const row of chlorideMaxima[edition]) expect(row).toMatchObject({ of, origin: { known } });
});

// Common practice
test('mixtures that are slow in cool weather', () => expect(slowMixture.value).toEqual({ flyAsh: 20, slag: 35 }));
