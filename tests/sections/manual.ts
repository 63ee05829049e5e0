/** Reads the demo manual and checks it, so that tests can compare what is said with what should be. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { rules } from '../../rules/index.ts';
import type { Project } from '../../rules/model/project.ts';
import type { Source } from '../../rules/model/source.ts';
import { check, type Finding } from '../../server/checking.ts';
import { assemble } from '../../server/reading/assemble.ts';
import { read } from '../../server/reading/read.ts';

/** The project as client/demo/firstwinter.jsonc describes it. */
export const exchange: Project = {
  code: 'aci-318-19',
  codeAssumed: false,
  climate: 'freezing',
  deicers: 'yes',
  structural: 'unknown',
  reinforced: 'unknown',
  units: 'both',
  stage: 'being-written',
  elements: {},
  byPath: {},
};

export const demo = (name: string): Source => source(`../../client/demo/${name}`, name);
export const register = (name: string): Source => source(`./registers/${name}`, name);

/** All findings of the sections read together as one manual; a rule that failed is an error here. */
export function findings(...sections: readonly Source[]): readonly Finding[] {
  const checked = check(assemble(sections.map(read)), exchange, rules);
  if (0 < checked.failures.length) throw new Error(JSON.stringify(checked.failures));
  return checked.findings;
}

/** One line a finding, sorted: lists that differ by one line differ by one finding. */
export const sorted = (lines: readonly string[]): readonly string[] => [...lines].sort();

function source(relative: string, path: string): Source {
  return { path, text: readFileSync(fileURLToPath(new URL(relative, import.meta.url)), 'utf8') };
}
