/** Where results go: `--format` names formats, each to standard output or, as `json=out.json`, to a file. */
import { realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import type { Page } from '../../render/layout.ts';
import { nearest } from '../../settings.ts';
import { Refusal } from './status.ts';
import { pageFor, pageForFile, remark } from './terminal.ts';

export type Format = 'text' | 'json';
const formats: readonly Format[] = ['text', 'json'];

export interface Output {
  readonly format: Format;
  /** Standard output where there is none. */
  readonly file?: string;
}

/** One result in every format; text needs a page. */
export type Renderers = Readonly<Record<Format, (page: Page) => string>>;

/** Reads the values of `--format`; text on standard output where none is given. */
export function parseOutputs(values: readonly string[]): readonly Output[] {
  const outputs = values.map(parseOutput);
  const files = outputs.map(({ file }) => (file === undefined ? undefined : resolve(file)));
  if (new Set(files).size < files.length) {
    throw new Refusal(
      `two formats would go to the same place: ${values.join(', ')}`,
      'send all but one to files of their own, as json=out.json',
    );
  }
  return outputs.length === 0 ? [{ format: 'text' }] : outputs;
}

function parseOutput(value: string): Output {
  const [, word = '', file] = /^([^=]*)(?:=(.*))?$/s.exec(value) ?? [];
  const format = formats.find((known) => known === word);
  if (format === undefined) {
    const meant = nearest(word, formats);
    const hint = meant === undefined ? '' : `; did you mean ${meant}?`;
    throw new Refusal(`--format cannot be "${word}"`, `write one of ${formats.join(', ')}${hint}`);
  }
  if (file === '') throw new Refusal(`--format ${value} names no file`, `write ${format}=out.${format}`);
  return { format, file };
}

/** A section must not be lost to a slip of the hand: no result is written over what was read. */
export function keepInputs(outputs: readonly Output[], read: readonly string[]): void {
  const inputs = new Set(read.map((path) => resolve(path)));
  const over = outputs.find(({ file }) => file !== undefined && inputs.has(resolve(file)));
  if (over) throw new Refusal(`${over.file} is among the files that were read`, 'write the result to another file');
}

/** Writes each output; a file is complete or untouched. */
export async function deliver(
  outputs: readonly Output[],
  renderers: Renderers,
  colour: 'auto' | 'always' | 'never',
): Promise<void> {
  for (const { format, file } of outputs) {
    if (file === undefined) process.stdout.write(renderers[format](pageFor(colour)));
    else await writeResult(file, renderers[format](pageForFile));
  }
}

async function writeResult(path: string, text: string): Promise<void> {
  const there = await realpath(path).catch(() => path);
  try {
    const isDevice = await stat(there).then(
      (found) => !found.isFile(),
      () => false,
    );
    await (isDevice ? writeFile(there, text) : replaceFile(there, text));
  } catch (error) {
    const reason = `${path} cannot be written (${(error as NodeJS.ErrnoException).code})`;
    throw new Refusal(reason, `check that the folder ${dirname(resolve(path))} exists and can be written`);
  }
  remark(`Written: ${path}`);
}

/** A reader of the file never sees half of it: it is written beside and then put in place. */
async function replaceFile(path: string, text: string): Promise<void> {
  const beside = `${path}.${process.pid}.part`;
  try {
    await writeFile(beside, text);
    await rename(beside, path);
  } finally {
    await rm(beside, { force: true });
  }
}
