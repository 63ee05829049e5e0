/** The command line: which commands there are, and how a run ends. */
import { Command, CommanderError } from 'commander';
import { clean } from '../render/layout.ts';
import { addCheck } from './cli/check.ts';
import { addFacts } from './cli/facts.ts';
import { addRequire } from './cli/require.ts';
import { addExplain, addRules } from './cli/rules.ts';
import { Refusal, type Status, status } from './cli/status.ts';
import { complain } from './cli/terminal.ts';

declare const VERSION: string;

const statuses = `Status:
  0  nothing at or above --fail-on
  1  findings
  2  the tool, its settings or a named path failed
  3  nothing to check`;

/** The status is set, not forced: what was written to a pipe is still on its way. */
const end = (result: Status): void => {
  process.exitCode = lost ? status.failed : result;
};
let lost = false;

// A reader that closes early, as `head` does, has seen what it wanted. Any other loss must not pass for a result.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') return;
    if (stream === process.stdout) complain({ where: 'firstwinter', message: `the result is lost (${error.code})` });
    lost = true;
    end(status.failed);
  });
}

makeProgram().parseAsync().catch(refuse);

function makeProgram(): Command {
  const program = new Command('firstwinter')
    .description('Reads concrete specification sections and says what will scale.')
    .version(VERSION)
    .exitOverride()
    .configureOutput({ writeErr: (text) => void process.stderr.write(clean(text)) })
    .showSuggestionAfterError()
    .showHelpAfterError('"firstwinter help" lists commands and options.')
    .addHelpText('after', `\n${statuses}`);
  addCheck(program, end);
  addFacts(program, end);
  addRequire(program);
  addRules(program);
  addExplain(program);
  return program;
}

function refuse(error: unknown): void {
  if (error instanceof Refusal) complain({ where: 'firstwinter', message: error.message, cure: error.cure });
  else if (!(error instanceof CommanderError))
    complain({ where: 'firstwinter', message: `a fault of the tool: ${stackOf(error)}` });
  end(error instanceof CommanderError && error.exitCode === 0 ? status.clean : status.failed);
}

function stackOf(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}
