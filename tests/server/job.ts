/** A folder with a small job in it: the paving section of the demo manual under a project file, and a readme. */
import { mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const demo = (name: string): string =>
  readFileSync(fileURLToPath(new URL(`../../client/demo/${name}`, import.meta.url)), 'utf8');

/** A section in which nothing is to be changed under salts and frost. */
export const paving = demo('32-13-13-concrete-paving.md');

export const frostAndSalt = '{ "code": "aci-318-19", "climate": "freezing", "deicers": "yes" }\n';

/** Numbered parts, and the word concrete, in a text that is no section. */
export const readme = `# Setting up

PART 1 of this guide is concrete advice for new people.

1.1 Install the program
1.2 Run it

PART 2 is a list of commands.
`;

export class Job {
  readonly folder = realpathSync(mkdtempSync(join(tmpdir(), 'first-winter-')));

  constructor(files: Readonly<Record<string, string>>) {
    for (const [name, text] of Object.entries(files)) this.write(name, text);
  }

  uri(name: string): string {
    return pathToFileURL(join(this.folder, name)).href;
  }

  write(name: string, text: string): void {
    writeFileSync(join(this.folder, name), text);
  }

  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}

/** The text with one passage changed, which must stand in it once. */
export function changed(text: string, find: string, replace: string): string {
  if (text.split(find).length !== 2) throw new Error(`"${find}" does not stand once in the text`);
  return text.replace(find, () => replace);
}
