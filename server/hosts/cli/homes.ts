/** The project file that holds for each section file: the nearest one upward, read once. */
import { readFile } from 'node:fs/promises';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { rules } from '../../../rules/index.ts';
import { decode } from '../../reading/decode.ts';
import { projectFileName, readSettings, type SettingsFile } from '../../settings.ts';
import { shownPath } from './files.ts';
import type { Complaint } from './terminal.ts';

/** What holds for the files of one manual: a project file and the folder its paths start from. */
export interface Home {
  readonly folder: string;
  readonly file?: SettingsFile;
}

/** The path of a file as `sections` of the project file would name it. */
export const pathFrom = (home: Home, absolute: string): string => relative(home.folder, absolute).split(sep).join('/');

export class Homes {
  readonly #byFolder = new Map<string, Promise<Home>>();
  readonly #read: Home[] = [];
  readonly complaints: Complaint[] = [];

  /** `settingsPath` overrules the nearest project file for every section file. */
  constructor(private readonly settingsPath: string | undefined) {}

  /** The project files that were read, also those with faults. */
  get files(): readonly SettingsFile[] {
    return this.#read.flatMap(({ file }) => (file ? [file] : []));
  }

  of(absolute: string): Promise<Home> {
    return this.settingsPath === undefined ? this.#upward(dirname(absolute)) : this.#given(resolve(this.settingsPath));
  }

  #given(path: string): Promise<Home> {
    return this.#remembered(path, async () => {
      const home = await this.#open(path);
      if (home) return home;
      const cure = 'check the path; without it the defaults hold';
      this.complaints.push({ where: shownPath(path), message: 'the settings file cannot be read', cure });
      return { folder: dirname(path) };
    });
  }

  #upward(folder: string): Promise<Home> {
    return this.#remembered(folder, async () => {
      const own = await this.#open(join(folder, projectFileName));
      if (own) return own;
      const parent = dirname(folder);
      return parent === folder ? nowhere : this.#upward(parent);
    });
  }

  #remembered(key: string, find: () => Promise<Home>): Promise<Home> {
    const known = this.#byFolder.get(key) ?? find();
    this.#byFolder.set(key, known);
    return known;
  }

  /** Undefined where there is no such file. */
  async #open(path: string): Promise<Home | undefined> {
    const bytes = await readFile(path).catch((error: NodeJS.ErrnoException) => this.#failed(path, error));
    if (bytes === undefined) return undefined;
    const { text, binary } = decode(bytes);
    if (binary) {
      this.complaints.push({
        where: shownPath(path),
        message: 'is not text and cannot be read',
        cure: 'save it as UTF-8',
      });
      return { folder: dirname(path) };
    }
    const source = { path: shownPath(path), text };
    const home = { folder: dirname(path), file: readSettings(source, ruleIds) };
    this.#read.push(home);
    return home;
  }

  /** A project file that is there and cannot be read must not pass for none. */
  #failed(path: string, error: NodeJS.ErrnoException): undefined {
    if (error.code === 'ENOENT' || error.code === 'ENOTDIR' || this.settingsPath !== undefined) return undefined;
    const cure = 'check that it is a file and that you may read it';
    this.complaints.push({ where: shownPath(path), message: `cannot be read (${error.code})`, cure });
    return undefined;
  }
}

const nowhere: Home = { folder: process.cwd() };
const ruleIds = rules.map(({ id }) => id);
