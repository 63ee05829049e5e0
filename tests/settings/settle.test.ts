/** Which value is in force, and where it came from. */
import { describe, expect, test } from 'vitest';
import type { NamedFact } from '../../rules/model/fact.ts';
import { projectFor } from '../../rules/model/project.ts';
import type { SectionDocument, Specification } from '../../rules/model/specification.ts';
import { matchesPath } from '../../server/settings/globs.ts';
import { nearest } from '../../server/settings/nearest.ts';
import { type Flags, isListed, parseAggregate, parseAmount, readSettings, settle } from '../../server/settings.ts';

const file = (values: object) =>
  readSettings({ path: 'job/firstwinter.jsonc', text: JSON.stringify(values) }, ['curing-missing']);
const paths = new Map([
  ['job/walks.md', 'walks.md'],
  ['job/div 03/slabs.md', 'div 03/slabs.md'],
]);
const settled = (values: object, flags: Flags = {}, specification?: Specification) =>
  settle({ flags, file: file(values), paths, specification });

/** A text that cites these standards as requirements, in this order. */
function citing(...standards: readonly (string | Partial<NamedFact>)[]): Specification {
  const facts = standards.map((standard, index): NamedFact => {
    const fact = typeof standard === 'string' ? { value: standard } : standard;
    return {
      kind: 'standard',
      value: '',
      of: 'requirement',
      force: 'require',
      addressee: 'contractor',
      subject: { elements: [], mixtures: [], exterior: 'unknown', by: 'section' },
      spans: [{ path: 'job/walks.md', start: index, end: index + 1 }],
      words: 'Comply with it.',
      place: `1.02.${'ABCDEF'[index]}`,
      article: 0,
      ...fact,
    };
  });
  const document = { path: 'job/walks.md', facts } as unknown as SectionDocument;
  return { documents: [document], elements: [], facts };
}

test('nothing given: ACI 318-19, assumed, and all else unknown', () => {
  const { project, origins, levels } = settle({ flags: {}, paths });
  expect(project).toMatchObject({ code: 'aci-318-19', codeAssumed: true, climate: 'unknown', deicers: 'unknown' });
  expect(project).toMatchObject({ stage: 'being-written', units: 'both', byPath: {} });
  expect(origins.code).toEqual({ from: 'default' });
  expect(levels).toEqual({ everywhere: {}, byPath: {} });
});

test('flag beats file beats default, and each says so', () => {
  const { project, origins } = settled({ climate: 'mild', deicers: 'yes' }, { climate: 'freezing', code: 'ibc' });
  expect(project).toMatchObject({ climate: 'freezing', deicers: 'yes', code: 'ibc', codeAssumed: false });
  expect(origins.climate).toEqual({ from: 'flag' });
  expect(origins.deicers).toEqual({ from: 'project file', path: 'job/firstwinter.jsonc' });
  expect(origins.stage).toEqual({ from: 'default' });
});

describe('the code a text asks for', () => {
  test.each([
    ['ACI 318', 'Comply with ACI 318.', 'aci-318-19'],
    ['ACI 318', 'Comply with ACI 318-14 and ACI 301-20.', 'aci-318-14'],
    ['ACI 318', 'Comply with ACI 318-11.', 'aci-318-14'],
    ['ACI 318', 'Comply with ACI 318M-19.', 'aci-318-19'],
    ['ACI 318', 'Comply with ACI CODE-318-25.', 'aci-318-25'],
    ['ACI 301', 'Comply with ACI 301.', 'aci-318-19'],
    ['ACI 301', 'Comply with ACI 301-16.', 'aci-318-14'],
    ['ACI 301', 'Comply with ACI 301-2020.', 'aci-318-19'],
    ['IBC', 'Comply with IBC 1904.', 'ibc'],
    ['IRC', 'Comply with the IRC.', 'irc'],
    ['CSA A23.1', 'Comply with CSA A23.1:19.', 'csa-a23-1-19'],
    ['EN 206', 'Comply with EN 206-1.', 'en-206'],
  ])('%s in "%s" gives %s', (value, words, code) => {
    const { project, origins } = settled({}, {}, citing({ value, words }));
    expect(project).toMatchObject({ code, codeAssumed: false });
    expect(origins.code).toEqual({ from: 'text', path: 'job/walks.md', place: '1.02.A' });
  });

  test('the one asked for most often', () => {
    expect(settled({}, {}, citing('CSA A23.1', 'EN 206', 'EN 206')).project.code).toBe('en-206');
  });

  test('a guide, a bare reference and a waived standard decide nothing', () => {
    const other = citing(
      { value: 'EN 206', of: 'guide' },
      { value: 'EN 206', of: 'listed' },
      { value: 'EN 206', force: 'waive' },
      'ASTM C94',
    );
    expect(settled({}, {}, other).project).toMatchObject({ code: 'aci-318-19', codeAssumed: true });
  });

  test('the project file beats the text', () => {
    expect(settled({ code: 'irc' }, {}, citing('EN 206')).project.code).toBe('irc');
  });
});

