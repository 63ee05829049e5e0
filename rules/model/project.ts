/** What the project says of itself, after settings were checked: rules read it, nothing else from outside. */
import type { Quantity } from './quantity.ts';

export const codeIds = [
  'aci-318-14',
  'aci-318-19',
  'aci-318-25',
  'ibc',
  'irc',
  'csa-a23-1-19',
  'en-206',
  'aashto-r-101',
] as const;
export type CodeId = (typeof codeIds)[number];

export type YesNo = 'yes' | 'no' | 'unknown';
export const climates = ['freezing', 'mild', 'unknown'] as const;
export type Climate = (typeof climates)[number];
export const stages = ['office-master', 'being-written', 'before-issue'] as const;
export type Stage = (typeof stages)[number];

export type Severity = 'must' | 'should' | 'note';
export type Level = Severity | 'off';

/** What the project states for one element by name. */
export interface ElementSettings {
  readonly structural?: YesNo;
  readonly reinforced?: YesNo;
  readonly deicers?: YesNo;
  readonly exposure?: readonly string[];
}

export interface Project {
  readonly code: CodeId;
  /** True where the code is assumed because neither settings nor text name one. */
  readonly codeAssumed: boolean;
  readonly climate: Climate;
  readonly deicers: YesNo;
  readonly structural: YesNo;
  readonly reinforced: YesNo;
  /** Nominal maximum size of aggregate where the sections give none. */
  readonly aggregate?: Quantity<'length'>;
  readonly units: 'ip' | 'si' | 'both';
  readonly stage: Stage;
  readonly elements: Readonly<Record<string, ElementSettings>>;
  /** What differs for single files, by their path. */
  readonly byPath: Readonly<Record<string, Partial<Omit<Project, 'byPath'>>>>;
}

/** The project as it holds for one file. */
export function projectFor(project: Project, path: string): Project {
  const own = project.byPath[path];
  return own ? { ...project, ...own } : project;
}
