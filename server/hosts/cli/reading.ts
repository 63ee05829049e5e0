/** What every command that reads does first: find the files, read them as manuals, and say what went wrong on the way. */
import type { Run } from '../../render/report.ts';
import type { SettingsProblem } from '../../settings.ts';
import { flagsOf, type ReadingOptions } from './arguments.ts';
import { findFiles } from './files.ts';
import { readManuals } from './manuals.ts';
import { type Status, status } from './status.ts';
import { complain } from './terminal.ts';

declare const VERSION: string;

export interface ReadRun extends Run {
  /** `clean` unless a named path or the settings failed, or nothing is there to be read. */
  readonly status: Status;
}

export async function readRun(paths: readonly string[], options: ReadingOptions): Promise<ReadRun> {
  const found = await findFiles(paths, options.name);
  const { manuals, skipped, problems, complaints } = await readManuals(found.files, flagsOf(options), options.settings);
  const failed = [...found.complaints, ...complaints];
  for (const complaint of failed) complain(complaint);
  for (const problem of problems) complain(settingsComplaint(problem));
  const isBroken = 0 < failed.length || problems.some(({ weight }) => weight === 'fault');
  // What failed has been said, and is why there is nothing to read.
  if (manuals.length === 0 && failed.length === 0) complain(nothing);
  const readable = manuals.length === 0 ? status.nothingToCheck : status.clean;
  return {
    tool: { name: 'firstwinter', version: VERSION },
    manuals,
    skipped: [...found.skipped, ...skipped],
    problems,
    status: isBroken ? status.failed : readable,
  };
}

/** Every file that the run stands on, project files included. */
export const inputsOf = ({ manuals, skipped }: ReadRun): readonly string[] => [
  ...manuals.flatMap(({ texts, settings }) => [
    ...texts.keys(),
    ...(settings.file === undefined ? [] : [settings.file]),
  ]),
  ...skipped.map(({ path }) => path),
];

const nothing = {
  where: 'firstwinter',
  message: 'nothing to read: no file given is concrete specification text',
  cure: 'name a section file itself and it is read whatever it looks like',
};

const settingsComplaint = ({ path, line, column, message, cure, weight }: SettingsProblem) => ({
  where: `${path}, line ${line}, column ${column}`,
  message: weight === 'notice' ? `notice: ${message}` : message,
  cure,
});
