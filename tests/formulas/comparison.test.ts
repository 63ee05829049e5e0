/** Stated values against limits: near enough is met, soft metric twins are equal, air by its band. */
import { describe, expect, test } from 'vitest';
import { judgeAir } from '../../rules/formulas/air-acceptance.ts';
import {
  isAirAbove,
  isAirBelow,
  isShareAbove,
  isShorter,
  isStrengthAbove,
  isStrengthAtLeast,
  isStrengthBelow,
  isWcmAbove,
} from '../../rules/formulas/comparison.ts';
import { requiredAir } from '../../rules/formulas/required-air.ts';
import { computeRequirement } from '../../rules/formulas/requirement.ts';
import type { Measure } from '../../rules/model/measure.ts';
import { inches, megapascals, psi } from '../../rules/model/quantity.ts';
import type { AirBand, Limits } from '../../rules/model/requirement.ts';
import { strengthPair } from '../../rules/tables/strength-pair.ts';

describe('comparison', () => {
  test('w/cm to 0.005', () => {
    expect([0.45, 0.454, 0.455, 0.456, 0.5].map((stated) => isWcmAbove(stated, 0.45))).toEqual([
      false,
      false,
      false,
      true,
      true,
    ]);
  });

  test('strength to 1 percent, in the unit that was written', () => {
    const least = strengthPair(4500, 31);
    const stated = [psi(4500), psi(4455), psi(4454), psi(4000), megapascals(31), megapascals(30.69), megapascals(30)];
    expect(stated.map((strength) => isStrengthBelow(strength, least))).toEqual([
      false,
      false,
      true,
      true,
      false,
      false,
      true,
    ]);
  });

  test('thresholds that a code states exactly', () => {
    const threshold = strengthPair(5000, 35);
    expect([psi(4999), psi(5000), megapascals(34.5)].map((value) => isStrengthAtLeast(value, threshold))).toEqual([
      false,
      true,
      true,
    ]);
    expect([psi(5000), psi(5001), megapascals(35), megapascals(36)].map((v) => isStrengthAbove(v, threshold))).toEqual([
      false,
      true,
      false,
      true,
    ]);
  });

  test('air to 0.05, shares and days exactly', () => {
    expect([4.5, 4.45, 4.44].map((stated) => isAirBelow(stated, 4.5))).toEqual([false, false, true]);
    expect([8.5, 8.55, 8.56].map((stated) => isAirAbove(stated, 8.5))).toEqual([false, false, true]);
    expect([25, 25.1].map((stated) => isShareAbove(stated, 25))).toEqual([false, true]);
    expect([7, 6.99, 72 / 24].map((stated) => isShorter(stated, 7))).toEqual([false, true, true]);
  });
});

const stated = (value: Partial<Measure<'share'>>): Measure<'share'> => ({
  dimension: 'share',
  unit: 'percent',
  asWritten: JSON.stringify(value),
  ...value,
});
const within = (target: number, tolerance: number) => stated({ target, plus: tolerance, minus: tolerance });
const tooLow = (value: Measure<'share'>, band: AirBand) => judgeAir(value, band).value.tooLow;

