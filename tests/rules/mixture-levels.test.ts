/** Rules on water, strength, class and binder, on facts made by hand: law, declared class, advice, and silence. */
import { describe, expect, test } from 'vitest';
import type { Fact } from '../../rules/model/fact.ts';
import type { CodeId } from '../../rules/model/project.ts';
import type { Element } from '../../rules/model/specification.ts';
import { found, levels } from './levels.ts';
import { about, article, element, floor, type Made, name, value, walk } from './made.ts';

const outdoors = { kind: 'outdoor-noun', words: 'exterior', place: '' } as const;
const f3 = name('exposure-class', 'F3');
const deck = element('tunnel deck', 'deck', [outdoors], { traits: new Set(['suspended']) });

describe('w/cm', () => {
  const at = (max: number) => value('w-cm', '', { max });
  const said = (made: Made) => levels('w-cm-high', made);

  test('a declared class binds a ground slab, a computed one advises', () => {
    expect(said({ elements: [walk()], facts: [f3, at(0.5)] })).toEqual(['must']);
    expect(said({ elements: [walk()], facts: [at(0.5)] })).toEqual(['should']);
  });

  test('under the building code alone the ratio of a ground slab is advice', () => {
    expect(said({ elements: [walk()], facts: [f3, at(0.5)], project: { code: 'ibc' } })).toEqual(['should']);
  });

  test('0.45 is for plain concrete, 0.40 for reinforced decks; rounding is not held against anyone', () => {
    expect(said({ elements: [walk()], facts: [f3, at(0.45)] })).toEqual([]);
    expect(said({ elements: [walk()], facts: [f3, at(0.454)] })).toEqual([]);
    expect(said({ elements: [deck], facts: [f3, at(0.45)] })).toEqual(['must']);
    expect(said({ elements: [deck], facts: [at(0.45)] })).toEqual(['should']);
  });

  test('lightweight and pervious concrete, floors and mild climates are left alone', () => {
    for (const trait of ['lightweight', 'pervious']) {
      expect(said({ elements: [walk({ traits: new Set([trait]) })], facts: [f3, at(0.5)] })).toEqual([]);
    }
    expect(said({ elements: [floor()], facts: [at(0.6)] })).toEqual([]);
    expect(said({ elements: [walk()], facts: [at(0.6)], project: { climate: 'mild' } })).toEqual([]);
  });

  test('no number at all makes a missing ratio graver', () => {
    const air = value('air-content', 'percent', { target: 6 });
    expect(levels('w-cm-missing', { elements: [walk()], facts: [f3] })).toEqual(['must']);
    expect(levels('w-cm-missing', { elements: [walk()], facts: [f3, air] })).toEqual(['should']);
    const drawn = name('elsewhere', 'strength', { of: 'Drawings' });
    expect(levels('w-cm-missing', { elements: [walk()], facts: [f3, drawn] })).toEqual(['should']);
  });
});

describe('strength', () => {
  const at = (amount: number, over: object = {}) => value('strength', 'psi', { min: amount }, over);
  const said = (made: Made) => levels('strength-low', made);

  test('law, declared class and advice', () => {
    expect(said({ elements: [walk()], facts: [f3, at(4000)] })).toEqual(['must']);
    expect(said({ elements: [walk()], facts: [at(4000)] })).toEqual(['should']);
    expect(said({ elements: [walk()], facts: [f3, at(4000)], project: { code: 'ibc' } })).toEqual(['should']);
    expect(said({ elements: [walk()], facts: [f3, at(3000)], project: { code: 'ibc' } })).toEqual(['must']);
    expect(said({ elements: [walk()], facts: [at(3000)], project: { code: 'irc' } })).toEqual(['must']);
  });

  test('a must names what binds, and the other number beside it', () => {
    const said = (code: CodeId, ...facts: Made['facts'] & object) =>
      found('strength-low', { elements: [walk()], facts, project: { code } })[0];
    expect(said('irc', at(3000))?.message).toBe(
      "f'c 3000 psi for shelter walks in 3.04.A is below 3500 psi (24 MPa) (residential table)",
    );
    expect(said('irc', at(3000))?.detail).toMatch(/^A strength that lasts is 4500 psi \(31 MPa\)/);
    expect(said('ibc', f3, at(3000))?.required).toBe('3500 psi (24 MPa)');
    expect(said('ibc', f3, at(3700))?.required).toBe('4500 psi (31 MPa)');
    expect(said('ibc', f3, at(3700))?.detail).toContain('The lawful minimum is 3500 psi (24 MPa) (IBC 1904.2).');
    expect(said('aci-318-19', f3, at(3000))?.required).toBe('4500 psi (31 MPa)');
  });

  test('a metric twin, an early strength and a modulus of rupture are no faults', () => {
    expect(said({ elements: [walk()], facts: [f3, value('strength', 'MPa', { min: 31 })] })).toEqual([]);
    expect(said({ elements: [walk()], facts: [f3, at(2500, { age: 7 })] })).toEqual([]);
    expect(said({ elements: [walk()], facts: [f3, at(600, { of: 'flexural' })] })).toEqual([]);
    expect(said({ elements: [walk()], facts: [f3, value('strength', 'MPa', { min: 28 })] })).toEqual(['must']);
  });
});

