/** The language server on Node: over standard input and output, or over the channel of the process that started it. */
import { readdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { setImmediate, setTimeout } from 'node:timers/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
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
  files: async (folder) => (await inFolder(fileURLToPath(folder))).sort((a, b) => (a.uri < b.uri ? -1 : 1)),
});

const isWanted = (name: string): boolean => /\.(?:md|markdown|txt)$/i.test(name) || name === projectFileName;

/** Folders of tools, hidden ones and linked ones are not entered. */
async function inFolder(folder: string): Promise<Listed[]> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => []);
  const found = entries.map(async (entry): Promise<Listed[]> => {
    if (entry.name.startsWith('.') || entry.name === 'node_modules') return [];
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return inFolder(path);
    return isWanted(entry.name) ? listed(path) : [];
  });
  return (await Promise.all(found)).flat();
}

async function listed(path: string): Promise<Listed[]> {
  const state = await stat(path).catch(() => undefined);
  return state?.isFile() ? [{ uri: pathToFileURL(path).href, stamp: `${state.mtimeMs} ${state.size}` }] : [];
}