describe('air against F3 with 3/4 in. stone', () => {
  const edition = 'aci-318-19';
  const band = requiredAir({ class: 'F3', edition, aggregate: inches(3 / 4) }).value;
  const reduced = requiredAir({ class: 'F3', edition, aggregate: inches(3 / 4), strength: psi(5000) }).value;

  test.each([
    ['6 ± 1.5', within(6, 1.5), undefined],
    ['4.5 to 7.5', stated({ min: 4.5, max: 7.5 }), undefined],
    ['6.5 ± 2, whose low end will do', within(6.5, 2), undefined],
    ['6 ± 2.5', within(6, 2.5), 'range'],
    ['4 ± 1.5', within(4, 1.5), 'range'],
    ['a bare 6', stated({ target: 6 }), undefined],
    ['a bare 5.5, within half a point', stated({ target: 5.5 }), undefined],
    ['a bare 5', stated({ target: 5 }), 'target'],
    ['at least 4.5', stated({ min: 4.5 }), undefined],
    ['at least 3', stated({ min: 3 }), 'range'],
    ['not over 6: no floor at all is another fault', stated({ max: 6 }), undefined],
    ['8 ± 1.5: stricter', within(8, 1.5), undefined],
  ] as const)('%s', (_, value, expected) => expect(tooLow(value, band)).toBe(expected));

  test('where the reduction is permitted the band goes down with the stated target', () => {
    expect(judgeAir(within(5, 1.5), reduced).value).toMatchObject({ tooLow: undefined, floor: 3.5, lowest: 3.5 });
    expect(judgeAir(within(6, 2.5), reduced).value).toMatchObject({ tooLow: 'range', floor: 4.5 });
    expect(tooLow(within(5, 1.5), band)).toBe('range');
    expect(tooLow(stated({ min: 3.5, max: 6.5 }), reduced)).toBeUndefined();
  });

  test('without a size only what is low for every size is low', () => {
    const any = requiredAir({ class: 'F3', edition }).value;
    expect(tooLow(stated({ min: 4 }), any)).toBeUndefined();
    expect(tooLow(stated({ min: 3 }), any)).toBe('range');
    expect(tooLow(within(5.5, 1.5), any)).toBeUndefined();
  });

  test('the working quotes the text', () => {
    const text = (value: Measure<'share'>) => judgeAir(value, band).steps[0]?.text;
    expect(text({ ...within(4, 1.5), asWritten: '4% ± 1.5%' })).toBe(
      '"4% ± 1.5%" accepts 2.5 percent; at least 4.5 percent is asked',
    );
    expect(text({ ...stated({ max: 6 }), asWritten: 'up to 6%' })).toBe(
      '"up to 6%" sets no floor; at least 4.5 percent is asked',
    );
  });

  test('3/8 in. stone needs more', () => {
    const small = requiredAir({ class: 'F3', edition, aggregate: inches(3 / 8) }).value;
    expect(tooLow(within(6, 1.5), small)).toBe('range');
    expect(tooLow(within(7.5, 1.5), small)).toBeUndefined();
  });
});

// IRC Table R402.2, footnote: 5 to 7 percent, no target
test('a range without a target is held to its ends alone', () => {
  const floor = { code: 'irc', classes: ['severe'], structural: 'no', reinforced: 'no', prestressed: 'no' } as const;
  const band = computeRequirement(floor).lawful.air as AirBand;
  expect(tooLow(stated({ target: 5 }), band)).toBeUndefined();
  expect(tooLow(stated({ min: 5, max: 7 }), band)).toBeUndefined();
  expect(tooLow(stated({ min: 4, max: 7 }), band)).toBe('range');
});

describe('worked example 30: a walk at w/cm 0.50, 4000 psi, 6 ± 1.5', () => {
  const walk = {
    code: 'aci-318-19',
    classes: ['F3'],
    structural: 'no',
    reinforced: 'unknown',
    prestressed: 'no',
    aggregate: inches(3 / 4),
  } as const;
  const misses = (limits: Limits | undefined) => ({
    wcm: limits?.wcm && isWcmAbove(0.5, limits.wcm.value.amount),
    strength: limits?.strength && isStrengthBelow(psi(4000), limits.strength.value),
    air: limits?.air && judgeAir(within(6, 1.5), limits.air).value.tooLow,
  });

  test('no class declared: lawful, but not what it needs to last', () => {
    const { lawful, declared, recommended } = computeRequirement(walk);
    expect(misses(lawful)).toEqual({ wcm: undefined, strength: false, air: undefined });
    expect(misses(recommended)).toEqual({ wcm: true, strength: true, air: undefined });
    expect(declared).toBeUndefined();
  });

  test('declared F3: both values bind', () => {
    const { declared } = computeRequirement({ ...walk, declared: 'yes' });
    expect(misses(declared)).toEqual({ wcm: true, strength: true, air: undefined });
  });
});
