/** The sections that are read together and checked as one: those under one project file, or one document alone. */
import { rules } from '../../rules/index.ts';
import type { Context } from '../../rules/model/rule.ts';
import { type Checked, checkByRule } from '../checking.ts';
import { assemble } from '../reading/assemble.ts';
import { showsSection } from '../sections.ts';
import { isListed, type Settings, type SettingsFile, settle } from '../settings.ts';
import type { Host, Listed } from './host.ts';
import { folderOf, isProjectFile, pathOf } from './places.ts';
import type { OpenDocuments, Page, Readings } from './readings.ts';

/** What was read and found at one moment. */
export interface Whole {
  /** Another one for every new result. */
  readonly id: string;
  readonly pages: readonly Page[];
  readonly settings: Settings;
  /** What the rules were given. */
  readonly context: Context;
  readonly checked: Checked;
}

/** The project file that governs a manual. */
export interface ProjectFile {
  readonly uri: string;
  readonly file: SettingsFile;
}

export interface Desk {
  readonly host: Host;
  readonly documents: OpenDocuments;
  readonly readings: Readings;
}

/** Milliseconds without a change after which a changed text is read again. */
const rest = 100;

let results = 0;

export class Manual {
  private generation = 0;
  private running?: Promise<Whole | undefined>;
  private files?: Promise<readonly Listed[]>;
  private last?: Whole;

  /** Without a project file, the document at `alone` is the whole manual. */
  constructor(
    private readonly desk: Desk,
    private readonly alone: string,
    readonly project?: ProjectFile,
  ) {}

  /** The newest result, shared by all who ask; undefined where a change came before it was reached. */
  whole(): Promise<Whole | undefined> {
    this.running ??= this.run(this.generation);
    return this.running;
  }

  /** A document of the manual was opened, changed or closed: what is being worked out is out of date. */
  changed(): void {
    this.generation++;
    this.running = undefined;
  }

  /** Files came, went or were written. */
  filesChanged(): void {
    this.files = undefined;
    this.changed();
  }

  /** May a change of the document at this path change a result of this manual? */
  covers(path: string): boolean {
    return this.project ? path.startsWith(this.folder()) : path === this.alone;
  }

  /** Is the path in a folder of tools or a hidden one, which are not entered? */
  passesBy(path: string): boolean {
    return /(?:^|\/)(?:node_modules|\.[^/]+)\//.test(this.fromProject(path));
  }

  /** Is the page read as a section: by its own signs, or because the project file names it? */
  isSection({ path, reading }: Page): boolean {
    return showsSection(reading) || this.isNamed(path);
  }

  isNamed(path: string): boolean {
    return isListed(this.project?.file, this.fromProject(path));
  }

  private async run(mine: number): Promise<Whole | undefined> {
    const current = (): boolean => mine === this.generation;
    await (0 < mine ? this.desk.host.pause(rest) : this.desk.host.breathe());
    const pages = await this.pages(current);
    if (!pages || !current()) return undefined;
    if (this.last && samePages(this.last.pages, pages)) return this.last;
    const whole = await this.judged(pages, current);
    if (whole) this.last = whole;
    return whole;
  }

  private async judged(pages: readonly Page[], current: () => boolean): Promise<Whole | undefined> {
    const sections = pages.filter((page) => this.isSection(page));
    const specification = assemble(sections.map(({ reading }) => reading));
    const paths = new Map(sections.map(({ path }) => [path, this.fromProject(path)]));
    const settings = settle({ flags: {}, file: this.project?.file, paths, specification });
    const turns = checkByRule(specification, settings.project, rules, settings.levels);
    for (let turn = turns.next(); ; turn = turns.next()) {
      if (turn.done) {
        const context = { specification, project: settings.project };
        return { id: `${++results}`, pages, settings, context, checked: turn.value };
      }
      await this.desk.host.breathe();
      if (!current()) return undefined;
    }
  }

  /** Each document as it now stands, the open ones as the editor has them; undefined once a change made it pointless. */
  private async pages(current: () => boolean): Promise<readonly Page[] | undefined> {
    const pages: Page[] = [];
    for (const source of await this.sources()) {
      await this.desk.host.breathe();
      if (!current()) return undefined;
      const open = this.desk.readings.opened(source.path);
      const page = open ? this.desk.readings.ofOpen(open) : await this.desk.readings.ofDisk(source);
      if (page) pages.push(page);
    }
    return pages;
  }

  /** Documents of the manual in order of their path; a folder below with a project file of its own is not part of it. */
  private async sources(): Promise<readonly (Listed & { readonly path: string })[]> {
    const open = this.desk.documents.all().map(({ uri }) => ({ uri, path: pathOf(uri), stamp: '' }));
    if (!this.project) return open.filter(({ path }) => path === this.alone);
    const folder = this.folder();
    this.files ??= this.desk.host.files(folderOf(this.project.uri) ?? this.project.uri);
    const listed = (await this.files).map((file) => ({ ...file, path: pathOf(file.uri) }));
    const foreign = listed.filter(({ path }) => isProjectFile(path) && folderOf(path) !== folder).map(parent);
    const known = new Map([...listed, ...open].map((source) => [source.path, source]));
    return [...known.values()]
      .filter(
        ({ path }) => path.startsWith(folder) && !isProjectFile(path) && !foreign.some((own) => path.startsWith(own)),
      )
      .sort((a, b) => (a.path < b.path ? -1 : 1));
  }

  private folder(): string {
    return folderOf(pathOf(this.project?.uri ?? this.alone)) ?? '';
  }

  private fromProject(path: string): string {
    return this.covers(path) && this.project ? path.slice(this.folder().length) : path;
  }
}

const parent = ({ path }: { readonly path: string }): string => folderOf(path) ?? path;

const samePages = (a: readonly Page[], b: readonly Page[]): boolean =>
  a.length === b.length && a.every((page, index) => page === b[index]);
