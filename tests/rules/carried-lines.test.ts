/** The lines that one silence carries: each is told while nothing is said of its point, and goes with the fact that says it. */
import { describe, expect, test } from 'vitest';
import type { Fact } from '../../rules/model/fact.ts';
import { found } from './levels.ts';
import { act, floor, name, value, walk } from './made.ts';

interface Carrier {
  readonly rule: string;
  /** What makes the carrier speak. */
  readonly always: readonly Fact[];
  /** Words of each line, and a fact that says the point. */
  readonly lines: readonly (readonly [string, Fact])[];
}

const cold = (verb: string) => act('cold-weather', { verb });
const use = (verb: string) => act('deicer-use', { verb });
const oneWeek = value('curing-duration', 'd', { min: 7 });

const carriers: readonly Carrier[] = [
  {
    rule: 'surface-water-ban-missing',
    always: [],
    lines: [
      ['when bleeding is over', act('bleed-water', { verb: 'wait' })],
      ['a limit on the passes', act('over-finishing', { verb: 'limit' })],
      ['a limit on the passes', act('over-finishing', { verb: 'work' }, { force: 'ban' })],
      ['a limit on the passes', act('finish', { verb: 'finish', steps: ['bull-float', 'broom'] })],
    ],
  },
  {
    rule: 'curing-method-missing',
    always: [oneWeek],
    lines: [
      ['when curing starts', act('curing', { verb: 'cure', time: 'at once' })],
      ['the temperature at which', value('curing-temperature', 'degF', { min: 50 })],
      ['the temperature at which', value('cold-protection', 'degF', { min: 50 })],
      ['a standard for the material', name('standard', 'ASTM C309', { of: 'material' })],
      ['a standard for the material', name('standard', 'ASTM C171', { of: 'material' })],
      ['the rate of a compound', value('coverage', 'ft2/gal', { max: 200 })],
    ],
  },
  {
    rule: 'cold-weather-clause-missing',
    always: [],
    lines: [
      ['placing on a frozen base', cold('frozen base')],
      ['temperature of the concrete', value('concrete-temperature', 'degF', { min: 55 })],
      ['how fast it may cool', cold('cool')],
      ['records of temperature', cold('record')],
      ['a plan beforehand', cold('plan')],
    ],
  },
  {
    rule: 'deicer-hold-off-missing',
    always: [],
    lines: [
      ['drying after curing', value('drying', 'd', { min: 30 })],
      ['strength before repeated', value('cold-protection', 'psi', { min: 3500 })],
      ['the last placing date', name('season', 'late')],
      ['forbidden at all times', act('deicer-use', { verb: 'spread', material: 'ammonium nitrate' }, { force: 'ban' })],
      ['an instruction to the owner', use('instruct')],
      ['sand or another means', use('sand')],
      ['sand or another means', use('clear')],
      ['an inspection in spring', use('inspect')],
    ],
  },
];

const detailOf = (rule: string, facts: readonly Fact[]): string =>
  found(rule, { elements: [walk()], facts })[0]?.detail ?? `${rule} is silent`;

describe.each(carriers)('$rule', ({ rule, always, lines }) => {
  const points = [...new Set(lines.map(([words]) => words))];

  test('tells every point that nobody makes', () => {
    const detail = detailOf(rule, always);
    expect(points.filter((words) => !detail.includes(words))).toEqual([]);
  });

  test.each(lines)('leaves out "%s" where it is said', (words, fact) => {
    const detail = detailOf(rule, [...always, fact]);
    expect(points.filter((each) => !detail.includes(each))).toEqual([words]);
  });
});

test('a fact that says something else leaves the lines standing', () => {
  const others = [name('standard', 'ASTM C33', { of: 'material' }), act('curing', { verb: 'cure' })];
  expect(detailOf('curing-method-missing', [oneWeek, ...others])).toContain('a standard for the material');
  expect(detailOf('curing-method-missing', [oneWeek, ...others])).toContain('when curing starts');
  const allowed = act('deicer-use', { verb: 'spread', material: 'fertilizer' }, { force: 'permit' });
  const onlySalt = act('deicer-use', { verb: 'spread', material: 'calcium chloride' }, { force: 'ban' });
  expect(detailOf('deicer-hold-off-missing', [allowed, onlySalt])).toContain('forbidden at all times');
});

test('a slow mixture is a line where it may be placed late in the year', () => {
  const line = 'a quicker mixture late in the year';
  const ash = (max: number) => value('scm', 'percent', { max }, { of: 'fly ash' });
  const slag = (max: number) => value('scm', 'percent', { max }, { of: 'slag cement' });
  const late = name('season', 'late');
  expect(detailOf('deicer-hold-off-missing', [ash(25), late])).toContain(line);
  expect(detailOf('deicer-hold-off-missing', [slag(50), late])).toContain(line);
  for (const facts of [[ash(25)], [late], [ash(20), late], [slag(35), late]]) {
    expect(detailOf('deicer-hold-off-missing', facts)).not.toContain(line);
  }
});

test('cold weather with protection of any kind is a clause, so its lines are not told', () => {
  for (const fact of [value('cold-protection', 'd', { min: 7 }), value('cold-protection', 'psi', { min: 3500 })]) {
    expect(found('cold-weather-clause-missing', { elements: [walk()], facts: [fact] })).toEqual([]);
  }
});

test('a line is told only where it is true of every element', () => {
  const own = {
    ...act('bleed-water', { verb: 'wait' }),
    subject: {
      elements: [{ name: 'shelter walk', kind: 'walk', bare: false }],
      mixtures: [],
      exterior: 'unknown',
      by: 'words',
    },
  } as const;
  const other = walk({ name: 'north walk', label: 'north walks' });
  const [finding] = found('surface-water-ban-missing', { elements: [walk(), other, floor()], facts: [own] });
  expect(finding?.elements).toHaveLength(2);
  expect(finding?.detail).not.toContain('when bleeding is over');
});
