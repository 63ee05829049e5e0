/** From files to manuals: each file read under its project file, and those under one project file put together. */
import { assemble } from '../../reading/assemble.ts';
import { read } from '../../reading/read.ts';
import type { Reading } from '../../reading/reading.ts';
import type { Manual, Skipped } from '../../render/report.ts';
import { showsSection } from '../../sections.ts';
import { type Flags, isListed, type SettingsProblem, settle } from '../../settings.ts';
import type { SectionFile } from './files.ts';
import { type Home, Homes, pathFrom } from './homes.ts';
import type { Complaint } from './terminal.ts';

export interface Manuals {
  readonly manuals: readonly Manual[];
  readonly skipped: readonly Skipped[];
  readonly problems: readonly SettingsProblem[];
  readonly complaints: readonly Complaint[];
}

interface Member {
  readonly file: SectionFile;
  readonly reading: Reading;
}

/** Reads the files; `settingsPath` overrules the nearest project file. */
export async function readManuals(
  files: readonly SectionFile[],
  flags: Flags,
  settingsPath: string | undefined,
): Promise<Manuals> {
  const homes = new Homes(settingsPath);
  const groups = new Map<Home, Member[]>();
  const skipped: Skipped[] = [];
  for (const file of files) {
    const home = await homes.of(file.absolute);
    const reading = read({ path: file.path, text: file.text });
    if (isSection({ file, reading }, home)) groups.set(home, [...(groups.get(home) ?? []), { file, reading }]);
    else skipped.push({ path: file.path, reason: notASection(reading) });
  }
  return {
    manuals: [...groups].map(([home, members]) => toManual(home, members, flags)),
    skipped,
    problems: homes.files.flatMap(({ problems }) => problems),
    complaints: homes.complaints,
  };
}

/** A file found in a folder must show by itself what it is. */
function isSection({ file, reading }: Member, home: Home): boolean {
  const isNamed = file.by === 'name' || isListed(home.file, pathFrom(home, file.absolute));
  return isNamed || showsSection(reading);
}

function notASection({ signs }: Reading): string {
  const shown = signs.length === 0 ? 'no sign of it' : `one sign of it alone, ${signs.join(', ')}`;
  return `not concrete specification text (${shown})`;
}

function toManual(home: Home, members: readonly Member[], flags: Flags): Manual {
  const specification = assemble(members.map(({ reading }) => reading));
  const paths = new Map(members.map(({ file }) => [file.path, pathFrom(home, file.absolute)]));
  return {
    settings: settle({ flags, file: home.file, paths, specification }),
    specification,
    texts: new Map(members.map(({ file }) => [file.path, file.text])),
  };
}
