/** Which files are read: those named, and the section files found in named folders. */
import { readdir, readFile, realpath, stat } from 'node:fs/promises';
import { basename, dirname, extname, join, relative, resolve, sep } from 'node:path';
import { buffer } from 'node:stream/consumers';
import { glob } from 'tinyglobby';
import { decode } from '../../reading/decode.ts';
import { count } from '../../render/layout.ts';
import type { Skipped } from '../../render/report.ts';
import { nearest } from '../../settings.ts';
import { type Complaint, complain } from './terminal.ts';

/** A section file with its text. */
export interface SectionFile {
  /** From the working folder, with forward slashes: the name it has in every report. */
  readonly path: string;
  readonly absolute: string;
  /** Named by the user, or found in a folder that was. */
  readonly by: 'name' | 'folder';
  readonly text: string;
}

export interface Found {
  readonly files: readonly SectionFile[];
  readonly skipped: readonly Skipped[];
  /** Named paths that are missing or cannot be read. */
  readonly complaints: readonly Complaint[];
}

/** One step's outcome: a file to read on, or why there is none. */
type Outcome<File> = { readonly file: File } | { readonly skipped: Skipped } | { readonly complaint: Complaint };
type Candidate = Omit<SectionFile, 'text'>;

const extensions = ['.md', '.markdown', '.txt'];
const standardInput = '-';

/** Reads every file that the paths name; `name` is the file name of standard input. */
export async function findFiles(paths: readonly string[], name: string): Promise<Found> {
  const expanded = await Promise.all(paths.filter((path) => path !== standardInput).map(expand));
  const candidates = await unique(expanded.flat().flatMap((outcome) => ('file' in outcome ? [outcome.file] : [])));
  const outcomes: Outcome<SectionFile>[] = [
    ...expanded.flat().flatMap((outcome) => ('file' in outcome ? [] : [outcome])),
    ...(await Promise.all(candidates.map(load))),
  ];
  if (paths.includes(standardInput)) outcomes.push(asText(named(name, 'name'), await buffer(process.stdin)));
  return {
    files: outcomes.flatMap((outcome) => ('file' in outcome ? [outcome.file] : [])),
    skipped: outcomes.flatMap((outcome) => ('skipped' in outcome ? [outcome.skipped] : [])),
    complaints: outcomes.flatMap((outcome) => ('complaint' in outcome ? [outcome.complaint] : [])),
  };
}

/** The path of a file from the working folder, with forward slashes. */
export const shownPath = (absolute: string): string =>
  relative(process.cwd(), absolute).split(sep).join('/') || basename(absolute);

function named(path: string, by: Candidate['by']): Candidate {
  const absolute = resolve(path);
  return { path: shownPath(absolute), absolute, by };
}

/** Each file once, also where links lead to it by other names: as named, else by its own name. */
async function unique(candidates: readonly Candidate[]): Promise<readonly Candidate[]> {
  const known = new Map<string, Candidate>();
  for (const candidate of candidates) {
    const real = await realpath(candidate.absolute).catch(() => candidate.absolute);
    const earlier = known.get(real);
    const isBetter = candidate.by === 'name' || (candidate.absolute === real && earlier?.by === 'folder');
    if (earlier === undefined || isBetter) known.set(real, candidate);
  }
  return [...known.values()];
}

/** The files behind one argument: a file, the section files of a folder, or those a pattern matches. */
async function expand(path: string): Promise<readonly Outcome<Candidate>[]> {
  const found = await stat(path).catch(() => undefined);
  if (found?.isDirectory()) return inFolder(path);
  if (found) return [{ file: named(path, 'name') }];
  const matches = /[*?{]/.test(path) ? await search(path, process.cwd()) : [];
  if (0 < matches.length) return matches.map((file) => ({ file }));
  return [{ complaint: { where: path, message: 'there is no such file or folder', cure: await likePath(path) } }];
}

async function inFolder(path: string): Promise<readonly Outcome<Candidate>[]> {
  const matches = await search(`**/*{${extensions.join(',')}}`, resolve(path));
  if (0 < matches.length) return matches.map((file) => ({ file }));
  if (extensions.includes(extname(path).toLowerCase())) {
    return [{ complaint: { where: path, message: 'is a folder and cannot be read as a file', cure: 'name the file' } }];
  }
  return [{ skipped: { path, reason: `a folder without ${extensions.join(', ')} files` } }];
}

/** Section files that match, in order of their path; folders of tools and hidden ones are not entered. */
async function search(pattern: string, folder: string): Promise<readonly Candidate[]> {
  const options = { cwd: folder, absolute: true, caseSensitiveMatch: false, ignore: ['**/node_modules/**'] };
  const matches = await glob(pattern.split(sep).join('/'), options);
  return matches.sort().map((match) => named(match, 'folder'));
}

async function likePath(path: string): Promise<string> {
  const folder = dirname(path);
  const neighbours = await readdir(folder).catch(() => undefined);
  if (neighbours === undefined)
    return `the folder ${folder} does not exist either: check the path from ${process.cwd()}`;
  const meant = nearest(basename(path), neighbours);
  return meant === undefined ? `check the path from ${process.cwd()}` : `did you mean ${join(folder, meant)}?`;
}

async function load(file: Candidate): Promise<Outcome<SectionFile>> {
  try {
    return asText(file, await readFile(file.absolute));
  } catch (error) {
    const reason = `cannot be read (${(error as NodeJS.ErrnoException).code})`;
    if (file.by === 'folder') return { skipped: { path: file.path, reason } };
    return {
      complaint: { where: file.path, message: reason, cure: 'check that it is a file and that you may read it' },
    };
  }
}

function asText(file: Candidate, bytes: Uint8Array): Outcome<SectionFile> {
  const { text, lost, binary } = decode(bytes);
  if (binary && file.by === 'name') {
    const cure = `save it as text: ${extensions.join(', ')}`;
    return { complaint: { where: file.path, message: 'is not text and cannot be read', cure } };
  }
  if (binary) return { skipped: { path: file.path, reason: 'not text' } };
  if (text.trim() === '') {
    if (file.by === 'name')
      complain({ where: file.path, message: 'is empty', cure: 'restore its text, or leave it out' });
    return { skipped: { path: file.path, reason: 'empty' } };
  }
  if (0 < lost)
    complain({ where: file.path, message: `${count(lost, 'character')} could not be read`, cure: lostCure });
  return { file: { ...file, text } };
}

const lostCure = 'what stood there is unknown: restore it from the original, or save the file as UTF-8';
