/** The documents around a section: the project file, the sections beside it, and texts that are none. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { Editor, pulling, until } from './editor.ts';
import { changed, frostAndSalt, Job, paving, readme } from './job.ts';

const shaken = 'G. Rinse brooms away from the work and shake them free of water.';
const sprinkled = 'G. On hot days the finishers may sprinkle the surface lightly so that the float glides.';
const harmful = changed(paving, shaken, sprinkled);

let editor: Editor;
let job: Job;

beforeEach(async () => {
  editor = await Editor.start(pulling);
  job = new Job({ 'firstwinter.jsonc': frostAndSalt, 'README.md': readme });
});
afterEach(async () => {
  expect(await editor.stop()).toBe(0);
  job.remove();
});

/** Tells the server of a file that changed on disk, as the editor's watcher does. */
const fileChanged = (uri: string): Promise<void> =>
  editor.rpc.sendNotification('workspace/didChangeWatchedFiles', { changes: [{ uri, type: 2 }] });

test('a readme has no findings, no outline and no hover, and is told why', async () => {
  const uri = job.uri('README.md');
  await editor.open(uri, `${readme}\nThe finishers may sprinkle water on the surface.\n`);
  expect(await editor.diagnostics(uri)).toEqual([]);
  expect(await editor.symbols(uri)).toEqual([]);
  expect(await editor.hover(uri, { line: 2, character: 5 })).toBe('');
  expect(await editor.rpc.sendRequest('firstwinter/why', { uri })).toMatch(/Not checked: .*at least two signs/);
  expect(editor.statuses.at(-1)).toMatchObject({ uri, checked: false, text: 'not checked' });
});

test('a text that the project file lists is read whatever it looks like', async () => {
  const uri = job.uri('notes.txt');
  const notes =
    'Exterior walks are exposed to freezing and de-icers. The finishers may sprinkle water on the surface.\n';
  await editor.open(uri, notes, 'plaintext');
  expect(await editor.diagnostics(uri)).toEqual([]);
  job.write('firstwinter.jsonc', '{ "climate": "freezing", "deicers": "yes", "sections": { "notes.txt": {} } }');
  await fileChanged(job.uri('firstwinter.jsonc'));
  await until('the client is asked to ask again', () => editor.refreshes === 1);
  expect(await editor.codes(uri)).toContain('water-added-to-surface');
});

test('the project file as it is typed counts before it is saved', async () => {
  const [uri, project] = [job.uri('paving.md'), job.uri('firstwinter.jsonc')];
  await editor.open(uri, harmful);
  await editor.open(project, frostAndSalt, 'jsonc');
  expect(await editor.codes(uri)).toContain('water-added-to-surface');
  const before = editor.refreshes;
  await editor.replace(project, '"deicers": "yes"', '"deicers": "yes", "levels": { "water-added-to-surface": "off" }');
  await until('the client is asked to ask again', () => before < editor.refreshes);
  expect(await editor.codes(uri)).not.toContain('water-added-to-surface');
  await editor.close(project);
  expect(await editor.codes(uri)).toContain('water-added-to-surface');
});

test('a wrong key of the project file is shown at the key, with what was meant, until it is mended', async () => {
  const project = job.uri('firstwinter.jsonc');
  await editor.open(project, frostAndSalt.replace('"climate"', '"climat"'), 'jsonc');
  const [fault, ...others] = await editor.diagnostics(project);
  expect(others).toEqual([]);
  expect(editor.wordsAt(project, fault!.range)).toBe('"climat"');
  expect(fault).toMatchObject({ source: 'First Winter', severity: 2, message: expect.stringContaining('"climate"') });
  await editor.replace(project, '"climat"', '"climate"');
  expect(await editor.diagnostics(project)).toEqual([]);
});

test('a broken project file is said in the status of the sections under it, which are still checked', async () => {
  job.write('firstwinter.jsonc', '{ "climate": "freezing", "deicers": "yes", "colour": "grey" }');
  const uri = job.uri('paving.md');
  await editor.open(uri, harmful);
  expect(await editor.codes(uri)).toContain('water-added-to-surface');
  await until('the status', () => 0 < editor.statuses.length);
  expect(editor.statuses.at(-1)).toMatchObject({
    uri,
    checked: true,
    text: expect.stringMatching(/^F3 \(stated .*\) · \d+ must/),
    detail: expect.stringContaining('Climate: freezing, from the project file'),
    trouble: expect.stringContaining('"colour"'),
  });
});

test('an open section counts as it is typed, a closed one as it stands on disk, also for its neighbours', async () => {
  job.write('beside.md', harmful.replace('32 13 13', '32 16 13'));
  const [uri, beside] = [job.uri('paving.md'), job.uri('beside.md')];
  await editor.open(uri, paving);
  await editor.diagnostics(uri);
  const why = () => editor.rpc.sendRequest<string>('firstwinter/why', { uri });
  expect(await why()).toContain('together with 1 other section');
  job.write('third.md', paving.replace('32 13 13', '32 14 13'));
  await fileChanged(job.uri('third.md'));
  await until('the client is asked to ask again', () => editor.refreshes === 1);
  expect(await why()).toContain('together with 2 other sections');
  await editor.open(beside, '# Nothing here\n');
  expect(await why()).toContain('together with 1 other section');
  await editor.close(beside);
  expect(await why()).toContain('together with 2 other sections');
});

test('a change in a folder of tools or a hidden one is not listened to', async () => {
  const uri = job.uri('paving.md');
  await editor.open(uri, paving);
  const before = await editor.pull(uri);
  await fileChanged(job.uri('node_modules/tool/readme.md'));
  await fileChanged(job.uri('.history/paving.md'));
  expect(await editor.pull(uri, before.resultId)).toMatchObject({ kind: 'unchanged' });
  expect(editor.refreshes).toBe(0);
});

test('a folder below with a project file of its own is another manual', async () => {
  mkdirSync(join(job.folder, 'annex'));
  job.write('annex/firstwinter.jsonc', '{ "levels": { "water-added-to-surface": "off" } }');
  job.write('beside.md', paving.replace('32 13 13', '32 14 13'));
  const [outer, inner] = [job.uri('paving.md'), job.uri('annex/paving.md')];
  await editor.open(outer, harmful);
  await editor.open(inner, harmful);
  expect(await editor.codes(outer)).toContain('water-added-to-surface');
  expect(await editor.codes(inner)).not.toContain('water-added-to-surface');
  const why = (uri: string) => editor.rpc.sendRequest<string>('firstwinter/why', { uri });
  expect(await why(outer)).toContain('together with 1 other section');
  expect(await why(inner)).toContain('It is read alone.');
});

test('a section without a project file is read alone', async () => {
  const lonely = new Job({ 'beside.md': paving });
  const uri = lonely.uri('paving.md');
  await editor.open(uri, paving);
  const why = await editor.rpc.sendRequest<string>('firstwinter/why', { uri });
  expect(why).toContain('It is read alone.\nThere is no project file.');
  expect(why).toContain('Climate: unknown');
  lonely.remove();
});

test('a section that is not saved yet is read too', async () => {
  const uri = 'untitled:Untitled-1';
  await editor.open(uri, harmful);
  expect(await editor.codes(uri)).toContain('water-added-to-surface');
});
