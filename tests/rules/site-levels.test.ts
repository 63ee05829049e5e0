/** Rules on finishing and on winter, on facts made by hand: at which level they speak, and where they keep silent. */
import { describe, expect, test } from 'vitest';
import type { ActFact } from '../../rules/model/fact.ts';
import { levels } from './levels.ts';
import { about, act, element, floor, type Made, name, value, walk } from './made.ts';

const outdoors = { kind: 'outdoor-noun', words: 'exterior', place: '' } as const;

describe('finishing', () => {
  const finish = (...steps: string[]) => act('finish', { verb: 'finish', steps });

  test('a trowel at the end, before the broom, or only to close tears', () => {
    const hard = (...steps: string[]) =>
      levels('hard-trowel-outdoors', { elements: [walk()], facts: [finish(...steps)] });
    const ahead = (...steps: string[]) =>
      levels('trowel-before-broom', { elements: [walk()], facts: [finish(...steps)] });
    expect([hard('float', 'hard trowel'), ahead('float', 'hard trowel')]).toEqual([['must'], []]);
    expect([hard('trowel', 'broom'), ahead('trowel', 'broom')]).toEqual([[], ['must']]);
    expect([hard('light trowel', 'broom'), ahead('light trowel', 'broom')]).toEqual([['note'], []]);
    expect([hard('float', 'broom'), ahead('float', 'broom')]).toEqual([[], []]);
  });

  test('a finish of its own wins over that of slabs in general; walls and floors are left alone', () => {
    const facts = [finish('hard trowel'), { ...finish('broom'), ...about(walk()) }];
    expect(levels('hard-trowel-outdoors', { elements: [walk()], facts })).toEqual([]);
    const wall = element('exterior walls', 'wall', [outdoors]);
    expect(levels('hard-trowel-outdoors', { elements: [wall, floor()], facts: [finish('hard trowel')] })).toEqual([]);
  });

  test('a ban on wetting the subgrade or the broom is no ban on wetting the surface', () => {
    const ban = (object: string) => act('surface-water', { verb: 'wet', object }, { force: 'ban' });
    const said = (object: string) => levels('surface-water-ban-missing', { elements: [walk()], facts: [ban(object)] });
    expect(said('broom')).toEqual(['should']);
    expect(said('surface')).toEqual([]);
  });

  test('precast, slipformed and pervious work is not finished by hand', () => {
    for (const trait of ['precast', 'slipform', 'pervious']) {
      expect(levels('surface-water-ban-missing', { elements: [walk({ traits: new Set([trait]) })] })).toEqual([]);
    }
  });
});

describe('winter', () => {
  const accelerator = (material: string, force: ActFact['force'] = 'permit') =>
    act('accelerator', { verb: 'use', material }, { force });
  const reinforced = walk({ traits: new Set(['reinforced']) });
  const chloride = (made: Made) => levels('calcium-chloride-allowed', made);

  test('chloride is graver the surer the steel', () => {
    const facts = [accelerator('calcium chloride')];
    expect(chloride({ elements: [reinforced], facts })).toEqual(['must']);
    expect(chloride({ elements: [walk()], facts })).toEqual(['should']);
    expect(chloride({ elements: [walk({ traits: new Set(['plain']) })], facts })).toEqual(['note']);
  });

  test('an accelerator of no kind is fine beside the word non-chloride', () => {
    const facts = [accelerator('unspecified')];
    expect(chloride({ elements: [reinforced], facts })).toEqual(['should']);
    expect(chloride({ elements: [reinforced], facts: [...facts, accelerator('non-chloride', 'require')] })).toEqual([]);
    expect(chloride({ elements: [reinforced], facts: [...facts, accelerator('chloride', 'ban')] })).toEqual([]);
  });

  test('a wish, a plan or a frozen base is no cold-weather clause; protection and mild months are', () => {
    const said = (...facts: Made['facts'] & object) =>
      levels('cold-weather-clause-missing', { elements: [walk()], facts });
    for (const verb of ['avoid', 'plan', 'frozen base'])
      expect(said(act('cold-weather', { verb }))).toEqual(['should']);
    expect(said(act('cold-weather', { verb: 'protect' }))).toEqual([]);
    expect(said(name('season', 'mild months'))).toEqual([]);
    expect(said(name('season', 'late'))).toEqual(['should']);
  });

  test('de-icers are held off by days, by a ban in the first winter, or by heat in the slab', () => {
    const said = (made: Made) => levels('deicer-hold-off-missing', made);
    const use = (slots: object, force: ActFact['force'] = 'ban') =>
      act('deicer-use', { verb: 'spread', ...slots }, { force });
    expect(said({ elements: [walk()] })).toEqual(['should']);
    expect(said({ elements: [walk()], facts: [value('deicer-hold-off', 'd', { min: 30 })] })).toEqual([]);
    expect(said({ elements: [walk()], facts: [use({ material: 'de-icer', time: 'first winter' })] })).toEqual([]);
    expect(said({ elements: [walk()], facts: [use({ material: 'fertilizer' })] })).toEqual(['should']);
    expect(said({ elements: [walk({ traits: new Set(['snow-melt']) })] })).toEqual([]);
    expect(said({ elements: [walk()], project: { deicers: 'no' } })).toEqual([]);
    expect(said({ elements: [floor()] })).toEqual([]);
  });

  test('what attacks the paste, not what only melts', () => {
    const said = (material: string, force: ActFact['force'] = 'permit') =>
      levels('harmful-deicer-specified', {
        elements: [walk()],
        facts: [act('deicer-use', { verb: 'spread', material }, { force })],
      });
    expect(said('ammonium nitrate')).toEqual(['must']);
    expect(said('fertilizer', 'ban')).toEqual([]);
    expect(said('urea')).toEqual([]);
    expect(said('sodium chloride')).toEqual([]);
  });
});
