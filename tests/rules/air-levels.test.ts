/** Rules on air, on facts made by hand: at which level they speak, and where they keep silent. */
import { describe, expect, test } from 'vitest';
import type { ActFact } from '../../rules/model/fact.ts';
import { found, levels } from './levels.ts';
import { about, act, article, type Made, name, value, walk } from './made.ts';

const f3 = name('exposure-class', 'F3');
const threeQuarters = value('aggregate-size', 'in', { max: 0.75 });

describe('air', () => {
  const air = (bounds: object, over: object = {}) => value('air-content', 'percent', bounds, over);
  const ban = (over: Partial<ActFact> = {}) => act('air-entrainment', { verb: 'entrain' }, { force: 'ban', ...over });

  test('too low for the stone, or for every stone', () => {
    const facts = [f3, threeQuarters];
    expect(
      levels('air-content-low', { elements: [walk()], facts: [...facts, air({ target: 6, plus: 1.5, minus: 1.5 })] }),
    ).toEqual([]);
    expect(levels('air-content-low', { elements: [walk()], facts: [...facts, air({ min: 4, max: 8 })] })).toEqual([
      'must',
    ]);
    expect(levels('air-content-low', { elements: [walk()], facts: [f3, air({ min: 4, max: 8 })] })).toEqual([]);
    expect(levels('air-content-low', { elements: [walk()], facts: [threeQuarters, air({ min: 4 })] })).toEqual([
      'should',
    ]);
  });

  test('the words say what is accepted as written, where it is less than the band', () => {
    const detail = (bounds: object) =>
      found('air-content-low', { elements: [walk()], facts: [f3, threeQuarters, air(bounds)] })[0]?.detail;
    expect(detail({ min: 3, max: 8 })).toContain('a load with 3 percent is accepted');
    expect(detail({ target: 5, plus: 3, minus: 0.5 })).not.toContain('is accepted');
  });

  test('a value of another dimension is left alone', () => {
    expect(
      levels('air-content-low', { elements: [walk()], facts: [f3, value('air-content', 'psi', { target: 1 })] }),
    ).toEqual([]);
  });

  test('a number without a band, unless the band is said apart or a cited standard carries it', () => {
    const said = (...facts: Made['facts'] & object) =>
      levels('air-tolerance-missing', { elements: [walk()], facts: [f3, ...facts] });
    expect(said(air({ target: 6 }))).toEqual(['should']);
    expect(said(air({ target: 6 }), air({ plus: 1.5, minus: 1.5 }))).toEqual([]);
    expect(said(air({ target: 6 }), name('standard', 'ASTM C94', { of: 'requirement' }))).toEqual([]);
    expect(said(air({ target: 6 }), name('standard', 'ASTM C94', { of: 'listed' }))).toEqual(['should']);
    expect(said(air({ min: 4 }))).toEqual([]);
    expect(said(air({ target: 6, plus: 1 }))).toEqual([]);
    expect(said(air({ target: 6 }), air({ min: 4 }))).toEqual(['should']);
    expect(said(air({ target: 6 }), air({ min: 4, max: 8 }))).toEqual([]);
    expect(said(air({ target: 6 }), air({ minus: 1 }))).toEqual([]);
  });

  test('a ban in general yields to the number of the element, a ban of its own does not', () => {
    const own = air({ target: 6 }, about(walk()));
    const said = (...facts: Made['facts'] & object) =>
      levels('air-entrainment-forbidden-outdoors', { elements: [walk()], facts });
    expect(said(ban())).toEqual(['must']);
    expect(said(ban(), own)).toEqual([]);
    expect(said(ban(about(walk())), own)).toEqual(['must']);
    const outdoorsOnly = { subject: { elements: [], mixtures: [], exterior: 'yes', by: 'words' } } as const;
    expect(said(ban(), air({ target: 6 }, outdoorsOnly))).toEqual([]);
    expect(said(ban(outdoorsOnly), air({ target: 6 }, outdoorsOnly))).toEqual(['must']);
    expect(said(ban({ force: 'waive' }))).toEqual(['must']);
    expect(said(ban({ force: 'require' }))).toEqual([]);
    expect(said(ban({ doubt: 'a word is lost' }))).toEqual([]);
    expect(said(ban({ act: { verb: 'entrain', manner: 'plain' } }))).toEqual(['must']);
    expect(said(air({ max: 3 }, { doubt: 'a digit is lost' }))).toEqual([]);
    expect(said(air({ min: 1, max: 3 }))).toEqual([]);
    expect(said(air({ max: 3 }))).toEqual(['must']);
    expect(said(air({ max: 6 }))).toEqual([]);
    expect(said(ban({ act: { verb: 'entrain', manner: 'material' } }))).toEqual([]);
  });

  test('left to choice, unless a class or a number decides', () => {
    const choice = (manner: string, force: ActFact['force'] = 'require') =>
      act('air-entrainment', { verb: 'entrain', manner }, { force });
    const said = (...facts: Made['facts'] & object) =>
      levels('air-entrainment-optional', { elements: [walk()], facts });
    expect(said(choice('as needed'))).toEqual(['must']);
    expect(said(choice('plain', 'permit'))).toEqual(['must']);
    expect(said(choice('site adjustment', 'permit'))).toEqual([]);
    expect(said(choice('where required'))).toEqual(['must']);
    expect(said(choice('where required'), f3)).toEqual([]);
    expect(said(choice('as needed'), f3)).toEqual(['must']);
    expect(said(choice('as needed'), air({ target: 6 }))).toEqual([]);
  });

  test('a method counts where a test names it, not in the reference list', () => {
    const said = (...facts: Made['facts'] & object) =>
      levels('air-test-method-missing', { elements: [walk()], facts: [f3, ...facts] });
    expect(said()).toEqual([]);
    expect(said(name('test', 'slump'))).toEqual(['should']);
    expect(said(name('test', 'air'), name('standard', 'ASTM C231', { of: 'listed' }))).toEqual(['should']);
    expect(said(name('test', 'air', { of: 'ASTM C231' }))).toEqual([]);
    expect(said(name('test', 'slump'), name('standard', 'ASTM C231', { of: 'test' }))).toEqual([]);
    expect(said(name('test', 'slump'), name('standard', 'ASTM C143', { of: 'test' }))).toEqual(['should']);
    const precast = walk({ traits: new Set(['precast']) });
    expect(levels('air-test-method-missing', { elements: [precast], facts: [f3, name('test', 'slump')] })).toEqual([]);
    const articles = [article('field-quality', '3.08')];
    expect(levels('air-test-method-missing', { elements: [walk()], facts: [f3], articles })).toEqual(['should']);
  });

  test('each point of acceptance that is said leaves its line', () => {
    const lines = ['how often', 'where the sample', 'what follows', 'who may test'];
    const points = ['air frequency', 'air sampling', 'air action', 'air tester'];
    for (const [at, point] of points.entries()) {
      const detail = found('air-test-method-missing', { elements: [walk()], facts: [f3, name('test', point)] })[0]
        ?.detail;
      expect(lines.filter((line) => detail?.includes(line))).toEqual(lines.filter((_, other) => other !== at));
    }
  });
});
