/** What the makers do for every rule: one voice for a silence, the specific over the general, the worst first. */
import { describe, expect, test } from 'vitest';
import { rules } from '../../rules/index.ts';
import { fitted, named, protecting, quoted } from '../../rules/kinds/define.ts';
import type { Fact } from '../../rules/model/fact.ts';
import type { SectionDocument } from '../../rules/model/specification.ts';
import { found } from './levels.ts';
import { about, act, article, context, element, floor, type Made, name, path, value, walk } from './made.ts';

const ramp = element('curb ramps', 'ramp', [{ kind: 'outdoor-noun', words: 'curb ramp', place: '' }]);
const f3 = name('exposure-class', 'F3');

describe('a silence', () => {
  test('is one finding, with its elements listed, on the article where the words belong', () => {
    const mixtures = article('mixtures', '2.03');
    const [finding, ...others] = found('air-content-missing', {
      elements: [walk(), ramp, floor()],
      facts: [f3],
      articles: [article('summary', '1.01'), mixtures],
    });
    expect(others).toEqual([]);
    expect(finding?.at).toEqual(mixtures.titleSpan);
    expect(finding?.elements.map(({ label }) => label)).toEqual(['shelter walks', 'curb ramps']);
    expect(finding?.remedy).toMatchObject({ kind: 'insert', region: 'mixtures' });
  });

  test('makes two findings where different numbers are asked for', () => {
    const wall = element('exterior walls', 'wall', [{ kind: 'outdoor-noun', words: 'exterior', place: '' }]);
    expect(found('w-cm-missing', { elements: [walk(), wall] }).map(({ required }) => required)).toEqual([
      'at most 0.45',
      'at most 0.55',
    ]);
  });

  test('is none where another section, the drawings or a cited specification speak', () => {
    const cited = name('standard', 'ACI 308.1', { of: 'requirement' });
    expect(found('curing-missing', { elements: [walk()] })).toHaveLength(1);
    expect(found('curing-missing', { elements: [walk()], facts: [cited] })).toEqual([]);
    const handed = name('elsewhere', 'everything', { of: '03 30 00' });
    expect(found('curing-missing', { elements: [walk()], facts: [handed] })).toEqual([]);
  });

  test('of a value is no fault of an owner who writes to designers; of a clause it is where he orders the work', () => {
    const finishing = article('finishing', '3.04');
    const design = (part?: number): Made => ({
      elements: [walk()],
      articles: [{ ...finishing, part }],
      document: { designStandard: true },
    });
    const said = (id: string, part?: number) => found(id, design(part)).length;
    expect([said('strength-missing'), said('strength-missing', 3)]).toEqual([0, 0]);
    expect([said('curing-missing'), said('curing-missing', 3)]).toEqual([0, 1]);
  });

  test('of a pair of sections is told once, where the work is', () => {
    const mixtures = [article('mixtures', '2.01')];
    const alone = context({ elements: [walk({ documents: [path, 'paving.md'] })], articles: mixtures });
    const [first] = alone.specification.documents;
    const finishing = { ...article('finishing', '3.04'), titleSpan: { path: 'paving.md', start: 5, end: 9 } };
    const paving = { ...(first as SectionDocument), path: 'paving.md', articles: [finishing] };
    const pair = { ...alone, specification: { ...alone.specification, documents: [first as SectionDocument, paving] } };
    const said = (id: string) => [...(rules.find((rule) => rule.id === id)?.check(pair) ?? [])];
    expect(said('surface-water-ban-missing').map(({ at }) => at)).toEqual([finishing.titleSpan]);
    expect(said('w-cm-missing').map(({ at }) => at)).toEqual([mixtures[0]?.titleSpan]);
  });

  test('shows the working of a value, and none for a clause', () => {
    const [ratio] = found('w-cm-missing', { elements: [walk()] });
    const [curing] = found('curing-missing', { elements: [walk()] });
    expect([ratio?.steps?.length, curing?.steps]).toEqual([expect.any(Number), undefined]);
  });

  test('is none in a file that is no concrete work', () => {
    expect(found('curing-missing', { elements: [walk()], document: { signs: [] } })).toEqual([]);
  });

  test('carries what else is not said, and only that', () => {
    const bleed = act('bleed-water', { verb: 'wait' });
    const [alone] = found('surface-water-ban-missing', { elements: [walk()] });
    const [beside] = found('surface-water-ban-missing', { elements: [walk()], facts: [bleed] });
    expect(alone?.detail).toContain('when bleeding is over');
    expect(beside?.detail).not.toContain('when bleeding is over');
    expect(beside?.detail).toContain('a limit on the passes');
  });
});

