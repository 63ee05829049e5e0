/** The list of rules against the files, and what every rule must bring. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { rules } from '../../rules/index.ts';
import type { CodeId } from '../../rules/model/project.ts';
import { families } from '../../rules/model/rule.ts';

const root = new URL('../../rules/', import.meta.url);
const files = readdirSync(root, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && (families as readonly string[]).includes(entry.name))
  .flatMap(({ name }) => readdirSync(new URL(`${name}/`, root)).map((file) => `${name}/${file}`));

/** What each code must be answered with; a code without an entry is answered by the first one. */
const supported: readonly CodeId[] = ['aci-318-19', 'aci-318-14', 'ibc', 'irc'];

const numbers = /(?<![\w'"`.-])\d+(?:\.\d+)?(?![\w'"`])/g;

test('every file is in the list, under its own name and folder', () => {
  expect(rules.map(({ family, id }) => `${family}/${id}.ts`).sort()).toEqual(files.sort());
});

/** Levels of the cards of families A to L, as a reviewer sets them. */
const shouldCards = [
  'exposure-class-missing',
  'air-tolerance-missing',
  'air-test-method-missing',
  'w-cm-missing',
  'strength-missing',
  'surface-water-ban-missing',
  'curing-method-missing',
  'cold-weather-clause-missing',
  'deicer-hold-off-missing',
];
const mustCards = [
  'exposure-too-mild-for-use',
  'air-content-missing',
  'air-content-low',
  'air-entrainment-optional',
  'air-entrainment-forbidden-outdoors',
  'w-cm-high',
  'site-water-uncontrolled',
  'strength-low',
  'scm-over-cap',
  'water-added-to-surface',
  'finishing-over-bleed-water',
  'dry-cement-on-surface',
  'evaporation-retarder-as-finishing-aid',
  'hard-trowel-outdoors',
  'trowel-before-broom',
  'curing-missing',
  'curing-duration-missing',
  'curing-too-short',
  'wet-cure-into-freezing',
  'calcium-chloride-allowed',
  'harmful-deicer-specified',
  'sealer-in-place-of-air',
];

test('the cards stand at their own levels', () => {
  const at = (level: string) => rules.filter(({ severity }) => severity === level).map(({ id }) => id);
  expect(at('must').sort()).toEqual(mustCards.sort());
  expect(at('should').sort()).toEqual(shouldCards.sort());
});

test('no id occurs twice', () => {
  expect(new Set(rules.map(({ id }) => id)).size).toBe(rules.length);
});

describe.each(rules.map((rule) => [rule.id, rule] as const))('%s', (id, rule) => {
  test('cites a document with its clause for every supported code', () => {
    for (const code of supported) {
      const cited = rule.citations[code] ?? [];
      expect(cited.length, code).toBeGreaterThan(0);
      expect(
        cited.some(({ document, clause }) => document && clause),
        code,
      ).toBe(true);
    }
    expect(Object.keys(rule.citations)[0]).toBe('aci-318-19');
  });

  test('what only protects a clause names its own ground beside it', () => {
    for (const cited of Object.values(rule.citations)) {
      if (cited.some(({ protects }) => protects)) expect(cited.some(({ protects }) => !protects)).toBe(true);
    }
  });

  test('has a reason, a clause in both unit systems, and a title of its own', () => {
    expect(rule.reason).toMatch(/\.$/);
    expect(rule.clause.inchPound).toMatch(/\.$/);
    expect(rule.clause.metric).not.toMatch(/\bpsi\b|°F|\d in\.|\/gal/);
    expect(rule.clause.inchPound).not.toMatch(/\bMPa\b|°C|\bmm\b/);
    expect(rules.filter(({ title }) => title === rule.title)).toHaveLength(1);
  });

  test('has at least as many clean examples as flagged ones, and flagged ones', () => {
    const [flagged, clean] = [Object.keys(rule.examples.flagged), Object.keys(rule.examples.clean)];
    expect(flagged.length).toBeGreaterThanOrEqual(3);
    expect(clean.length).toBeGreaterThanOrEqual(flagged.length);
  });

  test('silences other rules by their ids, never itself', () => {
    for (const other of rule.outranks) expect(other).toMatch(/^[a-z]+(-[a-z]+)+$/);
    expect(rule.outranks).not.toContain(id);
  });

  test('holds no number but 0 and 1', () => {
    const code = readFileSync(new URL(`${rule.family}/${id}.ts`, root), 'utf8')
      .replace(/`[^`]*`/g, (template) => (template.includes('\n') ? '``' : template))
      .replace(/'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*"/g, "''")
      .replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, '');
    const found = [...code.matchAll(numbers)]
      .map(([number]) => number)
      .filter((number) => !['0', '1'].includes(number));
    expect(found).toEqual([]);
  });
});
