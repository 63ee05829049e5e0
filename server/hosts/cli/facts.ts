/** `facts PATH…`: what was read in these sections, and what was left unread. */
import type { Command } from 'commander';
import { factsJson, factsText } from '../../render/facts.ts';
import { colourOf, type ReadingOptions, withReading } from './arguments.ts';
import { deliver, keepInputs, parseOutputs } from './output.ts';
import { inputsOf, readRun } from './reading.ts';
import type { Status } from './status.ts';

export function addFacts(program: Command, end: (status: Status) => void): void {
  withReading(program.command('facts'))
    .description('list what was read in these sections, and what was left unread')
    .argument('<path...>', 'section files and folders; - is standard input')
    .action(async (paths: readonly string[], options: ReadingOptions) => end(await runFacts(paths, options)));
}

async function runFacts(paths: readonly string[], options: ReadingOptions): Promise<Status> {
  const outputs = parseOutputs(options.format);
  const run = await readRun(paths, options);
  keepInputs(outputs, inputsOf(run));
  await deliver(outputs, { text: (page) => factsText(run, page), json: () => factsJson(run) }, colourOf(options));
  return run.status;
}
