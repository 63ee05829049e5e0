/** What is shipped to the editor: few files, loaded as the editor loads them. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { projectFileName } from '../../server/lsp/protocol.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

const run = (...words: readonly string[]): string =>
  execFileSync(process.execPath, words, { cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit'] });

test('the package holds the programs, the icon and what a reader needs, nothing else', () => {
  const listed = run('node_modules/@vscode/vsce/vsce', 'ls', '--no-dependencies').trim().split('\n').sort();
  expect(listed).toEqual([
    'CHANGELOG.md',
    'LICENSE',
    'README.md',
    'client/media/icon.png',
    'dist/client.js',
    'dist/firstwinter.schema.json',
    'dist/package.json',
    'dist/server.js',
    'package.json',
  ]);
});

/** The editor's own module is not there outside the editor; anything may be asked of this one. */
const load = `
  const Module = require('node:module');
  const load = Module._load;
  const anything = new Proxy(class {}, { get: (target, key) => (key === 'prototype' ? target.prototype : anything) });
  Module._load = (name, ...rest) => (name === 'vscode' ? anything : load(name, ...rest));
  console.log(Object.keys(require('./dist/client.js')).sort().join());
`;

test('the editor can load the client as it loads modules', () => {
  expect(run('--eval', load).trim()).toBe('activate,deactivate');
});

test('every command of the package is one that the client answers, and in the words of the palette', () => {
  const { contributes } = JSON.parse(readFileSync(`${root}package.json`, 'utf8'));
  const commands = contributes.commands as readonly { command: string; category: string; title: string }[];
  const client = readFileSync(`${root}client/extension.ts`, 'utf8');
  for (const { command, category } of commands) {
    expect(client).toContain(`'${command}'`);
    expect(category).toBe('First Winter');
  }
  expect(commands.map(({ title }) => title)).toEqual([
    'Show why this file is or is not checked',
    "Open the rule's page",
  ]);
});

test.each(['client', 'server'])('the %s holds no code for the network', (name) => {
  const program = readFileSync(`${root}dist/${name}.js`, 'utf8');
  expect(program.match(/require\("(?:node:)?(?:https?|http2|dgram|tls|dns)"\)|\bfetch\(|XMLHttpRequest/g)).toBe(null);
});

test('the project file has its schema in the editor, from the package itself', () => {
  const { contributes } = JSON.parse(readFileSync(`${root}package.json`, 'utf8'));
  expect(contributes.jsonValidation).toEqual([{ fileMatch: projectFileName, url: './dist/firstwinter.schema.json' }]);
  const { properties } = JSON.parse(readFileSync(`${root}dist/firstwinter.schema.json`, 'utf8'));
  expect(Object.keys(properties)).toContain('climate');
});
