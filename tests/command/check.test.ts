/** `check` as a process: statuses, streams, what a wrong word is answered with. */
import { mkdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { folderWith, run } from './run.ts';
import { interior, lowAir, readme } from './sections.ts';

const cold = ['--climate', 'freezing', '--deicers', 'yes'];
const json = (out: string) => JSON.parse(out);

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

  test('what failed is said once: a missing path is not also a text without concrete', () => {
    const { status, err } = run(folderWith({}), ['check', 'walk.md']);
    expect(err).toMatch(/^walk\.md: there is no such file or folder\n .*\n$/);
    expect(status).toBe(2);
  });

  test('2 for a project file that is not text, or nested without end', () => {
    for (const content of [Uint8Array.from({ length: 400 }, (_, index) => index % 7), '['.repeat(100_000)]) {
      const folder = folderWith({ 'walks.md': lowAir, 'firstwinter.jsonc': content });
      const { status, out, err } = run(folder, ['check', '.']);
      expect(err).toMatch(/^firstwinter\.jsonc(?:: is not text|, line 1, column 1: the braces stand too deep)/);
      expect(out).toContain('SECTION 32 13 13');
      expect(status).toBe(2);
    }
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
    const help = [[], ['check'], ['facts'], ['require'], ['rules'], ['explain']].map((words) =>
      run(folder(), [...words, '--help']).out.split('\n'),
    );
    expect(Math.max(...help.flat().map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(run(folder(), ['--version']).out).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});
