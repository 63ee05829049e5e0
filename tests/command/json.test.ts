/** The data contract: other programs rely on every name here. */
import { expect, test } from 'vitest';
import * as z from 'zod';
import { families } from '../../rules/model/rule.ts';
import { folderWith, run } from './run.ts';
import { lowAir, readme } from './sections.ts';

const place = z.strictObject({ line: z.int().min(1), column: z.int().min(1), offset: z.int().min(0) });
const range = { start: place, end: place };
const citation = {
  document: z.string().min(1),
  edition: z.string(),
  clause: z.string(),
  status: z.enum(['seen', 'seen second hand', 'from memory', 'derived', 'common practice']),
};
const origin = z.strictObject(citation);
const step = z.strictObject({ text: z.string().min(1), origin: origin.optional() });
const unit = z.string();
const bound = z.strictObject({ min: z.number(), unit });

const settings = z.looseObject({
  code: z.string(),
  codeAssumed: z.boolean(),
  climate: z.enum(['freezing', 'mild', 'unknown']),
  deicers: z.enum(['yes', 'no', 'unknown']),
  file: z.string().nullable(),
  origin: z.record(z.string(), z.enum(['flag', 'project file', 'text', 'default'])),
});

const finding = z.strictObject({
  rule: z.string(),
  family: z.enum(families),
  severity: z.enum(['must', 'should', 'note']),
  path: z.string(),
  place: z.string(),
  ...range,
  message: z.string().min(1).max(120),
  detail: z.string(),
  found: z.string().nullable(),
  required: z.string().nullable(),
  elements: z.array(z.string()),
  evidence: z.array(z.looseObject({ element: z.string(), band: z.string(), points: z.number() })),
  because: z.array(z.strictObject({ place: z.string(), message: z.string(), path: z.string(), ...range })),
  steps: z.array(step),
  citations: z.array(z.strictObject({ ...citation, protects: z.literal(true).optional() })).min(1),
  suggestion: z
    .strictObject({
      title: z.string(),
      mechanical: z.boolean(),
      edits: z.array(z.strictObject({ path: z.string(), ...range, text: z.string() })),
    })
    .nullable(),
});

const checked = z.strictObject({
  schemaVersion: z.literal(1),
  tool: z.strictObject({ name: z.literal('firstwinter'), version: z.string() }),
  settings: settings.nullable(),
  manuals: z.array(z.strictObject({ settings, documents: z.array(z.string()) })).optional(),
  notLoaded: z.array(z.string()).optional(),
  documents: z.array(
    z.strictObject({
      path: z.string(),
      section: z.string().nullable(),
      title: z.string().nullable(),
      clauses: z.int().min(0),
      unread: z.int().min(0),
    }),
  ),
  skipped: z.array(z.strictObject({ path: z.string(), reason: z.string().min(1) })),
  findings: z.array(finding),
  failures: z.array(z.strictObject({ rule: z.string(), error: z.string() })),
  questions: z.array(z.strictObject({ path: z.string(), place: z.string(), text: z.string() })),
  problems: z.array(z.looseObject({ path: z.string(), line: z.int(), column: z.int(), message: z.string() })),
});

const fact = z.strictObject({
  kind: z.string(),
  force: z.enum(['require', 'permit', 'recommend', 'ban', 'waive', 'state']),
  addressee: z.enum(['contractor', 'designer', 'owner', 'supplier', 'tester']),
  subject: z.array(z.string()),
  exterior: z.enum(['yes', 'no', 'unknown']),
  text: z.string().min(1),
  place: z.string(),
  ...range,
  value: z.union([z.string(), z.looseObject({ verb: z.string() })]).optional(),
  min: z.number().optional(),
  max: z.number().optional(),
  target: z.number().optional(),
  plus: z.number().optional(),
  minus: z.number().optional(),
  unit: unit.optional(),
  asWritten: z.string().optional(),
  also: z.array(z.looseObject({ unit, asWritten: z.string() })).optional(),
  of: z.string().optional(),
  age: z.number().optional(),
  steps: z.array(z.string()).optional(),
  when: z.string().optional(),
  except: z.string().optional(),
  among: z.string().optional(),
  doubt: z.string().optional(),
});

const limits = {
  wcm: z.strictObject({ max: z.number() }).nullable(),
  strength: bound.extend({ also: bound }).nullable(),
  air: z
    .strictObject({
      target: z.number().nullable(),
      low: z.number(),
      high: z.number(),
      reducedTarget: z.number().nullable(),
      unit: z.literal('percent'),
    })
    .nullable(),
  airAtMost: z.number().nullable(),
  cementitious: z.strictObject({
    caps: z.array(z.strictObject({ material: z.string(), max: z.number(), unit: z.literal('percent') })),
    rules: z.array(z.string()),
  }),
  chloride: z.strictObject({ max: z.number(), unit: z.literal('percent'), of: z.string() }).nullable(),
  curing: bound.extend({ highEarly: z.number(), temperature: bound }).nullable(),
};

const requirement = z.strictObject({
  schemaVersion: z.literal(1),
  code: z.string(),
  exposure: z.array(z.string()).min(1),
  ...limits,
  aggregate: z.strictObject({ value: z.number(), unit }).nullable(),
  lawful: z.strictObject(limits),
  recommended: z.strictObject(limits).nullable(),
  alternatives: z.array(z.strictObject({ about: z.string(), given: z.string(), ...limits })),
  steps: z.array(step).min(1),
  citations: z.array(origin).min(1),
});

const rule = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  family: z.enum(families),
  severity: z.enum(['must', 'should', 'note', 'off']),
  title: z.string().min(1),
  citations: z.array(z.strictObject({ code: z.string(), ...citation, protects: z.literal(true).optional() })).min(1),
});

