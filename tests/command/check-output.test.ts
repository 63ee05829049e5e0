/** What `check` writes, and where. */
import { spawnSync } from 'node:child_process';
import { closeSync, openSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { folderWith, program, run } from './run.ts';
import { lowAir, readme } from './sections.ts';

const cold = ['--climate', 'freezing', '--deicers', 'yes'];
const json = (out: string) => JSON.parse(out);

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

  test('neither can a name, nor a word on the command line', () => {
    const folder = folderWith({ 'walks \u009b31m \u202e.md': lowAir });
    const steering = /[\u001b\u009b\u202e]/;
    for (const words of [
      ['check', '.'],
      ['check', '.', '--format', 'json'],
      ['facts', '.', '--format', 'json'],
      ['check', '--\u001b[31m'],
      ['\u001b[31m'],
      ['check', 'no\u001b[31m.md'],
    ]) {
      const { out, err } = run(folder, words);
      expect(out + err).not.toMatch(steering);
    }
    const { documents } = json(run(folder, ['check', '.', '--format', 'json']).out);
    expect(documents[0].path).toBe('walks \u009b31m \u202e.md');
  });

  test('a result that cannot be written is a failure, and no finding', () => {
    const folder = folderWith({ 'walks.md': lowAir, full: '' });
    const shut = openSync(join(folder, 'full'), 'r');
    const { status, stderr } = spawnSync(process.execPath, [program, 'check', 'walks.md', ...cold], {
      cwd: folder,
      encoding: 'utf8',
      stdio: ['ignore', shut, 'pipe'],
    });
    closeSync(shut);
    expect(stderr).toMatch(/^firstwinter: the result is lost \(\w+\)\n$/);
    expect(status).toBe(2);
  });

  test('a result is not written over what was read', () => {
    const folder = folderWith({ 'walks.md': lowAir, 'firstwinter.jsonc': '{ }' });
    for (const file of ['walks.md', './firstwinter.jsonc']) {
      const { status, err } = run(folder, ['check', '.', '--format', `json=${file}`]);
      expect(err).toContain(`${file} is among the files that were read`);
      expect(status).toBe(2);
    }
    expect(readFileSync(join(folder, 'walks.md'), 'utf8')).toBe(lowAir);
  });

  test('many files left out for one reason are counted in the text, and all named in the data', () => {
    const others = Array.from({ length: 50 }, (_, index) => [`n${index + 10}.md`, readme]);
    const folder = folderWith({ 'walks.md': lowAir, ...Object.fromEntries(others) });
    const { out } = run(folder, ['check', '.', ...cold]);
    expect(out.match(/n\d\d\.md/g)).toHaveLength(20);
    expect(out.replace(/\s+/g, ' ')).toContain('n29.md and 30 more files (--format json names all): not concrete');
    expect(json(run(folder, ['check', '.', '--format', 'json']).out).skipped).toHaveLength(50);
  });

  test('the working is shown on request', () => {
    const folder = folderWith({ 'walks.md': lowAir });
    expect(run(folder, ['check', 'walks.md', ...cold]).out).not.toMatch(/^ +Working/m);
    expect(run(folder, ['check', 'walks.md', ...cold, '--working']).out).toMatch(/^ +Working +\S(?:.*\n)+.*Class F3/m);
  });
});
