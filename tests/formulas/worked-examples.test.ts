/** The worked examples of the trade's rule book, element by element. */
import { describe, expect, test } from 'vitest';
import { inches, psi } from '../../rules/model/quantity.ts';
import { air, caps, given, mixture, required, structure } from './asking.ts';

describe('worked examples', () => {
  // IBC 1904.2 and Table 19.3.2.1 footnote of ACI 318-19
  test('1: a plain salted walk on ground', () => {
    const walk = required({ ...given, code: 'ibc', classes: ['F3'], aggregate: inches(3 / 4) });
    expect(mixture(walk.lawful)).toEqual([undefined, 3500, 24]);
    expect(air(walk.lawful)).toEqual([6, 4.5, 7.5, undefined]);
    expect(mixture(walk.recommended)).toEqual([0.45, 4500, 31]);
    expect(walk.lawful.scm).toEqual([]);
    expect(walk.recommended?.scm.map(({ max }) => max)).toEqual(caps);
    expect(walk.recommended?.chloride).toBeUndefined();
  });

  // ACI 318-19, Tables 19.3.2.1, 19.3.3.1 and 26.4.2.2(b), 19.3.3.6
  test('2: a reinforced apron slab over a tunnel', () => {
    const apron = required({ ...structure, classes: ['F3', 'W1', 'C2'], aggregate: inches(3 / 4) });
    expect(mixture(apron.lawful)).toEqual([0.4, 5000, 35]);
    expect(air(apron.lawful)).toEqual([6, 4.5, 7.5, 5]);
    expect(apron.lawful.chloride).toMatchObject({ value: 0.15, of: 'cementitious materials' });
    expect(apron.lawful.scm.map(({ max }) => max)).toEqual(caps);
    expect(apron.lawful.curing).toMatchObject({ days: 7, highEarlyDays: 3 });
    expect(apron.recommended).toBeUndefined();
    expect(apron.alternatives).toEqual([]);
  });

  // ACI 318-14: the reduction needs more than 5000 psi; chloride by mass of cement
  test('3: the same under the 2014 edition', () => {
    const apron = required({
      ...structure,
      code: 'aci-318-14',
      classes: ['F3', 'C2'],
      aggregate: inches(3 / 4),
      strength: psi(5000),
    });
    expect(mixture(apron.lawful)).toEqual([0.4, 5000, 35]);
    expect(air(apron.lawful)).toEqual([6, 4.5, 7.5, undefined]);
    expect(apron.lawful.chloride).toMatchObject({ value: 0.15, of: 'cement' });
  });

  // ACI 318-19, Table 19.3.2.1: prestressed, 0.06 percent
  test('4: a post-tensioned deck of 6000 psi', () => {
    const deck = required({
      ...structure,
      prestressed: 'yes',
      classes: ['F3', 'C2'],
      aggregate: inches(3 / 4),
      strength: psi(6000),
    });
    expect(mixture(deck.lawful)).toEqual([0.4, 5000, 35]);
    expect(air(deck.lawful)).toEqual([6, 4.5, 7.5, 5]);
    expect(deck.lawful.chloride?.value).toBe(0.06);
  });

  // ACI 318-19, Tables 19.3.2.1 and 19.3.3.1; 26.4.2.2(d)
  test('5: an exterior wall above grade', () => {
    const wall = required({ ...structure, classes: ['F1', 'W1', 'C1'], aggregate: inches(1) });
    expect(mixture(wall.lawful)).toEqual([0.55, 3500, 24]);
    expect(air(wall.lawful)).toEqual([4.5, 3, 6, undefined]);
    expect(wall.lawful.chloride?.value).toBe(0.3);
    expect(wall.lawful.cementitious.map(({ origin }) => origin.clause)).toEqual(['26.4.2.2(d)']);
    expect(wall.lawful.scm).toEqual([]);
  });

  test('6: a retaining wall cap under snow', () => {
    const cap = required({ ...structure, classes: ['F2', 'W1', 'C1'], aggregate: inches(1.5) });
    expect(mixture(cap.lawful)).toEqual([0.45, 4500, 31]);
    expect(air(cap.lawful)).toEqual([5.5, 4, 7, undefined]);
    expect(cap.lawful.chloride?.value).toBe(0.3);
  });

  // ACI 302.1R-15 for the air
  test('7: a heated, hard-trowelled floor', () => {
    const floor = required({ ...structure, classes: ['F0', 'W0', 'C0'], finish: 'hard-trowelled interior floor' });
    expect(mixture(floor.lawful)).toEqual([undefined, 2500, 17]);
    expect(floor.lawful.air).toBeUndefined();
    expect(floor.lawful.chloride?.value).toBe(1);
    expect(mixture(floor.recommended)).toEqual([undefined, 2500, 17]);
    expect(floor.recommended?.airAtMost).toMatchObject({ value: 3, origin: { document: 'ACI 302.1R' } });
  });

  test('8: a wall in sulfate soil', () => {
    const wall = required({ ...structure, classes: ['F1', 'S2', 'W1', 'C1'], aggregate: inches(3 / 4) });
    expect(mixture(wall.lawful)).toEqual([0.45, 4500, 31]);
    expect(air(wall.lawful)).toEqual([5, 3.5, 6.5, undefined]);
    expect(wall.lawful.cementitious[0]?.value).toMatch(/^Class S2: .*Type V.*no calcium chloride$/);
  });

  test('9: a basement wall that must be tight', () => {
    const wall = required({ ...structure, classes: ['F1', 'W2', 'C1'], aggregate: inches(3 / 4) });
    expect(mixture(wall.lawful)).toEqual([0.5, 4000, 28]);
    expect(air(wall.lawful)).toEqual([5, 3.5, 6.5, undefined]);
    expect(wall.lawful.chloride?.value).toBe(0.3);
  });

  test('10: a plain topping with 3/8 in. stone', () => {
    const topping = required({ ...given, code: 'ibc', classes: ['F3'], aggregate: inches(3 / 8) });
    expect(mixture(topping.recommended)).toEqual([0.45, 4500, 31]);
    expect(air(topping.recommended)).toEqual([7.5, 6, 9, undefined]);
  });

  test('11: curb and gutter on private land', () => {
    const curb = required({ ...given, code: 'ibc', classes: ['F3'], aggregate: inches(3 / 4) });
    expect(mixture(curb.lawful)).toEqual([undefined, 3500, 24]);
    expect(mixture(curb.recommended)).toEqual([0.45, 4500, 31]);
    expect(air(curb.lawful)).toEqual([6, 4.5, 7.5, undefined]);
  });

  // IRC Table R402.2 and its footnotes
  test('12: a residential garage floor in severe weathering', () => {
    const floor = required({ ...given, code: 'irc', classes: ['severe'] });
    expect(mixture(floor.lawful)).toEqual([undefined, 3500, 24]);
    expect(air(floor.lawful)).toEqual([6, 5, 7, undefined]);
    const [other] = floor.alternatives;
    expect(other?.about).toBe('finish');
    expect([other?.limits.strength?.value.inchPound.amount, other?.limits.air?.low]).toEqual([4000, 3]);
    expect(other?.limits.air?.origin.known).toBe('from memory');
  });
});