describe('exposure', () => {
  const salted = walk({ salted: { value: 'yes' } });
  const mild = (made: Made) => levels('exposure-too-mild-for-use', made);

  test('a class without salts under salts: graver where the text itself speaks of them', () => {
    const f2 = name('exposure-class', 'F2');
    expect(mild({ elements: [salted], facts: [f2] })).toEqual(['must']);
    expect(mild({ elements: [walk()], facts: [f2], project: { deicers: 'yes' } })).toEqual(['should']);
    expect(mild({ elements: [walk()], facts: [f2] })).toEqual([]);
    expect(mild({ elements: [salted], facts: [f3, name('exposure-class', 'W1')] })).toEqual([]);
  });

  test('the class asked for depends on how the element lies and on its steel', () => {
    const asked = (own: Element, token: string) =>
      found('exposure-too-mild-for-use', { elements: [own], facts: [name('exposure-class', token)] })[0]?.required;
    const wall = element('parapet walls', 'wall', [outdoors], { salted: { value: 'yes' } });
    expect([asked(salted, 'XF3'), asked(wall, 'XF1')]).toEqual(['XF4', 'XF2']);
    expect(asked(salted, 'F-2')).toBe('C-2');
    expect(asked(walk({ salted: { value: 'yes' }, traits: new Set(['reinforced']) }), 'F-2')).toBe('C-1');
    expect(asked(salted, 'F0')).toBe('F3');
  });

  test('parking is asked even where nobody speaks of salts, unless they are ruled out', () => {
    const lot = element('parking', 'parking', [outdoors]);
    const f1 = name('exposure-class', 'F1');
    expect(mild({ elements: [lot], facts: [f1] })).toEqual(['should']);
    expect(mild({ elements: [lot], facts: [f1], project: { deicers: 'no' } })).toEqual([]);
  });

  test('a missing class asks about salts where they are not spoken of', () => {
    const detail = (made: Made) => found('exposure-class-missing', made)[0]?.detail;
    expect(detail({ elements: [walk()] })).toContain('whether de-icers will reach it');
    expect(detail({ elements: [salted] })).not.toContain('whether de-icers will reach it');
    const curbs = element('curbs', 'curb', [outdoors]);
    const numbers = [
      value('w-cm', '', { max: 0.45 }),
      value('strength', 'psi', { min: 4500 }),
      value('air-content', 'percent', { target: 6 }, about(walk())),
    ];
    expect(levels('exposure-class-missing', { elements: [walk(), curbs], facts: numbers })).toEqual(['should']);
  });

  test('the 2025 edition takes F2 with C2 for F3', () => {
    const facts = [name('exposure-class', 'F2'), name('exposure-class', 'C2')];
    expect(mild({ elements: [salted], facts, project: { code: 'aci-318-25' } })).toEqual([]);
    expect(mild({ elements: [salted], facts })).toEqual(['must']);
  });

  test('a missing class is a note where all numbers are there, and no matter under the residential code', () => {
    const numbers = [
      value('air-content', 'percent', { target: 6 }),
      value('w-cm', '', { max: 0.45 }),
      value('strength', 'psi', { min: 4500 }),
    ];
    expect(levels('exposure-class-missing', { elements: [walk()] })).toEqual(['should']);
    expect(levels('exposure-class-missing', { elements: [walk()], facts: numbers })).toEqual(['note']);
    expect(levels('exposure-class-missing', { elements: [walk()], project: { code: 'irc' } })).toEqual([]);
    expect(levels('exposure-class-missing', { elements: [walk()], facts: [name('exposure-class', 'W1')] })).toEqual([
      'should',
    ]);
  });
});

