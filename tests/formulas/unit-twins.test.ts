/** Quantities printed in one or both unit systems. */
import { describe, expect, test } from 'vitest';
import {
  bothUnits,
  differenceInSystem,
  inSystem,
  pairOf,
  say,
  sayInches,
  twin,
} from '../../rules/formulas/unit-twins.ts';
import {
  celsius,
  days,
  fahrenheit,
  hours,
  inches,
  megapascals,
  millimetres,
  percent,
  psi,
  quantity,
  ratio,
} from '../../rules/model/quantity.ts';

describe('both units', () => {
  test.each([
    [psi(4500), '4500 psi (31 MPa)'],
    [psi(500), '500 psi (3.5 MPa)'],
    [psi(600), '600 psi (4.1 MPa)'],
    [inches(3 / 4), '3/4 in. (19 mm)'],
    [inches(1.5), '1-1/2 in. (37.5 mm)'],
    [inches(4), '4 in. (100 mm)'],
    [inches(6), '6 in. (150 mm)'],
    [inches(12), '12 in. (300 mm)'],
    [inches(1 / 8), '1/8 in. (3 mm)'],
    [inches(1 / 4), '1/4 in. (6 mm)'],
    [fahrenheit(50), '50 °F (10 °C)'],
    [fahrenheit(40), '40 °F (5 °C)'],
    [fahrenheit(60), '60 °F (16 °C)'],
    [quantity(200, 'ft2/gal'), '200 ft2/gal (5 m2/L)'],
    [quantity(0.2, 'lb/ft2/h'), '0.2 lb/ft2/h (1 kg/m2/h)'],
    [quantity(564, 'lb/yd3'), '564 lb/yd3 (335 kg/m3)'],
    [quantity(520, 'lb/yd3'), '520 lb/yd3 (310 kg/m3)'],
    [quantity(2, 'gal/yd3'), '2 gal/yd3 (10 L/m3)'],
    [quantity(15, 'ft'), '15 ft (4.5 m)'],
    [millimetres(19), '3/4 in. (19 mm)'],
    [millimetres(20), '3/4 in. (20 mm)'],
    [millimetres(40), '1-1/2 in. (40 mm)'],
    [millimetres(1.5), '1/16 in. (1.5 mm)'],
    [millimetres(300), '12 in. (300 mm)'],
    [megapascals(31), '4500 psi (31 MPa)'],
    [megapascals(30), '4350 psi (30 MPa)'],
    [celsius(10), '50 °F (10 °C)'],
    [celsius(4), '40 °F (4 °C)'],
    [quantity(335, 'kg/m3'), '564 lb/yd3 (335 kg/m3)'],
    [ratio(0.4), '0.40'],
    [percent(6), '6 percent'],
    [days(7), '7 days'],
    [days(1), '1 day'],
    [hours(2), '2 hours'],
  ] as const)('%j', (value, words) => expect(bothUnits(value)).toBe(words));
});

test('one system only, whichever was written', () => {
  expect([inSystem(psi(4500), 'ip'), inSystem(psi(4500), 'si')]).toEqual(['4500 psi', '31 MPa']);
  expect([inSystem(megapascals(31), 'ip'), inSystem(megapascals(31), 'si')]).toEqual(['4500 psi', '31 MPa']);
  expect(inSystem(days(7), 'si')).toBe('7 days');
});

test('a converted value shows no trace of arithmetic', () => {
  expect(say(psi(35 / 0.00689475729))).toBe('5076 psi');
  expect(say(quantity(0.1 + 0.2, 'kg/m2/h'))).toBe('0.3 kg/m2/h');
});

// Differences of temperature, °F to °C: 5 to 3, 20 to 11, 30 to 17, 35 to 19, 40 to 22, 50 to 28
test.each([
  [5, 3],
  [20, 11],
  [30, 17],
  [35, 19],
  [40, 22],
  [50, 28],
])('a difference of %i °F is %i °C', (degF, degC) => {
  expect(differenceInSystem(degF, 'degF', 'both')).toBe(`${degF} °F (${degC} °C)`);
  expect(differenceInSystem(degF, 'degF', 'si')).toBe(`${degC} °C`);
});

test('a difference stated in °C', () => expect(differenceInSystem(28, 'degC', 'ip')).toBe('50 °F'));

test('inches are mixed fractions', () => {
  expect([0.375, 0.5, 1, 1.25, 2.5, 0.0625, 0.3, 0].map(sayInches)).toEqual([
    '3/8',
    '1/2',
    '1',
    '1-1/4',
    '2-1/2',
    '1/16',
    '0.3',
    '0',
  ]);
});

test('a strength and its twin, from either side', () => {
  const pair = { inchPound: { amount: 5000, unit: 'psi' }, metric: { amount: 35, unit: 'MPa' } };
  expect(pairOf(psi(5000))).toMatchObject(pair);
  expect(pairOf(megapascals(35))).toMatchObject(pair);
});

test('what has no twin has none', () => expect(twin(percent(6))).toBeUndefined());
