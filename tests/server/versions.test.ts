/** Answers belong to one version: what a change overtook is never sent, and nobody is told the same thing twice. */
import { afterEach, expect, test } from 'vitest';
import { Editor, listening, pulling, until } from './editor.ts';
import { changed, frostAndSalt, Job, paving } from './job.ts';

const shaken = 'G. Rinse brooms away from the work and shake them free of water.';
const sprinkled = 'G. On hot days the finishers may sprinkle the surface lightly so that the float glides.';

const job = new Job({ 'firstwinter.jsonc': frostAndSalt });
const uri = job.uri('paving.md');
let editor: Editor;

afterEach(() => editor.stop());

/** Error code of the standard protocol for "ask again". */
const serverCancelled = -32802;

test('asked before each of three changes, only the last question is answered', async () => {
  editor = await Editor.start(pulling);
  await editor.open(uri, paving);
  const asked = [editor.pull(uri)];
  for (const [find, text] of [
    [shaken, sprinkled],
    [sprinkled, shaken],
    [shaken, sprinkled],
  ] as const) {
    await editor.replace(uri, find, text);
    asked.push(editor.pull(uri));
  }
  const outcomes = await Promise.allSettled(asked);
  expect(outcomes.slice(0, -1)).toEqual(
    Array(3).fill({
      status: 'rejected',
      reason: expect.objectContaining({ code: serverCancelled, data: { retriggerRequest: true } }),
    }),
  );
  expect(outcomes.at(-1)).toMatchObject({ status: 'fulfilled', value: { kind: 'full' } });
  expect(await editor.codes(uri)).toContain('water-added-to-surface');
});

test('a hover and a fix that a change overtook are refused as well', async () => {
  editor = await Editor.start(pulling);
  await editor.open(uri, changed(paving, shaken, sprinkled));
  const range = editor.rangeOf(uri, sprinkled);
  const asked = [editor.hover(uri, range.start), editor.fixes(uri, { range, message: '' }), editor.symbols(uri)];
  await editor.replace(uri, sprinkled, shaken);
  for (const outcome of await Promise.allSettled(asked)) {
    expect(outcome).toMatchObject({ status: 'rejected', reason: { code: -32801 } });
  }
  expect(await editor.hover(uri, range.start)).not.toContain('water-added-to-surface');
});

test('a client that asks is sent nothing', async () => {
  editor = await Editor.start(pulling);
  await editor.open(uri, changed(paving, shaken, sprinkled));
  expect(await editor.codes(uri)).toContain('water-added-to-surface');
  await editor.close(uri);
  await editor.diagnostics(uri);
  expect(editor.published).toEqual([]);
});

test('a client that cannot ask is sent each result once, of the newest version, and an empty one on closing', async () => {
  editor = await Editor.start(listening);
  await editor.open(uri, paving);
  await until('the first result', () => editor.published.length === 1);
  for (const [find, text] of [
    [shaken, sprinkled],
    [sprinkled, shaken],
    [shaken, sprinkled],
  ] as const) {
    await editor.replace(uri, find, text);
  }
  await until('the result of the last change', () => editor.published.length === 2);
  await editor.close(uri);
  await until('the empty result', () => editor.published.length === 3);
  const told = editor.published.map(({ version, diagnostics }) => {
    return [version, diagnostics.some(({ code }) => code === 'water-added-to-surface')];
  });
  expect(told).toEqual([
    [1, false],
    [4, true],
    [undefined, false],
  ]);
  expect(editor.published.at(-1)?.diagnostics).toEqual([]);
});

test('a section closed while it is read is not answered for', async () => {
  editor = await Editor.start(listening);
  await editor.open(uri, changed(paving, shaken, sprinkled));
  await editor.close(uri);
  await until('the empty result', () => 0 < editor.published.length);
  await new Promise((resume) => setTimeout(resume, 300));
  expect(editor.published.map(({ diagnostics }) => diagnostics)).toEqual([[]]);
});
