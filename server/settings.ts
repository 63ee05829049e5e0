/** The settings in force for one manual: flag before project file before text before default, and where each came from. */
import type { ElementSettings, Project } from '../rules/model/project.ts';
import type { Specification } from '../rules/model/specification.ts';
import { parseAggregate } from './settings/amounts.ts';
import { type CitedCode, citedCode } from './settings/cited.ts';
import type { SettingsFile } from './settings/file.ts';
import { matchesPath } from './settings/globs.ts';
import type { LevelSetting, SectionSettings } from './settings/schema.ts';

export { parseAggregate, parseAmount } from './settings/amounts.ts';
export { readSettings, type SettingsFile, type SettingsProblem } from './settings/file.ts';
export { nearest } from './settings/nearest.ts';
export { projectFileJsonSchema } from './settings/schema.ts';

/** Name of the project file, looked for from a section's folder upward. */
export const projectFileName = 'firstwinter.jsonc';

/** What the command line, or an editor's own settings, asked for. */
export type Flags = Partial<Pick<Project, 'code' | 'climate' | 'deicers' | 'stage'>>;

/** Where a value came from: for the text its paragraph, for the project file its path. */
export interface ValueOrigin {
  readonly from: 'flag' | 'project file' | 'text' | 'default';
  readonly path?: string;
  readonly place?: string;
}

export type Setting = Exclude<keyof Project, 'byPath' | 'codeAssumed'>;

/** Level by rule id or family; a rule wins over its family. */
export type LevelTable = Readonly<Partial<Record<string, LevelSetting>>>;

/** `byPath` holds for single files and wins over `everywhere`. */
export interface Levels {
  readonly everywhere: LevelTable;
  readonly byPath: Readonly<Partial<Record<string, LevelTable>>>;
}

export interface Settings {
  readonly project: Project;
  readonly levels: Levels;
  readonly origins: Readonly<Record<Setting, ValueOrigin>>;
  /** The project file they come from. */
  readonly file?: string;
}

/** What the settings of a manual are made of. */
export interface Ingredients {
  readonly flags: Flags;
  readonly file?: SettingsFile;
  /** Path of each document, and the same path from the project file's folder: what `sections` is matched with. */
  readonly paths: ReadonlyMap<string, string>;
  /** The text, which may name its code. */
  readonly specification?: Specification;
}

/** The settings of one manual. */
export function settle({ flags, file, paths, specification }: Ingredients): Settings {
  const values = file?.values ?? {};
  const cited = specification && citedCode(specification);
  const own = valuesOf(values);
  const project = { ...defaults, ...(cited && { code: cited.code }), ...own, ...flags };
  const sections = new Map([...paths].map(([path, fromProject]) => [path, sectionFor(values.sections, fromProject)]));
  return {
    project: {
      ...project,
      codeAssumed: cited === undefined && own.code === undefined && flags.code === undefined,
      byPath: overrides(sections, project.elements, flags),
    },
    levels: { everywhere: values.levels ?? {}, byPath: definedOnly(sections, ({ levels }) => levels) },
    origins: originsOf(flags, own, file?.path, cited),
    file: file?.path,
  };
}

/** Is the file listed in the project file, so that it is read whatever it looks like? */
export const isListed = (file: SettingsFile | undefined, fromProject: string): boolean =>
  Object.keys(file?.values.sections ?? {}).some((pattern) => matchesPath(pattern, fromProject));

const defaults = {
  code: 'aci-318-19',
  climate: 'unknown',
  deicers: 'unknown',
  structural: 'unknown',
  reinforced: 'unknown',
  units: 'both',
  stage: 'being-written',
  elements: {},
} as const satisfies Omit<Project, 'byPath' | 'codeAssumed'>;

type Own = Partial<Omit<Project, 'byPath' | 'codeAssumed'>>;

/** What a part of the project file states, as rules read it. */
function valuesOf({ code, climate, deicers, structural, reinforced, units, stage, ...rest }: SectionSettings): Own {
  const aggregate = rest.aggregate === undefined ? undefined : parseAggregate(rest.aggregate);
  const elements = rest.elements && byLowerCase(rest.elements);
  const all = { code, climate, deicers, structural, reinforced, units, stage, aggregate, elements };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined));
}

/** The reader names elements in lower case. */
const byLowerCase = (elements: Readonly<Record<string, ElementSettings>>): Readonly<Record<string, ElementSettings>> =>
  Object.fromEntries(Object.entries(elements).map(([name, value]) => [name.toLowerCase(), value]));

/** All entries of `sections` that name the file, later ones over earlier ones. */
function sectionFor(sections: SettingsFile['values']['sections'], path: string): SectionSettings {
  const own = Object.entries(sections ?? {}).filter(([pattern]) => matchesPath(pattern, path));
  const levels = Object.assign({}, ...own.map(([, { levels }]) => levels ?? {}));
  const elements = Object.assign({}, ...own.map(([, { elements }]) => elements ?? {}));
  const merged: SectionSettings = Object.assign({}, ...own.map(([, values]) => values));
  return { ...merged, ...(merged.levels && { levels }), ...(merged.elements && { elements }) };
}

function overrides(
  sections: ReadonlyMap<string, SectionSettings>,
  elements: Project['elements'],
  flags: Flags,
): Project['byPath'] {
  return definedOnly(sections, (section) => {
    const own = valuesOf(section);
    if (Object.keys(own).length === 0) return undefined;
    const code = own.code === undefined ? {} : { codeAssumed: false };
    return { ...own, ...flags, ...code, ...(own.elements && { elements: { ...elements, ...own.elements } }) };
  });
}

function definedOnly<In, Out>(map: ReadonlyMap<string, In>, change: (value: In) => Out | undefined) {
  const entries = [...map].map(([key, value]) => [key, change(value)] as const);
  return Object.fromEntries(entries.filter((entry): entry is readonly [string, Out & {}] => entry[1] !== undefined));
}

function originsOf(
  flags: Flags,
  own: Own,
  path: string | undefined,
  cited: CitedCode | undefined,
): Settings['origins'] {
  const names = [...Object.keys(defaults), 'aggregate'] as Setting[];
  const origins = names.map((name): readonly [Setting, ValueOrigin] => {
    if ((flags as Own)[name] !== undefined) return [name, { from: 'flag' }];
    if (own[name] !== undefined) return [name, { from: 'project file', path }];
    if (name !== 'code' || cited === undefined) return [name, { from: 'default' }];
    return [name, { from: 'text', path: cited.fact.spans[0].path, place: cited.fact.place }];
  });
  return Object.fromEntries(origins) as Settings['origins'];
}
