/** Which files `check` reads, under which settings. */
import { symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { folderWith, run } from './run.ts';
import { interior, lowAir, readme } from './sections.ts';

const json = (out: string) => JSON.parse(out);
const paths = (out: string) => json(out).documents.map(({ path }: { path: string }) => path);

describe('what is read', () => {
  test('section files of a folder and below, in order of their path; other files are left out with the reason', () => {
    const folder = folderWith({
      'b.MD': lowAir,
      'a/z.markdown': lowAir,
      'a/y.txt': interior,
      'a/notes.rst': lowAir,
      'README.md': readme,
      'empty.md': '',
      'scan.md': Uint8Array.from({ length: 400 }, (_, index) => index % 7),
      'node_modules/x/m.md': lowAir,
      '.hidden/h.md': lowAir,
    });
    const { out } = run(folder, ['check', '.', '--format', 'json']);
    expect(paths(out)).toEqual(['a/y.txt', 'a/z.markdown', 'b.MD']);
    const reasons = Object.fromEntries(
      json(out).skipped.map(({ path, reason }: { path: string; reason: string }) => [path, reason]),
    );
    expect(Object.keys(reasons).sort()).toEqual(['README.md', 'empty.md', 'scan.md']);
    expect(reasons['README.md']).toContain('not concrete specification text');
    expect(reasons['empty.md']).toBe('empty');
    expect(reasons['scan.md']).toBe('not text');
  });

  test('a file named itself, whatever it looks like', () => {
    const { out, status } = run(folderWith({ 'README.md': readme }), ['check', 'README.md', '--format', 'json']);
    expect(paths(out)).toEqual(['README.md']);
    expect(status).toBe(0);
  });

  test('a file that is named beside its folder counts as named', () => {
    const words = ['check', 'README.md', '.', '--format', 'json'];
    expect(paths(run(folderWith({ 'README.md': readme }), words).out)).toEqual(['README.md']);
    expect(paths(run(folderWith({ 'README.md': readme }), ['check', '.', ...words.slice(1)]).out)).toHaveLength(1);
  });

  test('a file listed in the project file, whatever it looks like', () => {
    const folder = folderWith({ 'README.md': readme, 'firstwinter.jsonc': '{ "sections": { "READ*": {} } }' });
    expect(paths(run(folder, ['check', '.', '--format', 'json']).out)).toEqual(['README.md']);
  });

  test('each file once, under its own name, also where links lead to it', () => {
    const folder = folderWith({ 'walks.md': lowAir });
    symlinkSync('.', join(folder, 'again'));
    expect(paths(run(folder, ['check', '.', 'walks.md', './walks.md', '--format', 'json']).out)).toEqual(['walks.md']);
  });

  test('a pattern that no shell expanded', () => {
    const folder = folderWith({ 'a/walks.md': lowAir, 'b/walks.md': lowAir });
    expect(paths(run(folder, ['check', 'a/*.md', '--format', 'json']).out)).toEqual(['a/walks.md']);
  });

  test('standard input, under the name it is given and the project file beside that name', () => {
    const folder = folderWith({ 'job/firstwinter.jsonc': '{ "climate": "mild" }' });
    const { out, status } = run(folder, ['check', '-', '--name', 'job/walks.md', '--format', 'json'], lowAir);
    expect(paths(out)).toEqual(['job/walks.md']);
    expect(json(out).settings).toMatchObject({ climate: 'mild', file: 'job/firstwinter.jsonc' });
    expect(json(out).documents[0].section).toBe('32 13 13');
    expect(status).toBe(json(out).findings.some(({ severity }: { severity: string }) => severity === 'must') ? 1 : 0);
  });

  test('characters that were lost are said', () => {
    const folder = folderWith({ 'walks.md': lowAir.replace('2 percent', '2 \uFFFD percent') });
    expect(run(folder, ['check', 'walks.md']).err).toMatch(/^walks\.md: 1 character/m);
  });
});

describe('settings', () => {
  test('files under different project files are manuals of their own', () => {
    const folder = folderWith({
      'north/firstwinter.jsonc': '{ "climate": "freezing", "deicers": "yes" }',
      'north/walks.md': lowAir,
      'south/firstwinter.jsonc': '{ "climate": "mild", "deicers": "no" }',
      'south/walks.md': lowAir.replace('Exposure Class F3, nominal', 'nominal'),
    });
    const { manuals, findings } = json(run(folder, ['check', '.', '--format', 'json']).out);
    const climates = manuals.map(({ settings }: { settings: { climate: string } }) => settings.climate);
    expect(climates).toEqual(['freezing', 'mild']);
    const musts = findings.filter(({ severity }: { severity: string }) => severity === 'must');
    expect(new Set(musts.map(({ path }: { path: string }) => path))).toEqual(new Set(['north/walks.md']));
  });

  test('the nearest project file upward holds', () => {
    const folder = folderWith({ 'job/a/b/walks.md': lowAir, 'job/firstwinter.jsonc': '{ "climate": "mild" }' });
    const { settings } = json(run(folder, ['check', 'job/a/b', '--format', 'json']).out);
    expect(settings).toMatchObject({ climate: 'mild', file: 'job/firstwinter.jsonc' });
  });

  test('a key without effect in this version is a notice, no fault', () => {
    const folder = folderWith({
      'floor.md': interior,
      'firstwinter.jsonc': '{ "season": { "firstSalt": "2026-11-15" } }',
    });
    const { status, err } = run(folder, ['check', 'floor.md']);
    expect(err).toMatch(/^firstwinter\.jsonc, line 1, column \d+: notice: "season"/);
    expect(status).toBe(0);
  });

  test('flag beats file beats default, and each says where it came from', () => {
    const folder = folderWith({ 'walks.md': lowAir, 'firstwinter.jsonc': '{ "climate": "mild", "deicers": "yes" }' });
    const { settings } = json(run(folder, ['check', '.', '--climate', 'freezing', '--format', 'json']).out);
    expect(settings).toMatchObject({ climate: 'freezing', deicers: 'yes', code: 'aci-318-19', codeAssumed: true });
    expect(settings.origin).toMatchObject({ climate: 'flag', deicers: 'project file', code: 'default' });
  });

  test('without a project file the code is the one that the text requires', () => {
    const citing = lowAir.replace('2.03 MIXTURES\n', '2.03 MIXTURES\n\nComply with ACI 318-14.\n');
    const { settings } = json(run(folderWith({ 'walks.md': citing }), ['check', '.', '--format', 'json']).out);
    expect(settings).toMatchObject({ code: 'aci-318-14', codeAssumed: false, origin: { code: 'text' } });
  });

  test('the report says what is assumed and what is not given', () => {
    const { out } = run(folderWith({ 'walks.md': lowAir }), ['check', '.']);
    expect(out).toMatch(/^Code +ACI 318-19, assumed/m);
    expect(out).toMatch(/^Climate +not given/m);
    expect(out).toMatch(/^De-icers +not given/m);
    expect(out).toMatch(/^Read +1 section, \d+ clauses/m);
  });
});