describe('supplementary materials', () => {
  const share = (of: string, max: number) => value('scm', 'percent', { max }, { of });
  const said = (...facts: Made['facts'] & object) => levels('scm-over-cap', { elements: [walk()], facts });

  test('each material has its cap, in the class with salts only', () => {
    expect(said(f3, share('fly ash', 40))).toEqual(['must']);
    expect(said(f3, share('fly ash', 25), share('slag cement', 50), share('silica fume', 10))).toEqual([]);
    expect(said(share('fly ash', 40))).toEqual(['should']);
    expect(said(name('exposure-class', 'F2'), share('fly ash', 40))).toEqual([]);
    expect(said(f3, share('limestone', 40))).toEqual([]);
  });
});

describe('what hangs on the element', () => {
  const low = value('strength', 'psi', { min: 3000 });
  const ash = value('scm', 'percent', { max: 40 }, { of: 'fly ash' });
  const wet = value('w-cm', '', { max: 0.5 });
  const trait = (own: string) => [walk({ traits: new Set([own]) })];

  test('pervious concrete has rules of its own, slipformed pavement those of its agency', () => {
    for (const [rule, fact] of [
      ['strength-low', low],
      ['scm-over-cap', ash],
      ['w-cm-high', wet],
    ] as const) {
      expect(levels(rule, { elements: trait('pervious'), facts: [f3, fact] })).toEqual([]);
    }
    expect(levels('strength-missing', { elements: trait('pervious'), facts: [f3] })).toEqual([]);
    expect(levels('scm-over-cap', { elements: trait('slipform'), facts: [f3, ash] })).toEqual([]);
    expect(levels('strength-low', { elements: trait('slipform'), facts: [f3, low] })).toEqual(['must']);
  });

  test('floors are held to none of it, and what another code asks is not computed', () => {
    for (const rule of ['strength-missing', 'w-cm-missing', 'exposure-class-missing']) {
      expect(levels(rule, { elements: [floor()] })).toEqual([]);
    }
    expect(levels('strength-missing', { elements: [walk()], project: { code: 'en-206' } })).toEqual([]);
    expect(levels('w-cm-missing', { elements: [walk()], project: { code: 'en-206' } })).toEqual([]);
  });

  test('a section that specifies no mixture is not asked for its numbers', () => {
    const articles = [article('finishing', '3.04')];
    for (const rule of ['strength-missing', 'w-cm-missing', 'air-content-missing', 'exposure-class-missing']) {
      expect(levels(rule, { elements: [walk()], articles })).toEqual([]);
    }
  });

  test('the question of steel is put beside the number', () => {
    const detail = (rule: string, fact: Fact) => found(rule, { elements: [walk()], facts: [f3, fact] })[0]?.detail;
    expect(detail('w-cm-high', wet)).toContain('w/cm at most 0.40');
    expect(detail('strength-low', low)).toContain("f'c at least 5000 psi (35 MPa)");
  });

  test('advice is called advice where a number is missing', () => {
    const detail = (rule: string, ...facts: Fact[]) => found(rule, { elements: [walk()], facts })[0]?.detail;
    for (const rule of ['w-cm-missing', 'strength-missing']) {
      expect(detail(rule)).toContain('this is advice');
      expect(detail(rule, f3)).toBeUndefined();
    }
    expect(found('scm-over-cap', { elements: [walk()], facts: [f3, ash] })[0]?.detail).toBeUndefined();
  });
});
