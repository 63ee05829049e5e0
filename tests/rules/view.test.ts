/** One element as rules look at it: its climate, its salts, its class, what is supplied from elsewhere. */
import { describe, expect, test } from 'vitest';
import type { View } from '../../rules/kinds/view.ts';
import { viewsOf } from '../../rules/kinds/view.ts';
import { about, act, context, element, floor, type Made, name, value, walk } from './made.ts';

function viewOf(made: Made): View {
  const [view] = viewsOf(context(made));
  if (!view) throw new Error('no element was made');
  return view;
}

describe('climate', () => {
  test('a declared class freezes, whatever the setting says', () => {
    const made = { elements: [walk()], facts: [name('exposure-class', 'F2')], project: { climate: 'mild' } } as const;
    expect(viewOf(made).freezing).toBe('yes');
  });

  test('words of frost decide an unknown climate and leave a mild one alone', () => {
    const words = { elements: [walk()], facts: [name('freezing', 'yes')] };
    expect(viewOf({ ...words, project: { climate: 'unknown' } }).freezing).toBe('yes');
    expect(viewOf({ ...words, project: { climate: 'mild' } }).freezing).toBe('no');
  });

  test('an interior floor is exposed in no climate', () => {
    expect(viewOf({ elements: [floor()] }).isExposed).toBe(false);
    expect(viewOf({ elements: [walk()] }).isExposed).toBe(true);
  });
});

describe('exposure class', () => {
  test('salts unknown: a slab is taken for salted, a wall for the mildest case', () => {
    expect(viewOf({ elements: [walk()] }).classes).toEqual(['F3']);
    const wall = element('exterior walls', 'wall', [{ kind: 'outdoor-noun', words: 'exterior', place: '' }]);
    expect(viewOf({ elements: [wall] }).classes).toEqual(['F1']);
  });

  test('no de-icers make it F2', () => {
    expect(viewOf({ elements: [walk()], project: { deicers: 'no' } }).classes).toEqual(['F2']);
  });

  test('what the text says of its salts wins over the project', () => {
    const salted = walk({ salted: { value: 'yes' } });
    expect(viewOf({ elements: [salted], project: { deicers: 'no' } }).classes).toEqual(['F3']);
  });

  test('a declared class stands; a corrosion class alone leaves the freezing class to us', () => {
    expect(viewOf({ elements: [walk()], facts: [name('exposure-class', 'F1')] }).classes).toEqual(['F1']);
    const corrosion = viewOf({ elements: [walk()], facts: [name('exposure-class', 'C2')] });
    expect(corrosion.isDeclared).toBe(false);
    expect(corrosion.classes).toEqual(['C2', 'F3']);
  });

  test('the project file names a class for an element', () => {
    const own = { elements: { 'shelter walk': { exposure: ['F2'] } } };
    expect(viewOf({ elements: [walk()], project: own }).classes).toEqual(['F2']);
  });
});

describe('requirement', () => {
  test('a walk on ground: the nonstructural row is the law, plain F3 the advice', () => {
    const { requirement } = viewOf({ elements: [walk()] });
    expect(requirement?.lawful.strength?.value.inchPound.amount).toBe(3500);
    expect(requirement?.recommended?.wcm?.value.amount).toBe(0.45);
  });

  test('a suspended deck is structural and reinforced', () => {
    const deck = element('tunnel deck', 'deck', [{ kind: 'outdoor-noun', words: 'exterior', place: '' }], {
      traits: new Set(['suspended']),
    });
    const { requirement } = viewOf({ elements: [deck], facts: [name('exposure-class', 'F3')] });
    expect(requirement?.lawful.wcm?.value.amount).toBe(0.4);
  });

  test('two sizes of aggregate leave the size open, one said twice does not', () => {
    const small = value('aggregate-size', 'in', { max: 0.375 });
    const large = value('aggregate-size', 'in', { max: 0.75 });
    expect(viewOf({ elements: [walk()], facts: [small, large] }).requirement?.aggregate).toBeUndefined();
    expect(viewOf({ elements: [walk()], facts: [large, large] }).requirement?.aggregate?.amount).toBe(0.75);
  });

  test('another code is not computed here', () => {
    expect(viewOf({ elements: [walk()], project: { code: 'en-206' } }).requirement).toBeUndefined();
  });
});

describe('said elsewhere', () => {
  test('a specification cited as a requirement speaks; listed or as a guide it does not', () => {
    const cited = (of: string) => viewOf({ elements: [walk()], facts: [name('standard', 'ACI 308.1', { of })] });
    expect(cited('requirement').supplied('curing')).toBe(true);
    expect(cited('listed').supplied('curing')).toBe(false);
    expect(cited('requirement').supplied('air')).toBe(false);
  });

  test('a guide supplies nothing', () => {
    const guide = viewOf({ elements: [walk()], facts: [name('standard', 'ACI 302.1R', { of: 'requirement' })] });
    expect(guide.supplied('surface-water')).toBe(false);
  });

  test('a section that was read too is judged by its own words', () => {
    const handed = name('elsewhere', 'everything', { of: 'Section 03 30 00' });
    expect(viewOf({ elements: [walk()], facts: [handed] }).supplied('curing')).toBe(true);
    expect(viewOf({ elements: [walk()], facts: [handed], document: { section: '033000' } }).supplied('curing')).toBe(
      false,
    );
  });

  test('the drawings give what they are said to give, and no more', () => {
    const drawn = viewOf({ elements: [walk()], facts: [name('elsewhere', 'strength', { of: 'Drawings' })] });
    expect(drawn.supplied('strength')).toBe(true);
    expect(drawn.supplied('w-cm')).toBe(false);
  });
});

test('acts are read at the most specific level at which the text speaks', () => {
  const broom = act('finish', { verb: 'finish', steps: ['broom'] });
  const own = act('finish', { verb: 'finish', steps: ['float'] }, about(walk()));
  expect(viewOf({ elements: [walk()], facts: [broom, own] }).acts('finish')).toEqual([own]);
});

test('a file without a sign of concrete work is not asked for its concrete', () => {
  const view = (signs?: readonly string[]) => viewOf({ elements: [walk()], document: { signs } });
  expect([view().isConcreteWork, view([]).isConcreteWork, view(['title']).isConcreteWork]).toEqual([true, false, true]);
});
