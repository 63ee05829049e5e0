/** The command line and the server say the same of the same text, word for word and place for place. */
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { expect, test } from 'vitest';
import { run } from '../command/run.ts';
import { Editor, pulling } from './editor.ts';
import { Job } from './job.ts';

const folder = new URL('../../client/demo/', import.meta.url);
const names = [
  '03-30-00-cast-in-place-concrete.md',
  '03-35-00-interior-floor-finishing.md',
  '32-13-13-concrete-paving.md',
];
const texts = Object.fromEntries(
  [...names, 'firstwinter.jsonc'].map((name) => [name, readFileSync(new URL(name, folder), 'utf8')]),
);

interface Said {
  readonly path: string;
  readonly severity: string;
  readonly rule: string;
  readonly message: string;
  readonly start: { readonly line: number; readonly column: number };
}

const levels = ['', 'must', 'should', 'note'];

/** One line a finding, in the order of the text. */
const line = (name: string, level: string, { line, column }: Said['start'], rule: unknown, message: string): string =>
  `${name}:${line}:${column} ${level} ${rule}: ${message}`;

function byCommand(job: Job): readonly string[] {
  const { out } = run(job.folder, ['check', '.', '--format', 'json', '--fail-on', 'never']);
  const { findings } = JSON.parse(out) as { findings: readonly Said[] };
  return findings.map(({ path, severity, start, rule, message }) =>
    line(basename(path), severity, start, rule, message),
  );
}

async function byServer(job: Job): Promise<readonly string[]> {
  const editor = await Editor.start(pulling);
  for (const name of names) await editor.open(job.uri(name), texts[name] as string);
  const lines: string[] = [];
  for (const name of names) {
    for (const { severity = 0, range, code, message } of await editor.diagnostics(job.uri(name))) {
      const start = { line: range.start.line + 1, column: range.start.character + 1 };
      lines.push(line(name, levels[severity] as string, start, code, message as string));
    }
  }
  expect(await editor.stop()).toBe(0);
  return lines;
}

test('of the demo manual', async () => {
  const job = new Job(texts);
  try {
    const said = byCommand(job);
    expect(said.length).toBeGreaterThan(5);
    expect((await byServer(job)).toSorted()).toEqual(said.toSorted());
  } finally {
    job.remove();
  }
});
