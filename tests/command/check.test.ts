/** `check` as a process: statuses, streams, what is read and what is left out. */
import { mkdirSync, readdirSync, readFileSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { folderWith, run } from './run.ts';
import { interior, lowAir, readme } from './sections.ts';

const cold = ['--climate', 'freezing', '--deicers', 'yes'];
const json = (out: string) => JSON.parse(out);
const paths = (out: string) => json(out).documents.map(({ path }: { path: string }) => path);

describe('status', () => {
  test('0 where nothing reaches the level', () => {
    const { status, out, err } = run(folderWith({ 'floor.md': interior }), ['check', 'floor.md', ...cold]);
    expect(err).toBe('');
    expect(out).toContain('Nothing found in 1 section.');
    expect(status).toBe(0);
  });

  test('1 where a must is found', () => {
    const { status, out } = run(folderWith({ 'walks.md': lowAir }), ['check', 'walks.md', ...cold]);
    expect(out).toMatch(/2\.03\.B {2}MUST change\n.*\b2 percent/);
    expect(out).toContain('rule air-content-low');
    expect(status).toBe(1);
  });

  test('0 with --fail-on never, and the findings all the same', () => {
    const folder = folderWith({ 'walks.md': lowAir });
    const { status, out } = run(folder, ['check', 'walks.md', ...cold, '--fail-on', 'never']);
    expect(out).toContain('rule air-content-low');
    expect(status).toBe(0);
  });

  test('--fail-on draws the line where it says', () => {
    const folder = folderWith({
      'walks.md': lowAir,
      'firstwinter.jsonc': '{ "levels": { "air-content-low": "note", "exposure": "off", "water": "off" } }',
    });
    const findings = json(run(folder, ['check', 'walks.md', ...cold, '--format', 'json']).out).findings;
    const severities = new Set(findings.map(({ severity }: { severity: string }) => severity));
    const status = (level: string) => run(folder, ['check', 'walks.md', ...cold, '--fail-on', level]).status;
    expect(severities).toContain('note');
    expect(status('note')).toBe(1);
    expect(status('should')).toBe(severities.has('should') || severities.has('must') ? 1 : 0);
    expect(status('must')).toBe(severities.has('must') ? 1 : 0);
  });

  test('2 for a missing path, with what was probably meant, and the rest printed', () => {
    const folder = folderWith({ 'walks.md': lowAir });
    const { status, out, err } = run(folder, ['check', 'walk.md', 'walks.md', ...cold]);
    expect(err).toMatch(/^walk\.md: there is no such file or folder\n\s+did you mean walks\.md\?$/m);
    expect(out).toContain('rule air-content-low');
    expect(status).toBe(2);
  });

  test('2 for a folder that is named like a file', () => {
    const folder = folderWith({ 'walks.md': lowAir });
    mkdirSync(join(folder, 'x.md'));
    const { status, out, err } = run(folder, ['check', 'x.md', 'walks.md', ...cold]);
    expect(err).toMatch(/^x\.md: is a folder/m);
    expect(out).toContain('rule air-content-low');
    expect(status).toBe(2);
  });

  test('2 for a link that leads nowhere', () => {
    const folder = folderWith({});
    symlinkSync('gone.md', join(folder, 'link.md'));
    const { status, err } = run(folder, ['check', 'link.md']);
    expect(err).toMatch(/^link\.md: /m);
    expect(status).toBe(2);
  });

  test('2 for a named file that is not text', () => {
    const folder = folderWith({ 'scan.md': Uint8Array.from({ length: 400 }, (_, index) => index % 7) });
    const { status, err } = run(folder, ['check', 'scan.md']);
    expect(err).toMatch(/^scan\.md: is not text and cannot be read\n\s+save it as text/m);
    expect(status).toBe(2);
  });

  test('2 for broken settings, and the rest printed under what is right in them', () => {
    const folder = folderWith({
      'walks.md': lowAir,
      'firstwinter.jsonc': '{\n  "climate": "freezing",\n  "deicer": 1\n}',
    });
    const { status, out, err } = run(folder, ['check', '.']);
    expect(err).toMatch(/^firstwinter\.jsonc, line 3, column 3: "deicer" .*\n\s+did you mean "deicers"\?$/m);
    expect(out).toMatch(/^Climate +freezing, from firstwinter\.jsonc$/m);
    expect(out).toContain('rule air-content-low');
    expect(status).toBe(2);
  });

  test('2 for a settings file that is not there', () => {
    const { status, err } = run(folderWith({ 'walks.md': lowAir }), ['check', '.', '--settings', 'mine.jsonc']);
    expect(err).toMatch(/^mine\.jsonc: the settings file cannot be read/m);
    expect(status).toBe(2);
  });

  test('3 where every file is left out', () => {
    const { status, out, err } = run(folderWith({ 'README.md': readme }), ['check', '.']);
    expect(out).toMatch(/^Skipped +README\.md: not concrete specification text/m);
    expect(out).toContain('Nothing was checked.');
    expect(err).toContain('nothing to read');
    expect(status).toBe(3);
  });

  test('3 for an empty file, which is said', () => {
    const { status, err } = run(folderWith({ 'walks.md': ' \n\n' }), ['check', 'walks.md']);
    expect(err).toMatch(/^walks\.md: is empty\n\s+restore its text/m);
    expect(status).toBe(3);
  });

  test('3 for a folder without section files', () => {
    expect(run(folderWith({ 'a.pdf': 'x' }), ['check', '.']).status).toBe(3);
  });
});

describe('a wrong word on the command line gives status 2 and what to write', () => {
  const folder = () => folderWith({ 'walks.md': lowAir });
  test.each([
    [['check', 'walks.md', '--code', 'aci-318-91'], 'did you mean aci-318-19?'],
    [['check', 'walks.md', '--climate', 'cold'], 'write one of freezing, mild, unknown'],
    [['check', 'walks.md', '--fail-on', 'mus'], 'did you mean must?'],
    [['check', 'walks.md', '--format', 'jsn'], 'did you mean json?'],
    [['check', 'walks.md', '--format', 'text', '--format', 'json'], 'json=out.json'],
    [['check', 'walks.md', '--format', 'json='], 'names no file'],
    [['check', 'walks.md', '--format', 'json=no/such/out.json'], 'cannot be written'],
    [['check'], 'missing required argument'],
    [['chek', 'walks.md'], 'Did you mean check?'],
    [[], 'Usage: firstwinter'],
  ])('%j', (words, answer) => {
    const { status, out, err } = run(folder(), words);
    expect(err.replace(/\s+/g, ' ')).toContain(answer);
    expect(out).toBe('');
    expect(status).toBe(2);
  });

  test('help and version are no faults', () => {
    expect(run(folder(), ['--help']).status).toBe(0);
    expect(run(folder(), ['check', '--help']).out).toContain('--fail-on');
    expect(run(folder(), ['--version']).out).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});

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

describe('output', () => {
  test('several formats in one run; a file is written whole and nothing else is left beside it', () => {
    const folder = folderWith({ 'walks.md': lowAir, 'out.json': 'old' });
    const words = ['check', 'walks.md', ...cold, '--format', 'text', '--format', 'json=out.json'];
    const { out, err } = run(folder, words);
    expect(out).toContain('SECTION 32 13 13');
    expect(err).toContain('Written: out.json');
    expect(json(readFileSync(join(folder, 'out.json'), 'utf8')).findings).not.toEqual([]);
    expect(readdirSync(folder).sort()).toEqual(['out.json', 'walks.md']);
  });

  test('text is at most 100 columns wide and without colour where nobody looks', () => {
    const { out } = run(folderWith({ 'walks.md': lowAir }), ['check', 'walks.md', ...cold, '--working', '--notes']);
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(100);
    expect(out).not.toContain('\u001b');
  });

  test('colour is asked for, and NO_COLOR answers', () => {
    const folder = folderWith({ 'walks.md': lowAir });
    const coloured = (words: string[], env: NodeJS.ProcessEnv) =>
      run(folder, ['check', 'walks.md', ...cold, ...words], '', env).out.includes('\u001b[');
    expect(coloured(['--color'], {})).toBe(true);
    expect(coloured([], { FORCE_COLOR: '1' })).toBe(true);
    expect(coloured([], { FORCE_COLOR: '1', NO_COLOR: '1' })).toBe(false);
    expect(coloured(['--no-color'], { FORCE_COLOR: '1' })).toBe(false);
  });

  test('the text of a file cannot steer the terminal', () => {
    const folder = folderWith({ 'walks.md': lowAir.replace('CONCRETE', 'CONCRETE \u001b[2J') });
    expect(run(folder, ['check', 'walks.md', ...cold]).out).not.toContain('\u001b');
    expect(run(folder, ['facts', 'walks.md']).out).not.toContain('\u001b');
  });

  test('the working is shown on request', () => {
    const folder = folderWith({ 'walks.md': lowAir });
    expect(run(folder, ['check', 'walks.md', ...cold]).out).not.toMatch(/^ +Working/m);
    expect(run(folder, ['check', 'walks.md', ...cold, '--working']).out).toMatch(/^ +Working +\S(?:.*\n)+.*Class F3/m);
  });
});
