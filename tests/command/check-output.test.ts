/** What `check` writes, and where. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { folderWith, run } from './run.ts';
import { lowAir } from './sections.ts';

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

  test('the working is shown on request', () => {
    const folder = folderWith({ 'walks.md': lowAir });
    expect(run(folder, ['check', 'walks.md', ...cold]).out).not.toMatch(/^ +Working/m);
    expect(run(folder, ['check', 'walks.md', ...cold, '--working']).out).toMatch(/^ +Working +\S(?:.*\n)+.*Class F3/m);
  });
});
