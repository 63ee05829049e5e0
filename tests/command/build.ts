/** Builds the programs once before the tests, so that the tests of the command run what users run. */
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export default function setup(): void {
  const script = fileURLToPath(new URL('../../.scripts/build.mjs', import.meta.url));
  execFileSync(process.execPath, [script], { stdio: 'inherit' });
}
