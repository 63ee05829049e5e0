/** Thresholds of common practice, the scale of evidence, and the numbers of water and sacks, against values typed here. */
import { expect, test } from 'vitest';
import { cuePoints, evidenceBands } from '../../rules/tables/evidence.ts';
import * as judgment from '../../rules/tables/judgment.ts';
import { poundsPerGallon, poundsPerSack } from '../../rules/tables/water.ts';

// Common practice
test('how near is near enough', () => {
  expect(judgment.wcmTolerance.value).toBe(0.005);
  expect(judgment.strengthTolerance.value).toBe(0.01);
  expect(judgment.airRounding.value).toBe(0.05);
  expect(judgment.airTargetSlack.value).toBe(0.5);
  expect(judgment.sizeTolerance.value).toBe(0.07);
});

// Facts of the trade, no source
test('what an experienced reader goes by', () => {
  expect(judgment.usuallyProtectiveAir.value).toBe(4);
  expect(judgment.scalingDepth.value).toMatchObject({ amount: 0.25, unit: 'in' });
  expect(judgment.tenderAge.value).toMatchObject({ amount: 28, unit: 'd' });
});

test('every threshold here is common practice', () => {
  for (const { origin } of Object.values(judgment)) expect(origin.known).toBe('common practice');
});

// Common practice: the scale of exposure evidence
test('points of a cue', () => {
  expect(cuePoints.map(({ kind, points }) => [kind, points])).toEqual([
    ['freeze-class', 10],
    ['outdoor-noun', 6],
    ['either-noun', 4],
    ['weather-word', 4],
    ['outdoor-section', 3],
    ['outdoor-finish', 2],
    ['indoor-finish', -2],
    ['indoor-noun', -4],
    ['no-freeze-class', -10],
  ]);
});

test('bands from above', () => {
  expect(evidenceBands.map(({ band, from }) => [band, from])).toEqual([
    ['strong exterior', 6],
    ['medium exterior', 3],
    ['unknown', -2],
    ['medium interior', -5],
    ['strong interior', Number.NEGATIVE_INFINITY],
  ]);
});

// NIST SP 811: gallon 3.785 411 784 L, pound 0.453 592 37 kg; water 1 kg/L
test('a gallon of water weighs what its volume says', () => {
  expect(poundsPerGallon.value).toBe(8.345);
  expect(3.785411784 / 0.45359237).toBeCloseTo(poundsPerGallon.value, 3);
  expect(poundsPerSack.value).toBe(94);
});