describe('sections', () => {
  const values = {
    deicers: 'yes',
    elements: { 'Bus Apron': { reinforced: 'yes' } },
    levels: { curing: 'note' },
    sections: {
      'div */*.md': { deicers: 'no', elements: { 'dock slab': { structural: 'yes' } }, levels: { curing: 'must' } },
    },
  };
  const { project, levels } = settled(values);

  test('hold for the files they name and for no other', () => {
    expect(projectFor(project, 'job/div 03/slabs.md').deicers).toBe('no');
    expect(projectFor(project, 'job/walks.md').deicers).toBe('yes');
    expect(levels.byPath).toEqual({ 'job/div 03/slabs.md': { curing: 'must' } });
  });

  test('add their elements to those of the project, named as the reader names them', () => {
    const { elements } = projectFor(project, 'job/div 03/slabs.md');
    expect(elements).toEqual({ 'bus apron': { reinforced: 'yes' }, 'dock slab': { structural: 'yes' } });
  });

  test('are beaten by a flag', () => {
    const flagged = settled(values, { deicers: 'unknown' }).project;
    expect(projectFor(flagged, 'job/div 03/slabs.md').deicers).toBe('unknown');
  });

  test('list the files that are always read', () => {
    expect(isListed(file(values), 'div 03/slabs.md')).toBe(true);
    expect(isListed(file(values), 'walks.md')).toBe(false);
    expect(isListed(undefined, 'walks.md')).toBe(false);
  });
});

test.each([
  ['a.md', 'a.md', true],
  ['./a.md', 'a.md', true],
  ['div', 'div/03/a.md', true],
  ['*.md', 'a.md', true],
  ['*.md', 'div/a.md', false],
  ['**/*.md', 'a.md', true],
  ['**/*.md', 'div/03/a.md', true],
  ['div/**', 'div/03/a.md', true],
  ['0?.{md,txt}', '03.txt', true],
  ['0?.{md,txt}', '03.mdx', false],
  ['a.md', 'aXmd', false],
])('pattern %s against %s: %s', (pattern, path, expected) => {
  expect(matchesPath(pattern, path)).toBe(expected);
});

test.each([
  ['3/4 in', 0.75, 'in'],
  ['3/4 in.', 0.75, 'in'],
  ['1-1/2 inch', 1.5, 'in'],
  ['1 1/2"', 1.5, 'in'],
  ['1½ in.', 1.5, 'in'],
  ['19 mm', 19, 'mm'],
  ['19mm', 19, 'mm'],
  ['.75 in', 0.75, 'in'],
])('the size %s is %d %s', (text, amount, unit) => {
  expect(parseAmount(text, 'length')).toMatchObject({ amount, unit });
});

test.each(['', '3/4', 'in', '3/0 in', '5000 psi', '1,5 in', '3//4 in', '-1 in', '1-2 in'])('no size: "%s"', (text) => {
  expect(parseAmount(text, 'length')).toBeUndefined();
});

test('a strength in either unit', () => {
  expect(parseAmount('5,000 psi', 'stress')).toMatchObject({ amount: 5000, unit: 'psi' });
  expect(parseAmount('35 N/mm2', 'stress')).toMatchObject({ amount: 35, unit: 'MPa' });
});

test.each([
  ['57', 1, 'in'],
  ['No. 67', 0.75, 'in'],
  ['#8', 0.375, 'in'],
  ['19 mm', 19, 'mm'],
])('the aggregate %s', (text, amount, unit) => {
  expect(parseAggregate(text)).toMatchObject({ amount, unit });
});

test.each(['58', 'No. 5', 'stone', '20'])('no aggregate: "%s"', (text) => {
  expect(parseAggregate(text)).toBeUndefined();
});

test('the nearest word, unless none is near', () => {
  expect(nearest('deicres', ['climate', 'deicers'])).toBe('deicers');
  expect(nearest('AIR-CONTENT-LOW', ['air-content-low'])).toBe('air-content-low');
  expect(nearest('gravel', ['climate', 'deicers'])).toBeUndefined();
});
