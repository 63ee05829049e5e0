/** What every renderer is given: the manuals of one run, as read and as checked. */
import type { Specification } from '../../rules/model/specification.ts';
import type { Checked } from '../checking.ts';
import type { Settings, SettingsProblem } from '../settings.ts';

export interface Tool {
  readonly name: string;
  readonly version: string;
}

/** A file that was not read, and why, in words. */
export interface Skipped {
  readonly path: string;
  readonly reason: string;
}

/** One project manual: the section files that share a project file. */
export interface Manual {
  readonly settings: Settings;
  readonly specification: Specification;
  /** Text of each document by its path. */
  readonly texts: ReadonlyMap<string, string>;
}

export interface Run<M extends Manual = Manual> {
  readonly tool: Tool;
  readonly manuals: readonly M[];
  readonly skipped: readonly Skipped[];
  readonly problems: readonly SettingsProblem[];
}

export interface CheckedManual extends Manual {
  readonly checked: Checked;
}

/** Numbers of sections that this manual hands concrete, curing or weather to and that are not among its files. */
export function notLoaded({ specification }: Manual): readonly string[] {
  const loaded = new Set(specification.documents.map(({ section }) => digits(section ?? '')));
  const named = specification.documents.flatMap(({ handsTo }) => handsTo);
  return [...new Set(named)].filter((number) => !loaded.has(digits(number)));
}

const digits = (number: string): string => number.replace(/\D/g, '');

/** "32 13 13 Concrete paving", or the file's path where the text gives neither. */
export function sectionName({ path, section, title }: { path: string; section?: string; title?: string }): string {
  return [section, title].filter(Boolean).join(' ') || path;
}
