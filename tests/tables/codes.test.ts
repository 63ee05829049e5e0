/** Nonstructural and residential strengths, steel that makes concrete reinforced, against values typed here. */
import { describe, expect, test } from 'vitest';
import { groundSlabsLeftOut, nonstructuralStrengths } from '../../rules/tables/nonstructural.ts';
import { minimumSteelRatio } from '../../rules/tables/reinforcement.ts';
import {
  garageFloorAlternative,
  residentialAir,
  residentialStrengths,
  weatheringOfClass,
} from '../../rules/tables/residential.ts';

// IBC 2015 to 2021, 1904.2
test('nonstructural strength by freezing class', () => {
  expect(
    nonstructuralStrengths.map((row) => [row.class, row.strength.inchPound.amount, row.strength.metric.amount]),
  ).toEqual([
    ['F0', 2500, 17.2],
    ['F1', 3000, 20.7],
    ['F2', 3500, 24.1],
    ['F3', 3500, 24.1],
  ]);
});

// ACI 318-19, 1.4.8
test('ground slabs are left out by clause 1.4.8 of the 2019 edition; the clause of 2014 is from memory', () => {
  expect(groundSlabsLeftOut['aci-318-19'].origin).toMatchObject({ clause: '1.4.8', known: 'seen second hand' });
  expect(groundSlabsLeftOut['aci-318-14'].origin).toMatchObject({ edition: '14', known: 'from memory' });
});

describe('residential concrete', () => {
  // IRC 2006 to 2018, Table R402.2
  test('strength by weathering, flat and upright', () => {
    expect(residentialStrengths.map((row) => [row.weathering, row.flat.amount, row.upright.amount])).toEqual([
      ['negligible', 2500, 2500],
      ['moderate', 3000, 3000],
      ['severe', 3500, 3000],
    ]);
  });

  // IRC 2006 to 2018, Table R402.2, footnote
  test('total air 5 to 7 percent', () => expect(residentialAir.value).toEqual({ low: 5, high: 7 }));

  // IRC, footnote on steel-trowelled garage floors, from memory
  test('a trowelled garage floor: 3 percent where the strength is 4000 psi', () => {
    expect([garageFloorAlternative.value.low, garageFloorAlternative.value.strength.amount]).toEqual([3, 4000]);
    expect(garageFloorAlternative.origin.known).toBe('from memory');
  });

  test('weathering rises with the freezing class', () => {
    expect(weatheringOfClass.map((row) => [row.class, row.weathering])).toEqual([
      ['F0', 'negligible'],
      ['F1', 'moderate'],
      ['F2', 'severe'],
      ['F3', 'severe'],
    ]);
  });
});

// ACI 318-19, minimum shrinkage and temperature steel: 0.0018 of the gross area
test('steel that makes a slab reinforced', () => expect(minimumSteelRatio.value).toBe(0.0018));
