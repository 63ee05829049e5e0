/** Ways of curing: alternatives kept apart, stages added, strengths that end it, high early strength. */
import { describe, expect, test } from 'vitest';
import { rules } from '../../rules/index.ts';
import { curingWays, daysAsked, daysIn, daysOf, decisive } from '../../rules/kinds/curing-plan.ts';
import { viewsOf } from '../../rules/kinds/view.ts';
import type { Fact, ValueFact } from '../../rules/model/fact.ts';
import { about, act, context, value, walk } from './made.ts';

const wet = (over: object = {}) => act('curing-method', { verb: 'cure', manner: 'wet cover' }, over);
const film = (over: object = {}) => act('curing-method', { verb: 'cure', manner: 'compound' }, over);
const days = (amount: number, over: object = {}) => value('curing-duration', 'd', { min: amount }, over);

function waysIn(...facts: Fact[]) {
  const [view] = viewsOf(context({ elements: [walk()], facts }));
  return view ? curingWays(view) : [];
}

function said(id: string, ...facts: Fact[]): readonly string[] {
  const rule = rules.find((each) => each.id === id);
  return rule ? [...rule.check(context({ elements: [walk()], facts }))].map(({ message }) => message) : [id];
}

const first = { among: 'list', place: '3.06.A.1' };
const below = { among: 'list', place: '3.06.A.1.a' };
const second = { among: 'list', place: '3.06.A.2' };

describe('ways', () => {
  test('there is none where nothing is said, or curing is waived', () => {
    expect(waysIn()).toEqual([]);
    expect(waysIn(wet({ force: 'waive' }))).toEqual([]);
  });

  test('without alternatives everything belongs together', () => {
    const [way, ...others] = waysIn(wet(), days(7, { place: '3.06.B' }));
    expect(others).toEqual([]);
    expect(way?.methods).toHaveLength(1);
    expect(way?.durations).toHaveLength(1);
  });

  test('an alternative has what stands under its label, and what is said for all', () => {
    const [burlap, compound] = waysIn(wet(first), days(7, below), film(second));
    expect(burlap?.durations).toHaveLength(1);
    expect(compound?.durations).toHaveLength(0);
    const ways = waysIn(days(7, { place: '3.06.A' }), wet(first), film(second));
    expect(ways.map(({ durations }) => durations.length)).toEqual([1, 1]);
  });

  test('the deepest label belongs to the nearest one above it that the list has', () => {
    const deep = { among: 'list', place: '3.06.A.1.a.i' };
    const near = { among: 'list', place: '3.06.A.10' };
    expect(waysIn(wet(first), days(7, below), days(3, deep), film(near)).map(({ facts }) => facts.length)).toEqual([
      3, 1,
    ]);
  });

  test('a way stands on its duty to cure, else on its first words', () => {
    const duty = act('curing', { verb: 'cure', manner: 'plain' });
    expect(waysIn(wet(), duty)[0]?.statement).toBe(duty);
    const method = wet();
    expect(waysIn(method, days(7))[0]?.statement).toBe(method);
  });

  test('a type of CSA A23.1 carries its days', () => {
    const [basic] = waysIn(act('curing', { verb: 'cure', manner: 'basic' }));
    const [plain] = waysIn(act('curing', { verb: 'cure', manner: 'plain' }));
    expect([basic?.ends.length, plain?.ends.length]).toEqual([1, 0]);
  });

  test('"approved means" names no method', () => {
    const [way] = waysIn(act('curing-method', { verb: 'cure', manner: 'approved' }));
    expect(way?.methods).toEqual([]);
  });
});

describe('days', () => {
  test('stages of one paragraph are added, statements apart are not', () => {
    const [staged] = waysIn(days(3), days(4));
    const [apart] = waysIn(days(3), days(4, { place: '3.06.B' }));
    expect([staged, apart].map((way) => way && daysOf(way))).toEqual([7, 4]);
  });

  const given = (words: string) => ({ when: { words, span: { path: '', start: 0, end: 1 } } });
  const hours = (amount: number, over: object) => value('curing-duration', 'h', { min: amount }, over);

  test('hours are days, and of times that hang on the weather the least counts', () => {
    const [way] = waysIn(hours(60, given('above 55 °F')), hours(120, given('below 55 °F')));
    expect(way && daysOf(way)).toBe(2.5);
  });

  test('a longer time under a condition does not lift the time for the rest', () => {
    const [way] = waysIn(days(3), days(14, given('with much fly ash')));
    expect(way && [daysOf(way), daysIn(decisive(way) as ValueFact)]).toEqual([3, 3]);
  });

  test('concrete of high early strength needs fewer', () => {
    const asked = (traits: string[]) =>
      viewsOf(context({ elements: [walk({ traits: new Set(traits) })] })).map(daysAsked);
    expect(asked([])).toEqual([7]);
    expect(asked(['high-early'])).toEqual([3]);
  });
});

describe('rules on the plan', () => {
  test('no length of time: a method alone, a vague duty, or one of the alternatives', () => {
    const id = 'curing-duration-missing';
    expect(said(id, film())).toHaveLength(1);
    expect(said(id, act('curing', { verb: 'cure', manner: 'vague' }))).toHaveLength(1);
    expect(said(id, wet(first), days(7, first), film(second))[0]).toContain('3.06.A.2');
    expect(said(id, film(), days(7, { place: '3.06.B' }))).toEqual([]);
    expect(said(id, wet(), value('curing-strength', 'percent', { target: 70 }))).toEqual([]);
  });

  test('too short: three days, but not three of high early strength', () => {
    const id = 'curing-too-short';
    expect(said(id, wet(), days(3))[0]).toContain('is shorter than 7 days');
    expect(said(id, wet(), days(7))).toEqual([]);
    expect(said(id, wet(), days(7), days(3, { of: 'high-early', place: '3.06.B' }))).toEqual([]);
    expect(said(id, wet(), days(2, { of: 'high-early' }))[0]).toContain('is shorter than 3 days');
  });

  test('too short: the specific time wins over the general one, either way', () => {
    const id = 'curing-too-short';
    expect(said(id, wet(), days(7), days(3, about(walk())))).toHaveLength(1);
    expect(said(id, wet(), days(3), days(7, about(walk())))).toEqual([]);
  });

  test('not too short: stages to a week, or a film that stays on after the covers', () => {
    const id = 'curing-too-short';
    expect(said(id, wet(), days(3), film(), days(7))).toEqual([]);
    expect(said(id, wet(), days(3), film())).toEqual([]);
    expect(said(id, film(), days(3))).toHaveLength(1);
    expect(said(id, days(3), wet({ place: '3.06.D' }), film({ place: '3.06.D' }))).toHaveLength(1);
  });

  test('no method: a time alone, or approved means', () => {
    const id = 'curing-method-missing';
    expect(said(id, days(7))).toHaveLength(1);
    expect(said(id, days(7), act('curing-method', { verb: 'cure', manner: 'approved' }))).toHaveLength(1);
    expect(said(id, days(7), wet())).toEqual([]);
    expect(said(id, wet())).toEqual([]);
  });
});
