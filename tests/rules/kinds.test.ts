/** The words that makers and rules share: kinds of element, what a mixture says, how a miss is put. */
import { describe, expect, test } from 'vitest';
import { bandOf, needsAir, saidForSize } from '../../rules/kinds/air.ts';
import { asked, classOf, question, severityOf, standing } from '../../rules/kinds/asked.ts';
import {
  answersFreezing,
  candidateClass,
  isFlat,
  isFreezeClass,
  loadBearing,
} from '../../rules/kinds/element-kinds.ts';
import { isTrowelledAtTheEnd, isTrowelledThenTextured, onlyLightly } from '../../rules/kinds/finish.ts';
import { saysAllNumbers, saysNoNumber, specifiedStrength, specifiesMixture } from '../../rules/kinds/mixture.ts';
import { milderIndoors } from '../../rules/kinds/outdoors.ts';
import { sayBand, sayTarget } from '../../rules/kinds/say.ts';
import { type View, viewsOf } from '../../rules/kinds/view.ts';
import { about, act, article, context, element, floor, type Made, name, value, walk } from './made.ts';

function viewOf(made: Partial<Made> = {}): View {
  const [view] = viewsOf(context({ elements: [walk()], ...made }));
  if (!view) throw new Error('no element was made');
  return view;
}

const f3 = name('exposure-class', 'F3');
const stone = value('aggregate-size', 'in', { max: 0.75 });

describe('the kind of an element', () => {
  test.each([
    ['walk', true, 'no', 'F3'],
    ['deck', true, 'yes', 'F3'],
    ['slab', true, 'unknown', 'F3'],
    ['concrete', true, 'unknown', 'F3'],
    ['other', false, 'unknown', 'F2'],
    ['wall', false, 'yes', 'F1'],
    ['footing', false, 'yes', 'F1'],
  ] as const)('%s: flat %s, load-bearing %s, %s where salts are not spoken of', (kind, flat, bears, candidate) => {
    expect([isFlat(kind), loadBearing(kind), candidateClass(kind, 'unknown')]).toEqual([flat, bears, candidate]);
  });

  test('salts decide between F2 and F3, on walls too', () => {
    expect([candidateClass('walk', 'no'), candidateClass('wall', 'yes')]).toEqual(['F2', 'F3']);
  });

  test('classes that freeze, classes that answer the question, classes of another question', () => {
    expect(['F1', 'F3', 'XF4', 'C-2', 'RF3'].every(isFreezeClass)).toBe(true);
    expect(['F0', 'C2', 'W1', 'S2', 'X0'].some(isFreezeClass)).toBe(false);
    expect(['F0', 'XF1', 'C-2', 'N'].every(answersFreezing)).toBe(true);
    expect(['C2', 'W1', 'S0'].some(answersFreezing)).toBe(false);
  });
});

describe('the mixture', () => {
  const bare = { articles: [article('finishing', '3.04')] };

  test('is specified by an article or by any of its numbers', () => {
    expect(specifiesMixture(viewOf(bare))).toBe(false);
    expect(specifiesMixture(viewOf({ articles: [article('materials', '2.01')] }))).toBe(true);
    expect(specifiesMixture(viewOf({ ...bare, facts: [value('slump', 'in', { max: 4 })] }))).toBe(true);
  });

  test('says no number, some, or all of them; the drawings count', () => {
    const air = value('air-content', 'percent', { target: 6 });
    const water = value('w-cm', '', { max: 0.45 });
    const drawn = name('elsewhere', 'strength', { of: 'Drawings' });
    const said = (...facts: Made['facts'] & object) => [
      saysNoNumber(viewOf({ facts })),
      saysAllNumbers(viewOf({ facts })),
    ];
    expect(said()).toEqual([true, false]);
    expect(said(air)).toEqual([false, false]);
    expect(said(drawn)).toEqual([false, false]);
    expect(said(air, water, drawn)).toEqual([false, true]);
  });

  test("has the lowest strength that is an f'c and read without doubt", () => {
    const at = (amount: number, over: object = {}) => value('strength', 'psi', { min: amount }, over);
    const facts = [at(5000), at(4500), at(3000, { age: 7 }), at(600, { of: 'flexural' }), at(2000, { doubt: 'lost' })];
    expect(specifiedStrength(viewOf({ facts }))?.amount).toBe(4500);
    expect(specifiedStrength(viewOf({ facts: [at(4000, { age: 28 })] }))?.amount).toBe(4000);
    expect(specifiedStrength(viewOf({ facts: [value('strength', 'psi', { max: 4000 })] }))).toBeUndefined();
  });

  test('has no size where it is read with doubt, or given as a share', () => {
    const size = (facts: Made['facts']) => viewOf({ facts }).requirement?.aggregate;
    expect(size([{ ...stone, doubt: 'a fraction is lost' }])).toBeUndefined();
    expect(size([value('aggregate-size', 'percent', { max: 5 })])).toBeUndefined();
    expect(size([stone])?.amount).toBe(0.75);
  });
});

