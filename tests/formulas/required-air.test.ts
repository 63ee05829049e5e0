/** Air by class, size, strength and edition, against ACI 318 Table 19.3.3.1 with the tolerance of ASTM C94. */
import { describe, expect, test } from 'vitest';
import { requiredAir } from '../../rules/formulas/required-air.ts';
import { inches, megapascals, millimetres, psi } from '../../rules/model/quantity.ts';

const f3 = { class: 'F3', edition: 'aci-318-19' } as const;
const band = (input: Parameters<typeof requiredAir>[0]) => {
  const { target, low, high, reducedTarget } = requiredAir(input).value;
  return [target, low, high, reducedTarget];
};

describe('a size of the table', () => {
  // ACI 318-19, Table 19.3.3.1, with 1.5 points either way
  test.each([
    ['F1', 3 / 8, 6, 4.5, 7.5],
    ['F1', 3 / 4, 5, 3.5, 6.5],
    ['F1', 1, 4.5, 3, 6],
    ['F1', 3, 3.5, 2, 5],
    ['F2', 1.5, 5.5, 4, 7],
    ['F2', 2, 5, 3.5, 6.5],
    ['F3', 3 / 8, 7.5, 6, 9],
    ['F3', 1 / 2, 7, 5.5, 8.5],
    ['F3', 3 / 4, 6, 4.5, 7.5],
    ['F3', 1, 6, 4.5, 7.5],
    ['F3', 3, 4.5, 3, 6],
  ] as const)('%s, %f in.: %f, %f to %f', (name, size, target, low, high) => {
    expect(band({ class: name, edition: 'aci-318-19', aggregate: inches(size) })).toEqual([
      target,
      low,
      high,
      undefined,
    ]);
  });

  test.each([
    ['20 mm is read as 19 mm', millimetres(20), 6],
    ['10 mm as 9.5 mm', millimetres(10), 7.5],
    ['40 mm as 37.5 mm', millimetres(40), 5.5],
  ] as const)('%s', (_, aggregate, target) => expect(band({ ...f3, aggregate })[0]).toBe(target));
});

describe('no size of the table', () => {
  test('not given: the lowest target and the widest ends of every size up to 1-1/2 in.', () => {
    expect(band(f3)).toEqual([5.5, 4, 9, undefined]);
    expect(band({ class: 'F1', edition: 'aci-318-19' })).toEqual([4.5, 3, 7.5, undefined]);
  });

  test('5/8 in. is between 1/2 and 3/4: the lenient end of both', () => {
    expect(band({ ...f3, aggregate: inches(5 / 8) })).toEqual([6, 4.5, 8.5, undefined]);
  });

  test('beyond the ends the last row holds', () => {
    expect(band({ ...f3, aggregate: inches(6) })[0]).toBe(4.5);
    expect(band({ ...f3, aggregate: inches(1 / 4) })[0]).toBe(7.5);
  });
});

describe('the permitted reduction', () => {
  const at = (edition: 'aci-318-19' | 'aci-318-14', strength: Parameters<typeof requiredAir>[0]['strength']) =>
    band({ class: 'F3', edition, aggregate: inches(3 / 4), strength })[3];

  // ACI 318-19, 19.3.3.6; ACI 318-14, 19.3.3.3
  test('2019 from 5000 psi on, 2014 only above', () => {
    expect(at('aci-318-19', psi(5000))).toBe(5);
    expect(at('aci-318-14', psi(5000))).toBeUndefined();
    expect(at('aci-318-14', psi(6000))).toBe(5);
    expect(at('aci-318-19', psi(4500))).toBeUndefined();
  });

  test('35 MPa is 5000 psi, neither more nor less', () => {
    expect(at('aci-318-19', megapascals(35))).toBe(5);
    expect(at('aci-318-14', megapascals(35))).toBeUndefined();
    expect(at('aci-318-14', megapascals(41))).toBe(5);
    expect(at('aci-318-19', megapascals(31))).toBeUndefined();
  });

  test('it leaves target and band as they are', () => {
    expect(band({ ...f3, aggregate: inches(3 / 4), strength: psi(5000) })).toEqual([6, 4.5, 7.5, 5]);
  });
});

test('the steps say size, target, tolerance and reduction, each with its origin', () => {
  const { steps } = requiredAir({ ...f3, aggregate: inches(3 / 4), strength: psi(5000) });
  expect(steps.map(({ text }) => text)).toEqual([
    'Class F3, 3/4 in. (19 mm) aggregate: 6 percent total air',
    'tolerance ± 1.5 points as delivered: 4.5 to 7.5 percent',
    "f'c of 5000 psi (35 MPa) is at or above 5000 psi (35 MPa): the target may be 1 point lower",
  ]);
  expect(steps.map(({ origin }) => origin?.clause)).toEqual([
    '19.3.3.1, Table 19.3.3.1',
    'section on air content',
    '19.3.3.6',
  ]);
});
