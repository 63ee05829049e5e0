/** The whole of a faulty section: every fix mends its finding and leaves the rest, and no place fails under the pointer. */
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { DocumentSymbol } from 'vscode-languageserver-protocol/node';
import { Editor, pulling } from './editor.ts';
import { frostAndSalt, Job } from './job.ts';

const folder = new URL('../../client/demo/', import.meta.url);
const faulty = readFileSync(new URL('03-30-00-cast-in-place-concrete.md', folder), 'utf8');
const job = new Job({ 'firstwinter.jsonc': frostAndSalt });
const uri = job.uri('walks.md');
let editor: Editor;

/** Milliseconds: a section is checked anew for each of its findings. */
const patience = 60_000;

beforeAll(async () => {
  editor = await Editor.start(pulling);
});
afterAll(async () => {
  await editor.stop();
  job.remove();
});

/** The numbers of a section, as a specifier cites them. */
const numbers = (items: readonly DocumentSymbol[]): readonly string[] =>
  items.flatMap(({ name, children = [] }) => [name, ...numbers(children)]);

test.each([
  ['', faulty],
  ['with Windows line ends', faulty.replaceAll('\n', '\r\n')],
  ['with characters of two units', faulty.replace(/\b(concrete|slab)\b/g, '$1 \u{1F9CA}')],
])(
  'every fix takes its finding away, and every number stays %s',
  async (_, text) => {
    await editor.open(uri, text);
    const found = await editor.diagnostics(uri);
    const before = numbers(await editor.symbols(uri));
    await editor.close(uri);
    let taken = 0;
    for (const finding of found) {
      await editor.open(uri, text);
      const own = (await editor.fixes(uri, finding)).filter(({ diagnostics = [] }) => 0 < diagnostics.length);
      for (const { edit } of own.slice(0, 1)) {
        await editor.apply(edit!);
        taken++;
        const left = (await editor.diagnostics(uri)).map(({ code, message }) => `${code}: ${message}`);
        expect(left).not.toContain(`${finding.code}: ${finding.message}`);
        expect(numbers(await editor.symbols(uri))).toEqual(expect.arrayContaining([...before]));
        if (text.includes('\r')) expect(editor.text(uri).getText()).not.toMatch(/[^\r]\n/);
      }
      await editor.close(uri);
    }
    expect(taken).toBeGreaterThan(5);
  },
  patience,
);

test('no place fails under the pointer, nor one outside the text', async () => {
  await editor.open(uri, faulty);
  const document = editor.text(uri);
  const words = [...faulty.matchAll(/\S+/g)].map(({ index }) => document.positionAt(index));
  const outside = [
    { line: 1e6, character: 0 },
    { line: 0, character: 1e6 },
  ];
  const shown = await Promise.all([...words, ...outside].map((position) => editor.hover(uri, position)));
  expect(shown.filter((text) => text !== '').length).toBeGreaterThan(20);
  expect(shown.join('\n')).not.toMatch(/\bundefined\b|\bNaN\b|\[object/);
  await editor.close(uri);
});

test('a project file without end is a fault like another, and the sections under it are still checked', async () => {
  job.write('firstwinter.jsonc', '['.repeat(100_000));
  await editor.rpc.sendNotification('workspace/didChangeWatchedFiles', {
    changes: [{ uri: job.uri('firstwinter.jsonc'), type: 2 }],
  });
  await editor.open(uri, faulty);
  expect(await editor.codes(uri)).toContain('hard-trowel-outdoors');
  expect(editor.statuses.at(-1)?.trouble).toContain('too deep');
  await editor.close(uri);
});
