/** What is offered in place of a value: in the author's way of writing, and nothing else of the sentence touched. */
import { expect, test } from 'vitest';
import { instead } from '../../rules/kinds/instead.ts';
import type { Measure } from '../../rules/model/measure.ts';
import { days, percent, psi, ratio } from '../../rules/model/quantity.ts';

const written = (asWritten: string, unit: Measure['unit'] = 'psi'): Measure => ({
  dimension: 'stress',
  unit: unit as 'psi',
  target: 1,
  asWritten,
});

test.each([
  ['3000 psi', psi(4500), '4500 psi', '31 MPa'],
  ['3000 psi (21 MPa) minimum', psi(4500), '4500 psi minimum', '31 MPa minimum'],
  ['0.50 max.', ratio(0.45), '0.45 max.', '0.45 max.'],
  ['3 days', days(7), '7 days', '7 days'],
  ['35 percent maximum', percent(25), '25 percent maximum', '25 percent maximum'],
] as const)('%s', (text, right, inchPound, metric) => {
  expect(instead(written(text), right)).toEqual({ inchPound, metric });
});

test('a figure in a table stays a figure, in the unit of its column', () => {
  expect(instead(written('3000'), psi(4500)).inchPound).toBe('4500');
  expect(instead(written('21', 'MPa'), psi(4500))).toEqual({ inchPound: '31', metric: '31' });
});

test('air gets its tolerance, in words or in figures', () => {
  const right = { words: '6 percent, plus or minus 1.5 percentage points', bare: '6 ± 1.5' };
  expect(instead(written('4%'), right).inchPound).toBe(right.words);
  expect(instead(written('4 min'), right).inchPound).toBe('6 ± 1.5 min');
});
