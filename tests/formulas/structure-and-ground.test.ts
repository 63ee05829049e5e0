/** Structural or on ground, plain or reinforced: which document speaks, and what is put as a question. */
import { describe, expect, test } from 'vitest';
import type { RequirementInput } from '../../rules/formulas/requirement-input.ts';
import { inches, psi } from '../../rules/model/quantity.ts';
import { air, caps, given, mixture, required, structure } from './asking.ts';

describe('structural or not comes first', () => {
  const walk = { ...given, code: 'aci-318-19', classes: ['F3'], aggregate: inches(3 / 4) } as const;

  test('a ground slab under ACI 318 has the law of the IBC, and the plain pair as advice', () => {
    const { lawful, recommended, declared, steps } = required(walk);
    expect([mixture(lawful), mixture(recommended), declared]).toEqual([
      [undefined, 3500, 24],
      [0.45, 4500, 31],
      undefined,
    ]);
    expect(steps[0]?.origin).toMatchObject({ document: 'ACI 318', edition: '19', clause: '1.4.8' });
  });

  test('a declared class binds a ground slab, except under the IBC alone', () => {
    const declared = required({ ...walk, declared: 'yes' });
    expect(mixture(declared.declared)).toEqual([0.45, 4500, 31]);
    expect(declared.declared?.scm.map(({ max }) => max)).toEqual(caps);
    expect(mixture(required({ ...walk, declared: 'yes', reinforced: 'yes' }).declared)).toEqual([0.4, 5000, 35]);
    expect(required({ ...walk, declared: 'yes', code: 'ibc' }).declared).toBeUndefined();
  });

  test('unknown is judged as a ground slab, with the structural pair as a question', () => {
    const slab = required({ ...walk, structural: 'unknown', reinforced: 'unknown', classes: ['F3', 'C2'] });
    expect(mixture(slab.lawful)).toEqual([undefined, 3500, 24]);
    expect(slab.recommended?.chloride).toBeUndefined();
    expect(slab.alternatives.map(({ about, limits }) => [about, ...mixture(limits)])).toEqual([
      ['structural', 0.4, 5000, 35],
      ['reinforced', 0.4, 5000, 35],
    ]);
    expect(slab.alternatives[0]?.limits.chloride?.value).toBe(0.15);
  });

  test('structural members under the IBC are held to ACI 318', () => {
    const deck = required({ ...structure, code: 'ibc', classes: ['F3'], aggregate: inches(3 / 4) });
    expect(mixture(deck.lawful)).toEqual([0.4, 5000, 35]);
  });

  test('a ground slab that does not freeze gets no advice', () => {
    const floor = required({ ...walk, classes: ['F0'] });
    expect(mixture(floor.lawful)).toEqual([undefined, 2500, 17]);
    expect([floor.lawful.air, floor.recommended]).toEqual([undefined, undefined]);
  });

  test('F1 on ground is advised by its own row', () => {
    const slab = required({ ...walk, classes: ['F1'] });
    expect([mixture(slab.lawful), mixture(slab.recommended)]).toEqual([
      [undefined, 3000, 21],
      [0.55, 3500, 24],
    ]);
  });

  test('a C class is not put on a plain ground slab', () => {
    expect(mixture(required({ ...walk, classes: ['F3', 'C2'] }).recommended)).toEqual([0.45, 4500, 31]);
  });
});

