/** The pages of the project against the tool: what they quote, name and promise is there. */
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { computedCodes } from '../rules/formulas/requirement-input.ts';
import { rules } from '../rules/index.ts';
import { codeIds } from '../rules/model/project.ts';
import { status } from '../server/hosts/cli/status.ts';
import { readSettings } from '../server/settings.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const page = (name: string): string => readFileSync(root + name, 'utf8');
const readme = page('README.md');
const pages = ['README.md', 'DEVELOPERS.md', 'CHANGELOG.md'];

const run = (...words: readonly string[]): string =>
  execFileSync(process.execPath, words, { cwd: root, encoding: 'utf8' });
const help = (...command: readonly string[]): string => run('dist/firstwinter.js', 'help', ...command);

test('the sample, the keys and the rules are what the tool prints today; .scripts/readme.mjs renews them', () => {
  expect(readme).toBe(run('.scripts/readme.mjs', '--print'));
  expect(readme).toContain('rule hard-trowel-outdoors');
  expect(readme).toContain('| `climate` | `freezing`, `mild`, `unknown` |');
});

test('the two commands stand there as they are run, and start what they promise', () => {
  expect(readme).toContain('\nnpm ci && npm start\n');
  expect(readme).toContain('\nnpm ci && npm test\n');
  const { scripts } = JSON.parse(page('package.json'));
  expect(scripts.start).toMatch(/check client\/demo --fail-on never$/);
  expect(page('.ci/run')).toContain('npm ci && npm test');
});

test('the commands of the README are those of the tool', () => {
  const listed = [...readme.matchAll(/^\| `firstwinter (\w+)/gm)].map(([, name]) => name);
  const known = [...help().matchAll(/^ {2}(\w+) \[options\]/gm)].map(([, name]) => name);
  expect(listed).toEqual(known);
});

test('every option that a page names exists', () => {
  const options = ['check', 'facts', 'require', 'rules', 'explain'].map((command) => help(command)).join();
  const ofOthers = ['--stdio', '--print', '--global'];
  for (const [option] of pages
    .map(page)
    .join()
    .matchAll(/--[a-z][a-z-]+/g)) {
    expect(
      [options, ...ofOthers].some((known) => known.includes(option)),
      option,
    ).toBe(true);
  }
});

test('the exit statuses are those of the command', () => {
  const listed = [...readme.matchAll(/^\| (\d) \| /gm)].map(([, number]) => Number(number));
  expect(listed).toEqual(Object.values(status).toSorted());
});

test('what is computed and what is only cited is told apart', () => {
  const covers = readme.slice(readme.indexOf('## What this version covers'));
  const [computed = '', cited = ''] = covers.split('Other codes');
  const named = (text: string) => codeIds.filter((id) => text.includes(`\`${id}\``));
  expect(named(computed).toSorted()).toEqual([...computedCodes].toSorted());
  expect([...named(computed), ...named(cited)].toSorted()).toEqual([...codeIds].toSorted());
});

test('the project file shown is read without a fault', () => {
  const shown = [...readme.matchAll(/```jsonc\n([\s\S]*?)```/g)].map(([, text = '']) => text);
  const inline = [...readme.matchAll(/`("(?:levels|sections|elements)": .*?)`/g)].map(([, text]) => `{ ${text} }`);
  const texts = [...shown, ...inline];
  expect(texts.length).toBeGreaterThanOrEqual(4);
  const ids = rules.map(({ id }) => id);
  for (const text of texts) expect(readSettings({ path: 'firstwinter.jsonc', text }, ids).problems).toEqual([]);
});

test('the number of rules is told right', () => {
  expect(page('CHANGELOG.md')).toContain(`${rules.length} rules on `);
});

test('the README can be packaged: the editor has no place that a link into this folder could lead to', () => {
  expect(readme.match(/\]\((?!https:)[^)]*\)/g)).toBe(null);
});

test.each(pages)('%s names only files that exist', (name) => {
  const text = page(name);
  const linked = [...text.matchAll(/\]\(([^)#:]+)\)/g)].map(([, path = '']) => path);
  const quoted = [...text.matchAll(/`((?:rules|server|client|tests|\.scripts|\.ci)\/[\w./-]*)`/g)].map(
    ([, path = '']) => path,
  );
  for (const path of [...linked, ...quoted]) expect(existsSync(root + path), path).toBe(true);
});

test('the stages are told with the files that hold them', () => {
  const stages = page('DEVELOPERS.md').match(/^\| Stage [\s\S]*?\n\n/m)?.[0] ?? '';
  const files = [...stages.matchAll(/`([\w./-]+\.ts|\w+\/)`/g)].map(([, file = '']) => file);
  expect(files.length).toBeGreaterThan(8);
  for (const file of files)
    expect(existsSync(`${root}server/reading/${file.replace('server/reading/', '')}`), file).toBe(true);
});

test('every invariant names a test that keeps it', () => {
  const rows = page('DEVELOPERS.md').match(/^\| \d+ \|.*$/gm) ?? [];
  expect(rows.length).toBeGreaterThanOrEqual(13);
  for (const row of rows) expect(row).toMatch(/`tests\/[\w/-]+\.test\.ts`/);
});

test('the cautions are said', () => {
  const said = readme.slice(readme.indexOf('## Cautions'));
  const needed = [
    'not a licensed opinion',
    'local code comes first',
    'certifies compliance',
    'Lawful and durable',
    'Citations are pointers',
    'caustic',
    'carbon monoxide',
    'Hot weather',
    'safety data sheets',
    'Silica',
    'people can slip',
    'certified people',
    'estimates',
  ];
  for (const words of needed) expect(said).toContain(words);
});
