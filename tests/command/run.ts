/** Runs the built command as users do, in a folder of its own. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { onTestFinished } from 'vitest';

export const program = fileURLToPath(new URL('../../dist/firstwinter.js', import.meta.url));

export interface Ran {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

/** A folder with these files, removed after the test. */
export function folderWith(files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'first-winter-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
  return folder;
}

/** Runs `firstwinter` there; no terminal looks on, so nothing is coloured unless asked for. */
export function run(folder: string, words: readonly string[], input = '', env: NodeJS.ProcessEnv = {}): Ran {
  const { NO_COLOR, FORCE_COLOR, ...rest } = process.env;
  const options = { cwd: folder, input, encoding: 'utf8', env: { ...rest, ...env } } as const;
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...words], options);
  return { status, out: stdout, err: stderr };
}
