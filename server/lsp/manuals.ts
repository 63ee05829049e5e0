/** Which manual a document belongs to, and what becomes of the manuals when documents and files change. */
import { rules } from '../../rules/index.ts';
import type { Finding } from '../checking.ts';
import { decode } from '../reading/decode.ts';
import { readSettings, type SettingsFile } from '../settings.ts';
import type { Host } from './host.ts';
import { type Desk, Manual, type ProjectFile, type Whole } from './manual.ts';
import { isProjectFile, pathOf, projectFilePlaces } from './places.ts';
import { type OpenDocuments, type Page, Readings } from './readings.ts';

/** What there is to say about one version of an open document. */
export interface Answer {
  readonly page: Page;
  readonly whole: Whole;
  readonly manual: Manual;
  /** Is it read as a section? */
  readonly checked: boolean;
  /** Findings of this document. */
  readonly findings: readonly Finding[];
}

const ruleIds = rules.map(({ id }) => id);

export class Manuals {
  private readonly desk: Desk;
  private manuals = new Map<string, Manual>();
  private projects = new Map<string, Promise<ProjectFile | undefined>>();

  constructor(host: Host, documents: OpenDocuments) {
    this.desk = { host, documents, readings: new Readings(host, documents) };
  }

  /** For the version that is open when the question comes; undefined where it changed or was closed before the answer. */
  async answer(uri: string): Promise<Answer | undefined> {
    const version = this.desk.documents.get(uri)?.version;
    const manual = await this.of(uri);
    const whole = await manual.whole();
    const document = this.desk.documents.get(uri);
    if (!whole || document?.version !== version || !document) return undefined;
    const page = this.desk.readings.ofOpen(document);
    const findings = whole.checked.findings.filter(({ span }) => span.path === page.path);
    return { page, whole, manual, checked: whole.pages.includes(page) && manual.isSection(page), findings };
  }

  /** The text of an open project file with its faults. */
  projectFile(uri: string): SettingsFile | undefined {
    const document = this.desk.documents.get(uri);
    return document && readSettings({ path: pathOf(uri), text: document.getText() }, ruleIds);
  }

  /** The document was opened or closed, or its text changed. */
  changed(uri: string): void {
    const path = pathOf(uri);
    if (isProjectFile(path)) this.projectChanged();
    for (const manual of this.manuals.values()) if (manual.covers(path)) manual.changed();
  }

  /** A file came, went or was written on disk; true where that can change an answer. */
  fileChanged(uri: string): boolean {
    const path = pathOf(uri);
    if (isProjectFile(path)) this.projectChanged();
    const concerned = [...this.manuals.values()].filter((manual) => manual.covers(path) && !manual.passesBy(path));
    for (const manual of concerned) manual.filesChanged();
    return isProjectFile(path) || (0 < concerned.length && !this.desk.readings.opened(path));
  }

  /** A document was closed: manuals without an open document are forgotten, with what was read for them. */
  closed(uri: string): void {
    this.changed(uri);
    const open = this.desk.documents.all().map((document) => pathOf(document.uri));
    for (const [key, manual] of this.manuals) if (!open.some((path) => manual.covers(path))) this.manuals.delete(key);
    const left = [...this.manuals.values()];
    this.desk.readings.forgetAllBut((path) => left.some((manual) => manual.covers(path)));
  }

  private projectChanged(): void {
    for (const manual of this.manuals.values()) manual.changed();
    this.manuals = new Map();
    this.projects = new Map();
  }

  private async of(uri: string): Promise<Manual> {
    const { projects } = this;
    const project = await this.projectOf(uri);
    // The project file changed while it was looked for.
    if (projects !== this.projects) return this.of(uri);
    const path = pathOf(uri);
    const key = project?.uri ?? path;
    const manual = this.manuals.get(key) ?? new Manual(this.desk, path, project);
    this.manuals.set(key, manual);
    return manual;
  }

  private async projectOf(uri: string): Promise<ProjectFile | undefined> {
    for (const place of projectFilePlaces(uri)) {
      const found = this.projects.get(place) ?? this.readProject(place);
      this.projects.set(place, found);
      if (await found) return found;
    }
    return undefined;
  }

  /** An open project file counts as it stands in the editor. */
  private async readProject(uri: string): Promise<ProjectFile | undefined> {
    const open = this.desk.readings.opened(pathOf(uri));
    const bytes = open ? undefined : await this.desk.host.read(uri);
    const text = open?.getText() ?? (bytes && decode(bytes).text);
    return text === undefined ? undefined : { uri, file: readSettings({ path: pathOf(uri), text }, ruleIds) };
  }
}