describe('air', () => {
  test('is needed where it freezes, in classes of other codes too, but for XF1 and pervious concrete', () => {
    expect(needsAir(viewOf())).toBe(true);
    expect(needsAir(viewOf({ elements: [floor()] }))).toBe(false);
    expect(needsAir(viewOf({ elements: [walk({ traits: new Set(['pervious']) })] }))).toBe(false);
    const european = (token: string) =>
      needsAir(viewOf({ facts: [name('exposure-class', token)], project: { code: 'en-206' } }));
    expect([european('XF4'), european('XF1')]).toEqual([true, false]);
    expect(needsAir(viewOf({ facts: [f3], project: { code: 'en-206' } }))).toBe(false);
  });

  test('is said for a size, or as the range of the residential code, and not said where the size is open', () => {
    expect(saidForSize(viewOf({ facts: [stone] }))).toBe('6 ± 1.5 percent with 3/4 in. aggregate');
    expect(saidForSize(viewOf())).toBeUndefined();
    expect(saidForSize(viewOf({ project: { code: 'irc' } }))).toBe('5 to 7 percent');
    expect(saidForSize(viewOf({ facts: [stone], project: { code: 'irc' } }))).toBe('5 to 7 percent');
    expect(saidForSize(viewOf({ project: { code: 'en-206' } }))).toBeUndefined();
  });

  test('a band reads from end to end, or from its target', () => {
    const band = bandOf(viewOf({ facts: [stone] }));
    expect(band && [sayBand(band), sayTarget(band)]).toEqual(['4.5 to 7.5 percent', '6 ± 1.5 percent']);
  });
});

describe('a miss', () => {
  const layers = (view: View) => asked(view, ({ wcm }) => wcm?.value.amount);

  test('binds by a declared class or the residential table, else it advises', () => {
    expect(severityOf(viewOf({ facts: [f3] }), [{ by: 'declared' }])).toBe('must');
    expect(severityOf(viewOf({ facts: [f3] }), [{ by: 'recommended' }])).toBe('should');
    expect(severityOf(viewOf(), [{ by: 'lawful' }])).toBe('should');
    expect(severityOf(viewOf({ project: { code: 'irc' } }), [{ by: 'lawful' }])).toBe('must');
  });

  test('names the class, and says whose it is', () => {
    expect(classOf(viewOf({ facts: [f3] }))).toBe('Class F3');
    expect(classOf(viewOf())).toBe('F3 by its exposure');
    expect(classOf(viewOf({ elements: [floor()] }))).toBe('its exposure');
  });

  test('says where ACI 318 leaves a ground slab out, and where a class is only computed', () => {
    expect(standing(viewOf(), layers(viewOf()))).toMatch(/leaves ground slabs .* No exposure class is stated; F3/);
    const declared = viewOf({ facts: [f3] });
    expect(standing(declared, layers(declared))).toBe('');
    const deck = viewOf({ elements: [element('tunnel deck', 'deck', walk().cues)] });
    expect(standing(deck, [{ by: 'recommended' }])).not.toContain('ground slabs');
    expect(standing(viewOf({ project: { code: 'ibc' } }), [{ by: 'recommended' }])).not.toContain('ACI 318');
  });

  test('puts the open question of steel and of structure, and no other', () => {
    const say = (made: Partial<Made>) => question(viewOf(made), ({ wcm }) => wcm && `${wcm.value.amount}`);
    expect(say({ facts: [f3] })).toBe('If it is reinforced with at least the minimum steel: 0.4.');
    expect(say({ facts: [f3], elements: [walk({ traits: new Set(['plain']) })] })).toBeUndefined();
    const slab = element('exterior slabs', 'slab', walk().cues);
    expect(say({ facts: [f3], elements: [slab] })).toContain('If it is part of the structure');
    expect(question(viewOf({ facts: [f3] }), () => undefined)).toBeUndefined();
  });
});

test('what another section says is heard for its own duty, unless that section was read too', () => {
  const handed = (duty: string, of?: string) => viewOf({ facts: [name('elsewhere', duty, { of })] });
  expect(handed('curing', '03 39 00').supplied('curing')).toBe(true);
  expect(handed('curing', '03 39 00').supplied('air')).toBe(false);
  expect(handed('curing').supplied('curing')).toBe(true);
  expect(handed('everything', '32 13 13').supplied('air')).toBe(false);
});

test('trowel alone, before a texture, or lightly', () => {
  const finish = (...steps: string[]) => act('finish', { verb: 'finish', steps });
  const judged = (...steps: string[]) => {
    const fact = finish(...steps);
    return [isTrowelledAtTheEnd(fact), isTrowelledThenTextured(fact), onlyLightly(fact)];
  };
  expect(judged('broom')).toEqual([false, false, false]);
  expect(judged('broom', 'trowel')).toEqual([true, false, false]);
  expect(judged('power trowel', 'tine')).toEqual([false, true, false]);
  expect(judged('light trowel')).toEqual([true, false, true]);
  expect(judged('light trowel', 'hard trowel', 'broom')).toEqual([false, true, false]);
  expect(isTrowelledAtTheEnd(act('finish', { verb: 'finish' }))).toBe(false);
});

test('a practice is milder where every element stands indoors', () => {
  const [out, inside] = viewsOf(
    context({ elements: [walk(), floor()], facts: [f3].map((fact) => ({ ...fact, ...about(walk()) })) }),
  );
  expect(milderIndoors(undefined, [inside as View])).toBe('should');
  expect(milderIndoors(undefined, [out as View, inside as View])).toBeUndefined();
});
