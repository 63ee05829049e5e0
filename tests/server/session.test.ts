/** A session from its first message to its last: what the server offers, and the status it ends with. */
import { once } from 'node:events';
import { expect, test } from 'vitest';
import { Editor, listening, pulling, until } from './editor.ts';

test('a client that asks for diagnostics is offered them, and files are watched', async () => {
  const editor = await Editor.start(pulling);
  expect(editor.server.serverInfo).toMatchObject({ name: 'First Winter', version: expect.stringMatching(/^\d/) });
  expect(editor.server.capabilities).toMatchObject({
    textDocumentSync: { openClose: true, change: 2 },
    diagnosticProvider: { interFileDependencies: true, workspaceDiagnostics: false },
    hoverProvider: true,
  });
  await until('files are watched', () => editor.watched.includes('workspace/didChangeWatchedFiles'));
  expect(await editor.stop()).toBe(0);
});

test('a client that cannot ask is offered nothing to ask for', async () => {
  const editor = await Editor.start(listening);
  expect(editor.server.capabilities).not.toHaveProperty('diagnosticProvider');
  expect(await editor.stop()).toBe(0);
  expect(editor.watched).toEqual([]);
});

test('an exit that was not announced is a failure', async () => {
  const editor = await Editor.start(pulling);
  const ended = once(editor.child, 'exit');
  await editor.rpc.sendNotification('exit');
  const [code] = await ended;
  expect(code).toBe(1);
  editor.rpc.dispose();
});

test('what the server does not know is refused, and it goes on', async () => {
  const editor = await Editor.start(pulling);
  await expect(editor.rpc.sendRequest('firstwinter/nothing', {})).rejects.toMatchObject({ code: -32601 });
  expect(await editor.diagnostics('file:///nowhere/never-opened.md')).toEqual([]);
  expect(await editor.stop()).toBe(0);
});