const cold = ['--climate', 'freezing', '--deicers', 'yes'];
const data = (folder: string, words: readonly string[]) => JSON.parse(run(folder, [...words, '--format', 'json']).out);
const job = () => folderWith({ 'walks.md': lowAir, 'README.md': readme });

test('check', () => {
  const report = checked.parse(data(job(), ['check', '.', ...cold]));
  expect(report.findings.map(({ rule: id }) => id)).toContain('air-content-low');
  expect(report.skipped.map(({ path }) => path)).toEqual(['README.md']);
});

test('check with nothing to check, and with several manuals', () => {
  const nothing = checked.parse(data(folderWith({ 'README.md': readme }), ['check', '.']));
  expect(nothing).toMatchObject({ settings: null, documents: [], findings: [] });
  const two = folderWith({ 'a/walks.md': lowAir, 'a/firstwinter.jsonc': '{}', 'walks.md': lowAir });
  expect(checked.parse(data(two, ['check', '.', ...cold])).manuals).toHaveLength(2);
});

test('a finding of check: place, line, column and offset are those of the text', () => {
  const text = lowAir.replaceAll('\n', '\r\n');
  const report = checked.parse(data(folderWith({ 'walks.md': text }), ['check', 'walks.md', ...cold]));
  const low = report.findings.find(({ rule: id }) => id === 'air-content-low');
  const lines = text.split('\r\n');
  const number = lines.findIndex((line) => line.startsWith('B. Shelter walk air'));
  expect(low).toMatchObject({ severity: 'must', place: '2.03.B', path: 'walks.md', start: { line: number + 1 } });
  const { start, end } = low as NonNullable<typeof low>;
  expect(text.slice(start.offset, end.offset)).toContain('2 percent');
  expect(text.slice(0, start.offset).split('\r\n').at(-1)).toHaveLength(start.column - 1);
});

test('settings that are wrong are in the data too', () => {
  const folder = folderWith({ 'walks.md': lowAir, 'firstwinter.jsonc': '{ "climat": "mild" }' });
  expect(checked.parse(data(folder, ['check', '.'])).problems).toMatchObject([{ path: 'firstwinter.jsonc', line: 1 }]);
});

test('facts', () => {
  const shape = z.looseObject({
    schemaVersion: z.literal(1),
    documents: z.array(
      z.looseObject({
        path: z.string(),
        facts: z.array(fact),
        unread: z.array(z.strictObject({ place: z.string(), reason: z.string(), text: z.string(), ...range })),
      }),
    ),
  });
  const { documents } = shape.parse(data(job(), ['facts', 'walks.md']));
  const air = documents[0]?.facts.find(({ kind }) => kind === 'air-content');
  expect(air).toMatchObject({ target: 2, plus: 0.5, minus: 0.5, unit: 'percent', place: '2.03.B' });
  const exposure = documents[0]?.facts.find(({ kind }) => kind === 'exposure-class');
  expect(exposure).toMatchObject({ value: 'F3', exterior: 'yes' });
  expect(exposure?.subject).toContain('shelter walk');
});

test('require: a reinforced member under salts', () => {
  const words = ['require', '--exposure', 'F3,C2', '--aggregate', '3/4 in', '--strength', '5000 psi', '--reinforced'];
  const member = requirement.parse(data(job(), words));
  expect(member).toMatchObject({ code: 'aci-318-19', exposure: ['F3', 'C2'], recommended: null, alternatives: [] });
  expect(member.wcm).toEqual({ max: 0.4 });
  expect(member.strength).toEqual({ min: 5000, unit: 'psi', also: { min: 35, unit: 'MPa' } });
  expect(member.air).toEqual({ target: 6, low: 4.5, high: 7.5, reducedTarget: 5, unit: 'percent' });
  expect(member.chloride).toMatchObject({ max: 0.15 });
});

test('require: a ground slab has a lawful minimum and a recommendation', () => {
  const slab = requirement.parse(data(job(), ['require', '--code', 'ibc', '--exposure', 'F3', '--aggregate', '19 mm']));
  expect(slab).toMatchObject({ wcm: null, strength: { min: 3500 }, lawful: { wcm: null, strength: { min: 3500 } } });
  expect(slab.recommended).toMatchObject({ wcm: { max: 0.45 }, strength: { min: 4500 } });
});

test('require: what hangs on the aggregate is put as alternatives, and nothing is required where nothing freezes', () => {
  const open = requirement.parse(data(job(), ['require', '--exposure', 'f3', '--plain']));
  expect(open.aggregate).toBeNull();
  expect(open.alternatives.map(({ about }) => about)).toContain('aggregate');
  expect(requirement.parse(data(job(), ['require', '--exposure', 'F0,C0'])).air).toBeNull();
});

test('rules and explain', () => {
  const list = z.array(rule).parse(data(job(), ['rules']));
  expect(new Set(list.map(({ id }) => id)).size).toBe(list.length);
  const page = rule.extend({
    reason: z.string().min(1),
    clause: z.strictObject({ inchPound: z.string().min(1), metric: z.string().min(1) }),
    examples: z.strictObject({
      flagged: z.array(z.strictObject({ name: z.string(), text: z.string() })).min(1),
      clean: z.array(z.strictObject({ name: z.string(), text: z.string() })).min(1),
    }),
  });
  for (const { id } of list.slice(0, 3)) {
    const { examples } = page.parse(data(job(), ['explain', id]));
    for (const { text } of [...examples.flagged, ...examples.clean]) expect(text).not.toMatch(/^\s*\^/m);
  }
});