describe('a value', () => {
  const high = value('w-cm', '', { max: 0.5 });
  const fine = value('w-cm', '', { max: 0.45 }, about(walk()));

  test('in general binds the elements that have none of their own', () => {
    const [finding] = found('w-cm-high', { elements: [walk(), ramp], facts: [f3, high, fine] });
    expect(finding?.elements.map(({ label }) => label)).toEqual(['curb ramps']);
  });

  test('that is read with doubt is held against nobody', () => {
    expect(found('w-cm-high', { elements: [walk()], facts: [f3, { ...high, doubt: 'a sign is lost' }] })).toEqual([]);
  });

  test('that is waived or banned is not asked for', () => {
    expect(found('w-cm-high', { elements: [walk()], facts: [f3, { ...high, force: 'waive' }] })).toEqual([]);
  });

  test('is held against each number that its elements need, in one finding a number', () => {
    const deck = element('tunnel deck', 'deck', [{ kind: 'outdoor-noun', words: 'exterior', place: '' }], {
      traits: new Set(['suspended']),
    });
    const both = found('w-cm-high', { elements: [walk(), deck], facts: [f3, high] });
    expect(both.map(({ required, elements }) => [required, elements[0]?.label])).toEqual([
      ['0.45', 'shelter walks'],
      ['0.40', 'tunnel deck'],
    ]);
  });
});

describe('a practice', () => {
  const sprinkle = (over: Partial<Fact> = {}) =>
    act('surface-water', { verb: 'wet', object: 'surface' }, { force: 'permit', ...over } as object);

  test('that is banned is the cure, that is only told of is no order', () => {
    for (const force of ['ban', 'waive', 'state'] as const) {
      expect(found('water-added-to-surface', { elements: [walk()], facts: [sprinkle({ force })] })).toEqual([]);
    }
    expect(found('water-added-to-surface', { elements: [walk()], facts: [sprinkle()] })).toHaveLength(1);
  });

  test('spares the element that has a ban of its own', () => {
    const ban = sprinkle({ force: 'ban', ...about(walk()) });
    const [finding] = found('water-added-to-surface', { elements: [walk(), ramp], facts: [sprinkle(), ban] });
    expect(finding?.elements.map(({ label }) => label)).toEqual(['curb ramps']);
  });

  test('that is allowed for the element itself counts, whatever is banned beside it', () => {
    const own = sprinkle(about(walk()));
    const ban = sprinkle({ force: 'ban', ...about(walk()) });
    expect(found('water-added-to-surface', { elements: [walk()], facts: [own, ban] })).toHaveLength(1);
    const general = sprinkle();
    expect(found('water-added-to-surface', { elements: [walk()], facts: [general, own] })).toHaveLength(2);
  });

  test('is milder indoors', () => {
    const [finding] = found('water-added-to-surface', { elements: [floor()], facts: [sprinkle()] });
    expect(finding?.severity).toBe('should');
  });
});

describe('a message', () => {
  const labels = ['north walks', 'south walks', 'curb ramps', 'plaza steps', 'bus apron', 'dock apron'];
  const all = labels.map((label) => element(label, 'walk', []));
  const many = all.slice(0, 4);

  test('names four elements, or counts the rest, which is never a single one', () => {
    expect(named([])).toBe('the work');
    expect(named(many.slice(0, 1))).toBe('north walks');
    expect(named(many.slice(0, 2))).toBe('north walks and south walks');
    expect(named(many)).toBe('north walks, south walks, curb ramps and plaza steps');
    expect(named(all.slice(0, 5))).toBe('north walks, south walks, curb ramps and 2 more');
    expect(named(all)).toBe('north walks, south walks, curb ramps, plaza steps and 2 more');
  });

  test('that begins with its place begins with a capital', () => {
    expect(fitted(many.slice(0, 1), (names) => `this section trowels ${names}`)).toBe(
      'This section trowels north walks',
    );
  });

  test('names fewer elements before it is cut', () => {
    const long = (names: string) => `${'x'.repeat(90)} ${names}`;
    expect(fitted(many, long)).toBe(`${'x'.repeat(90)} north walks and 3 more`);
    expect(fitted(many, (names) => `${names} ${'word '.repeat(40)}`)).toMatch(/^north walks and 3 more (word )+word…$/);
    expect(fitted(many, (names) => `${names} ${'word '.repeat(40)}`).length).toBeLessThanOrEqual(120);
  });

  test('quotes long words in part', () => {
    expect(quoted('short')).toBe('short');
    expect(quoted('word '.repeat(20).trim()).length).toBeLessThanOrEqual(48);
  });
});

test('a guide comes before the clause that the fault would undo', () => {
  const ground = { document: 'guide', edition: '', clause: '1', status: 'seen' } as const;
  const clause = { document: 'code', edition: '', clause: '2', status: 'seen' } as const;
  expect(protecting({ ibc: [clause] }, ground)).toEqual({ ibc: [ground, { ...clause, protects: true }] });
});
