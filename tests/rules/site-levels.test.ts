/** Rules on finishing and on winter, on facts made by hand: at which level they speak, and where they keep silent. */
import { describe, expect, test } from 'vitest';
import type { ActFact } from '../../rules/model/fact.ts';
import { found, levels } from './levels.ts';
import { about, act, article, element, floor, type Made, name, value, walk } from './made.ts';

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

describe('work that is left alone', () => {
  const trait = (own: string) => [walk({ traits: new Set([own]) })];
  const finish = act('finish', { verb: 'finish', steps: ['hard trowel'] });
  const short = value('curing-duration', 'd', { min: 3 });
  const wall = element('exterior walls', 'wall', [outdoors]);

  test('pervious concrete is neither trowelled nor asked for bleed water, but it is cured', () => {
    expect(levels('hard-trowel-outdoors', { elements: trait('pervious'), facts: [finish] })).toEqual([]);
    expect(levels('curing-missing', { elements: trait('pervious') })).toEqual(['must']);
  });

  test('precast work is cured and kept warm where it is made', () => {
    for (const rule of ['curing-missing', 'cold-weather-clause-missing']) {
      expect(levels(rule, { elements: trait('precast') })).toEqual([]);
    }
    expect(levels('curing-too-short', { elements: trait('precast'), facts: [short] })).toEqual([]);
  });

  test('walls are cured long enough, but not asked for a method on top', () => {
    expect(levels('curing-too-short', { elements: [wall], facts: [short] })).toEqual(['must']);
    expect(levels('curing-method-missing', { elements: [wall], facts: [short] })).toEqual([]);
    expect(levels('curing-duration-missing', { elements: [wall], facts: [act('curing', { verb: 'cure' })] })).toEqual(
      [],
    );
  });

  test('floors are cured by their own rules', () => {
    const facts = [short, act('curing', { verb: 'cure' })];
    for (const rule of ['curing-too-short', 'curing-method-missing', 'curing-duration-missing', 'curing-missing']) {
      expect(levels(rule, { elements: [floor()], facts })).toEqual([]);
    }
    expect(
      levels('curing-duration-missing', { elements: [floor()], facts: [act('curing', { verb: 'cure' })] }),
    ).toEqual([]);
  });

  test('a section without placing, finishing or weather is not asked for them', () => {
    const articles = [article('mixtures', '2.01')];
    for (const rule of ['curing-missing', 'surface-water-ban-missing', 'cold-weather-clause-missing']) {
      expect(levels(rule, { elements: [walk()], articles })).toEqual([]);
      const broom = act('finish', { verb: 'finish', steps: ['broom'] });
      expect(levels(rule, { elements: [walk()], articles, facts: [broom] })).toHaveLength(1);
    }
  });
});

describe('several elements at once', () => {
  const use = act('accelerator', { verb: 'use', material: 'calcium chloride' }, { force: 'permit' });
  const plain = walk({ traits: new Set(['plain']) });
  const open = walk({ name: 'north walk', label: 'north walks' });
  const stressed = walk({ name: 'deck', label: 'decks', traits: new Set(['prestressed']) });

  test('chloride is as grave as in the gravest of them', () => {
    const said = (...elements: Made['elements'] & object) =>
      levels('calcium-chloride-allowed', { elements, facts: [use] });
    expect(said(plain, open)).toEqual(['should']);
    expect(said(plain, stressed)).toEqual(['must']);
    expect(said(plain)).toEqual(['note']);
  });

  test('one that has a number keeps a missing one from being graver', () => {
    const own = value('air-content', 'percent', { target: 6 }, about(walk()));
    for (const rule of ['w-cm-missing', 'strength-missing']) {
      expect(levels(rule, { elements: [walk(), open], facts: [own] })).toEqual(['should']);
    }
  });
});

test('a ban that ends, a ban for ever, and a ban of one salt', () => {
  const ban = (slots: object) => act('deicer-use', { verb: 'spread', ...slots }, { force: 'ban' });
  const said = (slots: object) => levels('deicer-hold-off-missing', { elements: [walk()], facts: [ban(slots)] });
  expect(said({ material: 'sodium chloride', time: 'until May' })).toEqual([]);
  expect(said({ material: 'de-icer' })).toEqual([]);
  expect(said({})).toEqual([]);
  expect(said({ material: 'magnesium chloride' })).toEqual(['should']);
});

test('what is not known is asked', () => {
  const detail = (rule: string, made: Made) => found(rule, made)[0]?.detail ?? '';
  expect(detail('deicer-hold-off-missing', { elements: [walk()] })).toContain('whether de-icers will be used');
  expect(detail('deicer-hold-off-missing', { elements: [walk()], project: { deicers: 'yes' } })).not.toContain(
    'whether de-icers',
  );
  const facts = [act('accelerator', { verb: 'use', material: 'chloride' }, { force: 'permit' })];
  expect(detail('calcium-chloride-allowed', { elements: [walk()], facts })).toContain('reinforced is not said');
  const plain = walk({ traits: new Set(['plain']) });
  expect(detail('calcium-chloride-allowed', { elements: [plain], facts })).toBe('');
});