describe('what a ground slab leaves open', () => {
  const slab = { ...given, code: 'aci-318-19', aggregate: inches(3 / 4) } as const;
  const questions = (input: RequirementInput) =>
    required(input).alternatives.map(({ about, given: words, limits }) => [about, words, limits.wcm?.value.amount]);

  test('plain concrete may still be structural: the plain pair', () => {
    expect(questions({ ...slab, structural: 'unknown', classes: ['F3'] })).toEqual([
      ['structural', 'part of the structure', 0.45],
    ]);
  });

  test('the question names steel where nothing is said of it', () => {
    expect(questions({ ...slab, structural: 'unknown', reinforced: 'unknown', classes: ['F2'] })).toEqual([
      ['structural', 'part of the structure and reinforced', 0.45],
    ]);
  });

  test('steel that is there but not structural is a question until the project declares the class', () => {
    const reinforced = { ...slab, reinforced: 'yes', classes: ['F3', 'C2'] } as const;
    expect(questions(reinforced)).toEqual([['reinforced', 'reinforced with at least the minimum steel', 0.4]]);
    expect(required(reinforced).alternatives[0]?.limits.chloride?.value).toBe(0.15);
    expect(questions({ ...reinforced, declared: 'yes' })).toEqual([]);
    const unknown = required({ ...reinforced, reinforced: 'unknown' }).alternatives[0]?.limits;
    expect([unknown?.wcm?.value.amount, unknown?.chloride?.value]).toEqual([0.4, 0.15]);
  });

  test('nothing is asked where nothing hangs on it', () => {
    expect(questions({ ...slab, reinforced: 'unknown', prestressed: 'yes', classes: ['F3'] })).toEqual([]);
    expect(questions({ ...slab, structural: 'unknown', classes: [] })).toEqual([]);
    expect(questions({ ...slab, code: 'irc', reinforced: 'unknown', classes: ['F3'] }).map(([about]) => about)).toEqual(
      ['finish'],
    );
  });

  test('a specified strength of 5000 psi permits less air on ground too', () => {
    expect(air(required({ ...slab, classes: ['F3'], strength: psi(5000) }).lawful)).toEqual([6, 4.5, 7.5, 5]);
    const unsized = required({ ...given, code: 'aci-318-19', classes: ['F3'], strength: psi(5000) });
    expect(unsized.alternatives.map(({ limits }) => limits.air?.reducedTarget)).toEqual([6.5, 6, 5, 5, 4.5]);
  });

  test('the working says whether the text or we took it for a ground slab', () => {
    const opening = (structural: 'no' | 'unknown') => required({ ...slab, structural, classes: ['F3'] }).steps[0]?.text;
    expect(opening('no')).toMatch(/^on ground and no part of the structure;/);
    expect(opening('unknown')).toMatch(/^not said to be structural, so judged as on ground;/);
  });

  test('a class of level 0 beside F3 does not take the advice away', () => {
    expect(mixture(required({ ...slab, classes: ['F3', 'W0'] }).recommended)).toEqual([0.45, 4500, 31]);
  });
});

describe('several classes of one category', () => {
  test('the most severe of them speaks', () => {
    const { lawful } = required({ ...structure, classes: ['F1', 'F3', 'S1', 'S3', 'C1', 'C2'], aggregate: inches(1) });
    expect(air(lawful)?.[0]).toBe(6);
    expect(lawful.chloride?.value).toBe(0.15);
    expect(lawful.cementitious.map(({ value }) => value.slice(0, 9))).toEqual(['Class S3:']);
  });

  test('dry classes ask for no evidence, and no C class for no chloride limit', () => {
    const { lawful, steps } = required({ ...structure, classes: ['W0'] });
    expect([lawful.cementitious, lawful.chloride]).toEqual([[], undefined]);
    expect(steps.map(({ text }) => text).join()).not.toContain('strictest');
  });
});

describe('plain or reinforced, in the structure', () => {
  const stair = { ...structure, classes: ['F3'], aggregate: inches(3 / 4) } as const;

  test.each([
    ['yes', 0.4, 5000],
    ['no', 0.45, 4500],
    ['unknown', 0.45, 4500],
  ] as const)('reinforced %s', (reinforced, wcm, strength) => {
    expect(mixture(required({ ...stair, reinforced }).lawful).slice(0, 2)).toEqual([wcm, strength]);
  });

  test('unknown puts the reinforced pair as a question', () => {
    const { alternatives } = required({ ...stair, reinforced: 'unknown' });
    expect(alternatives.map(({ about, limits }) => [about, limits.wcm?.value.amount])).toEqual([['reinforced', 0.4]]);
    expect(required({ ...stair, reinforced: 'no' }).alternatives).toEqual([]);
  });

  test('C2 beside F3 asks for 0.40 and 5000 psi by itself, and nothing hangs on the steel', () => {
    const slab = required({ ...stair, reinforced: 'unknown', classes: ['F3', 'C2'] });
    expect(mixture(slab.lawful)).toEqual([0.4, 5000, 35]);
    expect(slab.alternatives).toEqual([]);
  });

  test('prestressed concrete is never plain', () => {
    const slab = required({ ...stair, reinforced: 'unknown', prestressed: 'yes' });
    expect(mixture(slab.lawful)).toEqual([0.4, 5000, 35]);
    expect(slab.lawful.chloride?.value).toBe(0.06);
  });

  test('plain concrete has no chloride limit', () => {
    expect(required({ ...stair, reinforced: 'no', classes: ['F3', 'C1'] }).lawful.chloride).toBeUndefined();
  });
});
