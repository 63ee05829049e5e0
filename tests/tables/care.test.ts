/** Curing, cold weather and de-icers, against values typed here. */
import { describe, expect, test } from 'vitest';
import { convertDifference, inUnit } from '../../rules/model/quantity.ts';
import * as cold from '../../rules/tables/cold-weather.ts';
import {
  compoundCoverage,
  curingEnd,
  curingMinimum,
  curingStart,
  slowMixtureCuring,
} from '../../rules/tables/curing.ts';
import {
  ageAlone,
  dryingBeforeSalts,
  dryingBeforeSaltsOlder,
  harmfulDeicers,
  strengthBeforeSalts,
} from '../../rules/tables/deicers.ts';

describe('curing', () => {
  // ACI 318-14 and -19, 26.5.3.2(a) and (b)
  test.each(Object.entries(curingMinimum))('%s: 7 days, 3 with high early strength, at 50 °F', (_, minimum) => {
    expect([minimum.days, minimum.highEarlyDays, inUnit(minimum.temperature, 'degF')]).toEqual([7, 3, 50]);
    expect(inUnit(minimum.temperature, 'degC')).toBeCloseTo(10, 9);
  });

  // ASTM C309: water loss tested by C156 at 200 ft2/gal
  test('compound at 200 ft2/gal or richer', () => {
    expect(inUnit(compoundCoverage.value, 'ft2/gal')).toBe(200);
    expect(inUnit(compoundCoverage.value, 'm2/L')).toBeCloseTo(4.91, 2);
  });

  // Common practice
  test('start, end by strength, and slow mixtures', () => {
    expect(inUnit(curingStart.value, 'min')).toBeCloseTo(120, 9);
    expect(curingEnd.value.amount).toBe(70);
    const { flyAsh, slag, below, days } = slowMixtureCuring.value;
    expect([flyAsh, slag, below.amount, days]).toEqual([25, 35, 60, 10]);
  });
});

describe('cold weather', () => {
  // ACI 306R-16, 1.1; ACI 306.1-90, 1.2; forecast: common practice
  test('when it starts', () => {
    expect(inUnit(cold.coldWeatherTrigger.value, 'degF')).toBe(40);
    expect(inUnit(cold.coldWeatherMeanDays.value, 'd')).toBe(3);
    expect(inUnit(cold.coldWeatherForecast.value, 'd')).toBeCloseTo(1, 9);
  });

  // ACI 306R-16, protection chapter
  test('strength before one freeze and before many', () => {
    const { firstFreezeStrength: first, repeatedFreezeStrength: many } = cold;
    expect([first.value.inchPound.amount, first.value.metric.amount]).toEqual([500, 3.5]);
    expect([many.value.inchPound.amount, many.value.metric.amount]).toEqual([3500, 24]);
  });

  // ACI 306R-16, Table 5.1, line 1: under 12 in., 12 to 36, 36 to 72, over 72
  test('placing temperature by section size', () => {
    const rows = cold.placingTemperatures.map(({ from, concrete, metric }) => [from.amount, concrete.amount, metric]);
    expect(rows).toEqual([
      [0, 55, 13],
      [12, 50, 10],
      [36, 45, 7],
      [72, 40, 5],
    ]);
  });

  // ACI 306R-16, Table 5.1, line 6
  test('cooling by section size, as differences', () => {
    expect(cold.coolingLimits.map(({ from, degF, degC }) => [from.amount, degF, degC])).toEqual([
      [0, 50, 28],
      [12, 40, 22],
      [36, 30, 17],
      [72, 20, 11],
    ]);
    for (const { degF, degC } of cold.coolingLimits) {
      expect(Math.round(convertDifference(degF, 'degF', 'degC'))).toBe(degC);
    }
    expect(cold.coolingLimits.map(({ origin }) => origin.known)).toEqual([
      'seen second hand',
      'seen second hand',
      'from memory',
      'from memory',
    ]);
  });

  test('thicker sections may be colder, and must cool more slowly', () => {
    const falls = (numbers: readonly number[]) =>
      numbers.slice(1).every((number, index) => number < (numbers[index] ?? 0));
    expect(falls(cold.placingTemperatures.map(({ concrete }) => concrete.amount))).toBe(true);
    expect(falls(cold.coolingLimits.map(({ degF }) => degF))).toBe(true);
  });

  // ACI 306.1-90, 3.4.4; ACI 306R-16, note to Table 5.1; base: common practice
  test('protection, warmest placing, base', () => {
    const { ordinary, accelerated } = cold.protectionPeriod.value;
    expect([ordinary.amount, accelerated.amount]).toEqual([3, 2]);
    expect(cold.warmestAboveMinimum.value).toEqual({ degF: 20, degC: 11 });
    expect(inUnit(cold.baseTemperature.value, 'degF')).toBe(35);
  });
});

describe('de-icers', () => {
  // Design and Control of Concrete Mixtures, 14th edition
  test('30 days of drying after curing', () => expect(inUnit(dryingBeforeSalts.value, 'd')).toBe(30));

  // ACI 201.2R, older editions: six weeks above 40 °F
  test('the older six weeks', () => {
    expect(inUnit(dryingBeforeSaltsOlder.value.period, 'd')).toBe(6 * 7);
    expect(inUnit(dryingBeforeSaltsOlder.value.above, 'degF')).toBe(40);
  });

  // ACI 201.2R: 4000 to 4500 psi, from memory
  test('4500 psi before salts', () => {
    expect([strengthBeforeSalts.value.inchPound.amount, strengthBeforeSalts.value.metric.amount]).toEqual([4500, 31]);
    expect(strengthBeforeSalts.origin.known).toBe('from memory');
  });

  test('28 days count age alone', () => expect(inUnit(ageAlone.value, 'd')).toBe(28));

  // CIP 2: never ammonium sulfate or ammonium nitrate; the others common practice
  test('harmful ones', () => {
    expect(harmfulDeicers.map(({ name, origin }) => [name, origin.known])).toEqual([
      ['ammonium sulfate', 'seen second hand'],
      ['ammonium nitrate', 'seen second hand'],
      ['fertilizer', 'common practice'],
      ['acid', 'common practice'],
    ]);
  });
});
