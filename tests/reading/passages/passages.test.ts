/** Every passage is read and held against what an engineer reads in it; no kind of fact may fall below its floor. */
import { describe, expect, test } from 'vitest';
import type { Fact } from '../../../rules/model/fact.ts';
import { read } from '../../../server/reading/read.ts';
import { judge } from './comparing.ts';
import { accuracyOf, percentOf } from './counting.ts';
import { floors } from './floors.ts';
import { asRead, type Passage } from './passage.ts';
import { registers } from './registers.ts';

const passages = Object.values(registers).flat();

describe('the passages', () => {
  test('are many, in a dozen registers, and half of them are traps', () => {
    expect(passages.length).toBeGreaterThanOrEqual(120);
    expect(Object.keys(registers).length).toBeGreaterThanOrEqual(12);
    expect(passages.filter(isTrap).length).toBeGreaterThanOrEqual(passages.length / 2);
  });

  test('have names of their own and one to six lines', () => {
    expect(new Set(passages.map(({ name }) => name)).size).toBe(passages.length);
    for (const { name, text } of passages) expect(linesOf(text), name).toBeLessThanOrEqual(6);
  });

  test('ask for no silence about what they expect, and leave free nothing that they forbid', () => {
    for (const { name, facts, none, free = [] } of passages) {
      const silent = none.filter((each) => typeof each === 'string');
      expect(
        facts.map(({ kind }) => kind).filter((kind) => silent.includes(kind)),
        name,
      ).toEqual([]);
      expect(
        free.filter((kind) => silent.includes(kind)),
        name,
      ).toEqual([]);
    }
  });
});

describe('accuracy of reading', () => {
  const { kinds, misses } = accuracyOf(registers);

  test.each(kinds)('$kind stays at its floor or above', ({ kind, recall, precision, silence }) => {
    const missed = misses.filter((miss) => miss.kind === kind);
    const list = missed
      .map((miss) => `${miss.passage.name}: ${miss.fault}, ${miss.expected}, got ${miss.got}`)
      .join('\n');
    const floor = floors[kind];
    expect(floor, `no floor for ${kind}`).toBeDefined();
    expect(percentOf(recall), `found\n${list}`).toBeGreaterThanOrEqual(floor?.found ?? 100);
    expect(percentOf(precision), `right\n${list}`).toBeGreaterThanOrEqual(floor?.right ?? 100);
    expect(percentOf(silence), `silent\n${list}`).toBeGreaterThanOrEqual(floor?.silent ?? 100);
  });

  test('every floor belongs to a kind that is counted', () => {
    expect(Object.keys(floors).sort()).toEqual(kinds.map(({ kind }) => kind));
  });
});

describe('the comparison can fail', () => {
  const passage: Passage = {
    name: 'air of walks',
    text: 'Air content of walks shall be 5 to 8 percent.',
    facts: [{ kind: 'air-content', force: 'require', value: { min: 5, max: 8, unit: 'percent' }, subject: ['walk'] }],
    none: [{ kind: 'air-content', force: ['ban'] }, 'slump'],
  };
  const facts = read({ path: 'air.md', text: asRead(passage) }).facts.filter(({ kind }) => kind === 'air-content');
  const faults = (changed: readonly Fact[]) => judge(passage, changed).misses.map(({ fault }) => fault);
  const each = (change: (fact: Fact) => Fact) => faults(facts.map(change));

  test('what is read as written has no fault', () => expect(faults(facts)).toEqual([]));
  test('nothing read', () => expect(faults([])).toEqual(['missing']));
  test('another force', () => expect(each((fact) => ({ ...fact, force: 'recommend' }))).toEqual(['force']));
  test('another value', () => {
    const wrong = (fact: Fact) =>
      'value' in fact ? { ...fact, value: { dimension: 'share', unit: 'percent', min: 5 } } : fact;
    expect(each((fact) => wrong(fact) as Fact)).toEqual(['value']);
  });
  test('another subject', () => {
    expect(each((fact) => ({ ...fact, subject: { ...fact.subject, elements: [] } }))).toEqual(['subject']);
  });
  test('more than was said', () => {
    const also: Fact[] = facts.map((fact) => ({ ...fact, kind: 'strength' }) as Fact);
    expect(faults([...facts, ...also])).toEqual(['not said']);
  });
  test('a kind that must stay silent', () => {
    const also: Fact[] = facts.map((fact) => ({ ...fact, kind: 'slump' }) as Fact);
    const judged = judge(passage, [...facts, ...also]);
    expect(judged.misses.map(({ fault }) => fault)).toEqual(['forbidden']);
    expect(judged.silences.map(({ good }) => good)).toEqual([true, false]);
  });
});

const isTrap = ({ name, none }: Passage): boolean => name.startsWith('trap: ') && none.length !== 0;

const linesOf = (text: string): number => text.split('\n').filter((line) => line.trim() !== '').length;
