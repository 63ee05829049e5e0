/** Water per sack, and whether the steel of a slab is enough. */
import { expect, test } from 'vitest';
import { plainOrReinforced } from '../../rules/formulas/plain-or-reinforced.ts';
import { wcmOfGallonsPerSack } from '../../rules/formulas/water-per-sack.ts';
import { inches, millimetres } from '../../rules/model/quantity.ts';

// 8.345 lb a gallon, 94 lb a sack
test.each([
  [5, 0.4439],
  [6, 0.5327],
  [6.5, 0.577],
])('%f gallons a sack are w/cm %f', (gallons, wcm) => {
  expect(wcmOfGallonsPerSack(gallons).value.amount).toBeCloseTo(wcm, 4);
});

test('the working shows pounds and division', () => {
  expect(wcmOfGallonsPerSack(6).steps.map(({ text }) => text)).toEqual([
    '6 gal of water × 8.345 lb/gal = 50.07 lb',
    '50.07 lb ÷ 94 lb a sack = w/cm 0.533',
  ]);
});

// Worked example 29: 0.20 × 12 / 24 = 0.10 in2/ft against 0.0018 × 12 × 5.5 = 0.119
test('29: a 5.5 in. walk with No. 4 bars at 24 in. is plain', () => {
  const { value, steps } = plainOrReinforced({ thickness: inches(5.5), spacing: inches(24), barArea: 0.2 });
  expect(value).toBe('plain');
  expect(steps.map(({ text }) => text)).toEqual([
    'steel: 0.2 in2 every 24 in. = 0.100 in2/ft',
    'least: 0.0018 of the gross area = 0.119 in2/ft',
    'the slab counts as plain concrete',
  ]);
});

test('the same bars at 18 in. are enough, in either unit', () => {
  expect(plainOrReinforced({ thickness: inches(5.5), spacing: inches(18), barArea: 0.2 }).value).toBe('reinforced');
  expect(plainOrReinforced({ thickness: millimetres(139.7), spacing: millimetres(457.2), barArea: 0.2 }).value).toBe(
    'reinforced',
  );
});
