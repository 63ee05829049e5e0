/** The project file: what is right is kept, each fault is told with its place and cure. */
import { describe, expect, test } from 'vitest';
import { projectFileJsonSchema, readSettings } from '../../server/settings.ts';

const ruleIds = ['air-content-low', 'w-cm-high', 'curing-missing'];
const readFile = (text: string) => readSettings({ path: 'firstwinter.jsonc', text }, ruleIds);
const only = (text: string) => {
  const { problems, values } = readFile(text);
  expect(problems).toHaveLength(1);
  return { ...problems[0]!, values };
};

test('a full project file reads without a fault', () => {
  const { values, problems } = readFile(`{
    // Tallow Ridge Transit Exchange
    "code": "aci-318-14", "climate": "freezing", "deicers": "yes", "aggregate": "3/4 in", "units": "ip",
    "stage": "before-issue", "structural": "unknown", "reinforced": "no",
    "levels": { "air": "should", "air-content-low": "must", "unfinished": "on" },
    "elements": { "Shelter Walk": { "deicers": "yes", "exposure": ["F3"] } },
    "sections": { "sections/03 30 00.md": { "code": "ibc", "levels": { "curing": "off" } }, },
  }`);
  expect(problems).toEqual([]);
  expect(values.sections?.['sections/03 30 00.md']?.code).toBe('ibc');
  expect(values.levels).toEqual({ air: 'should', 'air-content-low': 'must', unfinished: 'on' });
});

test('a mistyped key: place of the key, what was meant, and the rest kept', () => {
  const { line, column, message, cure, weight, values } = only('{\n  "climte": "freezing",\n  "deicers": "yes"\n}');
  expect({ line, column, weight }).toEqual({ line: 2, column: 3, weight: 'fault' });
  expect(message).toContain('"climte"');
  expect(cure).toBe('did you mean "climate"?');
  expect(values).toEqual({ deicers: 'yes' });
});

test('a key like no other: the keys that exist are named', () => {
  expect(only('{ "mortar": 1 }').cure).toMatch(/^keys here: .*\bclimate\b.*\bsections\b/);
});

test('a wrong value: place of the value, the values that exist, what was meant', () => {
  const { line, column, message, cure, values } = only('{ "climate": "freezing",\r\n  "code": "aci-318-91" }');
  expect({ line, column }).toEqual({ line: 2, column: 11 });
  expect(message).toBe('"code" cannot be "aci-318-91"');
  expect(cure).toMatch(/write one of aci-318-14, .*; did you mean "aci-318-19"\?/);
  expect(values).toEqual({ climate: 'freezing' });
});

test('a wrong kind of value', () => {
  const { message, cure } = only('{ "levels": ["air"] }');
  expect(message).toBe('"levels" takes an object, { … }, not ["air"]');
  expect(cure).toBe('write an object, { … }');
});

test('a rule that does not exist is told from a wrong key, its level is dropped, the others stay', () => {
  const { message, cure, values } = only('{ "levels": { "air-content-lo": "off", "curing": "note" } }');
  expect(message).toBe('"air-content-lo" is neither a rule nor a family');
  expect(cure).toBe('did you mean "air-content-low"?');
  expect(values.levels).toEqual({ curing: 'note' });
});

test('a fault inside one section leaves the other sections standing', () => {
  const { message, values } = only('{ "sections": { "a.md": { "unit": "ip" }, "b.md": { "units": "si" } } }');
  expect(message).toBe('"unit" is not a key of "sections.a.md"');
  expect(values.sections).toEqual({ 'a.md': {}, 'b.md': { units: 'si' } });
});

test('a size without its unit', () => {
  const { message, cure } = only('{ "aggregate": "20" }');
  expect(message).toContain('"20"');
  expect(cure).toContain('19 mm');
});

test('a key twice: the place of the later one', () => {
  const { column, message, values } = only('{ "deicers": "yes", "deicers": "no" }');
  expect(column).toBe(21);
  expect(message).toContain('twice');
  expect(values.deicers).toBe('no');
});

test('an amendment without its citation', () => {
  const { message } = only('{ "amendments": [{ "property": "w-cm", "value": "0.42" }] }');
  expect(message).toContain('citation');
});

test('keys without effect in this version are said, as a notice', () => {
  const { weight, message, values } = only('{ "season": { "firstSalt": "2026-11-15" } }');
  expect(weight).toBe('notice');
  expect(message).toContain('no rule of this version');
  expect(values.season?.firstSalt).toBe('2026-11-15');
});

describe('text that is not settings', () => {
  test.each([
    ['a colon lost', '{ "climate" "freezing" }', 'colon'],
    ['a comma lost', '{ "climate": "freezing" "deicers": "yes" }', 'comma'],
    ['not closed', '{ "climate": "freezing"', 'closing brace'],
    ['words', 'climate = freezing', 'quotes'],
    ['nothing', '', 'empty'],
    ['a list', '[]', 'object'],
    ['null', 'null', 'object'],
  ])('%s', (_, text, words) => {
    const { problems } = readFile(text);
    expect(problems.some(({ message, cure }) => `${message} ${cure}`.includes(words))).toBe(true);
    for (const { start, end, line } of problems) {
      expect(start).toBeLessThanOrEqual(end);
      expect(end).toBeLessThanOrEqual(text.length);
      expect(line).toBe(1);
    }
  });

  test('a lost comma keeps what was readable', () => {
    expect(readFile('{ "climate": "freezing" "deicers": "yes" }').values).toMatchObject({ climate: 'freezing' });
  });
});

test('a byte order mark moves no place', () => {
  expect(only('\uFEFF{ "cod": 1 }')).toMatchObject({ start: 3, column: 4 });
});

test('an exposure class that no code has is refused, one of any code is taken', () => {
  const wrong = (name: string) => only(`{ "elements": { "walk": { "exposure": ["${name}"] } } }`);
  for (const name of ['F9', 'f3', 'XF', 'frost']) expect(wrong(name).cure).toContain('write an exposure class');
  const right = ['F3', 'C2', 'W2', 'S0', 'RF4', 'RF0', 'C-XL', 'C-1', 'F-2', 'XF4', 'XD3', 'X0', 'N'];
  const text = JSON.stringify({ elements: { walk: { exposure: right } } });
  expect(readSettings({ path: 'firstwinter.jsonc', text }, []).problems).toEqual([]);
});

test('braces in texts and comments do not count as nesting, and braces without end are one fault', () => {
  const plain = `{ /* ${'['.repeat(500)} */ "sections": { "${'{'.repeat(500)}": {} } }`;
  expect(readSettings({ path: 'firstwinter.jsonc', text: plain }, []).problems).toEqual([]);
  expect(only('{ "elements": '.repeat(20_000)).message).toContain('too deep');
});

test('the schema says of keys without effect that they have none', () => {
  const { properties } = projectFileJsonSchema([]) as { properties: Record<string, { description: string }> };
  for (const key of ['amendments', 'season']) expect(properties[key]?.description).toContain('no rule uses');
});
