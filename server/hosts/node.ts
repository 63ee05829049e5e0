/** The language server on Node: over standard input and output, or over the channel of the process that started it. */
import { readFile, stat } from 'node:fs/promises';
import { setImmediate, setTimeout } from 'node:timers/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { glob } from 'tinyglobby';
import { createConnection } from 'vscode-languageserver/node';
import type { Listed } from '../lsp/host.ts';
import { projectFileName } from '../lsp/protocol.ts';
import { startServer } from '../lsp/server.ts';

declare const VERSION: string;

startServer(createConnection(), {
  version: VERSION,
  breathe: () => setImmediate(),
  pause: (time) => setTimeout(time),
  read: (uri) => readFile(new URL(uri)).catch(() => undefined),
  files,
});

/** Folders of tools and hidden ones are not entered. */
async function files(folder: string): Promise<readonly Listed[]> {
  const patterns = ['**/*.{md,markdown,txt}', `**/${projectFileName}`];
  const options = {
    cwd: fileURLToPath(folder),
    absolute: true,
    caseSensitiveMatch: false,
    ignore: ['**/node_modules/**'],
  };
  const paths = await glob(patterns, options).catch(() => []);
  return Promise.all(paths.sort().map(listed));
}

async function listed(path: string): Promise<Listed> {
  const state = await stat(path).catch(() => undefined);
  return { uri: pathToFileURL(path).href, stamp: `${state?.mtimeMs} ${state?.size}` };
}
